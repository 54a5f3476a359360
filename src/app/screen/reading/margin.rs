//! The margin of a lesson: the numbers of the build that it uses, and above them what a word or a
//! mark of the text stands for.

use iced::widget::{Column, column, container, scrollable, text};
use iced::{Element, Fill, Padding};

use super::{Message, Reading, footnote, meaning};
use crate::app::page::{self, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::field;
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Library;

impl Reading {
    /// The margin of a narrow window: a line above the text that opens.
    pub(super) fn folded<'a>(
        &'a self,
        library: &'a Library,
        page: Page<'a>,
    ) -> Element<'a, Message> {
        let open = self.numbers || self.meaning.is_some() || self.footnote.is_some();
        let word = if self.numbers { "Hide the numbers" } else { "Numbers in this lesson" };
        let margin = open.then(|| {
            let inside = if self.numbers {
                self.margin(library, page)
            } else {
                self.note(library, page).unwrap_or_else(|| column![].into())
            };
            container(
                scrollable(container(inside).padding(Padding::ZERO.right(1.5 * UNIT)))
                    .id("margin")
                    .direction(theme::bar())
                    .style(theme::scroll),
            )
            .max_height(300)
        });
        container(
            column![
                pressable(Kind::Word, text(word).size(size::LABEL))
                    .on_press(Message::NumbersTurned),
                margin,
            ]
            .spacing(UNIT),
        )
        .style(theme::panel)
        .padding([UNIT, 2.0 * UNIT])
        .width(Fill)
        .into()
    }

    /// What a reader would pencil beside the text: their numbers, and what a symbol means.
    pub(super) fn margin<'a>(
        &'a self,
        library: &'a Library,
        page: Page<'a>,
    ) -> Element<'a, Message> {
        let Page { lesson, desk, settings, .. } = page;
        let numbers = lesson.front.uses.iter().map(|id| {
            field::compact(&format!("margin:{id}"), *id, desk, settings)
                .map(|event| Message::Page(page::Message::Field(event)))
        });
        column![
            self.note(library, page),
            text(format!("{} in this lesson", desk.name())).size(size::MINOR).font(SEMIBOLD),
            Column::with_children(numbers).spacing(1.5 * UNIT),
        ]
        .spacing(2.0 * UNIT)
        .into()
    }

    /// What was asked for last: the meaning of a quantity, or a footnote.
    fn note<'a>(&'a self, library: &'a Library, page: Page<'a>) -> Option<Element<'a, Message>> {
        match &self.footnote {
            Some(name) => footnote::view(name, page),
            None => self.meaning.and_then(|shown| meaning::view(shown, library, page)),
        }
    }
}
