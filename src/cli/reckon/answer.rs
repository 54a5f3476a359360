//! The answer of `reckon`, for people and for programs.

use std::io::Write;

use serde_json::json;

use super::super::Stop;
use super::working;
use crate::quantity::unit::{of_dimension, si_unit};
use crate::quantity::{AnyId, Dimension, Entry, Shown, Units, catalogue as quantities, show_plain};
use crate::rules::{Known, Lack, Origin, Values};
use crate::study::Outcome;
use crate::study::spread::Contribution;

/// A number found, with all that should be said beside it.
pub(super) struct Answer {
    entry: &'static Entry,
    si: f64,
    origin: Origin,
    units: Units,
    shown: Shown,
    /// The ends in SI units and as shown.
    range: Option<(f64, f64, String)>,
    /// What each doubt adds to it, the largest first.
    shares: Vec<Contribution>,
    assumed: Vec<(&'static Entry, f64)>,
    cautions: Vec<String>,
    /// What is amiss in the build file.
    problems: Vec<String>,
}

impl Answer {
    pub(super) fn new(
        entry: &'static Entry,
        known: &Known,
        outcome: &Outcome,
        unit: Option<&str>,
        problems: Vec<String>,
    ) -> Result<Self, Stop> {
        let mut units = Units::default();
        let shown = match unit {
            Some(unit) => {
                let shown = units
                    .show_in(entry, known.si, unit)
                    .map_err(|error| Stop::Usage(error.to_string()))?;
                units.picks.insert(entry.id.name().to_owned(), shown.unit.symbol.to_owned());
                shown
            }
            None => units.show(entry, known.si),
        };
        let range = outcome
            .range(entry.id)
            .map(|range| (range.low, known.si, range.high))
            .map(|ends| (ends.0, ends.2, units.show_range(entry, ends)));
        let shares =
            outcome.range(entry.id).map_or_else(Vec::new, |range| range.contributions.clone());
        let assumed = working::assumed(entry.id, &outcome.values);
        let cautions = working::cautions(entry.id, &outcome.values);
        let Known { si, origin, .. } = *known;
        Ok(Self { entry, si, origin, units, shown, range, shares, assumed, cautions, problems })
    }

    pub(super) fn write(&self, out: &mut dyn Write) -> Result<(), Stop> {
        writeln!(out, "{} = {}", self.entry.label, self.shown)?;
        if let Some((_, _, range)) = &self.range {
            writeln!(out, "  range: {range}")?;
        }
        if !self.assumed.is_empty() {
            let assumed: Vec<String> = self
                .assumed
                .iter()
                .map(|(entry, si)| format!("{} {}", entry.label, show_plain(entry, *si)))
                .collect();
            writeln!(out, "  assumed: {}", assumed.join(", "))?;
        }
        for caution in &self.cautions {
            writeln!(out, "  caution: {caution}")?;
        }
        for problem in &self.problems {
            writeln!(out, "  {problem}")?;
        }
        Ok(())
    }

    /// Writes how the answer was found.
    pub(super) fn write_working(&self, out: &mut dyn Write, values: &Values) -> Result<(), Stop> {
        if !self.shares.is_empty() {
            let named =
                |part: &Contribution| format!("{} {:.0} %", label(part.id), 100.0 * part.share);
            let shares: Vec<String> = self.shares.iter().map(named).collect();
            writeln!(out, "  the doubt comes from: {}", shares.join(", "))?;
        }
        working::write(out, self.entry, values, &self.units)
    }

    pub(super) fn json(&self) -> serde_json::Value {
        let ends = self.range.as_ref();
        let assumed: Vec<serde_json::Value> = self
            .assumed
            .iter()
            .map(|(entry, si)| {
                json!({
                    "quantity": entry.id.name(),
                    "si": si,
                    "si_unit": si_symbol(entry.dimension),
                    "shown": show_plain(entry, *si),
                })
            })
            .collect();
        let doubt: Vec<serde_json::Value> = self
            .shares
            .iter()
            .map(|part| {
                json!({
                    "quantity": part.id.name(),
                    "half_width": part.half_width,
                    "share": part.share,
                })
            })
            .collect();
        json!({
            "quantity": self.entry.id.name(),
            "si": self.si,
            "si_unit": si_symbol(self.entry.dimension),
            "shown": self.shown.to_string(),
            "low": ends.map(|(low, _, _)| low),
            "high": ends.map(|(_, high, _)| high),
            "doubt": doubt,
            "origin": origin(self.origin),
            "cautions": self.cautions,
            "assumed": assumed,
            "problems": self.problems,
        })
    }
}

fn label(id: AnyId) -> &'static str {
    quantities::find(id.name()).map_or(id.name(), |entry| entry.label)
}

/// The coherent SI unit; `si_unit` is for people and has degrees for angles.
fn si_symbol(dimension: Dimension) -> &'static str {
    of_dimension(dimension)
        .find(|unit| unit.factor == 1.0 && unit.offset == 0.0)
        .unwrap_or_else(|| si_unit(dimension))
        .symbol
}

fn origin(origin: Origin) -> &'static str {
    match origin {
        Origin::Given => "given",
        Origin::Parts => "parts",
        Origin::Assumed => "assumed",
        Origin::Found => "found",
    }
}

/// What else to give, in words and as it would be typed.
pub(super) fn missing_words(entry: &Entry, lacks: &[Lack]) -> String {
    let either_way =
        |lack: &Lack| lack.iter().map(|id| label(*id)).collect::<Vec<_>>().join(" or ");
    let words: Vec<String> = lacks.iter().map(either_way).collect();
    let typed: Vec<String> =
        lacks.iter().filter_map(|lack| lack.first()).map(|id| format!("{id}=\"...\"")).collect();
    format!(
        "To find the {}, also give: {}.\n  Add, with a number and its unit each: {}",
        entry.label,
        words.join("; "),
        typed.join(" ")
    )
}

pub(super) fn missing_json(entry: &Entry, lacks: &[Lack]) -> serde_json::Value {
    let names: Vec<Vec<&str>> =
        lacks.iter().map(|lack| lack.iter().map(|id| id.name()).collect()).collect();
    json!({ "quantity": entry.id.name(), "missing": names })
}

pub(super) fn invalid_json(entry: &Entry, why: &str) -> serde_json::Value {
    json!({ "quantity": entry.id.name(), "invalid": why })
}
