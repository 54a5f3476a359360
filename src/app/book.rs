//! The notebook as the window holds it: when it changed, and saving it.

use std::path::Path;
use std::time::{SystemTime, UNIX_EPOCH};

use crate::notebook::file::{self, Store};
use crate::notebook::{Moment, Notebook};

/// The notebook and where it is kept.
pub struct Book {
    notebook: Notebook,
    /// Nothing if the file on disk must be left alone.
    store: Option<Store>,
    changed: bool,
    /// Whether the reader knows that saving fails.
    told: bool,
}

/// The moment it is.
pub fn now() -> Moment {
    let since = SystemTime::now().duration_since(UNIX_EPOCH);
    Moment::of_unix(since.map_or(0, |since| since.as_secs()))
}

impl Book {
    /// Opens the notebook of a file, with what the reader is to be told.
    pub fn open(path: &Path) -> (Self, Option<String>) {
        let file::Loaded { notebook, store, told } = file::load(path);
        (Self { notebook, store, changed: false, told: false }, told)
    }

    /// The notebook.
    pub fn notebook(&self) -> &Notebook {
        &self.notebook
    }

    /// Changes it.
    pub fn change(&mut self, change: impl FnOnce(&mut Notebook)) {
        change(&mut self.notebook);
        self.changed = true;
    }

    /// A lesson was opened.
    pub fn opened(&mut self, lesson: &str) {
        self.changed |= self.notebook.opened(lesson, now());
    }

    /// Whether there is something to save.
    pub fn is_changed(&self) -> bool {
        self.changed && self.store.is_some()
    }

    /// Saves what has changed; gives back what the reader is to be told, once.
    pub fn keep(&mut self) -> Option<String> {
        let store = self.store.as_mut().filter(|_| self.changed)?;
        match store.save(&self.notebook) {
            Ok(copy) => {
                self.changed = false;
                self.told = false;
                copy.map(|copy| {
                    format!(
                        "Another window has written in your notebook meanwhile. What it wrote is \
                         kept as {}.",
                        copy.display()
                    )
                })
            }
            Err(error) => {
                let words = format!(
                    "The notebook cannot be saved at {}: {error}. What you do stays here until the \
                     window closes; export it to keep it.",
                    store.path().display()
                );
                (!std::mem::replace(&mut self.told, true)).then_some(words)
            }
        }
    }
}
