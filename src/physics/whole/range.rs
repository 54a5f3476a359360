//! Energy for a distance, and the distance for an energy.

use uom::si::f64::{Energy, Force, Length, Power, Ratio, Time, Velocity};

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
