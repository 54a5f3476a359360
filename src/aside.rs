//! Writing a file in one step: aside first, then into its place, so that a crash or a full disk leaves
//! what was there before.

use std::fs;
use std::io::{self, Write};
use std::path::Path;

/// Writes a file in one step. A link stays a link: what it leads to is replaced.
///
/// # Errors
/// The folder is missing or may not be written, or the disk is full; the file is as it was.
pub fn put(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let path = fs::canonicalize(path).unwrap_or_else(|_| path.to_owned());
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
    let mut aside = aside_in(folder.unwrap_or(Path::new(".")))?;
    aside.write_all(bytes)?;
    aside.as_file().sync_all()?;
    aside.persist(path).map_err(|error| error.error)?;
    Ok(())
}

/// A file of its own to write to, allowed to whom a new file would be.
fn aside_in(folder: &Path) -> io::Result<tempfile::NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(".heftwise-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        builder.permissions(fs::Permissions::from_mode(0o666));
        builder.tempfile_in(folder)
    }
    #[cfg(not(unix))]
    builder.tempfile_in(folder)
}
