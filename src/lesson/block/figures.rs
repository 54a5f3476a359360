//! `figures`: what the numbers printed in the text around it stand on. Only proofreading reads it; it
//! is never shown.
//!
//! ```toml
//! on = "sandpiper"                     # what they follow from: an example build, and/or
//! without = ["rake"]                   # its parts list without some parts, or `only` some of them
//! [[parts]]                            # a part with another mass or place; new = true adds one
//! name = "battery"
//! mass = "412 g"
//! [given]                              # numbers, which overrule the build's
//! stop-distance = "25 mm"
//! [found]                              # the numbers as they are printed, one way or several
//! impact-speed = "2.62 m/s"
//! mean-impact-force = ["941 N", "0.941 kN"]
//! balance-offset = "unsigned 22 mm"    # below zero, and printed without the minus
//! [range]                              # the ends of ranges, from the spreads of those numbers
//! range = ["3.19 km", "3.95 km"]
//! ```

use super::{basis, parts};
use crate::lesson::claim::{Basis, End, Says};
use crate::lesson::fields::{Fields, Text};
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::lesson::printed::Printed;
use crate::quantity::Entry;

/// The info string of its fence.
pub(super) const NAME: &str = "figures";

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &[
    basis::FIELDS[0],
    parts::FIELDS[0],
    parts::FIELDS[1],
    parts::FIELDS[2],
    basis::FIELDS[1],
    "found",
    "range",
];

/// Puts down what is printed where.
pub(super) fn read(fields: &Fields, report: &mut Report) {
    fields.allow(FIELDS, report);
    let before = report.count();
    let basis = basis::read(fields, report);
    let basis = Basis { parts: parts::read(basis.on, fields, report), ..basis };
    if basis == Basis::default() && report.count() == before {
        fields.missing(
            "on",
            "an example build, parts that are new, or a table [given] of numbers",
            report,
        );
    }
    // What stands on a mistake is not held against the rules.
    let basis = (report.count() == before).then_some(&basis);
    if !fields.has("found") && !fields.has("range") {
        fields.missing("found", "a table [found] of numbers as they are printed", report);
    }
    if let Some(table) = fields.table("the printed numbers", "found", report) {
        for (name, entry) in quantities(&table, report) {
            let texts = table.text_or_texts(name, report);
            texts.iter().for_each(|text| prints(text, entry, None, basis, report));
        }
    }
    if let Some(table) = fields.table("the printed ranges", "range", report) {
        for (name, entry) in quantities(&table, report) {
            match table.texts(name, report).as_slice() {
                [low, high] => {
                    prints(low, entry, Some(End::Low), basis, report);
                    prints(high, entry, Some(End::High), basis, report);
                }
                texts => {
                    let message = format!("a range of {} ends", texts.len());
                    let fault = Fault::new(message, "the low and the high end: [\"...\", \"...\"]");
                    report.add(table.place(name), fault);
                }
            }
        }
    }
}

/// The quantities that a table names.
fn quantities<'t>(table: &'t Fields, report: &mut Report) -> Vec<(&'t str, &'static Entry)> {
    let entry = |name: &'t str| {
        let at = table.place_of_name(name);
        Some((name, known::noted(known::entry(name, Wanted::Any), at, report)?))
    };
    table.names().filter_map(entry).collect()
}

/// Puts down that a number is printed.
fn prints(
    text: &Text,
    entry: &Entry,
    end: Option<End>,
    basis: Option<&Basis>,
    report: &mut Report,
) {
    let printed = known::noted(Printed::read(&text.value, entry), text.at, report);
    if let (Some(printed), Some(basis)) = (printed, basis) {
        let (quantity, basis) = (entry.id, basis.clone());
        report.claim(text.at, Says::Prints { quantity, printed, end, basis });
    }
}
