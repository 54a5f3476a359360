//! A curve: a found number against a given one, all other numbers as they are in the build.

mod band;
mod sample;
mod summary;

use std::collections::BTreeMap;

use crate::quantity::{AnyId, Entry, catalogue};
use crate::rules::catalogue::partner;
use crate::rules::{Givens, Origin, all_bearing_on, evaluate};
use crate::sheet::family;
pub use crate::sheet::family::{By, Family};
use sample::Sampler;

/// How the x axis runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Scale {
    /// Equal steps add.
    #[default]
    Linear,
    /// Equal steps multiply.
    Log,
}

/// What curve is asked for.
#[derive(Debug, Clone, PartialEq)]
pub struct Ask {
    /// The number found.
    pub find: AnyId,
    /// The number changed.
    pub against: AnyId,
    /// Where to start, in SI units; none: the usual range, widened to hold the build.
    pub from: Option<f64>,
    /// Where to end, in SI units.
    pub to: Option<f64>,
    /// How the x axis runs.
    pub scale: Scale,
    /// Quantities of the same dimension as `find`, drawn as lines.
    pub limits: Vec<AnyId>,
    /// What differs from line to line beside the build's own.
    pub family: Option<Family>,
}

impl Ask {
    /// The curve over the usual range, linear, no limits.
    pub fn new(find: impl Into<AnyId>, against: impl Into<AnyId>) -> Self {
        Self {
            find: find.into(),
            against: against.into(),
            from: None,
            to: None,
            scale: Scale::Linear,
            limits: Vec::new(),
            family: None,
        }
    }
}

/// Why there is no curve.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum CurveError {
    /// One of the ids is not in the catalogue.
    #[error("There is no quantity called {0}.")]
    Unknown(AnyId),
    /// The ends are equal, the wrong way round, or outside what the quantity can be.
    #[error("The curve of the {0} must start below where it ends, within what the {0} can be.")]
    Ends(&'static str),
    /// A logarithmic axis has no zero.
    #[error("A logarithmic curve must start above zero; this one of the {0} does not.")]
    LogFromZero(&'static str),
}

/// A sampled number: where, and what was found there, if anything.
pub type Sample = (f64, Option<f64>);

/// A range along a curve: where, and its lower and upper end, if there is one.
pub type RangeSample = (f64, Option<(f64, f64)>);

/// One member of a family: the build with other numbers.
#[derive(Debug, Clone, PartialEq)]
pub struct Relative {
    /// Which.
    pub member: family::Member,
    /// Its samples, in SI units.
    pub samples: Vec<Sample>,
}

/// A limit beside a curve, in SI units.
#[derive(Debug, Clone, PartialEq)]
pub struct LimitLine {
    /// Which quantity.
    pub id: AnyId,
    /// Its samples at the curve's own x; all equal when it does not depend on x.
    pub samples: Vec<Sample>,
}

impl LimitLine {
    /// The one value, if it does not vary along the curve.
    pub fn constant(&self) -> Option<f64> {
        let first = self.samples.first()?.1?;
        let same = |y: f64| (y - first).abs() <= 1e-9 * first.abs();
        self.samples.iter().all(|(_, y)| y.is_some_and(same)).then_some(first)
    }
}

/// A stretch of x without a number.
#[derive(Debug, Clone, PartialEq)]
pub struct Gap {
    /// Where it starts, in SI units.
    pub from: f64,
    /// Where it ends, in SI units.
    pub to: f64,
    /// Why, in words.
    pub why: String,
}

/// A found number against a given one. All numbers in SI units, never NaN or infinite.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// The number changed.
    pub x: AnyId,
    /// The number found.
    pub y: AnyId,
    /// How the x axis runs.
    pub scale: Scale,
    /// Where it starts.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// The samples, x strictly increasing, closer together where the curve bends or breaks off.
    pub samples: Vec<Sample>,
    /// The build itself, if both its numbers are known; it may lie outside the ends.
    pub point: Option<(f64, f64)>,
    /// Lines to compare with.
    pub limits: Vec<LimitLine>,
    /// Where there is no number, and why.
    pub gaps: Vec<Gap>,
    /// How sure the number found is along the curve; empty when no spread bears on it.
    pub band: Vec<RangeSample>,
    /// What differs from line to line.
    pub family: Option<Family>,
    /// The other lines, in the order of the family's members.
    pub relatives: Vec<Relative>,
}

/// The numbers of a build, and how sure they are (half-widths in SI units).
#[derive(Debug, Clone, Copy)]
pub struct Numbers<'a> {
    /// The numbers given.
    pub givens: &'a Givens,
    /// Their spreads.
    pub spreads: &'a BTreeMap<AnyId, f64>,
}

/// The numbers of a build that a curve hangs on: while they stay the same, so does the curve.
#[derive(Debug, Clone, PartialEq)]
pub struct Footing(Vec<Foot>);

/// A number given, if it is, and its spread.
type Foot = (Option<(f64, Origin)>, Option<f64>);

impl Footing {
    /// What the curve hangs on now.
    pub fn of(ask: &Ask, numbers: Numbers<'_>) -> Self {
        let asked: Vec<_> = ask.limits.iter().copied().chain([ask.find, ask.against]).collect();
        let number = |id| (numbers.givens.get(id), numbers.spreads.get(&id).copied());
        Self(all_bearing_on(&asked).map(number).collect())
    }
}

