//! The companions in the rail: the builds beside the reader's own, and adding one more.

use iced::widget::{Column, column, row, text};
use iced::{Center, Element, Fill};

use super::{example, file_name};
use crate::app::companion::Companion;
use crate::app::desk::Desk;
use crate::app::settings::{Kept, Settings};
use crate::app::shell::Message;
use crate::app::theme::{self, UNIT, size};
use crate::app::widget::mark::mark;
use crate::app::widget::pressable::{Kind, pressable};
use crate::plot::Role;
use crate::sheet::demo;

/// The companions; `choosing` shows what can be set beside.
pub fn view<'a>(desk: &'a Desk, settings: &'a Settings, choosing: bool) -> Element<'a, Message> {
    let all = desk.company.all();
    let own = (!all.is_empty()).then(|| {
        row![mark(Role::Yours), text(desk.name()).size(size::SMALL).width(Fill)]
            .spacing(UNIT)
            .align_y(Center)
    });
    let each = all.iter().enumerate().map(|(place, companion)| one(place, companion));
    let add = desk.company.has_room().then(|| {
        let word = if choosing { "Add none" } else { "Add a companion" };
        pressable(Kind::Word, text(word).size(size::SMALL)).on_press(Message::CompanionTurned)
    });
    let choices = (choosing && desk.company.has_room()).then(|| choices(desk, settings));
    column![
        text("Companions").size(size::SMALL).style(theme::soft),
        own,
        Column::with_children(each).spacing(UNIT / 2.0),
        add,
        choices,
    ]
    .spacing(UNIT / 2.0)
    .into()
}

fn one<'a>(place: usize, companion: &'a Companion) -> Element<'a, Message> {
    row![
        mark(companion.role),
        text(companion.name.as_str()).size(size::SMALL).width(Fill),
        pressable(Kind::Word, text("Remove").size(size::SMALL))
            .on_press(Message::CompanionRemoved(place)),
    ]
    .spacing(UNIT)
    .align_y(Center)
    .into()
}

/// What can be set beside: the own build as it is now, a file, a recent build, an example.
fn choices<'a>(desk: &'a Desk, settings: &'a Settings) -> Element<'a, Message> {
    let line = |words: String, message: Message| -> Element<'a, Message> {
        pressable(Kind::Line(false), text(words).size(size::SMALL).width(Fill))
            .padding([4, 10])
            .width(Fill)
            .on_press(message)
            .into()
    };
    let there = |kept: &Kept| desk.company.all().iter().any(|c| c.kept.as_ref() == Some(kept));
    let recent = settings
        .recent
        .iter()
        .filter(|path| desk.path.as_ref() != Some(path) && !there(&Kept::File((*path).clone())))
        .map(|path| line(file_name(path), Message::CompanionPicked(path.clone())));
    let examples = demo::ALL
        .iter()
        .filter(|demo| !there(&Kept::Example(demo.id.to_owned())))
        .map(|demo| line(example(demo.id), Message::CompanionExample(demo.id)));
    let first = [
        line("Yours as it is now".to_owned(), Message::CompanionCopy),
        line("From a file…".to_owned(), Message::CompanionFile),
    ];
    Column::with_children(first.into_iter().chain(recent).chain(examples)).into()
}
