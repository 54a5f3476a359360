//! What changes when every length becomes so many times as long.

use crate::physics::{pressure, whole};
use crate::quantity::catalogue::machine::{GRAVITY, MASS};
use crate::quantity::catalogue::running_gear::CONTACT_AREA;
use crate::quantity::catalogue::whole::*;
use crate::quantity::{Acceleration, Area, Mass, Pressure};
use crate::rules::Rule;

const GALILEO: &str = "Square and cube law, Galileo, Two New Sciences, second day";
const FROUDE: &str = "Equal Froude number, R. McN. Alexander, Animal Locomotion (from memory)";
const ALIKE: &[&str] =
    &["Every length is scaled alike, and materials, ground and gravity stay the same."];
const ANY: &str = "Any size of which the same things can be built.";

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = ratios();
    rules.extend(stress_torque_power());
    rules.extend(this_machine());
    rules
}

fn ratios() -> Vec<Rule> {
    let scale = |rule: Rule| rule.assumes(ALIKE).holds(ANY).source(GALILEO);
    vec![
        scale(Rule::new(SCALE_AREA_RATIO, (SCALE_FACTOR,), whole::square))
            .title("Areas go by the square")
            .formula(r"\q{scale-area-ratio} = \q{scale-factor}^2"),
        scale(Rule::new(SCALE_MASS_RATIO, (SCALE_FACTOR, SHEET_SHARE), whole::mass_ratio))
            .title("Solid mass goes by the cube, sheet by the square")
            .formula(r"\q{scale-mass-ratio} = \q{sheet-share} \cdot \q{scale-factor}^2 + (1 - \q{sheet-share}) \cdot \q{scale-factor}^3"),
        scale(Rule::new(SCALE_MASS_EXPONENT, (SCALE_FACTOR, SHEET_SHARE), whole::mass_exponent))
            .title("Between the square and the cube")
            .formula(r"\q{scale-mass-exponent} = \dfrac{\ln \left( \q{sheet-share} \cdot \q{scale-factor}^2 + (1 - \q{sheet-share}) \cdot \q{scale-factor}^3 \right)}{\ln \q{scale-factor}}"),
        scale(Rule::new(SCALE_PRESSURE_RATIO, (SCALE_MASS_RATIO, SCALE_AREA_RATIO), whole::over))
            .title("Mass over contact area")
            .formula(r"\q{scale-pressure-ratio} = \dfrac{\q{scale-mass-ratio}}{\q{scale-area-ratio}}"),
    ]
}

fn stress_torque_power() -> Vec<Rule> {
    vec![
        Rule::new(SCALE_STRESS_RATIO, (SCALE_FACTOR,), whole::same)
            .title("Weight by the cube, section by the square")
            .formula(r"\q{scale-stress-ratio} = \q{scale-factor}")
            .assumes(ALIKE)
            .holds("Solid parts that scale in every direction.")
            .source(GALILEO),
        Rule::new(SCALE_SHEET_STRESS_RATIO, (SCALE_FACTOR,), whole::square)
            .title("A wider sheet as thin as before")
            .formula(r"\q{scale-sheet-stress-ratio} = \q{scale-factor}^2")
            .assumes(&["The sheet grows in length and width, its thickness stays."])
            .holds("Flat panels bent by their own weight.")
            .source("Plate bent by its own weight, moment and section modulus; common practice, no published source"),
        Rule::new(SCALE_TORQUE_RATIO, (SCALE_MASS_RATIO, SCALE_FACTOR), whole::slope_torque)
            .title("Weight times the radius of the wheel")
            .formula(r"\q{scale-torque-ratio} = \q{scale-mass-ratio} \cdot \q{scale-factor}")
            .assumes(ALIKE)
            .holds("The same slope and the same ground.")
            .source(GALILEO),
        Rule::new(SCALE_SPEED_RATIO, (SCALE_FACTOR,), whole::root)
            .title("Swings and hops take longer by the root")
            .formula(r"\q{scale-speed-ratio} = \sqrt{\q{scale-factor}}")
            .assumes(ALIKE)
            .holds("Motion that gravity rules: pitching, hopping, falling; not drag or grip.")
            .source(FROUDE),
        Rule::new(SCALE_POWER_RATIO, (SCALE_MASS_RATIO, SCALE_SPEED_RATIO), whole::slope_power)
            .title("Weight times the speed that looks alike")
            .formula(r"\q{scale-power-ratio} = \q{scale-mass-ratio} \cdot \q{scale-speed-ratio}")
            .assumes(ALIKE)
            .holds("The same slope at the speed that looks alike; at the same speed it is the mass alone.")
            .source(FROUDE),
        Rule::new(SCALE_COOLING_RATIO, (SCALE_AREA_RATIO, SCALE_POWER_RATIO), whole::over)
            .title("Surface over power")
            .formula(r"\q{scale-cooling-ratio} = \dfrac{\q{scale-area-ratio}}{\q{scale-power-ratio}}")
            .assumes(&["Losses are the same part of the power, and the air cools each area alike."])
            .holds("A first guess; a fan, a fin or a better motor changes it.")
            .source(GALILEO),
    ]
}

fn this_machine() -> Vec<Rule> {
    let scaled = |rule: Rule| rule.assumes(ALIKE).holds(ANY).source(GALILEO);
    vec![
        scaled(Rule::new(SCALED_MASS, (MASS, SCALE_MASS_RATIO), whole::scaled_mass))
            .title("This machine's mass at the new scale")
            .formula(r"\q{scaled-mass} = \q{mass} \cdot \q{scale-mass-ratio}"),
        scaled(Rule::new(SCALED_CONTACT_AREA, (CONTACT_AREA, SCALE_AREA_RATIO), whole::scaled_area))
            .title("This machine's contact at the new scale")
            .formula(r"\q{scaled-contact-area} = \q{contact-area} \cdot \q{scale-area-ratio}"),
        scaled(Rule::new(SCALED_GROUND_PRESSURE, (SCALED_MASS, GRAVITY, SCALED_CONTACT_AREA), scaled_pressure))
            .title("Its weight over that contact, on level ground")
            .formula(r"\q{scaled-ground-pressure} = \dfrac{\q{scaled-mass} \cdot \q{gravity}}{\q{scaled-contact-area}}"),
    ]
}

fn scaled_pressure(mass: Mass, gravity: Acceleration, area: Area) -> Pressure {
    pressure::mean_pressure(mass * gravity, area)
}
