//! What a build says, in numbers: the start of every pass over the rules.

use std::collections::BTreeMap;

use super::part::PartField;
use crate::quantity::AnyId;
use crate::rules::Givens;

/// Which entry of a build something is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// A number.
    Number(AnyId),
    /// A field of a part, counted from zero.
    Part(usize, PartField),
    /// The trial mass.
    Trial,
}

/// Something said about one entry of a build.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Remark {
    /// Which entry.
    pub place: Place,
    /// What is the matter and how to mend it, in words.
    pub message: String,
}

/// One part in numbers, SI units.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PartNumbers {
    /// Its mass in kilograms, if it can be read.
    pub mass: Option<f64>,
    /// Where it is in metres, forward, left and up, if it has a place that can be read.
    pub at: Option<[f64; 3]>,
}

/// The parts list added up, without the trial mass, SI units.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PartsTotal {
    /// Each part, in the order of the list.
    pub each: Vec<PartNumbers>,
    /// The sum of the masses that can be read, in kilograms.
    pub mass: f64,
    /// The half-width of the sum, in kilograms; zero when no part carries a spread.
    pub mass_spread: f64,
    /// The centre of gravity in metres, when at least 99 % of the mass has a place.
    pub cg: Option<[f64; 3]>,
    /// How much of the mass has a place, in kilograms.
    pub placed_mass: f64,
    /// The names of the parts without a place.
    pub unplaced: Vec<String>,
}

/// What a build says, in numbers.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Tally {
    /// The numbers that can be read, in SI units, each with its origin.
    pub givens: Givens,
    /// How sure they are: half-widths in SI units, for those that carry one.
    pub spreads: BTreeMap<AnyId, f64>,
    /// Entries that cannot be read; their quantities are not given.
    pub problems: Vec<Remark>,
    /// What the reader should know before trusting the numbers.
    pub cautions: Vec<Remark>,
    /// The parts list added up.
    pub parts: PartsTotal,
    /// The centre of gravity of the parts and the trial mass in metres: forward, left, up.
    pub cg: Option<[f64; 3]>,
}
