//! A copy of unsaved work, kept in the program's own folder, to be offered after a crash.
//!
//! The reader's own file is never touched, and nothing is taken from a copy unasked.

use std::fs;
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::time::{SystemTime, UNIX_EPOCH};

use serde::{Deserialize, Serialize};

use super::save::put;
use super::stamp::hash;
use crate::sheet::{LARGEST, Sheet};

/// The end of the name of a recovery copy.
const ENDING: &str = "recovery.json";

/// Unsaved work as it was when the program last wrote it aside.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Recovery {
    /// The build file it belongs to; none for a build never saved.
    pub path: Option<PathBuf>,
    /// Seconds since 1970, UTC.
    pub written: u64,
    /// The text of the build.
    pub text: String,
}

/// Writes unsaved work aside in `folder`, in place of an earlier copy for the same file.
///
/// # Errors
/// The folder cannot be made or written.
pub fn write(folder: &Path, path: Option<&Path>, sheet: &Sheet) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    let since = SystemTime::now().duration_since(UNIX_EPOCH);
    let recovery = Recovery {
        path: path.map(Path::to_owned),
        written: since.map_or(0, |since| since.as_secs()),
        text: sheet.text().to_owned(),
    };
    let copy = copy_of(folder, path);
    put(&copy, &copy, &serde_json::to_vec(&recovery)?, |file, bytes| file.write_all(bytes))
}

/// The unsaved work kept for a file, if there is any that differs from what the file holds.
///
/// # Errors
/// A copy is there and cannot be read.
pub fn find(folder: &Path, path: Option<&Path>) -> io::Result<Option<Recovery>> {
    let Some(recovery) = read(&copy_of(folder, path))? else { return Ok(None) };
    let same = path
        .is_some_and(|path| fs::read(path).is_ok_and(|bytes| bytes == recovery.text.as_bytes()));
    Ok(Some(recovery).filter(|_| !same))
}

/// All unsaved work kept in a folder, the newest first; a damaged copy is passed over.
///
/// # Errors
/// The folder is there and cannot be read.
pub fn find_all(folder: &Path) -> io::Result<Vec<Recovery>> {
    let entries = match fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(error),
    };
    let mut found: Vec<Recovery> = entries
        .filter_map(Result::ok)
        .map(|entry| entry.path())
        .filter(|path| path.to_string_lossy().ends_with(ENDING))
        .filter_map(|path| read(&path).ok().flatten())
        .collect();
    found.sort_by_key(|recovery| std::cmp::Reverse(recovery.written));
    Ok(found)
}

/// Forgets the unsaved work kept for a file: it was saved, or the reader let it go.
///
/// # Errors
/// A copy is there and cannot be taken away.
pub fn discard(folder: &Path, path: Option<&Path>) -> io::Result<()> {
    match fs::remove_file(copy_of(folder, path)) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// Where the copy for a file is kept. The path is made absolute first, so that it is the same
/// whichever folder the program was started in.
fn copy_of(folder: &Path, path: Option<&Path>) -> PathBuf {
    let name = path.map_or_else(
        || "unsaved".to_owned(),
        |path| {
            let whole = std::path::absolute(path);
            let whole = whole.as_deref().unwrap_or(path);
            format!("{:016x}", hash(whole.as_os_str().as_encoded_bytes()))
        },
    );
    folder.join(format!("{name}.{ENDING}"))
}

fn read(copy: &Path) -> io::Result<Option<Recovery>> {
    // Escapes make the copy longer than the build, sixfold at most.
    match fs::metadata(copy) {
        Ok(metadata) if metadata.len() > 8 * LARGEST as u64 => {
            return Err(io::Error::new(ErrorKind::FileTooLarge, "the copy is too large"));
        }
        Ok(_) => {}
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(error),
    }
    Ok(serde_json::from_slice(&fs::read(copy)?)?)
}
