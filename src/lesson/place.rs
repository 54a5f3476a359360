//! Where things stand in a lesson file, also inside the text of a live block.

use std::cell::Cell;
use std::ops::Range;

use super::claim::{Claim, Says};
use super::document::{Mention, MentionKind};
use super::problem::Problem;
use super::prose::Prose;
use crate::quantity::catalogue::nearest_of;

/// The lines of a file.
struct Lines<'a> {
    source: &'a str,
    starts: Vec<usize>,
    /// The last place asked for, as offset and column: the next is mostly further on in its line.
    last: Cell<(usize, usize)>,
}

impl<'a> Lines<'a> {
    fn new(source: &'a str) -> Self {
        let ends = source.bytes().enumerate().filter(|(_, b)| *b == b'\n').map(|(at, _)| at + 1);
        Self { source, starts: std::iter::once(0).chain(ends).collect(), last: Cell::new((0, 1)) }
    }

    fn line(&self, offset: usize) -> usize {
        self.starts.partition_point(|start| *start <= offset)
    }

    fn column(&self, offset: usize) -> usize {
        let start = self.starts.get(self.line(offset) - 1).copied().unwrap_or_default();
        let (from, column) = match self.last.get() {
            (at, column) if at >= start && at <= offset => (at, column),
            _ => (start, 1),
        };
        let column = column + self.source.get(from..offset).map_or(0, |part| part.chars().count());
        self.last.set((offset, column));
        column
    }
}

/// Collects what is wrong with a file and what it names outside itself.
pub(super) struct Report<'a> {
    file: &'a str,
    lines: Lines<'a>,
    /// Whether the text is proofread, not only read.
    proofs: bool,
    problems: Vec<Problem>,
    flaws: Vec<Problem>,
    mentions: Vec<Mention>,
    claims: Vec<Claim>,
    /// Running text, and whether it stands in a caution or a warning.
    prose: Vec<(bool, Prose)>,
}

impl<'a> Report<'a> {
    /// For a text that is to be shown: what a block works with is passed over.
    pub(super) fn new(file: &'a str, source: &'a str) -> Self {
        Self {
            file,
            lines: Lines::new(source),
            proofs: false,
            problems: Vec::new(),
            flaws: Vec::new(),
            mentions: Vec::new(),
            claims: Vec::new(),
            prose: Vec::new(),
        }
    }

    /// For a text that is proofread.
    pub(super) fn proofing(file: &'a str, source: &'a str) -> Self {
        Self { proofs: true, ..Self::new(file, source) }
    }

    /// Whether flaws and running text are asked for.
    pub(super) fn proofs(&self) -> bool {
        self.proofs
    }

    /// The line of an offset, from 1.
    pub(super) fn line(&self, offset: usize) -> usize {
        self.lines.line(self.on_character(offset))
    }

    /// The line and column of an offset, both from 1.
    fn place(&self, offset: usize) -> (usize, usize) {
        let offset = self.on_character(offset);
        (self.lines.line(offset), self.lines.column(offset))
    }

    /// Notes something wrong at an offset of the file.
    pub(super) fn add(&mut self, offset: usize, fault: Fault) {
        let (line, column) = self.place(offset);
        let problem = self.problem(line, column, fault);
        self.problems.push(problem);
    }

    /// Notes a flaw at an offset of the file: something that is wrong, but that a block works with.
    /// It is told when the text is proofread.
    pub(super) fn flaw(&mut self, offset: usize, fault: Fault) {
        if !self.proofs {
            return;
        }
        let (line, column) = self.place(offset);
        let problem = self.problem(line, column, fault);
        self.flaws.push(problem);
    }

    /// Makes flaws of what was found wrong since [`Report::count`] was `count`.
    pub(super) fn make_flaws(&mut self, count: usize) {
        let wrong = self.problems.split_off(count.min(self.problems.len()));
        self.flaws.extend(wrong);
    }

    /// Notes what the text says of the rules at an offset of the file, if it is proofread.
    pub(super) fn claim(&mut self, offset: usize, says: Says) {
        if !self.proofs {
            return;
        }
        let (line, column) = self.place(offset);
        self.claims.push(Claim { line, column, says });
    }

    /// Takes down running text; `urgent` if it stands in a caution or a warning.
    pub(super) fn prose(&mut self, prose: Prose, urgent: bool) {
        self.prose.push((urgent, prose));
    }

