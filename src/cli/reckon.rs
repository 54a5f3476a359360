//! `heftwise reckon`: one quantity from the numbers given.

mod answer;
mod given;
mod working;

use std::collections::BTreeMap;
use std::io::Write;
use std::path::{Path, PathBuf};

use clap::Args;

use super::{Stop, did_you_mean, open, write_json};
use crate::quantity::{AnyId, Entry, catalogue as quantities};
use crate::rules::{Givens, Value};
use crate::study::Outcome;
use crate::study::curve::Numbers;
use answer::Answer;

/// Finds one quantity from the numbers given
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise reckon ground-pressure mass=\"6.4 kg\" track-count=2 track-width=\"90 mm\" \\
      contact-length=\"420 mm\" slope=\"0 deg\" --in kPa
      Says 0.830 kPa, and what was assumed.
  heftwise reckon peak-impact-force --build sandpiper.toml stop-distance=\"20 ± 5 mm\" --working
      Takes the build's numbers but for one, and shows the rules behind the answer.

A found quantity may be given too: its rule is then left out. 'heftwise list quantities' names
every quantity; 'list rules' says which are found from which.")]
pub(super) struct Reckon {
    /// The quantity to find.
    #[arg(value_name = "QUANTITY")]
    quantity: String,
    /// A number with its unit (mass="6.4 kg", or mass="6.4 ± 0.1 kg"), or a row of a preset table
    /// (pulse-shape=triangle).
    #[arg(value_name = "NAME=VALUE")]
    given: Vec<String>,
    /// Start from this build's numbers; those named overrule them.
    #[arg(long, value_name = "FILE")]
    build: Option<PathBuf>,
    /// The unit of the answer.
    #[arg(long = "in", value_name = "UNIT")]
    unit: Option<String>,
    /// Show the formula, the formula with the numbers in, and where it holds.
    #[arg(long)]
    working: bool,
    /// Write JSON, in SI units.
    #[arg(long)]
    json: bool,
}

impl Reckon {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let entry = named(&self.quantity)?;
        let (start, problems) = Start::of(self.build.as_deref(), &self.given)?;
        let outcome = start.outcome();
        match outcome.values.of(entry.id) {
            Value::Known(known) => {
                let answer = Answer::new(entry, known, &outcome, self.unit.as_deref(), problems)?;
                if self.json {
                    return write_json(out, &answer.json());
                }
                answer.write(out)?;
                if self.working { answer.write_working(out, &outcome.values) } else { Ok(()) }
            }
            Value::Missing(lacks) => {
                if self.json {
                    write_json(out, &answer::missing_json(entry, lacks))?;
                }
                Err(Stop::Failed(with_problems(answer::missing_words(entry, lacks), &problems)))
            }
            Value::Invalid(why) => {
                if self.json {
                    write_json(out, &answer::invalid_json(entry, why))?;
                }
                Err(Stop::Failed(with_problems(why.to_string(), &problems)))
            }
        }
    }
}

pub(super) fn with_problems(words: String, problems: &[String]) -> String {
    std::iter::once(words).chain(problems.iter().cloned()).collect::<Vec<_>>().join("\n")
}

/// The quantity of that name.
pub(super) fn named(name: &str) -> Result<&'static Entry, Stop> {
    quantities::find(name).ok_or_else(|| {
        let near = did_you_mean(name, quantities::all().iter().map(|entry| entry.id.name()));
        Stop::Usage(format!(
            "There is no quantity called \"{name}\".{near} 'heftwise list quantities' names them all."
        ))
    })
}

/// The numbers a pass over the rules starts from.
#[derive(Default)]
pub(super) struct Start {
    givens: Givens,
    spreads: BTreeMap<AnyId, f64>,
}

impl Start {
    /// The numbers of a build, if one is named, overruled by those named; and what is amiss in it.
    pub(super) fn of(build: Option<&Path>, given: &[String]) -> Result<(Self, Vec<String>), Stop> {
        let named = given::read(given)?;
        let mut problems = Vec::new();
        let mut start = Self::default();
        if let Some(path) = build {
            let sheet = open::build(path)?;
            let tally = sheet.tally();
            problems = open::problems(path, &sheet, &tally);
            start = Self { givens: tally.givens, spreads: tally.spreads };
        }
        start.overrule(&named);
        Ok((start, problems))
    }

    /// The numbers themselves.
    pub(super) fn numbers(&self) -> Numbers<'_> {
        Numbers { givens: &self.givens, spreads: &self.spreads }
    }

    /// All that follows from them.
    pub(super) fn outcome(self) -> Outcome {
        Outcome::of(self.givens, &self.spreads, 0)
    }

    /// Takes the numbers named; what the build said of the same thing in another way is dropped.
    fn overrule(&mut self, named: &[given::Named]) {
        for one in named {
            if let Some(pair) = crate::rules::catalogue::partner(one.id) {
                let other = if pair.one == one.id { pair.other } else { pair.one };
                self.forget(other);
            }
        }
        for one in named {
            self.forget(one.id);
            self.givens.set(one.id, one.amount.si);
            self.spreads.extend(one.amount.spread.map(|spread| (one.id, spread)));
        }
    }

    fn forget(&mut self, id: AnyId) {
        self.givens.clear(id);
        self.spreads.remove(&id);
    }
}
