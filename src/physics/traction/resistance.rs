//! What soft ground and rolling hold back.

use uom::si::angle::radian;
use uom::si::f64::{Angle, Force, Length, Ratio, Velocity};
use uom::si::force::newton;
use uom::si::length::{inch, meter};
use uom::si::ratio::ratio;
use uom::si::velocity::foot_per_second;

use super::sinkage::Soil;

/// Force to press one rut, `R_c = b (k_c/b_s + k_φ) z^(n+1) / (n+1)`: the work of pressing the
/// ground down, per metre of way.
///
/// `b` is the width of the rut, `b_s` the smaller side of the patch, `z` the sinkage. Bulldozing,
/// a second pass in the same rut and losses inside the running gear come on top.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 2 (compaction resistance after Bekker).
pub fn compaction(soil: Soil, smaller_side: Length, width: Length, sinkage: Length) -> Force {
    let power = soil.exponent + 1.0;
    let work = soil.modulus(smaller_side) * sinkage.get::<meter>().powf(power) / power;
    Force::new::<newton>(width.get::<meter>() * work)
}

/// Coefficient from a steady pull, `c = F / N`: a tow test, or a pull with everything locked.
///
/// `N` is the force square to the ground, above zero.
/// Source: the definition of a coefficient of friction or of rolling resistance, OpenStax,
/// University Physics Volume 1, section 6.2.
pub fn coefficient(pull: Force, normal: Force) -> Ratio {
    pull / normal
}

/// Coefficient from the slope on which the machine just rolls on, `c = tan θ`.
///
/// Source: balance of forces on an incline, OpenStax, University Physics Volume 1, section 6.2.
pub fn coefficient_by_slope(slope: Angle) -> Ratio {
    Ratio::new::<ratio>(slope.get::<radian>().tan())
}

/// Force from a coefficient, `R = c N`.
///
/// Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, rolling resistance.
pub fn from_coefficient(coefficient: Ratio, normal: Force) -> Force {
    coefficient * normal
}

/// Coefficient of a haul unit whose tyres sink in, `c = 0.02 + 0.015 z`, `z` in inches.
///
/// A rule of thumb of earthmoving for large tyres on haul roads and fills.
/// Source: 40 lb per short ton and 30 lb more per inch of tyre penetration, the usual rule of
/// civil-engineering handbooks.
pub fn coefficient_by_penetration(penetration: Length) -> Ratio {
    Ratio::new::<ratio>(0.02 + 0.015 * penetration.get::<inch>())
}

/// Coefficient of a car on a paved road, `c = 0.01 (1 + V/147)`, `V` in feet per second.
///
/// Source: F. L. Mannering, S. S. Washburn, Principles of Highway Engineering and Traffic Analysis,
/// chapter 2.
pub fn coefficient_on_pavement(speed: Velocity) -> Ratio {
    Ratio::new::<ratio>(0.01 * (1.0 + speed.get::<foot_per_second>() / 147.0))
}
