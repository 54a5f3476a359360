//! Saving a build file so that a crash, a full disk or another program can lose nothing.

use std::ffi::OsString;
#[cfg(unix)]
use std::fs::TryLockError;
use std::fs::{self, File};
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;
use thiserror::Error;

use super::in_words;
use super::stamp::{Stamp, hash};
use crate::sheet::Sheet;

/// How many links from one file to another are followed.
const LINKS: usize = 40;
/// The end of the names of files that are written aside.
const ASIDE: &str = ".part";
/// How often, and with which pause between, a hold on a file is asked for: a save is done sooner.
#[cfg(unix)]
const HOLD_TRIES: usize = 500;
#[cfg(unix)]
const HOLD_PAUSE: std::time::Duration = std::time::Duration::from_millis(2);

/// Why a build was not saved; the file is as it was.
#[derive(Debug, Error)]
pub enum SaveError {
    /// The file is not what was opened: another program changed it, or put one there.
    #[error(
        "{} was changed by another program since it was opened. Nothing was saved. Save under \
         another name, open it anew, or save over it.", path.display()
    )]
    ChangedOnDisk {
        /// Which file.
        path: PathBuf,
        /// What it holds now; given to [`save`], it saves over that.
        now: Stamp,
    },
    /// The file may not be written.
    #[error("{} is marked as read-only. Save under another name.", path.display())]
    ReadOnly {
        /// Which file.
        path: PathBuf,
    },
    /// The path leads to a folder or a device.
    #[error("{} is not a file. Choose a name for the build, ending in .toml.", path.display())]
    NotAFile {
        /// Which path.
        path: PathBuf,
    },
    /// The system did not write the file.
    #[error("{} was not saved; what was there before is untouched. {}", path.display(), in_words(cause))]
    Unwritable {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        cause: io::Error,
    },
}

/// Saves a build: written aside, forced to disk, then put in the file's place in one step.
///
/// `stamp` is what the file held when it was opened or last saved; none for a new file. What the
/// file held before stays beside it as [`last_good`], if it could be read as a build.
///
/// # Errors
/// The file is not what `stamp` says, is marked as read-only, is no file, or cannot be written.
pub fn save(path: &Path, sheet: &Sheet, stamp: Option<Stamp>) -> Result<Stamp, SaveError> {
    save_with(path, sheet, stamp, |file, bytes| file.write_all(bytes))
}

/// The file beside a build file that holds what it held before it was last saved.
pub fn last_good(path: &Path) -> PathBuf {
    let mut name = path.file_name().map_or_else(OsString::new, OsString::from);
    name.push(".last-good");
    path.with_file_name(name)
}

/// [`save`], with the writing of bytes injected so that a test can let it fail.
fn save_with(
    path: &Path,
    sheet: &Sheet,
    stamp: Option<Stamp>,
    write: fn(&mut File, &[u8]) -> io::Result<()>,
) -> Result<Stamp, SaveError> {
    let unwritable = |cause| SaveError::Unwritable { path: path.to_owned(), cause };
    let target = follow_links(path).map_err(unwritable)?;
    if fs::metadata(&target).is_ok_and(|metadata| !metadata.is_file()) {
        return Err(SaveError::NotAFile { path: path.to_owned() });
    }
    let held = hold(&target);
    if held.is_some() {
        sweep(&target);
    }
    let before = match fs::read(&target) {
        Ok(bytes) => Some(bytes),
        Err(error) if error.kind() == ErrorKind::NotFound => None,
        Err(error) => return Err(unwritable(error)),
    };
    if let Some(bytes) = &before {
        let now = Stamp::of(bytes);
        if stamp != Some(now) {
            return Err(SaveError::ChangedOnDisk { path: path.to_owned(), now });
        }
        if fs::metadata(&target).map_err(unwritable)?.permissions().readonly() {
            return Err(SaveError::ReadOnly { path: path.to_owned() });
        }
        if is_good(bytes) && bytes != sheet.text().as_bytes() {
            put(&last_good(&target), &target, bytes, write).map_err(unwritable)?;
        }
    }
    put(&target, &target, sheet.text().as_bytes(), write).map_err(unwritable)?;
    Ok(Stamp::of(sheet.text().as_bytes()))
}

