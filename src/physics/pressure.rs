//! Pressure on the ground: the mean, the worst end, and what the ground holds.
//!
//! Places along the contact are counted from its middle, forward positive.

use uom::ConstZero;
use uom::si::f64::{Acceleration, Angle, Area, Force, Length, Mass, Pressure, Ratio};
use uom::si::ratio::ratio;

use super::Impossible;

/// Mean pressure `p = F / A`.
///
/// Force in newtons, area in square metres, above zero. It says nothing of peaks within the area.
/// Source: OpenStax, University Physics Volume 1, section 14.1 Fluids, Density, and Pressure.
pub fn mean_pressure(force: Force, area: Area) -> Pressure {
    force / area
}

/// Where the load really bears down, `e = e₀ − h tan θ`, forward positive.
///
/// `e₀` is the offset of the centre of gravity from the middle of the contact, forward positive,
/// `h` its height above the ground, `θ` the slope, nose uphill positive, less than 90° either way.
/// Nose uphill, the plumb line through the centre of gravity meets the ground nearer the tail.
/// Source: balance of moments, OpenStax, University Physics Volume 1, section 12.2.
pub fn load_offset(balance_offset: Length, cg_height: Length, slope: Angle) -> Length {
    balance_offset - cg_height * slope.tan()
}

/// Worst end over mean for a stiff rectangle with an off-centre load.
///
/// `k = 1 + 6|e|/L` while `|e| ≤ L/6` (a trapezoid of pressure); beyond, one end lifts and the
/// pressure is a triangle over `3(L/2 − |e|)`, so `k = 2L / (3(L/2 − |e|))`. The mean is the load
/// over the whole nominal area, also where part of it has lifted. Lengths in metres, `|e| < L/2`.
/// Source: linear contact pressure under a stiff footing, AASHTO LRFD Bridge Design Specifications,
/// article 11.6.3.2, for walls on rock (from memory).
///
/// # Errors
/// [`Impossible::TipsOver`] when the load is at the end of the contact or past it.
pub fn end_ratio(offset: Length, length: Length) -> Result<Ratio, Impossible> {
    let bearing = bearing_length(offset, length)?;
    Ok(if bearing < length {
        length * 2.0 / bearing
    } else {
        Ratio::new::<ratio>(1.0) + offset.abs() * 6.0 / length
    })
}

/// Pressure at a place along a stiff rectangle with an off-centre load.
///
/// The same trapezoid or triangle as [`end_ratio`]; zero where the contact has lifted. `place` is
/// counted from the middle, forward positive, `|place| ≤ L/2`.
/// Source: as [`end_ratio`].
///
/// # Errors
/// [`Impossible::TipsOver`] when the load is at the end of the contact or past it.
pub fn pressure_at(
    place: Length,
    mean: Pressure,
    offset: Length,
    length: Length,
) -> Result<Pressure, Impossible> {
    let bearing = bearing_length(offset, length)?;
    if bearing >= length {
        let tilt = (offset / length) * (place / length) * 12.0;
        return Ok(mean * (Ratio::new::<ratio>(1.0) + tilt));
    }
    let towards_low_end = if offset < Length::ZERO { -place } else { place };
    let from_low_end = length / 2.0 - towards_low_end;
    let share = Ratio::new::<ratio>(1.0) - from_low_end / bearing;
    Ok(mean * (length * 2.0 / bearing) * share.max(Ratio::ZERO))
}

/// How much of the contact has lifted and carries nothing, `max(0, 3|e| − L/2)`.
///
/// Lengths in metres, `|e| < L/2`. Source: as [`end_ratio`].
///
/// # Errors
/// [`Impossible::TipsOver`] when the load is at the end of the contact or past it.
pub fn lifted_length(offset: Length, length: Length) -> Result<Length, Impossible> {
    Ok(length - bearing_length(offset, length)?)
}

/// How much of the contact carries load: all of it, or `3(L/2 − |e|)` once one end lifts.
fn bearing_length(offset: Length, length: Length) -> Result<Length, Impossible> {
    let to_low_end = length / 2.0 - offset.abs();
    if to_low_end <= Length::ZERO {
        return Err(Impossible::TipsOver);
    }
    Ok((to_low_end * 3.0).min(length))
}

/// Pressure the ground held under a loaded square block, `p_h = m g / s²`.
///
/// Mass in kilograms, side in metres, above zero. Larger plates sink deeper at the same pressure.
/// Source: common practice, no published source; a small plate-sinkage test as in M. G. Bekker and
/// J. Y. Wong, Theory of Ground Vehicles, chapter 2 (from memory).
pub fn holding_pressure(mass: Mass, gravity: Acceleration, side: Length) -> Pressure {
    mass * gravity / (side * side)
}

/// How many times a pressure the ground holds, `M = p_h / p`.
///
/// Pressures in pascals, above zero. Source: the definition of a margin.
pub fn margin(holding: Pressure, pressure: Pressure) -> Ratio {
    holding / pressure
}

/// How far the load may still wander before one end lifts, `M = (L/6) / |e|`.
///
/// Lengths in metres. Source: the middle third, as [`end_ratio`].
///
/// # Errors
/// [`Impossible::Centred`] when the offset is zero.
pub fn balance_margin(offset: Length, length: Length) -> Result<Ratio, Impossible> {
    if offset == Length::ZERO {
        return Err(Impossible::Centred);
    }
    Ok(length / 6.0 / offset.abs())
}

/// The mass at which the mean pressure reaches what the ground holds, `m = p_h A / (g cos θ)`.
///
/// Area as it stands, slope less than 90° either way.
/// Source: [`mean_pressure`] turned round.
pub fn largest_mass(holding: Pressure, area: Area, gravity: Acceleration, slope: Angle) -> Mass {
    holding * area / (gravity * slope.cos())
}

/// The mass at which the worst end reaches what the ground holds, `m = m_mean / k`.
///
/// `k` from [`end_ratio`]; it does not depend on the mass.
pub fn largest_mass_at_end(by_mean: Mass, end_ratio: Ratio) -> Mass {
    by_mean / end_ratio
}
