//! Target: which value of a given number makes a found number what the reader wants it to be.
//!
//! The answer is sampled as a curve is, so that no wiggle wider than a sample is missed; each change
//! of side is closed in on with Brent's method, each near touch by cutting the stretch in thirds.

mod words;

use roots::{SimpleConvergency, find_root_brent};

use super::changed::{Changed, number};
use super::curve::{Ask, Curve, CurveError, Sample};
use crate::quantity::{AnyId, catalogue};
use crate::rules::Givens;

/// How near to the wish counts as reached, as a part of its size.
const NEAR: f64 = 1e-9;
/// How often a stretch is cut in thirds: the last is 2 · 10⁻¹¹ of the first.
const CUTS: usize = 60;

/// What is wanted. Numbers in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wish {
    /// The number that should become something else.
    pub make: AnyId,
    /// What it should be.
    pub be: f64,
    /// The number to change for it.
    pub by: AnyId,
    /// Where to start looking; none: the usual range, widened to hold the build.
    pub from: Option<f64>,
    /// Where to stop looking.
    pub to: Option<f64>,
}

/// What keeps the wish from being reached.
#[derive(Debug, Clone, PartialEq)]
pub enum Bar {
    /// The number to change makes no difference.
    NoEffect,
    /// The range looked at ends there.
    End,
    /// The number wanted turns round there.
    Turns,
    /// Only whole numbers make sense, and none of them hits it.
    Whole,
    /// Beyond, there is no number, for this reason.
    Breaks(String),
}

/// As near as it gets. Numbers in SI units.
#[derive(Debug, Clone, PartialEq)]
pub struct Nearest {
    /// Where.
    pub at: f64,
    /// What is reached there.
    pub reached: f64,
    /// What keeps it from going further.
    pub bar: Bar,
}

/// What gets a number where it is wanted. Numbers in SI units.
#[derive(Debug, Clone, PartialEq)]
pub struct Target {
    /// What was wanted.
    pub wish: Wish,
    /// Where the search started.
    pub from: f64,
    /// Where it stopped.
    pub to: f64,
    /// The number to change, as it is.
    pub stands: Option<f64>,
    /// The number wanted, as it is.
    pub now: Option<f64>,
    /// Every value that reaches the wish, smallest first. Where a whole stretch does, its one
    /// nearest to the build.
    pub answers: Vec<f64>,
    /// Without an answer, as near as it gets; none when there is no number anywhere.
    pub nearest: Option<Nearest>,
    /// Why there is no number, where there is none.
    pub gaps: Vec<String>,
}

impl Target {
    /// Looks for every answer in the range.
    ///
    /// # Errors
    /// An id is unknown, or the ends make no range.
    pub fn of(wish: &Wish, givens: &Givens) -> Result<Self, CurveError> {
        let ask = Ask { from: wish.from, to: wish.to, ..Ask::new(wish.make, wish.by) };
        let curve = Curve::of(&ask, givens)?;
        let whole = catalogue::find(wish.by.name()).is_some_and(|entry| entry.whole);
        let values = crate::rules::evaluate(givens);
        let stands = values.si(wish.by);
        let search = Search::new(wish, givens, &curve, whole);
        let answers = search.answers(&curve.samples, stands);
        let nearest = if answers.is_empty() { search.nearest(&curve) } else { None };
        let mut gaps: Vec<String> = curve.gaps.into_iter().map(|gap| gap.why).collect();
        gaps.dedup();
        Ok(Self {
            wish: *wish,
            from: curve.from,
            to: curve.to,
            stands,
            now: values.si(wish.make),
            answers,
            nearest,
            gaps,
        })
    }
}

struct Search<'a> {
    wish: &'a Wish,
    build: Changed,
    whole: bool,
    /// The size that differences from the wish are measured against.
    size: f64,
}

/// A place and how far from the wish it is, as a part of its size.
type Miss = (f64, f64);

impl<'a> Search<'a> {
    fn new(wish: &'a Wish, givens: &Givens, curve: &Curve, whole: bool) -> Self {
        let tallest =
            curve.samples.iter().filter_map(|(_, y)| *y).fold(0.0_f64, |most, y| most.max(y.abs()));
        let size = [wish.be.abs(), tallest].into_iter().find(|size| *size > 0.0).unwrap_or(1.0);
        Self { wish, build: Changed::new(wish.by, givens, &[wish.make]), whole, size }
    }

    /// How far from the wish it is at `x`; NaN where there is no number.
    fn miss(&self, x: f64) -> f64 {
        self.build
            .at(x, |values| number(values.of(self.wish.make)))
            .map_or(f64::NAN, |y| (y - self.wish.be) / self.size)
    }

    fn misses(&self, samples: &[Sample]) -> Vec<Option<Miss>> {
        samples.iter().map(|(x, y)| y.map(|y| (*x, (y - self.wish.be) / self.size))).collect()
    }

