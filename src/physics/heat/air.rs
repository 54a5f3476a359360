//! Dry air at about one atmosphere, as cooling formulas need it.
//!
//! At 101 325 Pa and a film temperature, 0 to 150 °C within 1 %. Ideal gas; viscosity and
//! conductivity in the form of Sutherland's law, and specific heat, fitted to CoolProp 8.0.0.

use uom::si::f64::{
    KinematicViscosity, MassDensity, Ratio, SpecificHeatCapacity, TemperatureCoefficient,
    ThermalConductivity, ThermodynamicTemperature,
};

use crate::physics::si;

/// Sutherland's law from its value at 0 °C and its constant.
fn sutherland(temperature: f64, at_freezing: f64, constant: f64) -> f64 {
    at_freezing * (temperature / 273.15).powf(1.5) * (273.15 + constant) / (temperature + constant)
}

fn dynamic_viscosity(temperature: ThermodynamicTemperature) -> f64 {
    sutherland(temperature.value, 1.722e-5, 110.4)
}

/// Density of an ideal gas, `ρ = p / (R T)`.
pub fn density(temperature: ThermodynamicTemperature) -> MassDensity {
    si(101_325.0 / (287.05 * temperature.value))
}

/// Thermal conductivity.
pub fn conductivity(temperature: ThermodynamicTemperature) -> ThermalConductivity {
    si(sutherland(temperature.value, 0.02436, 165.0))
}

/// Kinematic viscosity: dynamic viscosity over density.
pub fn viscosity(temperature: ThermodynamicTemperature) -> KinematicViscosity {
    si(dynamic_viscosity(temperature) / density(temperature).value)
}

/// Specific heat at constant pressure.
pub fn specific_heat(temperature: ThermodynamicTemperature) -> SpecificHeatCapacity {
    let celsius = temperature.value - 273.15;
    si(1005.7 + 0.012 * celsius + 0.00043 * celsius * celsius)
}

/// Prandtl number, `Pr = μ c / k`: viscosity over thermal diffusivity.
pub fn prandtl(temperature: ThermodynamicTemperature) -> Ratio {
    let heat = specific_heat(temperature).value;
    si(dynamic_viscosity(temperature) * heat / conductivity(temperature).value)
}

/// Expansion of an ideal gas, one over its temperature.
pub fn expansion(temperature: ThermodynamicTemperature) -> TemperatureCoefficient {
    si(1.0 / temperature.value)
}

/// Film temperature, half way between a surface and the air.
pub fn film(
    surface: ThermodynamicTemperature,
    air: ThermodynamicTemperature,
) -> ThermodynamicTemperature {
    si(f64::midpoint(surface.value, air.value))
}
