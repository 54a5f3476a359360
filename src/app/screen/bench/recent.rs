//! Starting another build, and the builds opened lately.

use std::path::Path;

use iced::widget::{Column, Row, column, row, text};
use iced::{Center, Element, Fill};

use super::{Bench, Message, Recent, example, file_name};
use crate::app::desk::Desk;
use crate::app::shell;
use crate::app::theme::{self, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::sheet::demo;

/// As many recent builds are shown at a time.
pub const SHOWN: usize = 20;

/// Ways to start; `asked` says whether the five questions are open.
pub fn start<'a>(asked: bool) -> Element<'a, shell::Message> {
    let word = if asked { "Put the questions away" } else { "Start with five questions" };
    let plain = |word: String, message| {
        pressable(Kind::Plain, text(word).size(size::LABEL)).on_press(message).into()
    };
    let kind = if asked { Kind::Plain } else { Kind::Main };
    let first = pressable(kind, text(word).size(size::LABEL))
        .on_press(shell::Message::Bench(Message::FiveTurned))
        .into();
    let ways = [first, plain("Start blank".to_owned(), shell::Message::New)];
    let demos =
        demo::ALL.iter().map(|demo| plain(example(demo.id), shell::Message::OpenDemo(demo.id)));
    let line = |ways: Vec<Element<'a, shell::Message>>| {
        Row::with_children(ways).spacing(UNIT).wrap().vertical_spacing(UNIT)
    };
    column![
        line(ways.into_iter().collect()),
        text("Or take an example to pieces. It has no file until you save it.")
            .size(size::LABEL)
            .style(theme::soft)
            .width(Fill),
        line(demos.collect()),
    ]
    .spacing(UNIT)
    .into()
}

/// The builds opened lately, a stretch of them at a time.
pub fn view<'a>(bench: &'a Bench, desk: &'a Desk) -> Element<'a, shell::Message> {
    if bench.recent.is_empty() {
        return text("None yet. A build you open or save is listed here the next time.")
            .size(size::LABEL)
            .style(theme::soft)
            .width(Fill)
            .into();
    }
    let each = bench.recent.iter().map(|build| one(build, desk));
    let go = |place| shell::Message::Bench(Message::Recent(place));
    column![
        bench.stretch.way("Builds", bench.count, go),
        Column::with_children(each).spacing(UNIT),
        text("Taking a build off this list leaves its file alone. Heftwise deletes no files.")
            .size(size::SMALL)
            .style(theme::soft)
            .width(Fill),
    ]
    .spacing(UNIT)
    .into()
}

fn one<'a>(Recent { path, there }: &'a Recent, desk: &'a Desk) -> Element<'a, shell::Message> {
    let here = desk.path.as_ref() == Some(path);
    let folder = path.parent().map(Path::display).map(|folder| folder.to_string());
    let said = match (there, here) {
        (false, _) => "Not there any more: moved, renamed or on a disk that is not plugged in.",
        (true, true) => "On the desk.",
        (true, false) => "",
    };
    let word = |word: &'a str, message: shell::Message| {
        pressable(Kind::Word, text(word).size(size::LABEL)).on_press(message)
    };
    let can = *there && !here;
    column![
        row![
            text(file_name(path)).size(size::BODY).wrapping(text::Wrapping::WordOrGlyph),
            can.then(|| word("Open", shell::Message::OpenPath(path.clone()))),
            (can && desk.company.has_room())
                .then(|| word("Set beside", shell::Message::CompanionPicked(path.clone()))),
            word("Take off the list", shell::Message::Bench(Message::Forget(path.clone()))),
        ]
        .spacing(1.5 * UNIT)
        .align_y(Center)
        .wrap(),
        text(folder.unwrap_or_default())
            .size(size::SMALL)
            .style(theme::soft)
            .wrapping(text::Wrapping::WordOrGlyph)
            .width(Fill),
        (!said.is_empty()).then(|| {
            let style = if *there { theme::soft } else { theme::warning };
            text(said).size(size::SMALL).style(style).width(Fill)
        }),
    ]
    .spacing(2)
    .into()
}
