//! Areas and second moments of sections, bent about the horizontal axis through their middle.

use std::f64::consts::{FRAC_PI_4, PI};

use uom::ConstZero;
use uom::si::f64::{Area, Length, Volume};

use super::SecondMoment;
use crate::physics::Impossible;

/// One piece of a built-up section; a hole is a piece of negative area and second moment.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Piece {
    /// Its area.
    area: Area,
    /// How high its own middle is above any one line.
    height: Length,
    /// Its second moment about its own middle.
    second_moment: SecondMoment,
}

/// Second moment about an axis a distance off the middle, `I = I₀ + A d²`.
///
/// Source: parallel axis theorem, Baker and Haynes, Engineering Statics, chapter 10.
fn shift(second_moment: SecondMoment, area: Area, distance: Length) -> SecondMoment {
    second_moment + area * (distance * distance)
}

/// Height of the middle of several pieces, and their second moment about it:
/// `ȳ = Σ A y / Σ A`, `I = Σ (I₀ + A (y − ȳ)²)`.
///
/// Pieces that are firmly joined along their whole length.
/// Source: Baker and Haynes, Engineering Statics, chapter 10, built-up beam.
fn together(pieces: &[Piece]) -> (Length, SecondMoment) {
    let area = pieces.iter().fold(Area::ZERO, |sum, piece| sum + piece.area);
    let first = pieces.iter().fold(Volume::ZERO, |sum, piece| sum + piece.area * piece.height);
    let middle: Length = first / area;
    let second = pieces.iter().fold(SecondMoment::ZERO, |sum, piece| {
        sum + shift(piece.second_moment, piece.area, piece.height - middle)
    });
    (middle, second)
}

/// Section modulus, `Z = I / c`, with `c` from the middle to the outermost fibre.
///
/// Source: Gere, Mechanics of Materials, section 5.6 (from memory).
pub fn section_modulus(second_moment: SecondMoment, outermost: Length) -> Volume {
    second_moment / outermost
}

/// Area of a rectangle, `A = b h`.
pub fn rectangle_area(width: Length, depth: Length) -> Area {
    width * depth
}

/// Second moment of a rectangle, `I = b h³ / 12`, `h` in the direction of the load.
///
/// Source: Baker and Haynes, Engineering Statics, chapter 10.
pub fn rectangle_second_moment(width: Length, depth: Length) -> SecondMoment {
    width * depth * (depth * depth) / 12.0
}

/// Area of a circle, `A = π d² / 4`.
pub fn circle_area(diameter: Length) -> Area {
    diameter * diameter * FRAC_PI_4
}

/// Second moment of a circle, `I = π d⁴ / 64`.
///
/// Source: Baker and Haynes, Engineering Statics, chapter 10.
pub fn circle_second_moment(diameter: Length) -> SecondMoment {
    diameter * diameter * (diameter * diameter) * (PI / 64.0)
}

/// Area of a round tube, the outer circle less the bore.
///
/// # Errors
/// [`Impossible::WallTooThick`] when twice the wall is more than the diameter.
pub fn round_tube_area(diameter: Length, wall: Length) -> Result<Area, Impossible> {
    Ok(circle_area(diameter) - circle_area(inside(diameter, wall)?))
}

/// Second moment of a round tube, `I = π (D⁴ − d⁴) / 64`.
///
/// Source: Mott, Machine Elements in Mechanical Design, table A16-6 (pipe), checked against.
///
/// # Errors
/// [`Impossible::WallTooThick`] when twice the wall is more than the diameter.
pub fn round_tube_second_moment(
    diameter: Length,
    wall: Length,
) -> Result<SecondMoment, Impossible> {
    Ok(circle_second_moment(diameter) - circle_second_moment(inside(diameter, wall)?))
}

/// Area of a box tube; `corner` is the outer radius of its corners, the inner one being less by the
/// wall, zero at least.
///
/// # Errors
/// [`Impossible::WallTooThick`], [`Impossible::CornerTooRound`].
pub fn box_tube_area(
    width: Length,
    depth: Length,
    wall: Length,
    corner: Length,
) -> Result<Area, Impossible> {
    Ok(box_pieces(width, depth, wall, corner)?
        .iter()
        .fold(Area::ZERO, |sum, piece| sum + piece.area))
}

