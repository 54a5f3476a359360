//! The walk-round.

use std::collections::BTreeMap;

use heftwise::lesson::{Shipped, Source};
use heftwise::quantity::catalogue::{
    self, balance::*, drive::*, ground::*, impact::*, machine::*, motion::*, pressure::*,
    running_gear::*, structure::*, turning::*,
};
use heftwise::rules::Givens;
use heftwise::study::walk_round::{Finding, LIMITS, Verdict, moves};
use heftwise::study::{Outcome, walk_round};

use super::sandpiper;

fn findings(givens: Givens) -> Vec<Finding> {
    walk_round(&Outcome::of(givens, &BTreeMap::new(), 1))
}

#[test]
fn every_limit_names_what_exists() {
    let lessons = Shipped.lessons().unwrap();
    for limit in LIMITS {
        for id in [limit.margin, limit.demand, limit.capacity] {
            assert!(catalogue::find(id.name()).is_some(), "{id}");
        }
        // A lesson may still be to come, but its id is one of the plan's.
        assert!(lessons.iter().any(|id| id == limit.lesson), "{}", limit.lesson);
    }
    let margins = catalogue::all().iter().filter(|e| e.id.name().ends_with("-margin"));
    for entry in margins {
        assert!(LIMITS.iter().any(|limit| limit.margin == entry.id), "{} is checked", entry.id);
    }
}

#[test]
fn smallest_margin_first_unknown_last() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 0.9);
    givens.set(BALANCE_OFFSET, 0.03);
    let findings = findings(givens);
    let margins: Vec<f64> = findings.iter().filter_map(|f| f.margin).collect();
    assert!(margins.is_sorted() && margins.len() == 3, "{margins:?}");
    assert_eq!(findings[0].limit.margin, LOW_END_MARGIN.any());
    let Verdict::NotKnown(lacks) = &findings.last().unwrap().verdict else { panic!() };
    assert!(!lacks.is_empty());
    assert!(findings.last().unwrap().sentence.starts_with("Say the "));
}

/// The same numbers by hand: 6.4 kg on 0.0756 m² is 830 Pa; 0.5 kg on a 100 mm block is 490 Pa.
#[test]
fn soft_ground_gives() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 0.5);
    let findings = findings(givens);
    let mean = findings.iter().find(|f| f.limit.margin == PRESSURE_MARGIN.any()).unwrap();
    assert_eq!(mean.verdict, Verdict::Gives);
    approx::assert_relative_eq!(mean.margin.unwrap(), 50.0 * 0.0756 / 6.4, max_relative = 1e-12);
    assert!(mean.sentence.contains("0.591 times the ground pressure (mean)"), "{}", mean.sentence);
}

#[test]
fn a_centred_load_holds() {
    let findings = findings(sandpiper());
    let balance = findings.iter().find(|f| f.limit.margin == BALANCE_MARGIN.any()).unwrap();
    assert_eq!(balance.verdict, Verdict::Holds);
    assert_eq!(balance.margin, None);
}

#[test]
fn a_range_across_one_is_doubtful() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 0.9);
    let spreads = BTreeMap::from([(BLOCK_MASS.any(), 0.1)]);
    let findings = walk_round(&Outcome::of(givens.clone(), &spreads, 1));
    let mean = findings.iter().find(|f| f.limit.margin == PRESSURE_MARGIN.any()).unwrap();
    assert_eq!(mean.verdict, Verdict::Doubtful);
    let spreads = BTreeMap::from([(BLOCK_MASS.any(), 0.01)]);
    let findings = walk_round(&Outcome::of(givens, &spreads, 1));
    let mean = findings.iter().find(|f| f.limit.margin == PRESSURE_MARGIN.any()).unwrap();
    assert_eq!(mean.verdict, Verdict::Holds);
}

#[test]
fn tipping_over_stands_at_the_top() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 5.0);
    givens.set(BALANCE_OFFSET, 0.25);
    let findings = findings(givens);
    assert!(matches!(findings[0].verdict, Verdict::Invalid(_)), "{:?}", findings[0]);
}

#[test]
fn an_end_that_may_tip_is_doubtful() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 50.0);
    givens.set(BALANCE_OFFSET, 0.2);
    let spreads = BTreeMap::from([(BALANCE_OFFSET.any(), 0.02)]);
    let findings = walk_round(&Outcome::of(givens, &spreads, 1));
    let end = findings.iter().find(|f| f.limit.margin == LOW_END_MARGIN.any()).unwrap();
    assert_eq!(end.verdict, Verdict::Doubtful);
    assert!(end.sentence.contains("balance point offset"), "{}", end.sentence);
}

