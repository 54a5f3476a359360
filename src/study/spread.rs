//! How sure a number is: spreads of given numbers carried to every number found.
//!
//! The law of propagation of uncertainty to first order: JCGM 100:2008 (GUM), 5.1.2, with each
//! sensitivity taken as in its note 2, by running the rules again with one given moved by plus and
//! minus its spread. What two rules share is thereby counted once, with its sign.

use std::collections::BTreeMap;

use super::changed::Trial;
use crate::quantity::{AnyId, catalogue};
use crate::rules::{Course, Givens, Origin, Value, Values};

/// Steps at which the rules run again, in spreads: both ends, and halfway to see bends.
pub(super) const STEPS: [f64; 4] = [-1.0, -0.5, 0.5, 1.0];
/// A change smaller than this part of the value is rounding, not an effect.
const ROUNDING: f64 = 1e-12;

/// What one given's spread does to a number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contribution {
    /// The given.
    pub id: AnyId,
    /// Half-width in SI units that it alone would give.
    pub half_width: f64,
    /// Its part of the whole, 0 to 1: its square over the sum of squares.
    pub share: f64,
}

/// Where a number probably lies.
#[derive(Debug, Clone, PartialEq)]
pub struct Range {
    /// Lower end in SI units.
    pub low: f64,
    /// Upper end in SI units.
    pub high: f64,
    /// Half-width in SI units: the root of the sum of squares.
    pub half_width: f64,
    /// What each given adds, the largest first.
    pub contributions: Vec<Contribution>,
    /// Givens that cannot move both ways, or that turn the number round inside their spread:
    /// there the ends are the furthest seen, and the two sides may differ.
    pub one_sided: Vec<AnyId>,
}

/// The range of every number that has one.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ranges {
    known: BTreeMap<AnyId, Range>,
    unknown: BTreeMap<AnyId, Vec<AnyId>>,
}

impl Ranges {
    /// The range of a quantity; none if nothing uncertain bears on it or it is not known.
    pub fn of(&self, id: impl Into<AnyId>) -> Option<&Range> {
        self.known.get(&id.into())
    }

    /// The givens whose spread leaves a known number without one: its range is not known.
    pub fn upset_by(&self, id: impl Into<AnyId>) -> &[AnyId] {
        self.unknown.get(&id.into()).map_or(&[], Vec::as_slice)
    }
}

/// What a number is at each of [`STEPS`]: nothing where the given cannot be meant, nothing inside
/// where the number is not known there.
pub(super) type Seen = [Option<Option<f64>>; 4];

/// What one given does to one number.
pub(super) enum Effect {
    None,
    Even(f64),
    OneSided { down: f64, up: f64 },
    Upset,
}

/// The range of every known number from the spreads (half-widths, SI units) of the givens.
///
/// Spreads that are not positive and finite, or of quantities nobody gave, are passed over.
pub fn ranges(givens: &Givens, values: &Values, spreads: &BTreeMap<AnyId, f64>) -> Ranges {
    let mut effects: BTreeMap<AnyId, Vec<(AnyId, Effect)>> = BTreeMap::new();
    let mut trial = Trial::new(givens, values);
    for (&id, &spread) in spreads {
        for (found, effect) in effects_of(id, spread, values, &mut trial) {
            effects.entry(found).or_default().push((id, effect));
        }
    }
    let mut ranges = Ranges::default();
    for (found, effects) in effects {
        let Some(centre) = values.si(found) else { continue };
        match gather(centre, effects.into_iter()) {
            Ok(Some(range)) => {
                ranges.known.insert(found, range);
            }
            Ok(None) => {}
            Err(upset) => {
                ranges.unknown.insert(found, upset);
            }
        }
    }
    ranges
}

/// What a spread of one given does to each number it bears on: the rules run again at each step.
fn effects_of(
    id: AnyId,
    spread: f64,
    values: &Values,
    trial: &mut Trial<'_>,
) -> Vec<(AnyId, Effect)> {
    let (Some(entry), Value::Known(known)) = (catalogue::find(id.name()), values.of(id)) else {
        return Vec::new();
    };
    if known.origin == Origin::Found || !spread.is_finite() || spread <= 0.0 {
        return Vec::new();
    }
    let course = Course::from(&[id]);
    let places = STEPS.map(|step| Some(known.si + step * spread).filter(|si| entry.admits(*si)));
    let steps = trial.of(id, places, &course, |values| course.numbers(values).collect::<Vec<_>>());
    let at = |place: usize| steps.each_ref().map(|step| Some(step.as_ref()?[place]));
    let reached = course.passes().zip(course.numbers(values)).enumerate();
    reached
        .filter_map(|(place, (found, centre))| Some((found, effect(centre?, &at(place)))))
        .collect()
}

/// What a given does to a number that is `centre` with the given as it is.
pub(super) fn effect(centre: f64, at_steps: &Seen) -> Effect {
    let mut seen = [None; 4];
    for (slot, step) in seen.iter_mut().zip(at_steps) {
        *slot = match step {
            Some(Some(si)) => Some(si - centre),
            Some(None) => return Effect::Upset,
            None => None,
        };
    }
    let (down, up) = seen
        .iter()
        .flatten()
        .fold((0.0_f64, 0.0_f64), |(down, up), &change| (down.max(-change), up.max(change)));
    if down.max(up) <= ROUNDING * centre.abs() {
        return Effect::None;
    }
    match seen {
        [Some(a), Some(b), Some(c), Some(d)] if steady([a, b, 0.0, c, d]) => {
            Effect::Even((d - a).abs() / 2.0)
        }
        [Some(_), Some(_), Some(_), Some(_)] => Effect::OneSided { down, up },
        // The given cannot be moved one way: what it does the other way stands for both.
        _ => Effect::OneSided { down: down.max(up), up: down.max(up) },
    }
}

/// Whether a run of numbers goes one way only.
fn steady(run: [f64; 5]) -> bool {
    run.windows(2).all(|pair| pair[1] >= pair[0]) || run.windows(2).all(|pair| pair[1] <= pair[0])
}

/// Adds the effects up; `Err` names the givens that leave no number.
pub(super) fn gather(
    centre: f64,
    effects: impl Iterator<Item = (AnyId, Effect)>,
) -> Result<Option<Range>, Vec<AnyId>> {
    let (mut down, mut up, mut squares) = (0.0, 0.0, 0.0);
    let (mut contributions, mut one_sided, mut upset) = (Vec::new(), Vec::new(), Vec::new());
    for (id, effect) in effects {
        let (less, more, half_width) = match effect {
            Effect::None => continue,
            Effect::Upset => {
                upset.push(id);
                continue;
            }
            Effect::Even(half) => (half, half, half),
            Effect::OneSided { down, up } => {
                one_sided.push(id);
                (down, up, down.max(up))
            }
        };
        down += less * less;
        up += more * more;
        squares += half_width * half_width;
        contributions.push(Contribution { id, half_width, share: 0.0 });
    }
    if !upset.is_empty() {
        return Err(upset);
    }
    if contributions.is_empty() {
        return Ok(None);
    }
    for contribution in &mut contributions {
        contribution.share = contribution.half_width.powi(2) / squares;
    }
    contributions.sort_by(|a, b| b.half_width.total_cmp(&a.half_width));
    let (low, high, half_width) = (centre - down.sqrt(), centre + up.sqrt(), squares.sqrt());
    let range = Range { low, high, half_width, contributions, one_sided };
    Ok([low, high, half_width].iter().all(|x| x.is_finite()).then_some(range))
}