    fn answers(&self, samples: &[Sample], stands: Option<f64>) -> Vec<f64> {
        let misses = self.misses(samples);
        let hit = |miss: &Option<Miss>| miss.is_some_and(|(_, miss)| miss.abs() <= NEAR);
        let mut answers = Vec::new();
        // Runs of samples that are there already: a point, or a whole stretch.
        for run in
            misses.chunk_by(|a, b| hit(a) == hit(b)).filter(|run| run.first().is_some_and(hit))
        {
            if let (Some((first, _)), Some((last, _))) =
                (run.first().copied().flatten(), run.last().copied().flatten())
            {
                answers.push(stands.map_or(first, |x| x.clamp(first, last)));
            }
        }
        if self.whole {
            return answers;
        }
        for pair in misses.windows(2) {
            if let [Some(a), Some(b)] = pair
                && a.1.abs() > NEAR
                && b.1.abs() > NEAR
                && (a.1 < 0.0) != (b.1 < 0.0)
            {
                answers.extend(self.close_in(*a, *b));
            }
        }
        for three in misses.windows(3) {
            if let [Some(a), Some(b), Some(c)] = three
                && dips(*a, *b, *c)
                && b.1.abs() > NEAR
            {
                let x = self.lowest(a.0, c.0);
                if self.miss(x).abs() <= NEAR {
                    answers.push(x);
                }
            }
        }
        answers.sort_by(f64::total_cmp);
        let apart = 1e-6 * samples.last().zip(samples.first()).map_or(0.0, |(b, a)| b.0 - a.0);
        answers.dedup_by(|b, a| (*b - *a).abs() <= apart);
        answers
    }

    /// Where the sign really changes between two places; none where it jumps.
    fn close_in(&self, a: Miss, b: Miss) -> Option<f64> {
        let width = b.0 - a.0;
        let mut close = SimpleConvergency { eps: 1e-14, max_iter: 200 };
        let part = find_root_brent(0.0, 1.0, |t| self.miss(a.0 + width * t), &mut close).ok()?;
        let x = a.0 + width * part;
        // Brent's method ends at a jump as well, and there nothing is near.
        (self.miss(x).abs() <= 1e3 * NEAR).then_some(x)
    }

    /// Where between two places it comes nearest, if it comes nearer from both sides.
    fn lowest(&self, mut a: f64, mut b: f64) -> f64 {
        let miss = |x: f64| {
            let miss = self.miss(x).abs();
            if miss.is_nan() { f64::INFINITY } else { miss }
        };
        for _ in 0..CUTS {
            let (left, right) = (a + (b - a) / 3.0, b - (b - a) / 3.0);
            if miss(left) <= miss(right) { b = right } else { a = left }
        }
        (a + b) / 2.0
    }

    fn nearest(&self, curve: &Curve) -> Option<Nearest> {
        let misses = self.misses(&curve.samples);
        let best = misses
            .iter()
            .enumerate()
            .filter_map(|(place, miss)| Some((place, (*miss)?)))
            .min_by(|a, b| a.1.1.abs().total_cmp(&b.1.1.abs()))?;
        let (place, (x, _)) = best;
        let known: Vec<f64> = misses.iter().flatten().map(|(_, miss)| *miss).collect();
        let flat = known.windows(2).all(|pair| (pair[1] - pair[0]).abs() <= NEAR);
        let beside = |place: Option<usize>| place.and_then(|place| misses.get(place));
        let (left, right) = (beside(place.checked_sub(1)), beside(Some(place + 1)));
        let (at, bar) = match (left, right) {
            _ if flat => (x, Bar::NoEffect),
            _ if self.whole => (x, Bar::Whole),
            (Some(Some(left)), Some(Some(right))) => (self.lowest(left.0, right.0), Bar::Turns),
            (Some(None), _) | (_, Some(None)) => (x, Bar::Breaks(self.why(curve, x))),
            _ => (x, Bar::End),
        };
        let at = if self.miss(at).is_nan() { x } else { at };
        Some(Nearest { at, reached: self.wish.be + self.miss(at) * self.size, bar })
    }

    /// Why there is no number right beside a place.
    fn why(&self, curve: &Curve, x: f64) -> String {
        let away = |gap: &&super::curve::Gap| (gap.from - x).abs().min((gap.to - x).abs());
        curve
            .gaps
            .iter()
            .min_by(|a, b| away(a).total_cmp(&away(b)))
            .map_or_else(String::new, |gap| gap.why.clone())
    }
}

/// Whether the middle of three comes nearer to the wish than both sides, all on one side of it.
fn dips(a: Miss, b: Miss, c: Miss) -> bool {
    let one_side = (a.1 < 0.0) == (b.1 < 0.0) && (b.1 < 0.0) == (c.1 < 0.0);
    one_side && b.1.abs() <= a.1.abs() && b.1.abs() <= c.1.abs()
}
