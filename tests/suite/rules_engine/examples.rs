//! Single machines: numbers, what is lacking, what cannot be.

use heftwise::quantity::catalogue::{
    all, ground::*, impact::*, machine::*, pressure::*, running_gear::*, traction::*,
};
use heftwise::quantity::{AnyId, Role};
use heftwise::rules::{Origin, Value};

use super::{ON_SOFT_GROUND, cautions, crawler_with, lacks, values, words};

fn near(found: Option<f64>, wanted: f64, within: f64) {
    let found = found.expect("a number");
    assert!((found - wanted).abs() <= within, "{found} is not {wanted}");
}

/// Two tracks of 90 mm by 420 mm under 6.4 kg.
const SANDPIPER: &[(AnyId, f64)] = &[
    (MASS.any(), 6.4),
    (TRACK_COUNT.any(), 2.0),
    (TRACK_WIDTH.any(), 0.09),
    (CONTACT_LENGTH.any(), 0.42),
    (SLOPE.any(), 0.0),
];

#[test]
fn ground_pressure_of_a_light_crawler() {
    near(values(SANDPIPER).si(GROUND_PRESSURE), 830.0, 0.5);
}

#[test]
fn mean_force_of_a_stop_by_time_and_by_distance() {
    let stop = |by: AnyId, si| {
        values(&[(MASS.any(), 3.0), (IMPACT_SPEED.any(), 10.0), (by, si)]).si(MEAN_IMPACT_FORCE)
    };
    near(stop(STOP_TIME.any(), 0.010), 3000.0, 1e-6);
    near(stop(STOP_DISTANCE.any(), 0.050), 3000.0, 1e-6);
}

#[test]
fn everything_is_found_for_a_tracked_or_a_wheeled_machine_with_everything_said() {
    let wheels = [
        (WHEEL_DIAMETER.any(), 0.3),
        (WHEEL_WIDTH.any(), 0.08),
        (WHEEL_SQUASH.any(), 0.01),
        (INFLATION_PRESSURE.any(), 3e4),
        (TYRE_SECTION_HEIGHT.any(), 0.05),
        (WHEELED_MOBILITY_INDEX.any(), 60.0),
    ];
    let said = [ON_SOFT_GROUND, &wheels].concat();
    let tracked = crawler_with(&said);
    let on_wheels = [(TRACK_COUNT.any(), 0.0), (WHEEL_COUNT.any(), 4.0)];
    let wheeled = crawler_with(&[&said[..], &on_wheels].concat());
    for entry in all().iter().filter(|entry| !matches!(entry.role, Role::Given { .. })) {
        let found = [tracked.of(entry.id), wheeled.of(entry.id)];
        assert!(
            found.iter().any(|value| matches!(value, Value::Known(_))),
            "{}: {found:?}",
            entry.id
        );
    }
}

#[test]
fn what_is_lacking_is_named() {
    let values = values(&[(TRACK_COUNT.any(), 2.0)]);
    let mut named: Vec<_> = lacks(&values, GROUND_PRESSURE).into_iter().flatten().collect();
    named.sort();
    assert_eq!(named, [CONTACT_LENGTH.any(), MASS.any(), TRACK_WIDTH.any()]);
}

#[test]
fn tracks_and_skis_that_are_not_there_have_no_size() {
    let values = values(&[(MASS.any(), 78.0), (SKI_COUNT.any(), 1.0), (SKI_WIDTH.any(), 0.1)]);
    assert_eq!(values.si(TRACK_CONTACT_AREA), Some(0.0));
    assert_eq!(values.si(WHEEL_CONTACT_AREA), Some(0.0));
    assert_eq!(lacks(&values, CONTACT_AREA), [vec![SKI_LENGTH.any()]]);
}

#[test]
fn nothing_on_the_ground_is_said_so() {
    assert!(words(&values(&[(MASS.any(), 5.0)]), GROUND_PRESSURE).contains("Nothing touches"));
}

#[test]
fn wheels_ask_for_squash_or_inflation() {
    let cart = [(MASS.any(), 80.0), (WHEEL_COUNT.any(), 4.0)];
    let lacking = lacks(&values(&cart), CONTACT_AREA);
    assert_eq!(lacking, [vec![WHEEL_SQUASH.any(), INFLATION_PRESSURE.any()]]);

    let by_air = values(&[&cart[..], &[(INFLATION_PRESSURE.any(), 3e4)]].concat());
    near(by_air.si(GROUND_PRESSURE), 3e4, 1e-6);
}

