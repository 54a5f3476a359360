//! The weight spiral: mass asks for power, power for battery, battery is mass.
//!
//! The machine's mass is the fixed point of `m = m₀ + β m`, where `β` is what each kilogram asks for
//! in battery, drive and frame. It exists for `β < 1` alone: `m = m₀ / (1 − β)`.
//! Source: the sizing equation of vehicle and aircraft design, D. P. Raymer, Aircraft Design: A
//! Conceptual Approach, chapter 3 (from memory).

use uom::si::f64::{AvailableEnergy, Force, Length, Mass, Power, Ratio, SpecificPower, Velocity};
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// Battery for each kilogram of machine, `β_b = e d / (m u w)`.
///
/// `e` energy per distance of a machine of mass `m`, taken to grow in step with mass; `d` the
/// distance wanted; `u` the share of the battery that may be used; `w` its energy per mass.
pub fn battery_share(
    per_distance: Force,
    mass: Mass,
    distance: Length,
    usable: Ratio,
    specific_energy: AvailableEnergy,
) -> Ratio {
    per_distance * distance / (mass * usable * specific_energy)
}

/// Drive for each kilogram of machine, `β_d = r R v / (m w_P)`.
///
/// `R v` is the power at the ground of a machine of mass `m`, `r` how many times that the drive must
/// give at most, `w_P` its power per mass.
pub fn drive_share(
    resistance: Force,
    speed: Velocity,
    reserve: Ratio,
    mass: Mass,
    specific_power: SpecificPower,
) -> Ratio {
    let power: Power = resistance * speed;
    let needed: SpecificPower = power * reserve / mass;
    needed / specific_power
}

/// All that each kilogram asks for, `β = β_b + β_d + β_f`; a drive not spoken of asks for nothing.
pub fn growth_share(battery: Ratio, drive: Option<Ratio>, frame: Ratio) -> Ratio {
    battery + drive.unwrap_or_default() + frame
}

/// What one kilogram of load makes the machine heavier in the end, `1 / (1 − β)`.
///
/// # Errors
/// [`Impossible::NeverCloses`] when `β` is 1 or more.
pub fn growth_factor(share: Ratio) -> Result<Ratio, Impossible> {
    let rest = Ratio::new::<ratio>(1.0) - share;
    if rest <= Ratio::default() {
        return Err(Impossible::NeverCloses);
    }
    Ok(Ratio::new::<ratio>(1.0) / rest)
}

/// The mass at which the spiral comes to rest, `m = m₀ / (1 − β)`.
pub fn closed_mass(bare: Mass, growth_factor: Ratio) -> Mass {
    bare * growth_factor
}

/// The battery in it, `β_b m`.
pub fn closed_battery(mass: Mass, battery_share: Ratio) -> Mass {
    mass * battery_share
}

/// The distance at which the battery would have to be endless, `d (1 − β + β_b) / β_b`.
///
/// # Errors
/// [`Impossible::NeverCloses`] when drive and frame alone already ask for more than there is.
pub fn largest_range(distance: Length, battery: Ratio, share: Ratio) -> Result<Length, Impossible> {
    let left = Ratio::new::<ratio>(1.0) - share + battery;
    if left <= Ratio::default() {
        return Err(Impossible::NeverCloses);
    }
    Ok(distance * left / battery)
}
