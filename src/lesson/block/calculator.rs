//! `calculator`: numbers to change, numbers found, and the working.

use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::AnyId;

/// Numbers to change, numbers found, and the working.
#[derive(Debug, Clone, PartialEq)]
pub struct Calculator {
    /// What it asks, in a line.
    pub title: Option<String>,
    /// Numbers the reader changes, one to four, all of which can be given.
    pub change: Vec<AnyId>,
    /// Numbers found, at least one, each found by a rule.
    pub find: Vec<AnyId>,
    /// Numbers shown but not changed here.
    pub freeze: Vec<AnyId>,
}

/// The most numbers a calculator lets the reader change: more than four hide each other's effect.
const MOST: usize = 4;

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "change", "find", "freeze"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Calculator> {
    fields.allow(FIELDS, report);
    let calculator = Calculator {
        title: fields.text("title", report).map(|title| title.value),
        change: some(fields, "change", Wanted::Given, report)?,
        find: some(fields, "find", Wanted::Found, report)?,
        freeze: known::ids(fields, "freeze", Wanted::Any, report),
    };
    if calculator.change.len() > MOST {
        let many = format!("{} numbers to change", calculator.change.len());
        report.add(fields.place("change"), Fault::new(many, format!("at most {MOST}")));
    }
    for (name, ids) in [("find", &calculator.find), ("freeze", &calculator.freeze)] {
        for id in ids.iter().filter(|id| calculator.change.contains(id)) {
            let fault = Fault::new(
                format!("\"{id}\" stands in both change and {name}"),
                "a number either changed or shown",
            );
            report.add(fields.place(name), fault);
        }
    }
    known::must_bear(("change", &calculator.change), &calculator.find, fields, report);
    known::must_bear(("freeze", &calculator.freeze), &calculator.find, fields, report);
    Some(calculator)
}

/// Quantities of which there must be at least one.
pub(super) fn some(
    fields: &Fields,
    name: &str,
    wanted: Wanted,
    report: &mut Report,
) -> Option<Vec<AnyId>> {
    let before = report.count();
    let ids = known::ids(fields, name, wanted, report);
    if ids.is_empty() && report.count() == before {
        if fields.has(name) {
            report.add(fields.place(name), Fault::new(format!("{name} is empty"), "a quantity"));
        } else {
            fields.missing(name, "a list of quantity ids: [\"mass\"]", report);
        }
    }
    (!ids.is_empty()).then_some(ids)
}
