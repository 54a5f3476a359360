//! A lesson cut into steps for a projector: one thing at a time, with the words that lead to it.

use std::ops::Range;

use crate::lesson::{Block, BlockKind, Lesson, Span};

/// What a projected page holds, in letters of running text: some fourteen lines.
const ROOM: usize = 800;
/// What a live block or a picture takes of it.
const LIVE: usize = 600;

/// One step.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// The heading it stands under; empty before the first.
    pub section: String,
    /// Its blocks among those of the lesson.
    pub blocks: Range<usize>,
}

/// The steps of a lesson, in order; every block is in exactly one.
pub fn steps(lesson: &Lesson) -> Vec<Step> {
    let mut steps: Vec<Step> = Vec::new();
    let (mut section, mut filled) = (String::new(), ROOM);
    for (place, block) in lesson.blocks.iter().enumerate() {
        let weight = weight(block);
        let heading = heading(block);
        if let Some((_, words)) = &heading {
            section.clone_from(words);
        }
        // Words that lead to a live block stand with it, not with what came before.
        let leads = matches!(block.kind, BlockKind::Paragraph(_))
            && lesson.blocks.get(place + 1).is_some_and(|next| self::weight(next) == LIVE)
            && weight + LIVE <= ROOM
            && filled >= LIVE;
        let fits = (filled + weight <= ROOM && !leads) || is_aside(block);
        let starts = heading.is_some_and(|(level, _)| level <= 2);
        match steps.last_mut().filter(|_| fits && !starts) {
            Some(step) => {
                step.blocks.end = place + 1;
                filled += weight;
            }
            None => {
                steps.push(Step { section: section.clone(), blocks: place..place + 1 });
                filled = weight;
            }
        }
    }
    steps
}

fn heading(block: &Block) -> Option<(u8, String)> {
    match &block.kind {
        BlockKind::Heading { level, spans, .. } => Some((*level, words(spans))),
        _ => None,
    }
}

/// What stands beside the text and not in it: it never starts a step.
fn is_aside(block: &Block) -> bool {
    matches!(block.kind, BlockKind::Teacher(_) | BlockKind::Footnote { .. } | BlockKind::Rule)
}

/// The room a block takes, in letters.
fn weight(block: &Block) -> usize {
    match &block.kind {
        _ if is_aside(block) => 0,
        BlockKind::Heading { .. } => 80,
        BlockKind::Paragraph(spans) => words(spans).chars().count() + 40,
        BlockKind::Formula(_) => 160,
        BlockKind::Code { text, .. } => text.len(),
        BlockKind::Table { rows, .. } => 100 * (rows.len() + 1),
        BlockKind::Quote(inner) | BlockKind::Alert { blocks: inner, .. } => {
            80 + inner.iter().map(weight).sum::<usize>()
        }
        BlockKind::List { items, .. } => items.iter().flatten().map(weight).sum(),
        BlockKind::Deeper(_) => 100,
        _ => LIVE,
    }
}

fn words(spans: &[Span]) -> String {
    crate::app::document::plain(spans)
}
