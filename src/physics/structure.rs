//! Rods, beams, sections, bolted joints and materials.

mod beam;
mod bolt;
mod material;
mod rod;
mod section;
mod twist;

pub use beam::{
    bend_radius, bending_moment, bending_stress, deflection, end_slope, largest_moment,
    round_bend_deflection, shear_deflection,
};
pub use bolt::{
    bolt_load, bolt_shear_load, clamp_from_torque, group_load, highest_clamp, least_clamp,
    slip_load, target_clamp, thread_stress_area, tightening_torque,
};
pub use material::{modulus_index, strength_index};
pub use rod::{stiffness, strain, stress, stretch};
pub use section::{
    box_tube_area, box_tube_second_moment, circle_area, circle_second_moment, flanged_area,
    flanged_second_moment, pair_second_moment, plated, rectangle_area, rectangle_second_moment,
    round_tube_area, round_tube_second_moment, section_modulus,
};
pub use twist::{polar_modulus, twist_stress};

use uom::si::f64::{Pressure, Ratio};

/// Second moment of area, metres to the fourth; uom has no name for it.
pub type SecondMoment = uom::si::Quantity<
    uom::si::ISQ<
        uom::typenum::P4,
        uom::typenum::Z0,
        uom::typenum::Z0,
        uom::typenum::Z0,
        uom::typenum::Z0,
        uom::typenum::Z0,
        uom::typenum::Z0,
    >,
    uom::si::SI<f64>,
    f64,
>;

/// Strength over stress; none when nothing pulls.
///
/// Both in pascals, stress above zero. Source: the definition of a margin.
pub fn stress_margin(strength: Pressure, stress: Pressure) -> Ratio {
    strength / stress
}
