//! Cells and packs: voltage, sag, heat, energy and time.

use uom::si::f64::{
    ElectricCharge, ElectricCurrent, ElectricPotential, ElectricalResistance, Energy, Mass, Power,
    Ratio, SpecificHeatCapacity, TemperatureCoefficient, TemperatureInterval,
    ThermodynamicTemperature, Time,
};

use crate::physics::{Impossible, si};

/// Voltage of cells in a row, `V = s V_cell`; cut-off likewise.
///
/// Source: OpenStax, College Physics 2e, section 21.2 Electromotive Force: Terminal Voltage.
pub fn pack_voltage(series: Ratio, cell: ElectricPotential) -> ElectricPotential {
    cell * series
}

/// Resistance of a pack, `R = R_cell s / p`, times a factor for cold.
///
/// Source: OpenStax, College Physics 2e, section 21.1 Resistors in Series and Parallel.
pub fn pack_resistance(
    cell: ElectricalResistance,
    series: Ratio,
    parallel: Ratio,
) -> ElectricalResistance {
    cell * series / parallel
}

/// Charge of a pack, `Q = p Q_cell`: cells in a row add no charge.
pub fn pack_charge(cell: ElectricCharge, parallel: Ratio) -> ElectricCharge {
    cell * parallel
}

/// Internal resistance from two loads, `R = (V₁ − V₂) / (I₂ − I₁)`.
///
/// Source: the definition of internal resistance, OpenStax, College Physics 2e, section 21.2.
pub fn resistance_from_two_loads(
    voltage_1: ElectricPotential,
    current_1: ElectricCurrent,
    voltage_2: ElectricPotential,
    current_2: ElectricCurrent,
) -> Result<ElectricalResistance, Impossible> {
    let (sag, step) = (voltage_1 - voltage_2, current_2 - current_1);
    if step.value > 0.0 && sag.value >= 0.0 {
        Ok(sag / step)
    } else {
        Err(Impossible::NoHeavierLoad)
    }
}

/// Voltage left at the terminals, `V = V_0 − ΔV`.
///
/// # Errors
/// [`Impossible::PackCollapses`] when the drop takes all of the voltage: such a current cannot flow.
/// Source: OpenStax, University Physics Volume 2, section 10.1 Electromotive Force.
pub fn left(
    open: ElectricPotential,
    drop: ElectricPotential,
) -> Result<ElectricPotential, Impossible> {
    let left = open - drop;
    if left.value > 0.0 { Ok(left) } else { Err(Impossible::PackCollapses) }
}

/// Voltage a load takes away, `ΔV = I R`.
///
/// Source: OpenStax, College Physics 2e, section 21.2 Electromotive Force: Terminal Voltage.
pub fn sag(current: ElectricCurrent, resistance: ElectricalResistance) -> ElectricPotential {
    current * resistance
}

/// Current drawn by parts that take a steady power through a resistance, the smaller root of
/// `I (E − I R) = P`.
///
/// Source: power balance at the terminals, OpenStax, College Physics 2e, section 21.2.
///
/// # Errors
/// [`Impossible::PackCollapses`] when the supply cannot give that power at any current.
pub fn current_for_power(
    emf: ElectricPotential,
    resistance: ElectricalResistance,
    power: Power,
) -> Result<ElectricCurrent, Impossible> {
    let inner = emf.value * emf.value - 4.0 * resistance.value * power.value;
    if inner < 0.0 {
        return Err(Impossible::PackCollapses);
    }
    // The stable form of the smaller root, also with no resistance at all.
    Ok(si(2.0 * power.value / (emf.value + inner.sqrt())))
}

/// Largest current before the cut-off, `I = (E − V_cut) / R`.
///
/// # Errors
/// [`Impossible::EmptyAlready`] when the resting voltage is under the cut-off.
pub fn cutoff_current(
    emf: ElectricPotential,
    cutoff: ElectricPotential,
    resistance: ElectricalResistance,
) -> Result<ElectricCurrent, Impossible> {
    if emf < cutoff {
        return Err(Impossible::EmptyAlready);
    }
    Ok((emf - cutoff) / resistance)
}

