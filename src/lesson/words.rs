//! The words of a lesson without its layout: for search, for counts.

use super::document::{Block, BlockKind, Heading, Lesson, Span};

/// Words a minute of an adult reading non-fiction in silence: 238, the mean over many studies in
/// M. Brysbaert, "How many words do we read per minute?", Journal of Memory and Language 109 (2019).
const WORDS_A_MINUTE: usize = 238;

/// Every word that a reader meets in a lesson, a line for each block, cell and answer; notes for
/// teachers are not among them.
pub fn plain_text(lesson: &Lesson) -> String {
    let mut text = String::new();
    for line in std::iter::once(&lesson.title).chain(&lesson.goals) {
        add(&mut text, line);
    }
    of_blocks(&lesson.blocks, &mut text);
    text
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
    let mut sections = vec![Section { heading: None, text: String::new() }];
    for block in &lesson.blocks {
        if let BlockKind::Heading { anchor, .. } = &block.kind {
            let heading = lesson.headings.iter().find(|heading| heading.anchor == *anchor);
            sections.push(Section { heading, text: String::new() });
        }
        if let Some(section) = sections.last_mut() {
            of_block(&block.kind, &mut section.text);
        }
    }
    sections
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

fn of_blocks(blocks: &[Block], text: &mut String) {
    for block in blocks {
        of_block(&block.kind, text);
    }
}

fn of_block(kind: &BlockKind, text: &mut String) {
    match kind {
        BlockKind::Heading { spans, .. } | BlockKind::Paragraph(spans) => {
            add(text, &of_spans(spans));
        }
        BlockKind::List { items, .. } => items.iter().for_each(|item| of_blocks(item, text)),
        BlockKind::Quote(blocks) | BlockKind::Alert { blocks, .. } => of_blocks(blocks, text),
        BlockKind::Footnote { name, blocks } => {
            add(text, name);
            of_blocks(blocks, text);
        }
        BlockKind::Table { header, rows, .. } => {
            let cells = header.iter().chain(rows.iter().flatten());
            cells.for_each(|cell| add(text, &of_spans(cell)));
        }
        BlockKind::Code { language, text: code } => {
            add(text, language);
            add(text, code);
        }
        BlockKind::Formula(tex) => add(text, tex),
        BlockKind::Picture { alt, .. } => add(text, alt),
        BlockKind::Rule => {}
        BlockKind::Calculator(calculator) => add(text, calculator.title.as_deref().unwrap_or("")),
        BlockKind::Curve(curve) => add(text, curve.title.as_deref().unwrap_or("")),
        BlockKind::Sketch(sketch) => add(text, sketch.title.as_deref().unwrap_or("")),
        BlockKind::Ledger(ledger) => add(text, ledger.title.as_deref().unwrap_or("")),
        BlockKind::SideBySide(table) => add(text, table.title.as_deref().unwrap_or("")),
        BlockKind::Target(target) => add(text, target.title.as_deref().unwrap_or("")),
        BlockKind::Levers(levers) => add(text, levers.title.as_deref().unwrap_or("")),
        BlockKind::HundredGrams(grams) => add(text, grams.title.as_deref().unwrap_or("")),
        BlockKind::Run(run) => add(text, run.title.as_deref().unwrap_or("")),
        BlockKind::Guess(guess) => {
            for attempt in 0..=guess.variants.len() {
                let asked = guess.asked(attempt);
                add(text, &of_spans(asked.question));
                asked.choices().iter().for_each(|(_, choice)| add(text, &of_spans(&choice.text)));
            }
            add(text, &of_spans(&guess.why));
        }
        BlockKind::Faded(faded) => {
            add(text, faded.title.as_deref().unwrap_or(""));
            faded.steps.iter().for_each(|step| add(text, &of_spans(&step.say)));
        }
        BlockKind::Measure(measure) => {
            add(text, &measure.what);
            add(text, &measure.tool);
            of_blocks(&measure.how, text);
            add(text, &of_spans(&measure.over));
            add(text, &of_spans(&measure.under));
        }
        BlockKind::Deeper(deeper) => {
            add(text, &of_spans(&deeper.title));
            of_blocks(&deeper.blocks, text);
        }
        BlockKind::Answers(blocks) => of_blocks(blocks, text),
        BlockKind::Teacher(_) => {}
        BlockKind::Broken { name, source, .. } => {
            add(text, name);
            add(text, source);
        }
    }
}

fn add(text: &mut String, line: &str) {
    let line = line.trim();
    if !line.is_empty() {
        text.push_str(line);
        text.push('\n');
    }
}
