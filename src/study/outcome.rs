//! Everything that follows from one state of the build, worked out once per edit.

use std::collections::BTreeMap;

use super::spread::{Range, Ranges, ranges};
use crate::quantity::AnyId;
use crate::rules::{Givens, Values, evaluate};

/// One pass over the rules, with the range of every number that has one.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// Counts the edits; caches and lazy views key on it.
    pub revision: u64,
    /// The numbers started from.
    pub givens: Givens,
    /// What is known of every quantity.
    pub values: Values,
    /// How sure each number is.
    pub ranges: Ranges,
}

impl Outcome {
    /// Works everything out from the numbers given and their spreads (half-widths, SI units).
    pub fn of(givens: Givens, spreads: &BTreeMap<AnyId, f64>, revision: u64) -> Self {
        let values = evaluate(&givens);
        let ranges = ranges(&givens, &values, spreads);
        Self { revision, givens, values, ranges }
    }

    /// The range of a quantity, if a given with a spread bears on it.
    pub fn range(&self, id: impl Into<AnyId>) -> Option<&Range> {
        self.ranges.of(id.into())
    }
}
