//! The closed box: its skin, the heat in it with work, rest and sun, and how warm it gets.

use crate::physics::Impossible;
use crate::physics::heat::{self, enclosure, lump};
use crate::quantity::catalogue::drive::MOTOR_COUNT;
use crate::quantity::catalogue::electrics::CONTROLLER_LOSS;
use crate::quantity::catalogue::heat::*;
use crate::quantity::{
    Area, HeatTransfer, Length, Measure, Power, Ratio, Temperature, TemperatureStep,
    ThermalConductivity, ThermalResistance, Time,
};
use crate::rules::{Caution, Maybe, Rule};

const OHM: &str = "The thermal form of Ohm's law; S. K. Som, Introduction to Heat Transfer";
const LUMP: &str = "Lumped bodies, S. K. Som, Introduction to Heat Transfer";
const SOL_AIR: &str = "ASHRAE Handbook, Fundamentals, sol-air temperature (from memory)";
const BOX: &[&str] = &[
    "The air inside is equally warm everywhere; parts are warmer than it.",
    "Heat passed for each square metre counts both air films and radiation.",
];
const SUN: &[&str] = &[
    "Steady sun for as long as the box takes to warm; the heat that the skin shines to a clear sky is left out.",
];
const DUTY: &[&str] = &[
    "The same work and rest, again and again; the other heat and the sun go on while it rests.",
    "The controllers make nothing at rest.",
    "The air inside is equally warm everywhere; parts are warmer than it.",
];
/// What to say while no sun is counted.
const SHADE: &[Caution] = &[Caution {
    when: |values| values.si(SUN_HEAT).is_none_or(|sun| sun == 0.0),
    says: "No sun is counted: out of the shade a box gets 10 to 20 K warmer, a black one more.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = closed_box();
    rules.extend(sun());
    rules.extend(duty());
    rules.extend(wall());
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
        Rule::new(BOX_HEAT, (CONTROLLER_LOSS, MOTOR_COUNT, BOX_OTHER_HEAT, Maybe(SUN_HEAT)), inside)
            .title("The controllers, the rest and the sun")
            .formula(r"\q{box-heat} = \q{motor-count} \cdot \q{controller-loss} + \q{box-other-heat} + \q{sun-heat}")
            .assumes(&["One controller for each motor, all in this box; put battery heat in the rest if it is in there too."])
            .holds("Steady load without rest: the worst the box is asked to shed.")
            .cautions(SHADE)
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

fn sun() -> Vec<Rule> {
    vec![
        Rule::new(SUNLIT_AREA, (BOX_LENGTH, BOX_WIDTH, BOX_HEIGHT), enclosure::largest_shadow)
            .title("The largest shadow of a box")
            .formula(r"\q{sunlit-area} = \sqrt{\left( \q{box-length} \cdot \q{box-width} \right)^2 + \left( \q{box-length} \cdot \q{box-height} \right)^2 + \left( \q{box-width} \cdot \q{box-height} \right)^2}")
            .assumes(&["The sun stands where it sees most of the box, as it will at some hour."])
            .holds("A box with flat sides, nothing above it; give less if part of it is shaded.")
            .source("Geometry"),
        Rule::new(
            SUN_STEP,
            (SUN_IRRADIANCE, SUN_ABSORPTANCE, BOX_OUTSIDE_COEFFICIENT),
            enclosure::sun_step,
        )
        .title("Sun taken in over what the skin sheds")
        .formula(r"\q{sun-step} = \dfrac{\q{sun-absorptance} \cdot \q{sun-irradiance}}{\q{box-outside-coefficient}}")
        .assumes(SUN)
        .holds("A skin square to the sun with nothing but insulation behind it.")
        .source(SOL_AIR),
        Rule::new(
            SUN_HEAT,
            (SUN_STEP, SUNLIT_AREA, BOX_COEFFICIENT, LID_COEFFICIENT, BOX_OUTSIDE_COEFFICIENT),
            sun_heat,
        )
        .title("The part of the sun's heat that counts inside")
        .formula(r"\q{sun-heat} = \q{sun-step} \cdot \q{sunlit-area} \cdot \min\left( \max\left( \q{box-coefficient},\ \q{lid-coefficient} \right),\ \q{box-outside-coefficient} \right)")
        .assumes(SUN)
        .holds("All of the lit skin counts as the part that passes more heat; fins on the lid are taken to shade as much as they gather.")
        .source(SOL_AIR),
    ]
}

fn duty() -> Vec<Rule> {
    vec![
        Rule::new(
            BOX_DUTY_HEAT,
            (CONTROLLER_LOSS, MOTOR_COUNT, BOX_OTHER_HEAT, Maybe(SUN_HEAT), WORK_TIME, REST_TIME),
            duty_heat,
        )
        .title("The mean over work and rest")
        .formula(r"\q{box-duty-heat} = \q{motor-count} \cdot \q{controller-loss} \cdot \dfrac{\q{work-time}}{\q{work-time} + \q{rest-time}} + \q{box-other-heat} + \q{sun-heat}")
        .assumes(DUTY)
        .holds("Work and rest much shorter than the time constant of the box: then this is what counts.")
        .source("The definition of a mean; IEC 60034-1, duty types (from memory)")
        .cautions(SHADE),
        Rule::new(
            BOX_DUTY_PEAK,
            (
                CONTROLLER_LOSS,
                MOTOR_COUNT,
                BOX_OTHER_HEAT,
                Maybe(SUN_HEAT),
                BOX_RESISTANCE,
                WORK_TIME,
                REST_TIME,
                BOX_TIME_CONSTANT,
            ),
            duty_peak,
        )
        .title("The hottest moment of work and rest without end")
        .formula(r"\q{box-duty-peak} = \q{box-resistance} \left( \q{box-other-heat} + \q{sun-heat} + \q{motor-count} \cdot \q{controller-loss} \cdot \dfrac{1 - e^{-\q{work-time} / \q{box-time-constant}}}{1 - e^{-\left( \q{work-time} + \q{rest-time} \right) / \q{box-time-constant}}} \right)")
        .assumes(DUTY)
        .holds("After several time constants.")
        .source("IEC 60034-1, duty types (from memory), by the lumped model")
        .cautions(SHADE),
        Rule::new(
            BOX_TIME_TO_LIMIT,
            (BOX_LIMIT, COOLING_AIR, BOX_RISE, BOX_TIME_CONSTANT),
            time_to_limit,
        )
        .title("When the air in the box gets to its limit")
        .formula(r"\q{box-time-to-limit} = - \q{box-time-constant} \, \ln\left( 1 - \dfrac{\q{box-limit} - \q{cooling-air}}{\q{box-rise}} \right)")
        .assumes(BOX)
        .holds("From cold, steady load without rest.")
        .source(LUMP),
    ]
}

fn wall() -> Vec<Rule> {
    vec![
        Rule::new(
            WALL_RESISTANCE,
            (WALL_THICKNESS, WALL_CONDUCTIVITY, BOX_BODY_AREA, BOX_LID_AREA),
            wall_resistance,
        )
        .title("Thickness over conductivity and skin")
        .formula(r"\q{wall-resistance} = \dfrac{\q{wall-thickness}}{\q{wall-conductivity} \left( \q{box-body-area} + \q{box-lid-area} \right)}")
        .assumes(&["One wall all round, much thinner than the box is wide; air films are apart."])
        .holds("Thin walls; ribs and bolts lead past it.")
        .source("OpenStax, College Physics 2e, section 14.5"),
        Rule::new(WALL_STEP, (BOX_HEAT, WALL_RESISTANCE), lump::final_rise)
            .title("Heat times the resistance of the wall")
            .formula(r"\q{wall-step} = \q{box-heat} \cdot \q{wall-resistance}")
            .assumes(&["All the heat leaves through the walls, evenly."])
            .holds("If this is small beside the rise in the box, another wall helps little: the air films hold the heat.")
            .source("OpenStax, College Physics 2e, section 14.5"),
    ]
}

fn none() -> Power {
    Power::from_si(0.0)
}

fn inside(controller: Power, motors: Ratio, rest: Power, sun: Option<Power>) -> Power {
    controller * motors + rest + sun.unwrap_or_else(none)
}

fn sun_heat(
    step: TemperatureStep,
    lit: Area,
    body: HeatTransfer,
    lid: HeatTransfer,
    outside: HeatTransfer,
) -> Power {
    enclosure::sun_heat(step, lit, body.max(lid), outside)
}

fn duty_heat(
    controller: Power,
    motors: Ratio,
    rest: Power,
    sun: Option<Power>,
    work_time: Time,
    rest_time: Time,
) -> Power {
    let working = inside(controller, motors, rest, sun);
    enclosure::mean_heat(working, inside(none(), motors, rest, sun), work_time, rest_time)
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, in their order")]
fn duty_peak(
    controller: Power,
    motors: Ratio,
    rest: Power,
    sun: Option<Power>,
    resistance: ThermalResistance,
    work_time: Time,
    rest_time: Time,
    constant: Time,
) -> TemperatureStep {
    let heats = [inside(controller, motors, rest, sun), inside(none(), motors, rest, sun)];
    enclosure::duty_peak(heats, resistance, [work_time, rest_time], constant)
}

fn time_to_limit(
    limit: Temperature,
    air: Temperature,
    at_rest: TemperatureStep,
    constant: Time,
) -> Result<Time, Impossible> {
    lump::time_to_rise(heat::rise_above(limit, air), at_rest, constant)
}

fn wall_resistance(
    thickness: Length,
    conductivity: ThermalConductivity,
    body: Area,
    lid: Area,
) -> ThermalResistance {
    lump::slab_resistance(thickness, conductivity, body + lid)
}
