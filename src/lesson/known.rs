//! Names and numbers in a lesson held against the catalogue of quantities.

use super::document::MentionKind;
use super::fields::{Fields, Text};
use super::place::{Fault, Report};
use crate::quantity::{self, Amount, AnyId, Entry, Role, catalogue};
use crate::rules;

/// What a quantity must be to stand in a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Wanted {
    /// Any quantity.
    Any,
    /// One the reader can set.
    Given,
    /// One that a rule finds.
    Found,
}

/// The quantity of that name.
pub(super) fn entry(name: &str, wanted: Wanted) -> Result<&'static Entry, Fault> {
    let Some(entry) = catalogue::find(name) else {
        let fault = Fault::new(format!("unknown quantity \"{name}\""), "the id of a quantity");
        return Err(fault.nearest(catalogue::nearest(name)));
    };
    match wanted {
        Wanted::Given if !entry.is_given() => Err(Fault::new(
            format!("\"{name}\" is found by a rule"),
            "a quantity that the reader sets",
        )),
        Wanted::Found if matches!(entry.role, Role::Given { .. }) => {
            Err(Fault::new(format!("no rule finds \"{name}\""), "a quantity that a rule finds"))
        }
        _ => Ok(entry),
    }
}

/// The quantity a field names.
pub(super) fn quantity(
    fields: &Fields,
    name: &str,
    wanted: Wanted,
    report: &mut Report,
) -> Option<&'static Entry> {
    let text = fields.required(name, report)?;
    named(&text.value, wanted, text.at, report)
}

/// The quantity named at `at`.
pub(super) fn named(
    name: &str,
    wanted: Wanted,
    at: usize,
    report: &mut Report,
) -> Option<&'static Entry> {
    let entry = noted(entry(name, wanted), at, report)?;
    report.mention(at, MentionKind::Quantity, entry.id.name());
    Some(entry)
}

/// The quantities a field lists, each once.
pub(super) fn ids(fields: &Fields, name: &str, wanted: Wanted, report: &mut Report) -> Vec<AnyId> {
    let mut ids = Vec::new();
    for text in fields.texts(name, report) {
        let Some(entry) = named(&text.value, wanted, text.at, report) else { continue };
        if ids.contains(&entry.id) {
            let fault = Fault::new(format!("\"{}\" stands twice in {name}", entry.id), "each once");
            report.add(text.at, fault);
        } else {
            ids.push(entry.id);
        }
    }
    ids
}

/// Reports every one of these numbers that bears on none of the answers: moving it, or showing it
/// beside them, says nothing.
pub(super) fn must_bear(
    (name, inputs): (&str, &[AnyId]),
    answers: &[AnyId],
    fields: &Fields,
    report: &mut Report,
) {
    if !report.proofs() {
        return;
    }
    for id in
        inputs.iter().filter(|id| !answers.iter().any(|answer| rules::bears_on(**id, *answer)))
    {
        let names: Vec<_> = answers.iter().map(|answer| answer.name()).collect();
        let fault = Fault::new(
            format!("\"{id}\" in {name} bears on nothing that is found here"),
            format!("a number that {} depends on", names.join(" or ")),
        );
        report.flaw(fields.place_of(name, id.name()), fault);
    }
}

/// A number of the quantity, in SI units.
pub(super) fn amount(text: &Text, entry: &Entry, report: &mut Report) -> Option<f64> {
    sure_amount(text, entry, report).map(|amount| amount.si)
}

/// A number of the quantity with its spread, in SI units.
pub(super) fn sure_amount(text: &Text, entry: &Entry, report: &mut Report) -> Option<Amount> {
    let number = quantity::parse(&text.value, entry).map_err(|error| {
        Fault::new(
            format!("\"{}\" does not fit: {}", text.value, error.to_string().trim_end_matches('.')),
            format!("{} with its unit", entry.dimension.in_words()),
        )
    });
    let amount = noted(number, text.at, report)?;
    if !entry.admits(amount.si) {
        let fault = Fault::new(
            format!("{} cannot be {}", entry.label, text.value),
            "a number that is possible",
        );
        report.add(text.at, fault);
        return None;
    }
    Some(amount)
}

/// The ends of a range of the quantity, in SI units, from the fields `from` and `to`; nothing where
/// a field is missing. `what` is what ends before it starts when they are the wrong way round.
pub(super) fn range(
    fields: &Fields,
    entry: &Entry,
    what: &str,
    report: &mut Report,
) -> (Option<f64>, Option<f64>) {
    let mut end = |name| fields.text(name, report).and_then(|text| amount(&text, entry, report));
    let (from, to) = (end("from"), end("to"));
    if from.unwrap_or(entry.usual.0) >= to.unwrap_or(entry.usual.1) {
        let place = if fields.has("from") { "from" } else { "to" };
        let fault = Fault::new(format!("{what} ends before it starts"), "from smaller than to");
        report.add(fields.place(place), fault);
    }
    (from, to)
}

/// A unit in which the quantity can be shown.
pub(super) fn unit(symbol: &str, entry: &Entry) -> Result<String, Fault> {
    if quantity::unit::find(entry, symbol).is_ok() {
        return Ok(symbol.to_owned());
    }
    let units: Vec<_> = quantity::units_of(entry).iter().map(|unit| unit.symbol).collect();
    let fault = Fault::new(
        format!("\"{symbol}\" is no unit of {}", entry.id),
        if units.is_empty() {
            "no unit".to_owned()
        } else {
            format!("one of {}", units.join(", "))
        },
    );
    Err(fault.nearest(catalogue::nearest_of(symbol, units)))
}

/// The result, its fault put down at `at`.
pub(super) fn noted<T>(result: Result<T, Fault>, at: usize, report: &mut Report) -> Option<T> {
    result.map_err(|fault| report.add(at, fault)).ok()
}

/// What a word of a table stands for; an unknown one is reported with the nearest known.
pub(super) fn one_of<T: Copy>(
    what: &str,
    word: &Text,
    table: &[(&'static str, T)],
    report: &mut Report,
) -> Option<T> {
    let found = table.iter().find(|(name, _)| *name == word.value).map(|(_, thing)| *thing);
    if found.is_none() {
        let message = format!("unknown {what} \"{}\"", word.value);
        let nearest = catalogue::nearest_of(&word.value, table.iter().map(|(name, _)| *name));
        let fault = Fault::new(message, format!("one of {}", names(table)));
        report.add(word.at, fault.nearest(nearest));
    }
    found
}

/// The words of a table, in a list.
pub(super) fn names<T>(table: &[(&'static str, T)]) -> String {
    table.iter().map(|(name, _)| *name).collect::<Vec<_>>().join(", ")
}
