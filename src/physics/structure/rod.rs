//! Straight pulls: stress, strain, stretch.

use uom::si::f64::{Area, Force, Length, Pressure, Ratio, SurfaceTension};

/// Stress of a straight pull, `σ = F / A`.
///
/// Newtons and square metres; the pull goes through the middle of the section.
/// Source: OpenStax, University Physics Volume 1, section 12.3 Stress, Strain, and Elastic Modulus.
pub fn stress(force: Force, area: Area) -> Pressure {
    force / area
}

/// Strain, `ε = σ / E`.
///
/// Below the yield of the material.
/// Source: OpenStax, University Physics Volume 1, section 12.3 Stress, Strain, and Elastic Modulus.
pub fn strain(stress: Pressure, modulus: Pressure) -> Ratio {
    stress / modulus
}

/// Stretch of a rod, `ΔL = ε L`.
///
/// Source: OpenStax, University Physics Volume 1, section 12.3 Stress, Strain, and Elastic Modulus.
pub fn stretch(strain: Ratio, length: Length) -> Length {
    strain * length
}

/// Stiffness of a rod along its length, `k = E A / L`.
///
/// Source: Gere and Timoshenko, Mechanics of Materials, section 2.2 (from memory).
pub fn stiffness(modulus: Pressure, area: Area, length: Length) -> SurfaceTension {
    (modulus * area / length).into()
}
