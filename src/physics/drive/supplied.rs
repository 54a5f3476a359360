//! What the motors give on their supply and through their gears: the straight line from the push at
//! rest to the speed with nothing to push.

use uom::ConstZero;
use uom::si::f64::{
    Area, ElectricCurrent, ElectricPotential, ElectricalResistance, Force, Length, MassDensity,
    Power, Ratio, Torque, Velocity,
};

use crate::physics::{Impossible, si};

/// Resistance in the loop of each of `n` motors that draw alike, `R_m + R_c + n R_s`.
///
/// Winding `R_m`, controller `R_c`, and the supply `R_s` that all share.
/// Source: Kirchhoff's loop rule, OpenStax, College Physics 2e, section 21.3.
pub fn loop_resistance(
    motor: ElectricalResistance,
    controller: ElectricalResistance,
    motors: Ratio,
    supply: ElectricalResistance,
) -> ElectricalResistance {
    motor + controller + supply * motors
}

/// Greatest shaft power of a motor on its supply, `P = (I − I₀)(V − I R)` at
/// `I = min(½ (V/R + I₀), I_most)`.
///
/// `R` the whole loop, above zero; `I_most` the current let in at most. A peak for seconds.
/// Source: the first-order model, maxon motor, catalogue chapter Key information.
///
/// # Errors
/// [`Impossible::Stalls`] when not even the no-load current is let in.
pub fn greatest_power(
    voltage: ElectricPotential,
    resistance: ElectricalResistance,
    no_load: ElectricCurrent,
    most: ElectricCurrent,
) -> Result<Power, Impossible> {
    let free: ElectricCurrent = (voltage / resistance + no_load) * 0.5;
    let current = if most < free { most } else { free };
    if current <= no_load {
        return Err(Impossible::Stalls);
    }
    Ok((current - no_load) * (voltage - current * resistance))
}

/// Top speed by gearing: where the line from the push at rest `F₀` to the unloaded speed `v₀` meets
/// what holds back, `F₀ (1 − v/v₀) = R + ½ ρ A v²`.
///
/// Downhill (`R < 0`) it lies past `v₀`, the motors braking. Source: speed-torque line of a
/// direct-current motor (maxon motor, 2013) and force balance, as
/// [`power_top_speed`](crate::physics::motion::power_top_speed).
///
/// # Errors
/// [`Impossible::Stalls`] when the push at rest does not get it moving.
pub fn geared_top_speed(
    unloaded: Velocity,
    push_at_rest: Force,
    resistance: Force,
    density: MassDensity,
    drag_area: Area,
) -> Result<Velocity, Impossible> {
    let spare = push_at_rest - resistance;
    if spare <= Force::ZERO {
        return Err(Impossible::Stalls);
    }
    // The root of k v² + b v = c in the form that also holds without air.
    let (k, b, c) =
        (0.5 * density.value * drag_area.value, push_at_rest.value / unloaded.value, spare.value);
    Ok(si(2.0 * c / (b + (b * b + 4.0 * k * c).sqrt())))
}

/// Torque at the axles of so many torques at the shaft, `T_a = T n G η`.
///
/// Source: power balance over the gears; any textbook of machine elements.
pub fn axle_torque(shaft: Torque, shafts: Ratio, ratio: Ratio, efficiency: Ratio) -> Torque {
    si(shaft.value * (shafts * ratio * efficiency).value)
}

/// Radius that rolls off a distance per turn, `r = s / 2π`.
pub fn rolling_radius(distance: Length) -> Length {
    distance / (2.0 * std::f64::consts::PI)
}
