//! Brakes and clutches: the energy of a stop, and how hot it makes what takes it; insulation life.

use uom::si::f64::{
    Acceleration, AngularVelocity, Energy, Length, Mass, MomentOfInertia, Ratio,
    SpecificHeatCapacity, TemperatureInterval, ThermodynamicTemperature, Velocity,
};

use crate::physics::si;

/// Energy a stop, or a steady descent, must shed, `E = ½ m v² + m g h`.
///
/// Rotating parts, drag and rolling left out.
/// Source: OpenStax, College Physics 2e, sections 7.2 and 14.2.
pub fn energy(mass: Mass, speed: Velocity, gravity: Acceleration, descent: Length) -> Energy {
    mass * speed * speed / 2.0 + mass * gravity * descent
}

/// Energy of a turning part, `E = ½ J ω²`.
///
/// Source: OpenStax, University Physics Volume 1, section 10.4.
pub fn turning_energy(inertia: MomentOfInertia, speed: AngularVelocity) -> Energy {
    si(inertia.value * speed.value * speed.value / 2.0)
}

/// Temperature rise of a brake that keeps it all, `ΔT = x E / (m c)`.
///
/// `x` is this brake's share. One stop; the next starts from there.
/// Source: OpenStax, College Physics 2e, section 14.2, Example 14.2.
pub fn rise(
    energy: Energy,
    share: Ratio,
    mass: Mass,
    specific_heat: SpecificHeatCapacity,
) -> TemperatureInterval {
    si(energy.value * share.value / (mass.value * specific_heat.value))
}

/// Heat of a clutch that brings two rotors together, `E = ½ J₁J₂/(J₁ + J₂) (ω₁ − ω₂)²`.
///
/// No torque from outside meanwhile.
/// Source: J. E. Shigley, Mechanical Engineering Design, clutches and brakes (from memory).
pub fn clutch_heat(
    inertia_1: MomentOfInertia,
    inertia_2: MomentOfInertia,
    speed_1: AngularVelocity,
    speed_2: AngularVelocity,
) -> Energy {
    let together = inertia_1 * inertia_2 / (inertia_1 + inertia_2);
    turning_energy(together, speed_1 - speed_2)
}

/// Life of insulation against that at its class limit, `2^((T_lim − T)/10 K)`.
///
/// A rule of thumb, a few tens of kelvin about the limit.
/// Source: V. M. Montsinger 1930, as textbooks on electrical machines quote it.
pub fn insulation_life(
    limit: ThermodynamicTemperature,
    temperature: ThermodynamicTemperature,
) -> Ratio {
    si(2f64.powf((limit.value - temperature.value) / 10.0))
}
