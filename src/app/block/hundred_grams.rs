//! What 100 g buys: headline answers now, with 100 g more, and the change.

use iced::widget::{Column, Row, column, row, rule, text};
use iced::{Element, Fill, Length};

use super::frame;
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::symbol;
use crate::lesson::HundredGrams as Block;
use crate::quantity::catalogue;
use crate::study::{Bought, hundred_grams};

/// From this width of the reading column on there is room for the label beside its numbers.
const BESIDE_FROM: f32 = 420.0;

/// What it buys, and for which state of the build.
#[derive(Default)]
pub struct State {
    found: Option<(u64, Vec<Bought>)>,
}

impl State {
    /// Works it out again if the build has changed.
    pub fn refresh(&mut self, desk: &Desk) {
        if self.found.as_ref().is_none_or(|(revision, _)| *revision != desk.revision()) {
            self.found = Some((desk.revision(), hundred_grams(&desk.tally, None)));
        }
    }

    /// Throws away what was found for another build.
    pub fn forget(&mut self) {
        self.found = None;
    }
}

/// A table that starts on `line` of its lesson.
pub fn view<'a>(block: &'a Block, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let found = page.marks.hundred_grams.get(&line).and_then(|state| state.found.as_ref());
    let bought = found.map_or(&[][..], |(_, bought)| bought.as_slice());
    if bought.is_empty() {
        let words = "Give your build a mass, and this shows what 100 g does to every answer.";
        return frame(block.title.as_deref(), text(words).size(size::LABEL).width(Fill));
    }
    let wide = page.width >= BESIDE_FROM;
    let rows = bought.iter().take(block.rows).filter_map(|bought| one(bought, wide, page));
    let more = bought.len().saturating_sub(block.rows);
    let left = (more > 0).then(|| {
        let words = format!("{more} more answers move by a smaller part.");
        text(words).size(size::SMALL).style(theme::soft).width(Fill)
    });
    frame(
        block.title.as_deref(),
        column![
            text("100 g more at the centre of gravity, all else as it is.")
                .size(size::SMALL)
                .style(theme::soft)
                .width(Fill),
            wide.then(|| beside("", ["Now", "With 100 g", "Change"].map(soft))),
            Column::with_children(rows).spacing(UNIT),
            left,
        ]
        .spacing(UNIT),
    )
}

/// One answer: now, with the step, and the change in words.
fn one<'a>(bought: &Bought, wide: bool, page: Page<'a>) -> Option<Element<'a, Message>> {
    let entry = catalogue::find(bought.id.name())?;
    let shown = |si| page.settings.units.show(entry, si).to_string();
    let with = bought.with_more().map_or_else(|| "no answer".to_owned(), shown);
    let (now, change) = (shown(bought.now), bought.moved().in_words());
    let label = symbol::capitalised(entry.label);
    let cell = |words: String| text(words).size(size::LABEL);
    let inside = if wide {
        let change = cell(change).font(SEMIBOLD).width(Fill);
        beside(label, [cell(now).width(Fill).into(), cell(with).width(Fill).into(), change.into()])
    } else {
        let moved = cell(format!("{now} → {with}")).width(Fill);
        column![cell(label).font(SEMIBOLD).width(Fill), row![moved, cell(change)].spacing(UNIT)]
            .into()
    };
    Some(column![rule::horizontal(1).style(theme::hairline), inside].spacing(UNIT).into())
}

fn soft<'a>(words: &'a str) -> Element<'a, Message> {
    text(words).size(size::SMALL).style(theme::soft).width(Fill).into()
}

/// A label and three cells in columns.
fn beside<'a>(label: impl Into<String>, cells: [Element<'a, Message>; 3]) -> Element<'a, Message> {
    row![
        text(label.into()).size(size::LABEL).width(Length::FillPortion(2)),
        Row::with_children(cells).spacing(UNIT).width(Length::FillPortion(3)),
    ]
    .spacing(UNIT)
    .into()
}
