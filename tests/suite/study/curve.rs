//! Curves.

use std::collections::BTreeMap;

use heftwise::quantity::catalogue::{
    ground::*, impact::*, machine::*, pressure::*, running_gear::*, traction::SINKAGE,
};
use heftwise::quantity::{Units, catalogue};
use heftwise::rules::Givens;
use heftwise::sheet::{Family, Sheet, demo};
use heftwise::study::curve::{Ask, CurveError, Footing, Numbers, Scale, together};
use heftwise::study::{Curve, Outcome};
use proptest::prelude::*;

use super::sandpiper;

fn summary(curve: &Curve) -> String {
    curve.summary(&Units::default())
}

#[test]
fn pressure_against_width_is_the_hyperbola() {
    let ask = Ask { from: Some(0.04), to: Some(0.16), ..Ask::new(GROUND_PRESSURE, TRACK_WIDTH) };
    let curve = Curve::of(&ask, &sandpiper()).unwrap();
    assert!(curve.samples.len() >= 150);
    for (x, y) in &curve.samples {
        let by_hand = 6.4 * 9.80665 / (2.0 * x * 0.42);
        approx::assert_relative_eq!(y.unwrap(), by_hand, max_relative = 1e-12);
    }
    let (x, y) = curve.point.unwrap();
    assert_eq!(x, 0.09);
    approx::assert_relative_eq!(y, 830.2, max_relative = 1e-4);
    assert_eq!(curve.gaps, []);
    assert_eq!(summary(&curve), "Halving the track width doubles the ground pressure (mean).");
}

#[test]
fn a_curve_hangs_on_nothing_but_its_footing() {
    let tally = Sheet::read(demo::find("sandpiper").unwrap().text).unwrap().tally();
    let ask = Ask { limits: vec![SINKAGE.any()], ..Ask::new(LOW_END_PRESSURE, BALANCE_OFFSET) };
    let of = |givens: &Givens, spreads: &BTreeMap<_, f64>| {
        let numbers = Numbers { givens, spreads };
        (Footing::of(&ask, numbers), Curve::with_spreads(&ask, numbers).unwrap())
    };
    let (footing, curve) = of(&tally.givens, &tally.spreads);
    let (mut stands, mut moves) = (0, 0);
    for entry in catalogue::all() {
        let mut givens = tally.givens.clone();
        if let Some((si, origin)) = givens.get(entry.id) {
            givens.put(entry.id, 1.01 * si, origin);
        }
        let mut spreads = tally.spreads.clone();
        spreads.entry(entry.id).and_modify(|spread| *spread *= 2.0);
        if (&givens, &spreads) == (&tally.givens, &tally.spreads) {
            continue;
        }
        let (changed, drawn) = of(&givens, &spreads);
        if changed == footing {
            stands += 1;
            assert_eq!(drawn, curve, "{} bears on it", entry.id);
        } else {
            moves += 1;
        }
    }
    assert!(stands > 10 && moves > 3, "{stands} leave it, {moves} move it");
}

#[test]
fn the_partner_of_a_pair_gives_way() {
    let mut givens = sandpiper();
    givens.set(DROP_HEIGHT, 0.1);
    let curve = Curve::of(&Ask::new(KINETIC_ENERGY, IMPACT_SPEED), &givens).unwrap();
    for (x, y) in &curve.samples {
        approx::assert_relative_eq!(y.unwrap(), 0.5 * 6.4 * x * x, max_relative = 1e-12);
    }
    assert!(curve.point.is_some(), "the build is on its own curve");
    let says = "Doubling the speed at touch makes four times the kinetic energy.";
    assert_eq!(summary(&curve), says);
    let curve = Curve::of(&Ask::new(IMPACT_SPEED, DROP_HEIGHT), &givens).unwrap();
    assert_eq!(summary(&curve), "Four times the drop height makes twice the speed at touch.");
}

#[test]
fn where_it_tips_over_the_curve_breaks_off() {
    let ask = Ask { from: Some(-0.3), to: Some(0.3), ..Ask::new(LOW_END_PRESSURE, BALANCE_OFFSET) };
    let curve = Curve::of(&ask, &sandpiper()).unwrap();
    assert_eq!(curve.gaps.len(), 2);
    assert!(curve.gaps[0].why.contains("tips over"), "{}", curve.gaps[0].why);
    // It tips where the load leaves the contact, at half its length.
    approx::assert_relative_eq!(curve.gaps[0].to, -0.21, max_relative = 1e-4);
    approx::assert_relative_eq!(curve.gaps[1].from, 0.21, max_relative = 1e-4);
    assert!(summary(&curve).contains("lowest of 0.830 kPa"), "{}", summary(&curve));
}

