//! `curve`: a found number against a given one.

use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::{AnyId, Entry, catalogue};
use crate::sheet::{Family, family};

/// A found number against a given one.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// What it shows, in a line.
    pub title: Option<String>,
    /// The number found, up the page.
    pub find: AnyId,
    /// The number given, along the page.
    pub against: AnyId,
    /// Where it starts, in the SI unit of `against`; nothing: the usual range.
    pub from: Option<f64>,
    /// Where it ends, in the SI unit of `against`; nothing: the usual range.
    pub to: Option<f64>,
    /// Whether `against` is drawn on a logarithmic scale.
    pub log: bool,
    /// Quantities of the dimension of `find`, drawn as lines across.
    pub limits: Vec<AnyId>,
    /// What differs from line to line beside the build's own, at most five lines.
    pub family: Option<Family>,
}

/// The fields of its table.
pub(super) const FIELDS: &[&str] =
    &["title", "find", "against", "from", "to", "scale", "limits", "family", "values"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Curve> {
    fields.allow(FIELDS, report);
    let find = known::quantity(fields, "find", Wanted::Found, report);
    let against = known::quantity(fields, "against", Wanted::Given, report);
    let (find, against) = (find?, against?);
    let title = fields.text("title", report).map(|title| title.value);
    let (from, to) = known::range(fields, against, "the curve", report);
    let curve = Curve {
        title,
        find: find.id,
        against: against.id,
        from,
        to,
        log: is_log(fields, report),
        limits: known::ids(fields, "limits", Wanted::Any, report),
        family: family(fields, against.id, report),
    };
    if find.id == against.id {
        let fault = Fault::new(format!("\"{}\" against itself", find.id), "another quantity");
        report.add(fields.place("against"), fault);
    }
    known::must_bear(("against", &[against.id]), &[find.id], fields, report);
    check_log(&curve, against, fields, report);
    for limit in curve.limits.iter().filter_map(|id| catalogue::find(id.name())) {
        if limit.dimension != find.dimension {
            let fault = Fault::new(
                format!("\"{}\" is {}", limit.id, limit.dimension.in_words()),
                format!("{}, as \"{}\" is", find.dimension.in_words(), find.id),
            );
            report.add(fields.place("limits"), fault);
        }
    }
    Some(curve)
}

/// The family, from the fields `family` and `values`.
fn family(fields: &Fields, against: AnyId, report: &mut Report) -> Option<Family> {
    let Some(name) = fields.text("family", report) else {
        if fields.has("values") {
            let fault = Fault::new(
                "values without a family",
                "family: the id of a quantity, or a table of presets such as ground",
            );
            report.add(fields.place("values"), fault);
        }
        return None;
    };
    let values = fields.texts("values", report);
    let texts: Vec<&str> = values.iter().map(|value| value.value.as_str()).collect();
    match Family::read(&name.value, &texts, against) {
        Ok(family) => Some(family),
        Err(faults) => {
            for family::Fault { value, message, expected, nearest } in faults {
                let at = value.and_then(|place| values.get(place)).map_or(name.at, |text| text.at);
                report.add(at, Fault::new(message, expected).nearest(nearest.as_deref()));
            }
            None
        }
    }
}

fn is_log(fields: &Fields, report: &mut Report) -> bool {
    let Some(scale) = fields.text("scale", report) else { return false };
    if !["linear", "log"].contains(&scale.value.as_str()) {
        let fault = Fault::new(format!("unknown scale \"{}\"", scale.value), "linear or log");
        let nearest = catalogue::nearest_of(&scale.value, ["linear", "log"]);
        report.add(scale.at, fault.nearest(nearest));
    }
    scale.value == "log"
}

fn check_log(curve: &Curve, against: &Entry, fields: &Fields, report: &mut Report) {
    let from = curve.from.unwrap_or(against.usual.0);
    if curve.log && from <= 0.0 && from < curve.to.unwrap_or(against.usual.1) {
        let fault = Fault::new(
            "a logarithmic scale has no zero and nothing below",
            "a from larger than zero",
        );
        let place = if fields.has("from") { "from" } else { "to" };
        report.add(fields.place(place), fault);
    }
}
