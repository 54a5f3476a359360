//! How much a bounce gives back, and coming down off a ledge.

use super::super::common::exceeds;
use super::NO_AIR;
use crate::physics::impact;
use crate::quantity::catalogue::impact::*;
use crate::quantity::catalogue::machine::GRAVITY;
use crate::quantity::catalogue::motion::DRIVING_SPEED;
use crate::rules::{Caution, Rule};

const DEFINED: &str = "Coefficient of restitution, OpenStax, College Physics 2e, section 8.5";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            BOUNCE_TEST_RESTITUTION,
            (BOUNCE_TEST_DROP, BOUNCE_TEST_REBOUND),
            impact::restitution_from_heights,
        )
        .title("The root of the height that comes back")
        .formula(r"\q{bounce-test-restitution} = \sqrt{\dfrac{\q{bounce-test-rebound}}{\q{bounce-test-drop}}}")
        .assumes(NO_AIR)
        .holds("A straight drop without spin, as hard as the hit it stands for; harder hits bounce less.")
        .source("The rebound test of the International Tennis Federation's ball approval")
        .cautions(&[Caution {
            when: |values| exceeds(values, BOUNCE_TEST_REBOUND, BOUNCE_TEST_DROP),
            says: "It cannot come back higher than it was dropped from: look at both heights again.",
        }]),
        Rule::new(BOUNCE_ENERGY_KEPT, (RESTITUTION,), impact::energy_kept)
            .title("Energy goes with the square of the speed")
            .formula(r"\q{bounce-energy-kept} = \q{restitution}^2")
            .assumes(&["The coefficient was measured near this speed; it falls as hits get harder."])
            .holds("A straight hit against something that does not move.")
            .source(DEFINED),
        Rule::new(LEDGE_SPEED, (DRIVING_SPEED, DROP_HEIGHT, GRAVITY), impact::ledge_speed)
            .title("The fall adds to the speed it had")
            .formula(r"\q{ledge-speed} = \sqrt{\q{driving-speed}^2 + 2 \, \q{gravity} \cdot \q{drop-height}}")
            .assumes(NO_AIR)
            .holds("An edge that the machine leaves level; it comes down at a slant and may tip over its nose first.")
            .source("Conservation of energy, OpenStax, College Physics 2e, section 7.3")
            .cautions(&[Caution {
                when: |values| values.si(DROP_HEIGHT) > Some(0.3),
                says: "Keep everybody clear of the landing, and try a drop with an empty machine and a low edge first.",
            }]),
    ]
}
