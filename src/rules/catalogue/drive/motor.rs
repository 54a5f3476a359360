//! A motor's own figures: constants, and the ends and the best point of its line.

use super::super::common::MOMENT;
use crate::physics::drive::motor;
use crate::quantity::catalogue::drive::*;
use crate::quantity::catalogue::electrics::{
    BATTERY_VOLTAGE, CONTROLLER_CURRENT_LIMIT, CONTROLLER_DROP,
};
use crate::quantity::{Current, Resistance, Voltage};
use crate::rules::{Maybe, Rule};

/// The maker's pages the first-order motor was checked against.
pub(super) const MAKER: &str = "maxon motor, catalogue data of the EC 40 motors, 2013";
const FIRST_ORDER: &[&str] = &[
    "Speed falls straight with torque; friction and iron loss are one steady current.",
    "The winding is at air temperature: a hot motor is weaker.",
];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = line();
    rules.extend(best());
    rules.extend(peak());
    rules
}

fn line() -> Vec<Rule> {
    vec![
        Rule::new(TORQUE_CONSTANT, (SPEED_CONSTANT,), motor::torque_constant)
            .title("Volts per speed are torque per ampere")
            .formula(r"\q{torque-constant} = \dfrac{1}{\q{speed-constant}}")
            .assumes(&["Both are for one winding and cold magnets."])
            .holds("Direct-current motors, brushed or brushless; with rpm/V and N·m/A the product is 9.55.")
            .source(MAKER),
        Rule::new(SPEED_CONSTANT, (TORQUE_CONSTANT,), motor::speed_constant)
            .title("Torque per ampere is volts per speed")
            .formula(r"\q{speed-constant} = \dfrac{1}{\q{torque-constant}}")
            .assumes(&["Both are for one winding and cold magnets."])
            .holds("Direct-current motors, brushed or brushless; with rpm/V and N·m/A the product is 9.55.")
            .source(MAKER),
        Rule::new(MOTOR_SUPPLY_VOLTAGE, (BATTERY_VOLTAGE, CONTROLLER_DROP), offered)
            .title("What the controller can offer")
            .formula(r"\q{motor-supply-voltage} = \q{battery-voltage} - \q{controller-drop}")
            .assumes(&["Full throttle, and nothing drawn yet."])
            .holds("Any battery and controller.")
            .source("Kirchhoff's loop rule, OpenStax, College Physics 2e, section 21.3"),
        Rule::new(PAPER_MOTOR_SPEED, (SPEED_CONSTANT, BATTERY_VOLTAGE), motor::ideal_speed)
            .title("Turns for each volt, times the volts")
            .formula(r"\q{paper-motor-speed} = \q{speed-constant} \cdot \q{battery-voltage}")
            .assumes(&["No load, no friction, no loss: a figure for comparing only."])
            .holds("Any direct-current motor.")
            .source(MAKER),
        Rule::new(
            NO_LOAD_SPEED,
            (SPEED_CONSTANT, MOTOR_SUPPLY_VOLTAGE, NO_LOAD_CURRENT, MOTOR_RESISTANCE),
            motor::loaded_speed,
        )
        .title("Friction already costs a little speed")
        .formula(r"\q{no-load-speed} = \q{speed-constant} \left( \q{motor-supply-voltage} - \q{no-load-current} \cdot \q{motor-resistance} \right)")
        .assumes(FIRST_ORDER)
        .holds("Any direct-current motor with nothing to drive.")
        .source(MAKER),
        Rule::new(STALL_CURRENT, (MOTOR_SUPPLY_VOLTAGE, MOTOR_RESISTANCE), motor::stall_current)
            .title("Standing still, only the winding holds the current back")
            .formula(r"\q{stall-current} = \dfrac{\q{motor-supply-voltage}}{\q{motor-resistance}}")
            .assumes(&["Battery, wires and controller give any current: a catalogue figure."])
            .holds("The first moment, winding cold.")
            .source(MAKER)
            .cautions(MOMENT),
        Rule::new(STALL_TORQUE, (TORQUE_CONSTANT, STALL_CURRENT), motor::magnetic_torque)
            .title("Torque of the stall current")
            .formula(r"\q{stall-torque} = \q{torque-constant} \cdot \q{stall-current}")
            .assumes(&["Battery, wires and controller give any current; friction is left in, as catalogues do."])
            .holds("The first moment, winding and magnets cold; strong currents saturate the iron and give less.")
            .source(MAKER)
            .cautions(MOMENT),
        Rule::new(
            MECHANICAL_TIME_CONSTANT,
            (MOTOR_INERTIA, MOTOR_RESISTANCE, TORQUE_CONSTANT),
            motor::time_constant,
        )
        .title("How quickly the bare motor runs up")
        .formula(r"\q{mechanical-time-constant} = \dfrac{\q{motor-inertia} \cdot \q{motor-resistance}}{\q{torque-constant}^2}")
        .assumes(FIRST_ORDER)
        .holds("No load, stiff supply.")
        .source(MAKER),
    ]
}

