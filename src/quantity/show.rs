//! Printing numbers.

use super::entry::Entry;

/// A number in plain SI words.
pub fn show_plain(entry: &Entry, si: f64) -> String {
    let _ = entry;
    format!("{si}")
}
