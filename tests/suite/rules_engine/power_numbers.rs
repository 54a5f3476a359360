//! Single machines: drive, battery, box and motor, and what is said of them.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{drive::*, electrics::*, heat::*, motion::*};
use heftwise::rules::{Value, Values};

use super::power::CELSIUS;
use super::{cautions, crawler_with, lacks, values, words};

/// The crawler with everything said, pushing steadily with 18 N unless changed.
fn geared(changes: &[(AnyId, f64)]) -> Values {
    crawler_with(&[&[(DRIVING_RESISTANCE.any(), 18.0)], changes].concat())
}

fn near(found: Option<f64>, wanted: f64, within: f64) {
    let found = found.expect("a number");
    assert!((found - wanted).abs() <= within * wanted.abs(), "{found} is not {wanted}");
}

/// By hand: 20 N over 0.3 m a turn, 10 : 1 with 0.8, two motors. Braking, 6 · 0.8 / (40 π) N·m.
#[test]
fn the_loss_of_the_gears_helps_to_brake() {
    let torque = |resistance: f64| {
        geared(&[
            (DRIVING_RESISTANCE.any(), resistance),
            (DISTANCE_PER_TURN.any(), 0.3),
            (GEAR_RATIO.any(), 10.0),
            (GEAR_EFFICIENCY.any(), 0.8),
            (MOTOR_COUNT.any(), 2.0),
        ])
        .si(MOTOR_TORQUE)
    };
    near(torque(20.0), 6.0 / 0.8 / (40.0 * std::f64::consts::PI), 1e-12);
    near(torque(-20.0), -6.0 * 0.8 / (40.0 * std::f64::consts::PI), 1e-12);
}

/// Held back by its motors downhill, the machine draws nothing, and that is said of all that follows.
#[test]
fn downhill_the_ground_drives_the_motors() {
    let downhill = geared(&[(DRIVING_RESISTANCE.any(), -60.0)]);
    assert!(downhill.si(MOTOR_TORQUE) < Some(0.0));
    assert!(cautions(&downhill, MOTOR_TORQUE).contains("must brake with this torque"));
    for id in [
        MOTOR_CURRENT.any(),
        BATTERY_CURRENT.any(),
        BATTERY_POWER.any(),
        TIME_TO_EMPTY.any(),
        RUN_TIME.any(),
        MOTOR_EFFICIENCY.any(),
        DRIVE_EFFICIENCY.any(),
    ] {
        assert!(words(&downhill, id).contains("the ground drives the motors"), "{id}");
    }
    // So gently downhill that the motors' own friction still takes a little current.
    let gently = geared(&[(DRIVING_RESISTANCE.any(), -18.0)]);
    assert!(gently.si(MOTOR_CURRENT) > Some(0.0));
    assert!(words(&gently, DRIVE_EFFICIENCY).contains("the ground drives the motors"));
    assert_eq!(cautions(&geared(&[]), MOTOR_TORQUE), "");
}

/// What is pinned wins over what gears and motors would give.
#[test]
fn the_drive_at_the_ground_is_found_or_pinned() {
    let found = geared(&[]);
    let by_hand = 2.0 * found.si(PEAK_MOTOR_TORQUE).unwrap() * 30.0 * 0.95;
    let bare: Vec<_> = super::power::POWER.to_vec();
    let bare = values(&bare);
    near(bare.si(DRIVE_TORQUE), by_hand, 1e-12);
    near(bare.si(DRIVE_RADIUS), 0.04, 1e-12);
    near(bare.si(DRIVE_POWER), 2.0 * 0.95 * bare.si(SUPPLIED_MOTOR_POWER).unwrap(), 1e-12);
    near(values(&[(DRIVE_TORQUE.any(), 3.0)]).si(DRIVE_TORQUE), 3.0, 0.0);
    let engine = values(&[
        (ENGINE_POWER.any(), 800.0),
        (ENGINE_SPEED.any(), 400.0),
        (FIRST_STAGE_RATIO.any(), 10.0),
        (FIRST_STAGE_EFFICIENCY.any(), 0.9),
    ]);
    near(engine.si(DRIVE_POWER), 720.0, 1e-12);
    near(engine.si(DRIVE_TORQUE), 18.0, 1e-12);
    let asked = lacks(&values(&[]), DRIVE_POWER).concat();
    assert!(asked.contains(&DRIVE_POWER.any()) && asked.contains(&ENGINE_POWER.any()), "{asked:?}");
}

