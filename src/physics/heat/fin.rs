//! Fins: how much of a fin works as hard as its root.

use uom::si::f64::{HeatTransfer, Length, Ratio, ThermalConductivity, ThermalResistance};

use crate::physics::si;

/// The fin number, `m L = L √(h p / (k A))`, with perimeter over section `p/A`: 4/d for a pin,
/// about 2/t for a plate.
///
/// Source: S. P. Sukhatme, A Textbook on Heat Transfer, Example 2.13.
pub fn fin_number(
    h: HeatTransfer,
    length: Length,
    conductivity: ThermalConductivity,
    section_over_perimeter: Length,
) -> Ratio {
    let m = (h.value / (conductivity.value * section_over_perimeter.value)).sqrt();
    si(m * length.value)
}

/// The fin number of a plate fin, thickness much less than its width: `A/p = t/2`.
pub fn plate_fin_number(
    h: HeatTransfer,
    length: Length,
    conductivity: ThermalConductivity,
    thickness: Length,
) -> Ratio {
    fin_number(h, length, conductivity, thickness / 2.0)
}

/// Share of the root's excess at the tip, `1 / cosh(m L)`, the tip itself shedding nothing.
///
/// Source: S. P. Sukhatme, A Textbook on Heat Transfer, Example 2.13.
pub fn tip_share(fin_number: Ratio) -> Ratio {
    si(1.0 / fin_number.value.cosh())
}

/// Fin efficiency, `tanh(m L) / (m L)`: heat shed over what a fin all as warm as its root would.
///
/// Source: F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3.
pub fn efficiency(fin_number: Ratio) -> Ratio {
    let x = fin_number.value;
    si(if x == 0.0 { 1.0 } else { x.tanh() / x })
}

/// Fin effectiveness, `η 2 L / t`: heat shed over what the bare root would shed.
///
/// A plate fin, both faces counted and its edge left out.
/// Source: F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3.
pub fn effectiveness(efficiency: Ratio, length: Length, thickness: Length) -> Ratio {
    efficiency * (length * 2.0 / thickness)
}

/// Plate fins for a resistance to air, `n = 1 / (R h η 2 L w)`; not rounded.
///
/// The root between the fins is left out, which is on the safe side.
/// Source: F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3.
pub fn count(
    resistance: ThermalResistance,
    h: HeatTransfer,
    efficiency: Ratio,
    length: Length,
    width: Length,
) -> Ratio {
    let faces = 2.0 * length.value * width.value;
    si(1.0 / (resistance.value * h.value * efficiency.value * faces))
}
