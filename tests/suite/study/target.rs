//! Targets, against closed forms.

use heftwise::quantity::Units;
use heftwise::quantity::catalogue::{
    ground::*, impact::*, machine::*, pressure::*, running_gear::*,
};
use heftwise::quantity::{AnyId, catalogue};
use heftwise::rules::{Givens, catalogue::partner, evaluate};
use heftwise::study::target::{Bar, Target, Wish};
use proptest::prelude::*;

use super::sandpiper;

fn wish(make: impl Into<AnyId>, be: f64, by: impl Into<AnyId>, from: f64, to: f64) -> Wish {
    Wish { make: make.into(), be, by: by.into(), from: Some(from), to: Some(to) }
}

fn of(wish: Wish, givens: &Givens) -> (Target, String) {
    let target = Target::of(&wish, givens).unwrap();
    let says = target.sentence(&Units::default());
    (target, says)
}

#[test]
fn one_answer_is_the_formula_turned_round() {
    let (target, says) = of(wish(GROUND_PRESSURE, 600.0, TRACK_WIDTH, 0.04, 0.16), &sandpiper());
    // p = m g / (n b L), so b = m g / (n L p).
    let by_hand = 6.4 * 9.80665 / (2.0 * 0.42 * 600.0);
    assert_eq!(target.answers.len(), 1);
    approx::assert_relative_eq!(target.answers[0], by_hand, max_relative = 1e-9);
    assert_eq!(says, "At 125 mm track width the ground pressure (mean) is 600 Pa.");
    assert_eq!(target.stands, Some(0.09));
}

#[test]
fn two_answers_are_said_to_be_two() {
    let (target, says) =
        of(wish(LOW_END_PRESSURE, 1000.0, BALANCE_OFFSET, -0.07, 0.07), &sandpiper());
    // p (1 + 6 |e| / L) = 1000 Pa.
    let mean = 6.4 * 9.80665 / (2.0 * 0.09 * 0.42);
    let by_hand = (1000.0 / mean - 1.0) * 0.42 / 6.0;
    assert_eq!(target.answers.len(), 2, "{:?}", target.answers);
    approx::assert_relative_eq!(target.answers[0], -by_hand, max_relative = 1e-8);
    approx::assert_relative_eq!(target.answers[1], by_hand, max_relative = 1e-8);
    assert!(says.starts_with("Two answers: at −14.3 mm and at 14.3 mm"), "{says}");
}

#[test]
fn a_touch_is_one_answer() {
    // In the middle the low end presses with the mean, and nowhere less.
    let mean = evaluate(&sandpiper()).si(GROUND_PRESSURE).unwrap();
    let (target, _) = of(wish(LOW_END_PRESSURE, mean, BALANCE_OFFSET, -0.071, 0.064), &sandpiper());
    assert_eq!(target.answers.len(), 1, "{:?}", target.answers);
    assert!(target.answers[0].abs() < 1e-9, "{:?}", target.answers);
}

#[test]
fn without_an_answer_the_nearest_and_what_bars_the_way() {
    let (target, says) = of(wish(GROUND_PRESSURE, 100.0, TRACK_WIDTH, 0.04, 0.16), &sandpiper());
    let nearest = target.nearest.unwrap();
    assert_eq!((target.answers.len(), nearest.at, nearest.bar), (0, 0.16, Bar::End));
    assert_eq!(
        says,
        "No track width from 40.0 mm to 160 mm makes the ground pressure (mean) 100 Pa. \
         The nearest is 467 Pa, at 160 mm: the range ends there."
    );

    let (target, says) =
        of(wish(LOW_END_PRESSURE, 500.0, BALANCE_OFFSET, -0.071, 0.064), &sandpiper());
    let nearest = target.nearest.unwrap();
    assert_eq!(nearest.bar, Bar::Turns);
    approx::assert_relative_eq!(nearest.reached, 830.2, max_relative = 1e-4);
    assert!(says.ends_with("there it turns round."), "{says}");

    // Past half the contact it tips over; just before that the low end carries without bound.
    let (target, says) = of(wish(LIFTED_LENGTH, 0.6, BALANCE_OFFSET, 0.0, 0.3), &sandpiper());
    let nearest = target.nearest.unwrap();
    assert!(matches!(&nearest.bar, Bar::Breaks(why) if why.contains("tips over")), "{nearest:?}");
    approx::assert_relative_eq!(nearest.at, 0.21, max_relative = 1e-4);
    assert!(says.contains("beyond it, "), "{says}");

    let (target, says) = of(wish(WEIGHT, 10.0, TRACK_WIDTH, 0.04, 0.16), &sandpiper());
    assert_eq!(target.nearest.unwrap().bar, Bar::NoEffect);
    assert!(says.contains("makes no difference"), "{says}");

    let (target, says) = of(wish(GROUND_PRESSURE, 700.0, TRACK_COUNT, 0.0, 4.0), &sandpiper());
    let nearest = target.nearest.unwrap();
    assert_eq!((nearest.at, nearest.bar), (2.0, Bar::Whole));
    assert!(says.contains("whole numbers"), "{says}");
}

