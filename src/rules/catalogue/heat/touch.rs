//! What may be touched, and how warm parts cool down.

use super::super::common::{BURNS, HOT, always, exceeds, over};
use super::controller::about;
use crate::physics::Impossible;
use crate::physics::heat::{self, lump};
use crate::quantity::catalogue::electrics::CONTROLLER_LOSS;
use crate::quantity::catalogue::heat::*;
use crate::quantity::{
    Area, Energy, HeatCapacity, HeatTransfer, Measure, Power, Ratio, Temperature, TemperatureStep,
    ThermalResistance, Time,
};
use crate::rules::{Caution, Fault, Maybe, Rule, Values};

const BURN: &str = "ISO 13732-1:2006, burns by hot surfaces: thresholds by material and time of contact (from memory)";
const LUMP: &str = "Lumped bodies, S. K. Som, Introduction to Heat Transfer";
const ONE: &[&str] = &["The part is as warm inside as its skin: see its Biot number."];
const REACH: &[&str] = &[
    "Housing, box and heat sink are taken at rest temperature, all within reach; the box is taken as warm as the air in it.",
    "Brakes, exhausts, bare batteries and skin in the sun are not among them.",
];
const STANDARD: Caution = Caution {
    when: always,
    says: "Burn thresholds are bands for healthy adult skin, not permissions: the standard of the machine, the place and children or older people in reach ask for less. Where a standard applies, its own limits count.",
};
const TOO_HOT: Caution = Caution {
    when: |values| exceeds(values, HOTTEST_RISE, TOUCH_RISE),
    says: "Something in reach burns: guard it, mark it, cool it better, or let it cool before hands come near.",
};
const FADES: Caution = Caution {
    when: always,
    says: "Still air cools a cooler part less: wait a quarter longer than this, and measure before you touch.",
};
const UNEVEN: Caution = Caution {
    when: |values| values.si(BIOT_NUMBER) > Some(0.1),
    says: "The Biot number is over 0.1: the inside stays warmer than the skin, and warms it again after it seemed cool.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = touch();
    rules.extend(cooling());
    rules
}

fn touch() -> Vec<Rule> {
    vec![
        Rule::new(
            SINK_TEMPERATURE,
            (CONTROLLER_LOSS, SINK_TO_AIR, COOLING_AIR, Maybe(BOX_TEMPERATURE)),
            sink_temperature,
        )
        .title("The heat sink's rise on top of the air about it")
        .formula(r"\q{sink-temperature} = \max\left( \q{cooling-air},\ \q{box-temperature} \right) + \q{controller-loss} \cdot \q{sink-to-air}")
        .assumes(&["The heat sink stands in the air of the box, if there is a box."])
        .holds("Steady load.")
        .source("The thermal form of Ohm's law; S. K. Som, Introduction to Heat Transfer")
        .cautions(&[Caution { when: sink_burns, says: HOT }]),
        Rule::new(
            HOTTEST_SURFACE,
            (Maybe(HOUSING_TEMPERATURE), Maybe(BOX_TEMPERATURE), Maybe(SINK_TEMPERATURE)),
            hottest,
        )
        .title("The hottest that hands can reach")
        .formula(r"\q{hottest-surface} = \max\left( \q{housing-temperature},\ \q{box-temperature},\ \q{sink-temperature} \right)")
        .assumes(REACH)
        .holds("Steady load; after it stops a motor's housing can get warmer yet.")
        .source("Common practice, no published source"),
        Rule::new(HOTTEST_RISE, (HOTTEST_SURFACE, COOLING_AIR), heat::rise_above)
            .title("From the air to the hottest surface")
            .formula(r"\q{hottest-rise} = \q{hottest-surface} - \q{cooling-air}")
            .assumes(REACH)
            .holds("Steady load.")
            .source("The definition of a temperature rise"),
        Rule::new(TOUCH_RISE, (TOUCH_LIMIT, COOLING_AIR), heat::rise_above)
            .title("From the air to the touch limit")
            .formula(r"\q{touch-rise} = \q{touch-limit} - \q{cooling-air}")
            .assumes(&["Touch limits are for a temperature, not for a rise: a hot day leaves less."])
            .holds("The hottest day it should work on.")
            .source(BURN)
            .cautions(&[STANDARD]),
        Rule::new(TOUCH_MARGIN, (TOUCH_RISE, HOTTEST_RISE), over::<TemperatureStep>)
            .title("The rise allowed by touch over the rise there is")
            .formula(r"\q{touch-margin} = \dfrac{\q{touch-rise}}{\q{hottest-rise}}")
            .assumes(REACH)
            .holds("Steady load; contact no longer than the limit is for.")
            .source(BURN)
            .cautions(&[STANDARD, TOO_HOT]),
    ]
}

