//! Handouts: a lesson with a build's numbers, a build's record and a notebook, each as one HTML file
//! that fetches nothing and prints in black and white from any browser.
//!
//! A handout is put together of pages: the sheets of the groups, and a key. What stands in a sheet
//! is decided in [`prose`] for running text and in [`block`] for the live blocks.

mod block;
mod copies;
mod key;
mod lesson;
mod notebook;
mod page;
mod prose;
mod walk_round;

use bytes::Bytes;
use std::path::Path;

pub use copies::{Copies, TooMany};
pub use lesson::{Request, Told, lesson};
pub use notebook::notebook;
pub use page::Paper;
pub use walk_round::walk_round;

use crate::aside;
use crate::lesson::Library;
use crate::quantity::{AnyId, Units, catalogue};
use crate::sheet::{Sheet, Tally};
use crate::study::Outcome;

/// A build as a handout shows it.
#[derive(Debug, Clone)]
pub struct Subject {
    /// What it is called.
    pub name: String,
    /// The build.
    pub sheet: Sheet,
    /// What its parts and texts add up to.
    pub tally: Tally,
    /// What follows from it.
    pub outcome: Outcome,
}

impl Subject {
    /// A build by its name.
    pub fn new(name: String, sheet: Sheet) -> Self {
        let tally = sheet.tally();
        let outcome = Outcome::of(tally.givens.clone(), &tally.spreads, 0);
        Self { name, sheet, tally, outcome }
    }

    /// A number of the build, in SI units.
    fn si(&self, id: AnyId) -> Option<f64> {
        self.outcome.values.si(id)
    }
}

/// How a lesson is wanted on paper.
#[derive(Debug, Clone)]
pub struct Choices {
    /// The units it is written in.
    pub units: Units,
    /// The paper.
    pub paper: Paper,
    /// Numbers of its own for each group.
    pub copies: Option<Copies>,
    /// Whether a key with the answers follows.
    pub key: bool,
    /// Whether all the text is printed, or only what a bench needs.
    pub whole: bool,
}

/// The lesson of that id as one HTML file, with its pictures and its teacher's page; nothing if the
/// library has no such lesson, or if `told` called it off.
pub fn lesson_of(
    library: &Library,
    id: &str,
    (subject, companion): (&Subject, Option<&Subject>),
    choices: &Choices,
    told: Told<'_>,
) -> Option<String> {
    lesson(&Request {
        lesson: library.lesson(id)?,
        teacher: library.teacher(id),
        picture: &|file| library.picture(id, file).ok(),
        subject,
        companion,
        units: &choices.units,
        paper: choices.paper,
        copies: choices.copies,
        key: choices.key,
        whole: choices.whole,
        told,
    })
}

/// Writes a handout in one step: what was there before stays whole until the new one is.
///
/// # Errors
/// In words, why the file cannot be written.
pub fn save(path: &Path, page: &str) -> Result<(), String> {
    aside::put(path, page.as_bytes())
        .map_err(|error| format!("{} cannot be written: {error}.", path.display()))
}

/// What the pages of one handout are written with.
#[derive(Clone, Copy)]
struct Ink<'a> {
    subject: &'a Subject,
    companion: Option<&'a Subject>,
    units: &'a Units,
    /// The pictures of the lesson.
    picture: &'a dyn Fn(&str) -> Option<Bytes>,
    /// Whether answers are shown.
    key: bool,
}

impl Ink<'_> {
    /// A number of the build with its unit.
    fn number(&self, id: AnyId) -> Option<String> {
        self.subject.si(id).map(|si| self.shown(id, si))
    }

    /// A number as a quantity is shown.
    fn shown(&self, id: AnyId, si: f64) -> String {
        catalogue::find(id.name())
            .map_or_else(String::new, |entry| self.units.show(entry, si).to_string())
    }

    /// The unit a quantity of the build is shown in; nothing for one without.
    fn unit(&self, id: AnyId) -> &'static str {
        catalogue::find(id.name()).map_or("", |entry| {
            self.units.unit_for(entry, self.subject.si(id).unwrap_or(0.0)).symbol
        })
    }
}

/// What a quantity is called.
fn label(id: AnyId) -> &'static str {
    catalogue::find(id.name()).map_or(id.name(), |entry| entry.label)
}
