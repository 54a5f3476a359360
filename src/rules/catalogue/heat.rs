//! Where losses go and how hot things get.

mod air;
mod brake;
mod controller;
mod enclosure;
mod motor;
mod surface;
mod time;
mod touch;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = motor::rules();
    rules.extend(time::rules());
    rules.extend(enclosure::rules());
    rules.extend(controller::rules());
    rules.extend(air::rules());
    rules.extend(surface::rules());
    rules.extend(touch::rules());
    rules.extend(brake::rules());
    rules
}
