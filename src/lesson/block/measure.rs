//! `measure`: a bench test at home, what is measured beside what is predicted.
//!
//! ```toml
//! what = "Contact length of one track"
//! quantity = "contact-length"
//! tool = "a tape measure"
//! error = "5 mm"                       # how far off the tool can be, or "3 %"
//! how = """
//! 1. Markdown of several blocks, without headings and live blocks.
//! """
//! over = "What explains a ratio over 1.3."
//! under = "What explains a ratio under 0.7."
//! predicted = "live:contact-length"    # optional: the quantity itself without it
//! take = false                         # optional: not to be put into the build
//! ```

use super::number::{self, Reference, Tolerance};
use crate::lesson::document::{Block, Span};
use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::AnyId;

/// From this ratio of measured to predicted on, the lesson says what could explain it.
pub const FAR_OVER: f64 = 1.3;
/// Under this ratio too.
pub const FAR_UNDER: f64 = 0.7;

/// A bench test at home.
#[derive(Debug, Clone, PartialEq)]
pub struct Measure {
    /// What is measured, in words; its name in the notebook.
    pub what: String,
    /// What the readings measure.
    pub quantity: AnyId,
    /// What it is measured with.
    pub tool: String,
    /// What to do.
    pub how: Vec<Block>,
    /// What is expected.
    pub predicted: Reference,
    /// How far off the tool itself can be.
    pub error: Tolerance,
    /// What could explain a ratio of [`FAR_OVER`] and more.
    pub over: Vec<Span>,
    /// What could explain a ratio under [`FAR_UNDER`].
    pub under: Vec<Span>,
    /// Whether what is measured can go into the build.
    pub take: bool,
}

/// The fields of its table.
pub(super) const FIELDS: &[&str] =
    &["what", "quantity", "tool", "how", "predicted", "error", "over", "under", "take"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Measure> {
    fields.allow(FIELDS, report);
    let what = fields.required("what", report).map(|text| text.value);
    let tool = fields.required("tool", report).map(|text| text.value);
    let how = fields.required("how", report).map(|text| text.blocks(report));
    let over = fields.required("over", report).map(|text| text.spans(report));
    let under = fields.required("under", report).map(|text| text.spans(report));
    let error = fields.required("error", report);
    let entry = known::quantity(fields, "quantity", Wanted::Any, report)?;
    let error = error.and_then(|text| number::tolerance(&text, entry, report));
    let predicted = match fields.text("predicted", report) {
        Some(text) => number::reference(&text, entry, report),
        None => Some(Reference::Live(entry.id)),
    };
    let take = fields.truth("take", report);
    if take == Some(true) && !entry.is_given() {
        let fault = Fault::new(
            format!("\"{}\" is found by a rule, so the build does not take it", entry.id),
            "take = false",
        );
        report.add(fields.place("take"), fault);
    }
    Some(Measure {
        what: what?,
        quantity: entry.id,
        tool: tool?,
        how: how?,
        predicted: predicted?,
        error: error?,
        over: over?,
        under: under?,
        take: take.unwrap_or(entry.is_given()),
    })
}
