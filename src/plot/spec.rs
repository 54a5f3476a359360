//! What a plot is: axes, lines, limits and dots, in display units.

use super::axis::{Axis, nice_step};
use crate::quantity::{Entry, Shown, Units, catalogue};
use crate::study::curve::{Curve, Sample, Scale};

/// Whose numbers a line or dot shows; colour, stroke and shape go with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Role {
    /// The reader's own build: blue, solid, round.
    Yours,
    /// The first companion: vermilion, dashed, square.
    First,
    /// The second companion: bluish green, dotted, triangle.
    Second,
}

/// How a line is stroked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Stroke {
    /// Without a break.
    Solid,
    /// Long pieces.
    Dashed,
    /// Short pieces.
    Dotted,
}

/// The shape of a dot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Shape {
    /// A disc.
    Round,
    /// A square.
    Square,
    /// A triangle on its base.
    Triangle,
}

impl Role {
    /// Every role in order.
    pub const ALL: [Self; 3] = [Self::Yours, Self::First, Self::Second];

    /// How its line is stroked.
    pub const fn stroke(self) -> Stroke {
        match self {
            Self::Yours => Stroke::Solid,
            Self::First => Stroke::Dashed,
            Self::Second => Stroke::Dotted,
        }
    }

    /// The shape of its dot.
    pub const fn shape(self) -> Shape {
        match self {
            Self::Yours => Shape::Round,
            Self::First => Shape::Square,
            Self::Second => Shape::Triangle,
        }
    }
}

/// A build whose curve is plotted.
#[derive(Debug, Clone, Copy)]
pub struct Build<'a> {
    /// What it is called.
    pub name: &'a str,
    /// Its curve.
    pub curve: &'a Curve,
}

/// A line of a plot, broken where there is no number.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Whose it is.
    pub role: Role,
    /// What it is called.
    pub label: String,
    /// Unbroken runs of points in display units, x increasing.
    pub runs: Vec<Vec<(f64, f64)>>,
}

/// A limit beside the lines.
#[derive(Debug, Clone, PartialEq)]
pub struct LimitRun {
    /// What it is called, with its number when it is one.
    pub label: String,
    /// Unbroken runs of points in display units; empty when it lies outside the plot.
    pub runs: Vec<Vec<(f64, f64)>>,
}

/// A build on its line.
#[derive(Debug, Clone, PartialEq)]
pub struct Dot {
    /// Whose it is.
    pub role: Role,
    /// Where, in display units.
    pub x: f64,
    /// Where, in display units.
    pub y: f64,
    /// What stands beside it.
    pub label: String,
}

/// A stretch of x where the reader's own build has no number.
#[derive(Debug, Clone, PartialEq)]
pub struct Band {
    /// Where it starts, in display units.
    pub from: f64,
    /// Where it ends, in display units.
    pub to: f64,
    /// Why, in words.
    pub label: String,
}

/// A plot, described once and drawn by any backend.
#[derive(Debug, Clone, PartialEq)]
pub struct PlotSpec {
    /// What it shows: "ground pressure (mean) against track width".
    pub title: String,
    /// The axis along the bottom.
    pub x: Axis,
    /// Whether the axis along the bottom has its name and numbers, or leaves them to a plot below.
    pub foot: bool,
    /// The axis up the side.
    pub y: Axis,
    /// One line a build, the reader's own first.
    pub lines: Vec<Line>,
    /// Limits to compare with.
    pub limits: Vec<LimitRun>,
    /// The builds themselves.
    pub dots: Vec<Dot>,
    /// Where there is no number.
    pub bands: Vec<Band>,
    /// What the curve does, in one sentence.
    pub summary: String,
}

