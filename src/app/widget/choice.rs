//! One of a few: words beside each other, the chosen one washed and bold.

use iced::widget::{Row, text};
use iced::{Element, Fill};

use super::pressable::{Kind, pressable};
use crate::app::theme::{REGULAR, SEMIBOLD, UNIT, size};

/// Offers each of some words, says which is chosen, and asks for another by its message.
pub fn choice<'a, Message: Clone + 'a>(
    ways: impl IntoIterator<Item = (String, bool, Message)>,
) -> Element<'a, Message> {
    let ways = ways.into_iter().map(|(words, chosen, message)| {
        let font = if chosen { SEMIBOLD } else { REGULAR };
        pressable(Kind::Line(chosen), text(words).size(size::LABEL).font(font))
            .on_press(message)
            .into()
    });
    Row::with_children(ways).spacing(UNIT / 2.0).width(Fill).wrap().into()
}