/// Holds a file until it is dropped, so that no other window of this program saves it between the
/// look at what it holds and the step that replaces it. Without a hold, where the disk knows none
/// or another program has one for long, the look alone has to do.
#[cfg(unix)]
fn hold(path: &Path) -> Option<File> {
    use std::os::unix::fs::MetadataExt;
    let identity = |about: fs::Metadata| (about.dev(), about.ino());
    for _ in 0..HOLD_TRIES {
        let file = File::open(path).ok()?;
        match file.try_lock() {
            // It may have been replaced while it was opened.
            Ok(())
                if file.metadata().ok().map(identity) == fs::metadata(path).ok().map(identity) =>
            {
                return Some(file);
            }
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => std::thread::sleep(HOLD_PAUSE),
            Err(TryLockError::Error(_)) => return None,
        }
    }
    None
}

/// Other systems do not replace a file that is held.
#[cfg(not(unix))]
fn hold(_: &Path) -> Option<File> {
    None
}

fn is_good(bytes: &[u8]) -> bool {
    std::str::from_utf8(bytes).is_ok_and(|text| Sheet::read(text).is_ok())
}

/// The file that a path leads to in the end, whether or not it is there yet.
fn follow_links(path: &Path) -> io::Result<PathBuf> {
    let mut path = path.to_owned();
    for _ in 0..LINKS {
        match fs::read_link(&path) {
            Ok(next) => path = folder(&path).join(next),
            Err(_) => return Ok(path),
        }
    }
    Err(io::Error::other("too many links lead from one file to another"))
}

fn folder(path: &Path) -> &Path {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// Puts bytes in a file's place in one step; permissions are those of `like`, where it is there.
pub(super) fn put(
    path: &Path,
    like: &Path,
    bytes: &[u8],
    write: fn(&mut File, &[u8]) -> io::Result<()>,
) -> io::Result<()> {
    let folder = folder(path);
    let mut aside = aside_in(folder, &aside_name(like))?;
    write(aside.as_file_mut(), bytes)?;
    if let Ok(metadata) = fs::metadata(like) {
        aside.as_file().set_permissions(metadata.permissions())?;
    }
    aside.as_file().sync_all()?;
    aside.persist(path).map_err(|error| error.error)?;
    sync_folder(folder)
}

/// How the names of files begin that are written aside for a file: of its own, and short whatever
/// its name is.
fn aside_name(file: &Path) -> String {
    let name = file.file_name().unwrap_or_default();
    format!(".heftwise-{:x}-", hash(name.as_encoded_bytes()))
}

/// Clears away what was written aside for a file by a program that was killed. The file has to be
/// held, so that nobody else is writing aside for it.
fn sweep(target: &Path) {
    let start = aside_name(target);
    let Ok(entries) = fs::read_dir(folder(target)) else { return };
    for entry in entries.filter_map(Result::ok) {
        let name = entry.file_name();
        let is_aside = name.as_encoded_bytes().starts_with(start.as_bytes())
            && name.as_encoded_bytes().ends_with(ASIDE.as_bytes());
        if is_aside {
            // What cannot be cleared away does no harm.
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// A file of its own to write to, allowed to whom a new file would be.
fn aside_in(folder: &Path, start: &str) -> io::Result<NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(start).suffix(ASIDE);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        builder.permissions(fs::Permissions::from_mode(0o666));
        builder.tempfile_in(folder)
    }
    #[cfg(not(unix))]
    builder.tempfile_in(folder)
}

/// Forces the new name to disk; only some systems let a folder be opened for that.
fn sync_folder(folder: &Path) -> io::Result<()> {
    if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test may be blunt")]
mod tests {
    use super::*;

    /// A disk that is full after a few bytes.
    fn full(file: &mut File, bytes: &[u8]) -> io::Result<()> {
        file.write_all(&bytes[..bytes.len() / 2])?;
        Err(ErrorKind::StorageFull.into())
    }

    #[test]
    fn a_full_disk_leaves_the_old_file_and_no_litter() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("build.toml");
        let old = Sheet::blank();
        let stamp = save(&path, &old, None).unwrap();
        let new = Sheet::read("format = 1\nname = \"Other\"\n").unwrap();
        let error = save_with(&path, &new, Some(stamp), full).unwrap_err();
        assert!(error.to_string().contains("disk is full"), "{error}");
        assert_eq!(fs::read_to_string(&path).unwrap(), old.text());
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "something was left behind");
    }
}