    /// The running text taken down, and whether it stands in a caution or a warning.
    pub(super) fn take_prose(&mut self) -> Vec<(bool, Prose)> {
        std::mem::take(&mut self.prose)
    }

    /// Notes that something outside is named at an offset of the file.
    pub(super) fn mention(&mut self, offset: usize, kind: MentionKind, name: &str) {
        let (line, column) = self.place(offset);
        self.mentions.push(Mention { kind, name: name.to_owned(), line, column });
    }

    /// Notes every link to a heading of the file that it does not have.
    pub(super) fn check_anchors(&mut self, known: &[&str]) {
        let links = std::mem::take(&mut self.mentions);
        for link in &links {
            if link.kind == MentionKind::Heading && !known.contains(&link.name.as_str()) {
                let fault = Fault::new(
                    format!("no heading \"{}\" in this lesson", link.name),
                    "a heading in small letters with hyphens",
                );
                let nearest = nearest_of(&link.name, known.iter().copied());
                let problem = self.problem(link.line, link.column, fault.nearest(nearest));
                self.problems.push(problem);
            }
        }
        self.mentions = links;
    }

    fn problem(&self, line: usize, column: usize, fault: Fault) -> Problem {
        Problem {
            file: self.file.to_owned(),
            line,
            column,
            message: fault.message,
            expected: fault.expected,
            nearest: fault.nearest,
        }
    }

    /// How many things are wrong so far.
    pub(super) fn count(&self) -> usize {
        self.problems.len()
    }

    /// What was found wrong since [`Report::count`] was `count`.
    pub(super) fn since(&self, count: usize) -> &[Problem] {
        self.problems.get(count..).unwrap_or_default()
    }

    /// What a text that was proofread says of the rules, and its flaws.
    pub(super) fn into_proof(self) -> (Vec<Claim>, Vec<Problem>) {
        (self.claims, self.flaws)
    }

    /// Everything named outside and everything wrong, in the order of the file.
    pub(super) fn finish(mut self) -> (Vec<Mention>, Vec<Problem>) {
        self.problems.sort_by_key(|problem| (problem.line, problem.column));
        (self.mentions, self.problems)
    }

    fn on_character(&self, offset: usize) -> usize {
        self.lines.source.floor_char_boundary(offset)
    }
}

/// What is wrong, before it is known where.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Fault {
    message: String,
    expected: String,
    nearest: Option<String>,
}

impl Fault {
    pub(super) fn new(message: impl Into<String>, expected: impl Into<String>) -> Self {
        Self { message: message.into(), expected: expected.into(), nearest: None }
    }

    /// Offers the known word nearest to what was written.
    pub(super) fn nearest(mut self, nearest: Option<&str>) -> Self {
        self.nearest = nearest.map(str::to_owned);
        self
    }
}

/// Leads from an offset in a text taken out of a file back to the file.
#[derive(Debug, Clone, Default)]
pub(super) struct Origin {
    /// Offset in the text and in the file where each run taken over unchanged starts.
    runs: Vec<(usize, usize)>,
    /// The text was changed on the way (escapes): everything leads to its start.
    blurred: bool,
}

impl Origin {
    /// A text that stands unchanged in the file.
    pub(super) fn at(offset: usize) -> Self {
        Self { runs: vec![(0, offset)], blurred: false }
    }

    /// A text whose letters cannot be told apart in the file.
    pub(super) fn blurred(offset: usize) -> Self {
        Self { runs: vec![(0, offset)], blurred: true }
    }

    /// Adds a run at the end.
    pub(super) fn push(&mut self, in_text: usize, in_file: usize) {
        self.runs.push((in_text, in_file));
    }

    /// The place in the file of an offset in the text.
    pub(super) fn file(&self, offset: usize) -> usize {
        let next = self.runs.partition_point(|(start, _)| *start <= offset);
        match self.runs.get(next.saturating_sub(1)) {
            Some((_, in_file)) if self.blurred => *in_file,
            Some((start, in_file)) => in_file + offset.saturating_sub(*start),
            None => 0,
        }
    }

    /// The origin of a part of the text.
    pub(super) fn part(&self, part: Range<usize>) -> Self {
        if self.blurred {
            return self.clone();
        }
        let first = (0, self.file(part.start));
        let rest = self
            .runs
            .iter()
            .filter(|(start, _)| *start > part.start && *start < part.end)
            .map(|(start, in_file)| (start - part.start, *in_file));
        Self { runs: std::iter::once(first).chain(rest).collect(), blurred: false }
    }
}
