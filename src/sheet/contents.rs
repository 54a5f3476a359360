//! A build file as read.

use std::collections::BTreeMap;

use super::part::{Part, TrialMass};
use super::report::Report;
use crate::quantity::AnyId;

/// A build file: its text, what it says, and what there is to say about it.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Contents {
    pub text: String,
    pub format: i64,
    pub entries: Entries,
    pub reports: Vec<Report>,
}

/// What a build file says.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Entries {
    pub name: String,
    pub note: String,
    pub numbers: BTreeMap<AnyId, String>,
    pub parts: Vec<Part>,
    pub trial: Option<TrialMass>,
}
