//! The direct-current motor, brushed or brushless, to first order: constants, working point,
//! efficiency and the ends of its line.
//!
//! Speed falls straight with torque, friction and iron loss are one steady no-load current, and
//! the winding has one resistance. Stall figures are what the voltage would drive through a cold
//! winding: supply and controller hold real ones below.

use uom::si::Quantity;
use uom::si::f64::{
    AngularVelocity, ElectricCurrent, ElectricPotential, ElectricalResistance, MomentOfInertia,
    Power, Ratio, TemperatureCoefficient, ThermodynamicTemperature, Time, Torque,
};
use uom::typenum::{N1, N2, P1, P2, Z0};

use crate::physics::{Impossible, si};

/// Speed of turning per voltage, SI radian per second and volt.
pub type SpeedConstant = Quantity<uom::si::ISQ<N2, N1, P2, P1, Z0, Z0, Z0>, uom::si::SI<f64>, f64>;
/// Torque per current, SI newton metre per ampere.
pub type TorqueConstant = Quantity<uom::si::ISQ<P2, P1, N2, N1, Z0, Z0, Z0>, uom::si::SI<f64>, f64>;

/// Torque constant from speed constant, `K_t = 1 / K_v` in SI units.
///
/// Both above zero. With rpm/V and N·m/A the product is `30/π = 9.549`.
/// Source: maxon motor, catalogue data of the EC 40 motors (2013).
pub fn torque_constant(speed_constant: SpeedConstant) -> TorqueConstant {
    si(1.0 / speed_constant.value)
}

/// Speed constant from torque constant, `K_v = 1 / K_t` in SI units; see [`torque_constant`].
pub fn speed_constant(torque_constant: TorqueConstant) -> SpeedConstant {
    si(1.0 / torque_constant.value)
}

/// Speed on paper, with neither load nor loss, `ω = K_v V`.
pub fn ideal_speed(constant: SpeedConstant, voltage: ElectricPotential) -> AngularVelocity {
    si(constant.value * voltage.value)
}

/// Speed at a current, `ω = K_v (V − I R)`.
///
/// With the no-load current it is the no-load speed. Below zero the motor is driven backwards.
/// Source: maxon motor, catalogue data of the EC 40 motors (2013).
pub fn speed(
    constant: SpeedConstant,
    voltage: ElectricPotential,
    current: ElectricCurrent,
    resistance: ElectricalResistance,
) -> AngularVelocity {
    ideal_speed(constant, back_emf(voltage, current, resistance))
}

/// Speed under load; as [`speed`].
///
/// # Errors
/// [`Impossible::Stalls`] when nothing is left to turn it.
pub fn loaded_speed(
    constant: SpeedConstant,
    voltage: ElectricPotential,
    current: ElectricCurrent,
    resistance: ElectricalResistance,
) -> Result<AngularVelocity, Impossible> {
    let speed = speed(constant, voltage, current, resistance);
    if speed.value <= 0.0 { Err(Impossible::Stalls) } else { Ok(speed) }
}

/// The voltage the turning motor makes against its supply, `E = V − I R`.
///
/// Source: OpenStax, College Physics 2e, section 23.6 Back Emf.
pub fn back_emf(
    voltage: ElectricPotential,
    current: ElectricCurrent,
    resistance: ElectricalResistance,
) -> ElectricPotential {
    voltage - current * resistance
}

/// Stall current, `I_s = V / R`.
///
/// Resistance above zero. Source: maxon motor, catalogue data of the EC 40 motors (2013).
pub fn stall_current(
    voltage: ElectricPotential,
    resistance: ElectricalResistance,
) -> ElectricCurrent {
    voltage / resistance
}

/// Magnetic torque of a current, `T = K_t I`; at stall the stall torque of catalogues.
///
/// Source: maxon motor, catalogue data of the EC 40 motors (2013).
pub fn magnetic_torque(constant: TorqueConstant, current: ElectricCurrent) -> Torque {
    si(constant.value * current.value)
}

/// Torque left at the shaft, `T = K_t (I − I₀)`.
pub fn shaft_torque(
    constant: TorqueConstant,
    current: ElectricCurrent,
    no_load: ElectricCurrent,
) -> Torque {
    magnetic_torque(constant, current - no_load)
}

/// Current that gives a shaft torque, `I = T / K_t + I₀`.
///
/// Source: the first-order model of maxon motor's catalogue (2013).
///
/// # Errors
/// [`Impossible::GroundDrives`] where a braking torque is more than the motor's own friction: the
/// motor then draws nothing.
pub fn current(
    torque: Torque,
    constant: TorqueConstant,
    no_load: ElectricCurrent,
) -> Result<ElectricCurrent, Impossible> {
    let current =
        si::<uom::si::electric_current::Dimension>(torque.value / constant.value) + no_load;
    if current.value < 0.0 { Err(Impossible::GroundDrives) } else { Ok(current) }
}

/// Speed lost to a torque, `Δω = T R / K_t²`.
///
/// Source: speed/torque gradient, maxon motor, catalogue data of the EC 40 motors (2013).
pub fn speed_lost(
    torque: Torque,
    resistance: ElectricalResistance,
    constant: TorqueConstant,
) -> AngularVelocity {
    si(torque.value * resistance.value / (constant.value * constant.value))
}

