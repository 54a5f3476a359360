//! The rules from outside: the whole table, the engine, each topic, and the laws behind them.

mod bounce_and_twist;
mod cautions;
mod course;
mod datum;
mod duty_laws;
mod examples;
mod laws;
mod motion_laws;
mod numbers;
mod power;
mod power_laws;
mod power_numbers;
mod reckoned;
mod size_and_limits;
mod soft_ground;
mod sound;
mod strength_and_size;
mod table;
mod under_way;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    balance::*, ground::*, impact::*, machine::*, motion::*, running_gear::*, traction::*,
    turning::*, whole::*,
};
use heftwise::rules::{Givens, Lack, Value, Values, evaluate};

/// A tracked machine on a slope with everything said.
const CRAWLER: &[(AnyId, f64)] = &[
    (MASS.any(), 6.4),
    (TRACK_COUNT.any(), 2.0),
    (TRACK_WIDTH.any(), 0.09),
    (CONTACT_LENGTH.any(), 0.42),
    (SLOPE.any(), 0.1),
    (BALANCE_OFFSET.any(), -0.03),
    (CG_HEIGHT.any(), 0.08),
    (BLOCK_MASS.any(), 3.0),
    (IMPACT_SPEED.any(), 3.0),
    (STOP_DISTANCE.any(), 0.02),
    (RESTITUTION.any(), 0.2),
    (IMPACT_PATCH.any(), 1e-3),
    (FRAME_STRENGTH.any(), 5e3),
    (SHOCK_LIMIT.any(), 50.0),
];

/// What drives it, what it meets on the way, and how it stands and turns.
const UNDER_WAY: &[(AnyId, f64)] = &[
    (TARGET_SPEED.any(), 1.5),
    (WANTED_ACCELERATION.any(), 0.5),
    (DRIVE_POWER.any(), 60.0),
    (DRIVE_TORQUE.any(), 1.6),
    (DRIVE_RADIUS.any(), 0.04),
    (ROTOR_INERTIA.any(), 2e-6),
    (WHEEL_INERTIA.any(), 1e-3),
    (DRAG_COEFFICIENT.any(), 1.0),
    (FRONTAL_AREA.any(), 0.04),
    (WHEELBASE.any(), 0.4),
    (GAUGE.any(), 0.3),
    (SIDE_SLOPE.any(), 0.1),
    (PUSH_HEIGHT.any(), 0.2),
    (FRONT_SCALE.any(), 2.8),
    (REAR_SCALE.any(), 3.6),
    (RAISED_SCALE.any(), 3.0),
    (RAISE_ANGLE.any(), 0.35),
    (AXLE_HEIGHT.any(), 0.04),
    (LEFT_SPEED.any(), 0.8),
    (RIGHT_SPEED.any(), 1.2),
    (SIDEWAYS_COEFFICIENT.any(), 0.3),
    (MACHINE_LENGTH.any(), 0.5),
    (MACHINE_WIDTH.any(), 0.4),
    (BANK_ANGLE.any(), 0.1),
    (PIVOT_DISTANCE.any(), 0.2),
    (SWING_PERIOD.any(), 1.0),
    (SPIN_RATE.any(), 800.0),
    (SPIN_RADIUS.any(), 0.02),
    (SPIN_MASS.any(), 0.1),
    (SPIN_UP_TIME.any(), 2.0),
    (SPIN_ENERGY_WANTED.any(), 5.0),
    (COUPLED_INERTIA.any(), 1e-5),
    (KNOWN_INERTIA.any(), 0.1),
    (KNOWN_PERIOD.any(), 2.0),
    (TWIST_PERIOD.any(), 3.0),
    (TRIP_DISTANCE.any(), 100.0),
    (LOAD_LEFT.any(), 1.0),
    (SWING_TIME_WANTED.any(), 1.0),
];

/// Loose dry sand, fresh snow, tests and running gear, for the rules of soft ground.
const ON_SOFT_GROUND: &[(AnyId, f64)] = &[
    (SHEAR_TEST_AREA.any(), 0.01),
    (LIGHT_SHEAR_LOAD.any(), 2.0),
    (LIGHT_SHEAR_PULL.any(), 7.0),
    (HEAVY_SHEAR_LOAD.any(), 6.0),
    (HEAVY_SHEAR_PULL.any(), 14.0),
    (RUNNING_GEAR_MASS.any(), 1.5),
    (SINKAGE_EXPONENT.any(), 1.1),
    (COHESIVE_MODULUS.any(), 990.0),
    (FRICTIONAL_MODULUS.any(), 1.52843e6),
    (COHESION.any(), 1.04e3),
    (FRICTION_ANGLE.any(), 0.489),
    (SHEAR_DEFORMATION.any(), 0.025),
    (RUT_DEPTH.any(), 0.02),
    (SNOW_DEPTH.any(), 0.15),
    (SNOW_DENSITY.any(), 200.0),
    (SNOW_TRACTION_FACTOR.any(), 0.851),
    (SNOW_TRACTION_EXPONENT.any(), 0.823),
    (SNOW_RESISTANCE_COEFFICIENT.any(), 0.05),
    (GRIP_TEST_PULL.any(), 20.0),
    (GRIP_TEST_MASS.any(), 6.4),
    (SLIDING_COEFFICIENT.any(), 0.25),
    (TOW_TEST_PULL.any(), 10.0),
    (TOW_TEST_MASS.any(), 6.4),
    (DRIVING_SPEED.any(), 1.0),
    (THROWN_FLOW.any(), 0.5),
    (THROW_SPEED.any(), 3.0),
    (ROAD_WHEELS_PER_TRACK.any(), 4.0),
    (ROAD_WHEEL_DIAMETER.any(), 0.04),
    (ROAD_WHEEL_SQUASH.any(), 0.004),
    (TRACK_PITCH.any(), 0.015),
    (SHOE_AREA.any(), 0.0013),
    (BELLY_CLEARANCE.any(), 0.04),
];

fn values(given: &[(AnyId, f64)]) -> Values {
    let mut givens = Givens::default();
    given.iter().for_each(|(id, si)| givens.set(*id, *si));
    evaluate(&givens)
}

/// The crawler with some numbers changed or added.
fn crawler_with(changes: &[(AnyId, f64)]) -> Values {
    values(&[CRAWLER, UNDER_WAY, power::POWER, changes].concat())
}

fn lacks(values: &Values, id: impl Into<AnyId>) -> Vec<Lack> {
    match values.of(id) {
        Value::Missing(lacks) => lacks.to_vec(),
        other => panic!("not missing but {other:?}"),
    }
}

fn words(values: &Values, id: impl Into<AnyId>) -> String {
    match values.of(id) {
        Value::Invalid(words) => words.to_string(),
        other => panic!("not invalid but {other:?}"),
    }
}

fn cautions(values: &Values, id: impl Into<AnyId>) -> String {
    match values.of(id) {
        Value::Known(known) => known.cautions.join(" "),
        other => panic!("not known but {other:?}"),
    }
}
