//! What differs between a companion and the reader's own build.

use iced::widget::{Column, column, container, row, rule, text};
use iced::{Center, Element, Fill, Length};

use super::{Message, TABLE};
use crate::app::companion::Companion;
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::shell;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::mark::mark;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::symbol;
use crate::plot::Role;
use crate::quantity::{Units, catalogue};
use crate::study::Difference;
use crate::study::difference::{Differing, Turned};
use crate::study::moved::compared_in_words;
use crate::study::walk_round::{Finding, shown};

/// How many numbers of a kind are listed until the reader asks for all.
const FIRST: usize = 12;
/// The width of a number in the table.
const NUMBER: f32 = 120.0;
/// The width of the words about it.
const WORDS: f32 = 190.0;

/// The difference; `whole` lists every number.
pub fn view<'a>(
    companion: &'a Companion,
    desk: &'a Desk,
    settings: &'a Settings,
    difference: &'a Difference,
    (whole, width): (bool, f32),
) -> Element<'a, shell::Message> {
    let wide = width >= TABLE;
    let heading = |words: String| text(words).size(size::LABEL).font(SEMIBOLD).width(Fill);
    let title = text(format!("{} and yours", companion.name)).size(size::MINOR).font(SEMIBOLD);
    let inside: Element<'a, shell::Message> = if difference.is_none() {
        text("They are alike in every number. Change one of yours, and it is listed here.")
            .size(size::LABEL)
            .width(Fill)
            .into()
    } else {
        let Difference { given, found, turned, parts } = difference;
        let numbers = |some: &'a [Differing]| {
            let each = some.iter().filter_map(|one| number(one, &settings.units, wide));
            Column::with_children(each).spacing(if wide { UNIT / 2.0 } else { UNIT })
        };
        let first =
            |some: &'a [Differing]| if whole { some } else { &some[..FIRST.min(some.len())] };
        let rest = given.len() + found.len() - first(given).len() - first(found).len();
        let long = given.len().max(found.len()) > FIRST;
        let more = long.then(|| {
            let word = if whole { "Only the largest".to_owned() } else { format!("{rest} more") };
            pressable(Kind::Word, text(word).size(size::LABEL))
                .on_press(shell::Message::Bench(Message::Whole))
        });
        let parts = parts.iter().map(|part| {
            let cells = (part.theirs.clone(), part.yours.clone());
            line(part.name.clone(), cells, String::new(), wide)
        });
        let some_parts = !difference.parts.is_empty();
        column![
            text(counted(difference)).size(size::LABEL).width(Fill),
            wide.then(|| head(companion, desk)),
            wide.then(|| rule::horizontal(1).style(theme::hairline)),
            (!given.is_empty()).then(|| heading("Given".to_owned())),
            numbers(first(given)),
            some_parts.then(|| heading("Parts by mass".to_owned())),
            Column::with_children(parts).spacing(UNIT / 2.0),
            (!found.is_empty()).then(|| heading("Found from these".to_owned())),
            numbers(first(found)),
            more,
            heading("Limits that stand differently".to_owned()),
            limits(turned),
        ]
        .spacing(UNIT)
        .into()
    };
    container(column![title, inside].spacing(1.5 * UNIT))
        .style(theme::block)
        .padding(2.0 * UNIT)
        .width(Fill)
        .into()
}

/// How many numbers differ.
fn counted(difference: &Difference) -> String {
    let (given, found) = (difference.given.len(), difference.found.len());
    let are = |count: usize, what: &str| {
        if count == 1 { format!("1 {what} number") } else { format!("{count} {what} numbers") }
    };
    let verb = if given + found == 1 { "differs" } else { "differ" };
    format!("{} and {} {verb}.", are(given, "given"), are(found, "found"))
}

fn head<'a>(companion: &'a Companion, desk: &'a Desk) -> Element<'a, shell::Message> {
    let build = |role: Role, name: String| {
        row![mark(role), text(name).size(size::SMALL).font(SEMIBOLD)]
            .spacing(UNIT / 2.0)
            .width(Length::Fixed(NUMBER))
            .align_y(Center)
    };
    row![
        text("").width(Fill),
        build(companion.role, companion.name.clone()),
        build(Role::Yours, desk.name()),
        text("theirs is").size(size::SMALL).style(theme::soft).width(Length::Fixed(WORDS)),
    ]
    .spacing(UNIT)
    .align_y(Center)
    .into()
}

fn number<'a>(one: &Differing, units: &Units, wide: bool) -> Option<Element<'a, shell::Message>> {
    let entry = catalogue::find(one.id.name())?;
    let shown = |si: Option<f64>| si.map(|si| units.show(entry, si).to_string());
    let words = one.ratio().map(compared_in_words).unwrap_or_default();
    let cells = (shown(one.theirs), shown(one.yours));
    Some(line(symbol::capitalised(entry.label), cells, words, wide))
}

fn line<'a>(
    label: String,
    (theirs, yours): (Option<String>, Option<String>),
    words: String,
    wide: bool,
) -> Element<'a, shell::Message> {
    let not_known = || "—".to_owned();
    let (theirs, yours) = (theirs.unwrap_or_else(not_known), yours.unwrap_or_else(not_known));
    if wide {
        let cell = |words: String| text(words).size(size::LABEL).width(Length::Fixed(NUMBER));
        return row![
            text(label).size(size::LABEL).width(Fill),
            cell(theirs),
            cell(yours).font(SEMIBOLD),
            text(words).size(size::SMALL).style(theme::soft).width(Length::Fixed(WORDS)),
        ]
        .spacing(UNIT)
        .align_y(Center)
        .into();
    }
    let said = if words.is_empty() { words } else { format!("; theirs is {words}") };
    column![
        text(label).size(size::LABEL).width(Fill),
        text(format!("Theirs {theirs}, yours {yours}{said}"))
            .size(size::SMALL)
            .style(theme::soft)
            .width(Fill),
    ]
    .into()
}

fn limits(turned: &[Turned]) -> Element<'_, shell::Message> {
    if turned.is_empty() {
        return text("None: each limit that holds in one holds in the other.")
            .size(size::LABEL)
            .style(theme::soft)
            .width(Fill)
            .into();
    }
    let stands = |finding: &Finding| {
        let margin =
            finding.margin.map(|margin| format!(", margin {}", shown(finding.limit, margin)));
        format!("{}{}", finding.verdict.in_a_word().to_lowercase(), margin.unwrap_or_default())
    };
    let each = turned.iter().map(|Turned { theirs, yours }| {
        column![
            text(yours.limit.title).size(size::LABEL).width(Fill),
            text(format!("Theirs: {}. Yours: {}.", stands(theirs), stands(yours)))
                .size(size::SMALL)
                .style(theme::soft)
                .width(Fill),
        ]
        .into()
    });
    Column::with_children(each).spacing(UNIT).into()
}
