//! Shallow snow over firm ground, after the models of US Army CRREL.

use uom::si::f64::{Area, Force, Length, MassDensity, Pressure, Ratio};
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::kilopascal;
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// Density of the snow left under a track or wheel, by the pressure on it.
///
/// 500 kg/m³ up to 210 kPa, 550 up to 350 kPa, 600 up to 700 kPa, 650 above.
/// Source: US Army CRREL Report 95-7, 1995.
pub fn final_density(pressure: Pressure) -> MassDensity {
    let density = match pressure.get::<kilopascal>() {
        ..=210.0 => 500.0,
        ..=350.0 => 550.0,
        ..=700.0 => 600.0,
        _ => 650.0,
    };
    MassDensity::new::<kilogram_per_cubic_meter>(density)
}

/// Depth of the rut in undisturbed shallow snow, `z = h (1 − ρ₀/ρ_f)`.
///
/// Snow on firm ground, pressed straight down. Real ruts are mostly deeper: see [`RUT_BAND`].
/// Source: P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL
/// Report 95-1, 1995.
///
/// # Errors
/// [`Impossible::SnowDense`] when the snow is as dense already.
pub fn rut(
    depth: Length,
    density: MassDensity,
    final_density: MassDensity,
) -> Result<Length, Impossible> {
    if density >= final_density {
        return Err(Impossible::SnowDense);
    }
    Ok(depth * (Ratio::new::<ratio>(1.0) - density / final_density))
}

/// Measured ruts over the rule's: from 8 % shallower in the lightest snow to 45 % deeper.
///
/// Source: CRREL TR-01-16, Table 11, against [`rut`]; snow also flows sideways and forward.
pub const RUT_BAND: (f64, f64) = (0.92, 1.45);

/// The shallow end of [`RUT_BAND`].
pub fn shallowest_rut(rut: Length) -> Length {
    rut * RUT_BAND.0
}

/// The deep end of [`RUT_BAND`].
pub fn deepest_rut(rut: Length) -> Length {
    rut * RUT_BAND.1
}

/// Gross traction on snow and ice, `T = a p^m A`, traction and pressure in kPa.
///
/// `a` and `m` belong to the surface; fitted on full-size vehicles at tens of kPa and more.
/// Source: CRREL Report 95-1.
pub fn traction(factor: Ratio, exponent: Ratio, pressure: Pressure, area: Area) -> Force {
    let stress = factor.get::<ratio>() * pressure.get::<kilopascal>().powf(exponent.get::<ratio>());
    Pressure::new::<kilopascal>(stress) * area
}
