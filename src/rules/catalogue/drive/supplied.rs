//! What the motors give on this battery and through these gears.

use super::super::common::MOMENT;
use super::motor::MAKER;
use crate::physics::Impossible;
use crate::physics::drive::{gear, motor, supplied};
use crate::quantity::catalogue::drive::*;
use crate::quantity::catalogue::electrics::{CONTROLLER_HOT_RESISTANCE, SUPPLY_RESISTANCE};
use crate::quantity::catalogue::heat::CONTINUOUS_CURRENT;
use crate::quantity::catalogue::motion::{DRIVE_RADIUS, DRIVING_SPEED};
use crate::quantity::{
    Current, Force, Length, Power, Ratio, Resistance, Speed, SpeedConstant, TorqueConstant, Voltage,
};
use crate::rules::Rule;

const LINE: &[&str] = &[
    "Full throttle; speed falls straight with torque; friction and iron loss are one steady current.",
    "Pack warm, all motors drawing alike.",
];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            MOTOR_LOOP_RESISTANCE,
            (MOTOR_RESISTANCE, CONTROLLER_HOT_RESISTANCE, MOTOR_COUNT, SUPPLY_RESISTANCE),
            supplied::loop_resistance,
        )
        .title("Winding, controller, and a supply that all share")
        .formula(r"\q{motor-loop-resistance} = \q{motor-resistance} + \q{controller-hot-resistance} + \q{motor-count} \cdot \q{supply-resistance}")
        .assumes(&["All motors draw alike, so the supply sags for each as if it were that many times itself."])
        .holds("Full throttle; switched down, battery and motor carry different currents.")
        .source("Kirchhoff's loop rule, OpenStax, College Physics 2e, section 21.3"),
        Rule::new(
            SUPPLIED_MOTOR_POWER,
            (MOTOR_SUPPLY_VOLTAGE, MOTOR_LOOP_RESISTANCE, NO_LOAD_CURRENT, PEAK_MOTOR_CURRENT),
            supplied::greatest_power,
        )
        .title("Half the line, or the current limit")
        .formula(r"\q{supplied-motor-power} = \left( I - \q{no-load-current} \right) \left( \q{motor-supply-voltage} - I \cdot \q{motor-loop-resistance} \right), \; I = \min \left( \dfrac{1}{2} \left( \dfrac{\q{motor-supply-voltage}}{\q{motor-loop-resistance}} + \q{no-load-current} \right), \; \q{peak-motor-current} \right)")
        .assumes(LINE)
        .holds("For seconds: at half the line as much again is heat; what it gives for long is on its plate.")
        .source("The first-order model, maxon motor, catalogue chapter Key information")
        .cautions(MOMENT),
        Rule::new(
            LASTING_POWER,
            (
                MOTOR_SUPPLY_VOLTAGE,
                MOTOR_LOOP_RESISTANCE,
                NO_LOAD_CURRENT,
                PEAK_MOTOR_CURRENT,
                CONTINUOUS_CURRENT,
                MOTOR_COUNT,
                GEAR_EFFICIENCY,
            ),
            lasting_power,
        )
        .title("The same line, at the current the winding stands")
        .formula(r"\q{lasting-power} = \q{motor-count} \cdot \q{gear-efficiency} \left( I - \q{no-load-current} \right) \left( \q{motor-supply-voltage} - I \cdot \q{motor-loop-resistance} \right), \; I = \min \left( \dfrac{1}{2} \left( \dfrac{\q{motor-supply-voltage}}{\q{motor-loop-resistance}} + \q{no-load-current} \right), \; \q{peak-motor-current}, \; \q{continuous-current} \right)")
        .assumes(LINE)
        .holds("Full throttle and the gearing to suit, in the air the continuous current is for. That current counts the heat of the copper alone, so hold the winding temperature at this load beside it; a warm winding gives a little less too.")
        .source("The first-order model, maxon motor, catalogue chapter Key information, at the maker's continuous current"),
        Rule::new(
            UNLOADED_SPEED,
            (
                SPEED_CONSTANT,
                MOTOR_SUPPLY_VOLTAGE,
                NO_LOAD_CURRENT,
                MOTOR_LOOP_RESISTANCE,
                GEAR_RATIO,
                DISTANCE_PER_TURN,
            ),
            unloaded,
        )
        .title("The no-load speed, through the gears, to distance")
        .formula(r"\q{unloaded-speed} = \q{speed-constant} \left( \q{motor-supply-voltage} - \q{no-load-current} \cdot \q{motor-loop-resistance} \right) \dfrac{\q{distance-per-turn}}{2 \pi \cdot \q{gear-ratio}}")
        .assumes(LINE)
        .holds("Nothing holds the machine back; the gears' own drag is left out.")
        .source(MAKER),
        Rule::new(
            LINE_PUSH,
            (
                TORQUE_CONSTANT,
                MOTOR_SUPPLY_VOLTAGE,
                MOTOR_LOOP_RESISTANCE,
                NO_LOAD_CURRENT,
                DISTANCE_PER_TURN,
                GEAR_RATIO,
                GEAR_EFFICIENCY,
                MOTOR_COUNT,
            ),
            line_push,
        )
        .title("Torque that resistance alone would allow, at the ground")
        .formula(r"\q{line-push} = \dfrac{2 \pi \cdot \q{gear-ratio} \cdot \q{gear-efficiency} \cdot \q{motor-count}}{\q{distance-per-turn}} \, \q{torque-constant} \left( \dfrac{\q{motor-supply-voltage}}{\q{motor-loop-resistance}} - \q{no-load-current} \right)")
        .assumes(LINE)
        .holds("The end of a line to reckon with: a current limit and the grip allow less.")
        .source(MAKER)
        .cautions(MOMENT),
        Rule::new(AXLE_RATE, (DRIVING_SPEED, DRIVE_RADIUS), axle_rate)
            .title("Speed over rolling radius")
            .formula(r"\q{axle-rate} = \dfrac{\q{driving-speed}}{\q{drive-radius}}")
            .assumes(&["Nothing slips on the ground."])
            .holds("Any driven wheel or sprocket.")
            .source("OpenStax, College Physics 2e, section 6.1"),
    ]
}

fn lasting_power(
    voltage: Voltage,
    resistance: Resistance,
    no_load: Current,
    peak: Current,
    continuous: Current,
    motors: Ratio,
    efficiency: Ratio,
) -> Result<Power, Impossible> {
    let most = if continuous < peak { continuous } else { peak };
    let shaft = supplied::greatest_power(voltage, resistance, no_load, most)?;
    Ok(shaft * motors * efficiency)
}

fn unloaded(
    constant: SpeedConstant,
    voltage: Voltage,
    no_load: Current,
    resistance: Resistance,
    ratio: Ratio,
    distance: Length,
) -> Result<Speed, Impossible> {
    let motor = motor::loaded_speed(constant, voltage, no_load, resistance)?;
    Ok(gear::ground_speed(motor, ratio, distance))
}

#[expect(clippy::too_many_arguments, reason = "one argument for each input of the rule")]
fn line_push(
    constant: TorqueConstant,
    voltage: Voltage,
    resistance: Resistance,
    no_load: Current,
    distance: Length,
    ratio: Ratio,
    efficiency: Ratio,
    motors: Ratio,
) -> Force {
    let current = motor::stall_current(voltage, resistance);
    let torque = motor::shaft_torque(constant, current, no_load);
    gear::push(torque, distance, ratio, efficiency, motors)
}

fn axle_rate(speed: Speed, radius: Length) -> crate::quantity::AngularSpeed {
    crate::physics::turning::turning_rate(speed, radius)
}
