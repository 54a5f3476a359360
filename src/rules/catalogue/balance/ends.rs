//! Over backwards and over the nose.

use super::super::common::exceeds;
use crate::physics::balance;
use crate::quantity::catalogue::balance::*;
use crate::quantity::catalogue::machine::*;
use crate::quantity::catalogue::motion::*;
use crate::rules::{Caution, Rule};

const RIEL: &str = "J. S. Riel, Maximal Braking on a Standard Bicycle (2005)";
const MERIAM: &str = "Balance of moments about the rear support, J. L. Meriam and L. G. Kraige, Dynamics, section 6/2 (from memory)";
const WHITT: &str =
    "F. R. Whitt and D. G. Wilson, Bicycling Science, chapter on braking (from memory)";
const RIGID: &[&str] = &[
    "A rigid machine that does not slip first; springs and soft tyres tip it 10 to 15 % earlier.",
    "The motor's own spin-up and a rider who leans are left out.",
];
const STRAIGHT: &str =
    "Straight up, down or along the level; a bump, a rope or a sudden clutch tips it earlier.";

const STEEP: Caution = Caution {
    when: |values| values.si(SLOPE).is_some_and(|slope| slope.abs() > 15.0_f64.to_radians()),
    says: "On a slope tip-over is quick and can kill: nobody rides or stands below a machine near its limit, and local rules and the maker's slope limit go before this number.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(FRONT_LIFT_ACCELERATION, (GRAVITY, REAR_ARM, CG_HEIGHT, SLOPE), balance::lift_acceleration)
            .title("Long and low keeps the nose down")
            .formula(r"\q{front-lift-acceleration} = \q{gravity} \left( \dfrac{\q{rear-arm}}{\q{cg-height}} \cos \q{slope} - \sin \q{slope} \right)")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source(MERIAM)
            .cautions(&[STEEP]),
        Rule::new(FRONT_LIFT_LIMIT, (REAR_ARM, CG_HEIGHT), balance::lift_ratio)
            .title("Arm over height")
            .formula(r"\q{front-lift-limit} = \dfrac{\q{rear-arm}}{\q{cg-height}}")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source(MERIAM),
        Rule::new(FRONT_LIFT_SLOPE, (REAR_ARM, CG_HEIGHT), balance::tip_angle)
            .title("The slope on which the load passes the rear support")
            .formula(r"\q{front-lift-slope} = \arctan \dfrac{\q{rear-arm}}{\q{cg-height}}")
            .assumes(RIGID)
            .holds("Standing still; gaining speed tips it earlier.")
            .source(MERIAM),
        Rule::new(CLIMB_DEMAND, (WANTED_ACCELERATION, GRAVITY, SLOPE), balance::climb_demand)
            .title("Slope and acceleration pull the nose up alike")
            .formula(r"\q{climb-demand} = \max \left( 0, \; \dfrac{\q{wanted-acceleration}}{\q{gravity} \cdot \cos \q{slope}} + \tan \q{slope} \right)")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source(MERIAM),
        Rule::new(FRONT_LIFT_MARGIN, (FRONT_LIFT_LIMIT, CLIMB_DEMAND), balance::margin)
            .title("What the balance holds over what is asked")
            .formula(r"\q{front-lift-margin} = \dfrac{\q{front-lift-limit}}{\q{climb-demand}}")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[
                Caution {
                    when: |values| exceeds(values, CLIMB_DEMAND, FRONT_LIFT_LIMIT),
                    says: "The front lifts and the machine goes over backwards.",
                },
                STEEP,
            ]),
        Rule::new(NOSE_OVER_DECELERATION, (GRAVITY, FRONT_ARM, CG_HEIGHT, SLOPE), balance::nose_over_deceleration)
            .title("A load far back keeps the tail down")
            .formula(r"\q{nose-over-deceleration} = \q{gravity} \left( \dfrac{\q{front-arm}}{\q{cg-height}} \cos \q{slope} + \sin \q{slope} \right)")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source(RIEL)
            .cautions(&[STEEP]),
        Rule::new(NOSE_OVER_LIMIT, (FRONT_ARM, CG_HEIGHT), balance::lift_ratio)
            .title("Arm over height")
            .formula(r"\q{nose-over-limit} = \dfrac{\q{front-arm}}{\q{cg-height}}")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source(WHITT),
        Rule::new(NOSE_OVER_SLOPE, (FRONT_ARM, CG_HEIGHT), balance::tip_angle)
            .title("The slope on which the load passes the front support")
            .formula(r"\q{nose-over-slope} = \arctan \dfrac{\q{front-arm}}{\q{cg-height}}")
            .assumes(RIGID)
            .holds("Standing still, nose downhill; braking tips it earlier.")
            .source(RIEL),
        Rule::new(BRAKE_DEMAND, (BRAKING_DECELERATION, GRAVITY, SLOPE), balance::brake_demand)
            .title("Braking and a downhill lift the tail alike")
            .formula(r"\q{brake-demand} = \max \left( 0, \; \dfrac{\q{braking-deceleration}}{\q{gravity} \cdot \cos \q{slope}} - \tan \q{slope} \right)")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source(RIEL),
        Rule::new(NOSE_OVER_MARGIN, (NOSE_OVER_LIMIT, BRAKE_DEMAND), balance::margin)
            .title("What the balance holds over what is asked")
            .formula(r"\q{nose-over-margin} = \dfrac{\q{nose-over-limit}}{\q{brake-demand}}")
            .assumes(RIGID)
            .holds(STRAIGHT)
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[
                Caution {
                    when: |values| exceeds(values, BRAKE_DEMAND, NOSE_OVER_LIMIT),
                    says: "The rear lifts in full braking and the machine goes over its nose.",
                },
                STEEP,
            ]),
    ]
}
