//! Reading numbers: `6.4 kg`, `3 1/2 in`, `90 ± 2 mm`.

use std::ops::Range;

use super::entry::Entry;
use super::unit::{self, Unit};

/// A number a reader entered.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// The value in the coherent SI unit.
    pub si: f64,
    /// The half-width after `±` in the coherent SI unit, if one was given; never negative.
    pub spread: Option<f64>,
}

/// Why a text is no number; its words say what was expected and how to mend it.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{words}")]
pub struct NumberError {
    /// The bytes of the text it is about.
    pub at: Range<usize>,
    words: String,
}

/// Reads a number with its unit.
///
/// # Errors
/// The text is no number of the entry's dimension.
pub fn parse(text: &str, entry: &Entry) -> Result<Amount, NumberError> {
    read(text, entry, None)
}

/// Reads a number; one without a unit is in `default_unit`.
///
/// # Errors
/// The text is no number of the entry's dimension.
pub fn parse_in(text: &str, entry: &Entry, default_unit: &Unit) -> Result<Amount, NumberError> {
    read(text, entry, Some(default_unit))
}

fn read(text: &str, entry: &Entry, default_unit: Option<&Unit>) -> Result<Amount, NumberError> {
    let fail = |words: &str| NumberError { at: 0..text.len(), words: words.to_owned() };
    let (number, symbol) = match text.trim().split_once(' ') {
        Some((number, symbol)) => (number, symbol.trim()),
        None => (text.trim(), ""),
    };
    let x: f64 = number.parse().map_err(|_| fail("Write a number with its unit."))?;
    let unit = match (symbol, default_unit) {
        ("", Some(unit)) => unit,
        _ => unit::find(entry, symbol).map_err(|_| fail("No such unit."))?,
    };
    Ok(Amount { si: unit.to_si(x), spread: None })
}
