//! The air outside.

use crate::physics::motion;
use crate::quantity::catalogue::motion::*;
use crate::quantity::{Density, Pressure, Temperature};
use crate::rules::{Caution, Maybe, Rule};

const STANDARD: &str = "U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF), lowest layer; the same as the ICAO atmosphere there";
const AVERAGE_DAY: &[&str] =
    &["An average day: weather moves pressure by 3 % and temperature by more."];
const LAYER: &str = "From 5000 m below the sea to 11 000 m above it.";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(STANDARD_TEMPERATURE, (ALTITUDE,), motion::standard_temperature)
            .title("Standard air is 6.5 K cooler for each kilometre up")
            .formula(r"\q{standard-temperature} = 288.15 \, \mathrm{K} - 6.5 \, \tfrac{\mathrm{K}}{\mathrm{km}} \cdot \dfrac{\q{altitude}}{1 + \q{altitude} / 6357 \, \mathrm{km}}")
            .assumes(AVERAGE_DAY)
            .holds(LAYER)
            .source(STANDARD),
        Rule::new(STANDARD_PRESSURE, (STANDARD_TEMPERATURE,), motion::standard_pressure)
            .title("The pressure of standard air falls with altitude")
            .formula(r"\q{standard-pressure} = 101\,325 \, \mathrm{Pa} \left( \dfrac{\q{standard-temperature}}{288.15 \, \mathrm{K}} \right)^{5.2559}")
            .assumes(AVERAGE_DAY)
            .holds(LAYER)
            .source(STANDARD),
        Rule::new(
            AIR_DENSITY,
            (STANDARD_PRESSURE, STANDARD_TEMPERATURE, Maybe(AIR_PRESSURE), Maybe(AIR_TEMPERATURE)),
            density,
        )
            .title("Dry air is an ideal gas")
            .formula(r"\q{air-density} = \dfrac{\q{standard-pressure} \; \text{or} \; \q{air-pressure}}{287.05 \, \tfrac{\mathrm{J}}{\mathrm{kg \, K}} \left( \q{standard-temperature} \; \text{or} \; \q{air-temperature} \right)}")
            .assumes(&["The air is dry; damp air is up to 2 % lighter."])
            .holds("Any weather; pressure and temperature that are not said are those of standard air.")
            .source(STANDARD),
        Rule::new(AIR_DENSITY_SHARE, (AIR_DENSITY,), motion::density_ratio)
            .title("How dense the air is beside sea level")
            .formula(r"\q{air-density-share} = \dfrac{\q{air-density}}{1.225 \, \mathrm{kg/m^3}}")
            .assumes(&["The comparison is with standard air at sea level, 15 °C."])
            .holds("Any air.")
            .source(STANDARD),
        Rule::new(ALTITUDE_POWER_LOSS, (ALTITUDE,), motion::altitude_power_loss)
            .title("3 % of engine power for each 1000 ft above 2500 ft")
            .formula(r"\q{altitude-power-loss} = 0.03 \cdot \max \left( 0, \; \dfrac{\q{altitude} - 2500 \, \mathrm{ft}}{1000 \, \mathrm{ft}} \right)")
            .assumes(&["An engine without a charger, with some margin: by air density alone it loses more."])
            .holds("Engines up to about 3000 m; electric drives do not lose power with altitude, but cool less well.")
            .source("Civil-engineering handbook rule for earthmoving haul units")
            .cautions(&[Caution {
                when: |values| values.si(ALTITUDE) > Some(3048.0),
                says: "So high, the rule of thumb is stretched: the maker's table for the engine goes before it.",
            }]),
    ]
}

fn density(
    standard_pressure: Pressure,
    standard_temperature: Temperature,
    pressure: Option<Pressure>,
    temperature: Option<Temperature>,
) -> Density {
    let pressure = pressure.unwrap_or(standard_pressure);
    motion::air_density(pressure, temperature.unwrap_or(standard_temperature))
}
