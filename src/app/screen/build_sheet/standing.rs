//! How well each given number is known: measured, counted, from a table, said with its spread, or
//! a guess.

use std::collections::BTreeMap;

use crate::app::desk::Desk;
use crate::notebook::{Notebook, Reckoned};
use crate::quantity::{AnyId, catalogue};
use crate::sheet::presets;

/// How far a number may be from the mean of the readings to be that measurement, as a part of the
/// mean, where they agree with each other: what three figures leave.
const FIGURES: f64 = 5e-3;

/// How well a number is known.
#[derive(Debug, Clone, PartialEq)]
pub enum Standing {
    /// It is what the notebook says was measured, on that day.
    Measured(String),
    /// It stands so in a table of ready-made numbers.
    Tabled(&'static presets::Row),
    /// It is a count, which is right or wrong.
    Counted,
    /// It says how sure it is.
    Spread,
    /// None of that.
    Guess,
}

impl Standing {
    /// How it stands, in words.
    pub fn in_words(&self) -> String {
        match self {
            Self::Measured(date) => format!("measured {date}"),
            Self::Tabled(row) => format!("preset: {}", row.label),
            Self::Counted => "counted".to_owned(),
            Self::Spread => "with its spread".to_owned(),
            Self::Guess => "guess".to_owned(),
        }
    }
}

/// How well each number that was entered is known.
pub fn standings(desk: &Desk, notebook: &Notebook) -> BTreeMap<AnyId, Standing> {
    let measured = measured(notebook);
    let one = |(id, text): (AnyId, &str)| {
        let si = desk.tally.givens.get(id).map(|(si, _)| si);
        let is_it = |(_, reckoned): &&(String, Reckoned)| {
            reckoned.entry.id == id && si.is_some_and(|si| is_near(si, reckoned))
        };
        let standing = if let Some((date, _)) = measured.iter().rev().find(is_it) {
            Standing::Measured(date.clone())
        } else if let Some(row) = tabled(id, text) {
            Standing::Tabled(row)
        } else if desk.tally.spreads.contains_key(&id) {
            Standing::Spread
        } else if catalogue::find(id.name()).is_some_and(|entry| entry.whole) {
            Standing::Counted
        } else {
            Standing::Guess
        };
        (id, standing)
    };
    desk.sheet().numbers().map(one).collect()
}

/// Every measurement of the notebook with its day, the oldest of each lesson first.
fn measured(notebook: &Notebook) -> Vec<(String, Reckoned)> {
    let all = notebook.lessons().flat_map(|(_, record)| &record.measurements);
    let mut dated: Vec<_> = all.collect();
    dated.sort_by(|a, b| a.when.cmp(&b.when));
    let reckoned = dated.into_iter().filter_map(|one| Some((one.when.date(), one.reckoned()?)));
    reckoned.map(|(date, reckoned)| (date.to_owned(), reckoned)).collect()
}

fn is_near(si: f64, reckoned: &Reckoned) -> bool {
    let summary = reckoned.summary;
    let reach = (0.5 * (summary.high - summary.low)).max(FIGURES * summary.mean.abs());
    (si - summary.mean).abs() <= reach
}

/// The row of a table that fills a number in exactly so.
fn tabled(id: AnyId, text: &str) -> Option<&'static presets::Row> {
    let says = |(of, value): &(AnyId, String)| *of == id && value.trim() == text.trim();
    presets::tables().iter().flat_map(|table| &table.rows).find(|row| row.values.iter().any(says))
}
