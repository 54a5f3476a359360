//! The steepest slope, by friction and by soft ground.

use std::f64::consts::FRAC_PI_2;

use uom::si::angle::radian;
use uom::si::f64::{Acceleration, Angle, Force, Ratio};
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// Steepest climb of a machine that grips by friction, `θ = atan(μ s − c)`.
///
/// `s` is the share of the load on driven gear, `c` the rolling coefficient. Below zero it does not
/// get going on the level.
/// Source: common practice, no published source; balance of forces along the slope.
pub fn by_grip(grip: Ratio, driven_share: Ratio, rolling: Ratio) -> Angle {
    Angle::new::<radian>((grip * driven_share - rolling).get::<ratio>().atan())
}

/// Steepest slope on which friction holds, `θ = atan μ`.
///
/// Source: OpenStax, College Physics 2e, section 5.1 Friction.
pub fn holds(grip: Ratio) -> Angle {
    Angle::new::<radian>(grip.get::<ratio>().atan())
}

/// Steepest climb on soft ground: `θ` of `r (A c + s W cos θ tan φ) = R + W sin θ`.
///
/// With `m = r s tan φ` and `q = (r A c − R)/W` that is `θ = atan m + asin(q / √(1 + m²))`.
/// `from_cohesion` is `A c`, the part of the limit that the weight does not change; the resistance
/// is kept whole on the slope, to the safe side, as US Army CRREL Report 95-1 does. Below zero it
/// does not get going on the level.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 2, thrust and resistance in balance.
///
/// # Errors
/// [`Impossible::AnySlope`] when thrust outdoes the weight even straight up;
/// [`Impossible::Stuck`] when the resistance outdoes it on any slope.
pub fn on_soft_ground(
    from_cohesion: Force,
    friction: Angle,
    reached: Ratio,
    driven_share: Ratio,
    weight: Force,
    resistance: Force,
) -> Result<Angle, Impossible> {
    let per_load = (reached * driven_share * friction.tan()).get::<ratio>();
    let spare = ((reached * from_cohesion - resistance) / weight).get::<ratio>();
    let sine = spare / per_load.hypot(1.0);
    let slope = per_load.atan() + sine.clamp(-1.0, 1.0).asin();
    if sine > 1.0 || slope >= FRAC_PI_2 {
        return Err(Impossible::AnySlope);
    }
    if sine < -1.0 || slope <= -FRAC_PI_2 {
        return Err(Impossible::Stuck);
    }
    Ok(Angle::new::<radian>(slope))
}

/// Acceleration that grip allows, uphill positive, `a = g ((μ s − c) cos θ − sin θ)`.
///
/// `s` is the share of the load on driven gear, `c` the rolling coefficient; air is left out. Below
/// zero grip does not hold the speed.
/// Source: OpenStax, College Physics 2e, section 5.1 Friction, problems.
pub fn grip_acceleration(
    grip: Ratio,
    driven_share: Ratio,
    rolling: Ratio,
    slope: Angle,
    gravity: Acceleration,
) -> Acceleration {
    gravity * ((grip * driven_share - rolling) * slope.cos() - slope.sin())
}

/// Acceleration of a body that slides down, downhill positive, `a = g (sin θ − μ cos θ)`.
///
/// Source: OpenStax, University Physics Volume 1, section 6.2 Friction.
pub fn sliding_down(sliding: Ratio, slope: Angle, gravity: Acceleration) -> Acceleration {
    gravity * (slope.sin() - sliding * slope.cos())
}

/// Deceleration of a body that slides up, `a = g (sin θ + μ cos θ)`.
///
/// Source: as [`sliding_down`].
pub fn sliding_up(sliding: Ratio, slope: Angle, gravity: Acceleration) -> Acceleration {
    gravity * (slope.sin() + sliding * slope.cos())
}