/// Best efficiency the motor can reach, `η = (1 − √(I₀ / I_s))²`.
///
/// No-load current below stall current.
/// Source: maxon motor, catalogue data of the EC 40 motors (2013).
///
/// # Errors
/// [`Impossible::Stalls`] when the no-load current is not below the stall current.
pub fn best_efficiency(
    no_load: ElectricCurrent,
    stall: ElectricCurrent,
) -> Result<Ratio, Impossible> {
    if no_load >= stall {
        return Err(Impossible::Stalls);
    }
    Ok(si((1.0 - (no_load.value / stall.value).sqrt()).powi(2)))
}

/// Current at best efficiency, `I = √(I₀ I_s)`.
///
/// Source: follows from [`best_efficiency`]; the general law is [`current_of_equal_losses`].
pub fn best_efficiency_current(
    no_load: ElectricCurrent,
    stall: ElectricCurrent,
) -> ElectricCurrent {
    (no_load * stall).sqrt()
}

/// Current at which copper loss equals the fixed losses, where efficiency peaks, `I = √(P₀ / R)`.
///
/// Source: I. L. Kosow, Electric Machinery and Transformers, 2nd ed., chapter 12.
pub fn current_of_equal_losses(fixed: Power, resistance: ElectricalResistance) -> ElectricCurrent {
    (fixed / resistance).sqrt()
}

/// Mechanical time constant, `τ = J R / K_t²`: the run-up to 63 % of its speed, unloaded.
///
/// Source: maxon motor, catalogue data of the EC 40 motors (2013).
pub fn time_constant(
    inertia: MomentOfInertia,
    resistance: ElectricalResistance,
    constant: TorqueConstant,
) -> Time {
    si(inertia.value * resistance.value / (constant.value * constant.value))
}

/// Greatest power the straight speed line allows, `P = T_s ω₀ / 4`, at half of each.
///
/// A peak for seconds: at least half the input is heat there.
/// Source: MIT, Understanding D.C. Motor Characteristics, course 2.007.
pub fn greatest_power(stall_torque: Torque, no_load_speed: AngularVelocity) -> Power {
    shaft_power(stall_torque, no_load_speed) / 4.0
}

/// Power of a turning shaft, `P = T ω`.
pub fn shaft_power(torque: Torque, speed: AngularVelocity) -> Power {
    si(torque.value * speed.value)
}

/// Electric power, `P = V I`.
pub fn electric_power(voltage: ElectricPotential, current: ElectricCurrent) -> Power {
    voltage * current
}

/// What does not come out, `P_in − P_out`.
pub fn loss(input: Power, output: Power) -> Power {
    input - output
}

/// Efficiency, `P_out / P_in`; nothing goes in, no efficiency.
///
/// # Errors
/// [`Impossible::GroundDrives`] where the output is below zero: the load then drives the motor.
pub fn efficiency(output: Power, input: Power) -> Result<Ratio, Impossible> {
    if output.value < 0.0 { Err(Impossible::GroundDrives) } else { Ok(output / input) }
}

/// Input power from output and efficiency, `P_in = P_out / η`.
///
/// Efficiency above 0, at most 1.
pub fn input_from_efficiency(output: Power, efficiency: Ratio) -> Power {
    output / efficiency
}

/// Heat in a winding, `P = I² R`.
///
/// Source: OpenStax, College Physics 2e, section 20.4 Electric Power and Energy.
pub fn winding_loss(current: ElectricCurrent, resistance: ElectricalResistance) -> Power {
    current * current * resistance
}

/// Steady loss of a machine that runs unloaded, `P₀ = V I₀ − I₀² R`: friction, fan and iron.
///
/// Source: Fitzgerald, Kingsley, Umans, Electric Machinery, 6th ed., chapter 7 (from memory).
pub fn no_load_loss(
    voltage: ElectricPotential,
    no_load: ElectricCurrent,
    resistance: ElectricalResistance,
) -> Power {
    voltage * no_load - winding_loss(no_load, resistance)
}

/// Efficiency at part of the full load, `η = x P / (x P + P₀ + x² P_cu)`.
///
/// Output at full load `P`, losses that stay `P₀`, copper loss at full load `P_cu`, load `x` above
/// zero. Source: I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Examples 12-1 and 12-2.
pub fn part_load_efficiency(output: Power, fixed: Power, copper: Power, load: Ratio) -> Ratio {
    let out = output * load;
    out / (out + fixed + copper * load * load)
}

/// A resistance, or a magnet, at another temperature, `1 + α (T − T₀)` times what it was.
///
/// Straight line: copper from −50 to 200 °C, magnets up to their grade's limit. Source: NBS
/// Handbook 100, Copper Wire Tables (from memory) for copper.
pub fn warm_factor(
    temperature: ThermodynamicTemperature,
    reference: ThermodynamicTemperature,
    coefficient: TemperatureCoefficient,
) -> Ratio {
    si(1.0 + coefficient.value * (temperature.value - reference.value))
}

/// Resistance at another temperature; see [`warm_factor`].
pub fn warm_resistance(
    resistance: ElectricalResistance,
    temperature: ThermodynamicTemperature,
    reference: ThermodynamicTemperature,
    coefficient: TemperatureCoefficient,
) -> ElectricalResistance {
    resistance * warm_factor(temperature, reference, coefficient)
}

/// Torque constant at another temperature; see [`warm_factor`]. Reversible part only.
pub fn warm_torque_constant(
    constant: TorqueConstant,
    temperature: ThermodynamicTemperature,
    reference: ThermodynamicTemperature,
    coefficient: TemperatureCoefficient,
) -> TorqueConstant {
    constant * warm_factor(temperature, reference, coefficient)
}
