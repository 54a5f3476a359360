//! Side by side: builds in columns, numbers in rows, ratios in words, and what gives first in each.

use super::changed::number;
use super::moved::compared_in_words;
use super::outcome::Outcome;
use super::walk_round::{Finding, Verdict, walk_round};
use super::words::label;
use crate::quantity::{AnyId, Units, catalogue};

/// A build to compare.
#[derive(Debug, Clone, Copy)]
pub struct Build<'a> {
    /// What it is called.
    pub name: &'a str,
    /// What follows from its numbers.
    pub outcome: &'a Outcome,
}

/// One number of one build.
#[derive(Debug, Clone, PartialEq)]
pub struct Cell {
    /// The number in SI units, or why there is none.
    pub number: Result<f64, String>,
    /// Its range in SI units, if it has one.
    pub range: Option<(f64, f64)>,
    /// Its ratio to the first build's; none for the first build itself, when either is lacking or
    /// zero, or when they differ in sign.
    pub ratio: Option<f64>,
}

/// One number of every build.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Which quantity.
    pub id: AnyId,
    /// One cell a build.
    pub cells: Vec<Cell>,
}

/// One build's column.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// What the build is called.
    pub name: String,
    /// The limit nearest to giving, if any margin is known.
    pub gives_first: Option<Finding>,
}

/// Builds in columns, numbers in rows.
#[derive(Debug, Clone, PartialEq)]
pub struct SideBySide {
    /// The builds; the first is the reader's own.
    pub columns: Vec<Column>,
    /// The numbers.
    pub rows: Vec<Row>,
}

impl SideBySide {
    /// Sets builds beside the first of them.
    pub fn of(show: &[AnyId], builds: &[Build<'_>]) -> Self {
        let columns = builds
            .iter()
            .map(|build| Column {
                name: build.name.to_owned(),
                gives_first: walk_round(build.outcome).into_iter().find(|f| f.margin.is_some()),
            })
            .collect();
        let rows = show
            .iter()
            .map(|&id| {
                let own = builds.first().and_then(|build| build.outcome.values.si(id));
                let cell = |(place, build): (usize, &Build<'_>)| {
                    let number = number(build.outcome.values.of(id));
                    let range = build.outcome.range(id).map(|range| (range.low, range.high));
                    let ratio = match (&number, own) {
                        (Ok(si), Some(own)) if place > 0 => ratio(*si, own),
                        _ => None,
                    };
                    Cell { number, range, ratio }
                };
                Row { id, cells: builds.iter().enumerate().map(cell).collect() }
            })
            .collect();
        Self { columns, rows }
    }

    /// The largest difference in each companion, and which build is nearest to giving.
    pub fn sentence(&self, units: &Units) -> String {
        let mut sentences: Vec<String> = self
            .columns
            .iter()
            .enumerate()
            .skip(1)
            .filter_map(|(place, column)| self.differs_most(place, &column.name))
            .collect();
        let margin = |column: &&Column| {
            let finding = column.gives_first.as_ref();
            finding.and_then(|finding| finding.margin).unwrap_or(f64::INFINITY)
        };
        let nearest = self.columns.iter().min_by(|a, b| margin(a).total_cmp(&margin(b)));
        if let Some((column, gives)) = nearest.and_then(|c| Some((c, c.gives(units)?))) {
            sentences.push(format!("Nearest to giving is {}: {gives}.", column.name));
        }
        sentences.join(" ")
    }

    fn differs_most(&self, place: usize, name: &str) -> Option<String> {
        let (id, ratio) = self
            .rows
            .iter()
            .filter_map(|row| Some((row.id, row.cells.get(place)?.ratio?)))
            .max_by(|a, b| a.1.ln().abs().total_cmp(&b.1.ln().abs()))?;
        let words = compared_in_words(ratio);
        Some(format!("{name} differs most in the {}: {words}.", label(id)))
    }
}

impl Column {
    /// What gives first, in words: `the ground under the low end, margin 0.883, gives now`; none
    /// while no margin is known.
    pub fn gives(&self, units: &Units) -> Option<String> {
        let finding = self.gives_first.as_ref()?;
        let margin = units.show(catalogue::find(finding.limit.margin.name())?, finding.margin?);
        let word = match finding.verdict {
            Verdict::Gives => "gives now",
            Verdict::Doubtful => "may give",
            _ => "holds",
        };
        let mut letters = finding.limit.title.chars();
        let first = letters.next()?.to_lowercase();
        Some(format!("{first}{}, margin {margin}, {word}", letters.as_str()))
    }
}

/// One number over another, if a ratio of them says anything.
pub fn ratio(si: f64, own: f64) -> Option<f64> {
    let ratio = si / own;
    (ratio.is_finite() && ratio > 0.0).then_some(ratio)
}
