//! `levers`: what one more percent of each given number does to an answer.

use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::{AnyId, Step};

/// What one more step of each given number does to an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Levers {
    /// What it asks, in a line.
    pub title: Option<String>,
    /// The answer.
    pub of: AnyId,
    /// The step taken with each number at first; the reader can pick another.
    pub step: Step,
}

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "of", "step"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Levers> {
    fields.allow(FIELDS, report);
    let title = fields.text("title", report).map(|title| title.value);
    let of = known::quantity(fields, "of", Wanted::Found, report);
    let step = match fields.text("step", report) {
        Some(text) => known::noted(
            Step::read(&text.value).map_err(|_| {
                Fault::new(
                    format!("\"{}\" is no step", text.value),
                    "a share up to 100 % such as \"1 %\", or an amount with its unit",
                )
            }),
            text.at,
            report,
        ),
        None => Step::percent(1.0).ok(),
    };
    Some(Levers { title, of: of?.id, step: step? })
}
