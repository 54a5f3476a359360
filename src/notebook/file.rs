//! The notebook on disk. Nothing that stands there is ever written over unread: what cannot be
//! read, or was changed by another program, is kept as a copy beside it.

use std::fs;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use directories::ProjectDirs;

use super::{Notebook, ReadError};
use crate::aside::put;

/// The largest file taken for a notebook, in bytes.
const LARGEST: u64 = 16 * 1024 * 1024;
/// How many copies are kept before no more are made.
const COPIES: u32 = 1000;

/// A notebook's file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Store {
    path: PathBuf,
    /// What the file held when last read or written.
    last: Option<Vec<u8>>,
}

/// A notebook as opened.
#[derive(Debug, Clone, PartialEq)]
pub struct Loaded {
    /// The notebook; a fresh one if there was none that could be read.
    pub notebook: Notebook,
    /// Where to save it; nothing if it must not be saved, since what stands there could be neither
    /// read nor copied.
    pub store: Option<Store>,
    /// What the reader is to be told, if something was wrong.
    pub told: Option<String>,
}

/// Where the notebook of this user is, if the system has a folder for it.
pub fn usual() -> Option<PathBuf> {
    ProjectDirs::from("", "", "heftwise").map(|dirs| dirs.data_dir().join("notebook.toml"))
}

/// Opens the notebook of a file. Never fails: what is wrong is told, and nothing is lost.
pub fn load(path: &Path) -> Loaded {
    let fresh = |store, told| Loaded { notebook: Notebook::default(), store, told };
    let store = |last| Some(Store { path: path.to_owned(), last });
    let bytes = match read(path) {
        Ok(bytes) => bytes,
        Err(error) if error.kind() == ErrorKind::NotFound => return fresh(store(None), None),
        Err(error) => {
            let told = format!(
                "The notebook {} cannot be opened: {error}. It is left as it is, and what you do \
                 now is not written down.",
                path.display()
            );
            return fresh(None, Some(told));
        }
    };
    let why = match String::from_utf8(bytes.clone()).map(|text| Notebook::read(&text)) {
        Ok(Ok(notebook)) => return Loaded { notebook, store: store(Some(bytes)), told: None },
        Ok(Err(error @ ReadError::Newer(_))) => {
            let told = format!(
                "The notebook {} cannot be read: {error}. It is left as it is, and what you do \
                 now is not written down.",
                path.display()
            );
            return fresh(None, Some(told));
        }
        Ok(Err(error)) => error.to_string(),
        Err(_) => "it is not text in UTF-8".to_owned(),
    };
    match keep_copy(path, &bytes) {
        Ok(copy) => fresh(
            store(Some(bytes)),
            Some(format!(
                "The notebook {} cannot be read: {why}. It is kept as {}, and a new notebook \
                     is begun.",
                path.display(),
                copy.display()
            )),
        ),
        Err(error) => fresh(
            None,
            Some(format!(
                "The notebook {} cannot be read: {why}. It cannot be copied either: {error}. \
                     It is left as it is, and what you do now is not written down.",
                path.display()
            )),
        ),
    }
}

impl Store {
    /// The notebook's file.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Saves: written aside, forced to disk, then put in the file's place in one step. Gives back
    /// the copy that was kept of what another program had written there, if any.
    ///
    /// # Errors
    /// The file or the folder cannot be read or written; what stands there is untouched.
    pub fn save(&mut self, notebook: &Notebook) -> io::Result<Option<PathBuf>> {
        let text = notebook.text().map_err(io::Error::other)?;
        let folder = self.path.parent().unwrap_or(Path::new("."));
        fs::create_dir_all(folder)?;
        let copy = match read(&self.path) {
            Ok(now) if self.last.as_ref() != Some(&now) && now != text.as_bytes() => {
                Some(keep_copy(&self.path, &now)?)
            }
            Ok(_) => None,
            Err(error) if error.kind() == ErrorKind::NotFound => None,
            Err(error) => return Err(error),
        };
        put(&self.path, text.as_bytes())?;
        self.last = Some(text.into_bytes());
        Ok(copy)
    }
}

/// Writes the notebook as Markdown to a path of the reader's choice.
///
/// # Errors
/// There is a file already and `over` is not set, or it cannot be written.
pub fn export(path: &Path, markdown: &str, over: bool) -> io::Result<()> {
    if !over && path.exists() {
        return Err(io::Error::new(
            ErrorKind::AlreadyExists,
            "there is a file of that name already; choose another name",
        ));
    }
    put(path, markdown.as_bytes())
}

fn read(path: &Path) -> io::Result<Vec<u8>> {
    // A device could wait forever or never end, so look before opening.
    let about = fs::metadata(path)?;
    if !about.is_file() {
        return Err(io::Error::new(ErrorKind::InvalidInput, "it is not a file"));
    }
    if about.len() > LARGEST {
        return Err(io::Error::new(ErrorKind::FileTooLarge, "it is larger than 16 MiB"));
    }
    fs::read(path)
}

/// A copy beside the file: `notebook.kept-1.toml`; one that is there already is enough.
fn keep_copy(path: &Path, bytes: &[u8]) -> io::Result<PathBuf> {
    for number in 1..=COPIES {
        let copy = path.with_extension(format!("kept-{number}.toml"));
        match read(&copy) {
            Ok(kept) if kept == bytes => return Ok(copy),
            Err(error) if error.kind() == ErrorKind::NotFound => {
                put(&copy, bytes)?;
                return Ok(copy);
            }
            _ => {}
        }
    }
    Err(io::Error::other("there are too many copies of it"))
}
