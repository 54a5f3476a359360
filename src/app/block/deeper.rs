//! A part that is folded until the reader opens it.

use iced::widget::{column, container, row, text};
use iced::{Center, Element, Fill};

use crate::app::document::blocks;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Block;

/// A fold under `title` that starts on `line` of its lesson.
pub fn view<'a>(
    title: String,
    inner: &'a [Block],
    line: usize,
    page: Page<'a>,
) -> Element<'a, Message> {
    let key = format!("deeper:{line}");
    let open = page.marks.open.contains(&key);
    let mark = text(if open { "−" } else { "+" }).size(size::MINOR).font(SEMIBOLD).width(14);
    let title = text(title).size(size::BODY).font(SEMIBOLD).width(Fill);
    let head = pressable(Kind::Line(open), row![mark, title].spacing(UNIT).align_y(Center))
        .id(key.clone())
        .width(Fill)
        .on_press(Message::Working(key));
    let inside = open.then(|| container(blocks(inner, page)).padding([UNIT, 10.0]));
    container(column![head, inside].spacing(UNIT))
        .style(theme::block)
        .padding(UNIT)
        .width(Fill)
        .into()
}
