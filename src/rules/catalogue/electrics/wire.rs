//! Wires: size, resistance, drop, heat, and what they stand.

use super::super::common::{always, over};
use crate::physics::drive::motor;
use crate::physics::electrics::{battery, wire};
use crate::quantity::catalogue::electrics::*;
use crate::quantity::{
    Area, Current, Length, Measure, Ratio, Resistance, Temperature, TemperatureStep, Time,
};
use crate::rules::{Caution, Rule};

const GAUGE: &str = "ASTM B258";
const COPPER: &[&str] = &[
    "Annealed copper, unless another metal is said, which is taken to warm as copper does.",
    "Solid, or the same metal area; stranded wire of a gauge resists a few per cent more.",
];
const CODE: &[Caution] = &[Caution {
    when: always,
    says: "How much a wire may carry is set by the local electrical code and the maker's table for the way it is laid; fuse it, and leave fixed, mains and vehicle wiring to licensed people.",
}];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(WIRE_DIAMETER, (WIRE_GAUGE,), wire::gauge_diameter)
            .title("Each gauge is a fixed ratio from the next")
            .formula(r"\q{wire-diameter} = 0.127\,\mathrm{mm} \cdot 92^{\frac{36 - \q{wire-gauge}}{39}}")
            .assumes(&["A solid round wire."])
            .holds("0000 (written -3) to 56.")
            .source(GAUGE),
        Rule::new(WIRE_GAUGE, (WIRE_DIAMETER,), wire::gauge)
            .title("The gauge of a diameter")
            .formula(r"\q{wire-gauge} = 36 - 39 \cdot \log_{92} \dfrac{\q{wire-diameter}}{0.127\,\mathrm{mm}}")
            .assumes(&["A solid round wire."])
            .holds("Between two gauges it is not a whole number.")
            .source(GAUGE),
        Rule::new(WIRE_AREA, (WIRE_DIAMETER,), wire::round_area)
            .title("Area of a circle")
            .formula(r"\q{wire-area} = \dfrac{\pi}{4} \cdot \q{wire-diameter}^2")
            .assumes(&["A solid round wire, metal alone."])
            .holds("Any size.")
            .source("Geometry"),
        Rule::new(WIRE_RESISTANCE, (WIRE_LENGTH, WIRE_AREA, WIRE_TEMPERATURE, WIRE_METAL_FACTOR), pair)
            .title("Metal out and back")
            .formula(r"\q{wire-resistance} = \q{wire-metal-factor} \cdot \dfrac{2 \, \q{wire-length}}{\q{wire-area}} \cdot 1.7241 \times 10^{-8}\,\mathrm{\Omega\,m} \left( 1 + \dfrac{0.00393}{\mathrm{K}} \left( \q{wire-temperature} - 293\,\mathrm{K} \right) \right)")
            .assumes(COPPER)
            .holds("From -50 °C to 200 °C.")
            .source("IEC 60028; NBS Handbook 100, Copper Wire Tables (from memory)"),
        Rule::new(WIRE_DROP, (BATTERY_CURRENT, WIRE_RESISTANCE), battery::sag)
            .title("Current times resistance")
            .formula(r"\q{wire-drop} = \q{battery-current} \cdot \q{wire-resistance}")
            .assumes(COPPER)
            .holds("The mean current; plugs and joints come on top.")
            .source("Ohm's law, OpenStax, College Physics 2e, section 20.2"),
        Rule::new(PEAK_WIRE_DROP, (PEAK_BATTERY_CURRENT, WIRE_RESISTANCE), battery::sag)
            .title("The same at the peak")
            .formula(r"\q{peak-wire-drop} = \q{peak-battery-current} \cdot \q{wire-resistance}")
            .assumes(COPPER)
            .holds("The peak; plugs and joints come on top.")
            .source("Ohm's law, OpenStax, College Physics 2e, section 20.2"),
        Rule::new(WIRE_HEAT, (BATTERY_CURRENT, WIRE_RESISTANCE), motor::winding_loss)
            .title("The current heats the wires with its square")
            .formula(r"\q{wire-heat} = \q{battery-current}^2 \cdot \q{wire-resistance}")
            .assumes(COPPER)
            .holds("Both wires together, mean current.")
            .source("OpenStax, College Physics 2e, section 20.4"),
        Rule::new(
            WIRE_WITHSTAND_TIME,
            (WIRE_AREA, PEAK_BATTERY_CURRENT, WIRE_TEMPERATURE, WIRE_FAULT_TEMPERATURE),
            copper_withstand,
        )
        .title("How long copper takes to get too hot, cooled by nothing")
        .formula(r"\q{wire-withstand-time} = \left( \dfrac{226\,\mathrm{A\,s^{1/2}/mm^2} \cdot \q{wire-area}}{\q{peak-battery-current}} \right)^2 \ln \dfrac{\q{wire-fault-temperature} - 38.7\,\mathrm{K}}{\q{wire-temperature} - 38.7\,\mathrm{K}}")
        .assumes(&["All the heat stays in the copper.", "The peak lasts; fuses should end it long before."])
        .holds("Faults up to about 5 s; beyond that cooling helps and this is on the safe side.")
        .source("IEC 60949; IEC 60364-5-54, annex A (from memory)")
        .cautions(CODE),
        Rule::new(
            WIRE_SECOND_RISE,
            (PEAK_BATTERY_CURRENT, WIRE_AREA, WIRE_TEMPERATURE),
            second_rise,
        )
        .title("The square of the current in each square millimetre")
        .formula(r"\q{wire-second-rise} = \dfrac{1.7241 \times 10^{-8}\,\mathrm{\Omega\,m} \left( 1 + \frac{0.00393}{\mathrm{K}} \left( \q{wire-temperature} - 293\,\mathrm{K} \right) \right) \cdot 1\,\mathrm{s}}{8890\,\mathrm{kg/m^3} \cdot 387\,\mathrm{J/(kg\,K)}} \left( \dfrac{\q{peak-battery-current}}{\q{wire-area}} \right)^2")
        .assumes(&["Copper that keeps all its heat.", "One second at the peak; later it goes faster, as the copper warms."])
        .holds("The first seconds; after that cooling helps.")
        .source("Energy balance; NBS Handbook 100, Copper Wire Tables (from memory); specific heat, OpenStax, College Physics, Table 14.1")
        .cautions(CODE),
        Rule::new(WIRE_MARGIN, (WIRE_RATED_CURRENT, BATTERY_CURRENT), over::<Current>)
            .title("Rated current over the mean current")
            .formula(r"\q{wire-margin} = \dfrac{\q{wire-rated-current}}{\q{battery-current}}")
            .assumes(&["The rating holds for the way the wire is laid: bundled or warm wires carry less."])
            .holds("Steady current.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(CODE),
    ]
}

fn pair(length: Length, area: Area, temperature: Temperature, metal: Ratio) -> Resistance {
    wire::pair_resistance(length, area, temperature) * metal
}

fn second_rise(current: Current, area: Area, temperature: Temperature) -> TemperatureStep {
    let resistivity = wire::copper_resistivity(temperature);
    wire::uncooled_rise(current, area, resistivity, Time::from_si(1.0))
}

fn copper_withstand(area: Area, current: Current, start: Temperature, end: Temperature) -> Time {
    wire::withstand_time(area, current, start, end, &wire::Metal::copper())
}
