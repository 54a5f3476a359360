//! Where a curve is sampled: evenly, then closer where it bends or breaks off.

use super::{Ask, Gap, LimitLine, Sample, Scale};
use crate::quantity::{AnyId, Entry};
use crate::rules::Givens;
use crate::study::changed::{Changed, number};

/// Even samples before refinement.
const EVEN: usize = 160;
/// Samples at most, refinement included.
const MOST: usize = 640;
/// How often a stretch may be halved where the curve bends.
const BENDS: u32 = 5;
/// How often a stretch may be halved where the curve breaks off.
const BREAKS: u32 = 24;
/// The bend that shows, as a part of the height of the whole curve.
const SHOWS: f64 = 2e-3;

pub(super) struct Sampler<'a> {
    ask: &'a Ask,
    whole: bool,
    build: Changed,
}

/// What was found at one x.
struct At {
    x: f64,
    y: Result<f64, String>,
    limits: Vec<Option<f64>>,
}

pub(super) struct Run {
    pub samples: Vec<Sample>,
    pub limits: Vec<LimitLine>,
    pub gaps: Vec<Gap>,
}

impl<'a> Sampler<'a> {
    pub fn new(ask: &'a Ask, entry: &Entry, givens: &Givens) -> Self {
        let wanted: Vec<AnyId> = ask.limits.iter().copied().chain([ask.find]).collect();
        Self { ask, whole: entry.whole, build: Changed::new(ask.against, givens, &wanted) }
    }

    pub fn run(&self, from: f64, to: f64) -> Run {
        let even: Vec<At> = self.places(from, to).into_iter().map(|x| self.at(x)).collect();
        let found: Vec<At> = if self.whole { even } else { self.refine(even) };
        let limits = self
            .ask
            .limits
            .iter()
            .enumerate()
            .map(|(i, &id)| LimitLine {
                id,
                samples: found
                    .iter()
                    .map(|at| (at.x, at.limits.get(i).copied().flatten()))
                    .collect(),
            })
            .collect();
        let gaps = gaps(&found);
        let samples = found.into_iter().map(|at| (at.x, at.y.ok())).collect();
        Run { samples, limits, gaps }
    }

    /// Even places, by the scale; only whole numbers where only those make sense.
    fn places(&self, from: f64, to: f64) -> Vec<f64> {
        if self.whole {
            let (first, last) = (from.ceil(), to.floor());
            let steps = (last - first).clamp(0.0, MOST as f64) as usize;
            let stride = ((last - first) / steps.max(1) as f64).ceil().max(1.0);
            return (0..=steps)
                .map(|i| first + stride * i as f64)
                .take_while(|x| *x <= last)
                .collect();
        }
        (0..=EVEN)
            .map(|i| match i {
                0 => from,
                EVEN => to,
                _ => self.between(from, to, i as f64 / EVEN as f64),
            })
            .collect()
    }

    fn between(&self, a: f64, b: f64, part: f64) -> f64 {
        match self.ask.scale {
            Scale::Linear => a + (b - a) * part,
            Scale::Log => a * (b / a).powf(part),
        }
    }

    fn at(&self, x: f64) -> At {
        self.build.at(x, |values| At {
            x,
            y: number(values.of(self.ask.find)),
            limits: self.ask.limits.iter().map(|&id| values.si(id)).collect(),
        })
    }

    fn refine(&self, even: Vec<At>) -> Vec<At> {
        let known = even.iter().filter_map(|at| at.y.as_ref().ok());
        let (low, high) = known
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &y| (low.min(y), high.max(y)));
        let shows = SHOWS * (high - low);
        let mut room = MOST - even.len();
        let mut found: Vec<At> = Vec::with_capacity(even.len() * 2);
        for right in even {
            if let Some(left) = found.pop() {
                self.between_two(left, &right, shows, BENDS, &mut room, &mut found);
            }
            found.push(right);
        }
        found
    }

    /// Adds `left` and whatever is needed between it and `right`.
    fn between_two(
        &self,
        left: At,
        right: &At,
        shows: f64,
        depth: u32,
        room: &mut usize,
        found: &mut Vec<At>,
    ) {
        match (&left.y, &right.y) {
            (Ok(a), Ok(b)) if depth > 0 && *room > 0 => {
                let middle = self.at(self.between(left.x, right.x, 0.5));
                let bends = match &middle.y {
                    Ok(y) => (y - (a + b) / 2.0).abs() > shows,
                    Err(_) => true,
                };
                if !bends || middle.x <= left.x || middle.x >= right.x {
                    found.push(left);
                    return;
                }
                *room -= 1;
                self.between_two(left, &middle, shows, depth - 1, room, found);
                self.between_two(middle, right, shows, depth - 1, room, found);
            }
            (Ok(_), Err(_)) | (Err(_), Ok(_)) => self.edge(left, right, found),
            _ => found.push(left),
        }
    }

    /// Adds `left` and the last known and first unknown place between it and `right`.
    fn edge(&self, left: At, right: &At, found: &mut Vec<At>) {
        let known_left = left.y.is_ok();
        let (mut a, mut b): (Option<At>, Option<At>) = (None, None);
        for _ in 0..BREAKS {
            let (low, high) =
                (a.as_ref().map_or(left.x, |at| at.x), b.as_ref().map_or(right.x, |at| at.x));
            let middle = self.at(self.between(low, high, 0.5));
            if middle.x <= low || middle.x >= high {
                break;
            }
            if middle.y.is_ok() == known_left {
                a = Some(middle);
            } else {
                b = Some(middle);
            }
        }
        found.push(left);
        found.extend(a);
        found.extend(b);
    }
}

/// Stretches without a number, one for each run with the same reason.
fn gaps(found: &[At]) -> Vec<Gap> {
    let mut gaps: Vec<Gap> = Vec::new();
    let mut open = false;
    for at in found {
        let Err(why) = &at.y else {
            open = false;
            continue;
        };
        match gaps.last_mut() {
            Some(gap) if open && gap.why == *why => gap.to = at.x,
            _ => gaps.push(Gap { from: at.x, to: at.x, why: why.clone() }),
        }
        open = true;
    }
    gaps
}
