//! How the load divides between front and rear, standing and moving.

use uom::ConstZero;
use uom::si::f64::{Acceleration, Angle, Force, Length, Mass, Ratio};

/// How far the middle of the support is ahead of the middle of a track's ground contact, with skis
/// in front of the track: half of the wheelbase, which runs from the skis to the track's middle.
///
/// Source: the frame itself.
pub fn ski_support_middle(wheelbase: Length) -> Length {
    wheelbase / 2.0
}

/// Distance of the centre of gravity ahead of the rear contact, `b = L/2 + e₀ − x_s`.
///
/// `L` is the distance between the front and the rear contact in metres, `e₀` the place of the
/// centre of gravity and `x_s` that of the middle of the support, both forward from one line. Below
/// zero it hangs out behind.
/// Source: the frame itself.
pub fn rear_arm(support: Length, offset: Length, middle: Length) -> Length {
    support / 2.0 + offset - middle
}

/// Distance of the centre of gravity behind the front contact, `a = L/2 − e₀ + x_s`.
///
/// Source: as [`rear_arm`].
pub fn front_arm(support: Length, offset: Length, middle: Length) -> Length {
    support / 2.0 - offset + middle
}

/// Load on one end, `F = W (l cos θ − h sin θ) / L`, for a machine standing on a slope.
///
/// `l` is the distance of the centre of gravity from the other end's contact, `θ` the slope with
/// this end uphill, `h` the height of the centre of gravity. Below zero the end lifts.
/// Source: balance of moments, OpenStax, University Physics Volume 1, section 12.1; T. D. Gillespie,
/// Fundamentals of Vehicle Dynamics, chapter 1.
pub fn end_load(
    weight: Force,
    arm: Length,
    height: Length,
    this_end_uphill: Angle,
    support: Length,
) -> Force {
    weight * (arm * this_end_uphill.cos() - height * this_end_uphill.sin()) / support
}

/// Load that moves from the front to the rear while speeding up, `ΔF = m a h / L`.
///
/// Below zero, in braking, it moves to the front.
/// Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 1.
pub fn load_shift(
    mass: Mass,
    acceleration: Acceleration,
    height: Length,
    support: Length,
) -> Force {
    mass * acceleration * height / support
}

/// Load with what moved.
///
/// Source: as [`load_shift`].
pub fn moving_load(standing: Force, shifted: Force) -> Force {
    standing + shifted
}

/// One load over both; zero without any.
///
/// Source: the definition.
pub fn load_share(one: Force, other: Force) -> Ratio {
    if one + other == Force::ZERO { Ratio::ZERO } else { one / (one + other) }
}
