//! What the shell does about pictures: it asks where to save one, saves it, or copies it.

use std::path::{Path, PathBuf};

use iced::Task;

use super::filing::taken;
use super::{App, Message};
use crate::app::question::Question;
use crate::app::screen::reading::Unsaved;
use crate::app::{clipboard, files};
use crate::plot::save::Kind;

/// What is said of a picture that was copied: as dots, or as text where there is no clipboard for dots.
const COPIED: &str = "Copied: paste it into a text, a drawing or a message.";
const COPIED_AS_SVG: &str = "Copied as SVG: paste it into a drawing program, a web page or a text.";

impl App {
    /// Puts a picture on the clipboard. Without a window of its own it leaves the system's alone.
    pub(super) fn copy_figure(&mut self, unsaved: Unsaved) -> Task<Message> {
        let Unsaved { line, figure, .. } = unsaved;
        let is_there = self.on_screen && clipboard::put(&figure);
        if let Some(reading) = &mut self.reading {
            reading.told(line, if is_there { COPIED } else { COPIED_AS_SVG });
        }
        if is_there { Task::none() } else { iced::clipboard::write(figure.svg) }
    }

    /// Asks where a picture is to go.
    pub(super) fn choose_figure(&mut self, unsaved: Unsaved) -> Task<Message> {
        let task = files::choose_figure(&unsaved.name);
        self.figure = Some(unsaved);
        task
    }

    /// A path to begin with where it is typed: beside the build.
    pub(super) fn figure_path(&self) -> Option<PathBuf> {
        let name = format!("{}.{}", self.figure.as_ref()?.name, Kind::Svg.ending());
        let folder = self.desk.path.as_deref().and_then(Path::parent);
        Some(folder.map_or_else(|| PathBuf::from(&name), |folder| folder.join(&name)))
    }

    /// Saves at a path typed, where no dialog has asked before a file is written over.
    pub(super) fn save_figure_new(&mut self, path: &Path) -> Task<Message> {
        let path = files::with_ending(path.to_owned(), Kind::Svg.ending());
        if path.exists() { self.ask(taken(&path)) } else { self.save_figure(&path) }
    }

    /// The dialog has asked already before an existing file is written over.
    pub(super) fn save_figure(&mut self, path: &Path) -> Task<Message> {
        let Some(unsaved) = self.figure.take() else { return Task::none() };
        if let Err(error) = unsaved.figure.save(path) {
            return self.ask(Question::Told(error.to_string()));
        }
        if let Some(reading) = &mut self.reading {
            reading.saved(unsaved.line, path);
        }
        Task::none()
    }
}
