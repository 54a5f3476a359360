//! Axle loads, tipping and nosing over.

mod ends;
mod loads;
mod sides;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = loads::rules();
    rules.extend(ends::rules());
    rules.extend(sides::rules());
    rules
}