#[test]
fn lines_to_compare_with() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 2.0);
    let limits = vec![HOLDING_PRESSURE.any(), LOW_END_PRESSURE.any()];
    let ask = Ask { limits, ..Ask::new(GROUND_PRESSURE, MASS) };
    let curve = Curve::of(&ask, &givens).unwrap();
    approx::assert_relative_eq!(
        curve.limits[0].constant().unwrap(),
        2.0 * 980.665,
        max_relative = 1e-12
    );
    assert_eq!(curve.limits[1].constant(), None);
}

#[test]
fn counts_are_whole() {
    let curve = Curve::of(&Ask::new(GROUND_PRESSURE, TRACK_COUNT), &sandpiper()).unwrap();
    let places: Vec<f64> = curve.samples.iter().map(|(x, _)| *x).collect();
    assert_eq!(places, [0.0, 1.0, 2.0, 3.0, 4.0]);
    assert_eq!(curve.samples[0].1, None, "no tracks, no contact");
}

#[test]
fn what_is_lacking_is_said() {
    let mut givens = sandpiper();
    givens.clear(MASS.any());
    let curve = Curve::of(&Ask::new(GROUND_PRESSURE, TRACK_WIDTH), &givens).unwrap();
    assert_eq!(curve.point, None);
    assert_eq!(
        summary(&curve),
        "There is no ground pressure (mean) anywhere on this curve. Say the mass."
    );
}

#[test]
fn impossible_axes_are_refused() {
    let of = |from, to, scale| {
        let ask = Ask { from, to, scale, ..Ask::new(GROUND_PRESSURE, MASS) };
        Curve::of(&ask, &sandpiper()).map(|_| ())
    };
    assert_eq!(of(Some(2.0), Some(1.0), Scale::Linear), Err(CurveError::Ends("mass")));
    assert_eq!(of(Some(f64::NAN), None, Scale::Linear), Err(CurveError::Ends("mass")));
    assert_eq!(of(Some(-1.0), None, Scale::Linear), Err(CurveError::Ends("mass")));
    assert_eq!(of(Some(0.0), None, Scale::Log), Err(CurveError::LogFromZero("mass")));
    assert_eq!(of(None, None, Scale::Log), Ok(()));
}

#[test]
fn what_does_not_matter_makes_no_difference() {
    let curve = Curve::of(&Ask::new(WEIGHT, TRACK_WIDTH), &sandpiper()).unwrap();
    assert_eq!(summary(&curve), "The track width makes no difference to the weight.");
}

#[test]
fn a_curve_without_a_simple_law_is_told_by_its_ends() {
    let curve = Curve::of(&Ask::new(SLOPE_FORCE, SLOPE), &sandpiper()).unwrap();
    assert_eq!(
        summary(&curve),
        "As the slope goes from 0° to 40°, the force along the slope rises from 0 N to 40.3 N."
    );
}

/// The law of propagation of uncertainty for a product of powers: relative half-widths add as
/// squares (JCGM 100:2008, 5.1.6). p = m g / (2 w L), so the half-width of p is
/// p √((0.2/6.4)² + (10/420)²) at every width.
#[test]
fn the_band_is_the_gum_sum_at_every_place() {
    let spreads = BTreeMap::from([(MASS.any(), 0.2), (CONTACT_LENGTH.any(), 0.01)]);
    let givens = sandpiper();
    let ask = Ask { from: Some(0.04), to: Some(0.16), ..Ask::new(GROUND_PRESSURE, TRACK_WIDTH) };
    let numbers = Numbers { givens: &givens, spreads: &spreads };
    let curve = Curve::with_spreads(&ask, numbers).unwrap();
    let part = ((0.2_f64 / 6.4).powi(2) + (0.01_f64 / 0.42).powi(2)).sqrt();
    assert!(curve.band.len() >= 40);
    for (x, ends) in &curve.band {
        let (low, high) = ends.unwrap();
        let by_hand = 6.4 * 9.80665 / (2.0 * x * 0.42);
        approx::assert_relative_eq!((high - low) / 2.0, by_hand * part, max_relative = 2e-3);
    }
    // At the build it is the range that stands beside the number.
    let range = Outcome::of(givens.clone(), &spreads, 0).range(GROUND_PRESSURE).unwrap().clone();
    let here = curve.band.iter().find(|(x, _)| *x == 0.09).unwrap().1.unwrap();
    approx::assert_relative_eq!(here.0, range.low, max_relative = 1e-9);
    approx::assert_relative_eq!(here.1, range.high, max_relative = 1e-9);
    let says = "Halving the track width doubles the ground pressure (mean); at 90 mm it is 798 to \
                863 Pa by the spread of the other numbers.";
    assert_eq!(summary(&curve), says);
}

#[test]
fn the_number_along_the_foot_is_exact_and_what_does_not_bear_makes_no_band() {
    let spreads = BTreeMap::from([(TRACK_WIDTH.any(), 0.005), (BLOCK_MASS.any(), 0.1)]);
    let givens = sandpiper();
    let ask = Ask::new(GROUND_PRESSURE, TRACK_WIDTH);
    let curve = Curve::with_spreads(&ask, Numbers { givens: &givens, spreads: &spreads }).unwrap();
    assert_eq!(curve.band, []);
}