#[test]
fn a_stop_is_checked_too() {
    let mut givens = sandpiper();
    givens.set(IMPACT_SPEED, 1.0);
    givens.set(STOP_DISTANCE, 0.01);
    givens.set(FRAME_STRENGTH, 400.0);
    givens.set(SHOCK_LIMIT, 50.0);
    let findings = findings(givens);
    let of = |id| findings.iter().find(|f| f.limit.margin == id).unwrap();
    // 6.4 kg from 1 m/s in 10 mm: 320 N mean, times half pi 503 N peak, against 400 N.
    assert_eq!(of(FRAME_MARGIN.any()).verdict, Verdict::Gives);
    assert_eq!(of(SHOCK_MARGIN.any()).verdict, Verdict::Holds);
}

#[test]
fn tipping_is_checked() {
    let mut givens = sandpiper();
    for (id, si) in [(CG_HEIGHT, 0.1), (GAUGE, 0.3)] {
        givens.set(id, si);
    }
    givens.set(SIDE_SLOPE, 1.0);
    givens.set(SLOPE, 0.3);
    givens.set(GRIP_COEFFICIENT, 0.6);
    let findings = findings(givens);
    let of = |id| findings.iter().find(|f| f.limit.margin == id).unwrap();
    // 0.15 m over 0.1 m is 1.5; the tangent of 1 rad is 1.557.
    assert_eq!(of(SIDE_SLOPE_MARGIN.any()).verdict, Verdict::Gives);
    assert!(of(SIDE_SLOPE_MARGIN.any()).sentence.contains("0.963 times"), "{findings:?}");
    assert_eq!(of(FRONT_LIFT_MARGIN.any()).verdict, Verdict::Holds);
    assert_eq!(of(NOSE_OVER_MARGIN.any()).verdict, Verdict::Holds);
    assert!(matches!(of(TURN_MARGIN.any()).verdict, Verdict::NotKnown(_)));
}

#[test]
fn level_ground_and_a_straight_way_ask_for_nothing() {
    let mut givens = sandpiper();
    for (id, si) in [(CG_HEIGHT, 0.1), (GAUGE, 0.3), (WHEELBASE, 0.4)] {
        givens.set(id, si);
    }
    givens.set(DRIVING_SPEED, 1.0);
    givens.set(STEER_ANGLE, 0.0);
    let findings = findings(givens);
    for id in [SIDE_SLOPE_MARGIN.any(), FRONT_LIFT_MARGIN.any(), TURN_MARGIN.any()] {
        let finding = findings.iter().find(|f| f.limit.margin == id).unwrap();
        assert_eq!(finding.verdict, Verdict::Holds, "{finding:?}");
        assert!(finding.sentence.contains("Nothing is asked"), "{finding:?}");
    }
}

#[test]
fn joints_and_beams_are_checked_too() {
    let mut givens = sandpiper();
    for (id, si) in
        [(BOLT_DIAMETER, 0.010), (BAR_WIDTH, 0.014), (BAR_DEPTH, 0.012), (BEAM_SPAN, 0.055)]
    {
        givens.set(id, si);
    }
    // Two bolts at 10 kN hold 3 kN by friction at 0.15, 2.1 kN at the least.
    givens.set(BOLT_TORQUE, 20.0);
    givens.set(BOLT_COUNT, 2.0);
    givens.set(JOINT_LOAD, 2500.0);
    // A printed arm under 593 N: 97 MPa, against 45 along and 20 across.
    givens.set(BEAM_LOAD, 593.0);
    givens.set(MATERIAL_STRENGTH, 45e6);
    givens.set(STRENGTH_ACROSS, 20e6);
    let findings = findings(givens);
    let of = |id| findings.iter().find(|f| f.limit.margin == id).unwrap();
    assert_eq!(of(SLIP_MARGIN.any()).verdict, Verdict::Gives);
    approx::assert_relative_eq!(of(SLIP_MARGIN.any()).margin.unwrap(), 0.84, max_relative = 1e-9);
    assert_eq!(of(BEAM_MARGIN.any()).verdict, Verdict::Gives);
    let across = of(ACROSS_MARGIN.any());
    assert!(across.sentence.contains("0.206 times"), "{}", across.sentence);
    assert!(matches!(of(SHEAR_MARGIN.any()).verdict, Verdict::NotKnown(_)));
}

