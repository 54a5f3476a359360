//! `hundred-grams`: every headline answer with 100 g more.
//!
//! ```toml
//! title = "What does 100 g cost?"      # optional
//! rows = 8                             # optional: the 8 that move most without it
//! ```

use crate::lesson::fields::Fields;
use crate::lesson::place::{Fault, Report};

/// Every headline answer as it is, with 100 g more, and the change; the largest change first.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HundredGrams {
    /// What it asks, in a line.
    pub title: Option<String>,
    /// How many answers it shows, at least one.
    pub rows: usize,
}

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "rows"];

/// As many answers as are taken in at a look.
const ROWS: usize = 8;

/// More than these no build has.
const MOST: i64 = 100;

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<HundredGrams> {
    fields.allow(FIELDS, report);
    let title = fields.text("title", report).map(|title| title.value);
    let rows = match fields.integer("rows", report) {
        Some(rows) if (1..=MOST).contains(&rows) => usize::try_from(rows).ok()?,
        Some(rows) => {
            report.add(
                fields.place("rows"),
                Fault::new(format!("{rows} rows"), format!("1 to {MOST}")),
            );
            return None;
        }
        None => ROWS,
    };
    Some(HundredGrams { title, rows })
}
