//! How soft ground carries, drags and grips.

use crate::physics::motion;
use crate::quantity::catalogue::ground::{GRIP_COEFFICIENT, ROLLING_COEFFICIENT};
use crate::quantity::catalogue::machine::GROUND_FORCE;
use crate::quantity::catalogue::traction::*;
use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(ROLLING_RESISTANCE, (ROLLING_COEFFICIENT, GROUND_FORCE), motion::rolling_resistance)
            .title("What the ground holds back goes with the load")
            .formula(r"\q{rolling-resistance} = \q{rolling-coefficient} \cdot \q{ground-force}")
            .assumes(&["The coefficient was measured on this ground, near this load and this speed."])
            .holds("Firm ground, or soft ground the machine does not dig into.")
            .source("T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory)"),
        Rule::new(GRIP_PUSH, (GRIP_COEFFICIENT, DRIVEN_SHARE, GROUND_FORCE), motion::grip_force)
            .title("Grip times the load on what drives")
            .formula(r"\q{grip-push} = \q{grip-coefficient} \cdot \q{driven-share} \cdot \q{ground-force}")
            .assumes(&["The load stays where it is: speeding up moves some of it to the rear."])
            .holds("The ground and the day of the pull test; soft ground gives less once it is dug up.")
            .source("OpenStax, College Physics 2e, section 5.1"),
    ]
}
