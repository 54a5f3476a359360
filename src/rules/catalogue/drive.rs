//! Motor, engine, gears and what they give at the ground.

mod engine;
mod gear;
mod motor;
mod plate;
mod supplied;
mod working_point;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = motor::rules();
    rules.extend(plate::rules());
    rules.extend(supplied::rules());
    rules.extend(gear::rules());
    rules.extend(working_point::rules());
    rules.extend(engine::rules());
    rules
}
