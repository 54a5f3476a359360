//! Reading numbers off a plot: under the pointer, and as a table.

use super::axis::Axis;
use super::spec::{Line, PlotSpec, Role};
use crate::quantity::{Shown, Units};

/// What one line says at one x.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Whose line.
    pub role: Role,
    /// What the build is called.
    pub label: String,
    /// The number, in the unit of the y axis.
    pub y: f64,
    /// The number and its unit, as shown.
    pub text: String,
}

/// A plot as a table.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// The headings: the x axis, then one a build.
    pub head: Vec<String>,
    /// The rows, x increasing; a dash where there is no number.
    pub rows: Vec<Vec<String>>,
}

/// What every line says at an x in display units; a line without a number there says nothing.
pub fn readings(spec: &PlotSpec, x: f64) -> Vec<Reading> {
    spec.lines
        .iter()
        .filter_map(|line| {
            let y = at(line, x)?;
            let text = shown(&spec.y, y)?.to_string();
            Some(Reading { role: line.role, label: line.label.clone(), y, text })
        })
        .collect()
}

/// The plot as rows at the named ticks of the x axis and at the builds themselves.
pub fn table(spec: &PlotSpec) -> Table {
    table_of(std::slice::from_ref(spec))
}

/// Several plots over one x axis as one table, at its named ticks and at all their dots.
pub fn table_of(specs: &[PlotSpec]) -> Table {
    let Some(first) = specs.first() else { return Table { head: Vec::new(), rows: Vec::new() } };
    let ticks = first.x.ticks.iter().filter(|tick| tick.text.is_some()).map(|tick| tick.at);
    let dots = specs.iter().flat_map(|spec| &spec.dots).map(|dot| dot.x);
    let mut places: Vec<f64> = ticks.chain(dots).collect();
    places.sort_by(f64::total_cmp);
    let same = 1e-4 * (first.x.to - first.x.from);
    places.dedup_by(
        |a, b| if first.x.log { (*a - *b).abs() <= 1e-9 * b.abs() } else { *a - *b <= same },
    );
    let lines = || specs.iter().flat_map(|spec| spec.lines.iter().map(move |line| (spec, line)));
    let head = std::iter::once(first.x.label.clone())
        .chain(lines().map(|(spec, line)| match spec.lines.len() {
            1 => spec.y.label.clone(),
            _ => format!("{}: {}", line.label, spec.y.label),
        }))
        .collect();
    let number = |axis: &Axis, value: Option<f64>| {
        value.and_then(|value| shown(axis, value)).map_or("–".to_owned(), |shown| shown.number)
    };
    let rows = places
        .into_iter()
        .map(|x| {
            std::iter::once(number(&first.x, Some(x)))
                .chain(lines().map(|(spec, line)| number(&spec.y, at(line, x))))
                .collect()
        })
        .collect();
    Table { head, rows }
}

/// A line's number at an x, between its two nearest points.
fn at(line: &Line, x: f64) -> Option<f64> {
    line.runs.iter().find_map(|run| {
        let (first, last) = (run.first()?, run.last()?);
        // The ends may be off by rounding of the unit.
        let slack = 1e-9 * last.0.abs().max(first.0.abs());
        if x < first.0 - slack || x > last.0 + slack {
            return None;
        }
        let right = run.partition_point(|(at, _)| *at < x).min(run.len() - 1);
        let left = right.saturating_sub(1);
        let ((xa, ya), (xb, yb)) = (run[left], run[right]);
        let part = if xb > xa { ((x - xa) / (xb - xa)).clamp(0.0, 1.0) } else { 0.0 };
        Some(ya + (yb - ya) * part)
    })
}

fn shown(axis: &Axis, value: f64) -> Option<Shown> {
    Units::default().show_in(axis.entry, axis.unit.to_si(value), axis.unit.symbol).ok()
}
