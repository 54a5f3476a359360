//! The window: shell, screens, lesson blocks, widgets and theme. iced is used here alone.

pub mod block;
mod book;
mod clipboard;
pub mod companion;
pub mod desk;
mod document;
pub mod files;
pub mod find;
mod focus;
pub mod keys;
mod letters;
mod opening;
pub mod page;
pub mod printing;
pub mod question;
mod rail;
pub mod screen;
pub mod settings;
pub mod shell;
mod strip;
pub mod theme;
mod watch;
pub mod widget;

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::{panic, thread};

use directories::{ProjectDirs, UserDirs};
use iced::{Settings as Window, window};

use crate::lesson::{Folder, Shipped, Source};
use crate::notebook::file as notebook_file;
pub use opening::CannotOpen;
use settings::Settings;
use shell::{App, Folders, Start};

/// Opens the window on a build, or on the demo build, and stays until it is closed.
///
/// Lessons come from `lessons` if a folder is named, else from those shipped inside the program.
///
/// # Errors
/// When no window can be opened: no display, no graphics.
pub fn run(build: Option<PathBuf>, lessons: Option<&Path>) -> Result<(), CannotOpen> {
    let folders = folders();
    let Settings { window: (width, height), at, .. } = Settings::load(&folders.settings);
    let source: Arc<dyn Source> = match lessons {
        Some(folder) => Arc::new(Folder(folder.to_owned())),
        None => Arc::new(Shipped),
    };
    let watched = lessons.map(Path::to_owned);
    let start = Start { build, source, watched, folders: folders.clone() };
    // The first state and the letters are made ready while the window waits for its screen; one after
    // the other, since with two cores a third thread takes turns with the window's own.
    let ready = || {
        let first = App::on_screen(start);
        letters::load();
        first
    };
    let first = Mutex::new(Some(thread::spawn(ready)));
    let boot = move || {
        opening::opened();
        let first = first.lock().ok().and_then(|mut first| first.take());
        match first.map(thread::JoinHandle::join) {
            Some(Ok(first)) => first,
            Some(Err(fault)) => panic::resume_unwind(fault),
            // iced may ask again; it then gets a fresh state from the shipped lessons.
            None => App::new(Start {
                build: None,
                source: Arc::new(Shipped),
                watched: None,
                folders: folders.clone(),
            }),
        }
    };
    let program = iced::application(boot, App::update, App::view)
        .title(App::title)
        .theme(App::theme)
        .scale_factor(App::scale)
        .subscription(App::subscription)
        .settings(Window { antialiasing: true, default_font: theme::REGULAR, ..Window::default() })
        .window(window::Settings {
            size: (width, height).into(),
            position: opening::position(at),
            min_size: Some((360.0, 480.0).into()),
            exit_on_close_request: false,
            ..window::Settings::default()
        });
    let ended = opening::guarded(|| program.run());
    clipboard::hand_over();
    ended
}

/// The folders of this user, or folders of the working directory where the system has none.
fn folders() -> Folders {
    match ProjectDirs::from("", "", "heftwise") {
        Some(dirs) => Folders {
            settings: dirs.config_dir().to_owned(),
            recovery: dirs.data_local_dir().join("recovery"),
            notebook: notebook_file::usual().unwrap_or_default(),
            exports: UserDirs::new()
                .map(|user| user.document_dir().unwrap_or(user.home_dir()).to_owned())
                .unwrap_or_default(),
        },
        None => Folders {
            settings: ".heftwise".into(),
            recovery: ".heftwise/recovery".into(),
            notebook: ".heftwise/notebook.toml".into(),
            exports: PathBuf::new(),
        },
    }
}
