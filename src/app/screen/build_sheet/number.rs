//! The lines of the build sheet: a number to change, a number found, a row of a table.

use iced::widget::{column, container, row, text};
use iced::{Element, Fill, Length, Padding};

use super::{Message, Standing};
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{field, symbol};
use crate::quantity::{AnyId, Entry, catalogue};
use crate::rules::{Origin, Value, used_by};
use crate::sheet::{Edit, presets};

/// A number to change, how well it is known, and, unfolded, what it is used for.
pub fn given<'a>(
    entry: &'static Entry,
    (standing, open): (Option<&Standing>, bool),
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let source = match standing {
        Some(Standing::Tabled(row)) => format!(" Its table says: {}", row.source),
        _ => String::new(),
    };
    let used =
        open.then(|| text(format!("{}{source}", used_for(entry.id))).size(size::SMALL).width(Fill));
    column![number(entry, desk, settings), column![standing.map(told), used],]
        .spacing(2)
        .width(Fill)
        .into()
}

/// How well a number is known; a guess stands out.
fn told<'a>(standing: &Standing) -> Element<'a, Message> {
    let words = text(standing.in_words()).size(size::SMALL);
    let guess = *standing == Standing::Guess;
    if guess { words.font(SEMIBOLD).into() } else { words.style(theme::soft).into() }
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

fn number<'a>(
    entry: &'static Entry,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let clear = desk.sheet().number(entry.id).is_some().then(|| clear(entry.id, "Clear"));
    row![
        container(
            field::compact(&format!("sheet:{}", entry.id), entry.id, desk, settings)
                .map(Message::Field)
        )
        .width(Fill),
        container(clear).width(Length::Fixed(48.0)),
    ]
    .spacing(UNIT)
    .width(Fill)
    .into()
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
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let (shown, pinned) = match desk.outcome.values.of(entry.id) {
        Value::Known(known) => {
            (settings.units.show(entry, known.si).to_string(), known.origin == Origin::Given)
        }
        Value::Missing(_) => ("—".to_owned(), false),
        Value::Invalid(_) => ("no answer".to_owned(), false),
    };
    row![
        text(symbol::capitalised(entry.label)).size(size::LABEL).width(Fill),
        text(shown).size(size::LABEL).font(SEMIBOLD),
        standing.filter(|_| pinned).map(told),
        pinned.then(|| clear(entry.id, "Unpin")),
    ]
    .spacing(UNIT)
    .width(Fill)
    .into()
}

/// A row of a table of ready-made numbers: what it fills in, and who says so.
pub fn preset<'a>(row: &'static presets::Row) -> Element<'a, Message> {
    let words = column![
        text(row.label.as_str()).size(size::LABEL).width(Fill),
        text(row.source.as_str()).size(size::SMALL).style(theme::soft).width(Fill),
    ];
    pressable(Kind::Line(false), words).width(Fill).on_press(Message::Edit(row.edit(), None)).into()
}
