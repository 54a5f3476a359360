//! `calculator`: numbers to change, numbers found, and the working.

use crate::quantity::AnyId;

/// Numbers to change, numbers found, and the working.
#[derive(Debug, Clone, PartialEq)]
pub struct Calculator {
    /// What it asks, in a line.
    pub title: Option<String>,
    /// Numbers the reader changes, one to four, all of which can be given.
    pub change: Vec<AnyId>,
    /// Numbers found, at least one, each found by a rule.
    pub find: Vec<AnyId>,
    /// Numbers shown but not changed here.
    pub freeze: Vec<AnyId>,
}
