//! Where a machine tips: backwards, over its nose, to the side, in a turn.

use uom::ConstZero;
use uom::si::f64::{Acceleration, Angle, Force, Length, Ratio, Velocity};

use crate::physics::Impossible;

/// Acceleration that lifts the front, `a = g (b cos θ / h − sin θ)`.
///
/// `b` is the distance of the centre of gravity ahead of the rear contact, `h` its height in metres,
/// above zero, `θ` the slope. Below zero it tips back as it stands. The kick of motors that spin up
/// and the swing of the suspension are left out.
/// Source: balance of moments, Meriam and Kraige, Dynamics, section 6/2 (from memory); J. S. Riel,
/// Maximal Braking on a Standard Bicycle (2005).
pub fn lift_acceleration(
    gravity: Acceleration,
    rear_arm: Length,
    height: Length,
    slope: Angle,
) -> Acceleration {
    gravity * (rear_arm / height * slope.cos() - slope.sin())
}

/// Deceleration that lifts the rear, `a = g (a_f cos θ / h + sin θ)`.
///
/// `a_f` is the distance of the centre of gravity behind the front contact.
/// Source: J. S. Riel, Maximal Braking on a Standard Bicycle (2005).
pub fn nose_over_deceleration(
    gravity: Acceleration,
    front_arm: Length,
    height: Length,
    slope: Angle,
) -> Acceleration {
    lift_acceleration(gravity, front_arm, height, -slope)
}

/// Limit on the flat in multiples of gravity, and the slope at rest as its tangent, `l / h`.
///
/// Source: Whitt and Wilson, Bicycling Science, chapter on braking (from memory).
pub fn lift_ratio(arm: Length, height: Length) -> Ratio {
    arm / height
}

/// Angle at which the load passes its support, `θ = atan(l / h)`.
///
/// `l` is the level distance from the centre of gravity to the edge it tips over. A rigid machine:
/// soft tyres and springs tip 10 to 15 % earlier.
/// Source: NHTSA, rollover resistance ratings (definition of the static stability factor); FME Inc.,
/// ATV Static Stability Tests (2007).
///
/// # Errors
/// [`Impossible::OffItsSupports`] when the centre of gravity is past the edge already.
pub fn tip_angle(arm: Length, height: Length) -> Result<Angle, Impossible> {
    if arm < Length::ZERO { Err(Impossible::OffItsSupports) } else { Ok((arm / height).atan()) }
}

/// Distance from the centre of gravity to the nearer side's line of contact, `B/2 − |y|`.
///
/// `B` is the distance between the middles of the left and right contacts, `y` how far the centre of
/// gravity is off the middle. Source: the frame itself.
pub fn side_arm(gauge: Length, side_offset: Length) -> Length {
    gauge / 2.0 - side_offset.abs()
}

/// Static stability factor `SSF = B / (2 h)`, with the nearer side for a load off the middle.
///
/// Source: NHTSA report DOT HS 809 868.
pub fn stability_factor(side_arm: Length, height: Length) -> Ratio {
    side_arm / height
}

/// The smaller of two limits.
///
/// Source: tip or slide, Baker and Haynes, Engineering Statics, chapter 9.
pub fn smaller(one: Ratio, other: Ratio) -> Ratio {
    one.min(other)
}

/// Speed in a flat turn at which a sideways limit in multiples of gravity is reached, `v = √(n g R)`.
///
/// Source: OpenStax, College Physics 2e, section 6.3; FME Inc., ATV Static Stability Tests (2007).
pub fn turn_speed(limit: Ratio, gravity: Acceleration, radius: Length) -> Velocity {
    (gravity * radius * limit.max(Ratio::ZERO)).sqrt()
}

/// What climbing and speeding up ask of the front-lift limit, `a / (g cos θ) + tan θ`, zero at least.
///
/// Source: [`lift_acceleration`] solved for `b / h`.
pub fn climb_demand(acceleration: Acceleration, gravity: Acceleration, slope: Angle) -> Ratio {
    (acceleration / gravity / slope.cos() + slope.tan()).max(Ratio::ZERO)
}

/// What braking asks of the nose-over limit, `a / (g cos θ) − tan θ`, zero at least.
///
/// Source: [`nose_over_deceleration`] solved for `a_f / h`.
pub fn brake_demand(deceleration: Acceleration, gravity: Acceleration, slope: Angle) -> Ratio {
    climb_demand(deceleration, gravity, -slope)
}

/// What a limit holds over what is asked of it.
///
/// # Errors
/// [`Impossible::NothingAsked`] when nothing is.
pub fn margin(limit: Ratio, demand: Ratio) -> Result<Ratio, Impossible> {
    if demand == Ratio::ZERO { Err(Impossible::NothingAsked) } else { Ok(limit / demand) }
}

/// Fastest speed over the present one.
///
/// # Errors
/// [`Impossible::NothingAsked`] at rest.
pub fn speed_margin(fastest: Velocity, speed: Velocity) -> Result<Ratio, Impossible> {
    if speed == Velocity::ZERO { Err(Impossible::NothingAsked) } else { Ok(fastest / speed) }
}

/// Push from the side, or pull, that tips a body over its edge, `F = W l / h_p`.
///
/// `l` is the level distance from the centre of gravity to that edge, `h_p` the height at which the
/// push acts in metres, above zero. It must not slide first.
/// Source: balance of moments about an edge, Baker and Haynes, Engineering Statics, chapter 7.
///
/// # Errors
/// [`Impossible::OffItsSupports`] when the centre of gravity is past the edge already.
pub fn tipping_push(weight: Force, arm: Length, push_height: Length) -> Result<Force, Impossible> {
    if arm < Length::ZERO {
        return Err(Impossible::OffItsSupports);
    }
    Ok(weight * (arm / push_height))
}
