//! Going through the blocks of a lesson, also those inside others.

use super::document::{Block, BlockKind, Lesson};

impl Lesson {
    /// Every block from top to bottom, each before those inside it.
    pub fn every_block(&self) -> Vec<&Block> {
        let mut found = Vec::new();
        collect(&self.blocks, &mut found);
        found
    }

    /// The names of its guesses, in their order.
    pub fn guesses(&self) -> impl Iterator<Item = &str> {
        self.every_block().into_iter().filter_map(|block| match &block.kind {
            BlockKind::Guess(guess) => Some(guess.key.as_str()),
            _ => None,
        })
    }

    /// How many notes for teachers there are.
    pub fn teacher_notes(&self) -> usize {
        let notes = |block: &&&Block| matches!(block.kind, BlockKind::Teacher(_));
        self.every_block().iter().filter(notes).count()
    }
}

fn collect<'a>(blocks: &'a [Block], found: &mut Vec<&'a Block>) {
    for block in blocks {
        found.push(block);
        match &block.kind {
            BlockKind::List { items, .. } => items.iter().for_each(|item| collect(item, found)),
            BlockKind::Quote(inner)
            | BlockKind::Alert { blocks: inner, .. }
            | BlockKind::Footnote { blocks: inner, .. }
            | BlockKind::Answers(inner)
            | BlockKind::Teacher(inner) => collect(inner, found),
            BlockKind::Deeper(deeper) => collect(&deeper.blocks, found),
            BlockKind::Measure(measure) => collect(&measure.how, found),
            _ => {}
        }
    }
}
