//! Lessons: Markdown read into a document, the grammar of the live blocks, and proofing.
//!
//! [`parse`] reads one file and never fails; [`Library::load`] lists every lesson of a [`Source`],
//! reads each when it is asked for and holds it against the others; [`proof`] lists what is wrong.

mod anchor;
mod appears;
mod block;
mod claim;
mod document;
mod fields;
mod front;
pub mod grammar;
mod inline;
mod known;
mod library;
mod link;
mod markdown;
mod place;
mod printed;
mod problem;
pub mod proof;
mod prose;
mod syllables;
mod walk;
mod words;

pub use appears::Appearance;
pub use block::{
    Asked, Calculator, Choice, Curve, Deeper, Direction, FAR_OVER, FAR_UNDER, Faded, Guess,
    GuessKind, HundredGrams, Ledger, LedgerSort, Levers, Line, Measure, Reference, Run, RunPace,
    SideBySide, Sketch, SketchLayer, SketchView, Slip, SlipValue, Step, Target as TargetBlock,
    Tolerance, Variant,
};
pub use document::{
    AlertKind, Alignment, Block, BlockKind, Front, Heading, Lesson, Mention, MentionKind, Span,
    Style, Target,
};
pub use library::{Folder, Joined, Library, Memory, Minutes, Shipped, Source};
pub use problem::Problem;
pub use words::{Section, of_spans, plain_text, reading_minutes, sections, word_count};

use claim::Claim;
use place::{Origin, Report};

/// Reads one lesson. What is wrong with it is part of the result, and the rest still works.
///
/// `file` is what messages call the file: `lessons/pressure/lesson.md`.
pub fn parse(source: &str, file: &str) -> Lesson {
    let mut report = Report::new(file, source);
    let mut lesson = Lesson { file: file.to_owned(), ..Lesson::default() };
    let (start, _) = front::read(source, &mut lesson.front, &mut report);
    read_from(start, source, &mut lesson, &mut report);
    finished(lesson, report)
}

/// Reads Markdown that is no lesson, and so has no front matter: a teacher's page, a notebook.
pub fn page(source: &str, file: &str) -> Lesson {
    let mut report = Report::new(file, source);
    let mut lesson = Lesson { file: file.to_owned(), ..Lesson::default() };
    read_from(0, source, &mut lesson, &mut report);
    finished(lesson, report)
}

/// A lesson, or a page, with what it says of the rules, and what is wrong with it that it works with:
/// only proofreading pays for this.
fn proofread(source: &str, file: &str, is_page: bool) -> (Lesson, Vec<Claim>, Vec<Problem>) {
    let mut report = Report::proofing(file, source);
    let mut lesson = Lesson { file: file.to_owned(), ..Lesson::default() };
    if is_page {
        read_from(0, source, &mut lesson, &mut report);
    } else {
        let (start, grades) = front::read(source, &mut lesson.front, &mut report);
        read_from(start, source, &mut lesson, &mut report);
        prose::check(&mut report, grades);
    }
    let (claims, flaws) = report.into_proof();
    (lesson, claims, flaws)
}

fn read_from(start: usize, source: &str, lesson: &mut Lesson, report: &mut Report) {
    let body = source.get(start..).unwrap_or_default();
    let origin = Origin::at(start);
    (lesson.blocks, lesson.headings) = markdown::read(body, &origin, &lesson.front.id, report);
    let anchors: Vec<_> = lesson.headings.iter().map(|heading| heading.anchor.as_str()).collect();
    report.check_anchors(&anchors);
}

fn finished(mut lesson: Lesson, report: Report) -> Lesson {
    (lesson.mentions, lesson.problems) = report.finish();
    lesson
}
