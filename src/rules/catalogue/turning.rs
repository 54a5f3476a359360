//! What it takes to swing the machine round.

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    Vec::new()
}
