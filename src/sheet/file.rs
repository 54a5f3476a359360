//! Build files on disk: opening, saving, and the copy kept for recovery.

pub mod autosave;
mod load;
mod save;
mod stamp;

pub use load::{LoadError, Loaded, load};
pub use save::{SaveError, last_good, save};
pub use stamp::Stamp;

use std::path::Path;

use super::Sheet;

/// The name of a build, or of its file when it has none.
pub fn name_of(sheet: &Sheet, path: Option<&Path>) -> String {
    let name = sheet.name().trim();
    if !name.is_empty() {
        return name.to_owned();
    }
    let file = path.and_then(Path::file_stem).map(|stem| stem.to_string_lossy());
    file.map_or_else(|| "Unnamed build".to_owned(), |file| file.into_owned())
}

/// Why the system did not do what was asked, in words.
fn in_words(error: &std::io::Error) -> String {
    use std::io::ErrorKind as Kind;
    match error.kind() {
        Kind::NotFound => "There is no such file or folder.".to_owned(),
        Kind::PermissionDenied => {
            "You are not allowed to. Choose another folder, or change what is allowed.".to_owned()
        }
        Kind::StorageFull | Kind::QuotaExceeded => {
            "The disk is full. Make room on it, or choose another folder.".to_owned()
        }
        Kind::FileTooLarge => "The system does not allow a file of that size here.".to_owned(),
        Kind::ReadOnlyFilesystem => {
            "This disk can be read but not written. Choose another folder.".to_owned()
        }
        Kind::IsADirectory => "That is a folder. Choose a file.".to_owned(),
        Kind::NotADirectory => "Part of the path is a file, not a folder.".to_owned(),
        _ => format!("The system says: {error}."),
    }
}
