//! The live blocks of a lesson, one file each.

mod beside;
pub mod calculator;
pub mod curve;
pub mod deeper;
pub mod faded;
pub mod guess;
pub mod hundred_grams;
pub mod ledger;
pub mod levers;
pub mod measure;
pub mod run;
pub mod side_by_side;
pub mod sketch;
pub mod target;
mod typed;

use iced::widget::{column, container, text};
use iced::{Element, Fill};

use crate::app::desk::Desk;
use crate::app::page::Marks;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::lesson::{Block, BlockKind};

/// What is worked out of the build for the blocks of a page, anew where it has changed.
pub fn refresh(marks: &mut Marks, blocks: &[Block], desk: &Desk) {
    each(blocks, &mut |block| match &block.kind {
        BlockKind::SideBySide(it) => {
            marks.side_by_side.entry(block.line).or_default().refresh(it, desk);
        }
        BlockKind::Target(it) => marks.targets.entry(block.line).or_default().refresh(it, desk),
        BlockKind::HundredGrams(_) => {
            marks.hundred_grams.entry(block.line).or_default().refresh(desk);
        }
        BlockKind::Levers(it) => marks.levers.entry(block.line).or_default().refresh(it, desk),
        _ => {}
    });
}

/// The frame every block stands in: its title, then what it holds.
fn frame<'a, Message: 'a>(
    title: Option<&'a str>,
    inside: impl Into<Element<'a, Message>>,
) -> Element<'a, Message> {
    let title = title.map(|title| text(title).size(size::MINOR).font(SEMIBOLD).width(Fill));
    container(column![title, inside.into()].spacing(2.0 * UNIT))
        .style(theme::block)
        .padding(2.0 * UNIT)
        .width(Fill)
        .into()
}

/// Visits every block of a page, those inside lists, quotes, notes and footnotes included.
fn each(blocks: &[Block], visit: &mut dyn FnMut(&Block)) {
    for block in blocks {
        visit(block);
        match &block.kind {
            BlockKind::Quote(inner)
            | BlockKind::Alert { blocks: inner, .. }
            | BlockKind::Footnote { blocks: inner, .. } => each(inner, visit),
            BlockKind::List { items, .. } => items.iter().for_each(|item| each(item, visit)),
            _ => {}
        }
    }
}
