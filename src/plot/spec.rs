//! What a plot is: axes, lines, limits and dots, in display units.

mod axes;
mod runs;

use super::axis::Axis;
use crate::quantity::{AnyId, Entry, Shown, Units, catalogue};
use crate::study::curve::{By, Curve, Sample};
pub(super) use axes::{tame, with_headroom};
use axes::{x_axis, y_axis};
use runs::range_runs;
pub(super) use runs::runs;

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

/// A line of a family: the reader's own build with another number.
#[derive(Debug, Clone, PartialEq)]
pub struct RelativeLine {
    /// Its place among the members, which decides its dashes and the mark at its end.
    pub rank: usize,
    /// What stands at its end: "4 kg", "dry sand".
    pub label: String,
    /// The same where it stands alone: "mass 4 kg", "dry sand".
    pub full: String,
    /// Unbroken runs of points in display units, x increasing.
    pub runs: Vec<Vec<(f64, f64)>>,
}

/// The range about the reader's own line, in display units: x, lower and upper end.
pub type RangeRun = Vec<(f64, f64, f64)>;

/// A side of the plot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Side {
    /// Below the lower end of x.
    Left,
    /// Above the upper end of x.
    Right,
    /// Below the lower end of y.
    Below,
    /// Above the upper end of y.
    Above,
}

/// A build that lies outside the plot: an arrow at the edge, its numbers in words.
#[derive(Debug, Clone, PartialEq)]
pub struct Edge {
    /// Whose it is.
    pub role: Role,
    /// Where on the edge, in display units.
    pub x: f64,
    /// Where on the edge, in display units.
    pub y: f64,
    /// Which way it lies.
    pub side: Side,
    /// What stands beside it.
    pub label: String,
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
    /// One line a build, the reader's own first; with a family the reader's own alone.
    pub lines: Vec<Line>,
    /// The family's lines.
    pub relatives: Vec<RelativeLine>,
    /// How sure the reader's own line is; empty when no spread bears on it.
    pub range: Vec<RangeRun>,
    /// Limits to compare with.
    pub limits: Vec<LimitRun>,
    /// The builds themselves.
    pub dots: Vec<Dot>,
    /// Builds that lie outside.
    pub edges: Vec<Edge>,
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
        let x = x_axis(own, x_entry, units);
        let y = y_axis(&builds, y_entry, units, x.log);
        let runs = |samples: &[Sample]| runs(samples, &x, &y);
        let lines = builds
            .iter()
            // With a family there are lines enough: companions are dots.
            .take(if own.family.is_some() { 1 } else { Role::ALL.len() })
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
        let relatives = own
            .relatives
            .iter()
            .enumerate()
            .map(|(rank, relative)| {
                let family = own.family.as_ref();
                let label = family.map(|family| family.name(&relative.member, units));
                let label = label.unwrap_or_default();
                let full = match family.map(|family| family.by) {
                    Some(By::Quantity(id)) => format!("{} {label}", name_of(id)),
                    _ => label.clone(),
                };
                RelativeLine { rank, label, full, runs: runs(&relative.samples) }
            })
            .collect();
        let (mut dots, mut edges) = (Vec::new(), Vec::new());
        for (role, build) in &builds {
            let Some((at, found)) = build.curve.point else { continue };
            let spot = (x.unit.from_si(at), y.unit.from_si(found));
            match outside(spot, &x, &y) {
                None => {
                    let shown = in_unit(y_entry, found, &y, units);
                    let label = format!("{}: {shown}", build.name);
                    dots.push(Dot { role: *role, x: spot.0, y: spot.1, label });
                }
                Some(side) => {
                    // Far outside, the units of the axes would make unhandy numbers.
                    let (found, at) = (units.show(y_entry, found), units.show(x_entry, at).short());
                    let label = format!("{}: {found} at {at}", build.name);
                    let (x, y) = (spot.0.clamp(x.from, x.to), spot.1.clamp(y.from, y.to));
                    edges.push(Edge { role: *role, x, y, side, label });
                }
            }
        }
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
        // The sentence speaks in the units of the axes.
        let mut spoken = units.clone();
        for axis in [&x, &y] {
            spoken.picks.insert(axis.entry.id.name().to_owned(), axis.unit.symbol.to_owned());
        }
        let summary = own.summary(&spoken);
        let range = range_runs(&own.band, &x, &y);
        let foot = true;
        Some(Self {
            title,
            x,
            foot,
            y,
            lines,
            relatives,
            range,
            limits,
            dots,
            edges,
            bands,
            summary,
        })
    }
}

/// A number in the unit of an axis, as everything else along it.
fn in_unit(entry: &Entry, si: f64, axis: &Axis, units: &Units) -> Shown {
    units.show_in(entry, si, axis.unit.symbol).unwrap_or_else(|_| units.show(entry, si))
}

/// What a quantity is called.
fn name_of(id: AnyId) -> &'static str {
    catalogue::find(id.name()).map_or(id.name(), |entry| entry.label)
}

/// On which side a point lies outside the plot, if it does.
fn outside((at, found): (f64, f64), x: &Axis, y: &Axis) -> Option<Side> {
    // The build may stand on the very end, and units round.
    let slack = 1e-9 * (x.to - x.from);
    if at < x.from - slack {
        Some(Side::Left)
    } else if at > x.to + slack {
        Some(Side::Right)
    } else if found < y.from {
        Some(Side::Below)
    } else if found > y.to {
        Some(Side::Above)
    } else {
        None
    }
}