impl PlotSpec {
    /// Describes the curve of the reader's build and up to two companions.
    ///
    /// All curves must be of the same quantities; the reader's own is the first. `None` when
    /// there is no curve or the quantities are not in the catalogue.
    pub fn of(builds: &[Build<'_>], units: &Units) -> Option<Self> {
        let own = builds.first()?.curve;
        let (x_entry, y_entry) = (catalogue::find(own.x.name())?, catalogue::find(own.y.name())?);
        let builds: Vec<(Role, &Build<'_>)> = Role::ALL
            .into_iter()
            .zip(builds.iter().filter(|b| (b.curve.x, b.curve.y) == (own.x, own.y)))
            .collect();
        let x = x_axis(&builds, x_entry, units, own.scale);
        let y = y_axis(&builds, y_entry, units, x.log);
        let runs = |samples: &[Sample]| runs(samples, &x, &y);
        let lines = builds
            .iter()
            .map(|(role, build)| Line {
                role: *role,
                label: build.name.to_owned(),
                runs: runs(&build.curve.samples),
            })
            .collect();
        let limits = own
            .limits
            .iter()
            .filter_map(|limit| {
                let entry = catalogue::find(limit.id.name())?;
                let runs = runs(&limit.samples);
                let constant = limit.constant();
                let inside = runs.iter().flatten().any(|(_, at)| (y.from..=y.to).contains(at));
                let shown = constant.map(|si| format!(" {}", in_unit(entry, si, &y, units)));
                let place = match constant.map(|si| y.unit.from_si(si)) {
                    Some(at) if at > y.to => ", above this plot",
                    Some(at) if at < y.from => ", below this plot",
                    None if !inside => return None,
                    _ => "",
                };
                let label = format!("{}{}{place}", entry.label, shown.unwrap_or_default());
                Some(LimitRun { label, runs: if inside { runs } else { Vec::new() } })
            })
            .collect();
        let dots = builds
            .iter()
            .filter_map(|(role, build)| {
                let (at, found) = build.curve.point?;
                let label = format!("{}: {}", build.name, in_unit(y_entry, found, &y, units));
                Some(Dot { role: *role, x: x.unit.from_si(at), y: y.unit.from_si(found), label })
            })
            .collect();
        let bands = own
            .gaps
            .iter()
            .map(|gap| Band {
                from: x.unit.from_si(gap.from),
                to: x.unit.from_si(gap.to),
                label: gap.why.clone(),
            })
            .collect();
        let title = format!("{} against {}", y_entry.label, x_entry.label);
        let summary = own.summary(units);
        Some(Self { title, x, foot: true, y, lines, limits, dots, bands, summary })
    }
}

/// A number in the unit of an axis, as everything else along it.
fn in_unit(entry: &Entry, si: f64, axis: &Axis, units: &Units) -> Shown {
    units.show_in(entry, si, axis.unit.symbol).unwrap_or_else(|_| units.show(entry, si))
}

fn x_axis(
    builds: &[(Role, &Build<'_>)],
    entry: &'static Entry,
    units: &Units,
    scale: Scale,
) -> Axis {
    let ends = |pick: fn(&Curve) -> f64| builds.iter().map(move |(_, build)| pick(build.curve));
    let from = ends(|c| c.from).fold(f64::INFINITY, f64::min);
    let to = ends(|c| c.to).fold(f64::NEG_INFINITY, f64::max);
    let unit = units.unit_for(entry, middle(from, to));
    Axis::new(entry, unit, scale == Scale::Log, unit.from_si(from), unit.from_si(to))
}

/// A size typical of a range, for choosing a unit.
fn middle(from: f64, to: f64) -> f64 {
    let most = if from.abs() > to.abs() { from } else { to };
    most / 2.0
}

fn y_axis(
    builds: &[(Role, &Build<'_>)],
    entry: &'static Entry,
    units: &Units,
    log_x: bool,
) -> Axis {
    let mut found: Vec<f64> = builds
        .iter()
        .flat_map(|(_, build)| build.curve.samples.iter().filter_map(|(_, y)| *y))
        .collect();
    found.sort_by(f64::total_cmp);
    let dots = builds.iter().filter_map(|(_, build)| build.curve.point.map(|(_, y)| y));
    let (mut low, mut high) = tame(&found).unwrap_or((0.0, 1.0));
    for y in dots {
        (low, high) = (low.min(y), high.max(y));
    }
    // A limit is worth room while it leaves the lines at least a third of the height.
    let reach = (high - low.min(0.0)).abs();
    for limit in builds.iter().take(1).flat_map(|(_, build)| &build.curve.limits) {
        for y in limit.samples.iter().filter_map(|(_, y)| *y) {
            if (low - 2.0 * reach..=high + 2.0 * reach).contains(&y) {
                (low, high) = (low.min(y), high.max(y));
            }
        }
    }
    if log_x && low > 0.0 && high / low > 8.0 {
        let unit = units.unit_for(entry, (low * high).sqrt());
        return Axis::new(entry, unit, true, unit.from_si(low / 1.15), unit.from_si(high * 1.15));
    }
    let unit = units.unit_for(entry, middle(low, high));
    let (from, to) = with_headroom(unit.from_si(low), unit.from_si(high), unit.offset == 0.0);
    Axis::new(entry, unit, false, from, to)
}

/// Lowest and highest, leaving out a spike that would flatten all the rest.
pub(super) fn tame(sorted: &[f64]) -> Option<(f64, f64)> {
    let (low, high) = (*sorted.first()?, *sorted.last()?);
    let at = |part: f64| sorted[((sorted.len() - 1) as f64 * part) as usize];
    let (tenth, ninetieth) = (at(0.1), at(0.9));
    let body = (ninetieth - tenth).max(ninetieth.abs() * 0.1);
    let high = if high > ninetieth + 8.0 * body { ninetieth + 3.0 * body } else { high };
    let low = if low < tenth - 8.0 * body { tenth - 3.0 * body } else { low };
    Some((low, high))
}

/// Linear ends on round numbers: zero belongs to the plot unless that would flatten the lines.
pub(super) fn with_headroom(low: f64, high: f64, zero_means_none: bool) -> (f64, f64) {
    let (mut from, mut to) = (low, high);
    if zero_means_none && low >= 0.0 && low < 0.6 * high {
        from = 0.0;
    }
    if zero_means_none && high <= 0.0 && high > 0.6 * low {
        to = 0.0;
    }
    if to - from <= 1e-9 * to.abs().max(from.abs()) {
        // A level line stands in the middle of the height.
        return match to {
            0.0 => (0.0, 1.0),
            y if y > 0.0 => (0.0, 2.0 * y),
            y => (2.0 * y, 0.0),
        };
    }
    let air = 0.06 * (to - from);
    let (low_end, high_end) =
        (if from == 0.0 { 0.0 } else { from - air }, if to == 0.0 { 0.0 } else { to + air });
    let step = nice_step(high_end - low_end, 6);
    ((low_end / step).floor() * step, (high_end / step).ceil() * step)
}

/// Unbroken runs in display units, cut off at the top and bottom of the plot.
pub(super) fn runs(samples: &[Sample], x: &Axis, y: &Axis) -> Vec<Vec<(f64, f64)>> {
    let mut runs: Vec<Vec<(f64, f64)>> = Vec::new();
    let mut last: Option<(f64, f64)> = None;
    for &(at, found) in samples {
        let here = found.map(|found| (x.unit.from_si(at), y.unit.from_si(found)));
        let Some(here) = here.filter(|(_, at)| !y.log || *at > 0.0) else {
            last = None;
            continue;
        };
        let piece = match last {
            Some(before) => cut(before, here, y),
            None => inside(here.1, y).then_some((here, here)),
        };
        if let Some((a, b)) = piece {
            match runs.last_mut() {
                Some(run) if last.is_some() && run.last() == Some(&a) => run.push(b),
                _ if a == b => runs.push(vec![a]),
                _ => runs.push(vec![a, b]),
            }
        }
        last = Some(here);
    }
    runs
}

fn inside(at: f64, y: &Axis) -> bool {
    (y.from..=y.to).contains(&at)
}

/// The part of a straight piece between the top and the bottom of the plot.
fn cut(a: (f64, f64), b: (f64, f64), y: &Axis) -> Option<((f64, f64), (f64, f64))> {
    if (a.1 < y.from && b.1 < y.from) || (a.1 > y.to && b.1 > y.to) {
        return None;
    }
    let bring = |end: (f64, f64), other: (f64, f64)| {
        let bound = end.1.clamp(y.from, y.to);
        if bound == end.1 {
            return end;
        }
        (end.0 + (other.0 - end.0) * (bound - end.1) / (other.1 - end.1), bound)
    };
    Some((bring(a, b), bring(b, a)))
}
