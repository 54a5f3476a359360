//! A closed box: how much skin it has, how well each part of it passes heat, and what sun adds.

use uom::si::f64::{
    Area, HeatFluxDensity, HeatTransfer, Length, Power, Ratio, TemperatureInterval,
    ThermalConductance, ThermalResistance, Time,
};

use super::lump;
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

/// The most of a box that the sun can light, seen from the sun,
/// `A = √((l w)² + (l h)² + (w h)²)`.
///
/// The shadow of a box on a plane square to the rays, for the worst direction of them.
/// Source: geometry; each face counts with the cosine of its tilt.
pub fn largest_shadow(length: Length, width: Length, height: Length) -> Area {
    let (top, side, end) = (length * width, length * height, width * height);
    (top * top + side * side + end * end).sqrt()
}

/// How much warmer than the air the sun alone makes a skin with no heat behind it,
/// `ΔT = α E / h`: the sol-air step.
///
/// `h` counts moving air and radiation at the outside; what it shines to a clear sky is left out.
/// Source: ASHRAE Handbook, Fundamentals, sol-air temperature (from memory).
pub fn sun_step(
    irradiance: HeatFluxDensity,
    absorptance: Ratio,
    outside: HeatTransfer,
) -> TemperatureInterval {
    si(absorptance.value * irradiance.value / outside.value)
}

/// Heat inside that would warm a box as much as the sun on its skin does, `P = ΔT A U`.
///
/// Of what the skin absorbs, `h ΔT A`, the part `U/h` counts inside; the rest leaves by the air
/// outside. The part is never more than all of it.
/// Source: steady heat balance of a wall with the sol-air temperature, ASHRAE Handbook,
/// Fundamentals (from memory).
pub fn sun_heat(
    step: TemperatureInterval,
    lit: Area,
    wall: HeatTransfer,
    outside: HeatTransfer,
) -> Power {
    si(step.value * lit.value * wall.value.min(outside.value))
}

/// Mean of two powers in turn, `P = (P₁ t₁ + P₂ t₂)/(t₁ + t₂)`.
pub fn mean_heat(working: Power, resting: Power, work: Time, rest: Time) -> Power {
    (working * work + resting * rest) / (work + rest)
}

/// Hottest moment of endless work and rest with heat in both; see [`lump::duty_peak`].
pub fn duty_peak(
    [working, resting]: [Power; 2],
    resistance: ThermalResistance,
    [work, rest]: [Time; 2],
    constant: Time,
) -> TemperatureInterval {
    let more = lump::final_rise(working - resting, resistance);
    lump::final_rise(resting, resistance) + lump::duty_peak(more, work, rest, constant)
}
