//! The words of a lesson without its layout: for search, for counts.

use super::block::{Guess, GuessKind};
use super::document::{Block, BlockKind, Heading, Lesson, Span};

/// Words a minute of an adult reading non-fiction in silence: 238, the mean over many studies in
/// M. Brysbaert, "How many words do we read per minute?", Journal of Memory and Language 109 (2019).
const WORDS_A_MINUTE: usize = 238;

/// Words being gathered, a line for each block, cell and answer.
#[derive(Default)]
struct Words {
    text: String,
    /// Whether those are among them that are told after an answer, or to a teacher.
    asides: bool,
}

/// Every word that a reader meets in a lesson, a line for each block, cell and answer; notes for
/// teachers are not among them.
pub fn plain_text(lesson: &Lesson) -> String {
    let mut words = Words::default();
    for line in std::iter::once(&lesson.front.title).chain(&lesson.front.goals) {
        words.add(line);
    }
    words.of_blocks(&lesson.blocks);
    words.text
}

/// The words from one heading to the next.
#[derive(Debug, Clone, PartialEq)]
pub struct Section<'a> {
    /// The heading; none for what stands before the first one.
    pub heading: Option<&'a Heading>,
    /// The words under it, its own included.
    pub text: String,
}

/// The words of a lesson's blocks, heading by heading.
pub fn sections(lesson: &Lesson) -> Vec<Section<'_>> {
    sections_of(lesson, false)
}

/// The same with everything that is told only after an answer, or to a teacher.
pub(super) fn sections_in_full(lesson: &Lesson) -> Vec<Section<'_>> {
    sections_of(lesson, true)
}

fn sections_of(lesson: &Lesson, asides: bool) -> Vec<Section<'_>> {
    let starts = |block: &&Block| matches!(block.kind, BlockKind::Heading { .. });
    let section = |blocks: &[Block]| {
        let heading = match blocks.first().map(|block| &block.kind) {
            Some(BlockKind::Heading { anchor, .. }) => {
                lesson.headings.iter().find(|heading| heading.anchor == *anchor)
            }
            _ => None,
        };
        let mut words = Words { asides, ..Words::default() };
        words.of_blocks(blocks);
        Section { heading, text: words.text }
    };
    let before = lesson.blocks.iter().take_while(|block| !starts(block)).count();
    let (first, rest) = lesson.blocks.split_at(before);
    let under = rest.chunk_by(|_, next| !starts(&next)).map(section);
    std::iter::once(section(first)).chain(under).collect()
}

/// How many words a lesson has.
pub fn word_count(lesson: &Lesson) -> usize {
    plain_text(lesson).split_whitespace().count()
}

/// How many minutes the words alone take an adult to read, at least one; the bench and the
/// questions come on top.
pub fn reading_minutes(lesson: &Lesson) -> usize {
    word_count(lesson).div_ceil(WORDS_A_MINUTE).max(1)
}

/// Whether running text says anything.
pub(super) fn any_in(spans: &[Span]) -> bool {
    spans.iter().any(|span| match span {
        Span::Text { text, .. } | Span::Formula(text) => !text.trim().is_empty(),
        Span::Link { spans, .. } => any_in(spans),
        Span::Break => false,
        Span::FootnoteRef(_) => true,
    })
}

/// The words of running text without style.
pub fn of_spans(spans: &[Span]) -> String {
    let mut text = String::new();
    for span in spans {
        match span {
            Span::Text { text: words, .. } => text.push_str(words),
            Span::Formula(tex) => text.push_str(tex),
            Span::Link { spans, .. } => text.push_str(&of_spans(spans)),
            Span::Break => text.push('\n'),
            Span::FootnoteRef(name) => {
                text.push('[');
                text.push_str(name);
                text.push(']');
            }
        }
    }
    text
}

impl Words {
    fn add(&mut self, line: &str) {
        let line = line.trim();
        if !line.is_empty() {
            self.text.push_str(line);
            self.text.push('\n');
        }
    }

