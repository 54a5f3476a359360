//! A footnote in the margin.

use iced::widget::{column, container, text};
use iced::{Element, Fill};

use super::Message;
use crate::app::document::blocks;
use crate::app::page::Page;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::BlockKind;

/// The way out of the footnote, to give it the focus.
pub const BACK: &str = "footnote-back";

/// The footnote of that name, if the lesson has it.
pub fn view<'a>(name: &'a str, page: Page<'a>) -> Option<Element<'a, Message>> {
    let inside = page.lesson.every_block().into_iter().find_map(|block| match &block.kind {
        BlockKind::Footnote { name: known, blocks } if known == name => Some(blocks),
        _ => None,
    })?;
    let stack = column![
        text(format!("Footnote {name}")).size(size::LABEL).font(SEMIBOLD),
        blocks(inside, page).map(Message::Page),
        pressable(Kind::Word, text("Back to the text").size(size::SMALL))
            .id(BACK)
            .on_press(Message::FootnoteClosed),
    ]
    .spacing(UNIT);
    Some(container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill).into())
}
