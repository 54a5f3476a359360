//! The centre of gravity from scales under each end.

use uom::ConstZero;
use uom::si::f64::{Angle, Length, Mass};

use crate::physics::Impossible;

/// Place of the centre of gravity, `e₀ = x_s + L (m_f / (m_f + m_r) − ½)`.
///
/// Readings of the front and the rear scale in kilograms, level, `L` between them in metres; `x_s`
/// is the place of the middle between them, forward from the line that `e₀` is counted from.
/// Source: balance of moments, OpenStax, University Physics Volume 1, section 12.1.
///
/// # Errors
/// [`Impossible::ScalesSayNothing`] when the scales carry nothing.
pub fn offset_from_scales(
    front: Mass,
    rear: Mass,
    support: Length,
    middle: Length,
) -> Result<Length, Impossible> {
    let both = front + rear;
    if both > Mass::ZERO {
        Ok(middle + support * (front / both) - support / 2.0)
    } else {
        Err(Impossible::ScalesSayNothing)
    }
}

/// Height of the centre of gravity from the front scale with the rear raised,
/// `h = r + Δm L / (m tan τ)`.
///
/// `Δm` is how much more the front scale reads, `τ` how far the machine is tilted, `r` the height of
/// the axles above the ground. The suspension is blocked; 15° of tilt or more.
/// Source: Penn State mechanical engineering, Notes 07_04 Vehicle Inertial Measurements (scales
/// method; cites ISO 10392 and ISO 789-6).
///
/// # Errors
/// [`Impossible::ScalesSayNothing`] without a load or a tilt.
pub fn height_from_scales(
    (level, raised): (Mass, Mass),
    whole: Mass,
    support: Length,
    tilt: Angle,
    axle_height: Length,
) -> Result<Length, Impossible> {
    if whole <= Mass::ZERO || tilt <= Angle::ZERO {
        return Err(Impossible::ScalesSayNothing);
    }
    Ok(axle_height + support * ((raised - level) / whole) / tilt.tan())
}
