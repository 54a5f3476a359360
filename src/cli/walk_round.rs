//! `heftwise walk-round`: every limit of a build at once, what gives first on top.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;
use serde_json::json;

use super::{Stop, open, table, write_json};
use crate::lesson::{Shipped, Source};
use crate::study::walk_round::{Finding, Verdict, not_known, shown};
use crate::study::{Outcome, walk_round};

/// Checks every limit of a build, what gives first on top
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise walk-round sandpiper.toml
      Margin, range and verdict of every limit.
  heftwise walk-round sandpiper.toml --json
      The same for other programs.

The margin is what a limit can take over what is asked of it: below 1 it gives.
Ends with 1 when a limit fails or has no answer, when an entry of the file cannot be read, and when
no limit at all can be checked. A limit that is only not known yet, or does not
apply to this machine, does not count as failing.")]
pub(super) struct WalkRound {
    /// The build file.
    build: PathBuf,
    /// Write JSON.
    #[arg(long)]
    json: bool,
}

impl WalkRound {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let sheet = open::build(&self.build)?;
        let tally = sheet.tally();
        let problems = open::problems(&self.build, &sheet, &tally);
        let unreadable = tally.problems.len();
        let findings = walk_round(&Outcome::of(tally.givens, &tally.spreads, 0));
        if self.json {
            let limits: Vec<_> = findings.iter().map(finding_json).collect();
            let name = sheet.name();
            write_json(out, &json!({ "build": name, "limits": limits, "problems": problems }))?;
        } else {
            write(out, sheet.name(), &findings, &problems)?;
        }
        ending(&findings, unreadable)
    }
}

/// Whether all is well, and if not, what is not.
fn ending(findings: &[Finding], unreadable: usize) -> Result<(), Stop> {
    let count = |is: fn(&Finding) -> bool| findings.iter().filter(|finding| is(finding)).count();
    let fail = count(|finding| finding.margin.is_some_and(|margin| margin < 1.0));
    let impossible = count(|finding| matches!(finding.verdict, Verdict::Invalid(_)));
    let checked =
        count(|finding| !matches!(finding.verdict, Verdict::NotKnown(_) | Verdict::DoesNotApply));
    let amiss = [
        (fail, "limit fails", "limits fail"),
        (impossible, "limit cannot be found", "limits cannot be found"),
        (unreadable, "entry of the build cannot be read", "entries of the build cannot be read"),
    ];
    let mut words: Vec<String> = amiss
        .into_iter()
        .filter(|(count, _, _)| *count > 0)
        .map(|(count, one, many)| format!("{count} {}", if count == 1 { one } else { many }))
        .collect();
    if checked == 0 {
        words.push("no limit can be checked yet".to_owned());
    }
    if words.is_empty() { Ok(()) } else { Err(Stop::Failed(format!("{}.", words.join("; ")))) }
}

fn write(
    out: &mut dyn Write,
    name: &str,
    findings: &[Finding],
    problems: &[String],
) -> Result<(), Stop> {
    writeln!(out, "{name}: what gives first is on top\n")?;
    let heading = ["margin", "range", "limit", "verdict"].map(str::to_owned);
    let rows: Vec<[String; 4]> = std::iter::once(heading).chain(findings.iter().map(row)).collect();
    table::write(out, &rows)?;
    if let Some(first) = findings.iter().find(|finding| finding.margin.is_some()) {
        writeln!(out, "\nFirst move: {}", first.limit.first_move)?;
        if let Some(lesson) = lesson(first) {
            writeln!(out, "Lesson: {lesson}")?;
        }
    }
    if !problems.is_empty() {
        writeln!(out, "\nIn the build file:")?;
    }
    for problem in problems {
        writeln!(out, "  {problem}")?;
    }
    if let Some(sentence) = not_known(findings) {
        writeln!(out, "\n{sentence}")?;
    }
    Ok(())
}

fn row(finding: &Finding) -> [String; 4] {
    let dash = || "-".to_owned();
    [
        finding.margin.map_or_else(dash, |margin| shown(finding.limit, margin)),
        finding.range.map_or_else(dash, |(low, high)| {
            format!("{} to {}", shown(finding.limit, low), shown(finding.limit, high))
        }),
        finding.limit.title.to_owned(),
        finding.sentence.clone(),
    ]
}

/// The lesson that explains the limit, if the program has it.
fn lesson(finding: &Finding) -> Option<&'static str> {
    let lesson = finding.limit.lesson;
    Shipped.lessons().is_ok_and(|ids| ids.iter().any(|id| id == lesson)).then_some(lesson)
}

fn finding_json(finding: &Finding) -> serde_json::Value {
    let verdict = match &finding.verdict {
        Verdict::Gives => "gives",
        Verdict::Doubtful => "doubtful",
        Verdict::Holds => "holds",
        Verdict::NotKnown(_) => "not known",
        Verdict::Invalid(_) => "invalid",
        Verdict::DoesNotApply => "does not apply",
    };
    let missing = match &finding.verdict {
        Verdict::NotKnown(lacks) => {
            lacks.iter().map(|lack| lack.iter().map(|id| id.name()).collect::<Vec<_>>()).collect()
        }
        _ => Vec::new(),
    };
    json!({
        "limit": finding.limit.margin.name(),
        "title": finding.limit.title,
        "margin": finding.margin,
        "low": finding.range.map(|(low, _)| low),
        "high": finding.range.map(|(_, high)| high),
        "verdict": verdict,
        "sentence": finding.sentence,
        "missing": missing,
        "first_move": finding.limit.first_move,
        "lesson": lesson(finding),
    })
}
