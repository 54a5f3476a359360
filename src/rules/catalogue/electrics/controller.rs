//! Motor controller and regulator.

use super::super::common::{exceeds, over};
use crate::physics::drive::motor;
use crate::physics::electrics::controller;
use crate::quantity::catalogue::drive::{MOTOR_CURRENT, PEAK_MOTOR_CURRENT};
use crate::quantity::catalogue::electrics::*;
use crate::quantity::{
    Current, Frequency, Measure, Power, Resistance, Temperature, TemperatureCoefficient, Time,
    Voltage,
};
use crate::rules::{Caution, Rule};

const MOHAN: &str = "N. Mohan, T. Undeland, W. Robbins, Power Electronics (from memory)";
const ONE: &[&str] = &["One controller with one motor, at a steady push."];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = losses();
    rules.extend(regulator());
    rules
}

fn losses() -> Vec<Rule> {
    vec![
        Rule::new(
            CONTROLLER_HOT_RESISTANCE,
            (CONTROLLER_RESISTANCE, CHIP_TEMPERATURE, CHIP_COEFFICIENT),
            hot_path,
        )
        .title("Warm chips resist more")
        .formula(r"\q{controller-hot-resistance} = \q{controller-resistance} \left( 1 + \q{chip-coefficient} \left( \q{chip-temperature} - 298\,\mathrm{K} \right) \right)")
        .assumes(&["The whole path grows as the chips do."])
        .holds("Chips from 25 °C to their limit.")
        .source("Data sheets of field-effect power transistors; usual slope, common practice"),
        Rule::new(
            CONDUCTION_LOSS,
            (MOTOR_CURRENT, CONTROLLER_HOT_RESISTANCE, ON_SHARE, CONTROLLER_DROP),
            path_loss,
        )
        .title("The motor's current heats the path with its square")
        .formula(r"\q{conduction-loss} = \q{on-share} \left( \q{motor-current}^2 \cdot \q{controller-hot-resistance} + \q{motor-current} \cdot \q{controller-drop} \right)")
        .assumes(ONE)
        .holds("The motor's current, not the battery's: at part throttle it is larger.")
        .source(MOHAN),
        Rule::new(
            SWITCHING_LOSS,
            (BATTERY_VOLTAGE, MOTOR_CURRENT, SWITCHING_RISE_TIME, SWITCHING_FALL_TIME, SWITCHING_FREQUENCY),
            controller::switching_loss,
        )
        .title("Each switching pays with voltage and current at once")
        .formula(r"\q{switching-loss} = \dfrac{1}{2} \q{battery-voltage} \cdot \q{motor-current} \left( \q{switching-rise-time} + \q{switching-fall-time} \right) \q{switching-frequency}")
        .assumes(&["The motor's winding holds its current through the switching.", "One switch switches at a time; charge of diodes and gates left out."])
        .holds("Part throttle; at full throttle nothing switches in a brushed controller.")
        .source(MOHAN),
        Rule::new(
            RESISTIVE_SWITCHING_LOSS,
            (
                BATTERY_VOLTAGE,
                CONTROLLER_DROP,
                MOTOR_CURRENT,
                SWITCHING_RISE_TIME,
                SWITCHING_FALL_TIME,
                SWITCHING_FREQUENCY,
            ),
            crossing,
        )
        .title("With a lamp or heater voltage and current cross")
        .formula(r"\q{resistive-switching-loss} = \q{motor-current} \left( \dfrac{\q{battery-voltage}}{6} + \dfrac{\q{controller-drop}}{3} \right) \left( \q{switching-rise-time} + \q{switching-fall-time} \right) \q{switching-frequency}")
        .assumes(&["The load is a plain resistance of the same current: a lamp or a heater, never a motor."])
        .holds("A third of the loss with a motor: a comparison, so that one is not taken for the other.")
        .source("M. H. Rashid, Power Electronics, 4th ed., Example 4.2"),
        Rule::new(CONTROLLER_LOSS, (CONDUCTION_LOSS, SWITCHING_LOSS), sum)
            .title("Path and switching together")
            .formula(r"\q{controller-loss} = \q{conduction-loss} + \q{switching-loss}")
            .assumes(ONE)
            .holds("A regulator on the same board makes heat of its own.")
            .source(MOHAN),
        Rule::new(
            PEAK_CONTROLLER_LOSS,
            (PEAK_MOTOR_CURRENT, CONTROLLER_HOT_RESISTANCE),
            motor::winding_loss,
        )
        .title("The path at the peak")
        .formula(r"\q{peak-controller-loss} = \q{peak-motor-current}^2 \cdot \q{controller-hot-resistance}")
        .assumes(&["The motor is held still at full throttle."])
        .holds("For seconds; small chips get hot in less.")
        .source("OpenStax, College Physics 2e, section 20.4"),
    ]
}

fn regulator() -> Vec<Rule> {
    vec![
        Rule::new(
            REGULATOR_DEMAND,
            (SERVO_COUNT, SERVO_STALL_CURRENT, REGULATED_CURRENT),
            controller::regulator_demand,
        )
        .title("All servos stalled at once, and the rest")
        .formula(r"\q{regulator-demand} = \q{servo-count} \cdot \q{servo-stall-current} + \q{regulated-current}")
        .assumes(&["The worst moment: a jerk, a jam, all at once. Free servos draw a tenth."])
        .holds("Servos on one regulator; a winch needs its own supply.")
        .source("Kirchhoff's junction rule, OpenStax, College Physics 2e, section 21.3"),
        Rule::new(REGULATOR_MARGIN, (REGULATOR_LIMIT, REGULATOR_DEMAND), over::<Current>)
            .title("What it gives over the most asked")
            .formula(r"\q{regulator-margin} = \dfrac{\q{regulator-limit}}{\q{regulator-demand}}")
            .assumes(&["The limit holds for the voltage and warmth it works at."])
            .holds("Peaks of a second; steady heat lowers the limit.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[Caution {
                when: |values| exceeds(values, REGULATOR_DEMAND, REGULATOR_LIMIT),
                says: "Stalled servos can pull the regulator down, and the receiver resets: the machine may run on or stop answering. Fit a second supply.",
            }]),
        Rule::new(
            REGULATOR_LOSS,
            (BATTERY_VOLTAGE, REGULATOR_VOLTAGE, REGULATOR_DEMAND),
            controller::linear_regulator_loss,
        )
        .title("A linear regulator burns the difference")
        .formula(r"\q{regulator-loss} = \left( \q{battery-voltage} - \q{regulator-voltage} \right) \q{regulator-demand}")
        .assumes(&["A linear regulator; a switching one makes a tenth of its output, or so (common practice)."])
        .holds("The most asked of it, for a moment.")
        .source("Kirchhoff's loop rule, OpenStax, College Physics 2e, section 21.3"),
    ]
}

fn hot_path(
    cool: Resistance,
    temperature: Temperature,
    coefficient: TemperatureCoefficient,
) -> Resistance {
    motor::warm_resistance(cool, temperature, Temperature::from_si(298.15), coefficient)
}

fn path_loss(
    current: Current,
    resistance: Resistance,
    share: crate::quantity::Ratio,
    drop: Voltage,
) -> Power {
    controller::conduction_loss(current, resistance, share)
        + controller::fixed_voltage_loss(drop, current, share)
}

fn crossing(
    voltage: Voltage,
    drop: Voltage,
    current: Current,
    rise: Time,
    fall: Time,
    frequency: Frequency,
) -> Power {
    controller::crossing_loss(voltage, drop, current, rise + fall, frequency)
}

fn sum(one: Power, other: Power) -> Power {
    one + other
}
