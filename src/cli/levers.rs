//! `heftwise levers`: what one more step of each number does to an answer.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;
use serde_json::{Value as Json, json};

use super::reckon::{Start, named, with_problems};
use super::{Stop, table, write_json};
use crate::quantity::{AnyId, Effort, Step, Units, catalogue};
use crate::study::{self, Lever};

/// Says what one more percent of each number does to an answer
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise levers low-end-pressure --build sandpiper.toml
      Every number that moves it by one percent more, the strongest first.
  heftwise levers ground-pressure --build sandpiper.toml --step \"10 mm\" mass=\"7 kg\"
      Ten millimetres more of each length, with another mass than the build's.")]
pub(super) struct Levers {
    /// The quantity to be moved.
    #[arg(value_name = "QUANTITY")]
    quantity: String,
    /// Numbers that overrule the build's.
    #[arg(value_name = "NAME=VALUE")]
    given: Vec<String>,
    /// Start from this build's numbers.
    #[arg(long, value_name = "FILE")]
    build: Option<PathBuf>,
    /// A share of each number, or an amount.
    #[arg(long, value_name = "STEP", default_value = "1 %", allow_hyphen_values = true)]
    step: String,
    /// Write JSON, in SI units.
    #[arg(long)]
    json: bool,
}

impl Levers {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let entry = named(&self.quantity)?;
        let step = Step::read(&self.step).map_err(|error| Stop::Usage(error.to_string()))?;
        let (start, problems) = Start::of(self.build.as_deref(), &self.given)?;
        let levers = study::Levers::of(entry.id, &step, &start.outcome());
        let words = with_problems(levers.sentence(&Units::default()), &problems);
        if levers.now.is_err() {
            return Err(Stop::Failed(words));
        }
        if self.json {
            let each: Vec<Json> = levers.levers.iter().map(as_json).collect();
            let id = entry.id.name();
            return write_json(
                out,
                &json!({ "of": id, "step": self.step, "levers": each, "problems": problems }),
            );
        }
        let rows: Vec<[String; 5]> = levers.levers.iter().map(row).collect();
        table::write(out, &rows)?;
        Ok(writeln!(out, "\n{words}")?)
    }
}

fn as_json(lever: &Lever) -> Json {
    json!({
        "id": lever.id.name(), "effort": effort(lever.effort), "from": lever.from, "to": lever.to,
        "before": lever.before, "after": lever.after.as_ref().ok(), "doubt": lever.doubt,
    })
}

fn row(lever: &Lever) -> [String; 5] {
    let doubt = lever
        .doubt
        .map_or_else(String::new, |share| format!("{:.0} % of the doubt", share * 100.0));
    [
        lever.id.name().to_owned(),
        format!("{} → {}", shown(lever.id, lever.from), shown(lever.id, lever.to)),
        lever.effect(),
        effort(lever.effort).to_owned(),
        doubt,
    ]
}

fn shown(id: AnyId, si: f64) -> String {
    catalogue::find(id.name())
        .map_or_else(String::new, |entry| Units::default().show(entry, si).to_string())
}

fn effort(effort: Effort) -> &'static str {
    match effort {
        Effort::Free => "costs nothing",
        Effort::Bought => "takes parts or work",
        Effort::Fixed => "not in your hands",
    }
}
