//! Where losses go and how hot things get.

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    Vec::new()
}
