//! Beams, bolts, materials and mounts.

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    Vec::new()
}
