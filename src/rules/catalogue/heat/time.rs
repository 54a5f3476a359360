//! A motor over time: warm-up, soak, stall, work and rest.

use super::super::common::{MOMENT, always};
use crate::physics::Impossible;
use crate::physics::drive::motor;
use crate::physics::heat::{lump, winding};
use crate::quantity::catalogue::drive::*;
use crate::quantity::catalogue::heat::*;
use crate::quantity::{
    HeatCapacity, Power, TemperatureCoefficient, TemperatureStep, ThermalResistance, Time,
};
use crate::rules::{Caution, Rule};

const TWO: &[&str] = &[
    "Winding and housing are two bodies, each equally warm all over; they start as cold as the air.",
    "All loss starts in the winding, which resists more as it warms; the load is steady.",
];
const ONE: &[&str] = &[
    "Winding and housing warm as one body with one time constant.",
    "No loss while it rests, and the same cooling throughout.",
];
const CYCLE: &[&str] = &[
    "The same work and rest, again and again, until each round is like the last.",
    "Winding and housing are two bodies, each equally warm all over; the winding resists more as it warms.",
    "No loss while it rests, and the same cooling throughout; a motor that fans itself cools worse at rest.",
];
const TWO_HOLDS: &str = "Seconds to hours, with the cooling it was measured with.";
const ONE_HOLDS: &str =
    "Stretches of minutes and more: in seconds the winding is far ahead of this.";
const ONE_BODY: &[Caution] = &[Caution {
    when: always,
    says: "One body is told here: the winding itself runs ahead of it, most of all in the first minutes. Go by the winding rise after the working time.",
}];
const BODIES: &str = "The two-body motor of maxon motor's catalogue data, solved in closed form";
const LUMP: &str = "Lumped bodies, S. K. Som, Introduction to Heat Transfer";
const DUTY: &str =
    "IEC 60034-1, duty types (from memory), by the two-body motor of maxon motor's catalogue data";

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = two_bodies();
    rules.extend(one_body());
    rules.extend(work_and_rest());
    rules.extend(stall());
    rules
}

fn two_bodies() -> Vec<Rule> {
    vec![
        Rule::new(
            WINDING_RISE_AFTER,
            (
                MOTOR_LOSS,
                WINDING_LOSS,
                COPPER_COEFFICIENT,
                WINDING_TO_HOUSING,
                HOUSING_TO_AIR,
                WINDING_HEAT_CAPACITY,
                HOUSING_HEAT_CAPACITY,
                WORK_TIME,
            ),
            winding_after,
        )
        .title("The winding runs ahead of its housing")
        .formula(r"\q{winding-rise-after} = \theta_w\left( \q{work-time} \right), \;\; \q{winding-heat-capacity} \, \theta_w' = \q{motor-loss} + \q{copper-coefficient} \cdot \q{winding-loss} \, \theta_w - \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}}, \;\; \q{housing-heat-capacity} \, \theta_h' = \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}} - \dfrac{\theta_h}{\q{housing-to-air}}")
        .assumes(TWO)
        .holds(TWO_HOLDS)
        .source(BODIES),
        Rule::new(
            HOUSING_RISE_AFTER,
            (
                MOTOR_LOSS,
                WINDING_LOSS,
                COPPER_COEFFICIENT,
                WINDING_TO_HOUSING,
                HOUSING_TO_AIR,
                WINDING_HEAT_CAPACITY,
                HOUSING_HEAT_CAPACITY,
                WORK_TIME,
            ),
            housing_after,
        )
        .title("The housing follows its winding")
        .formula(r"\q{housing-rise-after} = \theta_h\left( \q{work-time} \right), \;\; \q{winding-heat-capacity} \, \theta_w' = \q{motor-loss} + \q{copper-coefficient} \cdot \q{winding-loss} \, \theta_w - \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}}, \;\; \q{housing-heat-capacity} \, \theta_h' = \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}} - \dfrac{\theta_h}{\q{housing-to-air}}")
        .assumes(TWO)
        .holds(TWO_HOLDS)
        .source(BODIES),
        Rule::new(
            SOAK_RISE,
            (
                WINDING_RISE_AFTER,
                HOUSING_RISE_AFTER,
                WINDING_TO_HOUSING,
                HOUSING_TO_AIR,
                WINDING_HEAT_CAPACITY,
                HOUSING_HEAT_CAPACITY,
            ),
            soak,
        )
        .title("After it stops, the winding's heat still comes out")
        .formula(r"\q{soak-rise} = \max_t \theta_h(t), \;\; \theta_w(0) = \q{winding-rise-after}, \ \theta_h(0) = \q{housing-rise-after}, \;\; \q{winding-heat-capacity} \, \theta_w' = - \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}}, \;\; \q{housing-heat-capacity} \, \theta_h' = \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}} - \dfrac{\theta_h}{\q{housing-to-air}}")
        .assumes(&["It stands still with no current, cooled as well as it was while running: often it is cooled worse, and gets warmer."])
        .holds(TWO_HOLDS)
        .source(BODIES),
        Rule::new(
            TIME_TO_LIMIT,
            (
                MOTOR_LOSS,
                WINDING_LOSS,
                COPPER_COEFFICIENT,
                WINDING_TO_HOUSING,
                HOUSING_TO_AIR,
                WINDING_HEAT_CAPACITY,
                HOUSING_HEAT_CAPACITY,
                ALLOWED_RISE,
            ),
            time_to_limit,
        )
        .title("When the winding gets to its limit")
        .formula(r"\q{time-to-limit} = t: \ \theta_w(t) = \q{allowed-rise}, \;\; \q{winding-heat-capacity} \, \theta_w' = \q{motor-loss} + \q{copper-coefficient} \cdot \q{winding-loss} \, \theta_w - \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}}, \;\; \q{housing-heat-capacity} \, \theta_h' = \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}} - \dfrac{\theta_h}{\q{housing-to-air}}")
        .assumes(TWO)
        .holds(TWO_HOLDS)
        .source(BODIES),
        Rule::new(WINDING_TIME_CONSTANT, (WINDING_TO_HOUSING, WINDING_HEAT_CAPACITY), lump::time_constant)
            .title("How fast the winding follows")
            .formula(r"\q{winding-time-constant} = \q{winding-to-housing} \cdot \q{winding-heat-capacity}")
            .assumes(&["The housing hardly changes meanwhile."])
            .holds("The winding against its housing: seconds to a minute.")
            .source(BODIES),
    ]
}

