//! Motor, engine, gears and what they give at the ground.

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    Vec::new()
}
