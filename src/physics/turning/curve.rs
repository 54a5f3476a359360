//! Going round a curve.

use uom::ConstZero;
use uom::si::angle::radian;
use uom::si::angular_velocity::radian_per_second;
use uom::si::f64::{Acceleration, Angle, AngularVelocity, Force, Length, Mass, Ratio, Velocity};

use crate::physics::Impossible;

/// Sideways acceleration in a turn, `a = v² / R`.
///
/// Speed in metres per second, radius in metres, above zero.
/// Source: OpenStax, College Physics 2e, section 6.2 Centripetal Acceleration.
pub fn sideways_acceleration(speed: Velocity, radius: Length) -> Acceleration {
    speed * speed / radius
}

/// Sideways force that gives an acceleration, `F = m a`.
///
/// Source: Newton's second law, OpenStax, College Physics 2e, section 6.3 Centripetal Force.
pub fn sideways_force(mass: Mass, acceleration: Acceleration) -> Force {
    mass * acceleration
}

/// Grip that a flat turn takes, `μ = a / g`.
///
/// Source: OpenStax, College Physics 2e, section 6.3 Centripetal Force, Example 6.4.
pub fn sideways_grip(acceleration: Acceleration, gravity: Acceleration) -> Ratio {
    acceleration / gravity
}

/// Speed at which a bank needs no grip, `v = √(R g tan β)`.
///
/// Bank from 0 to less than 90°. Source: OpenStax, University Physics Volume 1, section 6.3.
pub fn bank_speed(radius: Length, gravity: Acceleration, bank: Angle) -> Velocity {
    (radius * gravity * bank.tan()).sqrt()
}

/// Radius of the path of the middle of the rear axle, `R = L / |tan δ|`, at a walking pace.
///
/// Wheelbase in metres, steering angle less than 90° either way; tyre slip left out.
/// Source: Ackermann geometry, T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6
/// (from memory).
///
/// # Errors
/// [`Impossible::StraightOn`] for no angle, [`Impossible::NoTurnThere`] from 90° on.
pub fn turn_radius(wheelbase: Length, steer_angle: Angle) -> Result<Length, Impossible> {
    let angle = steer_angle.get::<radian>().abs();
    if angle == 0.0 {
        Err(Impossible::StraightOn)
    } else if angle >= std::f64::consts::FRAC_PI_2 {
        Err(Impossible::NoTurnThere)
    } else {
        Ok(wheelbase / angle.tan())
    }
}

/// Steering angle for a radius at a walking pace, `δ = atan(L / R)`.
///
/// Source: as [`turn_radius`].
pub fn steer_angle(wheelbase: Length, radius: Length) -> Angle {
    (wheelbase / radius).atan()
}

/// Radius of the turn of two tracks at different speeds, `R = B/2 · |(v₁ + v₂)/(v₁ − v₂)|`.
///
/// `B` is the distance between the middles of the tracks in metres; slip left out: real turns are
/// wider. A speed below zero runs backwards; tracks at opposite speeds spin on the spot.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 6 (from memory).
///
/// # Errors
/// [`Impossible::StraightOn`] when both run alike.
pub fn turn_radius_from_tracks(
    gauge: Length,
    one: Velocity,
    other: Velocity,
) -> Result<Length, Impossible> {
    if one == other {
        return Err(Impossible::StraightOn);
    }
    Ok(gauge * ((one + other) / (one - other)).abs() * 0.5)
}

/// Rate of turning on a curve, `ω = v / R`.
///
/// Source: OpenStax, University Physics Volume 1, section 10.3.
pub fn turning_rate(speed: Velocity, radius: Length) -> AngularVelocity {
    if speed == Velocity::ZERO {
        return AngularVelocity::ZERO;
    }
    AngularVelocity::new::<radian_per_second>(
        speed.get::<uom::si::velocity::meter_per_second>() / radius.get::<uom::si::length::meter>(),
    )
}