fn one_body() -> Vec<Rule> {
    vec![
        Rule::new(MOTOR_TIME_CONSTANT, (HOUSING_TO_AIR, MOTOR_HEAT_CAPACITY), lump::time_constant)
            .title("How fast the whole motor follows")
            .formula(r"\q{motor-time-constant} = \q{housing-to-air} \cdot \q{motor-heat-capacity}")
            .assumes(ONE)
            .holds(ONE_HOLDS)
            .source(LUMP),
        Rule::new(MOTOR_RISE_AFTER, (WINDING_RISE, WORK_TIME, MOTOR_TIME_CONSTANT), lump::rise_after)
            .cautions(ONE_BODY)
            .title("63 % of the way in one time constant")
            .formula(r"\q{motor-rise-after} = \q{winding-rise} \left( 1 - e^{-\q{work-time} / \q{motor-time-constant}} \right)")
            .assumes(ONE)
            .holds(ONE_HOLDS)
            .source(LUMP),
    ]
}

fn work_and_rest() -> Vec<Rule> {
    vec![
        Rule::new(
            HEATING_CURRENT,
            (MOTOR_CURRENT, WORK_TIME, REST_CURRENT, REST_TIME),
            lump::heating_current,
        )
        .title("Heat goes with the square, so the mean is taken of squares")
        .formula(r"\q{heating-current} = \sqrt{\dfrac{\q{motor-current}^2 \cdot \q{work-time} + \q{rest-current}^2 \cdot \q{rest-time}}{\q{work-time} + \q{rest-time}}}")
        .assumes(&["Each stretch is much shorter than the motor's time constant."])
        .holds("Compare it with the continuous current.")
        .source(DUTY),
        Rule::new(
            MEAN_DUTY_CURRENT,
            (MOTOR_CURRENT, WORK_TIME, REST_CURRENT, REST_TIME),
            lump::mean_current,
        )
        .title("The plain mean decides the charge used")
        .formula(r"\q{mean-duty-current} = \dfrac{\q{motor-current} \cdot \q{work-time} + \q{rest-current} \cdot \q{rest-time}}{\q{work-time} + \q{rest-time}}")
        .assumes(&["Steady current in each stretch."])
        .holds("Run time, never heat: heat asks for the heating current.")
        .source("The definition of a mean"),
        Rule::new(
            DUTY_PEAK_RISE,
            (
                MOTOR_LOSS,
                WINDING_LOSS,
                COPPER_COEFFICIENT,
                WINDING_TO_HOUSING,
                HOUSING_TO_AIR,
                WINDING_HEAT_CAPACITY,
                HOUSING_HEAT_CAPACITY,
                WORK_TIME,
                REST_TIME,
            ),
            duty_peak,
        )
        .title("The hottest moment of work and rest without end")
        .formula(r"\q{duty-peak-rise} = \theta_w\left( \q{work-time} \right), \;\; \theta\left( \q{work-time} + \q{rest-time} \right) = \theta\left( 0 \right), \;\; \q{winding-heat-capacity} \, \theta_w' = \q{motor-loss} + \q{copper-coefficient} \cdot \q{winding-loss} \, \theta_w - \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}}, \;\; \q{housing-heat-capacity} \, \theta_h' = \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}} - \dfrac{\theta_h}{\q{housing-to-air}}")
        .assumes(CYCLE)
        .holds(TWO_HOLDS)
        .source(DUTY),
        Rule::new(
            REST_NEEDED,
            (
                MOTOR_LOSS,
                WINDING_LOSS,
                COPPER_COEFFICIENT,
                WINDING_TO_HOUSING,
                HOUSING_TO_AIR,
                WINDING_HEAT_CAPACITY,
                HOUSING_HEAT_CAPACITY,
                ALLOWED_RISE,
                WORK_TIME,
            ),
            rest_needed,
        )
        .title("The rest that keeps the peak at the limit")
        .formula(r"\q{rest-needed} = t_2: \ \theta_w\left( \q{work-time} \right) = \q{allowed-rise}, \;\; \theta\left( \q{work-time} + t_2 \right) = \theta\left( 0 \right), \;\; \q{winding-heat-capacity} \, \theta_w' = \q{motor-loss} + \q{copper-coefficient} \cdot \q{winding-loss} \, \theta_w - \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}}, \;\; \q{housing-heat-capacity} \, \theta_h' = \dfrac{\theta_w - \theta_h}{\q{winding-to-housing}} - \dfrac{\theta_h}{\q{housing-to-air}}")
        .assumes(CYCLE)
        .holds(TWO_HOLDS)
        .source(DUTY),
    ]
}