    fn add_aside(&mut self, spans: &[Span]) {
        if self.asides {
            self.add(&of_spans(spans));
        }
    }

    fn of_guess(&mut self, guess: &Guess) {
        for attempt in 0..=guess.variants.len() {
            let asked = guess.asked(attempt);
            self.add(&of_spans(asked.question));
            for (_, choice) in asked.choices() {
                self.add(&of_spans(&choice.text));
                self.add_aside(&choice.reply);
            }
            match asked.kind {
                GuessKind::Choice(_) => {}
                GuessKind::Direction { replies, .. } => {
                    replies.iter().for_each(|(_, reply)| self.add_aside(reply));
                }
                GuessKind::Number { slips, .. } => {
                    slips.iter().for_each(|slip| self.add_aside(&slip.reply));
                }
            }
            self.add_aside(asked.why);
        }
        self.add(&of_spans(&guess.why));
    }

    fn of_blocks(&mut self, blocks: &[Block]) {
        blocks.iter().for_each(|block| self.of_block(&block.kind));
    }

    fn of_block(&mut self, kind: &BlockKind) {
        match kind {
            BlockKind::Heading { spans, .. } | BlockKind::Paragraph(spans) => {
                self.add(&of_spans(spans));
            }
            BlockKind::List { items, .. } => items.iter().for_each(|item| self.of_blocks(item)),
            BlockKind::Quote(blocks) | BlockKind::Alert { blocks, .. } => self.of_blocks(blocks),
            BlockKind::Footnote { name, blocks } => {
                self.add(name);
                self.of_blocks(blocks);
            }
            BlockKind::Table { header, rows, .. } => {
                let cells = header.iter().chain(rows.iter().flatten());
                cells.for_each(|cell| self.add(&of_spans(cell)));
            }
            BlockKind::Code { language, text: code } => {
                self.add(language);
                self.add(code);
            }
            BlockKind::Formula(tex) => self.add(tex),
            BlockKind::Picture { alt, .. } => self.add(alt),
            BlockKind::Rule => {}
            BlockKind::Calculator(calculator) => {
                self.add(calculator.title.as_deref().unwrap_or(""))
            }
            BlockKind::Curve(curve) => self.add(curve.title.as_deref().unwrap_or("")),
            BlockKind::Sketch(sketch) => self.add(sketch.title.as_deref().unwrap_or("")),
            BlockKind::Ledger(ledger) => self.add(ledger.title.as_deref().unwrap_or("")),
            BlockKind::SideBySide(table) => self.add(table.title.as_deref().unwrap_or("")),
            BlockKind::Target(target) => self.add(target.title.as_deref().unwrap_or("")),
            BlockKind::Levers(levers) => self.add(levers.title.as_deref().unwrap_or("")),
            BlockKind::HundredGrams(grams) => self.add(grams.title.as_deref().unwrap_or("")),
            BlockKind::Run(run) => self.add(run.title.as_deref().unwrap_or("")),
            BlockKind::Guess(guess) => self.of_guess(guess),
            BlockKind::Faded(faded) => {
                self.add(faded.title.as_deref().unwrap_or(""));
                for step in &faded.steps {
                    self.add(&of_spans(&step.say));
                    self.add_aside(&step.hint);
                }
            }
            BlockKind::Measure(measure) => {
                self.add(&measure.what);
                self.add(&measure.tool);
                self.of_blocks(&measure.how);
                self.add(&of_spans(&measure.over));
                self.add(&of_spans(&measure.under));
            }
            BlockKind::Deeper(deeper) => {
                self.add(&of_spans(&deeper.title));
                self.of_blocks(&deeper.blocks);
            }
            BlockKind::Answers(blocks) => self.of_blocks(blocks),
            BlockKind::Teacher(blocks) if self.asides => self.of_blocks(blocks),
            BlockKind::Teacher(_) => {}
            BlockKind::Broken { name, source, .. } => {
                self.add(name);
                self.add(source);
            }
        }
    }
}
