//! What the shell does about pictures: it asks where to save one, and saves it.

use std::path::{Path, PathBuf};

use iced::Task;

use super::filing::taken;
use super::{App, Message};
use crate::app::files;
use crate::app::question::Question;
use crate::app::screen::reading::Unsaved;
use crate::plot::save::Kind;

impl App {
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
