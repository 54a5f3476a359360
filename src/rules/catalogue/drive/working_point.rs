//! The motor at work: current, speed, power and loss at the push that is needed.

use super::motor::MAKER;
use crate::physics::drive::motor;
use crate::quantity::catalogue::drive::*;
use crate::quantity::catalogue::electrics::{
    BATTERY_POWER, BATTERY_VOLTAGE, CONTROLLER_DROP, CONTROLLER_HOT_RESISTANCE, SUPPLY_RESISTANCE,
};
use crate::quantity::{Current, Ratio, Resistance, Voltage};
use crate::rules::Rule;

const STEADY: &[&str] = &[
    "A steady push; a mean over bumps, with peaks above it.",
    "Speed falls straight with torque; friction and iron loss are one steady current.",
];
const ANY: &str = "Direct-current motors, brushed or brushless, below saturation.";
const POWER: &str = "OpenStax, College Physics 2e, section 20.4";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(MOTOR_CURRENT, (MOTOR_TORQUE, TORQUE_CONSTANT, NO_LOAD_CURRENT), motor::current)
            .title("Torque needs current, and friction a little more")
            .formula(r"\q{motor-current} = \dfrac{\q{motor-torque}}{\q{torque-constant}} + \q{no-load-current}")
            .assumes(STEADY)
            .holds("Direct-current motors, brushed or brushless, below saturation, while they drive; where the ground drives them they draw nothing.")
            .source(MAKER),
        Rule::new(
            MOTOR_VOLTAGE,
            (
                BATTERY_VOLTAGE,
                THROTTLE,
                MOTOR_CURRENT,
                MOTOR_COUNT,
                SUPPLY_RESISTANCE,
                CONTROLLER_HOT_RESISTANCE,
                CONTROLLER_DROP,
            ),
            voltage_left,
        )
        .title("What battery, wires and controller leave")
        .formula(r"\q{motor-voltage} = \q{throttle} \left( \q{battery-voltage} - \q{throttle} \cdot \q{motor-count} \cdot \q{motor-current} \cdot \q{supply-resistance} \right) - \q{motor-current} \cdot \q{controller-hot-resistance} - \q{controller-drop}")
        .assumes(&["The throttle is a switched share of the battery, so the battery carries only that share of the motor's current.", "Battery half full and warm; what else hangs on it is left out."])
        .holds("Steady load.")
        .source("Kirchhoff's loop rule, OpenStax, College Physics 2e, section 21.3"),
        Rule::new(BACK_EMF, (MOTOR_VOLTAGE, MOTOR_CURRENT, MOTOR_RESISTANCE), motor::back_emf)
            .title("What is left to turn it")
            .formula(r"\q{back-emf} = \q{motor-voltage} - \q{motor-current} \cdot \q{motor-resistance}")
            .assumes(STEADY)
            .holds(ANY)
            .source("OpenStax, College Physics 2e, section 23.6"),
        Rule::new(SPEED_LOST, (MOTOR_TORQUE, MOTOR_RESISTANCE, TORQUE_CONSTANT), motor::speed_lost)
            .title("Torque costs speed")
            .formula(r"\q{speed-lost} = \dfrac{\q{motor-torque} \cdot \q{motor-resistance}}{\q{torque-constant}^2}")
            .assumes(STEADY)
            .holds("Stiff supply: a sagging battery costs more.")
            .source(MAKER),
        Rule::new(
            MOTOR_SPEED,
            (SPEED_CONSTANT, MOTOR_VOLTAGE, MOTOR_CURRENT, MOTOR_RESISTANCE),
            motor::loaded_speed,
        )
        .title("Speed for each volt, times the volts left")
        .formula(r"\q{motor-speed} = \q{speed-constant} \left( \q{motor-voltage} - \q{motor-current} \cdot \q{motor-resistance} \right)")
        .assumes(STEADY)
        .holds(ANY)
        .source(MAKER),
        Rule::new(MOTOR_INPUT_POWER, (MOTOR_VOLTAGE, MOTOR_CURRENT), motor::electric_power)
            .title("Volts times amperes")
            .formula(r"\q{motor-input-power} = \q{motor-voltage} \cdot \q{motor-current}")
            .assumes(STEADY)
            .holds("Averages over a switching cycle.")
            .source(POWER),
        Rule::new(MOTOR_OUTPUT_POWER, (MOTOR_TORQUE, MOTOR_SPEED), motor::shaft_power)
            .title("Torque times speed of turning")
            .formula(r"\q{motor-output-power} = \q{motor-torque} \cdot \q{motor-speed}")
            .assumes(STEADY)
            .holds("Any shaft.")
            .source("OpenStax, University Physics Volume 1, section 10.8"),
        Rule::new(MOTOR_LOSS, (MOTOR_INPUT_POWER, MOTOR_OUTPUT_POWER), motor::loss)
            .title("What goes in and does not come out is heat")
            .formula(r"\q{motor-loss} = \q{motor-input-power} - \q{motor-output-power}")
            .assumes(STEADY)
            .holds("Any motor at a steady load.")
            .source("Conservation of energy, OpenStax, University Physics Volume 1, section 8.3"),
        Rule::new(WINDING_LOSS, (MOTOR_CURRENT, MOTOR_RESISTANCE), motor::winding_loss)
            .title("The current heats the copper with its square")
            .formula(r"\q{winding-loss} = \q{motor-current}^2 \cdot \q{motor-resistance}")
            .assumes(&["The winding at air temperature; warm copper loses more.", "A ripple in the current adds to it."])
            .holds(ANY)
            .source(POWER),
        Rule::new(MOTOR_EFFICIENCY, (MOTOR_OUTPUT_POWER, MOTOR_INPUT_POWER), motor::efficiency)
            .title("Power out over power in")
            .formula(r"\q{motor-efficiency} = \dfrac{\q{motor-output-power}}{\q{motor-input-power}}")
            .assumes(STEADY)
            .holds("This load only: at light load the steady losses bite.")
            .source("The definition of efficiency, OpenStax, College Physics 2e, section 7.6"),
        Rule::new(DRIVE_EFFICIENCY, (PUSH_POWER, BATTERY_POWER), motor::efficiency)
            .title("Power at the ground over power from the battery")
            .formula(r"\q{drive-efficiency} = \dfrac{\q{push-power}}{\q{battery-power}}")
            .assumes(&["Slip of the ground and heat inside the battery are left out; what else hangs on the battery counts as loss."])
            .holds("This push and throttle only.")
            .source("The definition of efficiency, OpenStax, College Physics 2e, section 7.6"),
    ]
}

fn voltage_left(
    battery: Voltage,
    throttle: Ratio,
    current: Current,
    motors: Ratio,
    supply: Resistance,
    controller: Resistance,
    drop: Voltage,
) -> Voltage {
    (battery - current * supply * motors * throttle) * throttle - current * controller - drop
}