/// The curve of the reader's own build, and those of companions over the same range, where they
/// have one.
///
/// An end that is not asked for is widened to hold a companion, as long as the reader's own range
/// keeps a third of the width. Companions have no family and no band of their own.
///
/// # Errors
/// An id is unknown, or the ends make no axis.
pub fn together(
    ask: &Ask,
    own: Numbers<'_>,
    companions: &[&Givens],
) -> Result<(Curve, Vec<Option<Curve>>), CurveError> {
    let entry = known_entry(ask)?;
    let here = |givens: &Givens| evaluate(givens).si(ask.against);
    let (from, to) = ends(ask, entry, here(own.givens))?;
    let (mut low, mut high) = (from, to);
    for x in companions.iter().filter_map(|givens| here(givens)) {
        let (wide_low, wide_high) = (
            if ask.from.is_none() { low.min(x) } else { low },
            if ask.to.is_none() { high.max(x) } else { high },
        );
        if span(ask.scale, wide_low, wide_high) <= 3.0 * span(ask.scale, from, to) {
            (low, high) = (wide_low, wide_high);
        }
    }
    let ask = Ask { from: Some(low), to: Some(high), ..ask.clone() };
    let lone = Ask { family: None, ..ask.clone() };
    let others = companions.iter().map(|givens| Curve::of(&lone, givens).ok()).collect();
    Ok((Curve::with_spreads(&ask, own)?, others))
}

/// How far it is from one end to the other, as the scale counts.
fn span(scale: Scale, from: f64, to: f64) -> f64 {
    match scale {
        Scale::Linear => to - from,
        Scale::Log => (to / from).ln(),
    }
}

impl Curve {
    /// Samples a curve around the build, whose numbers are taken as exact.
    ///
    /// # Errors
    /// An id is unknown, or the ends make no axis.
    pub fn of(ask: &Ask, givens: &Givens) -> Result<Self, CurveError> {
        Self::with_spreads(ask, Numbers { givens, spreads: &BTreeMap::new() })
    }

    /// Samples a curve around the build, with the range of the number found all along it.
    ///
    /// The range is that of the other numbers: the one along the foot is exact at each place.
    ///
    /// # Errors
    /// An id is unknown, or the ends make no axis.
    pub fn with_spreads(ask: &Ask, numbers: Numbers<'_>) -> Result<Self, CurveError> {
        let entry = known_entry(ask)?;
        let givens = numbers.givens;
        let values = evaluate(givens);
        let here = values.si(ask.against);
        let (from, to) = ends(ask, entry, here)?;
        let run = Sampler::new(ask, entry, givens).run(from, to);
        let point = here.zip(values.si(ask.find));
        let band = band::band(ask, numbers, &run.samples, point.map(|(x, _)| x));
        let lone = Ask { limits: Vec::new(), family: None, ..ask.clone() };
        let members = ask.family.iter().flat_map(|family| &family.members);
        let relatives = members
            .map(|member| {
                let givens = related(givens, member);
                let samples = Sampler::new(&lone, entry, &givens).run(from, to).samples;
                Relative { member: member.clone(), samples }
            })
            .collect();
        Ok(Self {
            x: ask.against,
            y: ask.find,
            scale: ask.scale,
            from,
            to,
            samples: run.samples,
            point,
            limits: run.limits,
            gaps: run.gaps,
            band,
            family: ask.family.clone(),
            relatives,
        })
    }
}

/// The build with a member's numbers in place of its own.
fn related(givens: &Givens, member: &family::Member) -> Givens {
    let mut givens = givens.clone();
    for &(id, si) in &member.numbers {
        // Two ways to say one thing: the other one gives way.
        if let Some(pair) = partner(id) {
            givens.clear(if pair.one == id { pair.other } else { pair.one });
        }
        givens.set(id, si);
    }
    givens
}

/// The quantity along the foot, once every id is known.
fn known_entry(ask: &Ask) -> Result<&'static Entry, CurveError> {
    for id in ask.limits.iter().chain([&ask.find]) {
        catalogue::find(id.name()).ok_or(CurveError::Unknown(*id))?;
    }
    catalogue::find(ask.against.name()).ok_or(CurveError::Unknown(ask.against))
}

/// The ends of the axis: those asked for, else the usual ones, widened to hold the build.
fn ends(ask: &Ask, entry: &Entry, here: Option<f64>) -> Result<(f64, f64), CurveError> {
    let (mut low, mut high) = entry.usual;
    if low >= high {
        let around = here.filter(|x| *x != 0.0).map_or(1.0, f64::abs);
        (low, high) = (0.0, 2.0 * around);
    }
    if let Some(x) = here {
        (low, high) = (low.min(x), high.max(x));
    }
    let low = ask.from.unwrap_or(low.max(entry.possible.0));
    let high = ask.to.unwrap_or(high.min(entry.possible.1));
    if !(low.is_finite() && high.is_finite()) || low >= high {
        return Err(CurveError::Ends(entry.label));
    }
    if !entry.admits(high) || low < entry.possible.0 {
        return Err(CurveError::Ends(entry.label));
    }
    match ask.scale {
        Scale::Log if low > 0.0 => Ok((low, high)),
        // The usual range may start at zero: three decades are plenty.
        Scale::Log if ask.from.is_none() && high > 0.0 => Ok((high / 1000.0, high)),
        Scale::Log => Err(CurveError::LogFromZero(entry.label)),
        Scale::Linear => Ok((low, high)),
    }
}
