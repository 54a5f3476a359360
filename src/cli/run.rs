//! `heftwise run`: something over time, from a launch to a hit.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;
use serde_json::json;

use super::reckon::{Start, named, with_problems};
use super::{Stop, did_you_mean, table, write_json};
use crate::plot::save::Figure;
use crate::plot::{PlotStyle, Runner, Table, figures_of, panels, run_svg, table_of};
use crate::quantity::catalogue::heat::{REST_TIME, WORK_TIME};
use crate::quantity::catalogue::motion::DRIVING_SPEED;
use crate::quantity::channel::{RunKind, RunPulse, TIME};
use crate::quantity::{AnyId, Entry, Units, parse};
use crate::study;

/// The width of a picture, in pixels.
const WIDTH: u32 = 720;

/// Says what happens over time: a launch, a stop, a warm-up, an impact
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise run impact --build sandpiper.toml
      The force, shock, speed and crush of the stop, and when a limit is passed.
  heftwise run warm-up --build sandpiper.toml --off \"0 s\" --to \"1 h\" -o warm-up.svg
      The motor at work without a rest; writes the plots as well.

Kinds of run: launch, coast, stop, warm-up, impact, until-empty.")]
pub(super) struct Run {
    /// What kind of run.
    #[arg(value_name = "KIND")]
    kind: String,
    /// Numbers that overrule the build's.
    #[arg(value_name = "NAME=VALUE")]
    given: Vec<String>,
    /// Start from this build's numbers.
    #[arg(long, value_name = "FILE")]
    build: Option<PathBuf>,
    /// The moment to show it from.
    #[arg(long, value_name = "TIME")]
    from: Option<String>,
    /// The moment to show it to.
    #[arg(long, value_name = "TIME")]
    to: Option<String>,
    /// The speed it begins with; for a launch, the speed to reach; until empty, the speed to hold.
    #[arg(long, value_name = "SPEED")]
    speed: Option<String>,
    /// Warm-up: how long it works at a stretch.
    #[arg(long, value_name = "TIME")]
    on: Option<String>,
    /// Warm-up: how long it rests between.
    #[arg(long, value_name = "TIME")]
    off: Option<String>,
    /// Impact: half-sine, triangle, saw-tooth, trapezoid, steady or spring.
    #[arg(long, value_name = "SHAPE")]
    pulse: Option<String>,
    /// Write the plots (.svg, .png) or every moment (.csv) to this file.
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
    /// Write JSON, in SI units.
    #[arg(long)]
    json: bool,
}

impl Run {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let kind = word("kind of run", &self.kind, &RunKind::WORDS)?;
        let pulse = |text: &str| word("pulse", text, &RunPulse::WORDS);
        let like = |id: AnyId, text: &Option<String>| -> Result<Option<f64>, Stop> {
            let Some(text) = text else { return Ok(None) };
            amount(named(id.name())?, text).map(Some)
        };
        let moment = |text: &Option<String>| text.as_deref().map(|t| amount(&TIME, t)).transpose();
        let ask = study::run::Ask {
            kind,
            from: moment(&self.from)?,
            to: moment(&self.to)?,
            speed: like(DRIVING_SPEED.any(), &self.speed)?,
            on: like(WORK_TIME.any(), &self.on)?,
            off: like(REST_TIME.any(), &self.off)?,
            pulse: self.pulse.as_deref().map(pulse).transpose()?,
        };
        let (start, problems) = Start::of(self.build.as_deref(), &self.given)?;
        let run = study::Run::of(&ask, &start.outcome().givens)
            .map_err(|why| Stop::Failed(with_problems(why.to_string(), &problems)))?;
        let units = Units::default();
        let panels = panels(&[Runner { name: "", run: &run }], &kind.channels(), &units);
        if let Some(path) = &self.output {
            let svg = run_svg(&panels, WIDTH, &PlotStyle::PAPER);
            let figure = Figure { svg, numbers: figures_of(&panels) };
            figure.save(path)?;
        }
        if self.json {
            return write_json(out, &as_json(&run, &problems));
        }
        let Table { head, rows } = table_of(&panels);
        let rows: Vec<Vec<String>> = std::iter::once(head).chain(rows).collect();
        table::write(out, &rows)?;
        let assumes = run.assumes.iter().map(|words| words.told(&units));
        let words: Vec<String> = std::iter::once(run.sentence(&units)).chain(assumes).collect();
        Ok(writeln!(out, "\n{}", with_problems(words.join("\n"), &problems))?)
    }
}

/// What a word of a table stands for.
fn word<T: Copy>(what: &str, text: &str, table: &[(&'static str, T)]) -> Result<T, Stop> {
    let names = || table.iter().map(|(name, _)| *name);
    table.iter().find(|(name, _)| *name == text).map(|(_, thing)| *thing).ok_or_else(|| {
        let near = did_you_mean(text, names());
        let all = names().collect::<Vec<_>>().join(", ");
        Stop::Usage(format!("There is no {what} called \"{text}\".{near} Take one of {all}."))
    })
}

/// A number in the units of a quantity, in SI units.
fn amount(entry: &Entry, text: &str) -> Result<f64, Stop> {
    let si = parse(text, entry).map_err(|error| Stop::Usage(format!("\"{text}\": {error}")))?.si;
    if entry.admits(si) { Ok(si) } else { Err(Stop::Usage(crate::rules::out_of_bounds(entry))) }
}

fn as_json(run: &study::Run, problems: &[String]) -> serde_json::Value {
    let series: serde_json::Map<String, serde_json::Value> = run
        .series
        .iter()
        .map(|series| (series.channel.id.name().to_owned(), json!(series.values)))
        .collect();
    let units = Units::default();
    let marks: Vec<_> = run
        .marks
        .iter()
        .map(|mark| json!({ "at": mark.at, "what": mark.words.told(&units) }))
        .collect();
    json!({
        "time": run.times, "series": series, "marks": marks,
        "sentence": run.sentence(&units), "problems": problems,
    })
}