fn stall() -> Vec<Rule> {
    vec![
        Rule::new(STALL_LOSS, (PEAK_MOTOR_CURRENT, MOTOR_RESISTANCE), motor::winding_loss)
            .title("Standing still, all of it is heat")
            .formula(r"\q{stall-loss} = \q{peak-motor-current}^2 \cdot \q{motor-resistance}")
            .assumes(&["The winding starts at air temperature; as it warms it resists more."])
            .holds("A motor held still at full throttle.")
            .source("OpenStax, College Physics 2e, section 20.4")
            .cautions(MOMENT),
        Rule::new(
            STALL_TIME,
            (WINDING_HEAT_CAPACITY, ALLOWED_RISE, STALL_LOSS, COPPER_COEFFICIENT),
            winding::uncooled_time,
        )
        .title("The winding alone takes the heat of a stall, and warm copper makes more")
        .formula(r"\q{stall-time} = \dfrac{\q{winding-heat-capacity}}{\q{copper-coefficient} \cdot \q{stall-loss}} \, \ln\left( 1 + \q{copper-coefficient} \cdot \q{allowed-rise} \right)")
        .assumes(&[
            "Nothing leaves the winding: in seconds nearly nothing does.",
            "The current is held while the copper warms, as a controller that limits current does; without one it falls a little and there is more time.",
            "It starts as cold as the air; a warm motor has less time.",
        ])
        .holds("Stalls of a few seconds.")
        .source("Energy balance with the resistance law of copper, NBS Handbook 100 (from memory)")
        .cautions(MOMENT),
    ]
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn rises_after(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding_capacity: HeatCapacity,
    housing_capacity: HeatCapacity,
    time: Time,
) -> winding::Rises {
    let path =
        winding::Path { to_housing, to_air, winding: winding_capacity, housing: housing_capacity };
    winding::rises_after(
        &path,
        &winding::Heating { loss, copper, coefficient },
        winding::cold(),
        time,
    )
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn winding_after(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding: HeatCapacity,
    housing: HeatCapacity,
    time: Time,
) -> TemperatureStep {
    rises_after(loss, copper, coefficient, to_housing, to_air, winding, housing, time).winding
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn housing_after(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding: HeatCapacity,
    housing: HeatCapacity,
    time: Time,
) -> TemperatureStep {
    rises_after(loss, copper, coefficient, to_housing, to_air, winding, housing, time).housing
}

fn soak(
    winding_rise: TemperatureStep,
    housing_rise: TemperatureStep,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding: HeatCapacity,
    housing: HeatCapacity,
) -> TemperatureStep {
    let path = winding::Path { to_housing, to_air, winding, housing };
    winding::soak_peak(&path, winding::Rises { winding: winding_rise, housing: housing_rise })
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn time_to_limit(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding: HeatCapacity,
    housing: HeatCapacity,
    allowed: TemperatureStep,
) -> Result<Time, Impossible> {
    let path = winding::Path { to_housing, to_air, winding, housing };
    winding::time_to_rise(&path, &winding::Heating { loss, copper, coefficient }, allowed)
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn duty_peak(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding: HeatCapacity,
    housing: HeatCapacity,
    work: Time,
    rest: Time,
) -> Result<TemperatureStep, Impossible> {
    let path = winding::Path { to_housing, to_air, winding, housing };
    let heating = winding::Heating { loss, copper, coefficient };
    winding::duty_peak(&path, &heating, work, rest).map(|rises| rises.winding)
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn rest_needed(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    to_housing: ThermalResistance,
    to_air: ThermalResistance,
    winding: HeatCapacity,
    housing: HeatCapacity,
    allowed: TemperatureStep,
    work: Time,
) -> Result<Time, Impossible> {
    let path = winding::Path { to_housing, to_air, winding, housing };
    let heating = winding::Heating { loss, copper, coefficient };
    winding::rest_needed(&path, &heating, allowed, work)
}
