//! One of a few choices: a mark, filled in the one that is chosen, and its words.

use iced::widget::{row, text};
use iced::{Center, Element};

use super::pressable::{Kind, pressable};
use crate::app::theme::{REGULAR, SEMIBOLD, UNIT, size};

/// A choice.
pub fn pick<'a, Message: Clone + 'a>(
    words: &'a str,
    chosen: bool,
    message: Message,
) -> Element<'a, Message> {
    let mark = text(if chosen { "●" } else { "○" }).size(size::LABEL);
    let words = text(words).size(size::LABEL).font(if chosen { SEMIBOLD } else { REGULAR });
    pressable(Kind::Line(chosen), row![mark, words].spacing(UNIT).align_y(Center))
        .padding([5, 10])
        .on_press(message)
        .into()
}
