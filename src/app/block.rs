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

use iced::widget::{column, container, row, text};
use iced::{Element, Fill};

use crate::app::desk::Desk;
use crate::app::page::{Marks, Message, Page, Pictured};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
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

/// The size of a picture saved, in pixels.
const PICTURE: (u32, u32) = (800, 500);

/// The ways to save and to copy the picture of a block, and where it was saved.
fn saving<'a>(
    word: &'a str,
    (line, what): (usize, Pictured),
    page: Page<'a>,
) -> Element<'a, Message> {
    let saved = page.marks.saved.get(&line).map_or("", String::as_str);
    row![
        pressable(Kind::Word, text(word).size(size::LABEL)).on_press(Message::Save(line, what)),
        pressable(Kind::Word, text("Copy it").size(size::LABEL))
            .on_press(Message::CopyPicture(line, what)),
        text(saved).size(size::SMALL).style(theme::soft),
    ]
    .spacing(2.0 * UNIT)
    .wrap()
    .vertical_spacing(UNIT / 2.0)
    .into()
}

/// Words as a file may be called, without an ending.
fn file_name(words: &str) -> String {
    let name: String = words.split_whitespace().collect::<Vec<_>>().join("-");
    name.replace(|c: char| !c.is_alphanumeric() && c != '-', "")
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
