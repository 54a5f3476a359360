//! Combustion engines by power, torque, fuel and losses.

use uom::si::Quantity;
use uom::si::f64::{
    AngularVelocity, AvailableEnergy, MassRate, Power, Pressure, Ratio, Torque, Volume,
};
use uom::typenum::{N2, P2, Z0};

use crate::physics::si;

/// Fuel mass per energy delivered, SI kilogram per joule.
pub type SpecificConsumption =
    Quantity<uom::si::ISQ<N2, Z0, P2, Z0, Z0, Z0, Z0>, uom::si::SI<f64>, f64>;

/// Torque of a power at a speed, `T = P / ω`.
///
/// Speed above zero. Source: OpenStax, University Physics Volume 1, section 10.8.
pub fn torque(power: Power, speed: AngularVelocity) -> Torque {
    si(power.value / speed.value)
}

/// Share of the fuel's energy that reaches the shaft, `η = 1 / (b H)`.
///
/// Specific consumption `b`, calorific value `H`, both above zero.
/// Source: M. L. Mathur, R. P. Sharma, Internal Combustion Engine.
pub fn thermal_efficiency(consumption: SpecificConsumption, calorific: AvailableEnergy) -> Ratio {
    si(1.0 / (consumption.value * calorific.value))
}

/// Fuel used at a power, `ṁ = b P`.
pub fn fuel_flow(consumption: SpecificConsumption, power: Power) -> MassRate {
    si(consumption.value * power.value)
}

/// Air drawn in, `ṁ_air = λ ṁ`.
pub fn air_flow(fuel: MassRate, air_per_fuel: Ratio) -> MassRate {
    fuel * air_per_fuel
}

/// Heat to shed, `ṁ H − P`: exhaust, cooling and friction together.
pub fn waste_heat(fuel: MassRate, calorific: AvailableEnergy, power: Power) -> Power {
    si::<uom::si::power::Dimension>(fuel.value * calorific.value) - power
}

/// Power of the gas on the pistons, `P_i = x P + P_f`.
///
/// Full shaft power `P`, load `x`, friction power `P_f` that stays.
/// Source: M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3.
pub fn indicated_power(full_power: Power, friction: Power, load: Ratio) -> Power {
    full_power * load + friction
}

/// Brake mean effective pressure, `p = π z T / V`, with `z` strokes for each cycle.
///
/// Torque in newton metres, displacement of all cylinders in cubic metres, above zero.
/// Source: J. B. Heywood, Internal Combustion Engine Fundamentals, section 2.7 (from memory).
pub fn brake_mean_pressure(torque: Torque, displacement: Volume, strokes: Ratio) -> Pressure {
    si(std::f64::consts::PI * strokes.value * torque.value / displacement.value)
}

/// Share of the gas work that reaches the shaft at part load, `η = x P / (x P + P_f)`.
///
/// Friction power `P_f` stays as the load `x` falls.
/// Source: M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3.
pub fn mechanical_efficiency(full_power: Power, friction: Power, load: Ratio) -> Ratio {
    full_power * load / indicated_power(full_power, friction, load)
}
