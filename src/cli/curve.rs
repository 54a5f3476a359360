//! `heftwise curve`: a found quantity against a given one, as words, a table, a picture or a file of
//! numbers.

use std::io::Write;
use std::path::{Path, PathBuf};

use clap::{Args, ValueEnum};

use super::reckon::{Start, named, with_problems};
use super::target::read;
use super::{Stop, open, table};
use crate::plot::save::{Figure, Kind};
use crate::plot::{self, Build, PlotSpec, PlotStyle};
use crate::quantity::{AnyId, Entry, Units};
use crate::sheet::Family;
use crate::study::curve::{self, Ask};

/// Draws a found number against a given one
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise curve ground-pressure --against track-width --build sandpiper.toml \\
      --family mass --values \"4 kg,6 kg,8 kg\" --limits holding-pressure -o pressure.svg
      Draws the build's own line and three more, and the limit, into a picture.
  heftwise curve sinkage --against track-width --build sandpiper.toml --family ground \\
      --values dry-sand-land-locomotion-lab,snow-sweden
      Without -o: a table and a sentence.

The ending of the file decides: .svg, .png, or .csv for every number.")]
pub(super) struct Curve {
    /// The quantity to find, up the page.
    #[arg(value_name = "QUANTITY")]
    find: String,
    /// Numbers that overrule the build's.
    #[arg(value_name = "NAME=VALUE")]
    given: Vec<String>,
    /// The given quantity to change, along the foot.
    #[arg(long, value_name = "QUANTITY")]
    against: String,
    /// Where to start; without it, the usual range.
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    from: Option<String>,
    /// Where to end.
    #[arg(long, value_name = "VALUE", allow_hyphen_values = true)]
    to: Option<String>,
    /// How the foot runs.
    #[arg(long, value_enum, default_value = "linear")]
    scale: Scale,
    /// What differs from line to line: a quantity that is set, or a table of presets (ground).
    #[arg(long, value_name = "NAME", requires = "values")]
    family: Option<String>,
    /// The members of the family, at most five, separated by commas.
    #[arg(long, value_name = "VALUES", value_delimiter = ',', requires = "family")]
    values: Vec<String>,
    /// Quantities to compare with, drawn as lines, separated by commas.
    #[arg(long, value_name = "QUANTITIES", value_delimiter = ',')]
    limits: Vec<String>,
    /// Start from this build's numbers.
    #[arg(long, value_name = "FILE")]
    build: Option<PathBuf>,
    /// A build to set beside it; at most two.
    #[arg(long, value_name = "FILE")]
    companion: Vec<PathBuf>,
    /// Where to write the picture or the numbers.
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum Scale {
    /// Equal steps add.
    Linear,
    /// Equal steps multiply.
    Log,
}

/// The size of a picture, in pixels.
const SIZE: (u32, u32) = (800, 500);
/// Companions at most: colours and shapes go no further.
const COMPANIONS: usize = 2;

impl Curve {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        // A name that cannot be written to is said before anything else is done.
        let kind = self.output.as_deref().map(Kind::of).transpose();
        kind.map_err(|error| Stop::Usage(error.to_string()))?;
        let ask = self.ask()?;
        if self.companion.len() > COMPANIONS {
            let said = self.companion.len();
            return Err(Stop::Usage(format!("{said} companions: name {COMPANIONS} at most.")));
        }
        let (start, problems) = Start::of(self.build.as_deref(), &self.given)?;
        let beside: Vec<(String, Start)> = self
            .companion
            .iter()
            .map(|path| Ok((name(path)?, Start::of(Some(path), &[])?.0)))
            .collect::<Result<_, Stop>>()?;
        let givens: Vec<_> = beside.iter().map(|(_, start)| start.numbers().givens).collect();
        let (own, others) = curve::together(&ask, start.numbers(), &givens)
            .map_err(|error| Stop::Usage(error.to_string()))?;
        let own_name = match &self.build {
            Some(path) => name(path)?,
            None => "These numbers".to_owned(),
        };
        let mut builds = vec![Build { name: &own_name, curve: &own }];
        builds.extend(
            beside
                .iter()
                .zip(&others)
                .filter_map(|((name, _), curve)| curve.as_ref().map(|curve| Build { name, curve })),
        );
        let spec = PlotSpec::of(&builds, &Units::default())
            .ok_or_else(|| Stop::Failed("There is nothing to draw.".to_owned()))?;
        let words = with_problems(spec.summary.clone(), &problems);
        let empty = own.samples.iter().all(|(_, y)| y.is_none());
        if empty && own.relatives.iter().all(|r| r.samples.iter().all(|(_, y)| y.is_none())) {
            return Err(Stop::Failed(words));
        }
        match &self.output {
            Some(path) => {
                save(&spec, path)?;
                writeln!(out, "{words}\nWritten to {}.", path.display())?;
            }
            None => {
                let plot::Table { head, rows } = plot::table(&spec);
                table::write(out, &[vec![head], rows].concat())?;
                writeln!(out, "\n{words}")?;
            }
        }
        Ok(())
    }

    fn ask(&self) -> Result<Ask, Stop> {
        let (find, against) = (named(&self.find)?, named(&self.against)?);
        if !against.is_given() {
            return Err(Stop::Usage(format!(
                "\"{}\" is found by a rule: set a quantity along the foot that can be set.",
                against.id
            )));
        }
        if find.id == against.id {
            return Err(Stop::Usage(format!("\"{}\" against itself shows nothing.", find.id)));
        }
        let end = |text: &Option<String>| text.as_deref().map(|t| read(against, t)).transpose();
        Ok(Ask {
            find: find.id,
            against: against.id,
            from: end(&self.from)?,
            to: end(&self.to)?,
            scale: match self.scale {
                Scale::Linear => curve::Scale::Linear,
                Scale::Log => curve::Scale::Log,
            },
            limits: self.limits.iter().map(|l| limit(l.trim(), find)).collect::<Result<_, _>>()?,
            family: self.family(against.id)?,
        })
    }

    fn family(&self, against: AnyId) -> Result<Option<Family>, Stop> {
        let Some(name) = &self.family else { return Ok(None) };
        let values: Vec<&str> = self.values.iter().map(|value| value.trim()).collect();
        Family::read(name.trim(), &values, against).map(Some).map_err(|faults| {
            let words: Vec<String> = faults.iter().map(ToString::to_string).collect();
            Stop::Usage(words.join("\n"))
        })
    }
}

fn limit(name: &str, find: &Entry) -> Result<AnyId, Stop> {
    let entry = named(name)?;
    if entry.dimension != find.dimension {
        return Err(Stop::Usage(format!(
            "\"{}\" is {}, but \"{}\" is {}: a limit must be the same.",
            entry.id,
            entry.dimension.in_words(),
            find.id,
            find.dimension.in_words()
        )));
    }
    Ok(entry.id)
}

/// What a build is called, or its file when it has no name.
fn name(path: &Path) -> Result<String, Stop> {
    let sheet = open::build(path)?;
    let name = sheet.name().trim();
    if !name.is_empty() {
        return Ok(name.to_owned());
    }
    Ok(path.file_stem().map_or_else(String::new, |stem| stem.to_string_lossy().into_owned()))
}

fn save(spec: &PlotSpec, path: &Path) -> Result<(), Stop> {
    let svg = plot::svg(spec, SIZE, &PlotStyle::PAPER);
    let figure = Figure { svg, numbers: plot::figures(spec) };
    Ok(figure.save(path)?)
}