/// Second moment of a box tube, round corners included: the outer rounded rectangle less the inner.
///
/// Exact for circular corners. Matches BS EN 10219 tables of cold-formed square tube with outer
/// corners of twice the wall.
///
/// # Errors
/// [`Impossible::WallTooThick`], [`Impossible::CornerTooRound`].
pub fn box_tube_second_moment(
    width: Length,
    depth: Length,
    wall: Length,
    corner: Length,
) -> Result<SecondMoment, Impossible> {
    Ok(together(&box_pieces(width, depth, wall, corner)?).1)
}

/// Area of a web between two equal flanges.
pub fn flanged_area(flange: (Length, Length), web: (Length, Length)) -> Area {
    flanged_pieces(flange, web).iter().fold(Area::ZERO, |sum, piece| sum + piece.area)
}

/// Second moment of a web between two equal flanges; each is (width, depth).
///
/// Source: parallel axis theorem, Baker and Haynes, Engineering Statics, chapter 10.
pub fn flanged_second_moment(flange: (Length, Length), web: (Length, Length)) -> SecondMoment {
    together(&flanged_pieces(flange, web)).1
}

/// Second moment of two equal sections side by side that are firmly joined, bent about the line
/// midway between them: `I = 2 (I₀ + A (s/2)²)`, `s` from middle to middle.
///
/// Source: parallel axis theorem, Baker and Haynes, Engineering Statics, chapter 10.
pub fn pair_second_moment(
    second_moment: SecondMoment,
    area: Area,
    spacing: Length,
) -> SecondMoment {
    shift(second_moment, area, spacing / 2.0) * 2.0
}

/// A section with a flat plate joined to it: how far the middle of both lies from the section's own
/// middle towards the plate, and their second moment about it.
///
/// `distance` is from the middle of the section to the middle of the plate, whose thickness lies in
/// the direction of the load. Firmly joined along their whole length.
/// Source: Baker and Haynes, Engineering Statics, chapter 10, built-up beam.
pub fn plated(
    (area, second_moment): (Area, SecondMoment),
    (width, thickness): (Length, Length),
    distance: Length,
) -> (Length, SecondMoment) {
    let section = Piece { area, height: Length::ZERO, second_moment };
    let plate = Piece {
        area: rectangle_area(width, thickness),
        height: distance,
        second_moment: rectangle_second_moment(width, thickness),
    };
    together(&[section, plate])
}

fn flanged_pieces(flange: (Length, Length), web: (Length, Length)) -> [Piece; 3] {
    let piece = |(width, depth), height| Piece {
        area: rectangle_area(width, depth),
        height,
        second_moment: rectangle_second_moment(width, depth),
    };
    let off = (web.1 + flange.1) / 2.0;
    [piece(flange, -off), piece(web, Length::ZERO), piece(flange, off)]
}

fn box_pieces(
    width: Length,
    depth: Length,
    wall: Length,
    corner: Length,
) -> Result<Vec<Piece>, Impossible> {
    let (hole_width, hole_depth) = (inside(width, wall)?, inside(depth, wall)?);
    if corner * 2.0 > width || corner * 2.0 > depth {
        return Err(Impossible::CornerTooRound);
    }
    let inner = if corner > wall { corner - wall } else { Length::ZERO };
    let mut pieces = rounded(width, depth, corner);
    pieces.extend(rounded(hole_width, hole_depth, inner).iter().map(|piece| Piece {
        area: -piece.area,
        second_moment: -piece.second_moment,
        ..*piece
    }));
    Ok(pieces)
}

/// A rectangle, and the four bits that rounding takes off its corners.
fn rounded(width: Length, depth: Length, radius: Length) -> Vec<Piece> {
    let square = radius * radius;
    let bit = square * (1.0 - FRAC_PI_4);
    // From the centre of the round to the middle of the bit, and the bit's second moment there.
    let out = radius / (6.0 * (1.0 - FRAC_PI_4));
    let own = square * square * (1.0 / 3.0 - PI / 16.0) - bit * (out * out);
    let off = depth / 2.0 - radius + out;
    let corner = |height| Piece { area: -bit, height, second_moment: -own };
    vec![
        Piece {
            area: rectangle_area(width, depth),
            height: Length::ZERO,
            second_moment: rectangle_second_moment(width, depth),
        },
        corner(off),
        corner(off),
        corner(-off),
        corner(-off),
    ]
}

/// What two walls leave inside.
fn inside(outside: Length, wall: Length) -> Result<Length, Impossible> {
    if wall * 2.0 > outside {
        return Err(Impossible::WallTooThick);
    }
    Ok(outside - wall * 2.0)
}
