//! A copy of unsaved work, kept in the program's own folder, to be offered after a crash.
//!
//! The reader's own file is never touched, and nothing is taken from a copy unasked.

use std::fs;
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{SystemTime, UNIX_EPOCH};

use serde::{Deserialize, Serialize};

use super::save::put;
use crate::sheet::{LARGEST, Sheet};

/// The end of the name of a recovery copy.
const ENDING: &str = "recovery.json";

/// Unsaved work as it was when the program last wrote it aside.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Recovery {
    /// The build file it belongs to; none for a build never saved.
    pub path: Option<PathBuf>,
    /// Seconds since 1970, UTC; by a clock that was moved back, one more than the newest other copy,
    /// so that what was written last is the newest.
    pub written: u64,
    /// The text of the build.
    pub text: String,
}

/// Where one opened build keeps its recovery copy: its own, so that no build and no other window
/// writes over it.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub struct Slot(String);

impl Slot {
    /// A place that no other opened build has.
    pub fn new() -> Self {
        static OPENED: AtomicU64 = AtomicU64::new(0);
        let since = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |now| now.as_nanos());
        let opened = OPENED.fetch_add(1, Ordering::Relaxed);
        Self(format!("{since:x}-{}-{opened}.{ENDING}", std::process::id()))
    }

    fn copy(&self, folder: &Path) -> PathBuf {
        folder.join(&self.0)
    }
}

impl Default for Slot {
    fn default() -> Self {
        Self::new()
    }
}

/// Writes unsaved work aside in `folder`, in place of an earlier copy in the same slot.
///
/// # Errors
/// The folder cannot be made or written.
pub fn write(folder: &Path, slot: &Slot, path: Option<&Path>, sheet: &Sheet) -> io::Result<()> {
    fs::create_dir_all(folder)?;
    let since = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_secs());
    let others = copies(folder)?.into_iter().filter(|(other, _)| other != slot);
    let newest = others.map(|(_, recovery)| recovery.written).max();
    let after = newest.map_or(0, |written| written.saturating_add(1));
    let (written, text) = (since.max(after), sheet.text().to_owned());
    let recovery = Recovery { path: path.map(whole), written, text };
    let copy = slot.copy(folder);
    put(&copy, &copy, &serde_json::to_vec(&recovery)?, |file, bytes| file.write_all(bytes))
}

/// The newest unsaved work kept for a file, or for builds without one, that differs from what the
/// file holds; what is in the slots `but` is passed over.
///
/// # Errors
/// The folder is there and cannot be read.
pub fn find(
    folder: &Path,
    path: Option<&Path>,
    but: &[Slot],
) -> io::Result<Option<(Slot, Recovery)>> {
    let wanted = path.map(whole);
    let held = path.and_then(|path| fs::read(path).ok());
    let found = copies(folder)?.into_iter().find(|(slot, recovery)| {
        recovery.path.as_deref().map(whole) == wanted
            && !but.contains(slot)
            && held.as_deref() != Some(recovery.text.as_bytes())
    });
    Ok(found)
}

/// All unsaved work kept in a folder, the newest first; a damaged copy is passed over.
fn copies(folder: &Path) -> io::Result<Vec<(Slot, Recovery)>> {
    let entries = match fs::read_dir(folder) {
        Ok(entries) => entries,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(error),
    };
    let mut found: Vec<(Slot, Recovery)> = entries
        .filter_map(Result::ok)
        .filter_map(|entry| entry.file_name().into_string().ok())
        .filter(|name| name.ends_with(ENDING))
        .filter_map(|name| Some((read(&folder.join(&name)).ok().flatten()?, name)))
        .map(|(recovery, name)| (Slot(name), recovery))
        .collect();
    found.sort_by_key(|(_, recovery)| std::cmp::Reverse(recovery.written));
    Ok(found)
}

/// Forgets the unsaved work kept in a slot: it was saved, or the reader let it go.
///
/// # Errors
/// A copy is there and cannot be taken away.
pub fn discard(folder: &Path, slot: &Slot) -> io::Result<()> {
    match fs::remove_file(slot.copy(folder)) {
        Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
        _ => Ok(()),
    }
}

/// The path made absolute, so that it is the same whichever folder the program was started in.
fn whole(path: &Path) -> PathBuf {
    std::path::absolute(path).unwrap_or_else(|_| path.to_owned())
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
