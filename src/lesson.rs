//! Lessons: Markdown read into a document, the grammar of the live blocks, and proofing.
//!
//! [`parse`] reads one file and never fails; [`Library::load`] reads every lesson of a [`Source`]
//! and holds them against each other; [`proof`] lists what is wrong.

mod anchor;
mod block;
mod document;
mod fields;
mod front;
mod inline;
mod known;
mod library;
mod link;
mod markdown;
mod place;
mod problem;
pub mod proof;
mod walk;
mod words;

pub use block::{
    Asked, Calculator, Choice, Curve, Deeper, Direction, FAR_OVER, FAR_UNDER, Faded, Guess,
    GuessKind, Ledger, LedgerSort, Levers, Line, Measure, Reference, Run, RunPace, SideBySide,
    Sketch, SketchLayer, SketchView, Slip, SlipValue, Step, Target as TargetBlock, Tolerance,
    Variant,
};
pub use document::{
    AlertKind, Alignment, Block, BlockKind, Heading, Lesson, Mention, MentionKind, Span, Style,
    Target,
};
pub use library::{Folder, Library, Memory, Shipped, Source};
pub use problem::Problem;
pub use words::{of_spans, plain_text, reading_minutes, word_count};

use place::{Origin, Report};

/// Reads one lesson. What is wrong with it is part of the result, and the rest still works.
///
/// `file` is what messages call the file: `lessons/pressure/lesson.md`.
pub fn parse(source: &str, file: &str) -> Lesson {
    let mut report = Report::new(file, source);
    let mut lesson = Lesson { file: file.to_owned(), ..Lesson::default() };
    let start = front::read(source, &mut lesson, &mut report);
    let body = source.get(start..).unwrap_or_default();
    let origin = Origin::at(start);
    (lesson.blocks, lesson.headings) = markdown::read(body, &origin, &lesson.id, &mut report);
    let anchors: Vec<_> = lesson.headings.iter().map(|heading| heading.anchor.as_str()).collect();
    report.check_anchors(&anchors);
    (lesson.mentions, lesson.problems) = report.finish();
    lesson
}
