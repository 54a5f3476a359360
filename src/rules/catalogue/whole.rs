//! Range, the weight spiral and scaling.

mod scale;
mod spiral;
mod trip;

use crate::physics::whole;
use crate::quantity::catalogue::drive::DRIVE_EFFICIENCY;
use crate::quantity::catalogue::electrics::{AUXILIARY_CURRENT, USABLE_ENERGY, USABLE_SHARE};
use crate::quantity::catalogue::motion::{DRIVING_RESISTANCE, DRIVING_SPEED};
use crate::quantity::catalogue::whole::*;
use crate::rules::{Caution, Origin, Rule, Values};

const WORK: &str = "Work and power, OpenStax, University Physics Volume 1, chapter 7";
const STEADY: &[&str] = &["Speed, ground and resistance stay the same all the way."];

pub(super) const SHARE_ASSUMED: &[Caution] = &[Caution {
    when: |values| values.origin(USABLE_SHARE) == Some(Origin::Assumed),
    says: "The usable part of the battery is assumed: 80 %. A cold or old pack gives less.",
}];

pub(super) const COUNTED_TWICE: &[Caution] = &[Caution {
    when: counted_twice,
    says: "The current of everything else already lowers the efficiency from battery to ground, and the power at standstill counts it again: say one of the two, not both.",
}];

fn counted_twice(values: &Values) -> bool {
    values.origin(DRIVE_EFFICIENCY) == Some(Origin::Found)
        && values.si(AUXILIARY_CURRENT) > Some(0.0)
        && values.si(IDLE_POWER) > Some(0.0)
}

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = range();
    rules.extend(trip::rules());
    rules.extend(spiral::rules());
    rules.extend(scale::rules());
    rules
}

fn range() -> Vec<Rule> {
    vec![
        Rule::new(ENERGY_PER_DISTANCE, (DRIVING_RESISTANCE, DRIVE_EFFICIENCY, IDLE_POWER, DRIVING_SPEED), whole::energy_per_distance)
            .title("Resistance over efficiency, and what runs all the time")
            .formula(r"\q{energy-per-distance} = \dfrac{\max(0, \q{driving-resistance})}{\q{drive-efficiency}} + \dfrac{\q{idle-power}}{\q{driving-speed}}")
            .assumes(&["Speed, ground and resistance stay the same all the way.", "Downhill nothing is gained back: where the slope pushes, only the power at standstill counts."])
            .holds("Steady driving; starts, turns and soft spots take more.")
            .source(WORK)
            .cautions(COUNTED_TWICE),
        Rule::new(RANGE, (USABLE_ENERGY, ENERGY_PER_DISTANCE), whole::range)
            .title("Energy over energy for each distance")
            .formula(r"\q{range} = \dfrac{\q{usable-energy}}{\q{energy-per-distance}}")
            .assumes(STEADY)
            .holds("There and back on the same ground: half of it is as far as you may go.")
            .source(WORK)
            .cautions(SHARE_ASSUMED),
        Rule::new(RANGE_TIME, (RANGE, DRIVING_SPEED), whole::trip_time)
            .title("Distance over speed")
            .formula(r"\q{range-time} = \dfrac{\q{range}}{\q{driving-speed}}")
            .assumes(STEADY)
            .holds("Driving all the time; a machine that stands uses its idle power alone.")
            .source("OpenStax, University Physics Volume 1, section 3.1")
            .cautions(SHARE_ASSUMED),
    ]
}
