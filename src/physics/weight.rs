//! Weight, and what a slope does with it.

use uom::si::f64::{Acceleration, Angle, Force, Mass};

/// Weight `W = m g`.
///
/// Mass in kilograms, gravity in metres per second squared; any size, any gravity.
/// Source: OpenStax, University Physics Volume 1, section 5.4 Mass and Weight.
pub fn weight(mass: Mass, gravity: Acceleration) -> Force {
    mass * gravity
}

/// The part of the weight square to the slope, `N = W cos θ`.
///
/// Holds for a machine that stands or moves steadily on firm, even ground.
/// Source: OpenStax, University Physics Volume 1, section 5.6 Common Forces (inclined plane).
pub fn force_square_to_slope(weight: Force, slope: Angle) -> Force {
    weight * slope.cos()
}

/// The part of the weight along the slope, `F = W sin θ`, downhill when the slope is positive.
///
/// Source: OpenStax, University Physics Volume 1, section 5.6 Common Forces (inclined plane).
pub fn force_along_slope(weight: Force, slope: Angle) -> Force {
    weight * slope.sin()
}
