//! What to say about a text that is no number.

use std::ops::Range;

use crate::quantity::Dimension;
use crate::quantity::entry::Entry;
use crate::quantity::preference::suggested;
use crate::quantity::unit::Missed;

/// Why a text is no number of a quantity; its words say what was expected and how to mend it.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{fault}")]
pub struct NumberError {
    /// The bytes of the text it is about.
    pub at: Range<usize>,
    /// What is wrong there.
    pub fault: NumberFault,
}

/// What can be wrong with a number.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NumberFault {
    /// Nothing was written.
    #[error("Nothing is written here. Write a number {wanted}.")]
    Empty {
        /// The units expected, in words.
        wanted: String,
    },
    /// No number where one was expected.
    #[error("{found} is not a number. Write digits {wanted}.")]
    NotANumber {
        /// What stands there, quoted.
        found: String,
        /// The units expected, in words.
        wanted: String,
    },
    /// A comma that may be a decimal comma or part thousands.
    #[error("{found} can be read as {one} or {other}: write {one} or {other}.")]
    Ambiguous {
        /// What stands there, quoted.
        found: String,
        /// The reading as a decimal comma.
        one: String,
        /// The reading as thousands.
        other: String,
    },
    /// Points, commas or apostrophes where no number has them.
    #[error(
        "The points and commas of {found} fit no number. Write plain digits and one decimal point."
    )]
    OddSeparators {
        /// What stands there, quoted.
        found: String,
    },
    /// A fraction over zero.
    #[error("{found} divides by zero. Write another number below the line.")]
    OverZero {
        /// What stands there, quoted.
        found: String,
    },
    /// Too large to reckon with.
    #[error("{found} is too large to reckon with. Check the number of zeros.")]
    TooLarge {
        /// What stands there, quoted.
        found: String,
    },
    /// A number without a unit.
    #[error("Add a unit: {units}.")]
    NoUnit {
        /// The units expected.
        units: String,
    },
    /// A unit nobody knows.
    #[error("{found} is no unit known here{}. Write the number {wanted}.", meant(.nearest))]
    UnknownUnit {
        /// What stands there, quoted.
        found: String,
        /// The unit that may be meant.
        nearest: Option<&'static str>,
        /// The units expected, in words.
        wanted: String,
    },
    /// Capitals decide, and they fit neither unit.
    #[error("{found} can be {choices}: capital and small letters matter here. Write one of them.")]
    Capitals {
        /// What stands there, quoted.
        found: String,
        /// The units it can be.
        choices: String,
    },
    /// A unit of something else.
    #[error("{unit} is {is}, where {wants} belongs. Write the {label} {wanted}.")]
    WrongDimension {
        /// The unit found.
        unit: &'static str,
        /// What that unit measures.
        is: &'static str,
        /// The quantity's label.
        label: &'static str,
        /// What the quantity is.
        wants: &'static str,
        /// The units expected, in words.
        wanted: String,
    },
    /// Two numbers that do not add up to one: `3 in 5 ft`.
    #[error("Two numbers stand here. {mend}")]
    TwoNumbers {
        /// What to write instead.
        mend: &'static str,
    },
    /// A spread that is no half-width.
    #[error("What stands after ± is how far the number may be off, so it cannot be negative.")]
    NegativeSpread,
    /// A second `±`.
    #[error("Only one ± can stand in a number. Leave out {found}.")]
    SecondSpread {
        /// What stands there, quoted.
        found: String,
    },
    /// A percentage that may be points or a share of the number.
    #[error("The % can be meant for both numbers or only for the spread: write {one} or {other}.")]
    AmbiguousPercent {
        /// Both in percent.
        one: String,
        /// Neither in percent.
        other: String,
    },
    /// A part of a thing that is counted.
    #[error("The {label} is a count: write a whole number.")]
    NotWhole {
        /// The quantity's label.
        label: &'static str,
    },
}

fn meant(nearest: &Option<&'static str>) -> String {
    nearest.map_or_else(String::new, |unit| format!("; perhaps {unit} is meant"))
}

impl NumberFault {
    pub(super) fn at(self, at: Range<usize>) -> NumberError {
        NumberError { at, fault: self }
    }

    /// The fault of a unit that was not found.
    pub(super) fn of_unit(missed: Missed, text: &str, entry: &Entry) -> Self {
        match missed {
            Missed::Case(choices) => {
                Self::Capitals { found: quoted(text), choices: listed(&choices) }
            }
            Missed::Other(unit) => Self::WrongDimension {
                unit: unit.symbol,
                is: unit.dimension.in_words(),
                label: entry.label,
                wants: entry.dimension.in_words(),
                wanted: wanted(entry),
            },
            Missed::Unknown(nearest) => {
                Self::UnknownUnit { found: quoted(text), nearest, wanted: wanted(entry) }
            }
        }
    }
}

/// How to write a number of an entry: "in kg, g or lb".
pub(super) fn wanted(entry: &Entry) -> String {
    let units = suggested(entry);
    match (units.is_empty(), entry.whole) {
        (false, _) if entry.dimension == Dimension::Ratio => {
            format!("without a unit or in {}", listed(&units))
        }
        (false, _) => format!("in {}", listed(&units)),
        (true, true) => "as a whole number, without a unit".to_owned(),
        (true, false) => "without a unit or in %".to_owned(),
    }
}

/// Units as words: "kg, g or lb".
pub(super) fn listed(units: &[&str]) -> String {
    match units {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [most @ .., last] => format!("{} or {last}", most.join(", ")),
    }
}

/// A text in quotation marks, cut where it grows long.
pub(super) fn quoted(text: &str) -> String {
    const MOST: usize = 24;
    let text = text.trim();
    match text.char_indices().nth(MOST) {
        Some((cut, _)) => format!("“{}…”", &text[..cut]),
        None => format!("“{text}”"),
    }
}
