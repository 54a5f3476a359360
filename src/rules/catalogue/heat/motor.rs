//! A motor at rest temperature: how hot it ends up, and what it may carry for ever.

use super::super::common::{BURNS, HOT, exceeds, over};
use crate::physics::drive::motor;
use crate::physics::heat::{self, brake, lump, winding};
use crate::quantity::catalogue::drive::*;
use crate::quantity::catalogue::heat::*;
use crate::quantity::{
    HeatCapacity, Measure, Resistance, Temperature, TemperatureCoefficient, TemperatureStep,
    ThermalResistance, TorqueConstant,
};
use crate::rules::{Caution, Rule, Values};

const BODIES: &str = "The two-body motor of maxon motor's catalogue data";
const OHM: &str = "The thermal form of Ohm's law; S. K. Som, Introduction to Heat Transfer";
const WARMER: &[&str] = &[
    "All loss starts in the winding, so iron loss counts a little too hot.",
    "The winding resists more as it warms; the current is what the push asks for with cold magnets, and warm magnets ask for more.",
];
const HOLDS: &str = "Steady load until nothing gets warmer; cooling measured the same way as it runs, shut in or in the wind.";
const PAST_LIMIT: &[Caution] = &[Caution {
    when: |values| exceeds(values, WINDING_RISE, ALLOWED_RISE),
    says: "The winding ends up past its limit: gear lower, ask for less, rest it, or cool it better.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = bodies();
    rules.extend(at_rest());
    rules.extend(currents());
    rules
}

fn bodies() -> Vec<Rule> {
    vec![
        Rule::new(WINDING_HEAT_CAPACITY, (COPPER_MASS,), copper_capacity)
            .title("Copper takes 387 J for each kilogram and kelvin")
            .formula(r"\q{winding-heat-capacity} = \q{copper-mass} \cdot 387\,\mathrm{J/(kg\,K)}")
            .assumes(&["A copper winding; its insulation adds a little."])
            .holds("Room temperature to 200 °C.")
            .source("OpenStax, College Physics, Table 14.1"),
        Rule::new(
            HOUSING_HEAT_CAPACITY,
            (HOUSING_MASS, HOUSING_SPECIFIC_HEAT),
            lump::heat_capacity,
        )
        .title("Mass times specific heat")
        .formula(r"\q{housing-heat-capacity} = \q{housing-mass} \cdot \q{housing-specific-heat}")
        .assumes(&["Iron, magnets and housing warm as one."])
        .holds("Room temperature to 200 °C.")
        .source("OpenStax, University Physics Volume 2, section 1.4"),
        Rule::new(MOTOR_HEAT_CAPACITY, (WINDING_HEAT_CAPACITY, HOUSING_HEAT_CAPACITY), both)
            .title("Winding and housing together")
            .formula(
                r"\q{motor-heat-capacity} = \q{winding-heat-capacity} + \q{housing-heat-capacity}",
            )
            .assumes(&["Both warm as one body: good after minutes, not in seconds."])
            .holds("Slow changes.")
            .source("OpenStax, University Physics Volume 2, section 1.4"),
        Rule::new(MOTOR_TO_AIR, (WINDING_TO_HOUSING, HOUSING_TO_AIR), in_a_row)
            .title("Winding to housing to air")
            .formula(r"\q{motor-to-air} = \q{winding-to-housing} + \q{housing-to-air}")
            .assumes(&["One path, in a row."])
            .holds("The mounting and the air it was measured with.")
            .source(OHM),
        Rule::new(ALLOWED_RISE, (WINDING_LIMIT, COOLING_AIR), heat::rise_above)
            .title("From the air to the limit")
            .formula(r"\q{allowed-rise} = \q{winding-limit} - \q{cooling-air}")
            .assumes(&["Sun and a warm engine bay are in the air temperature given."])
            .holds("The hottest day it should work on.")
            .source("The definition of a temperature rise"),
    ]
}

fn at_rest() -> Vec<Rule> {
    vec![
        Rule::new(
            WINDING_RISE,
            (MOTOR_LOSS, WINDING_LOSS, COPPER_COEFFICIENT, MOTOR_TO_AIR),
            winding::steady_rise,
        )
        .title("Loss times resistance, and warm copper loses more")
        .formula(r"\q{winding-rise} = \dfrac{\q{motor-to-air} \cdot \q{motor-loss}}{1 - \q{copper-coefficient} \cdot \q{motor-to-air} \cdot \q{winding-loss}}")
        .assumes(WARMER)
        .holds(HOLDS)
        .source("Energy balance with the resistance law of copper, NBS Handbook 100 (from memory)"),
        Rule::new(WINDING_TEMPERATURE, (COOLING_AIR, WINDING_RISE), heat::temperature_above)
            .title("The rise on top of the air")
            .formula(r"\q{winding-temperature} = \q{cooling-air} + \q{winding-rise}")
            .assumes(WARMER)
            .holds(HOLDS)
            .source(OHM),
        Rule::new(
            MOTOR_WARM_LOSS,
            (MOTOR_LOSS, WINDING_LOSS, COPPER_COEFFICIENT, WINDING_RISE),
            winding::warm_loss,
        )
        .title("What warm copper adds")
        .formula(r"\q{motor-warm-loss} = \q{motor-loss} + \q{copper-coefficient} \cdot \q{winding-loss} \cdot \q{winding-rise}")
        .assumes(WARMER)
        .holds(HOLDS)
        .source("The resistance law of copper, NBS Handbook 100 (from memory)"),
        Rule::new(
            HOUSING_TEMPERATURE,
            (COOLING_AIR, MOTOR_WARM_LOSS, HOUSING_TO_AIR),
            housing_temperature,
        )
        .title("All the heat leaves through the housing")
        .formula(r"\q{housing-temperature} = \q{cooling-air} + \q{motor-warm-loss} \cdot \q{housing-to-air}")
        .assumes(&["The housing is equally warm all over; an infrared gun reads bare metal far too cold."])
        .holds(HOLDS)
        .source(BODIES)
        .cautions(&[Caution { when: housing_burns, says: HOT }]),
        Rule::new(MOTOR_HEAT_MARGIN, (ALLOWED_RISE, WINDING_RISE), over::<TemperatureStep>)
            .title("The rise allowed over the rise at this load")
            .formula(r"\q{motor-heat-margin} = \dfrac{\q{allowed-rise}}{\q{winding-rise}}")
            .assumes(WARMER)
            .holds(HOLDS)
            .source("The definition of a margin; common practice, no published source")
            .cautions(PAST_LIMIT),
        Rule::new(
            WARM_MOTOR_RESISTANCE,
            (MOTOR_RESISTANCE, COPPER_COEFFICIENT, WINDING_RISE),
            warm_resistance,
        )
        .title("Copper resists more as it warms")
        .formula(r"\q{warm-motor-resistance} = \q{motor-resistance} \left( 1 + \q{copper-coefficient} \cdot \q{winding-rise} \right)")
        .assumes(&["The resistance given is the one at air temperature."])
        .holds("From -50 °C to 200 °C: 1 % more for each 2.5 K.")
        .source("NBS Handbook 100, Copper Wire Tables (from memory)"),
        Rule::new(
            WARM_TORQUE_CONSTANT,
            (TORQUE_CONSTANT, MAGNET_COEFFICIENT, HOUSING_TEMPERATURE),
            warm_constant,
        )
        .title("Magnets weaken as they warm")
        .formula(r"\q{warm-torque-constant} = \q{torque-constant} \left( 1 + \q{magnet-coefficient} \left( \q{housing-temperature} - 293\,\mathrm{K} \right) \right)")
        .assumes(&["Magnets as warm as the housing, the constant given at 20 °C, and the loss comes back on cooling."])
        .holds("Up to the limit of the magnets' grade, 80 °C for the plain one: past it they stay weak.")
        .source("Data of neodymium magnet makers, -0.12 % for each kelvin"),
        Rule::new(INSULATION_LIFE, (WINDING_LIMIT, WINDING_TEMPERATURE), brake::insulation_life)
            .title("Each 10 K more halve the life of insulation")
            .formula(r"\q{insulation-life} = 2^{\frac{\q{winding-limit} - \q{winding-temperature}}{10\,\mathrm{K}}}")
            .assumes(&["Wear by heat alone, at this temperature all the time."])
            .holds("A few tens of kelvin about the limit; a rule of thumb.")
            .source("V. M. Montsinger, 1930, as textbooks on electrical machines quote it"),
    ]
}

fn currents() -> Vec<Rule> {
    vec![
        Rule::new(
            CONTINUOUS_CURRENT,
            (ALLOWED_RISE, MOTOR_TO_AIR, MOTOR_RESISTANCE, COPPER_COEFFICIENT),
            winding::continuous_current,
        )
        .title("The current that ends up just at the limit")
        .formula(r"\q{continuous-current} = \sqrt{\dfrac{\q{allowed-rise}}{\q{motor-to-air} \cdot \q{motor-resistance} \left( 1 + \q{copper-coefficient} \cdot \q{allowed-rise} \right)}}")
        .assumes(&["Copper loss alone: friction and iron loss at speed take part of it away."])
        .holds(HOLDS)
        .source("The maker's permissible continuous current, maxon motor, catalogue data of the EC 40 motors, 2013"),
        Rule::new(
            RUNAWAY_CURRENT,
            (MOTOR_RESISTANCE, COPPER_COEFFICIENT, MOTOR_TO_AIR),
            winding::runaway_current,
        )
        .title("Where each degree adds more heat than it sheds")
        .formula(r"\q{runaway-current} = \dfrac{1}{\sqrt{\q{copper-coefficient} \cdot \q{motor-resistance} \cdot \q{motor-to-air}}}")
        .assumes(&["The current is held whatever the winding does: a controller that limits current does that."])
        .holds("A warning, not a rating: the limit comes long before.")
        .source("Energy balance with the resistance law of copper, NBS Handbook 100 (from memory)"),
    ]
}

fn copper_capacity(mass: crate::quantity::Mass) -> HeatCapacity {
    lump::heat_capacity(mass, Measure::from_si(387.0))
}

fn both(one: HeatCapacity, other: HeatCapacity) -> HeatCapacity {
    one + other
}

fn in_a_row(one: ThermalResistance, other: ThermalResistance) -> ThermalResistance {
    one + other
}

fn housing_temperature(
    air: Temperature,
    loss: crate::quantity::Power,
    resistance: ThermalResistance,
) -> Temperature {
    heat::temperature_above(air, lump::final_rise(loss, resistance))
}

fn housing_burns(values: &Values) -> bool {
    let known = (values.get(COOLING_AIR), values.get(MOTOR_WARM_LOSS), values.get(HOUSING_TO_AIR));
    matches!(known, (Some(air), Some(loss), Some(resistance))
        if housing_temperature(air, loss, resistance).si() >= BURNS)
}

fn warm_resistance(
    resistance: Resistance,
    coefficient: TemperatureCoefficient,
    rise: TemperatureStep,
) -> Resistance {
    let cold = Temperature::from_si(0.0);
    motor::warm_resistance(resistance, heat::temperature_above(cold, rise), cold, coefficient)
}

fn warm_constant(
    constant: TorqueConstant,
    coefficient: TemperatureCoefficient,
    housing: Temperature,
) -> TorqueConstant {
    motor::warm_torque_constant(constant, housing, Temperature::from_si(293.15), coefficient)
}
