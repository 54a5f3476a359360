//! The closed box, the controller in it, and the heat sink it needs.

use super::super::common::{BURNS, HOT, exceeds, over};
use crate::physics::heat::{self, enclosure, lump, sink};
use crate::quantity::catalogue::drive::MOTOR_COUNT;
use crate::quantity::catalogue::electrics::CONTROLLER_LOSS;
use crate::quantity::catalogue::heat::*;
use crate::quantity::{Measure, Power, Ratio, Temperature, TemperatureStep};
use crate::rules::{Caution, Maybe, Rule, Values};

const OHM: &str = "The thermal form of Ohm's law; S. K. Som, Introduction to Heat Transfer";
const CHAIN: &str =
    "N. Mohan, T. Undeland, W. Robbins, Power Electronics, thermal chains (from memory)";
const BOX: &[&str] = &[
    "The air inside is equally warm everywhere; parts are warmer than it.",
    "Heat passed for each square metre counts both air films and radiation. Sun on the box adds 10 to 20 K (common practice).",
];
const CHIP: &[&str] = &["One path in a row from chip to air, steady load."];
const OPEN_AIR: Caution = Caution {
    when: |values| values.si(BOX_TEMPERATURE).is_none(),
    says: "The controller is taken to stand in open air: a closed box is warmer inside.",
};
const CLOSED: &[Caution] = &[OPEN_AIR];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = closed_box();
    rules.extend(chips());
    rules
}

fn closed_box() -> Vec<Rule> {
    vec![
        Rule::new(BOX_BODY_AREA, (BOX_LENGTH, BOX_WIDTH, BOX_HEIGHT), enclosure::body_area)
            .title("Bottom and four sides")
            .formula(r"\q{box-body-area} = \q{box-length} \cdot \q{box-width} + 2 \, \q{box-height} \left( \q{box-length} + \q{box-width} \right)")
            .assumes(&["The bottom sheds heat too: stand the box clear of others."])
            .holds("A box with flat sides.")
            .source("Geometry"),
        Rule::new(BOX_LID_AREA, (BOX_LENGTH, BOX_WIDTH), enclosure::lid_area)
            .title("Length times width")
            .formula(r"\q{box-lid-area} = \q{box-length} \cdot \q{box-width}")
            .assumes(&["The lid covers the whole top."])
            .holds("A flat lid; its fins are counted apart.")
            .source("Geometry"),
        Rule::new(
            BOX_RESISTANCE,
            (BOX_BODY_AREA, BOX_COEFFICIENT, BOX_LID_AREA, LID_COEFFICIENT, LID_FIN_FACTOR),
            enclosure::resistance,
        )
        .title("Body and lid pass heat side by side")
        .formula(r"\q{box-resistance} = \dfrac{1}{\q{box-coefficient} \cdot \q{box-body-area} + \q{lid-coefficient} \cdot \q{box-lid-area} \cdot \q{lid-fin-factor}}")
        .assumes(BOX)
        .holds("Still air, nothing stuck to the box; snow or mud on it changes it.")
        .source(OHM),
        Rule::new(BOX_HEAT, (CONTROLLER_LOSS, MOTOR_COUNT, BOX_OTHER_HEAT), made_inside)
            .title("The controllers and the rest")
            .formula(r"\q{box-heat} = \q{motor-count} \cdot \q{controller-loss} + \q{box-other-heat}")
            .assumes(&["One controller for each motor, all in this box; put battery heat in the rest if it is in there too."])
            .holds("Steady load: the mean, as the box is slow.")
            .source("Conservation of energy, OpenStax, University Physics Volume 1, section 8.3"),
        Rule::new(BOX_RISE, (BOX_HEAT, BOX_RESISTANCE), lump::final_rise)
            .title("Heat times resistance")
            .formula(r"\q{box-rise} = \q{box-heat} \cdot \q{box-resistance}")
            .assumes(BOX)
            .holds("After several time constants: a short test in the garden does not show it.")
            .source(OHM),
        Rule::new(BOX_TEMPERATURE, (COOLING_AIR, BOX_RISE), heat::temperature_above)
            .title("The rise on top of the air outside")
            .formula(r"\q{box-temperature} = \q{cooling-air} + \q{box-rise}")
            .assumes(BOX)
            .holds("After several time constants.")
            .source(OHM),
        Rule::new(BOX_TIME_CONSTANT, (BOX_RESISTANCE, BOX_HEAT_CAPACITY), lump::time_constant)
            .title("How fast the box follows")
            .formula(r"\q{box-time-constant} = \q{box-resistance} \cdot \q{box-heat-capacity}")
            .assumes(BOX)
            .holds("All that is inside warms as one.")
            .source("Lumped bodies, S. K. Som, Introduction to Heat Transfer"),
        Rule::new(BOX_RISE_AFTER, (BOX_RISE, WORK_TIME, BOX_TIME_CONSTANT), lump::rise_after)
            .title("63 % of the way in one time constant")
            .formula(r"\q{box-rise-after} = \q{box-rise} \left( 1 - e^{-\q{work-time} / \q{box-time-constant}} \right)")
            .assumes(BOX)
            .holds("From cold, steady load.")
            .source("Lumped bodies, S. K. Som, Introduction to Heat Transfer"),
    ]
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

fn made_inside(controller: Power, motors: Ratio, rest: Power) -> Power {
    controller * motors + rest
}

/// The air about the controller: the box's, or the open air.
fn about(air: Temperature, inside: Option<Temperature>) -> Temperature {
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
