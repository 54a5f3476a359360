//! Battery, wires, controller and regulator.

mod battery;
mod controller;
mod load;
mod travel;
mod wire;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = battery::rules();
    rules.extend(load::rules());
    rules.extend(travel::rules());
    rules.extend(wire::rules());
    rules.extend(controller::rules());
    rules
}
