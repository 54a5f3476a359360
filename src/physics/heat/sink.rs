//! From a chip to the air: a chain of thermal resistances, and the heat sink it needs.

use uom::si::f64::{Power, TemperatureInterval, ThermalResistance};

use crate::physics::{Impossible, si};

/// Three resistances in a row.
///
/// Source: series of thermal resistances; N. Mohan, T. Undeland, W. Robbins, Power Electronics
/// (from memory).
pub fn chain(
    one: ThermalResistance,
    other: ThermalResistance,
    third: ThermalResistance,
) -> ThermalResistance {
    one + other + third
}

/// Largest resistance from heat sink to air, `R = ΔT / P − R_jc − R_cs`.
///
/// # Errors
/// [`Impossible::TooHotAlready`] when nothing is allowed; [`Impossible::NoHeatSinkWillDo`] when
/// the parts before it use the whole step.
pub fn sink_needed(
    allowed: TemperatureInterval,
    loss: Power,
    junction_to_case: ThermalResistance,
    case_to_sink: ThermalResistance,
) -> Result<ThermalResistance, Impossible> {
    if allowed.value <= 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    let all: ThermalResistance = si(allowed.value / loss.value);
    let left = all - junction_to_case - case_to_sink;
    if left.value < 0.0 { Err(Impossible::NoHeatSinkWillDo) } else { Ok(left) }
}

/// Junction to case from a rating that falls in a straight line to nothing at the limit.
///
/// `R = (T_end − T_case) / P`, with the case at the temperature the rating is given for.
/// Source: data sheets of power transistors.
pub fn from_derating(span: TemperatureInterval, rated: Power) -> ThermalResistance {
    si(span.value / rated.value)
}
