//! Force, power, speed and stopping.

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    Vec::new()
}
