//! Cooling by air, still and moving: from numbers without dimension to a coefficient.

use uom::si::f64::{
    Acceleration, HeatTransfer, KinematicViscosity, Length, Ratio, TemperatureCoefficient,
    TemperatureInterval, ThermalConductivity, Velocity,
};

use crate::physics::si;

/// Above this Reynolds number the flow along a flat plate turns turbulent.
const TURNS_TURBULENT: f64 = 5e5;

/// Rayleigh number, `Ra = g β |ΔT| L³ Pr / ν²`: lift of warm air against viscosity and spreading heat.
///
/// Source: F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 9.
pub fn rayleigh(
    gravity: Acceleration,
    expansion: TemperatureCoefficient,
    excess: TemperatureInterval,
    length: Length,
    viscosity: KinematicViscosity,
    prandtl: Ratio,
) -> Ratio {
    let lift = gravity.value * expansion.value * excess.value.abs() * length.value.powi(3);
    si(lift * prandtl.value / viscosity.value.powi(2))
}

/// Coefficient from a Nusselt number, `h = Nu k / L`.
pub fn coefficient(
    nusselt: Ratio,
    conductivity: ThermalConductivity,
    length: Length,
) -> HeatTransfer {
    si(nusselt.value * conductivity.value / length.value)
}

fn prandtl_term(coefficient: f64, prandtl: Ratio, power: f64) -> f64 {
    1.0 + (coefficient / prandtl.value).powf(power)
}

/// Vertical plate in still air, laminar, `Nu = 0.68 + 0.670 Ra^¼ / [1 + (0.492/Pr)^(9/16)]^(4/9)`.
///
/// `Ra` up to 10⁹. Source: S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975).
pub fn plate_laminar(rayleigh: Ratio, prandtl: Ratio) -> Ratio {
    let term = prandtl_term(0.492, prandtl, 9.0 / 16.0).powf(4.0 / 9.0);
    si(0.68 + 0.670 * rayleigh.value.powf(0.25) / term)
}

/// Vertical plate in still air, any range,
/// `Nu = (0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27))²`.
///
/// Source: S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975).
pub fn plate_any(rayleigh: Ratio, prandtl: Ratio) -> Ratio {
    let term = prandtl_term(0.492, prandtl, 9.0 / 16.0).powf(8.0 / 27.0);
    si((0.825 + 0.387 * rayleigh.value.powf(1.0 / 6.0) / term).powi(2))
}

/// Vertical plate in still air, laminar form to `Ra = 10⁹` and all-range form beyond; see
/// [`plate_laminar`] and [`plate_any`].
pub fn plate(rayleigh: Ratio, prandtl: Ratio) -> Ratio {
    if rayleigh.value < 1e9 {
        plate_laminar(rayleigh, prandtl)
    } else {
        plate_any(rayleigh, prandtl)
    }
}

/// Factor of the laminar power law by the integral method, `c = 0.678 (Pr/(0.952 + Pr))^¼`.
///
/// Source: H. B. Squire, E. R. G. Eckert; J. H. Lienhard, A Heat Transfer Textbook.
pub fn integral_factor(prandtl: Ratio) -> Ratio {
    let pr = prandtl.value;
    si(0.678 * (pr / (0.952 + pr)).powf(0.25))
}

/// Power law of still air, `Nu = c Ra^n`.
///
/// `c` 0.59 and `n` ¼ while laminar, 0.10 to 0.13 and ⅓ from `Ra = 10⁹`.
/// Source: W. H. McAdams, Heat Transmission, as textbooks quote it.
pub fn power_law(factor: Ratio, rayleigh: Ratio, exponent: Ratio) -> Ratio {
    factor * rayleigh.value.powf(exponent.value)
}

/// Level cylinder in still air,
/// `Nu = (0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27))²`.
///
/// `Ra` up to 10¹². Source: S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975).
pub fn level_cylinder(rayleigh: Ratio, prandtl: Ratio) -> Ratio {
    let term = prandtl_term(0.559, prandtl, 9.0 / 16.0).powf(8.0 / 27.0);
    si((0.60 + 0.387 * rayleigh.value.powf(1.0 / 6.0) / term).powi(2))
}

/// Reynolds number, `Re = v L / ν`.
pub fn reynolds(speed: Velocity, length: Length, viscosity: KinematicViscosity) -> Ratio {
    si(speed.value * length.value / viscosity.value)
}

/// Air along a flat plate, mean over its length: `Nu = 0.664 Re^½ Pr^⅓` while laminar, beyond
/// `Re = 5 × 10⁵` `Nu = (0.037 Re^0.8 − 871) Pr^⅓`.
///
/// Prandtl number from 0.6; `Re` to 10⁸.
/// Source: F. P. Incropera, D. P. DeWitt, chapter 7; S. K. Som, Introduction to Heat Transfer.
pub fn along_plate(reynolds: Ratio, prandtl: Ratio) -> Ratio {
    let re = reynolds.value;
    let flow = if re <= TURNS_TURBULENT { 0.664 * re.sqrt() } else { 0.037 * re.powf(0.8) - 871.0 };
    si(flow * prandtl.value.cbrt())
}

/// Cylinder across moving air, `Nu = 0.3 + 0.62 Re^½ Pr^⅓ / [1 + (0.4/Pr)^⅔]^¼ ×
/// [1 + (Re/282 000)^⅝]^⅘`.
///
/// `Re Pr` above 0.2. Source: S. W. Churchill, M. Bernstein, J. Heat Transfer 99 (1977).
pub fn across_cylinder(reynolds: Ratio, prandtl: Ratio) -> Ratio {
    let (re, pr) = (reynolds.value, prandtl.value);
    let base = 0.62 * re.sqrt() * pr.cbrt() / prandtl_term(0.4, prandtl, 2.0 / 3.0).powf(0.25);
    si(0.3 + base * (1.0 + (re / 282_000.0).powf(0.625)).powf(0.8))
}
