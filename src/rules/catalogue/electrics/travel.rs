//! Watts and amperes from the battery at the driving speed.

use super::super::whole::COUNTED_TWICE;
use crate::physics::Impossible;
use crate::physics::drive::motor;
use crate::physics::electrics::battery;
use crate::quantity::catalogue::drive::DRIVE_EFFICIENCY;
use crate::quantity::catalogue::electrics::*;
use crate::quantity::catalogue::motion::DRIVING_POWER;
use crate::quantity::catalogue::whole::IDLE_POWER;
use crate::quantity::{Current, Power, Ratio, Resistance, Voltage};
use crate::rules::{Caution, Maybe, Rule, Values};

const STEADY: &str =
    "A steady speed and ground: a mean, with starts, turns and soft spots above it.";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(POWER_AT_SPEED, (DRIVING_POWER, DRIVE_EFFICIENCY, IDLE_POWER), drawn)
            .title("Power at the ground over efficiency, and what runs all the time")
            .formula(r"\q{power-at-speed} = \dfrac{\q{driving-power}}{\q{drive-efficiency}} + \q{idle-power}")
            .assumes(&[STEADY, "The efficiency holds at that push and speed."])
            .holds("Straight driving without slip; downhill nothing is gained back.")
            .source("Power and efficiency, OpenStax, College Physics 2e, sections 7.6 and 7.7")
            .cautions(COUNTED_TWICE),
        Rule::new(
            CURRENT_AT_SPEED,
            (POWER_AT_SPEED, BATTERY_VOLTAGE, Maybe(BATTERY_RESISTANCE)),
            current,
        )
        .title("The current whose volts, sag counted, make that power")
        .formula(r"\q{current-at-speed} = \dfrac{2 \, \q{power-at-speed}}{\q{battery-voltage} + \sqrt{\q{battery-voltage}^2 - 4 \, \q{battery-resistance} \cdot \q{power-at-speed}}}")
        .assumes(&[STEADY])
        .holds("A warm pack; of the two currents that fit, the smaller.")
        .source("Power balance at the terminals, OpenStax, College Physics 2e, section 21.2")
        .cautions(&[
            Caution {
                when: |values| values.si(BATTERY_RESISTANCE).is_none(),
                says: "The battery's resistance is not known, so its sag is left out: the true current is a little more.",
            },
            Caution {
                when: over_label,
                says: "The pack's label allows less than this for long: it overheats, and lithium cells can burn.",
            },
        ]),
    ]
}

fn drawn(ground: Power, efficiency: Ratio, idle: Power) -> Power {
    motor::input_from_efficiency(ground, efficiency) + idle
}

fn over_label(values: &Values) -> bool {
    let (power, voltage) = (values.get(POWER_AT_SPEED), values.get(BATTERY_VOLTAGE));
    let asked = power
        .zip(voltage)
        .and_then(|(power, voltage)| current(power, voltage, values.get(BATTERY_RESISTANCE)).ok());
    asked.zip(values.get(LABEL_CURRENT)).is_some_and(|(asked, label)| asked > label)
}

fn current(
    power: Power,
    voltage: Voltage,
    resistance: Option<Resistance>,
) -> Result<Current, Impossible> {
    battery::current_for_power(voltage, resistance.unwrap_or_default(), power)
}
