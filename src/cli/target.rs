//! `heftwise target`: which value of one number makes another what is wanted.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;
use serde_json::json;

use super::reckon::{Start, named, with_problems};
use super::{Stop, write_json};
use crate::quantity::{Entry, Units, parse};
use crate::study;

/// Finds what one number must be to make another what you want
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise target ground-pressure=\"0.6 kPa\" track-width --build sandpiper.toml
      Says 125 mm; ends with 1 and the nearest that can be reached when there is no answer.
  heftwise target low-end-pressure=\"1 kPa\" balance-offset --build sandpiper.toml \\
      --from \"-70 mm\" --to \"70 mm\" mass=\"7 kg\"
      Looks in that range, with another mass than the build's.")]
pub(super) struct Target {
    /// The quantity and what you want it to be.
    #[arg(value_name = "NAME=VALUE")]
    wish: String,
    /// The given quantity to change for it.
    #[arg(value_name = "QUANTITY")]
    by: String,
    /// Numbers that overrule the build's.
    #[arg(value_name = "NAME=VALUE")]
    given: Vec<String>,
    /// Start from this build's numbers.
    #[arg(long, value_name = "FILE")]
    build: Option<PathBuf>,
    /// Where to start looking; without it, the usual range.
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    from: Option<String>,
    /// Where to stop looking.
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    to: Option<String>,
    /// Write JSON, in SI units.
    #[arg(long)]
    json: bool,
}

impl Target {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let (make, be) = self.wish.split_once('=').ok_or_else(|| {
            Stop::Usage(format!(
                "\"{}\" says no wish: write it as ground-pressure=\"0.6 kPa\".",
                self.wish
            ))
        })?;
        let (make, by) = (named(make.trim())?, named(&self.by)?);
        if !by.is_given() {
            return Err(Stop::Usage(format!(
                "\"{}\" is found by a rule: name a quantity that can be set.",
                by.id
            )));
        }
        let end = |text: &Option<String>| text.as_deref().map(|text| read(by, text)).transpose();
        let wish = study::Wish {
            make: make.id,
            be: read(make, be)?,
            by: by.id,
            from: end(&self.from)?,
            to: end(&self.to)?,
        };
        let (start, problems) = Start::of(self.build.as_deref(), &self.given)?;
        let target = study::Target::of(&wish, &start.outcome().givens)
            .map_err(|error| Stop::Usage(error.to_string()))?;
        if self.json {
            let nearest = target.nearest.as_ref().map(|n| json!({ "at": n.at, "is": n.reached }));
            let answers = &target.answers;
            let (make, by) = (make.id.name(), by.id.name());
            let found = json!({
                "make": make, "be": wish.be, "by": by, "answers": answers, "nearest": nearest,
                "from": target.from, "to": target.to, "problems": problems,
            });
            write_json(out, &found)?;
        }
        let words = with_problems(target.sentence(&Units::default()), &problems);
        match target.answers.is_empty() {
            true => Err(Stop::Failed(words)),
            false if self.json => Ok(()),
            false => Ok(writeln!(out, "{words}")?),
        }
    }
}

/// A number of the quantity, in SI units.
pub(super) fn read(entry: &Entry, text: &str) -> Result<f64, Stop> {
    let text = text.trim();
    let amount = parse(text, entry).map_err(|error| Stop::Usage(format!("\"{text}\": {error}")))?;
    Ok(amount.si)
}
