//! Bending of slender beams.

use uom::si::f64::{Angle, Area, Force, Length, Pressure, Ratio, Torque, Volume};

use super::SecondMoment;

/// Largest bending moment of a beam, `M = c F L`.
///
/// `c` goes by how the beam is held and loaded: 1 held at one end and loaded at the other, 1/4
/// resting on two supports and loaded in the middle, 1/8 the same with the load spread evenly.
/// Source: Gere, Mechanics of Materials, tables G-1 and G-2 (from memory).
pub fn bending_moment(factor: Ratio, load: Force, span: Length) -> Torque {
    (factor * load * span).into()
}

/// Largest sag of a beam, `δ = F L³ / (c E I)`.
///
/// `c` goes by how the beam is held and loaded: 3 held at one end and loaded at the other, 48
/// resting on two supports and loaded in the middle, 384/5 the same with the load spread evenly.
/// Slender beams (length over about ten depths), small sag, stress below the yield.
/// Source: Gere, Mechanics of Materials, tables G-1 and G-2 (from memory).
pub fn deflection(
    factor: Ratio,
    load: Force,
    span: Length,
    modulus: Pressure,
    second_moment: SecondMoment,
) -> Length {
    load * span * span * span / (factor * modulus * second_moment)
}

/// Steepest slope of a bent beam, `θ = F L² / (c E I)`.
///
/// `c` is 2 held at one end and loaded at the other, 16 on two supports and loaded in the middle, 24
/// the same with the load spread evenly. Range as [`deflection`].
/// Source: Gere, Mechanics of Materials, tables G-1 and G-2 (from memory).
pub fn end_slope(
    factor: Ratio,
    load: Force,
    span: Length,
    modulus: Pressure,
    second_moment: SecondMoment,
) -> Angle {
    (load * span * span / (factor * modulus * second_moment)).into()
}

/// Stress at the outermost fibre, `σ = M / Z`.
///
/// Source: flexure formula, Gere, Mechanics of Materials, section 5.5 (from memory).
pub fn bending_stress(moment: Torque, section_modulus: Volume) -> Pressure {
    force_length(moment) / section_modulus
}

/// The moment at which the outermost fibre reaches the strength, `M = σ Z`.
///
/// Source: flexure formula, Gere, Mechanics of Materials, section 5.5 (from memory).
pub fn largest_moment(strength: Pressure, section_modulus: Volume) -> Torque {
    (strength * section_modulus).into()
}

/// Radius to which a moment bends a beam, `R = E I / M`.
///
/// Source: moment and curvature, Gere, Mechanics of Materials, section 5.5 (from memory).
pub fn bend_radius(modulus: Pressure, second_moment: SecondMoment, moment: Torque) -> Length {
    modulus * second_moment / force_length(moment)
}

/// How far the end of a beam bent to an even radius leaves its line, `δ = L² / (2 R)`.
///
/// Held at one end and twisted at the other, so that the moment is the same all along; `R` well
/// over `L`.
/// Source: Gere and Timoshenko, Mechanics of Materials, problem 5.4-4 with solution.
pub fn round_bend_deflection(span: Length, radius: Length) -> Length {
    span * span / (radius * 2.0)
}

/// How far a short stub shears sideways, `Δ = F L / (G A)`, bending left out.
///
/// Only for a stub no longer than about its own depth; in anything longer, bending is far more.
/// Source: OpenStax, University Physics Volume 1, section 12.3 Stress, Strain, and Elastic Modulus.
pub fn shear_deflection(load: Force, span: Length, shear_modulus: Pressure, area: Area) -> Length {
    load * span / (shear_modulus * area)
}

/// A moment as the product of force and length that it is.
fn force_length(moment: Torque) -> uom::si::f64::Energy {
    moment.into()
}
