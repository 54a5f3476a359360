//! `faded`: a worked chain in which some lines are left blank for the reader to fill.
//!
//! ```toml
//! title = "With your numbers"          # optional
//! [[step]]
//! say = "Force: mass times gravity."   # Markdown within a line
//! is = "live:weight"                   # or "62.8 N" with quantity = "weight"
//! [[step]]
//! say = "Area: tracks times width times length."
//! is = "live:contact-area"
//! unit = "m²"                          # optional: the unit it is shown and typed in
//! blank = true
//! tolerance = "3 %"                    # optional: 2 % without it
//! hint = "Millimetres become metres first."  # optional: said after a wrong number
//! ```

use super::number::{self, Reference, Tolerance};
use crate::lesson::document::Span;
use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::AnyId;

/// A worked chain in which the reader fills the blanks, line by line.
#[derive(Debug, Clone, PartialEq)]
pub struct Faded {
    /// What it finds, in a line.
    pub title: Option<String>,
    /// Its lines, at least one of them blank.
    pub steps: Vec<Step>,
}

/// One line of the chain.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What is done in it.
    pub say: Vec<Span>,
    /// What comes out.
    pub is: Reference,
    /// What the number measures.
    pub quantity: AnyId,
    /// The unit to show it in, if the author chose one.
    pub unit: Option<String>,
    /// Whether the reader fills it.
    pub blank: bool,
    /// How near is near enough in a blank.
    pub tolerance: Tolerance,
    /// Said after a wrong number.
    pub hint: Vec<Span>,
}

/// How a line stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Line {
    /// Worked out in the lesson, SI units.
    Given(f64),
    /// The reader's turn.
    Open,
    /// Filled, and right.
    Right {
        /// What the reader said, SI units.
        said: f64,
    },
    /// Filled, and wrong; it is still the reader's turn.
    Wrong {
        /// What the reader said, SI units.
        said: f64,
        /// What comes out, SI units.
        truth: f64,
    },
    /// The build does not give the number, so the chain stops here.
    Unknown,
    /// Not shown yet: a line before it is not done.
    Later,
}

/// Within the rounding of a chain to three figures.
const NEAR: Tolerance = Tolerance::Share(0.02);

impl Faded {
    /// How each line stands, from what the reader has `said` in it (SI units) and the build's
    /// numbers as `live` gives them. Lines open one by one: a blank waits for the blanks before it.
    pub fn lines(
        &self,
        said: impl Fn(usize) -> Option<f64>,
        live: impl Fn(AnyId) -> Option<f64>,
    ) -> Vec<Line> {
        let mut waits = false;
        let mut line = |(place, step): (usize, &Step)| {
            if waits {
                return Line::Later;
            }
            let Some(truth) = step.is.si(&live) else {
                waits = true;
                return Line::Unknown;
            };
            if !step.blank {
                return Line::Given(truth);
            }
            match said(place) {
                Some(said) if step.tolerance.holds(said, truth) => Line::Right { said },
                answer => {
                    waits = true;
                    answer.map_or(Line::Open, |said| Line::Wrong { said, truth })
                }
            }
        };
        self.steps.iter().enumerate().map(&mut line).collect()
    }
}

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "step"];

/// The fields of a step.
pub(super) const STEP: &[&str] = &["say", "is", "quantity", "unit", "blank", "tolerance", "hint"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Faded> {
    fields.allow(FIELDS, report);
    let title = fields.text("title", report).map(|title| title.value);
    let tables = fields.tables("a step", "step", report);
    let steps: Vec<_> = tables.iter().filter_map(|table| step(table, report)).collect();
    if tables.is_empty() {
        fields.missing("step", "tables that each start with [[step]]", report);
    } else if steps.len() == tables.len() && !steps.iter().any(|step| step.blank) {
        let fault = Fault::new("a faded example without a blank", "blank = true in a [[step]]");
        report.add(fields.at(), fault);
    }
    Some(Faded { title, steps })
}

fn step(fields: &Fields, report: &mut Report) -> Option<Step> {
    fields.allow(STEP, report);
    let say = fields.required("say", report).map(|say| say.spans(report));
    let blank = fields.truth("blank", report).unwrap_or(false);
    let hint = fields.text("hint", report);
    let is = fields.required("is", report)?;
    let entry = match is.value.strip_prefix("live:") {
        Some(name) if !fields.has("quantity") => {
            known::noted(known::entry(name, Wanted::Any), is.at, report)
        }
        _ => known::quantity(fields, "quantity", Wanted::Any, report),
    }?;
    let unit = fields.text("unit", report);
    let unit = unit.and_then(|unit| known::noted(known::unit(&unit.value, entry), unit.at, report));
    let tolerance = match fields.text("tolerance", report) {
        Some(text) => number::tolerance(&text, entry, report),
        None => Some(NEAR),
    };
    if !blank {
        for name in ["tolerance", "hint"].into_iter().filter(|name| fields.has(name)) {
            let fault = Fault::new(format!("{name} in a step that is not blank"), "blank = true");
            report.add(fields.place(name), fault);
        }
    }
    Some(Step {
        is: number::reference(&is, entry, report)?,
        say: say?,
        quantity: entry.id,
        unit,
        blank,
        tolerance: tolerance?,
        hint: hint.map(|hint| hint.spans(report)).unwrap_or_default(),
    })
}
