//! The air: its density, and what thin air takes from an engine.

use uom::ConstZero;
use uom::si::f64::{Length, MassDensity, Pressure, Ratio, ThermodynamicTemperature};
use uom::si::length::{foot, meter};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::thermodynamic_temperature::kelvin;

use crate::physics::Impossible;

/// Gas constant of dry air in joules per kilogram and kelvin: 8.31432 / 0.0289644.
const DRY_AIR: f64 = 287.053;
/// Temperature at sea level in kelvin.
const SEA_LEVEL: f64 = 288.15;
/// How much cooler each metre up is, in kelvin per metre.
const LAPSE: f64 = 0.0065;
/// Radius of the Earth in the standard, in metres.
const EARTH: f64 = 6_356_766.0;

/// Temperature of the standard atmosphere, `T = 288.15 K − 6.5 K/km · H` with the geopotential
/// altitude `H = z / (1 + z / 6356.766 km)`.
///
/// Altitude `z` above the sea in metres, from 5000 m below it to 11 000 m.
/// Source: U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF), lowest layer.
///
/// # Errors
/// [`Impossible::OutsideTroposphere`] outside that range.
pub fn standard_temperature(altitude: Length) -> Result<ThermodynamicTemperature, Impossible> {
    let height = altitude.get::<meter>();
    if !(-5000.0..=11_000.0).contains(&height) {
        return Err(Impossible::OutsideTroposphere);
    }
    let geopotential = height / (1.0 + height / EARTH);
    Ok(ThermodynamicTemperature::new::<kelvin>(SEA_LEVEL - LAPSE * geopotential))
}

/// Pressure of the standard atmosphere, `p = 101 325 Pa · (T / 288.15 K)^(g₀ / (R L))`, from its
/// temperature at the same altitude.
///
/// The exponent is 5.2559. Source: as [`standard_temperature`].
pub fn standard_pressure(temperature: ThermodynamicTemperature) -> Pressure {
    let share = temperature.get::<kelvin>() / SEA_LEVEL;
    Pressure::new::<pascal>(101_325.0 * share.powf(9.80665 / (DRY_AIR * LAPSE)))
}

/// Density of dry air as an ideal gas, `ρ = p / (R T)` with `R = 287.05 J/(kg K)`.
///
/// Pressure in pascals, temperature in kelvin, above zero; moist air is up to 1 or 2 % lighter.
/// Source: U.S. Standard Atmosphere 1976, equation of state.
pub fn air_density(pressure: Pressure, temperature: ThermodynamicTemperature) -> MassDensity {
    let density = pressure.get::<pascal>() / (DRY_AIR * temperature.get::<kelvin>());
    MassDensity::new::<kilogram_per_cubic_meter>(density)
}

/// Density over that of standard air at sea level, `σ = ρ / 1.225 kg/m³`.
///
/// Source: U.S. Standard Atmosphere 1976, sea-level values.
pub fn density_ratio(density: MassDensity) -> Ratio {
    density / MassDensity::new::<kilogram_per_cubic_meter>(1.225)
}

/// Part of its power that an engine without a supercharger loses: 3 % for each 1000 ft above
/// 2500 ft.
///
/// A rule of thumb for working engines with some margin, to about 10 000 ft; nothing below
/// 2500 ft, all of it at most. Source: civil-engineering handbook rule for earthmoving haul units.
pub fn altitude_power_loss(altitude: Length) -> Ratio {
    let loss = 0.03 * (altitude - Length::new::<foot>(2500.0)) / Length::new::<foot>(1000.0);
    loss.max(Ratio::ZERO).min(Ratio::new::<ratio>(1.0))
}
