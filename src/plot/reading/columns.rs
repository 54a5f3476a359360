//! A plot as columns of numbers: for people, and for other programs.

use super::shown;
use crate::plot::axis::Axis;
use crate::plot::spec::PlotSpec;

/// Figures of a number written for other programs.
const FIGURES: i32 = 6;

/// How near, as a part of the axis, two places of a table are one.
const SAME: f64 = 1e-4;

/// A table of words under headings.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// The headings.
    pub head: Vec<String>,
    /// The rows, each as long as the headings.
    pub rows: Vec<Vec<String>>,
}

/// One column: its heading, its axis and its number at an x.
struct Column<'a> {
    head: String,
    axis: &'a Axis,
    at: Box<dyn Fn(f64) -> Option<f64> + 'a>,
}

/// The plot as rows at the named ticks of the x axis and at the builds themselves; a dash where
/// there is no number. The reader's own number, the ends of its range, the family, companions.
pub fn table(spec: &PlotSpec) -> Table {
    table_of(std::slice::from_ref(spec))
}

/// Several plots over one x axis as one table, at its named ticks and at all their dots.
pub fn table_of(specs: &[PlotSpec]) -> Table {
    let axes = specs.first().map(|first| &first.x);
    let ticks = axes.into_iter().flat_map(|x| &x.ticks);
    let ticks = ticks.filter(|tick| tick.text.is_some()).map(|tick| tick.at);
    let dots = specs.iter().flat_map(|spec| &spec.dots).map(|dot| dot.x);
    let number = |axis: &Axis, value: f64| shown(axis, value).map(|shown| shown.number);
    rows(specs, (ticks.chain(dots).collect(), SAME), number, "–")
}

/// The plot as rows at every place it was reckoned, in plain figures for other programs: a full
/// stop, a hyphen for minus; empty where there is no number.
pub fn figures(spec: &PlotSpec) -> Table {
    figures_of(std::slice::from_ref(spec))
}

/// Several plots over one x axis as one table of figures.
pub fn figures_of(specs: &[PlotSpec]) -> Table {
    let lines = specs.iter().flat_map(|spec| spec.lines.iter().map(|line| &line.runs));
    let relatives = specs.iter().flat_map(|spec| spec.relatives.iter().map(|line| &line.runs));
    // Where the reader's own line has no number, another's places stand for it.
    let places = lines.chain(relatives).find(|runs| runs.iter().any(|run| run.len() > 1));
    let places = places.into_iter().flatten().flatten().map(|(x, _)| *x).collect();
    rows(specs, (places, 0.0), |_, value| Some(plain(value)), "")
}

/// The rows at some places; of two nearer than a part of a linear axis the first stands for both.
fn rows(
    specs: &[PlotSpec],
    (mut places, same): (Vec<f64>, f64),
    number: impl Fn(&Axis, f64) -> Option<String>,
    none: &str,
) -> Table {
    places.sort_by(f64::total_cmp);
    let linear = specs.first().map(|first| &first.x).filter(|x| !x.log);
    let near = linear.map_or(0.0, |x| same * (x.to - x.from).abs());
    places.dedup_by(|a, b| (*a - *b).abs() <= near.max(1e-9 * b.abs()));
    let columns = columns(specs);
    let row = |x: f64| {
        let cell = |column: &Column<'_>| {
            let value = (column.at)(x).and_then(|value| number(column.axis, value));
            value.unwrap_or_else(|| none.to_owned())
        };
        columns.iter().map(cell).collect()
    };
    Table {
        rows: places.into_iter().map(row).collect(),
        head: columns.iter().map(|column| column.head.clone()).collect(),
    }
}

fn columns(specs: &[PlotSpec]) -> Vec<Column<'_>> {
    let place = specs.first().map(|first| &first.x);
    place
        .map(|x| Column { head: x.label.clone(), axis: x, at: Box::new(Some) })
        .into_iter()
        .chain(specs.iter().flat_map(lines_of))
        .collect()
}

/// The columns of one plot, without its places.
fn lines_of(spec: &PlotSpec) -> Vec<Column<'_>> {
    let y = &spec.y;
    let mut columns = Vec::new();
    let lines = spec.lines.len() + spec.relatives.len();
    let named = |label: &str| match lines {
        1 => y.label.clone(),
        _ => format!("{label}: {}", y.label),
    };
    for (place, line) in spec.lines.iter().enumerate() {
        let at = Box::new(|x| at(&line.runs, x));
        columns.push(Column { head: named(&line.label), axis: y, at });
        if place == 0 && !spec.range.is_empty() {
            let low = Box::new(|x| range_at(spec, x).map(|(low, _)| low));
            let high = Box::new(|x| range_at(spec, x).map(|(_, high)| high));
            let unit = y.unit.symbol;
            let comma = if unit.is_empty() { "" } else { ", " };
            for (end, at) in [("low", low as Box<dyn Fn(f64) -> _>), ("high", high)] {
                let head = format!("{end} end of its range{comma}{unit}");
                columns.push(Column { head, axis: y, at });
            }
        }
    }
    for line in &spec.relatives {
        let at = Box::new(|x| at(&line.runs, x));
        columns.push(Column { head: named(&line.full), axis: y, at });
    }
    columns
}

/// The number of a line at an x, between its two nearest points.
pub(in crate::plot) fn at(runs: &[Vec<(f64, f64)>], x: f64) -> Option<f64> {
    runs.iter().find_map(|run| {
        let (left, right, part) = around(run, |point| point.0, x)?;
        Some(left.1 + (right.1 - left.1) * part)
    })
}

/// The ends of the range about the reader's own line at an x.
pub(super) fn range_at(spec: &PlotSpec, x: f64) -> Option<(f64, f64)> {
    spec.range.iter().find_map(|run| {
        let (left, right, part) = around(run, |point| point.0, x)?;
        let between = |a: f64, b: f64| a + (b - a) * part;
        Some((between(left.1, right.1), between(left.2, right.2)))
    })
}

/// The two points of a run nearest to an x, and how far it is from the one to the other.
fn around<T: Copy>(run: &[T], place: impl Fn(&T) -> f64, x: f64) -> Option<(T, T, f64)> {
    let (first, last) = (place(run.first()?), place(run.last()?));
    // The ends may be off by rounding of the unit.
    let slack = 1e-9 * last.abs().max(first.abs());
    if x < first - slack || x > last + slack {
        return None;
    }
    let right = run.partition_point(|point| place(point) < x).min(run.len() - 1);
    let (a, b) = (*run.get(right.saturating_sub(1))?, *run.get(right)?);
    let (xa, xb) = (place(&a), place(&b));
    let part = if xb > xa { ((x - xa) / (xb - xa)).clamp(0.0, 1.0) } else { 0.0 };
    Some((a, b, part))
}

/// A number in so many figures, without needless zeros and never as a power.
pub(in crate::plot) fn plain(value: f64) -> String {
    if value == 0.0 {
        return "0".to_owned();
    }
    let places = (FIGURES - 1 - value.abs().log10().floor() as i32).clamp(0, 17) as usize;
    let text = format!("{value:.places$}");
    let text =
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