#[test]
fn counts_are_answered_in_whole_numbers() {
    let two = evaluate(&sandpiper()).si(GROUND_PRESSURE).unwrap();
    let (target, _) = of(wish(GROUND_PRESSURE, two / 2.0, TRACK_COUNT, 0.0, 4.0), &sandpiper());
    assert_eq!(target.answers, [4.0]);
}

#[test]
fn a_whole_stretch_of_answers_is_answered_at_the_build() {
    let mut givens = sandpiper();
    givens.set(BALANCE_OFFSET, 0.03);
    // Nothing lifts while the load is within a sixth of the contact.
    let (target, _) = of(wish(LIFTED_LENGTH, 0.0, BALANCE_OFFSET, -0.06, 0.06), &givens);
    assert_eq!(target.answers, [0.03]);
}

#[test]
fn what_is_lacking_is_said() {
    let mut givens = sandpiper();
    givens.clear(MASS.any());
    let (target, says) = of(wish(GROUND_PRESSURE, 600.0, TRACK_WIDTH, 0.04, 0.16), &givens);
    assert_eq!((target.answers.len(), target.nearest), (0, None));
    assert_eq!(says, "There is no ground pressure (mean) for any track width here. Say the mass.");
    assert!(Target::of(&wish(WEIGHT, 1.0, MASS, 3.0, 2.0), &givens).is_err());
}

#[test]
fn the_partner_of_a_pair_gives_way() {
    let mut givens = sandpiper();
    givens.set(DROP_HEIGHT, 0.1);
    let (target, _) = of(wish(KINETIC_ENERGY, 20.0, IMPACT_SPEED, 0.1, 10.0), &givens);
    approx::assert_relative_eq!(target.answers[0], (40.0f64 / 6.4).sqrt(), max_relative = 1e-9);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Whatever is wished of whatever build, an answer put into the build makes the wish true, and
    /// a wish taken from the range is found.
    #[test]
    fn an_answer_satisfies_the_wish(
        make in 0..catalogue::all().len(),
        by in 0..catalogue::all().len(),
        part in 0.05..0.95f64,
        offset in -0.05..0.05f64,
        block in 0.5..20.0f64,
    ) {
        let (make, by) = (&catalogue::all()[make], &catalogue::all()[by]);
        prop_assume!(by.is_given() && !make.is_given() && by.usual.0 < by.usual.1);
        let mut givens = sandpiper();
        givens.set(BALANCE_OFFSET, offset);
        givens.set(BLOCK_MASS, block);
        givens.set(DROP_HEIGHT, 0.35);
        givens.set(STOP_DISTANCE, 0.025);
        let put = |x: f64| {
            let mut givens = givens.clone();
            if let Some(pair) = partner(by.id) {
                givens.clear(if pair.one == by.id { pair.other } else { pair.one });
            }
            givens.set(by.id, x);
            evaluate(&givens).si(make.id)
        };
        let (low, high) = by.usual;
        let at = low + (high - low) * part;
        let at = if by.whole { at.round() } else { at };
        let Some(be) = put(at) else { return Ok(()) };
        let wish = Wish { make: make.id, be, by: by.id, from: None, to: None };
        let target = Target::of(&wish, &givens).unwrap();
        prop_assert!(!target.answers.is_empty(), "{} of {} at {at}", make.id, by.id);
        for x in &target.answers {
            let y = put(*x).unwrap();
            prop_assert!((y - be).abs() <= 1e-5 * be.abs().max(1e-12), "{} is {y} at {x}, not {be}", make.id);
        }
        prop_assert!(target.answers.windows(2).all(|pair| pair[0] < pair[1]));
        prop_assert!(!target.sentence(&Units::default()).contains("NaN"));
    }
}
