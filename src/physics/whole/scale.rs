//! What changes when every length becomes `s` times as long.
//!
//! Source of the square and cube laws: Galileo, Two New Sciences; OpenStax has the same as exercises.

use uom::si::f64::{Area, Mass, Ratio};
use uom::si::ratio::ratio;

/// Stress that its own weight puts in a solid part, weight over section: `s`.
pub fn same(scale: Ratio) -> Ratio {
    scale
}

/// Areas, and with them forces a section takes at equal stress: `s²`.
pub fn square(scale: Ratio) -> Ratio {
    scale * scale
}

/// Volumes and solid masses: `s³`.
fn cube(scale: Ratio) -> Ratio {
    scale * scale * scale
}

/// The root of a scale: speeds that look alike, as a pendulum or a hop does, go by `√s`.
///
/// Source: equal Froude number `v² / (g L)` (from memory).
pub fn root(scale: Ratio) -> Ratio {
    scale.sqrt()
}

/// Mass over mass, `s² b + s³ (1 − b)`, where the share `b` of the mass is sheet whose thickness
/// stays.
pub fn mass_ratio(scale: Ratio, sheet_share: Ratio) -> Ratio {
    square(scale) * sheet_share + cube(scale) * (Ratio::new::<ratio>(1.0) - sheet_share)
}

/// The power of `s` by which the mass goes, `ln(m'/m) / ln s`, from 2 all sheet to 3 all solid.
///
/// At `s = 1` it is the limit, `3 − b`.
pub fn mass_exponent(scale: Ratio, sheet_share: Ratio) -> Ratio {
    let logarithm = scale.get::<ratio>().ln();
    Ratio::new::<ratio>(if logarithm.abs() < 1e-6 {
        3.0 - sheet_share.get::<ratio>()
    } else {
        mass_ratio(scale, sheet_share).get::<ratio>().ln() / logarithm
    })
}

/// One ratio over another: pressure is mass over area, cooling per watt is surface over power.
pub fn over(one: Ratio, other: Ratio) -> Ratio {
    one / other
}

/// Axle torque for the same slope: weight times wheel radius, `s⁴` for a solid machine.
pub fn slope_torque(mass_ratio: Ratio, scale: Ratio) -> Ratio {
    mass_ratio * scale
}

/// Power for the same slope at a speed that goes by `√s`: `s^3.5` for a solid machine.
pub fn slope_power(mass_ratio: Ratio, speed_ratio: Ratio) -> Ratio {
    mass_ratio * speed_ratio
}

/// A mass at the new size.
pub fn scaled_mass(mass: Mass, mass_ratio: Ratio) -> Mass {
    mass * mass_ratio
}

/// An area at the new size.
pub fn scaled_area(area: Area, area_ratio: Ratio) -> Area {
    area * area_ratio
}