#[test]
fn measured_squash_goes_before_inflation() {
    // A 3-4-5 triangle: radius 50 mm, axle 40 mm up, so the chord is 60 mm.
    let squash = [
        (MASS.any(), 80.0),
        (WHEEL_COUNT.any(), 4.0),
        (WHEEL_DIAMETER.any(), 0.100),
        (WHEEL_SQUASH.any(), 0.010),
        (WHEEL_WIDTH.any(), 0.050),
        (INFLATION_PRESSURE.any(), 3e4),
    ];
    let values = values(&squash);
    near(values.si(WHEEL_PATCH_LENGTH), 0.060, 1e-12);
    near(values.si(WHEEL_CONTACT_AREA), 4.0 * 0.050 * 0.060, 1e-12);
}

#[test]
fn a_squash_that_cannot_be_is_explained() {
    let cart = |squash| {
        values(&[
            (WHEEL_COUNT.any(), 2.0),
            (WHEEL_DIAMETER.any(), 0.1),
            (WHEEL_WIDTH.any(), 0.05),
            (WHEEL_SQUASH.any(), squash),
        ])
    };
    assert!(words(&cart(0.05), CONTACT_AREA).contains("half the wheel diameter"));
    assert!(words(&cart(0.0), CONTACT_AREA).contains("along a line"));
    assert!(cart(0.0499).si(CONTACT_AREA).is_some());
}

#[test]
fn wheels_have_no_low_end_and_are_not_asked_for_track_sizes() {
    let cart =
        values(&[(MASS.any(), 80.0), (WHEEL_COUNT.any(), 4.0), (INFLATION_PRESSURE.any(), 3e4)]);
    for id in [
        END_PRESSURE_RATIO.any(),
        LOW_END_PRESSURE.any(),
        LIFTED_LENGTH.any(),
        BALANCE_MARGIN.any(),
    ] {
        assert!(words(&cart, id).contains("tracks alone"), "{id}");
    }
    let half_track =
        crawler_with(&[(SKI_COUNT.any(), 1.0), (SKI_WIDTH.any(), 0.1), (SKI_LENGTH.any(), 0.3)]);
    assert!(words(&half_track, LOW_END_PRESSURE).contains("tracks alone"));
}

#[test]
fn height_of_the_centre_of_gravity_is_asked_for_on_a_slope_only() {
    let level = values(SANDPIPER);
    assert_eq!(level.si(PRESSURE_OFFSET), Some(0.0));
    let slope = values(&[SANDPIPER, &[(SLOPE.any(), 0.2)]].concat());
    assert_eq!(lacks(&slope, LOW_END_PRESSURE), [vec![CG_HEIGHT.any()]]);
}

#[test]
fn nose_uphill_moves_the_load_to_the_tail() {
    let at = |slope| {
        crawler_with(&[(SLOPE.any(), slope), (BALANCE_OFFSET.any(), 0.0)]).si(PRESSURE_OFFSET)
    };
    near(at(0.1), -0.08 * 0.1_f64.tan(), 1e-12);
    near(at(-0.1), 0.08 * 0.1_f64.tan(), 1e-12);
}

#[test]
fn a_load_past_the_end_tips() {
    assert!(
        words(&crawler_with(&[(BALANCE_OFFSET.any(), 0.3)]), LOW_END_PRESSURE)
            .contains("tips over")
    );
}

#[test]
fn a_load_in_the_middle_is_near_no_lifting() {
    assert!(words(&values(SANDPIPER), BALANCE_MARGIN).contains("in the middle"));
    assert_eq!(values(SANDPIPER).si(END_PRESSURE_RATIO), Some(1.0));
}

#[test]
fn largest_masses_press_as_hard_as_the_ground_holds() {
    let heavy = |id| crawler_with(&[(MASS.any(), crawler_with(&[]).si(id).unwrap())]);
    near(heavy(LARGEST_MASS_MEAN.any()).si(PRESSURE_MARGIN), 1.0, 1e-12);
    near(heavy(LARGEST_MASS.any()).si(LOW_END_MARGIN), 1.0, 1e-12);
}

#[test]
fn a_block_test_of_three_kilograms() {
    near(crawler_with(&[]).si(HOLDING_PRESSURE), 2942.0, 1.0);
}

