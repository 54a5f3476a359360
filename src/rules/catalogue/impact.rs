//! .
use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    vec![]
}
