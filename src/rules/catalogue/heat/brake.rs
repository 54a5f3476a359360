//! Brakes: the energy of a stop, and how hot it makes what takes it.

use super::super::common::{BURNS, HOT, always};
use crate::physics::heat::{self, brake};
use crate::quantity::catalogue::heat::*;
use crate::quantity::catalogue::machine::{GRAVITY, MASS};
use crate::quantity::catalogue::motion::ROTATING_MASS;
use crate::quantity::{Acceleration, Energy, Length, Mass, Measure, Speed};
use crate::rules::{Caution, Maybe, Rule, Values};

const OPENSTAX: &str = "OpenStax, College Physics 2e, section 14.2";
const KEEPS: &[&str] = &[
    "The brake keeps all its share: a stop is too short for cooling. On a long descent cooling helps.",
];
const QUALIFIED: Caution = Caution {
    when: always,
    says: "Brakes that people rely on follow the local rules and the maker's manual, and are fitted and checked by qualified people.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            BRAKE_ENERGY,
            (MASS, Maybe(ROTATING_MASS), BRAKING_SPEED, GRAVITY, BRAKING_DESCENT),
            energy,
        )
        .title("Speed and height both end in the brakes")
        .formula(r"\q{brake-energy} = \dfrac{1}{2} \left( \q{mass} + \q{rotating-mass} \right) \q{braking-speed}^2 + \q{mass} \cdot \q{gravity} \cdot \q{braking-descent}")
        .assumes(&["Drag, rolling and the motor take nothing off."])
        .holds("One stop, or one way down.")
        .source("OpenStax, College Physics 2e, sections 7.2 and 14.2")
        .cautions(&[Caution {
            when: |values| values.si(ROTATING_MASS).is_none_or(|mass| mass == 0.0),
            says: "Rotating parts are left out: a rotor geared up for speed can add half as much again.",
        }]),
        Rule::new(
            BRAKE_RISE,
            (BRAKE_ENERGY, BRAKE_SHARE, BRAKE_MASS, BRAKE_SPECIFIC_HEAT),
            brake::rise,
        )
        .title("The brake's mass takes the heat")
        .formula(r"\q{brake-rise} = \dfrac{\q{brake-share} \cdot \q{brake-energy}}{\q{brake-mass} \cdot \q{brake-specific-heat}}")
        .assumes(KEEPS)
        .holds("One stop; the next starts from there. The rubbing face is hotter than this mean.")
        .source(OPENSTAX)
        .cautions(&[QUALIFIED]),
        Rule::new(BRAKE_TEMPERATURE, (COOLING_AIR, BRAKE_RISE), heat::temperature_above)
            .title("The rise on top of the air")
            .formula(r"\q{brake-temperature} = \q{cooling-air} + \q{brake-rise}")
            .assumes(KEEPS)
            .holds("One stop from cold.")
            .source(OPENSTAX)
            .cautions(&[QUALIFIED, Caution { when: burns, says: HOT }]),
        Rule::new(
            CLUTCH_HEAT,
            (CLUTCH_DRIVING_INERTIA, CLUTCH_DRIVEN_INERTIA, CLUTCH_DRIVING_SPEED, CLUTCH_DRIVEN_SPEED),
            brake::clutch_heat,
        )
        .title("Torque and time of the slip drop out")
        .formula(r"\q{clutch-heat} = \dfrac{1}{2} \cdot \dfrac{\q{clutch-driving-inertia} \cdot \q{clutch-driven-inertia}}{\q{clutch-driving-inertia} + \q{clutch-driven-inertia}} \left( \q{clutch-driving-speed} - \q{clutch-driven-speed} \right)^2")
        .assumes(&["Neither motor nor load pushes meanwhile; both sides end up at one speed."])
        .holds("One start. An engine that pulls on, or a hill, adds to it.")
        .source("R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, section 16-8 (from memory)"),
    ]
}

fn energy(
    mass: Mass,
    rotating: Option<Mass>,
    speed: Speed,
    gravity: Acceleration,
    descent: Length,
) -> Energy {
    let level = Length::from_si(0.0);
    let turning = rotating.map(|mass| brake::energy(mass, speed, gravity, level));
    brake::energy(mass, speed, gravity, descent) + turning.unwrap_or_else(|| Energy::from_si(0.0))
}

fn burns(values: &Values) -> bool {
    let sum = values.si(COOLING_AIR).zip(values.si(BRAKE_RISE)).map(|(air, rise)| air + rise);
    sum >= Some(BURNS)
}