/// Downhill the slope pushes: a negative resistance asks nothing of the motors.
#[test]
fn motors_do_not_stall_downhill() {
    let mut givens = sandpiper();
    givens.set(PEAK_PUSH, 100.0);
    givens.set(DRIVING_RESISTANCE, -20.0);
    let findings = findings(givens);
    let push = findings.iter().find(|f| f.limit.margin == PUSH_MARGIN.any()).unwrap();
    assert_eq!((&push.verdict, push.margin), (&Verdict::Holds, None), "{}", push.sentence);
}

/// Wheels share the load in another way, and no motor stalls where an engine drives.
#[test]
fn what_is_about_other_machines_does_not_apply() {
    let mut cart = sandpiper();
    cart.set(TRACK_COUNT, 0.0);
    cart.set(WHEEL_COUNT, 4.0);
    let verdicts = |givens: Givens, id: heftwise::quantity::AnyId| {
        let findings = findings(givens);
        let finding = findings.into_iter().find(|finding| finding.limit.margin == id).unwrap();
        assert!(finding.sentence.starts_with("It does not apply"), "{}", finding.sentence);
        finding.verdict
    };
    for id in [LOW_END_MARGIN.any(), BALANCE_MARGIN.any()] {
        assert_eq!(verdicts(cart.clone(), id), Verdict::DoesNotApply);
    }
    let mut barrow = sandpiper();
    barrow.set(ENGINE_POWER, 3600.0);
    assert_eq!(verdicts(barrow.clone(), PUSH_MARGIN.any()), Verdict::DoesNotApply);
    // With a motor beside the engine the question stands.
    barrow.set(SPEED_CONSTANT, 100.0);
    let findings = findings(barrow);
    let push = findings.iter().find(|f| f.limit.margin == PUSH_MARGIN.any()).unwrap();
    assert!(matches!(push.verdict, Verdict::NotKnown(_)), "{push:?}");
}

/// No end of a range lies where no margin is.
#[test]
fn a_wide_range_stops_at_zero() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 0.9);
    let findings = walk_round(&Outcome::of(givens, &BTreeMap::from([(BLOCK_MASS.any(), 1.2)]), 1));
    let mean = findings.iter().find(|f| f.limit.margin == PRESSURE_MARGIN.any()).unwrap();
    assert_eq!(mean.range.unwrap().0, 0.0);
    assert!(mean.sentence.contains("from 0 to"), "{}", mean.sentence);
}

/// The margin on the ground goes with the area and against the mass: by the definition of pressure a
/// tenth less mass gives 1/0.9 of it, a tenth more width 1.1 of it.
#[test]
fn what_would_change_a_margin_raises_it_most_first() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 0.9);
    let spreads = BTreeMap::from([(MASS.any(), 0.2), (TRACK_WIDTH.any(), 0.001)]);
    let outcome = Outcome::of(givens.clone(), &spreads, 1);
    let told = moves(&LIMITS[0], &outcome);
    assert_eq!(LIMITS[0].margin, PRESSURE_MARGIN.any());
    let lever = |id| told.bought.iter().find(|lever| lever.id == id).expect("it helps");
    let (mass, width) = (lever(MASS.any()), lever(TRACK_WIDTH.any()));
    assert!(mass.to < mass.from && width.to > width.from, "each the way that helps");
    let gain = |lever: &heftwise::study::Lever| lever.after.clone().unwrap() / lever.before;
    assert!((gain(mass) - 1.0 / 0.9).abs() < 1e-9, "{}", gain(mass));
    assert!((gain(width) - 1.1).abs() < 1e-9, "{}", gain(width));
    assert_eq!(told.doubt.map(|(id, _)| id), Some(MASS.any()), "3 % of the mass, 1 % of the width");
    for finding in walk_round(&outcome) {
        let told = moves(finding.limit, &outcome);
        assert!(told.free.len() <= 3 && told.bought.len() <= 3);
        for kind in [&told.free, &told.bought] {
            assert!(kind.is_sorted_by(|a, b| gain(a) >= gain(b)), "{}", finding.limit.title);
            for lever in kind {
                let mut moved = givens.clone();
                let (_, origin) = moved.get(lever.id).expect("a given number");
                moved.put(lever.id, lever.to, origin);
                let after = Outcome::of(moved, &spreads, 2).values.si(finding.limit.margin);
                let after = after.expect("a margin");
                assert!(after > finding.margin.unwrap(), "{}", finding.limit.title);
            }
        }
    }
}
