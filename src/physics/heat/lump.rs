//! One body at one temperature: warm-up, rest, duty cycles, time to a limit.
//!
//! Good while the Biot number is under 0.1, so that the inside is as warm as the skin.

use uom::si::f64::{
    Area, ElectricCurrent, HeatCapacity, HeatTransfer, Length, Mass, Power, Ratio,
    SpecificHeatCapacity, TemperatureInterval, ThermalConductivity, ThermalResistance, Time,
    Volume,
};

use crate::physics::{Impossible, si};

/// Biot number, `Bi = h V / (A k)`, with `V` the volume and `A` the skin.
///
/// Source: S. K. Som, Introduction to Heat Transfer, Examples 4.1 and 4.3.
pub fn biot(
    h: HeatTransfer,
    volume: Volume,
    skin: Area,
    conductivity: ThermalConductivity,
) -> Ratio {
    si(h.value * volume.value / (skin.value * conductivity.value))
}

/// Heat capacity of a mass, `C = m c`.
///
/// Source: OpenStax, University Physics Volume 2, section 1.4.
pub fn heat_capacity(mass: Mass, specific_heat: SpecificHeatCapacity) -> HeatCapacity {
    si(mass.value * specific_heat.value)
}

/// Thermal resistance of a skin, `R = 1 / (h A)`.
///
/// Source: Newton's law of cooling; S. K. Som, Introduction to Heat Transfer.
pub fn skin_resistance(h: HeatTransfer, area: Area) -> ThermalResistance {
    si(1.0 / (h.value * area.value))
}

/// Heat a skin sheds, `P = h A ΔT`.
///
/// Source: Newton's law of cooling; S. K. Som, Introduction to Heat Transfer.
pub fn skin_heat(h: HeatTransfer, area: Area, excess: TemperatureInterval) -> Power {
    si(h.value * area.value * excess.value)
}

/// Thermal resistance of a slab, `R = d / (k A)`.
///
/// Source: OpenStax, College Physics 2e, section 14.5 Conduction.
pub fn slab_resistance(
    thickness: Length,
    conductivity: ThermalConductivity,
    area: Area,
) -> ThermalResistance {
    si(thickness.value / (conductivity.value * area.value))
}

/// Rise at rest, `ΔT = P R`.
///
/// Source: the thermal form of Ohm's law; S. K. Som, Introduction to Heat Transfer.
pub fn final_rise(loss: Power, resistance: ThermalResistance) -> TemperatureInterval {
    si(loss.value * resistance.value)
}

/// Heat that a rise drives through a resistance, `P = ΔT / R`.
pub fn heat_through(rise: TemperatureInterval, resistance: ThermalResistance) -> Power {
    si(rise.value / resistance.value)
}

/// Time constant, `τ = R C`: the time to 63 % of the final rise.
pub fn time_constant(resistance: ThermalResistance, capacity: HeatCapacity) -> Time {
    si(resistance.value * capacity.value)
}

/// Rise after some time of steady loss from cold, `ΔT = ΔT_∞ (1 − e^(−t/τ))`.
///
/// Source: S. K. Som, Introduction to Heat Transfer, lumped bodies.
pub fn rise_after(at_rest: TemperatureInterval, time: Time, constant: Time) -> TemperatureInterval {
    si(-at_rest.value * (-time.value / constant.value).exp_m1())
}

/// Time to cool from one excess to another, `t = −τ ln(ΔT / ΔT₀)`; none when it is cool enough.
///
/// Source: S. K. Som, Introduction to Heat Transfer, lumped bodies.
///
/// # Errors
/// [`Impossible::TooHotAlready`] when the air itself is as warm as the limit.
pub fn time_to_cool(
    constant: Time,
    start: TemperatureInterval,
    wanted: TemperatureInterval,
) -> Result<Time, Impossible> {
    if wanted.value <= 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    Ok(constant * (start.value / wanted.value).max(1.0).ln())
}

/// Time of steady loss from cold to an allowed rise, `t = −τ ln(1 − ΔT / ΔT_∞)`.
///
/// # Errors
/// [`Impossible::NeverReached`] when the rise at rest stays under it;
/// [`Impossible::TooHotAlready`] when nothing is allowed.
pub fn time_to_rise(
    allowed: TemperatureInterval,
    at_rest: TemperatureInterval,
    constant: Time,
) -> Result<Time, Impossible> {
    if allowed.value < 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    if allowed >= at_rest {
        return Err(Impossible::NeverReached);
    }
    Ok(constant * -(-allowed.value / at_rest.value).ln_1p())
}

/// Heat to warm a body, `Q = C ΔT`.
pub fn heat_to_warm(capacity: HeatCapacity, rise: TemperatureInterval) -> uom::si::f64::Energy {
    si(capacity.value * rise.value)
}

/// The steady current that heats as much as two currents in turn, `√((I₁² t₁ + I₂² t₂)/(t₁ + t₂))`.
///
/// For cycles well shorter than the time constant.
/// Source: IEC 60034-1, duty types (from memory).
pub fn heating_current(
    work: ElectricCurrent,
    work_time: Time,
    rest: ElectricCurrent,
    rest_time: Time,
) -> ElectricCurrent {
    let heat = work * work * work_time + rest * rest * rest_time;
    (heat / (work_time + rest_time)).sqrt()
}

/// The mean of two currents in turn; it decides the charge used, not the heat.
pub fn mean_current(
    work: ElectricCurrent,
    work_time: Time,
    rest: ElectricCurrent,
    rest_time: Time,
) -> ElectricCurrent {
    (work * work_time + rest * rest_time) / (work_time + rest_time)
}

/// Hottest moment of endless work and rest, `ΔT_∞ (1 − e^(−t₁/τ)) / (1 − e^(−(t₁ + t₂)/τ))`.
///
/// No loss while resting, the same cooling throughout.
/// Source: IEC 60034-1 duty type S3, by the lumped model.
pub fn duty_peak(
    at_rest: TemperatureInterval,
    work_time: Time,
    rest_time: Time,
    constant: Time,
) -> TemperatureInterval {
    let cycle = work_time + rest_time;
    let up = (-work_time.value / constant.value).exp_m1();
    let down = (-cycle.value / constant.value).exp_m1();
    si(at_rest.value * up / down)
}

/// Excess left after cooling whose coefficient fades with it,
/// `θ = θ₀ (1 + n h₀ A t / C)^(−1/n)`, where `h = h₀ (θ/θ₀)^n`.
///
/// Exponent `n` 1/4 for still air. Source: integration of Newton's law with a power-law
/// coefficient; J. H. Lienhard, A Heat Transfer Textbook, chapter 8.
pub fn still_air_cooling(
    start: TemperatureInterval,
    h: HeatTransfer,
    area: Area,
    capacity: HeatCapacity,
    exponent: Ratio,
    time: Time,
) -> TemperatureInterval {
    let rate = h.value * area.value / capacity.value;
    let n = exponent.value;
    si(start.value * (1.0 + n * rate * time.value).powf(-1.0 / n))
}
