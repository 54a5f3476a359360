//! The ledger: the parts by mass, each to be made heavier or lighter and moved, and what that does.

mod line;
mod watch;

use std::collections::HashMap;

use iced::widget::{Column, column, row, rule, text};
use iced::{Element, Fill};

use super::{each, frame};
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Block, BlockKind, Ledger as Asked, LedgerSort};
use crate::quantity::catalogue::machine::{BALANCE_OFFSET, MASS};
use crate::sheet::{Edit, Part};
use crate::study::Ledger;

/// The parts as listed, and the order they stand in.
#[derive(Default)]
pub struct State {
    ledger: Ledger,
    /// Kept while numbers change, so that no row moves away from under the pointer.
    order: Vec<usize>,
    revision: Option<u64>,
}

/// Adds up anew the ledgers of a page that the last change has made stale.
pub fn refresh(states: &mut HashMap<usize, State>, blocks: &[Block], desk: &Desk) {
    each(blocks, &mut |block| {
        if let BlockKind::Ledger(asked) = &block.kind {
            states.entry(block.line).or_default().refresh(asked, desk);
        }
    });
}

impl State {
    fn refresh(&mut self, asked: &Asked, desk: &Desk) {
        if self.revision == Some(desk.revision()) {
            return;
        }
        self.revision = Some(desk.revision());
        self.ledger = Ledger::of(desk.sheet(), &desk.tally);
        if self.order.len() != self.ledger.rows.len() {
            self.order = match asked.sort {
                LedgerSort::Mass => self.ledger.by_mass(),
                LedgerSort::List => (0..self.ledger.rows.len()).collect(),
            };
        }
    }

    /// Puts the heaviest first.
    pub fn sort(&mut self) {
        self.order = self.ledger.by_mass();
    }
}

/// A ledger that starts on `line` of its lesson.
pub fn view<'a>(asked: &'a Asked, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let title = asked.title.as_deref();
    let Some(state) = page.marks.ledgers.get(&line) else { return frame(title, text("")) };
    if state.ledger.rows.is_empty() {
        return frame(title, empty(page));
    }
    let most = state.ledger.rows.iter().filter_map(|row| row.share).fold(0.0, f64::max);
    let ledger = line::At { line, page, most };
    let rows = state
        .order
        .iter()
        .filter_map(|part| {
            Some((state.ledger.rows.get(*part)?, page.desk.sheet().parts().get(*part)?))
        })
        .map(|(row, part)| ledger.part(row, part));
    let out_of_order = asked.sort == LedgerSort::Mass && state.order != state.ledger.by_mass();
    let again = out_of_order.then(|| {
        pressable(Kind::Word, text("Heaviest first again").size(size::LABEL))
            .on_press(Message::Sort(line))
    });
    frame(
        title,
        column![
            Column::with_children(rows).spacing(1.5 * UNIT),
            state.ledger.unlisted.map(|rest| ledger.unlisted(rest)),
            rule::horizontal(1).style(theme::hairline),
            row![
                text(total(&state.ledger, page)).size(size::LABEL).font(SEMIBOLD).width(Fill),
                again,
            ]
            .spacing(UNIT),
            ledger.trial(),
            notes(page),
            (!asked.watch.is_empty()).then(|| watch::view(&asked.watch, page)),
        ]
        .spacing(1.5 * UNIT),
    )
}

fn total(ledger: &Ledger, page: Page<'_>) -> String {
    let count = ledger.rows.len();
    let parts = if count == 1 { "part" } else { "parts" };
    format!("{count} {parts}, {} in all", line::mass(ledger.total, page))
}

fn empty<'a>(page: Page<'a>) -> Element<'a, Message> {
    let blank = Part { name: "new part".to_owned(), mass: "100 g".to_owned(), at: None };
    column![
        text(format!(
            "{} has no parts list yet. Add the heavy parts here or on the build sheet, each with \
             its mass and its place.",
            page.desk.name()
        ))
        .size(size::LABEL)
        .width(Fill),
        pressable(Kind::Plain, text("Add a part").size(size::LABEL))
            .on_press(Message::Edit(Edit::AddPart(blank), None)),
    ]
    .spacing(UNIT)
    .into()
}

/// Why a change of a part may not do what the reader expects.
fn notes<'a>(page: Page<'a>) -> Option<Element<'a, Message>> {
    let sheet = page.desk.sheet();
    let mass = sheet.number(MASS).map(|_| {
        "You entered the mass of the whole machine, and that counts. A part made heavier here \
         moves the balance; the mass stays."
    });
    let balance = sheet
        .number(BALANCE_OFFSET)
        .map(|_| "You entered the balance point offset, so moving a part does not change it.");
    let notes: Vec<Element<'a, Message>> = mass
        .into_iter()
        .chain(balance)
        .map(|note| text(note).size(size::SMALL).style(theme::warning).width(Fill).into())
        .collect();
    (!notes.is_empty()).then(|| Column::with_children(notes).into())
}
