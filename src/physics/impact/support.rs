//! A drop onto something springy, and the spring or bumper that a stop needs.

use uom::ConstZero;
use uom::si::acceleration::standard_gravity;
use uom::si::f64::{
    Acceleration, Energy, Force, Length, Mass, RadiantExposure, Ratio, SurfaceTension, Velocity,
};
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// How far a support gives under the weight at rest, `δ = W / k`.
///
/// Source: Hooke's law, OpenStax, University Physics Volume 1, section 5.6 Common Forces.
pub fn support_sag(weight: Force, stiffness: SurfaceTension) -> Length {
    // The plain kind of a force per length goes by this name in uom.
    weight / RadiantExposure::from(stiffness)
}

/// Peak force over the weight at rest, `n = 1 + √(1 + 2 h / δ)`.
///
/// A drop height of zero gives 2: a load let go at once doubles. Nothing is lost and the support
/// weighs nothing, so it is an upper bound.
/// Source: Gere and Timoshenko, Mechanics of Materials, section 2.8, impact factor.
pub fn drop_factor(height: Length, sag: Length) -> Ratio {
    let one = Ratio::new::<ratio>(1.0);
    one + (one + height * 2.0 / sag).sqrt()
}

/// So many times a force.
pub fn times_force(factor: Ratio, force: Force) -> Force {
    factor * force
}

/// So many times a length.
pub fn times_length(factor: Ratio, length: Length) -> Length {
    factor * length
}

/// Peak deceleration in multiples of gravity of what drops, `n − 1`.
///
/// The support pushes with `n` weights, and one of them only holds the weight.
pub fn dropped_peak(factor: Ratio) -> Ratio {
    factor - Ratio::new::<ratio>(1.0)
}

/// Travel a bumper needs to keep the peak at a limit, `s = k_p v² / (2 G g_n)`.
///
/// `k_p` is peak over mean of the pulse, `G` the limit in multiples of standard gravity.
/// Source: steady stop with the pulse's peak; OpenStax, University Physics Volume 1, section 3.4.
pub fn bumper_travel(speed: Velocity, pulse_factor: Ratio, limit: Ratio) -> Length {
    pulse_factor * (speed * speed) / (acceleration(limit) * 2.0)
}

/// Travel a straight spring needs to keep the peak at a limit, `s = 2 E / (m G g_n − F_W)`.
///
/// From `½ F s = E + F_W s` with the peak force `F = m G g_n + F_W`.
/// Source: energy balance, OpenStax, College Physics 2e, section 7.4.
///
/// # Errors
/// [`Impossible::LimitBelowWeight`] when `m G g_n` is not above the weight's share.
pub fn spring_travel(
    energy: Energy,
    mass: Mass,
    limit: Ratio,
    weight_share: Force,
) -> Result<Length, Impossible> {
    let spare = mass * acceleration(limit) - weight_share;
    if spare <= Force::ZERO {
        return Err(Impossible::LimitBelowWeight);
    }
    Ok(energy * 2.0 / spare)
}

/// Stiffness of that spring, `k = (m G g_n + F_W) / s`.
///
/// Source: Hooke's law, OpenStax, University Physics Volume 1, section 5.6 Common Forces.
pub fn spring_for_limit(
    mass: Mass,
    limit: Ratio,
    weight_share: Force,
    travel: Length,
) -> SurfaceTension {
    ((mass * acceleration(limit) + weight_share) / travel).into()
}

/// Force that a mounted part puts on its mount at a peak, `F = m G g_n`.
///
/// Source: Newton's second law, OpenStax, University Physics Volume 1, section 5.3.
pub fn mount_load(mass: Mass, peak: Ratio) -> Force {
    mass * acceleration(peak)
}

/// The most it can be when the part shakes on its mount, twice the load of a stiff one.
///
/// The largest answer of an undamped spring and mass to a force put on at once; no single pulse that
/// pushes one way asks more.
/// Source: A. K. Chopra, Dynamics of Structures, chapter 4, step force and pulses (from memory).
pub fn loose_mount_load(stiff: Force) -> Force {
    stiff * 2.0
}

fn acceleration(gravities: Ratio) -> Acceleration {
    gravities * Acceleration::new::<standard_gravity>(1.0)
}
