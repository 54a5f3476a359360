//! How deep a plate, a track or a rigid wheel goes into soft ground, after Bekker.

use uom::si::f64::{Force, Length, Pressure};
use uom::si::force::newton;
use uom::si::length::meter;
use uom::si::pressure::pascal;

/// Bekker's three numbers of a ground. The units of the moduli depend on the exponent, so they
/// are plain SI numbers here.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Soil {
    /// Exponent of sinkage `n`, above zero; measured grounds lie between 0.1 and 1.6.
    pub exponent: f64,
    /// Cohesive modulus `k_c` in N/m^(n+1), zero or more.
    pub cohesive: f64,
    /// Frictional modulus `k_φ` in N/m^(n+2), zero or more.
    pub frictional: f64,
}

impl Soil {
    /// What the ground answers under a patch whose smaller side is `b`: `k_c/b + k_φ`, N/m^(n+2).
    pub(super) fn modulus(self, smaller_side: Length) -> f64 {
        self.cohesive / smaller_side.get::<meter>() + self.frictional
    }
}

/// Pressure at a sinkage, `p = (k_c/b + k_φ) zⁿ`.
///
/// `b` is the smaller side of a long patch or the radius of a round plate, `z` the sinkage, both in
/// metres. Fitted on plates some 5 to 30 cm wide, within the pressures tested.
/// Source: J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, chapter 2 (Bekker's equation).
pub fn pressure_at(soil: Soil, smaller_side: Length, sinkage: Length) -> Pressure {
    let depth = sinkage.get::<meter>();
    Pressure::new::<pascal>(soil.modulus(smaller_side) * depth.powf(soil.exponent))
}

/// Sinkage under a uniform pressure, `z = (p / (k_c/b + k_φ))^(1/n)`.
///
/// The inverse of [`pressure_at`]; same range and source. The ground must be deeper than the
/// sinkage, on snow some five times.
pub fn sinkage(soil: Soil, smaller_side: Length, pressure: Pressure) -> Length {
    let share = pressure.get::<pascal>() / soil.modulus(smaller_side);
    Length::new::<meter>(share.powf(1.0 / soil.exponent))
}

/// Sinkage of a rigid wheel, `z = (3 W / (b (3 − n) (k_c/b + k_φ) √D))^(2/(2n+1))`.
///
/// `W` is the load on one wheel, `b` its width, `D` its diameter; `n` below 3. The arc is taken as
/// a parabola, which is some 2 % off for a small wheel that sinks a tenth of its diameter and more
/// beyond a sixth.
/// Source: M. G. Bekker's rigid wheel, in J. Y. Wong, Theory of Ground Vehicles, chapter 2.
pub fn wheel_sinkage(soil: Soil, load: Force, width: Length, diameter: Length) -> Length {
    let carried = width.get::<meter>()
        * (3.0 - soil.exponent)
        * soil.modulus(width)
        * diameter.get::<meter>().sqrt();
    let share = 3.0 * load.get::<newton>() / carried;
    Length::new::<meter>(share.powf(2.0 / (2.0 * soil.exponent + 1.0)))
}
