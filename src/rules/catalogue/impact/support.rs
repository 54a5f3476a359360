//! Drops onto something springy, and what spring or bumper a stop needs.

use super::{PULSE, SHAPE_ASSUMED};
use crate::physics::impact;
use crate::quantity::catalogue::impact::*;
use crate::quantity::catalogue::machine::{MASS, WEIGHT};
use crate::rules::Rule;

const HOOKE: &str = "Hooke's law, OpenStax, University Physics Volume 1, section 5.6";
const FACTOR: &str = "Gere and Timoshenko, Mechanics of Materials, section 2.8, impact factor";
const BALANCE: &str = "Energy balance, OpenStax, College Physics 2e, section 7.4";
const SPRINGY: &[&str] = &[
    "The drop is straight down, the support springs back straight and weighs nothing.",
    "Nothing is lost on the way, so the peak is an upper bound.",
];
const DROP: &str = "Supports that do not reach the end of their travel.";
const SPRING: &[&str] =
    &["One straight spring, slack at first touch, takes all the energy and loses none."];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = drops();
    rules.extend(needed());
    rules
}

fn drops() -> Vec<Rule> {
    let drop = |rule: Rule| rule.assumes(SPRINGY).holds(DROP);
    vec![
        drop(Rule::new(SUPPORT_SAG, (WEIGHT, SUPPORT_RATE), impact::support_sag))
            .title("How far it gives under the weight at rest")
            .formula(r"\q{support-sag} = \dfrac{\q{weight}}{\q{support-rate}}")
            .source(HOOKE),
        drop(Rule::new(DROP_FACTOR, (DROP_HEIGHT, SUPPORT_SAG), impact::drop_factor))
            .title("A load let go at once doubles, a drop does more")
            .formula(
                r"\q{drop-factor} = 1 + \sqrt{1 + \dfrac{2 \, \q{drop-height}}{\q{support-sag}}}",
            )
            .source(FACTOR),
        drop(Rule::new(SUPPORT_PEAK_FORCE, (DROP_FACTOR, WEIGHT), impact::times_force))
            .title("That many times the weight")
            .formula(r"\q{support-peak-force} = \q{drop-factor} \cdot \q{weight}")
            .source(FACTOR),
        drop(Rule::new(SUPPORT_PEAK_SAG, (DROP_FACTOR, SUPPORT_SAG), impact::times_length))
            .title("That many times the sag at rest")
            .formula(r"\q{support-peak-sag} = \q{drop-factor} \cdot \q{support-sag}")
            .source(FACTOR),
        drop(Rule::new(SUPPORT_PEAK_G, (DROP_FACTOR,), impact::dropped_peak))
            .title("The force less the weight, over the weight")
            .formula(r"\q{support-peak-g} = \q{drop-factor} - 1")
            .source("Newton's second law, OpenStax, University Physics Volume 1, section 5.3"),
    ]
}

fn needed() -> Vec<Rule> {
    vec![
        Rule::new(BUMPER_TRAVEL, (IMPACT_SPEED, PULSE_FACTOR, SHOCK_LIMIT), impact::bumper_travel)
            .title("The distance that keeps the peak at the limit")
            .formula(r"\q{bumper-travel} = \dfrac{\q{pulse-factor} \cdot \q{impact-speed}^2}{2 \, \q{shock-limit} \cdot 9.80665 \, \text{m/s}^2}")
            .assumes(PULSE)
            .holds("Stops that do not bottom out; the bumper itself is thicker than its travel.")
            .source("OpenStax, University Physics Volume 1, section 3.4")
            .cautions(SHAPE_ASSUMED),
        Rule::new(SPRING_TRAVEL, (KINETIC_ENERGY, MASS, SHOCK_LIMIT, WEIGHT_SHARE), impact::spring_travel)
            .title("The travel of the softest spring that keeps to the limit")
            .formula(r"\q{spring-travel} = \dfrac{2 \, \q{kinetic-energy}}{\q{mass} \cdot \q{shock-limit} \cdot 9.80665 \, \text{m/s}^2 - \q{weight-share}}")
            .assumes(SPRING)
            .holds("Springs and rubber within their straight range.")
            .source(BALANCE),
        Rule::new(SPRING_FOR_LIMIT, (MASS, SHOCK_LIMIT, WEIGHT_SHARE, SPRING_TRAVEL), impact::spring_for_limit)
            .title("Force at the limit over that travel")
            .formula(r"\q{spring-for-limit} = \dfrac{\q{mass} \cdot \q{shock-limit} \cdot 9.80665 \, \text{m/s}^2 + \q{weight-share}}{\q{spring-travel}}")
            .assumes(SPRING)
            .holds("One spring; several side by side share this stiffness.")
            .source(BALANCE),
    ]
}
