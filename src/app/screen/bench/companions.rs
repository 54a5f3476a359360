//! The companions: the builds beside the reader's own, how each differs, and adding one more.

use iced::widget::{Column, column, row, text};
use iced::{Center, Element, Fill};

use super::{Bench, Message, example, file_name};
use crate::app::companion::{Companion, Gone};
use crate::app::desk::Desk;
use crate::app::settings::{Kept, Settings};
use crate::app::shell;
use crate::app::theme::{self, UNIT, size};
use crate::app::widget::mark::mark;
use crate::app::widget::pressable::{Kind, pressable};
use crate::sheet::demo;

/// As many recent builds are offered here; the list of recent builds offers every one.
const FEW: usize = 8;

/// The companions, and what can be set beside.
pub fn view<'a>(
    bench: &'a Bench,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, shell::Message> {
    let all = desk.company.all();
    let each = all.iter().enumerate().map(|(place, companion)| one(place, companion, bench));
    let gone = desk.company.gone().iter().enumerate().map(|(place, one)| gone(place, one));
    let empty = all.is_empty().then(|| {
        text(
            "No companion yet. Add one, and every lesson shows its numbers beside yours: an \
             example, another of your builds, or yours as it is now before you change it.",
        )
        .size(size::LABEL)
        .style(theme::soft)
        .width(Fill)
    });
    let room = desk.company.has_room();
    let add = room.then(|| {
        let word = if bench.choosing { "Add none" } else { "Add a companion" };
        pressable(Kind::Plain, text(word).size(size::LABEL))
            .on_press(shell::Message::Bench(Message::Choosing))
    });
    let choices = (bench.choosing && room).then(|| choices(desk, settings));
    let each = Column::with_children(each.chain(gone)).spacing(UNIT);
    column![empty, each, add, choices].spacing(UNIT).into()
}

/// A companion of an earlier session that is not there.
fn gone(place: usize, gone: &Gone) -> Element<'_, shell::Message> {
    let name = match &gone.kept {
        Kept::File(path) => file_name(path),
        Kept::Example(id) => id.clone(),
    };
    column![
        row![
            text(name).size(size::BODY),
            pressable(Kind::Word, text("Look for it no more").size(size::LABEL))
                .on_press(shell::Message::CompanionForgotten(place)),
        ]
        .spacing(1.5 * UNIT)
        .align_y(Center)
        .wrap(),
        text(format!("{} It stands beside yours again once it can be read.", gone.why))
            .size(size::SMALL)
            .style(theme::warning)
            .wrapping(text::Wrapping::WordOrGlyph)
            .width(Fill),
    ]
    .spacing(2)
    .into()
}

fn one<'a>(place: usize, companion: &'a Companion, bench: &Bench) -> Element<'a, shell::Message> {
    let shown = bench.compared.as_ref().is_some_and(|compared| compared.place == place);
    let word = if shown { "Hide what differs" } else { "What differs" };
    row![
        mark(companion.role),
        text(companion.name.as_str()).size(size::BODY),
        pressable(Kind::Word, text(word).size(size::LABEL))
            .on_press(shell::Message::Bench(Message::Compare(place))),
        pressable(Kind::Word, text("Remove").size(size::LABEL))
            .on_press(shell::Message::CompanionRemoved(place)),
    ]
    .spacing(1.5 * UNIT)
    .align_y(Center)
    .wrap()
    .into()
}

/// What can be set beside: the own build as it is now, a file, a recent build, an example.
fn choices<'a>(desk: &'a Desk, settings: &'a Settings) -> Element<'a, shell::Message> {
    let line = |words: String, message: shell::Message| -> Element<'a, shell::Message> {
        pressable(Kind::Line(false), text(words).size(size::LABEL).width(Fill))
            .width(Fill)
            .on_press(message)
            .into()
    };
    let there = |kept: &Kept| desk.company.all().iter().any(|c| c.kept.as_ref() == Some(kept));
    let recent = settings
        .recent
        .iter()
        .filter(|path| desk.path.as_ref() != Some(path) && !there(&Kept::File((*path).clone())))
        .take(FEW)
        .map(|path| line(file_name(path), shell::Message::CompanionPicked(path.clone())));
    let examples =
        demo::ALL.iter().filter(|demo| !there(&Kept::Example(demo.id.to_owned()))).map(|demo| {
            line(
                format!("{} (example)", example(demo.id)),
                shell::Message::CompanionExample(demo.id),
            )
        });
    let first = [
        line("Yours as it is now".to_owned(), shell::Message::CompanionCopy),
        line("From a file…".to_owned(), shell::Message::CompanionFile),
    ];
    Column::with_children(first.into_iter().chain(recent).chain(examples)).into()
}
