//! What it takes to swing the machine round.

mod curve;
mod spin;
mod steer;
mod swing;

use crate::quantity::catalogue::ground::GRIP_COEFFICIENT;
use crate::quantity::catalogue::turning::SIDEWAYS_COEFFICIENT;
use crate::rules::{Caution, Rule, Values};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = curve::rules();
    rules.extend(swing::rules());
    rules.extend(steer::rules());
    rules.extend(spin::rules());
    rules
}

/// How hard the ground holds sideways: as measured, else like the grip.
pub(super) fn sideways(values: &Values) -> Option<f64> {
    values.si(SIDEWAYS_COEFFICIENT).or_else(|| values.si(GRIP_COEFFICIENT))
}

/// Said where the grip stands in for the sideways coefficient.
pub(super) const GRIP_FOR_SIDEWAYS: Caution = Caution {
    when: |values| {
        values.si(SIDEWAYS_COEFFICIENT).is_none() && values.si(GRIP_COEFFICIENT).is_some()
    },
    says: "The sideways coefficient is not known, so the grip stands in for it; a sideways pull test says more.",
};
