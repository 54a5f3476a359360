//! Where losses go and how hot things get.

pub mod air;
pub mod brake;
pub mod convection;
pub mod enclosure;
pub mod fin;
pub mod lump;
pub mod radiation;
pub mod sink;
pub mod winding;

use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};

use super::si;

/// How much warmer one reading is than another, `T − T₀`.
pub fn rise_above(
    temperature: ThermodynamicTemperature,
    reference: ThermodynamicTemperature,
) -> TemperatureInterval {
    si(temperature.value - reference.value)
}

/// A reading some degrees above another, `T₀ + ΔT`.
pub fn temperature_above(
    reference: ThermodynamicTemperature,
    rise: TemperatureInterval,
) -> ThermodynamicTemperature {
    reference + rise
}
