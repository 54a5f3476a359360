//! The build: every number the reader entered, the parts, the file they live in and its history.
//!
//! A [`Sheet`] *is* the text of its file. It is read once into numbers, names and parts; every
//! [`Edit`] changes only the lines it has to and reads the text anew. So a comment, an unknown
//! number or an odd layout can never be lost, and undo gives back the file byte for byte.

mod edit;
mod part;
mod report;
mod tally;

use std::collections::BTreeMap;
use std::sync::Arc;

pub use edit::{Edit, EditRefused};
pub use part::{Axis, Part, PartField, TrialMass};
pub use report::{Position, Report, SyntaxError};
pub use tally::{PartNumbers, PartsTotal, Place, Remark, Tally};

use crate::quantity::AnyId;

/// The format of build files that this program writes.
pub const FORMAT: i64 = 1;

/// The largest build file that is opened, in bytes.
pub const LARGEST: usize = 1 << 20;

/// A build: what the reader entered, exactly as typed. Cheap to clone.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    contents: Arc<Contents>,
}

/// A build file as read.
#[derive(Debug, PartialEq)]
struct Contents {
    text: String,
    format: i64,
    name: String,
    note: String,
    numbers: BTreeMap<AnyId, String>,
    parts: Vec<Part>,
    trial: Option<TrialMass>,
    reports: Vec<Report>,
}

impl Sheet {
    /// The whole file.
    pub fn text(&self) -> &str {
        &self.contents.text
    }

    /// What the build is called.
    pub fn name(&self) -> &str {
        &self.contents.name
    }

    /// The reader's note; empty when there is none.
    pub fn note(&self) -> &str {
        &self.contents.note
    }

    /// A number as typed, if one was entered.
    pub fn number(&self, id: impl Into<AnyId>) -> Option<&str> {
        self.contents.numbers.get(&id.into()).map(String::as_str)
    }

    /// Every number entered, as typed, in the order of their names.
    pub fn numbers(&self) -> impl Iterator<Item = (AnyId, &str)> {
        self.contents.numbers.iter().map(|(id, text)| (*id, text.as_str()))
    }

    /// The parts list.
    pub fn parts(&self) -> &[Part] {
        &self.contents.parts
    }

    /// The trial mass, if there is one.
    pub fn trial(&self) -> Option<&TrialMass> {
        self.contents.trial.as_ref()
    }

    /// What was found in the file that the reader should know of, in the order of the lines.
    pub fn reports(&self) -> &[Report] {
        &self.contents.reports
    }

    /// Whether the file has a format newer than this program writes, so no edit is taken.
    pub fn is_read_only(&self) -> bool {
        self.contents.format > FORMAT
    }
}
