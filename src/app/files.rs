//! Opening and saving from the window: dialogs, and the sheet's own loading and saving.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use iced::Task;

use crate::app::desk::Desk;
use crate::app::screen::notebook;
use crate::app::screen::preferences::{self, Which};
use crate::app::shell::Message;
use crate::plot::save::Kind;
use crate::sheet::{History, Sheet, demo, file};

/// What a file is picked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// To open it as the reader's build.
    Open,
    /// To save the build there.
    Save,
    /// To set it beside the reader's build.
    Companion,
    /// To save a picture or its numbers there.
    Figure,
    /// To write a page for the printer there.
    Paper,
}

/// How a dialog ended without a pick.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Unpicked {
    /// What it was for.
    pub purpose: Purpose,
    /// Whether it ended sooner than anyone can put it away: this desktop has no dialog to show.
    pub at_once: bool,
}

impl Unpicked {
    fn since(asked: Instant, purpose: Purpose) -> Self {
        Self { purpose, at_once: asked.elapsed() < Duration::from_millis(400) }
    }
}

/// Asks which build to open, or to set beside.
pub fn choose(purpose: Purpose, folder: Option<&Path>) -> Task<Message> {
    let (title, then): (&str, fn(PathBuf) -> Message) = match purpose {
        Purpose::Companion => ("Set a build beside yours", Message::CompanionPicked),
        Purpose::Open | Purpose::Save | Purpose::Figure | Purpose::Paper => {
            ("Open a build", Message::Picked)
        }
    };
    let dialog = rfd::AsyncFileDialog::new().set_title(title).add_filter("Builds", &["toml"]);
    let dialog = begin_in(dialog, folder);
    let asked = Instant::now();
    Task::perform(dialog.pick_file(), move |picked| match picked {
        Some(file) => then(file.path().to_owned()),
        None => Message::NothingPicked(Unpicked::since(asked, purpose)),
    })
}

/// A dialog that begins in a folder, if it is there.
fn begin_in(dialog: rfd::AsyncFileDialog, folder: Option<&Path>) -> rfd::AsyncFileDialog {
    match folder.filter(|folder| folder.is_dir()) {
        Some(folder) => dialog.set_directory(folder),
        None => dialog,
    }
}

/// Asks for a folder. Where the desktop has no dialog, the path is typed among the settings.
pub fn choose_folder(which: Which) -> Task<Message> {
    let title = match which {
        Which::Builds => "Folder for builds",
        Which::Lessons => "Folder for lessons of your own",
    };
    let dialog = rfd::AsyncFileDialog::new().set_title(title).pick_folder();
    Task::perform(dialog, move |picked| {
        let path = picked.map(|folder| folder.path().to_owned());
        Message::Choices(preferences::Message::Picked(which, path))
    })
}

/// Asks where to save the build: beside its file, or in `folder` while it has none.
pub fn choose_new(desk: &Desk, folder: Option<&Path>) -> Task<Message> {
    let dialog = rfd::AsyncFileDialog::new()
        .set_title("Save the build as")
        .add_filter("Builds", &["toml"])
        .set_file_name(format!("{}.{BUILD}", desk.file_name()));
    let dialog = begin_in(dialog, desk.path.as_deref().and_then(Path::parent).or(folder));
    let asked = Instant::now();
    Task::perform(dialog.save_file(), move |picked| match picked {
        Some(file) => Message::SavePicked(with_ending(file.path().to_owned(), BUILD)),
        None => Message::NothingPicked(Unpicked::since(asked, Purpose::Save)),
    })
}

/// Asks where to export the notebook to. Where the desktop has no dialog, the path is typed on the
/// notebook's own screen.
pub fn choose_export() -> Task<Message> {
    let dialog = rfd::AsyncFileDialog::new()
        .set_title("Export the notebook")
        .add_filter("Markdown", &["md"])
        .set_file_name("notebook.md")
        .save_file();
    Task::perform(dialog, |picked| {
        Message::Notebook(notebook::Message::Picked(picked.map(|file| file.path().to_owned())))
    })
}

/// Asks where to save a picture or its numbers; the ending of the name says which.
pub fn choose_figure(name: &str) -> Task<Message> {
    let first = Kind::Svg.ending();
    let mut dialog = rfd::AsyncFileDialog::new()
        .set_title("Save the picture")
        .set_file_name(format!("{name}.{first}"));
    for (words, kind) in
        [("Picture", Kind::Svg), ("Picture of dots", Kind::Png), ("Numbers", Kind::Csv)]
    {
        dialog = dialog.add_filter(words, &[kind.ending()]);
    }
    let asked = Instant::now();
    Task::perform(dialog.save_file(), move |picked| match picked {
        Some(file) => Message::FigurePicked(with_ending(file.path().to_owned(), first)),
        None => Message::NothingPicked(Unpicked::since(asked, Purpose::Figure)),
    })
}

/// Asks where to write a page for the printer.
pub fn choose_paper(name: &str, desk: &Desk) -> Task<Message> {
    let mut dialog = rfd::AsyncFileDialog::new()
        .set_title("Save the page as")
        .add_filter("Pages", &[PAPER])
        .set_file_name(format!("{name}.{PAPER}"));
    if let Some(folder) = desk.path.as_deref().and_then(Path::parent) {
        dialog = dialog.set_directory(folder);
    }
    let asked = Instant::now();
    Task::perform(dialog.save_file(), move |picked| match picked {
        Some(file) => Message::PaperPicked(with_ending(file.path().to_owned(), PAPER)),
        None => Message::NothingPicked(Unpicked::since(asked, Purpose::Paper)),
    })
}

/// The path with that ending if it has none.
pub fn with_ending(path: PathBuf, ending: &str) -> PathBuf {
    if path.extension().is_some() { path } else { path.with_extension(ending) }
}

/// The ending of a build's file.
pub const BUILD: &str = "toml";

/// The ending of a page for the printer.
pub const PAPER: &str = "html";

/// Reads a build onto a desk.
///
/// # Errors
/// Why it cannot be read, in words.
pub fn open(path: &Path) -> Result<Desk, String> {
    let loaded = file::load(path).map_err(|error| error.to_string())?;
    let history = History::opened(loaded.sheet);
    Ok(Desk::new(history, Some(path.to_owned()), Some(loaded.stamp)))
}

/// Puts a demo build on a desk; it has no file until it is saved.
pub fn open_demo(id: &str) -> Option<Desk> {
    let sheet = Sheet::read(demo::find(id)?.text).ok()?;
    Some(Desk::new(History::opened(sheet), None, None))
}
