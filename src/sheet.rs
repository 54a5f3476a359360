//! The build: every number the reader entered, the parts, the file they live in and its history.
//!
//! A [`Sheet`] *is* the text of its file. It is read once into numbers, names and parts; every
//! [`Edit`] changes only the lines it has to. Text written over text changes nothing else; after any
//! other edit the text is read anew. So a comment, an unknown number or an odd layout can never be
//! lost, and undo gives back the file byte for byte.

mod contents;
pub mod demo;
mod draft;
mod edit;
pub mod family;
pub mod file;
mod history;
mod parsed;
mod part;
pub mod presets;
mod read;
mod report;
mod sum;
mod syntax;
mod tally;
mod write;

use std::sync::Arc;

use contents::Contents;
pub use edit::{Edit, EditRefused};
pub use family::Family;
pub use history::{Gesture, History};
pub use part::{Axis, Part, PartField, TrialMass};
pub use report::{Position, Report, SyntaxError};
pub use tally::{FROM_PARTS, PartNumbers, PartsTotal, Place, Remark, Tally};

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

impl Sheet {
    /// Reads the text of a build file.
    ///
    /// # Errors
    /// The text is no TOML. Anything else that is odd is kept and stands in [`Self::reports`].
    pub fn read(text: &str) -> Result<Self, SyntaxError> {
        Ok(Self { contents: Arc::new(read::read(text)?) })
    }

    /// An empty build.
    pub fn blank() -> Self {
        let text = format!("format = {FORMAT}\n");
        Self { contents: Arc::new(Contents { text, format: FORMAT, ..Contents::default() }) }
    }

    /// Makes one change, or leaves the build as it is and says why.
    ///
    /// # Errors
    /// The build is open for reading alone, there is no such part, the number has to be
    /// understood and is not, or the layout of the file does not allow the change.
    pub fn apply(&mut self, edit: &Edit) -> Result<(), EditRefused> {
        self.contents = Arc::new(draft::changed(&self.contents, edit)?);
        Ok(())
    }

    /// What the build says, in numbers.
    pub fn tally(&self) -> Tally {
        tally::tally(&self.contents.entries)
    }

    /// The whole file.
    pub fn text(&self) -> &str {
        &self.contents.text
    }

    /// What the build is called; empty when the file does not say.
    pub fn name(&self) -> &str {
        &self.contents.entries.name
    }

    /// The reader's note; empty when there is none.
    pub fn note(&self) -> &str {
        &self.contents.entries.note
    }

    /// A number as typed, if one was entered.
    pub fn number(&self, id: impl Into<AnyId>) -> Option<&str> {
        self.contents.entries.numbers.get(&id.into()).map(String::as_str)
    }

    /// Every number entered, as typed, in the order of their names.
    pub fn numbers(&self) -> impl Iterator<Item = (AnyId, &str)> {
        self.contents.entries.numbers.iter().map(|(id, text)| (*id, text.as_str()))
    }

    /// The parts list.
    pub fn parts(&self) -> &[Arc<Part>] {
        &self.contents.entries.parts
    }

    /// The trial mass, if there is one.
    pub fn trial(&self) -> Option<&TrialMass> {
        self.contents.entries.trial.as_ref()
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
