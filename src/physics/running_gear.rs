//! How much ground tracks, wheels and skis press on.

use uom::ConstZero;
use uom::si::f64::{Area, Force, Length, Pressure, Ratio};

use super::Impossible;

/// Area of `n` flat rectangles, `A = n l b`: tracks, skis, or the patches of wheels.
///
/// Lengths in metres, zero or more. Holds where the whole flat bears on the ground.
/// Source: geometry of a rectangle; as the nominal contact area of a track in J. Y. Wong, Theory of
/// Ground Vehicles, chapter 2 (from memory).
pub fn flat_area(count: Ratio, length: Length, width: Length) -> Area {
    count * length * width
}

/// Length of the flat under a squashed wheel, `L = 2 √(D δ − δ²)`: the chord that the ground cuts
/// off the unloaded circle.
///
/// Squash and diameter in metres, `0 ≤ δ < D/2`. A real tyre bulges a little, so its patch is
/// somewhat shorter than the chord.
/// Source: chord of a circular segment, Machinery's Handbook, Geometry (from memory).
///
/// # Errors
/// [`Impossible::SquashPastAxle`] when the squash is half the diameter or more.
pub fn wheel_patch_length(squash: Length, diameter: Length) -> Result<Length, Impossible> {
    if squash * 2.0 >= diameter {
        return Err(Impossible::SquashPastAxle);
    }
    Ok((squash * (diameter - squash)).sqrt() * 2.0)
}

/// Area of all wheels if the air alone carries their load, `A = s N / p_i`.
///
/// Share 0 to 1, force in newtons, gauge pressure in pascals, above zero. A stiff carcass carries
/// part of the load, so the real area is smaller.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 2, where the pressure under a pneumatic
/// tyre is inflation plus carcass pressure (from memory).
pub fn area_by_inflation(inflation: Pressure, share: Ratio, force: Force) -> Area {
    share * force / inflation
}

/// The measured area of wheels that touch at all.
///
/// # Errors
/// [`Impossible::LineContact`] when the area is zero: a wheel that does not squash touches along a
/// line, and no finite pressure carries a load on a line.
pub fn wheel_area(area: Area) -> Result<Area, Impossible> {
    if area == Area::ZERO { Err(Impossible::LineContact) } else { Ok(area) }
}

/// All the ground a machine presses on, `A = A_tracks + A_wheels + A_skis`.
///
/// # Errors
/// [`Impossible::NoContact`] when the sum is zero.
pub fn contact_area(tracks: Area, wheels: Area, skis: Area) -> Result<Area, Impossible> {
    let area = tracks + wheels + skis;
    if area == Area::ZERO { Err(Impossible::NoContact) } else { Ok(area) }
}

/// The smaller side of a rectangle, which decides how soft ground answers it.
///
/// Source: M. G. Bekker, in J. Y. Wong, Theory of Ground Vehicles, chapter 2.
pub fn smaller_side(width: Length, length: Length) -> Length {
    width.min(length)
}
