//! Numbers of its own for each group, from a seed: the same seed gives the same numbers again.

use super::Subject;
use crate::lesson::Lesson;
use crate::quantity::{AnyId, Dimension, Entry, Units, catalogue, field_text, parse};
use crate::rules::{Origin, Value};
use crate::study::Outcome;

/// The most copies of one handout.
pub const MOST: usize = 60;
/// How many numbers differ from group to group: more would make no better exercise.
const VARIED: usize = 4;
/// How far a number may be from the build's, as factors.
const FROM: f64 = 0.8;
const TO: f64 = 1.25;

/// How many groups there are, and what their numbers are drawn from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Copies {
    count: usize,
    /// Where the numbers start from.
    pub seed: u64,
}

/// More copies than a handout has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[error("A handout has 1 to {MOST} copies, each with numbers of its own; {0} is not that.")]
pub struct TooMany(usize);

impl Copies {
    /// So many groups.
    ///
    /// # Errors
    /// None at all, or more than [`MOST`].
    pub fn new(count: usize, seed: u64) -> Result<Self, TooMany> {
        if (1..=MOST).contains(&count) { Ok(Self { count, seed }) } else { Err(TooMany(count)) }
    }

    /// The build of each group, with the numbers that are its own, worked out one by one.
    pub(super) fn groups(
        self,
        lesson: &Lesson,
        subject: &Subject,
        units: &Units,
    ) -> impl ExactSizeIterator<Item = Group> {
        let varied: Vec<AnyId> = lesson
            .front
            .uses
            .iter()
            .copied()
            .filter(|id| can_vary(*id, subject))
            .take(VARIED)
            .collect();
        (0..self.count).map(move |place| self.group(place, &varied, subject, units))
    }

    fn group(self, place: usize, varied: &[AnyId], subject: &Subject, units: &Units) -> Group {
        let mut dice = Dice::new(self.seed, place as u64);
        let mut own = subject.clone();
        let mut givens = own.tally.givens.clone();
        let mut numbers = Vec::new();
        for id in varied {
            let factor = FROM + (TO - FROM) * dice.share();
            let Some(entry) = catalogue::find(id.name()) else { continue };
            let Some(si) = subject.si(*id).and_then(|si| rounded(entry, si * factor, units)) else {
                continue;
            };
            givens.set(*id, si);
            numbers.push((*id, si));
        }
        own.outcome = Outcome::of(givens.clone(), &own.tally.spreads, 0);
        own.tally.givens = givens;
        own.name = format!("Group {}", place + 1);
        Group { number: place + 1, subject: own, numbers }
    }
}

/// One group's build.
pub(super) struct Group {
    pub(super) number: usize,
    pub(super) subject: Subject,
    /// The numbers that are its own, in SI units.
    pub(super) numbers: Vec<(AnyId, f64)>,
}

/// Counts, and numbers that are zero or not stated, stay as they are.
fn can_vary(id: AnyId, subject: &Subject) -> bool {
    let entry = catalogue::find(id.name());
    let counted = entry.is_none_or(|entry| entry.dimension == Dimension::Ratio);
    let stated = matches!(
        subject.outcome.values.of(id),
        Value::Known(known) if known.origin == Origin::Given && known.si != 0.0
    );
    !counted && stated
}

/// A number as a person would write it on a board: two figures, in the unit it is shown in.
fn rounded(entry: &Entry, si: f64, units: &Units) -> Option<f64> {
    let unit = units.unit_for(entry, si);
    let shown = unit.from_si(si);
    let step = 10f64.powf(shown.abs().log10().floor() - 1.0);
    let rounded = unit.to_si((shown / step).round() * step);
    // Through the reader's own eyes, so that the sheet and the sum have the same number.
    let read = parse(&field_text(entry, rounded, units), entry).ok()?.si;
    (entry.admits(read) && read.is_finite()).then_some(read)
}

/// Numbers that look thrown but come again: `SplitMix64` (Steele, Lea and Flood, "Fast splittable
/// pseudorandom number generators", OOPSLA 2014). It is written here because a crate may change what
/// it gives, and a handout must be made again years later.
struct Dice(u64);

impl Dice {
    fn new(seed: u64, place: u64) -> Self {
        let mut dice = Self(seed);
        let start = dice.throw();
        Self(start ^ place.wrapping_mul(0x9e37_79b9_7f4a_7c15))
    }

    fn throw(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// From zero up to one.
    fn share(&mut self) -> f64 {
        (self.throw() >> 11) as f64 / (1u64 << 53) as f64
    }
}

#[cfg(test)]
mod tests {
    use super::Dice;

    /// The first outputs for seed 1234567, as published with the reference code of the method
    /// (from memory).
    #[test]
    fn the_dice_fall_as_published() {
        let mut dice = Dice(1_234_567);
        let thrown = [(); 5].map(|()| dice.throw());
        assert_eq!(
            thrown,
            [
                6_457_827_717_110_365_317,
                3_203_168_211_198_807_973,
                9_817_491_932_198_370_423,
                4_593_380_528_125_082_431,
                16_408_922_859_458_223_821
            ]
        );
    }
}