/// By hand: 10 N at rest and 4 m/s free against 4 N of ground and 1 kg/m of air, 6 = 2.5 v + v².
#[test]
fn the_line_of_the_motors_meets_what_holds_back() {
    let on_line = |more: &[(AnyId, f64)]| {
        let line = [
            (LINE_PUSH.any(), 10.0),
            (UNLOADED_SPEED.any(), 4.0),
            (STEADY_RESISTANCE.any(), 4.0),
            (AIR_DENSITY.any(), 1.0),
        ];
        values(&[&line, more].concat())
    };
    let root = (2.5_f64 * 2.5 + 24.0).sqrt();
    near(on_line(&[(DRAG_AREA.any(), 2.0)]).si(GEARED_TOP_SPEED), (root - 2.5) / 2.0, 1e-12);
    near(on_line(&[]).si(GEARED_TOP_SPEED), 2.4, 1e-12);
    near(on_line(&[(STEADY_RESISTANCE.any(), -5.0)]).si(GEARED_TOP_SPEED), 6.0, 1e-12);
    assert!(
        words(&on_line(&[(STEADY_RESISTANCE.any(), 11.0)]), GEARED_TOP_SPEED).contains("stalls")
    );
}

#[test]
fn a_motor_that_cannot_turn_is_said_so() {
    let jammed = geared(&[(DRIVING_RESISTANCE.any(), 5000.0)]);
    assert!(words(&jammed, MOTOR_SPEED).contains("stalls"));
    assert!(words(&jammed, LOADED_SPEED).contains("stalls"));
    assert!(jammed.si(PUSH_MARGIN).unwrap() < 1.0);
}

#[test]
fn the_controller_holds_the_peak_or_nothing_does() {
    near(geared(&[]).si(PEAK_MOTOR_CURRENT), 50.0, 1e-9);
    let wide = geared(&[(CONTROLLER_CURRENT_LIMIT.any(), 1e4)]);
    let (peak, bare) = (wide.si(PEAK_MOTOR_CURRENT).unwrap(), wide.si(STALL_CURRENT).unwrap());
    assert!(peak > 50.0 && peak < bare, "{peak} {bare}");
}

#[test]
fn heat_that_has_no_end_is_said_so() {
    let hot = geared(&[(DRIVING_RESISTANCE.any(), 650.0)]);
    assert!(
        words(&hot, WINDING_RISE).contains("no steady temperature"),
        "{:?}",
        hot.of(WINDING_RISE)
    );
    assert!(hot.si(TIME_TO_LIMIT).is_some() && hot.si(WINDING_RISE_AFTER).is_some());
    let cool = geared(&[(DRIVING_RESISTANCE.any(), 2.0), (NO_LOAD_CURRENT.any(), 0.05)]);
    assert!(words(&cool, TIME_TO_LIMIT).contains("never gets there"));
    let warm_air = geared(&[(COOLING_AIR.any(), CELSIUS + 120.0)]);
    for id in [TIME_TO_LIMIT.any(), REST_NEEDED.any(), STALL_TIME.any(), CONTINUOUS_CURRENT.any()] {
        assert!(words(&warm_air, id).contains("already as warm"), "{id}");
    }
    let long = geared(&[(WORK_TIME.any(), 1e6)]);
    assert!(words(&long, REST_NEEDED).contains("No rest"));
}

#[test]
fn a_sink_that_cannot_be_and_a_pack_that_is_empty() {
    let tight = geared(&[(JUNCTION_TO_CASE.any(), 1e5)]);
    assert!(words(&tight, SINK_NEEDED).contains("No heat sink"));
    let empty = geared(&[(CELL_VOLTAGE.any(), 2.5)]);
    assert!(words(&empty, CUTOFF_CURRENT).contains("empty"));
}

#[test]
fn what_burns_is_said() {
    let hot = geared(&[(DRIVING_RESISTANCE.any(), 40.0)]);
    assert!(hot.si(HOUSING_TEMPERATURE).unwrap() > CELSIUS + 60.0);
    assert!(cautions(&hot, HOUSING_TEMPERATURE).contains("60 °C"));
    let cool = geared(&[(DRIVING_RESISTANCE.any(), 2.0), (NO_LOAD_CURRENT.any(), 0.05)]);
    assert!(cool.si(HOUSING_TEMPERATURE).unwrap() < CELSIUS + 60.0);
    assert!(!cautions(&cool, HOUSING_TEMPERATURE).contains("burn"));
    let surface = |celsius: f64| {
        cautions(&geared(&[(SURFACE_TEMPERATURE.any(), CELSIUS + celsius)]), SURFACE_HEAT)
    };
    assert!(surface(60.0).contains("burn") && !surface(59.9).contains("burn"));
    let brake = |speed: f64| cautions(&geared(&[(BRAKING_SPEED.any(), speed)]), BRAKE_TEMPERATURE);
    assert!(brake(20.0).contains("burn") && !brake(1.0).contains("burn"));
    assert!(brake(1.0).contains("qualified"));
}

