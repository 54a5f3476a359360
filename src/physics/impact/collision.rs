//! Two bodies that meet along one line.

use uom::ConstZero;
use uom::si::f64::{Energy, Mass, Momentum, Ratio, Velocity};
use uom::si::ratio::ratio;

/// Speed at which two bodies close in on each other, `u = v₁ − v₂`.
///
/// Both speeds along the way of the first; the other's is negative when it comes towards it.
pub fn closing_speed(speed: Velocity, other: Velocity) -> Velocity {
    speed - other
}

/// Speed of two bodies that go on together, `v = (m₁ v₁ + m₂ v₂) / (m₁ + m₂)`.
///
/// It is also the speed of their common centre of gravity, before and after.
/// Source: OpenStax, College Physics 2e, section 8.5 Inelastic Collisions in One Dimension.
pub fn common_speed(mass: Mass, speed: Velocity, other_mass: Mass, other: Velocity) -> Velocity {
    (mass * speed + other_mass * other) / (mass + other_mass)
}

/// Impulse that each gives the other, `J = (1 + ε) u m₁ m₂ / (m₁ + m₂)`.
///
/// Zero when they do not close in. Restitution 0 (they go on together) to 1 (nothing is lost).
/// Source: OpenStax, College Physics 2e, sections 8.4 and 8.5.
pub fn exchanged_impulse(
    mass: Mass,
    other_mass: Mass,
    closing: Velocity,
    restitution: Ratio,
) -> Momentum {
    if closing <= Velocity::ZERO {
        return Momentum::ZERO;
    }
    let shared: Mass = mass * other_mass / (mass + other_mass);
    shared * closing * (Ratio::new::<ratio>(1.0) + restitution)
}

/// Speed of the one that an impulse holds back, `v' = v − J / m`.
///
/// Source: OpenStax, University Physics Volume 1, section 9.3.
pub fn speed_held_back(mass: Mass, speed: Velocity, impulse: Momentum) -> Velocity {
    speed - impulse / mass
}

/// Speed of the one that an impulse pushes on, `v' = v + J / m`.
///
/// Source: OpenStax, University Physics Volume 1, section 9.3.
pub fn speed_pushed_on(mass: Mass, speed: Velocity, impulse: Momentum) -> Velocity {
    speed + impulse / mass
}

/// Energy that bending, heat and noise take, `E = ½ J (u − u')`.
///
/// `J` is the impulse on each, `u` the [`closing_speed`] before and `u' = v₂' − v₁'` the speed at
/// which they part. It is the kinetic energy of both before less that after: not below zero for a
/// bounce of 1 or less, and below zero when something springy or explosive lets go between them.
/// Source: OpenStax, College Physics 2e, section 8.5 Inelastic Collisions in One Dimension.
pub fn energy_lost(
    impulse: Momentum,
    closing: Velocity,
    after: Velocity,
    other_after: Velocity,
) -> Energy {
    impulse * (closing - (other_after - after)) / 2.0
}
