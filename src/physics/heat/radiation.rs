//! Heat that a warm surface shines away.

use uom::si::f64::{Area, HeatTransfer, Power, Ratio, ThermodynamicTemperature};

use crate::physics::si;

/// Stefan-Boltzmann constant, SI. Source: CODATA 2018, exact.
const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;

/// Net radiation of a grey surface into wide surroundings, `P = ε σ A (T⁴ − T₀⁴)`.
///
/// Emissivity 0 to 1; the surroundings see it all and are large.
/// Source: OpenStax, College Physics 2e, section 14.7 Radiation.
pub fn radiated(
    emissivity: Ratio,
    area: Area,
    surface: ThermodynamicTemperature,
    surroundings: ThermodynamicTemperature,
) -> Power {
    let fourth = surface.value.powi(4) - surroundings.value.powi(4);
    si(emissivity.value * STEFAN_BOLTZMANN * area.value * fourth)
}

/// The same as a coefficient, `h = ε σ (T² + T₀²)(T + T₀)`.
pub fn coefficient(
    emissivity: Ratio,
    surface: ThermodynamicTemperature,
    surroundings: ThermodynamicTemperature,
) -> HeatTransfer {
    let (t, t0) = (surface.value, surroundings.value);
    si(emissivity.value * STEFAN_BOLTZMANN * (t * t + t0 * t0) * (t + t0))
}
