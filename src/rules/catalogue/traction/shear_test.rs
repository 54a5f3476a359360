//! Cohesion and friction angle of the ground of the day, from two shear tests.

use crate::physics::traction::thrust;
use crate::physics::{Impossible, weight};
use crate::quantity::catalogue::ground::*;
use crate::quantity::catalogue::machine::GRAVITY;
use crate::quantity::{Acceleration, Angle, Area, Force, Mass, Pressure};
use crate::rules::{Caution, Rule};

use super::super::common::below;

const TESTS: &str = "Mohr–Coulomb through two points; ASTM D3080, direct shear test (from memory), takes three or more";
const FRESH: &[&str] = &[
    "The same plate on fresh ground both times, dragged level and steadily until the ground gives way, ribs full of it.",
    "Strength grows in a straight line with the load.",
];
const BETWEEN: &str = "Loads on both sides of the machine's own pressure; two tests show no scatter, so take three of each and their middle.";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            TESTED_FRICTION_ANGLE,
            (LIGHT_SHEAR_LOAD, LIGHT_SHEAR_PULL, HEAVY_SHEAR_LOAD, HEAVY_SHEAR_PULL, GRAVITY),
            friction_angle,
        )
        .title("What the added load adds to the pull")
        .formula(r"\q{tested-friction-angle} = \arctan \dfrac{\q{heavy-shear-pull} - \q{light-shear-pull}}{(\q{heavy-shear-load} - \q{light-shear-load}) \, \q{gravity}}")
        .assumes(FRESH)
        .holds(BETWEEN)
        .source(TESTS),
        Rule::new(
            TESTED_COHESION,
            (LIGHT_SHEAR_LOAD, LIGHT_SHEAR_PULL, TESTED_FRICTION_ANGLE, SHEAR_TEST_AREA, GRAVITY),
            cohesion,
        )
        .title("What is left with no load at all")
        .formula(r"\q{tested-cohesion} = \dfrac{\q{light-shear-pull} - \q{light-shear-load} \cdot \q{gravity} \cdot \tan \q{tested-friction-angle}}{\q{shear-test-area}}")
        .assumes(FRESH)
        .holds(BETWEEN)
        .source(TESTS)
        .cautions(&[Caution {
            when: |values| below(values, TESTED_COHESION, 0.0),
            says: "Below zero: the ground has no cohesion, or the tests scatter more than it is.",
        }]),
    ]
}

fn friction_angle(
    light: Mass,
    light_pull: Force,
    heavy: Mass,
    heavy_pull: Force,
    gravity: Acceleration,
) -> Result<Angle, Impossible> {
    let load = |mass| weight::weight(mass, gravity);
    thrust::angle_from_tests((load(light), light_pull), (load(heavy), heavy_pull))
}

fn cohesion(load: Mass, pull: Force, angle: Angle, area: Area, gravity: Acceleration) -> Pressure {
    thrust::cohesion_from_test(pull, weight::weight(load, gravity), angle, area)
}
