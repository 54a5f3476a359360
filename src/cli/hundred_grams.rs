//! `heftwise hundred-grams`: what 100 g does to every headline answer of a build.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;
use serde_json::{Value as Json, json};

use super::{Stop, open, table, write_json};
use crate::quantity::{Units, catalogue};
use crate::study::{Bought, hundred_grams};

/// Says what 100 g more does to every headline answer of a build
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise hundred-grams sandpiper.toml
      Every answer that moves: now, with 100 g more, and the change, the largest first.
  heftwise hundred-grams sandpiper.toml --json
      The same for other programs, and with 100 g less, in SI units.

The mass goes to the centre of gravity, and all else stays as it is.")]
pub(super) struct HundredGrams {
    /// The build file.
    build: PathBuf,
    /// Write JSON, in SI units.
    #[arg(long)]
    json: bool,
}

impl HundredGrams {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let sheet = open::build(&self.build)?;
        let tally = sheet.tally();
        let problems = open::problems(&self.build, &sheet, &tally);
        let bought = hundred_grams(&tally, None);
        if bought.is_empty() {
            let words = "The build has no mass, so 100 g more says nothing.".to_owned();
            return Err(Stop::Failed(
                std::iter::once(words).chain(problems).collect::<Vec<_>>().join("\n"),
            ));
        }
        if self.json {
            let answers: Vec<Json> = bought.iter().map(as_json).collect();
            return write_json(
                out,
                &json!({ "build": sheet.name(), "answers": answers, "problems": problems }),
            );
        }
        let rows: Vec<[String; 4]> = bought.iter().map(row).collect();
        table::write(out, &rows)?;
        problems.iter().try_for_each(|problem| writeln!(out, "{problem}"))?;
        Ok(())
    }
}

fn as_json(bought: &Bought) -> Json {
    json!({
        "id": bought.id.name(), "now": bought.now, "more": bought.with_more(),
        "less": bought.less.map(|change| bought.now + change),
    })
}

fn row(bought: &Bought) -> [String; 4] {
    let shown = |si| {
        catalogue::find(bought.id.name())
            .map_or_else(String::new, |entry| Units::default().show(entry, si).to_string())
    };
    let with = bought.with_more().map_or_else(|| "no answer".to_owned(), shown);
    [bought.id.name().to_owned(), shown(bought.now), format!("→ {with}"), bought.moved().in_words()]
}