fn best() -> Vec<Rule> {
    vec![
        Rule::new(BEST_EFFICIENCY, (NO_LOAD_CURRENT, STALL_CURRENT), motor::best_efficiency)
            .title("The most of what it draws")
            .formula(r"\q{best-efficiency} = \left( 1 - \sqrt{\dfrac{\q{no-load-current}}{\q{stall-current}}} \right)^2")
            .assumes(FIRST_ORDER)
            .holds("At one current only, full throttle; either side of it is worse.")
            .source(MAKER),
        Rule::new(
            BEST_EFFICIENCY_CURRENT,
            (NO_LOAD_CURRENT, STALL_CURRENT),
            motor::best_efficiency_current,
        )
        .title("Where copper loss equals the steady losses")
        .formula(r"\q{best-efficiency-current} = \sqrt{\q{no-load-current} \cdot \q{stall-current}}")
        .assumes(FIRST_ORDER)
        .holds("Full throttle.")
        .source("I. L. Kosow, Electric Machinery and Transformers, 2nd ed., chapter 12: equal fixed and variable losses"),
        Rule::new(
            BEST_EFFICIENCY_TORQUE,
            (TORQUE_CONSTANT, BEST_EFFICIENCY_CURRENT, NO_LOAD_CURRENT),
            motor::shaft_torque,
        )
        .title("What the shaft gives there")
        .formula(r"\q{best-efficiency-torque} = \q{torque-constant} \left( \q{best-efficiency-current} - \q{no-load-current} \right)")
        .assumes(FIRST_ORDER)
        .holds("Full throttle.")
        .source(MAKER),
        Rule::new(GREATEST_MOTOR_POWER, (STALL_TORQUE, NO_LOAD_SPEED), motor::greatest_power)
            .title("Half the speed, half the torque, a quarter of the product")
            .formula(r"\q{greatest-motor-power} = \dfrac{\q{stall-torque} \cdot \q{no-load-speed}}{4}")
            .assumes(FIRST_ORDER)
            .holds(
                "For seconds: at least as much again is heat in the winding. The stall torque counts \
                 the no-load current as push, so this is some percent high.",
            )
            .source("MIT, Understanding D.C. Motor Characteristics, course 2.007"),
    ]
}

fn peak() -> Vec<Rule> {
    vec![
        Rule::new(
            PEAK_MOTOR_CURRENT,
            (MOTOR_SUPPLY_VOLTAGE, MOTOR_LOOP_RESISTANCE, Maybe(CONTROLLER_CURRENT_LIMIT)),
            peak_current,
        )
        .title("Battery, wires and controller hold the stall current back")
        .formula(r"\q{peak-motor-current} = \min\left( \dfrac{\q{motor-supply-voltage}}{\q{motor-loop-resistance}},\ \q{controller-current-limit} \right)")
        .assumes(&[
            "Full throttle, all motors held still at once, pack warm and full.",
            "Without a current limit of the controller, nothing but resistance holds the current back.",
        ])
        .holds("A start from rest, a jam, a wall.")
        .source("Ohm's and Kirchhoff's laws, OpenStax, College Physics 2e, chapter 21")
        .cautions(MOMENT),
        Rule::new(
            PEAK_MOTOR_TORQUE,
            (TORQUE_CONSTANT, PEAK_MOTOR_CURRENT, NO_LOAD_CURRENT),
            motor::shaft_torque,
        )
        .title("What the shaft gives at the peak")
        .formula(r"\q{peak-motor-torque} = \q{torque-constant} \left( \q{peak-motor-current} - \q{no-load-current} \right)")
        .assumes(FIRST_ORDER)
        .holds("For seconds; strong currents saturate the iron and give less.")
        .source(MAKER),
    ]
}

fn offered(battery: Voltage, drop: Voltage) -> Voltage {
    battery - drop
}

fn peak_current(voltage: Voltage, resistance: Resistance, limit: Option<Current>) -> Current {
    let free = motor::stall_current(voltage, resistance);
    limit.map_or(free, |limit| if limit < free { limit } else { free })
}
