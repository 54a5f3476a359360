//! The lines of the build sheet: a number to change, a number found, a row of a table.

use iced::widget::{column, container, row, text};
use iced::{Element, Fill, Length, Padding};

use super::{Message, Standing};
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::kept::kept_of;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{field, symbol};
use crate::quantity::{AnyId, Entry, catalogue};
use crate::rules::{Origin, Value, used_by};
use crate::sheet::{Edit, presets};

/// A number to change, how well it is known, and, unfolded, what it is used for.
pub fn given<'a>(
    entry: &'static Entry,
    (standing, open): (Option<&Standing>, bool),
    desk: &Desk,
    settings: &Settings,
) -> Element<'a, Message> {
    let source = match standing {
        Some(Standing::Tabled(row)) => format!(" Its table says: {}", row.source),
        _ => String::new(),
    };
    let given = Given {
        id: entry.id,
        line: field::Line::of(&format!("sheet:{}", entry.id), entry, desk, settings),
        is_entered: desk.sheet().number(entry.id).is_some(),
        known: standing.map(Known::of),
        used: open.then(|| format!("{}{source}", used_for(entry.id))),
    };
    kept_of(Fill, given, Given::view)
}

/// All that the line of a number to change shows.
#[derive(Hash)]
struct Given {
    id: AnyId,
    line: field::Line,
    is_entered: bool,
    known: Option<Known>,
    used: Option<String>,
}

impl Given {
    fn view(&self) -> Element<'static, Message> {
        let clear = self.is_entered.then(|| clear(self.id, "Clear"));
        let number = row![
            container(self.line.view().map(Message::Field)).width(Fill),
            container(clear).width(Length::Fixed(48.0)),
        ]
        .spacing(UNIT)
        .width(Fill);
        let used = self.used.clone().map(|used| text(used).size(size::SMALL).width(Fill));
        column![number, column![self.known.as_ref().map(Known::view), used]]
            .spacing(2)
            .width(Fill)
            .into()
    }
}

/// How well a number is known, in words; a guess stands out.
#[derive(Hash)]
struct Known {
    words: String,
    is_guess: bool,
}

impl Known {
    fn of(standing: &Standing) -> Self {
        Self { words: standing.in_words(), is_guess: *standing == Standing::Guess }
    }

    fn view(&self) -> Element<'static, Message> {
        let words = text(self.words.clone()).size(size::SMALL);
        if self.is_guess { words.font(SEMIBOLD).into() } else { words.style(theme::soft).into() }
    }
}

/// What is found straight from a number, in words.
fn used_for(id: AnyId) -> String {
    let labels: Vec<&str> = used_by(id)
        .filter_map(|found| catalogue::find(found.name()).map(|entry| entry.label))
        .collect();
    match labels.as_slice() {
        [] => "Nothing is found from it.".to_owned(),
        labels => format!("Used for: {}.", labels.join(", ")),
    }
}

fn clear<'a>(id: AnyId, word: &'a str) -> Element<'a, Message> {
    container(
        pressable(Kind::Word, text(word).size(size::SMALL))
            .on_press(Message::Edit(Edit::Clear { id }, None)),
    )
    .padding(Padding::ZERO.top(UNIT))
    .into()
}

/// A number found, or pinned, and then how well it is known.
pub fn answer<'a>(
    entry: &'static Entry,
    standing: Option<&Standing>,
    desk: &Desk,
    settings: &Settings,
) -> Element<'a, Message> {
    let (shown, is_pinned) = match desk.outcome.values.of(entry.id) {
        Value::Known(known) => {
            (settings.units.show(entry, known.si).to_string(), known.origin == Origin::Given)
        }
        Value::Missing(_) => ("—".to_owned(), false),
        Value::Invalid(_) => ("no answer".to_owned(), false),
    };
    let known = standing.filter(|_| is_pinned).map(Known::of);
    kept_of(
        Fill,
        Answer { id: entry.id, label: entry.label, shown, is_pinned, known },
        Answer::view,
    )
}

/// All that the line of a number found shows.
#[derive(Hash)]
struct Answer {
    id: AnyId,
    label: &'static str,
    shown: String,
    is_pinned: bool,
    known: Option<Known>,
}

impl Answer {
    fn view(&self) -> Element<'static, Message> {
        row![
            text(symbol::capitalised(self.label)).size(size::LABEL).width(Fill),
            text(self.shown.clone()).size(size::LABEL).font(SEMIBOLD),
            self.known.as_ref().map(Known::view),
            self.is_pinned.then(|| clear(self.id, "Unpin")),
        ]
        .spacing(UNIT)
        .width(Fill)
        .into()
    }
}

/// A row of a table of ready-made numbers: what it fills in, and who says so.
pub fn preset<'a>(row: &'static presets::Row) -> Element<'a, Message> {
    let words = column![
        text(row.label.as_str()).size(size::LABEL).width(Fill),
        text(row.source.as_str()).size(size::SMALL).style(theme::soft).width(Fill),
    ];
    pressable(Kind::Line(false), words).width(Fill).on_press(Message::Edit(row.edit(), None)).into()
}