#[test]
fn a_pinned_number_wins() {
    let pinned = crawler_with(&[(GROUND_PRESSURE.any(), 1234.0)]);
    assert_eq!(pinned.si(GROUND_PRESSURE), Some(1234.0));
    assert_eq!(pinned.origin(GROUND_PRESSURE), Some(Origin::Given));
    let ratio = pinned.si(END_PRESSURE_RATIO).unwrap();
    near(pinned.si(LOW_END_PRESSURE), 1234.0 * ratio, 1e-9);
}

#[test]
fn either_of_a_pair_finds_the_other() {
    let drop = values(&[(DROP_HEIGHT.any(), 0.5)]);
    let speed = drop.si(IMPACT_SPEED).unwrap();
    near(Some(speed), (2.0 * 9.80665 * 0.5_f64).sqrt(), 1e-12);
    near(values(&[(IMPACT_SPEED.any(), speed)]).si(DROP_HEIGHT), 0.5, 1e-12);
    assert!(cautions(&drop, IMPACT_SPEED).contains("free fall"));
}

#[test]
fn neither_of_a_pair_names_both() {
    assert_eq!(lacks(&values(&[]), IMPACT_SPEED), [vec![IMPACT_SPEED.any(), DROP_HEIGHT.any()]]);
}

#[test]
fn both_of_a_pair_that_disagree_are_kept_and_said() {
    let both = |height| values(&[(IMPACT_SPEED.any(), 2.0), (DROP_HEIGHT.any(), height)]);
    assert_eq!(both(1.0).si(IMPACT_SPEED), Some(2.0));
    assert_eq!(both(1.0).si(DROP_HEIGHT), Some(1.0));
    for id in [IMPACT_SPEED.any(), DROP_HEIGHT.any()] {
        assert!(cautions(&both(1.0), id).contains("Both"), "{id}");
        assert_eq!(cautions(&both(4.0 / (2.0 * 9.80665)), id), "");
    }
}

#[test]
fn standing_still_has_no_stop() {
    let still =
        values(&[(MASS.any(), 3.0), (IMPACT_SPEED.any(), 0.0), (STOP_DISTANCE.any(), 0.05)]);
    assert!(words(&still, MEAN_IMPACT_FORCE).contains("not moving"));
}

#[test]
fn a_bounce_to_half_the_speed_reaches_a_quarter_of_the_height() {
    let bounce = values(&[(DROP_HEIGHT.any(), 1.0), (RESTITUTION.any(), 0.5), (MASS.any(), 2.0)]);
    near(bounce.si(REBOUND_HEIGHT), 0.25, 1e-12);
    near(bounce.si(IMPULSE), 1.5 * bounce.si(MOMENTUM).unwrap(), 1e-12);
}

#[test]
fn a_drop_straight_down_in_round_numbers() {
    let drop = values(&[
        (MASS.any(), 10.0),
        (GRAVITY.any(), 10.0),
        (IMPACT_SPEED.any(), 10.0),
        (STOP_TIME.any(), 0.020),
        (APPROACH_ANGLE.any(), std::f64::consts::FRAC_PI_2),
        (PULSE_FACTOR.any(), 2.0),
        (IMPACT_PATCH.any(), 0.01),
        (FRAME_STRENGTH.any(), 20_200.0),
        (SHOCK_LIMIT.any(), 50.0),
    ]);
    near(drop.si(STOPPING_FORCE), 5000.0, 1e-9);
    near(drop.si(MEAN_IMPACT_FORCE), 5100.0, 1e-9);
    // Only the force that takes the speed away is doubled by the pulse, not the weight.
    near(drop.si(PEAK_IMPACT_FORCE), 10_100.0, 1e-9);
    near(drop.si(STANDING_PEOPLE), 5100.0 / 700.0, 1e-9);
    near(drop.si(STANDING_PEOPLE_PEAK), 10_100.0 / 700.0, 1e-9);
    near(drop.si(IMPACT_PRESSURE), 1.01e6, 1e-6);
    near(drop.si(FRAME_MARGIN), 2.0, 1e-12);
    // In standard gravity, whatever the local pull.
    near(drop.si(DECELERATION_G), 500.0 / 9.80665, 1e-9);
    near(drop.si(PEAK_DECELERATION_G), 1000.0 / 9.80665, 1e-9);
    near(drop.si(SHOCK_MARGIN), 50.0 * 9.80665 / 1000.0, 1e-9);
}
