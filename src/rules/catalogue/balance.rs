//! Axle loads, tipping and nosing over.

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    Vec::new()
}
