//! How sure the number found is, all along a curve.

use super::{Ask, Numbers, RangeSample, Sample};
use crate::quantity::{AnyId, Entry, catalogue};
use crate::rules::{Course, Givens, Origin, Value, evaluate};
use crate::study::changed::Changed;
use crate::study::spread::{STEPS, effect, gather};

/// About how many places along the curve get a range: it bends less than the curve does.
const PLACES: usize = 48;

/// One number that is not sure, and the way from it to the number found.
struct Doubt {
    id: AnyId,
    entry: &'static Entry,
    spread: f64,
    /// What it is in the build.
    si: f64,
    course: Course,
}

/// The range at some of the samples, and at the build itself; empty when nothing that is not sure
/// bears on the number found. The number along the foot is exact: a place on the axis is that place.
///
/// To first order, as [`crate::study::spread`] has it: JCGM 100:2008 (GUM), 5.1.2.
pub(super) fn band(
    ask: &Ask,
    numbers: Numbers<'_>,
    samples: &[Sample],
    here: Option<f64>,
) -> Vec<RangeSample> {
    let doubts = doubts(ask, numbers);
    if doubts.is_empty() {
        return Vec::new();
    }
    let build = Changed::new(ask.against, numbers.givens, &[ask.find]);
    places(samples, here).into_iter().map(|x| (x, range(ask, &build, &doubts, x))).collect()
}

fn doubts(ask: &Ask, Numbers { givens, spreads }: Numbers<'_>) -> Vec<Doubt> {
    if spreads.is_empty() {
        return Vec::new();
    }
    let values = evaluate(&without_partner(ask.against, givens));
    let doubt = |(&id, &spread): (&AnyId, &f64)| {
        let entry = catalogue::find(id.name())?;
        let Value::Known(known) = values.of(id) else { return None };
        let unsure = spread.is_finite() && spread > 0.0 && id != ask.against;
        if known.origin == Origin::Found || !unsure {
            return None;
        }
        let course = Course::between(&[id], &[ask.find]);
        (!course.is_empty()).then_some(Doubt { id, entry, spread, si: known.si, course })
    };
    spreads.iter().filter_map(doubt).collect()
}

fn without_partner(id: AnyId, givens: &Givens) -> Givens {
    let mut givens = givens.clone();
    if let Some(pair) = crate::rules::catalogue::partner(id) {
        givens.clear(if pair.one == id { pair.other } else { pair.one });
    }
    givens
}

/// Where the range is worked out: evenly among the samples, at every end of a stretch of known
/// numbers, and at the build.
fn places(samples: &[Sample], here: Option<f64>) -> Vec<f64> {
    let stride = samples.len().div_ceil(PLACES).max(1);
    let known = |place: Option<&Sample>| place.is_some_and(|(_, y)| y.is_some());
    let mut places: Vec<f64> = samples
        .iter()
        .enumerate()
        .filter(|(place, _)| {
            let before = known(place.checked_sub(1).and_then(|before| samples.get(before)));
            let after = known(samples.get(place + 1));
            place % stride == 0 || known(samples.get(*place)) != (before && after)
        })
        .map(|(_, (x, _))| *x)
        .chain(here)
        .filter(|x| {
            let ends = samples.first().zip(samples.last());
            ends.is_some_and(|((from, _), (to, _))| (from..=to).contains(&x))
        })
        .collect();
    places.sort_by(f64::total_cmp);
    places.dedup();
    places
}

fn range(ask: &Ask, build: &Changed, doubts: &[Doubt], x: f64) -> Option<(f64, f64)> {
    let centre = build.at(x, |values| values.si(ask.find))?;
    let effects = doubts.iter().map(|doubt| {
        let seen = STEPS.map(|step| {
            let si = doubt.si + step * doubt.spread;
            doubt
                .entry
                .admits(si)
                .then(|| build.also(&doubt.course, (doubt.id, si), |values| values.si(ask.find)))
        });
        (doubt.id, effect(centre, &seen))
    });
    match gather(centre, effects) {
        Ok(Some(range)) => Some((range.low, range.high)),
        // Nothing moves it here: it is as sure as can be.
        Ok(None) => Some((centre, centre)),
        Err(_) => None,
    }
}
