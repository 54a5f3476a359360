//! `deeper`, `answers` and `teacher`: live blocks whose body is Markdown instead of TOML, without
//! headings and live blocks. The first line of `deeper` is its title, which stays in view while it is
//! folded. `answers` to the questions before it stay folded too, and off the paper of those who are
//! asked.

use crate::lesson::document::{Block, BlockKind, Span};
use crate::lesson::place::{Fault, Origin, Report};
use crate::lesson::{inline, markdown};

/// The info strings of their fences.
pub(in crate::lesson) const NAMES: [&str; 3] = [DEEPER, ANSWERS, "teacher"];
const DEEPER: &str = "deeper";
const ANSWERS: &str = "answers";

/// A part that is folded until the reader opens it.
#[derive(Debug, Clone, PartialEq)]
pub struct Deeper {
    /// The line that is always shown.
    pub title: Vec<Span>,
    /// What is folded.
    pub blocks: Vec<Block>,
}

/// Reads the body of the block `name`, whose fence stands at `at`.
pub(super) fn read(
    name: &str,
    body: String,
    origin: &Origin,
    at: usize,
    report: &mut Report,
) -> BlockKind {
    let before = report.count();
    let kind = match name {
        DEEPER => deeper(&body, origin, at, report).map(BlockKind::Deeper),
        ANSWERS => some(&body, origin, at, report).map(BlockKind::Answers),
        _ => some(&body, origin, at, report).map(BlockKind::Teacher),
    };
    kind.unwrap_or_else(|| BlockKind::Broken {
        name: name.to_owned(),
        source: body,
        problems: report.since(before).to_vec(),
    })
}

fn deeper(body: &str, origin: &Origin, at: usize, report: &mut Report) -> Option<Deeper> {
    let blank = body.len() - body.trim_start().len();
    let line = body.get(blank..)?.lines().next().unwrap_or_default();
    if line.is_empty() {
        report
            .add(at, Fault::new("a fold without a title", "a first line that says what is in it"));
        return None;
    }
    let end = blank + line.len();
    let title = inline::read(line, &origin.part(blank..end), report);
    let blocks = some(body.get(end..)?, &origin.part(end..body.len()), at, report)?;
    Some(Deeper { title, blocks })
}

fn some(text: &str, origin: &Origin, at: usize, report: &mut Report) -> Option<Vec<Block>> {
    if text.trim().is_empty() {
        report.add(at, Fault::new("a block with nothing in it", "some Markdown"));
        return None;
    }
    Some(markdown::read_inside(text, origin, report))
}