/// C rate of a current, `C = I · 1 h / Q`: how many times over it would empty the pack in an hour.
///
/// Source: the definition of the C rate, as MIT Electric Vehicle Team, A Guide to Understanding
/// Battery Specifications (2008), gives it.
pub fn c_rate(current: ElectricCurrent, charge: ElectricCharge) -> Ratio {
    si(current.value * 3600.0 / charge.value)
}

/// Current of a C rate, `I = C Q / 1 h`.
pub fn c_rate_current(rate: Ratio, charge: ElectricCharge) -> ElectricCurrent {
    si(rate.value * charge.value / 3600.0)
}

/// Time a current takes to use a charge, `t = Q / I`.
pub fn time_to_empty(charge: ElectricCharge, current: ElectricCurrent) -> Time {
    charge / current
}

/// Energy of a pack, `E = V Q`, at the mean voltage.
pub fn energy(voltage: ElectricPotential, charge: ElectricCharge) -> Energy {
    voltage * charge
}

/// How long an energy lasts at a power, `t = E / P`.
pub fn run_time(energy: Energy, power: Power) -> Time {
    energy / power
}

/// Peukert exponent from the rated discharge and a faster one, `k = ln(H/t) / ln(I H/Q)`.
///
/// Lead-acid; rated charge `Q` over rated time `H`, and the time `t` at the current `I`, both steady.
/// Source: W. Peukert 1897, as taught in battery handbooks (from memory).
///
/// # Errors
/// [`Impossible::NoFasterTest`] unless the test drew more than the rated current and ended sooner.
pub fn peukert_exponent(
    charge: ElectricCharge,
    rated_time: Time,
    current: ElectricCurrent,
    time: Time,
) -> Result<Ratio, Impossible> {
    let faster = current * rated_time / charge;
    if faster.value <= 1.0 || time >= rated_time {
        return Err(Impossible::NoFasterTest);
    }
    Ok(si((rated_time / time).value.ln() / faster.value.ln()))
}

/// Charge a current takes in a time, `Q = I t`.
///
/// Source: the definition of current, OpenStax, College Physics 2e, section 20.1.
pub fn charge_given(current: ElectricCurrent, time: Time) -> ElectricCharge {
    current * time
}

/// Time to empty by the Peukert law, `t = H (Q / (I H))^k`.
///
/// Rated charge `Q` over rated time `H`. Lead-acid between a fifth of and ten times the rated
/// current, at one temperature. Source: W. Peukert 1897, in the form of battery makers' manuals.
pub fn peukert_time(
    charge: ElectricCharge,
    rated_time: Time,
    current: ElectricCurrent,
    exponent: Ratio,
) -> Time {
    let of_rated = charge.value / (current.value * rated_time.value);
    rated_time * of_rated.powf(exponent.value)
}

/// Share of the rated capacity left at a temperature, `1 + α (T − T₀)`, not below zero.
///
/// Lead-acid, some tens of kelvin about the reference.
/// Source: battery makers' capacity correction (IEC 60896 form).
pub fn cold_capacity(
    temperature: ThermodynamicTemperature,
    reference: ThermodynamicTemperature,
    coefficient: TemperatureCoefficient,
) -> Ratio {
    si((1.0 + coefficient.value * (temperature.value - reference.value)).max(0.0))
}

/// Temperature rise of a mass that keeps all the heat, `ΔT = P t / (m c)`.
///
/// An upper bound: no cooling at all.
/// Source: OpenStax, University Physics Volume 2, section 1.4 Heat Transfer, Specific Heat.
pub fn uncooled_rise(
    heat: Power,
    time: Time,
    mass: Mass,
    specific_heat: SpecificHeatCapacity,
) -> TemperatureInterval {
    si(heat.value * time.value / (mass.value * specific_heat.value))
}