/// Each member is the build with that number: the same as a curve of such a build.
#[test]
fn a_family_over_a_quantity_is_the_builds_of_other_mass() {
    let family = Family::read("mass", &["4 kg", "8 kg"], TRACK_WIDTH.any()).unwrap();
    let ask = Ask {
        from: Some(0.04),
        to: Some(0.16),
        family: Some(family),
        ..Ask::new(GROUND_PRESSURE, TRACK_WIDTH)
    };
    let curve = Curve::of(&ask, &sandpiper()).unwrap();
    assert_eq!(curve.relatives.len(), 2);
    for (relative, mass) in curve.relatives.iter().zip([4.0, 8.0]) {
        for (x, y) in &relative.samples {
            let by_hand = mass * 9.80665 / (2.0 * x * 0.42);
            approx::assert_relative_eq!(y.unwrap(), by_hand, max_relative = 1e-12);
        }
    }
    let says = "Halving the track width doubles the ground pressure (mean); at 90 mm the mass takes \
                it from 519 Pa (4 kg) to 1040 Pa (8 kg).";
    assert_eq!(summary(&curve), says);
}

#[test]
fn a_family_of_grounds_takes_rows_of_every_table_about_ground() {
    let rows = ["mudflat", "dry-sand-land-locomotion-lab", "new-snow"];
    let family = Family::read("ground", &rows, TRACK_WIDTH.any()).unwrap();
    let names: Vec<String> =
        family.members.iter().map(|member| family.name(member, &Units::default())).collect();
    assert_eq!(names, ["Tern Point mudflat", "dry sand", "new snow"]);
    let twice = ["sandy-loam-hanamoto", "sandy-loam-land-locomotion-lab"];
    let family = Family::read("terrain", &twice, TRACK_WIDTH.any()).unwrap();
    let names: Vec<&str> = family.members.iter().filter_map(|m| m.name.as_deref()).collect();
    assert_eq!(names, ["sandy loam 1", "sandy loam 2"], "told apart");
}

/// The mean is 830 Pa, and the low end of a load 200 mm off the middle presses far harder.
#[test]
fn one_sentence_says_a_quantity_in_one_unit() {
    let ask = Ask { from: Some(-0.2), to: Some(0.2), ..Ask::new(LOW_END_PRESSURE, BALANCE_OFFSET) };
    let says = summary(&Curve::of(&ask, &sandpiper()).unwrap());
    assert!(says.contains("kPa") && !says.contains(" Pa"), "{says}");
}

#[test]
fn a_far_companion_leaves_the_readers_range() {
    let givens = sandpiper();
    let (mut near, mut far) = (sandpiper(), sandpiper());
    near.set(MASS, 14.9);
    far.set(MASS, 4000.0);
    let ask = Ask { from: Some(2.0), ..Ask::new(GROUND_PRESSURE, MASS) };
    let numbers = Numbers { givens: &givens, spreads: &BTreeMap::new() };
    let (alone, _) = together(&ask, numbers, &[]).unwrap();
    let (own, others) = together(&ask, numbers, &[&near, &far]).unwrap();
    assert_eq!((own.from, own.to), (alone.from, alone.to));
    let companion = others[1].as_ref().unwrap();
    assert_eq!((companion.from, companion.to), (own.from, own.to));
    assert_eq!(companion.point.map(|(x, _)| x), Some(4000.0));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Whatever is asked of whatever build: x strictly increasing, nothing but finite numbers,
    /// and every number that is not there explained.
    #[test]
    fn curves_are_sound(
        find in 0..heftwise::quantity::catalogue::all().len(),
        against in 0..heftwise::quantity::catalogue::all().len(),
        numbers in proptest::collection::vec((0..70usize, -10.0..100.0f64), 0..20),
        log in any::<bool>(),
    ) {
        let all = heftwise::quantity::catalogue::all();
        let mut givens: Givens = sandpiper();
        for (place, number) in numbers {
            if let Some(entry) = all.get(place).filter(|entry| entry.is_given()) {
                givens.set(entry.id, number);
            }
        }
        let scale = if log { Scale::Log } else { Scale::Linear };
        let ask = Ask { scale, ..Ask::new(all[find].id, all[against].id) };
        if let Ok(curve) = Curve::of(&ask, &givens) {
            prop_assert!(curve.samples.windows(2).all(|pair| pair[0].0 < pair[1].0));
            prop_assert!(curve.samples.iter().all(|(x, y)| x.is_finite() && y.is_none_or(f64::is_finite)));
            let explained = |x: f64| curve.gaps.iter().any(|gap| gap.from <= x && x <= gap.to);
            prop_assert!(curve.samples.iter().all(|(x, y)| y.is_some() || explained(*x)));
            prop_assert!(curve.gaps.iter().all(|gap| !gap.why.is_empty()));
            prop_assert!(!summary(&curve).contains("NaN"));
        }
    }
}
