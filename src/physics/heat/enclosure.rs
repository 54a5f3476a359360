//! A closed box: how much skin it has, and how well each part of it passes heat.

use uom::si::f64::{
    Area, HeatTransfer, Length, Power, Ratio, ThermalConductance, ThermalResistance,
};

use crate::physics::si;

/// Skin of a box, lid left out, `A = l w + 2 h (l + w)`.
pub fn body_area(length: Length, width: Length, height: Length) -> Area {
    length * width + height * (length + width) * 2.0
}

/// Area of the lid, `A = l w`.
pub fn lid_area(length: Length, width: Length) -> Area {
    length * width
}

/// Heat passed per degree from the air inside to the air outside, `G = U A + U_lid A_lid x`.
///
/// `U` counts both air films and the wall; `x` how many times its flat area a finned lid has,
/// already less what its fins lose (1 for a flat lid).
/// Source: addition of parallel paths; S. K. Som, Introduction to Heat Transfer.
pub fn conductance(
    body: Area,
    body_coefficient: HeatTransfer,
    lid: Area,
    lid_coefficient: HeatTransfer,
    fins: Ratio,
) -> ThermalConductance {
    let through_body = body.value * body_coefficient.value;
    si(through_body + lid.value * lid_coefficient.value * fins.value)
}

/// The other way round, `R = 1 / G`.
pub fn resistance(
    body: Area,
    body_coefficient: HeatTransfer,
    lid: Area,
    lid_coefficient: HeatTransfer,
    fins: Ratio,
) -> ThermalResistance {
    si(1.0 / conductance(body, body_coefficient, lid, lid_coefficient, fins).value)
}

/// Sum of the heat made inside.
pub fn sum(one: Power, other: Power, third: Power) -> Power {
    one + other + third
}
