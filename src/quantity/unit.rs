//! Units: what a reader may type and what the program shows.

mod find;
mod table;

use super::dimension::Dimension;
pub use find::{Missed, find, is_percent};
use table::UNITS;

/// One unit of one dimension.
#[derive(Debug, PartialEq)]
pub struct Unit {
    /// The symbol as shown: `kPa`, `N·m`, `m/s²`; empty for a plain number.
    pub symbol: &'static str,
    /// Other spellings that are read.
    pub aliases: &'static [&'static str],
    /// What it measures.
    pub dimension: Dimension,
    /// How many coherent SI units one of it is.
    pub factor: f64,
    /// The SI value at its zero: not zero only for temperature readings.
    pub offset: f64,
    /// Whether it belongs to the metric set.
    pub metric: bool,
    /// Whether it belongs to the imperial set.
    pub imperial: bool,
    /// Whether the program takes it of its own accord, or only when the reader picks it.
    pub automatic: bool,
    /// Whether only quantities that list it know it (`g` as a multiple of standard gravity).
    pub listed_only: bool,
}

impl Unit {
    /// The value in the coherent SI unit of `x` of this unit.
    pub fn to_si(&self, x: f64) -> f64 {
        x * self.factor + self.offset
    }

    /// How many of this unit an SI value is.
    pub fn from_si(&self, si: f64) -> f64 {
        (si - self.offset) / self.factor
    }

    /// The symbol as TeX: `\mathrm{m/s^{2}}`, `{}^\circ`; empty for a plain number.
    pub fn tex(&self) -> String {
        let (degree, letters) = match self.symbol.strip_prefix('°') {
            Some(rest) => (r"{}^\circ", rest),
            None => ("", self.symbol),
        };
        if letters.is_empty() {
            return degree.to_owned();
        }
        let mut tex = format!(r"{degree}\mathrm{{");
        for c in letters.chars() {
            match c {
                '·' => tex.push_str(r"{\cdot}"),
                '²' => tex.push_str("^{2}"),
                '³' => tex.push_str("^{3}"),
                '⁴' => tex.push_str("^{4}"),
                'µ' => tex.push_str(r"\mu "),
                '₂' => tex.push_str("_{2}"),
                '%' => tex.push_str(r"\%"),
                _ => tex.push(c),
            }
        }
        tex.push('}');
        tex
    }
}

/// Every unit of a dimension, small to large within a set.
pub fn of_dimension(dimension: Dimension) -> impl Iterator<Item = &'static Unit> {
    UNITS.iter().filter(move |unit| unit.dimension == dimension)
}

/// The unit workings are written in: the coherent SI unit, but degrees for angles.
pub fn si_unit(dimension: Dimension) -> &'static Unit {
    of_dimension(dimension)
        .find(|unit| match dimension {
            Dimension::Angle => unit.symbol == "°",
            _ => unit.factor == 1.0 && unit.offset == 0.0,
        })
        .unwrap_or(&UNITS[0])
}

/// Whether a word is the symbol of a unit of any dimension, as shown.
pub fn is_symbol(word: &str) -> bool {
    !word.is_empty() && UNITS.iter().any(|unit| unit.symbol == word)
}