fn cooling() -> Vec<Rule> {
    vec![
        Rule::new(WARM_HEAT_CAPACITY, (WARM_MASS, WARM_SPECIFIC_HEAT), lump::heat_capacity)
            .title("Mass times specific heat")
            .formula(r"\q{warm-heat-capacity} = \q{warm-mass} \cdot \q{warm-specific-heat}")
            .assumes(ONE)
            .holds("Room temperature to 200 °C.")
            .source("OpenStax, University Physics Volume 2, section 1.4"),
        Rule::new(STORED_HEAT, (WARM_HEAT_CAPACITY, SURFACE_TEMPERATURE, COOLING_AIR), stored)
            .title("Heat capacity times excess")
            .formula(r"\q{stored-heat} = \q{warm-heat-capacity} \left( \q{surface-temperature} - \q{cooling-air} \right)")
            .assumes(ONE)
            .holds("No melting or drying in between.")
            .source("OpenStax, College Physics 2e, section 14.2"),
        Rule::new(
            BIOT_NUMBER,
            (SURFACE_COEFFICIENT, WARM_VOLUME, SURFACE_AREA, WARM_CONDUCTIVITY),
            lump::biot,
        )
        .title("Heat shed against heat led")
        .formula(r"\q{biot-number} = \dfrac{\q{surface-coefficient} \cdot \q{warm-volume}}{\q{surface-area} \cdot \q{warm-conductivity}}")
        .assumes(&["A compact part that sheds heat all over."])
        .holds("Under 0.1 one temperature does for the whole part, within 5 %.")
        .source("S. K. Som, Introduction to Heat Transfer, chapter 4"),
        Rule::new(
            COOLING_TIME_CONSTANT,
            (SURFACE_RESISTANCE, WARM_HEAT_CAPACITY, Maybe(BIOT_NUMBER)),
            constant,
        )
        .title("Resistance times capacity")
            .formula(r"\q{cooling-time-constant} = \q{surface-resistance} \cdot \q{warm-heat-capacity}")
            .assumes(ONE)
            .holds("The cooling of the surface temperature given; still air cools it less as it cools.")
            .source(LUMP)
            .cautions(&[UNEVEN]),
        Rule::new(
            COOL_DOWN_TIME,
            (COOLING_TIME_CONSTANT, SURFACE_TEMPERATURE, COOLING_AIR, TOUCH_LIMIT),
            cool_down,
        )
        .title("The excess fades by the same share in the same time")
        .formula(r"\q{cool-down-time} = \q{cooling-time-constant} \, \ln \dfrac{\q{surface-temperature} - \q{cooling-air}}{\q{touch-limit} - \q{cooling-air}}")
        .assumes(ONE)
        .holds("No loss any more, and cooling as good as at first: in still air half the excess takes a tenth longer than this, four fifths of it a quarter.")
        .source(LUMP)
        .cautions(&[UNEVEN, FADES, STANDARD]),
        Rule::new(
            WARMTH_LEFT,
            (
                SURFACE_TEMPERATURE,
                COOLING_AIR,
                STILL_AIR_COEFFICIENT,
                SURFACE_AREA,
                WARM_HEAT_CAPACITY,
                STILL_AIR_EXPONENT,
                REST_TIME,
            ),
            left,
        )
        .title("Still air cools a cooler part less")
        .formula(r"\q{warmth-left} = \left( \q{surface-temperature} - \q{cooling-air} \right) \left( 1 + \q{still-air-exponent} \cdot \dfrac{\q{still-air-coefficient} \cdot \q{surface-area} \cdot \q{rest-time}}{\q{warm-heat-capacity}} \right)^{-1 / \q{still-air-exponent}}")
        .assumes(&["The part is as warm inside as its skin: see its Biot number.", "Still air alone, no radiation: what is left is told on the safe side."])
        .holds("A part at rest in still air, with no loss any more.")
        .source("A. Bejan and A. D. Kraus (eds.), Heat Transfer Handbook, transient conduction"),
    ]
}

fn sink_temperature(
    loss: Power,
    sink: ThermalResistance,
    air: Temperature,
    inside: Option<Temperature>,
) -> Temperature {
    heat::temperature_above(about(air, inside), lump::final_rise(loss, sink))
}

fn sink_burns(values: &Values) -> bool {
    let known = (values.get(CONTROLLER_LOSS), values.get(SINK_TO_AIR), values.get(COOLING_AIR));
    matches!(known, (Some(loss), Some(sink), Some(air))
        if sink_temperature(loss, sink, air, values.get(BOX_TEMPERATURE)).si() >= BURNS)
}

fn hottest(
    housing: Option<Temperature>,
    inside: Option<Temperature>,
    sink: Option<Temperature>,
) -> Result<Temperature, Fault> {
    let ids = [HOUSING_TEMPERATURE, BOX_TEMPERATURE, SINK_TEMPERATURE].map(|id| id.any());
    let known = [housing, inside, sink].into_iter().flatten();
    known
        .reduce(|one, other| if other > one { other } else { one })
        .ok_or(Fault::NeedsOneOf(ids.to_vec()))
}

fn stored(capacity: HeatCapacity, warm: Temperature, air: Temperature) -> Energy {
    lump::heat_to_warm(capacity, heat::rise_above(warm, air))
}

/// The Biot number decides no number here, but whether it holds.
fn constant(resistance: ThermalResistance, capacity: HeatCapacity, _biot: Option<Ratio>) -> Time {
    lump::time_constant(resistance, capacity)
}

fn cool_down(
    constant: Time,
    warm: Temperature,
    air: Temperature,
    limit: Temperature,
) -> Result<Time, Impossible> {
    lump::time_to_cool(constant, heat::rise_above(warm, air), heat::rise_above(limit, air))
}

fn left(
    warm: Temperature,
    air: Temperature,
    h: HeatTransfer,
    area: Area,
    capacity: HeatCapacity,
    exponent: Ratio,
    rest: Time,
) -> TemperatureStep {
    lump::still_air_cooling(heat::rise_above(warm, air), h, area, capacity, exponent, rest)
}
