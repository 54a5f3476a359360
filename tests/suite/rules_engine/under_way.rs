//! Driving, turning and balancing by the rules: which limit is named, what is lacking, what is said.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    balance::*, drive::*, ground::*, machine::*, motion::*, running_gear::*, turning::*,
};

use heftwise::rules::Values;

use super::{cautions, lacks, values, words};

/// The crawler on ground whose grip and rolling coefficient are known, at a walking pace.
fn crawler_with(changes: &[(AnyId, f64)]) -> Values {
    let ground = [
        (GRIP_COEFFICIENT.any(), 0.6),
        (ROLLING_COEFFICIENT.any(), 0.15),
        (DRIVING_SPEED.any(), 1.0),
    ];
    super::crawler_with(&[&ground, changes].concat())
}

fn speaks(id: impl Into<AnyId> + Copy, phrase: &str, when: &[(AnyId, f64)], not: &[(AnyId, f64)]) {
    let said = cautions(&crawler_with(when), id);
    assert!(said.contains(phrase), "says {said:?}");
    let said = cautions(&crawler_with(not), id);
    assert!(!said.contains(phrase), "says {said:?} for nothing");
}

#[test]
fn the_limit_of_the_acceleration_is_named() {
    let level = (SLOPE.any(), 0.0);
    let strong = [level, (DRIVE_POWER.any(), 1e4), (DRIVE_TORQUE.any(), 1e3)];
    let weak = [level, (DRIVE_POWER.any(), 12.0)];
    let gentle = [level, (DRIVE_TORQUE.any(), 0.5)];
    let tall = [strong[0], strong[1], strong[2], (CG_HEIGHT.any(), 0.6)];
    speaks(ACCELERATION, "power limits", &weak, &strong);
    speaks(ACCELERATION, "torque limits", &gentle, &strong);
    speaks(ACCELERATION, "grip limits", &strong, &weak);
    speaks(ACCELERATION, "front lifts first", &tall, &strong);
}

#[test]
fn a_limit_that_is_not_known_does_not_count_and_that_is_said() {
    let bare = [
        (MASS.any(), 6.4),
        (ROLLING_COEFFICIENT.any(), 0.15),
        (DRIVING_SPEED.any(), 1.0),
        (DRIVE_POWER.any(), 60.0),
    ];
    let said = cautions(&values(&bare), ACCELERATION);
    for unknown in ["torque is not known", "grip is not known", "Air drag is left out"] {
        assert!(said.contains(unknown), "{said}");
    }
    let nothing = values(&bare[..3]);
    let lacking = lacks(&nothing, ACCELERATION).concat();
    assert!(lacking.contains(&DRIVE_POWER.any()), "{lacking:?}");
    let at_rest = values(&[bare[0], bare[1], (DRIVING_SPEED.any(), 0.0), bare[3]]);
    assert!(words(&at_rest, ACCELERATION).contains("At rest"));
}

#[test]
fn a_speed_out_of_reach_is_said() {
    let values = crawler_with(&[(TARGET_SPEED.any(), 50.0)]);
    assert!(words(&values, RUN_UP_TIME).contains("never gets that fast"));
}

#[test]
fn what_ends_the_top_speed_is_named() {
    // Gears that let it run on and on, and those of the crawler.
    let tall = (GEARED_TOP_SPEED.any(), 1e3);
    let drag = [(DRIVE_POWER.any(), 1e5), (SLOPE.any(), 0.0), tall];
    let power = [(DRIVE_POWER.any(), 15.0), (SLOPE.any(), 0.0), tall];
    let geared = &drag[..2];
    speaks(TOP_SPEED, "The thrust ends it", &drag, &power);
    speaks(TOP_SPEED, "The power ends it", &power, &drag);
    speaks(TOP_SPEED, "The gearing ends it", geared, &drag);
    speaks(TOP_SPEED, "helmet", &drag, &power);
    let unsaid = values(&[(DRAG_TOP_SPEED.any(), 3.0)]);
    assert!(cautions(&unsaid, TOP_SPEED).contains("gearing is not known"));
}

#[test]
fn spinning_parts_left_out_are_named() {
    let said = cautions(&values(&[(MASS.any(), 5.0)]), ROTATING_MASS);
    assert!(said.contains("Rotors and wheels"), "{said}");
    assert!(!cautions(&crawler_with(&[]), ROTATING_MASS).contains("Rotors"));
    let lacking = values(&[(MASS.any(), 5.0), (WHEEL_INERTIA.any(), 1e-3)]);
    let any = [DRIVE_RADIUS.any(), DRIVE_DIAMETER.any(), DISTANCE_PER_TURN.any()];
    assert_eq!(lacks(&lacking, ROTATING_MASS), [any.to_vec()]);
}

/// 2 µkg·m² at 30 to 1 on 40 mm is 1.125 kg; 1 g·m² on 40 mm is 0.625 kg.
#[test]
fn a_rotor_counts_with_the_ratio_squared() {
    let found = crawler_with(&[]).si(ROTATING_MASS).unwrap();
    approx::assert_relative_eq!(found, 1.125 + 0.625, max_relative = 1e-12);
}

