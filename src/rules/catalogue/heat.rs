//! Where losses go and how hot things get.

mod brake;
mod controller;
mod motor;
mod surface;
mod time;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = motor::rules();
    rules.extend(time::rules());
    rules.extend(controller::rules());
    rules.extend(surface::rules());
    rules.extend(brake::rules());
    rules
}
