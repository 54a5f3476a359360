//! The weight spiral: mass asks for power, power for battery, battery is mass.

use super::SHARE_ASSUMED;
use crate::physics::whole;
use crate::quantity::catalogue::electrics::USABLE_SHARE;
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::catalogue::motion::{DRIVING_RESISTANCE, DRIVING_SPEED};
use crate::quantity::catalogue::whole::*;
use crate::rules::{Caution, Maybe, Rule};

const SIZING: &str = "Sizing equation, D. P. Raymer, Aircraft Design: A Conceptual Approach, chapter 3 (from memory)";
const IN_STEP: &[&str] = &[
    "Resistance and idle power grow in step with the mass, from this build's own.",
    "The kind of battery, drive and frame stays the same.",
];
const ALL_THAT_GROWS: &[&str] = &[
    "Resistance and idle power grow in step with the mass, from this build's own.",
    "A drive whose power for each mass is not said belongs to the mass that stays.",
];
const NEAR: &str =
    "Machines not far from this build's mass; on soft ground resistance grows faster.";

const FRAME_LEFT_OUT: &[Caution] = &[Caution {
    when: |values| values.si(FRAME_SHARE) == Some(0.0) || values.si(DRIVE_MASS_SHARE).is_none(),
    says: "Frame or drive is taken not to grow with the machine, so the true growth is more.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let spiral = |rule: Rule| rule.assumes(IN_STEP).holds(NEAR).source(SIZING);
    vec![
        spiral(Rule::new(
            BATTERY_MASS_SHARE,
            (ENERGY_PER_DISTANCE, MASS, WANTED_RANGE, USABLE_SHARE, BATTERY_SPECIFIC_ENERGY),
            whole::battery_share,
        ))
        .title("Battery that each kilogram asks for")
        .formula(r"\q{battery-mass-share} = \dfrac{\q{energy-per-distance} \cdot \q{wanted-range}}{\q{mass} \cdot \q{usable-share} \cdot \q{battery-specific-energy}}")
        .cautions(SHARE_ASSUMED),
        spiral(Rule::new(
            DRIVE_MASS_SHARE,
            (DRIVING_RESISTANCE, DRIVING_SPEED, POWER_RESERVE, MASS, DRIVE_SPECIFIC_POWER),
            whole::drive_share,
        ))
        .title("Drive that each kilogram asks for")
        .formula(r"\q{drive-mass-share} = \dfrac{\q{power-reserve} \cdot \q{driving-resistance} \cdot \q{driving-speed}}{\q{mass} \cdot \q{drive-specific-power}}"),
        spiral(Rule::new(
            GROWTH_SHARE,
            (BATTERY_MASS_SHARE, Maybe(DRIVE_MASS_SHARE), FRAME_SHARE),
            whole::growth_share,
        ))
        .title("All that each kilogram asks for")
        .formula(r"\q{growth-share} = \q{battery-mass-share} + \q{drive-mass-share} + \q{frame-share}")
        .assumes(ALL_THAT_GROWS)
        .cautions(FRAME_LEFT_OUT),
        spiral(Rule::new(GROWTH_FACTOR, (GROWTH_SHARE,), whole::growth_factor))
            .title("One kilogram of load, in the end")
            .formula(r"\q{growth-factor} = \dfrac{1}{1 - \q{growth-share}}")
            .cautions(FRAME_LEFT_OUT),
        spiral(Rule::new(CLOSED_MASS, (BARE_MASS, GROWTH_FACTOR), whole::closed_mass))
            .title("The mass that carries its own battery")
            .formula(r"\q{closed-mass} = \q{bare-mass} \cdot \q{growth-factor}")
            .cautions(FRAME_LEFT_OUT),
        spiral(Rule::new(CLOSED_BATTERY_MASS, (CLOSED_MASS, BATTERY_MASS_SHARE), whole::closed_battery))
            .title("The battery in it")
            .formula(r"\q{closed-battery-mass} = \q{closed-mass} \cdot \q{battery-mass-share}"),
        spiral(Rule::new(
            LARGEST_RANGE,
            (WANTED_RANGE, BATTERY_MASS_SHARE, GROWTH_SHARE),
            whole::largest_range,
        ))
        .title("Where the battery would have to be endless")
        .formula(r"\q{largest-range} = \q{wanted-range} \cdot \dfrac{1 - \q{growth-share} + \q{battery-mass-share}}{\q{battery-mass-share}}"),
    ]
}
