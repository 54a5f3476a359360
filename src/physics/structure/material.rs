//! Material indices: which material makes the lightest part that is stiff or strong enough.

use uom::si::f64::{MassDensity, Pressure, Ratio};
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::pressure::{gigapascal, megapascal};
use uom::si::ratio::ratio;

/// Index of a light stiff part, `E^(1/n) / ρ`, with `E` in gigapascals and `ρ` in tonnes per cubic
/// metre.
///
/// `n` is 1 for a rod in tension, 2 for a beam whose section may grow both ways, 3 for a panel whose
/// thickness may grow. Only a comparison: twice the index, half the mass at equal stiffness.
/// Source: M. F. Ashby, Materials Selection in Mechanical Design, chapter 5 (from memory).
pub fn modulus_index(modulus: Pressure, density: MassDensity, n: u8) -> Ratio {
    index(modulus.get::<gigapascal>(), density, 1.0 / f64::from(n))
}

/// Index of a light strong part, `σ^p / ρ`, with `σ` in megapascals and `ρ` in tonnes per cubic
/// metre.
///
/// `p` is 1 for a rod in tension, 2/3 for a beam. Only a comparison, as [`modulus_index`].
/// Source: M. F. Ashby, Materials Selection in Mechanical Design, chapter 5 (from memory).
pub fn strength_index(strength: Pressure, density: MassDensity, power: f64) -> Ratio {
    index(strength.get::<megapascal>(), density, power)
}

fn index(property: f64, density: MassDensity, power: f64) -> Ratio {
    Ratio::new::<ratio>(property.powf(power) / density.get::<gram_per_cubic_centimeter>())
}
