//! Round tubes and axles under a twist.

use uom::si::f64::{Energy, Pressure, Torque, Volume};

/// Polar section modulus of a round section, `Z_p = 2 Z`.
///
/// A round bar or tube bends alike both ways, so its polar second moment is twice the other.
/// Source: Mott, Machine Elements in Mechanical Design, 4th ed., table A16-6 (pipe), checked against.
pub fn polar_modulus(section_modulus: Volume) -> Volume {
    section_modulus * 2.0
}

/// Shear stress at the skin of a round section that is twisted, `τ = T / Z_p`.
///
/// Newton metres and cubic metres, below the yield in shear. Keyways, flats and cross holes raise it.
/// Source: torsion formula, Beer, Johnston et al., Mechanics of Materials, chapter 3 (from memory).
pub fn twist_stress(moment: Torque, polar_modulus: Volume) -> Pressure {
    Energy::from(moment) / polar_modulus
}
