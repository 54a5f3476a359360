//! Stops and drops: speed, energy, impulse, mean and peak force.

mod collision;
mod pulse;
mod support;

pub use collision::{
    closing_speed, common_speed, energy_lost, exchanged_impulse, speed_held_back, speed_pushed_on,
};
pub use pulse::{Moment, PulseShape, SpringStop, pulse_speed};
pub use support::{
    bumper_travel, drop_factor, dropped_peak, loose_mount_load, mount_load, spring_for_limit,
    spring_travel, support_sag, times_force, times_length,
};

use uom::ConstZero;
use uom::si::acceleration::standard_gravity;
use uom::si::f64::{
    Acceleration, Angle, Energy, Force, Length, Mass, Momentum, Ratio, SurfaceTension, Time,
    Velocity,
};
use uom::si::ratio::ratio;

use super::Impossible;

/// Speed after a free fall from rest, `v = √(2 g h)`.
///
/// Height in metres, zero or more; air left out.
/// Source: OpenStax, University Physics Volume 1, section 3.5 Free Fall.
pub fn drop_speed(height: Length, gravity: Acceleration) -> Velocity {
    (gravity * height * 2.0).sqrt()
}

/// Speed at touch after driving off a ledge, `v = √(v_d² + 2 g h)`.
///
/// Level speed at the edge in metres per second, height in metres, zero or more; air left out. The
/// machine comes down at a slant: `√(2 g h)` of it is straight down.
/// Source: conservation of energy, OpenStax, College Physics 2e, section 7.3.
pub fn ledge_speed(at_the_edge: Velocity, height: Length, gravity: Acceleration) -> Velocity {
    (at_the_edge * at_the_edge + gravity * height * 2.0).sqrt()
}

/// Height of the free fall that reaches a speed, `h = v² / (2 g)`.
///
/// Speed in metres per second; air left out.
/// Source: OpenStax, University Physics Volume 1, section 3.5 Free Fall.
pub fn drop_height(speed: Velocity, gravity: Acceleration) -> Length {
    speed * speed / (gravity * 2.0)
}

/// Time of a steady stop over a distance, `t = 2 s / v`.
///
/// Distance in metres, speed in metres per second.
/// Source: OpenStax, University Physics Volume 1, section 3.4 Motion with Constant Acceleration.
///
/// # Errors
/// [`Impossible::NoSpeed`] when the speed is zero.
pub fn stop_time(distance: Length, speed: Velocity) -> Result<Time, Impossible> {
    if speed == Velocity::ZERO {
        return Err(Impossible::NoSpeed);
    }
    Ok(distance * 2.0 / speed)
}

/// Distance of a steady stop in a time, `s = v t / 2`.
///
/// Time in seconds, speed in metres per second.
/// Source: OpenStax, University Physics Volume 1, section 3.4 Motion with Constant Acceleration.
pub fn stop_distance(time: Time, speed: Velocity) -> Length {
    speed * time / 2.0
}

/// Momentum `P = m v`.
///
/// Source: OpenStax, University Physics Volume 1, section 9.1 Linear Momentum.
pub fn momentum(mass: Mass, speed: Velocity) -> Momentum {
    mass * speed
}

/// Kinetic energy `E = ½ m v²`.
///
/// Source: OpenStax, University Physics Volume 1, section 7.2 Kinetic Energy.
pub fn kinetic_energy(mass: Mass, speed: Velocity) -> Energy {
    mass * speed * speed / 2.0
}

/// Impulse of a whole hit, bounce included, `J = P (1 + ε)`.
///
/// Restitution 0 (dead stop) to 1 (perfect bounce), off something that does not move.
/// Source: OpenStax, University Physics Volume 1, section 9.2 Impulse and Collisions.
pub fn impulse(momentum: Momentum, restitution: Ratio) -> Momentum {
    momentum * (Ratio::new::<ratio>(1.0) + restitution)
}

/// Speed at which it leaves again, `v' = ε v`.
///
/// Restitution 0 to 1. Source: definition of the coefficient of restitution, OpenStax, College
/// Physics 2e, section 8.5 Inelastic Collisions in One Dimension.
pub fn rebound_speed(restitution: Ratio, speed: Velocity) -> Velocity {
    speed * restitution
}

