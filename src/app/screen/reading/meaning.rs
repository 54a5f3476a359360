//! What a quantity means, in the margin: its symbol and units, what it is found from and what it is
//! used for, and where the lessons speak of it.

use iced::widget::{Column, Row, column, container, row, text};
use iced::{Element, Fill};

use super::Message;
use crate::app::page::{self, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{formula, symbol};
use crate::lesson::{Appearance, Library, Target};
use crate::quantity::{AnyId, Entry, catalogue, units_of};
use crate::rules::{catalogue as rules, checks, symbols_tex, used_by};

/// The way out of the meaning, to give it the focus.
pub const CLOSE: &str = "meaning-close";

/// As many links as are taken in at a look; the rest waits behind one more.
const FEW: usize = 6;

/// The meaning shown.
#[derive(Debug, Clone, Copy)]
pub struct Meaning {
    /// Of which quantity.
    pub id: AnyId,
    /// Whether long lists are shown whole.
    pub whole: bool,
    /// Which control of the page it was asked for with, counted from zero.
    pub from: Option<usize>,
}

/// The meaning as a note in the margin.
pub fn view<'a>(
    meaning: Meaning,
    library: &'a Library,
    page: Page<'a>,
) -> Option<Element<'a, Message>> {
    let entry = catalogue::find(meaning.id.name())?;
    let now = page.desk.outcome.values.si(meaning.id).map_or_else(
        || "Not known yet in your build.".to_owned(),
        |si| format!("In your build: {}.", page.settings.units.show(entry, si)),
    );
    let heading = row![
        text(symbol::capitalised(entry.label)).size(size::LABEL).font(SEMIBOLD).width(Fill),
        formula::inline(entry.symbol, size::LABEL),
    ]
    .spacing(UNIT);
    let close = pressable(Kind::Word, text("Put away").size(size::SMALL))
        .id(CLOSE)
        .on_press(Message::MeaningClosed);
    let stack = column![
        heading,
        text(entry.meaning).size(size::LABEL).width(Fill),
        text(now).size(size::LABEL).width(Fill),
        text(units(entry)).size(size::SMALL).style(theme::soft).width(Fill),
        close,
        found(entry),
        used(meaning),
        appears(library.appearances(meaning.id)),
    ]
    .spacing(UNIT);
    Some(container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill).into())
}

/// The units it can be shown in, in a sentence.
fn units(entry: &Entry) -> String {
    let symbols: Vec<_> = units_of(entry)
        .iter()
        .map(|unit| unit.symbol)
        .filter(|symbol| !symbol.is_empty())
        .collect();
    match symbols.split_last() {
        None => "It has no unit.".to_owned(),
        Some((only, [])) => format!("Measured in {only}."),
        Some((last, rest)) => format!("Measured in {} or {last}.", rest.join(", ")),
    }
}

/// Who sets it, or the rule that finds it: how, from what, where it holds, who says so, and which
/// published numbers it was checked against.
fn found<'a>(entry: &Entry) -> Element<'a, Message> {
    let Some(rule) = rules::finder(entry.id) else {
        return text("You set it: no rule finds it.").size(size::SMALL).width(Fill).into();
    };
    let needs = rule.needs.iter().map(|need| quantity(need.id)).collect();
    column![
        title("Found by"),
        text(rule.title).size(size::SMALL).width(Fill),
        formula::display(&symbols_tex(rule), size::LABEL),
        (!rule.needs.is_empty()).then(|| links("From", needs, 0)),
        text(format!("Holds for: {}", rule.holds)).size(size::SMALL).width(Fill),
        text(format!("Source: {}", rule.source)).size(size::SMALL).style(theme::soft).width(Fill),
        text(format!("Checks: {}.", checks::of(entry.id))).size(size::SMALL).width(Fill),
    ]
    .spacing(UNIT / 2.0)
    .into()
}

/// What is found from it.
fn used<'a>(meaning: Meaning) -> Option<Element<'a, Message>> {
    let all: Vec<AnyId> = used_by(meaning.id).collect();
    let shown = if meaning.whole { all.len() } else { all.len().min(FEW) };
    let each = all.iter().take(shown).map(|id| quantity(*id)).collect();
    (!all.is_empty()).then(|| links("Used to find", each, all.len() - shown))
}

/// Where the lessons speak of it: under the title of each, its headings.
fn appears(places: &[Appearance]) -> Option<Element<'_, Message>> {
    let lessons = places.chunk_by(|a, b| a.lesson == b.lesson).filter_map(|parts| {
        let first = parts.first()?;
        let headings = parts.iter().filter_map(|part| {
            let (anchor, words) = part.heading.as_ref()?;
            let there = Message::Part { lesson: first.lesson.clone(), anchor: anchor.clone() };
            Some(link(words.clone(), there))
        });
        Some(
            column![
                text(&first.title).size(size::SMALL).width(Fill),
                Row::with_children(headings)
                    .spacing(1.5 * UNIT)
                    .width(Fill)
                    .wrap()
                    .vertical_spacing(UNIT / 2.0),
            ]
            .spacing(2)
            .into(),
        )
    });
    (!places.is_empty()).then(|| {
        column![title("In the lessons"), Column::with_children(lessons).spacing(UNIT)]
            .spacing(UNIT / 2.0)
            .into()
    })
}

fn title<'a>(words: &'a str) -> Element<'a, Message> {
    text(words).size(size::SMALL).font(SEMIBOLD).width(Fill).into()
}

fn link<'a>(words: String, message: Message) -> Element<'a, Message> {
    pressable(Kind::Word, text(words).size(size::SMALL)).on_press(message).into()
}

/// The name of a quantity, which leads to its meaning.
fn quantity<'a>(id: AnyId) -> Element<'a, Message> {
    let label = catalogue::find(id.name()).map_or_else(|| id.name(), |entry| entry.label);
    link(label.to_owned(), Message::Page(page::Message::Follow(Target::Quantity(id))))
}

/// Links under a title; `more` are left out until they are asked for.
fn links<'a>(words: &'a str, each: Vec<Element<'a, Message>>, more: usize) -> Element<'a, Message> {
    let rest = (more > 0).then(|| link(format!("{more} more"), Message::MeaningWhole));
    let all = Row::with_children(each.into_iter().chain(rest));
    column![title(words), all.spacing(1.5 * UNIT).width(Fill).wrap().vertical_spacing(UNIT / 2.0),]
        .spacing(2)
        .into()
}
