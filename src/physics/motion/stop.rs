//! Stopping: braked, with the time to react, or left to roll out.

use uom::ConstZero;
use uom::si::f64::{Acceleration, Angle, Force, Length, Mass, Ratio, Time, Velocity};

use crate::physics::Impossible;

/// Deceleration with every wheel or track locked, `a = g (μ cos θ + sin θ)`, nose uphill positive.
///
/// Source: OpenStax, University Physics Volume 1, chapter 6, challenge problem on a 1000-kg car.
///
/// # Errors
/// [`Impossible::SlidesOn`] when the slope pulls more than the ground holds.
pub fn locked_deceleration(
    grip: Ratio,
    gravity: Acceleration,
    slope: Angle,
) -> Result<Acceleration, Impossible> {
    let deceleration = gravity * (grip * slope.cos() + slope.sin());
    if deceleration > Acceleration::ZERO { Ok(deceleration) } else { Err(Impossible::SlidesOn) }
}

/// Distance braked, `d = v² / (2 a)`.
///
/// Speed in metres per second, deceleration in metres per second squared, above zero.
/// Source: OpenStax, University Physics Volume 1, section 3.4.
pub fn braking_distance(speed: Velocity, deceleration: Acceleration) -> Length {
    speed * speed / (deceleration * 2.0)
}

/// Distance gone before braking begins, `d = v t`.
///
/// Source: OpenStax, University Physics Volume 1, section 3.4.
pub fn reaction_distance(speed: Velocity, time: Time) -> Length {
    speed * time
}

/// Mean force of a stop, `F = m a`.
///
/// Source: OpenStax, University Physics Volume 1, section 5.3.
pub fn braking_force(mass: Mass, deceleration: Acceleration) -> Force {
    mass * deceleration
}

/// Distance rolled out against a steady resistance and the air, `s = m/(2k) ln(1 + k v²/R)`, with
/// `k v²` the drag at the starting speed.
///
/// Without air it is `m v² / (2 R)`. The mass is the equivalent mass, since the rotating parts push.
/// Source: `m v dv/ds = −R − k v²` solved; coast-down of SAE J1263 (from memory).
///
/// # Errors
/// [`Impossible::SlidesOn`] when nothing steady holds it back, so that it never comes to rest.
pub fn coast_down_distance(
    mass: Mass,
    speed: Velocity,
    resistance: Force,
    drag: Force,
) -> Result<Length, Impossible> {
    if resistance <= Force::ZERO {
        return Err(Impossible::SlidesOn);
    }
    let rolled = mass * speed * speed / (resistance * 2.0);
    let share: f64 = (drag / resistance).value;
    Ok(if share == 0.0 { rolled } else { rolled * (share.ln_1p() / share) })
}

/// Time to roll out, `t = m/√(k R) · atan(v √(k/R))`; `m v / R` without air.
///
/// Source and errors as [`coast_down_distance`].
pub fn coast_down_time(
    mass: Mass,
    speed: Velocity,
    resistance: Force,
    drag: Force,
) -> Result<Time, Impossible> {
    if resistance <= Force::ZERO {
        return Err(Impossible::SlidesOn);
    }
    let steady: Time = mass * speed / resistance;
    let root = (drag / resistance).value.sqrt();
    Ok(if root == 0.0 { steady } else { steady * (root.atan() / root) })
}
