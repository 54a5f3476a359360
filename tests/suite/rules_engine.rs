//! The rules from outside: the whole table, the engine, each topic, and the laws behind them.

mod cautions;
mod examples;
mod laws;
mod numbers;
mod strength_and_size;
mod table;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{ground::*, impact::*, machine::*, running_gear::*};
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
