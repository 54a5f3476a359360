//! Energy for a distance, and the distance for an energy.

use uom::si::f64::{Energy, Force, Length, Mass, Power, Ratio, Time, Velocity};

use crate::physics::Impossible;

/// Energy from the battery for each metre, `e = max(0, R) / η + P₀ / v`: a slope that pushes gives nothing back.
///
/// Resistance in newtons, overall efficiency above 0 to 1, idle power in watts, speed in metres per
/// second above zero, steady. A joule per metre is a newton.
/// Source: work over distance, OpenStax, University Physics Volume 1, section 7.1.
pub fn energy_per_distance(
    resistance: Force,
    efficiency: Ratio,
    idle: Power,
    speed: Velocity,
) -> Force {
    let held_back = if resistance.value > 0.0 { resistance } else { Force::default() };
    held_back / efficiency + idle / speed
}

/// The part of the battery's energy that may be used.
pub fn usable_energy(energy: Energy, share: Ratio) -> Energy {
    energy * share
}

/// How far an energy carries, `d = E / e`.
pub fn range(energy: Energy, per_distance: Force) -> Length {
    energy / per_distance
}

/// Time for a distance at a steady speed, `t = d / v`.
pub fn trip_time(distance: Length, speed: Velocity) -> Time {
    distance / speed
}

/// Energy for a distance, `E = e d`.
///
/// Source: work, OpenStax, University Physics Volume 1, section 7.1.
pub fn leg_energy(per_distance: Force, distance: Length) -> Energy {
    per_distance * distance
}

/// Resistance on the way back over the same ground, `(R − F_s)(m − m_l)/m + D`.
///
/// Rolling resistance `R` and slope force `F_s` of the way out in newtons, both in step with the
/// mass; air drag `D`; `m_l` the load left behind, below zero when one is picked up.
/// Source: force balance, Mannering and Washburn, Principles of Highway Engineering, chapter 2.
///
/// # Errors
/// [`Impossible::NothingComesBack`] when the load left is the whole mass or more.
pub fn return_resistance(
    rolling: Force,
    slope: Force,
    drag: Force,
    mass: Mass,
    left: Mass,
) -> Result<Force, Impossible> {
    let back = mass - left;
    if back <= Mass::default() {
        return Err(Impossible::NothingComesBack);
    }
    Ok((rolling - slope) * (back / mass) + drag)
}

/// How many trips an energy is good for.
pub fn trips(energy: Energy, trip: Energy) -> Ratio {
    energy / trip
}
