//! Side by side: builds in columns, numbers in rows, ratios in words, and what gives first.

use iced::widget::{Column, Row, column, container, row, rule, text};
use iced::{Center, Element, Fill};

use super::frame;
use crate::app::companion::Companion;
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::mark::mark;
use crate::app::widget::symbol;
use crate::lesson::SideBySide as Block;
use crate::plot::Role;
use crate::quantity::{Entry, catalogue};
use crate::study::SideBySide;
use crate::study::moved::compared_in_words;
use crate::study::side_by_side::{Build, Cell, Column as Of, Row as Numbers};

/// From this width of the reading column on there is room for columns; below, one build stands
/// under the other.
const COLUMNS_FROM: f32 = 420.0;

/// The table, and for which builds it was made.
#[derive(Default)]
pub struct State {
    made: Option<(Key, SideBySide)>,
}

type Key = (u64, u64, String);

impl State {
    /// Compares again if a build has changed.
    pub fn refresh(&mut self, block: &Block, desk: &Desk) {
        let key = (desk.revision(), desk.company.changes(), desk.name());
        if self.made.as_ref().is_some_and(|(made, _)| *made == key) {
            return;
        }
        let others = others(block, desk);
        let mut builds = vec![Build { name: &key.2, outcome: &desk.outcome }];
        builds.extend(others.iter().map(|c| Build { name: &c.name, outcome: &c.outcome }));
        let table = SideBySide::of(&block.show, &builds);
        self.made = Some((key, table));
    }

    /// Throws away what was compared with another build.
    pub fn forget(&mut self) {
        self.made = None;
    }
}

/// The builds beside the reader's own: the companions, then the lesson's examples that are not
/// among them, as long as there is room.
fn others<'a>(block: &Block, desk: &'a Desk) -> Vec<&'a Companion> {
    let mut others: Vec<&Companion> = desk.company.all().iter().collect();
    for example in block.with.iter().filter_map(|id| Companion::example(id)) {
        let known = others.iter().any(|other| other.kept == example.kept)
            || desk.sheet().text() == example.sheet.text();
        if !known && others.len() + 1 < Role::ALL.len() {
            others.push(example);
        }
    }
    others
}

/// A comparison that starts on `line` of its lesson.
pub fn view<'a>(block: &'a Block, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let made = page.marks.side_by_side.get(&line).and_then(|state| state.made.as_ref());
    let Some((_, table)) = made else {
        return frame(block.title.as_deref(), text("Nothing to compare."));
    };
    let alone = (table.columns.len() == 1).then(|| {
        text("Add a companion on the bench (Ctrl+5) to see it beside yours.")
            .size(size::SMALL)
            .style(theme::soft)
            .width(Fill)
    });
    let wide = page.width >= COLUMNS_FROM;
    let rows = table.rows.iter().filter_map(|numbers| {
        let entry = catalogue::find(numbers.id.name())?;
        Some(if wide { across(numbers, entry, page) } else { down(numbers, entry, table, page) })
    });
    frame(
        block.title.as_deref(),
        column![
            wide.then(|| heads(table)),
            Column::with_children(rows).spacing(UNIT),
            gives(table, wide, page),
            alone,
            text(table.sentence(&page.settings.units)).size(size::LABEL).width(Fill),
        ]
        .spacing(1.5 * UNIT),
    )
}

/// The names of the builds, each with its mark.
fn heads<'a>(table: &'a SideBySide) -> Element<'a, Message> {
    let names = table.columns.iter().zip(Role::ALL).map(|(column, role)| name(&column.name, role));
    row![
        text("").width(Fill),
        Row::with_children(names).spacing(UNIT).width(portion(table.columns.len()))
    ]
    .spacing(UNIT)
    .into()
}

/// The width of all builds' columns beside the labels.
fn portion(builds: usize) -> iced::Length {
    iced::Length::FillPortion(u16::try_from(builds).unwrap_or(1))
}

fn name<'a>(name: &'a str, role: Role) -> Element<'a, Message> {
    row![mark(role), text(name).size(size::LABEL).font(SEMIBOLD).width(Fill)]
        .spacing(UNIT / 2.0)
        .align_y(Center)
        .width(Fill)
        .into()
}

/// One number of every build in a row.
fn across<'a>(numbers: &Numbers, entry: &'static Entry, page: Page<'a>) -> Element<'a, Message> {
    let cells = numbers.cells.iter().map(|cell| self::cell(cell, entry, page));
    column![
        rule::horizontal(1).style(theme::hairline),
        row![
            text(symbol::capitalised(entry.label)).size(size::LABEL).width(Fill),
            Row::with_children(cells).spacing(UNIT).width(portion(numbers.cells.len())),
        ]
        .spacing(UNIT),
    ]
    .spacing(UNIT)
    .into()
}

/// One number of every build, one under the other, for a narrow page.
fn down<'a>(
    numbers: &Numbers,
    entry: &'static Entry,
    table: &'a SideBySide,
    page: Page<'a>,
) -> Element<'a, Message> {
    let each =
        numbers.cells.iter().zip(&table.columns).zip(Role::ALL).map(|((cell, column), role)| {
            row![name(&column.name, role), self::cell(cell, entry, page)].spacing(UNIT).into()
        });
    column![
        rule::horizontal(1).style(theme::hairline),
        text(symbol::capitalised(entry.label)).size(size::LABEL).font(SEMIBOLD).width(Fill),
        Column::with_children(each).spacing(UNIT / 2.0),
    ]
    .spacing(UNIT / 2.0)
    .into()
}

/// What gives first in each build.
fn gives<'a>(table: &'a SideBySide, wide: bool, page: Page<'a>) -> Element<'a, Message> {
    let label = text("Gives first").size(size::LABEL);
    let words = |column: &Of| {
        let words = column.gives(&page.settings.units);
        let words = words.map_or_else(|| "not known".to_owned(), |w| symbol::capitalised(&w));
        text(words).size(size::SMALL).width(Fill).into()
    };
    let inside: Element<'a, Message> = if wide {
        let each = table.columns.iter().map(words);
        let each = Row::with_children(each).spacing(UNIT).width(portion(table.columns.len()));
        row![label.width(Fill), each].spacing(UNIT).into()
    } else {
        let each = table.columns.iter().zip(Role::ALL).map(|(column, role)| {
            row![name(&column.name, role), words(column)].spacing(UNIT).into()
        });
        column![label.font(SEMIBOLD), Column::with_children(each).spacing(UNIT / 2.0)]
            .spacing(UNIT / 2.0)
            .into()
    };
    column![rule::horizontal(1).style(theme::hairline), inside].spacing(UNIT).into()
}

fn cell<'a>(cell: &Cell, entry: &'static Entry, page: Page<'a>) -> Element<'a, Message> {
    let units = &page.settings.units;
    let small = |words: String| text(words).size(size::SMALL).style(theme::soft).width(Fill);
    let inside = match &cell.number {
        Ok(si) => column![
            text(units.show(entry, *si).to_string()).size(size::BODY).font(SEMIBOLD),
            cell.range.map(|(low, high)| small(units.show_range(entry, (low, *si, high)))),
            cell.ratio.map(|ratio| small(compared_in_words(ratio))),
        ],
        Err(why) => {
            column![text("not known").size(size::LABEL).style(theme::soft), small(why.clone())]
        }
    };
    container(inside.spacing(2)).width(Fill).into()
}