#[test]
fn steep_snow_and_steep_ground_are_cautioned() {
    let (steep, gentle) = ([(SLOPE.any(), 0.55)], [(SLOPE.any(), 0.1)]);
    speaks(STEADY_RESISTANCE, "avalanche bulletin", &steep, &gentle);
    speaks(FRONT_LIFT_ACCELERATION, "tip-over", &steep, &gentle);
    let side = [(SIDE_SLOPE.any(), 0.4)];
    speaks(SIDE_SLOPE_MARGIN, "low side", &side, &gentle);
    speaks(SIDE_SLOPE_MARGIN, "tips over", &[(SIDE_SLOPE.any(), 1.3)], &gentle);
    let slick = [(SIDE_SLOPE.any(), 0.4), (SIDEWAYS_COEFFICIENT.any(), 0.2)];
    speaks(SIDE_SLOPE_MARGIN, "slides down sideways", &slick, &gentle);
    speaks(SIDE_LIMIT_SLOPE, "avalanche", &[(SIDEWAYS_COEFFICIENT.any(), 0.9)], &gentle);
}

#[test]
fn nosing_over_before_the_grip_gives_out_is_said() {
    let tall = [(CG_HEIGHT.any(), 0.9), (SLOPE.any(), 0.0)];
    speaks(NOSE_OVER_MARGIN, "over its nose", &tall, &[]);
    let climb = [(SLOPE.any(), 0.5), (CG_HEIGHT.any(), 0.5)];
    speaks(FRONT_LIFT_MARGIN, "over backwards", &climb, &[]);
    speaks(MOVING_FRONT_LOAD, "front lifts", &climb, &[]);
    let brake = [(WANTED_ACCELERATION.any(), -9.0), (CG_HEIGHT.any(), 0.5), (SLOPE.any(), 0.0)];
    speaks(MOVING_REAR_LOAD, "over its nose", &brake, &[]);
    speaks(FRONT_LOAD, "tips over as it stands", &[(BALANCE_OFFSET.any(), -0.3)], &[]);
    speaks(REAR_LOAD, "tips over as it stands", &[(BALANCE_OFFSET.any(), 0.3)], &[]);
}

#[test]
fn nothing_asked_has_no_margin() {
    let level = crawler_with(&[(SIDE_SLOPE.any(), 0.0)]);
    assert!(words(&level, SIDE_SLOPE_MARGIN).contains("Nothing is asked"));
}

#[test]
fn grip_stands_in_for_the_sideways_coefficient() {
    let tracks = [(MASS.any(), 6.4), (CONTACT_LENGTH.any(), 0.42), (GRIP_COEFFICIENT.any(), 0.6)];
    let found = values(&tracks);
    // µ W L / 4 by hand.
    let by_hand = 0.6 * 6.4 * 9.80665 * 0.42 / 4.0;
    approx::assert_relative_eq!(found.si(SKID_MOMENT).unwrap(), by_hand, max_relative = 1e-12);
    assert!(cautions(&found, SKID_MOMENT).contains("grip stands in"));
    assert_eq!(cautions(&crawler_with(&[]), SKID_MOMENT), "");
}

#[test]
fn tracks_held_by_the_ground_do_not_swing() {
    let held = crawler_with(&[(SIDEWAYS_COEFFICIENT.any(), 5.0)]);
    assert!(words(&held, SWING_TIME).contains("holds the tracks"));
}

#[test]
fn a_turn_asks_for_angle_or_speeds() {
    let lacking = lacks(&values(&[(GAUGE.any(), 0.3)]), TURN_RADIUS);
    assert_eq!(lacking, [vec![STEER_ANGLE.any(), LEFT_SPEED.any()]]);
    let one = values(&[(GAUGE.any(), 0.3), (LEFT_SPEED.any(), 1.0)]);
    assert_eq!(lacks(&one, TURN_RADIUS), [vec![RIGHT_SPEED.any()]]);
    let straight = values(&[(WHEELBASE.any(), 0.3), (STEER_ANGLE.any(), 0.0)]);
    assert!(words(&straight, TURN_RADIUS).contains("straight on"));
    // On the spot: opposite speeds.
    let spot = values(&[(GAUGE.any(), 0.3), (LEFT_SPEED.any(), -1.0), (RIGHT_SPEED.any(), 1.0)]);
    assert_eq!(spot.si(TURN_RADIUS), Some(0.0));
}

#[test]
fn a_fast_rim_is_cautioned() {
    speaks(RIM_SPEED, "burst", &[(SPIN_RATE.any(), 3000.0)], &[]);
    speaks(SIDEWAYS_GRIP, "slides out", &[(TURN_RADIUS.any(), 0.1)], &[]);
    speaks(SCALE_CG_HEIGHT, "less than 15°", &[(RAISE_ANGLE.any(), 0.2)], &[]);
}
