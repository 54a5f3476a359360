//! Motor controller and regulator: path loss, switching loss, and what a regulator must give.

use uom::si::f64::{
    ElectricCurrent, ElectricPotential, ElectricalResistance, Frequency, Power, Ratio, Time,
};

/// Heat in a switch that conducts part of the time, `P = I² R x`.
///
/// Source: N. Mohan, T. Undeland, W. Robbins, Power Electronics (from memory).
pub fn conduction_loss(
    current: ElectricCurrent,
    resistance: ElectricalResistance,
    on_share: Ratio,
) -> Power {
    current * current * resistance * on_share
}

/// Heat in a path with a fixed voltage, `P = V I x`, for diodes and transistors with a knee.
pub fn fixed_voltage_loss(
    voltage: ElectricPotential,
    current: ElectricCurrent,
    on_share: Ratio,
) -> Power {
    voltage * current * on_share
}

/// Switching loss with a motor, which holds its current, `P = ½ V I (t_r + t_f) f`.
///
/// Source: N. Mohan, T. Undeland, W. Robbins, Power Electronics (from memory).
pub fn switching_loss(
    voltage: ElectricPotential,
    current: ElectricCurrent,
    rise: Time,
    fall: Time,
    frequency: Frequency,
) -> Power {
    voltage * current * (rise + fall) * frequency / 2.0
}

/// Switching loss of one edge with a plain resistance, where voltage and current cross,
/// `P = I (V / 6 + V_sat / 3) t f`.
///
/// Source: M. H. Rashid, Power Electronics, bipolar transistor examples.
pub fn crossing_loss(
    voltage: ElectricPotential,
    saturation: ElectricPotential,
    current: ElectricCurrent,
    edge: Time,
    frequency: Frequency,
) -> Power {
    (voltage / 6.0 + saturation / 3.0) * current * edge * frequency
}

/// Most that servos and the rest can ask of a regulator, `I = n I_stall + I_rest`.
///
/// Source: Kirchhoff's junction rule, OpenStax, College Physics 2e, section 21.3.
pub fn regulator_demand(
    servos: Ratio,
    stall: ElectricCurrent,
    rest: ElectricCurrent,
) -> ElectricCurrent {
    stall * servos + rest
}

/// Heat of a linear regulator, `P = (V_in − V_out) I`.
pub fn linear_regulator_loss(
    input: ElectricPotential,
    output: ElectricPotential,
    current: ElectricCurrent,
) -> Power {
    (input - output) * current
}
