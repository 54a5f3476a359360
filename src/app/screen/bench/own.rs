//! The build on the desk: its name, its file, and what can be done with it.

use iced::widget::{Row, column, container, row, text, text_input};
use iced::{Center, Element, Fill};

use super::{Message, NAME};
use crate::app::desk::Desk;
use crate::app::shell;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::mark::mark;
use crate::app::widget::pressable::{Kind, pressable};
use crate::plot::Role;

/// The card of the build on the desk.
pub fn view(desk: &Desk) -> Element<'_, shell::Message> {
    let read_only = desk.sheet().is_read_only();
    let name = text_input("Unnamed build", desk.sheet().name())
        .id(NAME)
        .font(REGULAR)
        .size(size::BODY)
        .padding([6, 8])
        .style(theme::field)
        .on_input(|name| shell::Message::Bench(Message::Name(name)));
    let changed = desk.history.is_changed_since_save();
    let file = match (&desk.path, changed) {
        (Some(path), false) => format!("{}, saved", path.display()),
        (Some(path), true) => format!("{}, not saved", path.display()),
        (None, false) => "In no file yet.".to_owned(),
        (None, true) => "In no file yet, and changed. Save it to keep it.".to_owned(),
    };
    let act = |word, message, can: bool| {
        pressable(Kind::Plain, text(word).size(size::LABEL))
            .on_press_maybe(can.then_some(message))
            .into()
    };
    let room = desk.company.has_room();
    let acts = [
        act("Open…", shell::Message::Open, true),
        act("Save", shell::Message::Save, !read_only),
        act("Save as…", shell::Message::SaveAs, true),
        act("Try a what-if", shell::Message::Bench(Message::WhatIf), room && !read_only),
    ];
    let hint = if room {
        "A what-if is a copy to change freely; the build as it is stays beside it to compare. \
         A build file dropped on the window opens."
    } else {
        "Two builds stand beside yours already. Take one away, and a what-if has room. A build \
         file dropped on the window opens."
    };
    let inside = column![
        row![mark(Role::Yours), text("On the desk").size(size::LABEL).font(SEMIBOLD)]
            .spacing(UNIT)
            .align_y(Center),
        row![text("Name").size(size::LABEL), name].spacing(UNIT).align_y(Center),
        text(file)
            .size(size::SMALL)
            .style(theme::soft)
            .wrapping(text::Wrapping::WordOrGlyph)
            .width(Fill),
        read_only.then(|| {
            text("From a newer Heftwise: for reading alone.")
                .size(size::SMALL)
                .style(theme::warning)
                .width(Fill)
        }),
        Row::with_children(acts).spacing(UNIT).wrap().vertical_spacing(UNIT),
        text(hint).size(size::SMALL).style(theme::soft).width(Fill),
    ]
    .spacing(1.5 * UNIT);
    container(inside).style(theme::block).padding(2.0 * UNIT).width(Fill).into()
}