#[test]
fn the_usual_cautions_stand_with_their_numbers() {
    let machine = geared(&[]);
    for (id, words) in [
        (BATTERY_ENERGY.any(), "maker's manual"),
        (PACK_RISE.any(), "60 °C"),
        (WIRE_MARGIN.any(), "local electrical code"),
        (WIRE_WITHSTAND_TIME.any(), "local electrical code"),
        (STALL_CURRENT.any(), "moment only"),
        (STALL_TIME.any(), "moment only"),
        (PEAK_PUSH.any(), "grip"),
        (FUEL_FLOW.any(), "carbon monoxide"),
        (REGULATOR_MARGIN.any(), "receiver resets"),
    ] {
        assert!(cautions(&machine, id).contains(words), "{id}: {}", cautions(&machine, id));
    }
    assert!(
        !cautions(&geared(&[(REGULATOR_LIMIT.any(), 6.0)]), REGULATOR_MARGIN).contains("resets")
    );
}

#[test]
fn guesses_are_named() {
    let two_stages = geared(&[(SECOND_STAGE_RATIO.any(), 2.0)]);
    assert!(cautions(&two_stages, GEAR_EFFICIENCY).contains("none was said"));
    assert_eq!(cautions(&geared(&[]), GEAR_EFFICIENCY), "");
    let bare = values(&[(BATTERY_RESISTANCE.any(), 0.02)]);
    assert!(cautions(&bare, SUPPLY_RESISTANCE).contains("wires are left out"));
    assert!(cautions(&bare, SUPPLY_RESISTANCE).contains("Plugs and joints"));
    assert_eq!(cautions(&geared(&[]), SUPPLY_RESISTANCE), "");
    let open = values(&[(CHIP_LIMIT.any(), CELSIUS + 125.0)]);
    assert!(cautions(&open, CHIP_ALLOWED_RISE).contains("open air"));
    assert_eq!(
        lacks(&values(&[]), SPEED_CONSTANT),
        [vec![SPEED_CONSTANT.any(), TORQUE_CONSTANT.any()]]
    );
}

#[test]
fn limits_that_are_passed_are_said_beside_their_margin() {
    let motor = |celsius: f64| {
        let given = [(WINDING_RISE.any(), 60.0), (WINDING_LIMIT.any(), CELSIUS + celsius)];
        cautions(&values(&given), MOTOR_HEAT_MARGIN)
    };
    assert!(motor(79.0).contains("past its limit") && !motor(81.0).contains("past"));
    let chips = |rise: f64| cautions(&values(&[(CHIP_RISE.any(), rise)]), CONTROLLER_MARGIN);
    assert!(chips(106.0).contains("past their limit") && !chips(104.0).contains("past"));
    let label = |peak: f64| {
        let given = [(PEAK_BATTERY_CURRENT.any(), peak), (LABEL_CURRENT.any(), 40.0)];
        cautions(&values(&given), LABEL_MARGIN)
    };
    assert!(label(41.0).contains("label") && !label(39.0).contains("label"));
}

/// A run time below zero, or volts below zero, must never be shown.
#[test]
fn a_pack_that_cannot_give_the_current_says_so() {
    let pack = values(&[
        (USABLE_ENERGY.any(), 360_000.0),
        (BATTERY_VOLTAGE.any(), 7.0),
        (BATTERY_RESISTANCE.any(), 0.1),
        (BATTERY_CURRENT.any(), 90.0),
        (PEAK_BATTERY_CURRENT.any(), 120.0),
    ]);
    for id in [BATTERY_LOADED_VOLTAGE.any(), BATTERY_POWER.any(), RUN_TIME.any()] {
        let Value::Invalid(words) = pack.of(id) else { panic!("{id} is {:?}", pack.of(id)) };
        assert!(words.contains("cannot give this current"), "{id}: {words}");
    }
}
