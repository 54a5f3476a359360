//! Dry air at about one atmosphere, as cooling formulas need it.

use uom::si::f64::{
    DiffusionCoefficient, KinematicViscosity, MassDensity, Ratio, SpecificHeatCapacity,
    TemperatureCoefficient, ThermalConductivity, ThermodynamicTemperature,
};

use crate::physics::si;

/// What air does at one temperature.
#[derive(Debug, Clone, Copy)]
pub struct Air {
    /// Density.
    pub density: MassDensity,
    /// Thermal conductivity.
    pub conductivity: ThermalConductivity,
    /// Kinematic viscosity.
    pub viscosity: KinematicViscosity,
    /// Specific heat at constant pressure.
    pub specific_heat: SpecificHeatCapacity,
    /// Prandtl number: viscosity over thermal diffusivity.
    pub prandtl: Ratio,
    /// Expansion of an ideal gas, one over its temperature.
    pub expansion: TemperatureCoefficient,
}

/// Dry air at 101 325 Pa and a film temperature, 0 to 150 °C within 1 %.
///
/// Ideal gas; viscosity and conductivity in the form of Sutherland's law, and specific heat, fitted
/// to CoolProp 8.0.0.
pub fn air(temperature: ThermodynamicTemperature) -> Air {
    let t = temperature.value;
    let density = 101_325.0 / (287.05 * t);
    let sutherland =
        |at_freezing: f64, s: f64| at_freezing * (t / 273.15).powf(1.5) * (273.15 + s) / (t + s);
    let viscosity = sutherland(1.722e-5, 110.4);
    let conductivity = sutherland(0.02436, 165.0);
    let celsius = t - 273.15;
    let specific_heat = 1005.7 + 0.012 * celsius + 0.00043 * celsius * celsius;
    Air {
        density: si(density),
        conductivity: si(conductivity),
        viscosity: si(viscosity / density),
        specific_heat: si(specific_heat),
        prandtl: si(viscosity * specific_heat / conductivity),
        expansion: si(1.0 / t),
    }
}

impl Air {
    /// Thermal diffusivity, viscosity over the Prandtl number.
    pub fn diffusivity(&self) -> DiffusionCoefficient {
        si(self.viscosity.value / self.prandtl.value)
    }
}

/// Film temperature, half way between a surface and the air.
pub fn film(
    surface: ThermodynamicTemperature,
    air: ThermodynamicTemperature,
) -> ThermodynamicTemperature {
    si(f64::midpoint(surface.value, air.value))
}