/// Part of the energy that a bounce gives back, `ε²`.
///
/// Restitution 0 to 1. Source: [`kinetic_energy`] at both speeds; the rebound height over the drop.
pub fn energy_kept(restitution: Ratio) -> Ratio {
    restitution * restitution
}

/// Coefficient of restitution from a drop and its rebound, `ε = √(h' / h)`.
///
/// Heights in metres, drop above zero; air left out.
/// Source: [`drop_height`] at both speeds; the method of the ITF ball rebound test.
pub fn restitution_from_heights(drop: Length, rebound: Length) -> Ratio {
    (rebound / drop).sqrt()
}

/// Mean deceleration of a stop, `a = v / t`.
///
/// Source: OpenStax, University Physics Volume 1, section 3.3 Average and Instantaneous Acceleration.
pub fn deceleration(speed: Velocity, time: Time) -> Acceleration {
    speed / time
}

/// An acceleration in multiples of standard gravity, `G = a / g_n`, `g_n = 9.80665 m/s²`.
///
/// Source: standard acceleration of free fall, The International System of Units (SI Brochure).
pub fn in_standard_gravity(acceleration: Acceleration) -> Ratio {
    acceleration / Acceleration::new::<standard_gravity>(1.0)
}

/// Peak deceleration in multiples of standard gravity, `G_peak = k_p G`.
///
/// `k_p ≥ 1` from the shape of the pulse, see [`pulse_speed`].
pub fn peak_in_standard_gravity(pulse_factor: Ratio, mean: Ratio) -> Ratio {
    pulse_factor * mean
}

/// Mean force that takes the speed away, `F_a = m v / t`, without holding up the weight.
///
/// Over the time from first touch to rest.
/// Source: OpenStax, University Physics Volume 1, section 9.2 Impulse and Collisions.
pub fn stopping_force(mass: Mass, speed: Velocity, time: Time) -> Force {
    mass * speed / time
}

/// The part of the weight that the stop holds up as well, `F_W = W sin α`.
///
/// `α` is how steeply it comes in: 0 along level ground, 90° straight down.
/// Source: OpenStax, University Physics Volume 1, section 5.6 Common Forces (inclined plane).
pub fn weight_share(weight: Force, approach: Angle) -> Force {
    weight * approach.sin()
}

/// Mean force on the machine over the stop, `F_mean = F_a + F_W`.
///
/// Source: Newton's second law along the path, OpenStax, University Physics Volume 1, section 5.3.
pub fn mean_force(stopping: Force, weight_share: Force) -> Force {
    stopping + weight_share
}

/// Peak force on the machine over the stop, `F_peak = k_p F_a + F_W`.
///
/// Only the force that takes the speed away follows the pulse; the weight's share is steady.
/// Source: pulse shapes of IEC 60068-2-27 (from memory), see [`pulse_speed`].
pub fn peak_force(pulse_factor: Ratio, stopping: Force, weight_share: Force) -> Force {
    pulse_factor * stopping + weight_share
}

/// Peak force of one straight spring that takes the whole stop, `F = 2 (E / s + F_W)`.
///
/// From the energy balance `E + F_W s = ½ F s`: the spring starts slack and gives back all it
/// takes. Distance in metres, above zero.
/// Source: OpenStax, College Physics 2e, section 7.4 Conservative Forces and Potential Energy.
pub fn spring_peak_force(energy: Energy, distance: Length, weight_share: Force) -> Force {
    (energy / distance + weight_share) * 2.0
}

/// Stiffness of the straight spring that reaches a force at a distance, `k = F / s`.
///
/// Source: Hooke's law, OpenStax, University Physics Volume 1, section 5.6 Common Forces.
pub fn spring_rate(force: Force, distance: Length) -> SurfaceTension {
    (force / distance).into()
}

/// How many times one force is another, `n = F / F₀`.
pub fn force_ratio(force: Force, other: Force) -> Ratio {
    force / other
}

/// The shock limit of a part over the peak deceleration, both in multiples of standard gravity.
pub fn shock_margin(limit: Ratio, peak: Ratio) -> Ratio {
    limit / peak
}
