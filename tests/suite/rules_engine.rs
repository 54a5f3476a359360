//! The rules from outside: the whole table, the engine, each topic, and the laws behind them.

mod cautions;
mod examples;
mod laws;
mod numbers;
mod soft_ground;
mod table;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    ground::*, impact::*, machine::*, motion::*, running_gear::*, traction::*,
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

/// Loose dry sand, fresh snow, tests and running gear, for the rules of soft ground.
const ON_SOFT_GROUND: &[(AnyId, f64)] = &[
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
    values(&[CRAWLER, changes].concat())
}

fn lacks(values: &Values, id: impl Into<AnyId>) -> Vec<Lack> {
    match values.of(id) {
        Value::Missing(lacks) => lacks.clone(),
        other => panic!("not missing but {other:?}"),
    }
}

fn words(values: &Values, id: impl Into<AnyId>) -> String {
    match values.of(id) {
        Value::Invalid(words) => words.clone(),
        other => panic!("not invalid but {other:?}"),
    }
}

fn cautions(values: &Values, id: impl Into<AnyId>) -> String {
    match values.of(id) {
        Value::Known(known) => known.cautions.join(" "),
        other => panic!("not known but {other:?}"),
    }
}
