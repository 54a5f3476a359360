//! A companion's number beside the reader's own, the ratio in words.

use iced::widget::{Column, column, row, text};
use iced::{Center, Element, Fill, Length};

use crate::app::companion::Companion;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::mark::mark;
use crate::quantity::{AnyId, Entry, catalogue};
use crate::study::moved::compared_in_words;
use crate::study::side_by_side::ratio;

/// From this width of the reading column on, companions stand in a column beside an answer.
const COLUMN_FROM: f32 = 500.0;
/// The width of that column.
const COLUMN: f32 = 190.0;

/// An answer with the companions' answers beside it, or under it where the page is narrow.
pub fn answer<'a>(own: Element<'a, Message>, id: AnyId, page: Page<'a>) -> Element<'a, Message> {
    beside(own, companions(id, page, full), page)
}

/// A number to change with the companions' numbers beside it, each in one line.
pub fn given<'a>(own: Element<'a, Message>, id: AnyId, page: Page<'a>) -> Element<'a, Message> {
    beside(own, companions(id, page, short), page)
}

fn beside<'a>(
    own: Element<'a, Message>,
    others: Option<Column<'a, Message>>,
    page: Page<'a>,
) -> Element<'a, Message> {
    match others {
        None => own,
        Some(others) if page.width >= COLUMN_FROM => {
            let own = iced::widget::container(own).width(Fill);
            row![own, others.width(Length::Fixed(COLUMN))].spacing(2.0 * UNIT).into()
        }
        Some(others) => column![own, others].spacing(UNIT).into(),
    }
}

type One = for<'a> fn(&'a Companion, &'static Entry, Page<'a>) -> Element<'a, Message>;

/// The companions' numbers, one under the other.
fn companions<'a>(id: AnyId, page: Page<'a>, one: One) -> Option<Column<'a, Message>> {
    let entry = catalogue::find(id.name())?;
    let each: Vec<_> =
        page.desk.company.all().iter().map(|companion| one(companion, entry, page)).collect();
    (!each.is_empty()).then(|| Column::with_children(each).spacing(UNIT / 2.0))
}

fn shown(companion: &Companion, entry: &Entry, page: Page<'_>) -> String {
    companion.outcome.values.si(entry.id).map_or_else(
        || "not known".to_owned(),
        |si| page.settings.units.show(entry, si).to_string(),
    )
}

fn short<'a>(
    companion: &'a Companion,
    entry: &'static Entry,
    page: Page<'a>,
) -> Element<'a, Message> {
    let words = format!("{} {}", companion.name, shown(companion, entry, page));
    row![mark(companion.role), text(words).size(size::SMALL).width(Fill)]
        .spacing(UNIT / 2.0)
        .align_y(Center)
        .into()
}

fn full<'a>(
    companion: &'a Companion,
    entry: &'static Entry,
    page: Page<'a>,
) -> Element<'a, Message> {
    let si = companion.outcome.values.si(entry.id);
    let own = page.desk.outcome.values.si(entry.id);
    let words = si.zip(own).and_then(|(si, own)| ratio(si, own)).map(compared_in_words);
    column![
        row![mark(companion.role), text(companion.name.as_str()).size(size::SMALL).width(Fill)]
            .spacing(UNIT / 2.0)
            .align_y(Center),
        text(shown(companion, entry, page)).size(size::BODY).font(SEMIBOLD),
        words.map(|words| text(words).size(size::SMALL).style(theme::soft)),
    ]
    .spacing(2)
    .into()
}
