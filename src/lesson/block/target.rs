//! `target`: say what is wanted; it finds the number that gets there.

use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::AnyId;

/// What is wanted of a found number, and the given number to change for it.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// What it asks, in a line.
    pub title: Option<String>,
    /// The found number that should become something else.
    pub make: AnyId,
    /// What it should be at first, in its SI unit; the reader can wish for something else.
    pub be: f64,
    /// The given number to change.
    pub by: AnyId,
    /// Where to start looking, in the SI unit of `by`; nothing: the usual range.
    pub from: Option<f64>,
    /// Where to stop looking, in the SI unit of `by`; nothing: the usual range.
    pub to: Option<f64>,
}

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "make", "be", "by", "from", "to"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Target> {
    fields.allow(FIELDS, report);
    let make = known::quantity(fields, "make", Wanted::Found, report);
    let by = known::quantity(fields, "by", Wanted::Given, report);
    let be = fields.required("be", report);
    let title = fields.text("title", report).map(|title| title.value);
    let (make, by) = (make?, by?);
    if make.id == by.id {
        let fault = Fault::new(format!("\"{}\" by changing itself", make.id), "another quantity");
        report.add(fields.place("by"), fault);
    }
    known::must_bear(("by", &[by.id]), &[make.id], fields, report);
    let be = be.and_then(|text| known::amount(&text, make, report));
    let (from, to) = known::range(fields, by, "the search", report);
    Some(Target { title, make: make.id, be: be?, by: by.id, from, to })
}
