//! Spinning parts: rim speed, energy, and the gyroscope.

use uom::si::angular_velocity::radian_per_second;
use uom::si::f64::{
    Acceleration, AngularVelocity, Energy, Length, MassDensity, MomentOfInertia, Pressure, Torque,
    Velocity,
};
use uom::si::length::meter;
use uom::si::moment_of_inertia::kilogram_square_meter;
use uom::si::velocity::meter_per_second;

fn per_second(rate: AngularVelocity) -> f64 {
    rate.get::<radian_per_second>()
}

fn rate(per_second: f64) -> AngularVelocity {
    AngularVelocity::new::<radian_per_second>(per_second)
}

/// Speed of a rim, `v = ω r`.
///
/// Rate in radians per second, radius in metres.
/// Source: OpenStax, College Physics 2e, section 6.1 Rotation Angle and Angular Velocity.
pub fn rim_speed(spin: AngularVelocity, radius: Length) -> Velocity {
    Velocity::new::<meter_per_second>(per_second(spin) * radius.get::<meter>())
}

/// Acceleration of a rim towards its axle, `a = ω² r`.
///
/// Source: OpenStax, College Physics 2e, section 6.2 Centripetal Acceleration.
pub fn rim_acceleration(spin: AngularVelocity, radius: Length) -> Acceleration {
    let speed = rim_speed(spin, radius);
    speed * speed / radius
}

/// Energy stored in a spinning body, `E = ½ I ω²`.
///
/// Inertia in kilogram square metres. Source: OpenStax, University Physics Volume 1, section 10.4.
pub fn spin_energy(inertia: MomentOfInertia, spin: AngularVelocity) -> Energy {
    let spin = per_second(spin);
    Energy::new::<uom::si::energy::joule>(
        0.5 * inertia.get::<kilogram_square_meter>() * spin * spin,
    )
}

/// Angular momentum `L = I ω`, in newton metre seconds.
///
/// Source: OpenStax, University Physics Volume 1, section 11.2 Angular Momentum.
fn momentum(inertia: MomentOfInertia, spin: AngularVelocity) -> f64 {
    inertia.get::<kilogram_square_meter>() * per_second(spin)
}

/// Torque that a spinning part puts on its bearings while its axle is turned, `M = I ω Ω`.
///
/// `Ω` is the rate at which the axle is turned, square to it, much slower than the spin.
/// Source: OpenStax, University Physics Volume 1, section 11.4 Precession of a Gyroscope.
pub fn tilting_torque(
    inertia: MomentOfInertia,
    spin: AngularVelocity,
    turning: AngularVelocity,
) -> Torque {
    Torque::new::<uom::si::torque::newton_meter>(momentum(inertia, spin) * per_second(turning))
}

/// Rate after two bodies on one axle couple, `ω = (I₁ ω₁ + I₂ ω₂)/(I₁ + I₂)`.
///
/// Nothing outside turns them. Source: OpenStax, University Physics Volume 1, section 11.3.
pub fn shared_rate(
    inertia: MomentOfInertia,
    spin: AngularVelocity,
    other_inertia: MomentOfInertia,
    other_spin: AngularVelocity,
) -> AngularVelocity {
    let together = (inertia + other_inertia).get::<kilogram_square_meter>();
    rate((momentum(inertia, spin) + momentum(other_inertia, other_spin)) / together)
}

/// Rate that stores an energy, `ω = √(2 E / I)`.
///
/// Source: as [`spin_energy`].
pub fn turns_rate(energy: Energy, inertia: MomentOfInertia) -> AngularVelocity {
    let squared: f64 =
        2.0 * energy.get::<uom::si::energy::joule>() / inertia.get::<kilogram_square_meter>();
    rate(squared.sqrt())
}

/// Stress of a thin rim that spins, `σ = ρ v²`.
///
/// Density in kilograms per cubic metre, rim speed in metres per second; spokes or a web add to it.
/// Source: Machinery's Handbook, flywheels (from memory).
pub fn rim_stress(density: MassDensity, speed: Velocity) -> Pressure {
    density * speed * speed
}
