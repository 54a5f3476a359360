//! The chips of the controller, and the heat sink they need.

use super::super::common::{BURNS, HOT, exceeds, over};
use crate::physics::Impossible;
use crate::physics::heat::{self, lump, sink};
use crate::quantity::catalogue::electrics::CONTROLLER_LOSS;
use crate::quantity::catalogue::heat::*;
use crate::quantity::{Measure, Power, Temperature, TemperatureStep, ThermalResistance};
use crate::rules::{Caution, Maybe, Rule, Values};

const CHAIN: &str =
    "N. Mohan, T. Undeland, W. Robbins, Power Electronics, thermal chains (from memory)";
const CHIP: &[&str] = &["One path in a row from chip to air, steady load."];
const OPEN_AIR: Caution = Caution {
    when: |values| values.si(BOX_TEMPERATURE).is_none(),
    says: "The controller is taken to stand in open air: a closed box is warmer inside.",
};
const CLOSED: &[Caution] = &[OPEN_AIR];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = chips();
    rules.extend(ratings());
    rules
}

fn chips() -> Vec<Rule> {
    vec![
        Rule::new(CHIP_TO_AIR, (JUNCTION_TO_CASE, CASE_TO_SINK, SINK_TO_AIR), sink::chain)
            .title("Chip to case to sink to air")
            .formula(r"\q{chip-to-air} = \q{junction-to-case} + \q{case-to-sink} + \q{sink-to-air}")
            .assumes(CHIP)
            .holds("The air it was measured in.")
            .source(CHAIN),
        Rule::new(CHIP_RISE, (CONTROLLER_LOSS, CHIP_TO_AIR), lump::final_rise)
            .title("Loss times resistance")
            .formula(r"\q{chip-rise} = \q{controller-loss} \cdot \q{chip-to-air}")
            .assumes(CHIP)
            .holds("Steady load; peaks of seconds heat the chip alone.")
            .source(CHAIN),
        Rule::new(
            CONTROLLER_TEMPERATURE,
            (CHIP_RISE, COOLING_AIR, Maybe(BOX_TEMPERATURE)),
            chip_temperature,
        )
        .title("The rise on top of the air about the controller")
        .formula(r"\q{controller-temperature} = \q{chip-rise} + \max\left( \q{cooling-air},\ \q{box-temperature} \right)")
        .assumes(&["The heat sink stands in the air of the box, if there is a box."])
        .holds("Steady load.")
        .source(CHAIN)
        .cautions(&[
            OPEN_AIR,
            Caution { when: controller_burns, says: HOT },
        ]),
        Rule::new(
            CHIP_ALLOWED_RISE,
            (CHIP_LIMIT, COOLING_AIR, Maybe(BOX_TEMPERATURE)),
            chip_allowed,
        )
        .title("From the air about the controller to the limit")
        .formula(r"\q{chip-allowed-rise} = \q{chip-limit} - \max\left( \q{cooling-air},\ \q{box-temperature} \right)")
        .assumes(&["The heat sink stands in the air of the box, if there is a box."])
        .holds("The hottest day it should work on.")
        .source("The definition of a temperature rise")
        .cautions(CLOSED),
        Rule::new(
            SINK_NEEDED,
            (CHIP_ALLOWED_RISE, CONTROLLER_LOSS, JUNCTION_TO_CASE, CASE_TO_SINK),
            sink::sink_needed,
        )
        .title("What is left for the heat sink")
        .formula(r"\q{sink-needed} = \dfrac{\q{chip-allowed-rise}}{\q{controller-loss}} - \q{junction-to-case} - \q{case-to-sink}")
        .assumes(CHIP)
        .holds("A smaller figure is a larger heat sink.")
        .source(CHAIN)
        .cautions(CLOSED),
        Rule::new(CONTROLLER_MARGIN, (CHIP_ALLOWED_RISE, CHIP_RISE), over::<TemperatureStep>)
            .title("The rise allowed over the rise at this load")
            .formula(r"\q{controller-margin} = \dfrac{\q{chip-allowed-rise}}{\q{chip-rise}}")
            .assumes(CHIP)
            .holds("Steady load.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[Caution {
                when: |values| exceeds(values, CHIP_RISE, CHIP_ALLOWED_RISE),
                says: "The chips end up past their limit: less current, a better path for the heat, or a cooler box.",
            }]),
    ]
}

fn ratings() -> Vec<Rule> {
    vec![
        Rule::new(CONTROLLER_LOSS_LIMIT, (CHIP_ALLOWED_RISE, CHIP_TO_AIR), loss_limit)
            .title("The rise allowed over the whole path")
            .formula(r"\q{controller-loss-limit} = \dfrac{\q{chip-allowed-rise}}{\q{chip-to-air}}")
            .assumes(CHIP)
            .holds("Steady load, with the heat sink as it stands.")
            .source(CHAIN)
            .cautions(CLOSED),
        Rule::new(RATED_JUNCTION_TO_CASE, (CHIP_RATED_END, CHIP_RATED_POWER), from_rating)
            .title("The slope of the data sheet's derating line")
            .formula(r"\q{rated-junction-to-case} = \dfrac{\q{chip-rated-end} - 298\,\mathrm{K}}{\q{chip-rated-power}}")
            .assumes(&["The rating is for a case held at 25 °C and falls in a straight line to nothing, as data sheets state it."])
            .holds("Power transistors and regulators; no real heat sink holds a case at 25 °C.")
            .source("Data sheets of power transistors; worked examples of textbooks on electronic circuits"),
    ]
}

fn loss_limit(allowed: TemperatureStep, path: ThermalResistance) -> Result<Power, Impossible> {
    if allowed.si() <= 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    Ok(lump::heat_through(allowed, path))
}

fn from_rating(end: Temperature, rated: Power) -> ThermalResistance {
    sink::from_derating(heat::rise_above(end, Temperature::from_si(298.15)), rated)
}

/// The air about the controller: the box's, or the open air.
pub(super) fn about(air: Temperature, inside: Option<Temperature>) -> Temperature {
    inside.filter(|inside| *inside > air).unwrap_or(air)
}

fn chip_temperature(
    rise: TemperatureStep,
    air: Temperature,
    inside: Option<Temperature>,
) -> Temperature {
    heat::temperature_above(about(air, inside), rise)
}

fn chip_allowed(
    limit: Temperature,
    air: Temperature,
    inside: Option<Temperature>,
) -> TemperatureStep {
    heat::rise_above(limit, about(air, inside))
}

fn controller_burns(values: &Values) -> bool {
    let (Some(rise), Some(air)) = (values.get(CHIP_RISE), values.get(COOLING_AIR)) else {
        return false;
    };
    chip_temperature(rise, air, values.get(BOX_TEMPERATURE)).si() >= BURNS
}
