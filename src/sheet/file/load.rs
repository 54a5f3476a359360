//! Opening a build file.

use std::fs::File;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use thiserror::Error;

use super::in_words;
use super::stamp::Stamp;
use crate::sheet::{LARGEST, Sheet, SyntaxError};

/// A build as opened.
#[derive(Debug, Clone, PartialEq)]
pub struct Loaded {
    /// The build; odd things in the file stand in [`Sheet::reports`].
    pub sheet: Sheet,
    /// What the file held, to be given back when saving.
    pub stamp: Stamp,
}

/// Why a file cannot be opened as a build.
#[derive(Debug, Error)]
pub enum LoadError {
    /// The system did not give the file.
    #[error("{} cannot be opened. {}", path.display(), in_words(cause))]
    Unreadable {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        cause: io::Error,
    },
    /// The path leads to a folder or a device.
    #[error("{} is not a file. Choose a build file, its name ending in .toml.", path.display())]
    NotAFile {
        /// Which path.
        path: PathBuf,
    },
    /// The file is larger than any build.
    #[error(
        "{} is larger than 1 MiB, so it is hardly a build. Nothing was read.", path.display()
    )]
    TooLarge {
        /// Which file.
        path: PathBuf,
    },
    /// The file is no text in UTF-8.
    #[error(
        "{}, line {line}: this is not text in UTF-8. If it is a build, save it as UTF-8 in a text \
         editor; nothing was changed.", path.display()
    )]
    NotText {
        /// Which file.
        path: PathBuf,
        /// The line of the first byte that is no text, counted from one.
        line: usize,
    },
    /// The text is no TOML.
    #[error("{}, {error}", path.display())]
    Syntax {
        /// Which file.
        path: PathBuf,
        /// Where and why.
        error: SyntaxError,
    },
}

/// Opens a build file.
///
/// # Errors
/// The file cannot be read, is no file, is larger than 1 MiB, is no UTF-8 text or no TOML.
pub fn load(path: &Path) -> Result<Loaded, LoadError> {
    let bytes = read(path)?;
    let stamp = Stamp::of(&bytes);
    let text = String::from_utf8(bytes).map_err(|error| {
        let good = error.utf8_error().valid_up_to();
        let newlines = error.as_bytes()[..good].iter().filter(|byte| **byte == b'\n').count();
        LoadError::NotText { path: path.to_owned(), line: newlines + 1 }
    })?;
    let sheet =
        Sheet::read(&text).map_err(|error| LoadError::Syntax { path: path.to_owned(), error })?;
    Ok(Loaded { sheet, stamp })
}

fn read(path: &Path) -> Result<Vec<u8>, LoadError> {
    let unreadable = |cause| LoadError::Unreadable { path: path.to_owned(), cause };
    // A device could wait forever or never end, so look before opening.
    if !path.metadata().map_err(unreadable)?.is_file() {
        return Err(LoadError::NotAFile { path: path.to_owned() });
    }
    let mut bytes = Vec::new();
    let most = LARGEST as u64 + 1;
    File::open(path)
        .and_then(|file| file.take(most).read_to_end(&mut bytes))
        .map_err(unreadable)?;
    if bytes.len() > LARGEST {
        return Err(LoadError::TooLarge { path: path.to_owned() });
    }
    Ok(bytes)
}
