//! Swinging the machine round.

use uom::ConstZero;
use uom::si::angle::radian;
use uom::si::angular_acceleration::radian_per_second_squared;
use uom::si::angular_velocity::radian_per_second;
use uom::si::f64::{
    Angle, AngularAcceleration, AngularVelocity, Force, Length, MomentOfInertia, Ratio, Time,
    Torque, Velocity,
};
use uom::si::moment_of_inertia::kilogram_square_meter;
use uom::si::time::second;
use uom::si::torque::newton_meter;

use crate::physics::Impossible;

/// A torque from a force and its arm.
fn moment(force: Force, arm: Length) -> Torque {
    let newton_metres = force.get::<uom::si::force::newton>() * arm.get::<uom::si::length::meter>();
    Torque::new::<newton_meter>(newton_metres)
}

/// Moment with which the ground holds tracks that are turned on it, `M = μ N L / 4`.
///
/// `N` is the load in newtons, `L` the contact length in metres, `μ` the sideways coefficient of
/// that ground; even pressure along the tracks, slow turning. On soft ground the tracks also push
/// earth aside, which is left out. Source: J. Y. Wong, Theory of Ground Vehicles, chapter 6
/// (from memory).
pub fn skid_moment(sideways: Ratio, ground_force: Force, contact_length: Length) -> Torque {
    moment(sideways * ground_force, contact_length) / 4.0
}

/// Moment of one side driving forward and the other back with all the thrust, `M = F B / 2`.
///
/// Each side gives half the thrust `F` on an arm of half the gauge `B`.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 6 (from memory).
pub fn swing_moment(thrust: Force, gauge: Length) -> Torque {
    moment(thrust, gauge) / 2.0
}

/// Thrust of both sides together that just turns the machine on the spot, `F = 2 M / B`.
///
/// Source: [`swing_moment`] solved for the thrust.
pub fn skid_thrust(holding: Torque, gauge: Length) -> Force {
    let newtons = 2.0 * holding.get::<newton_meter>() / gauge.get::<uom::si::length::meter>();
    Force::new::<uom::si::force::newton>(newtons)
}

/// What is left of the turning moment against the ground.
///
/// # Errors
/// [`Impossible::HeldByGround`] when nothing is.
///
/// Source: as [`skid_moment`].
pub fn swinging_moment(turning: Torque, holding: Torque) -> Result<Torque, Impossible> {
    let left = turning - holding;
    if left > Torque::ZERO { Ok(left) } else { Err(Impossible::HeldByGround) }
}

/// Angular acceleration `α = M / I`.
///
/// Torque in newton metres, inertia in kilogram square metres, above zero.
/// Source: OpenStax, University Physics Volume 1, section 10.7.
pub fn angular_acceleration(torque: Torque, inertia: MomentOfInertia) -> AngularAcceleration {
    AngularAcceleration::new::<radian_per_second_squared>(
        torque.get::<newton_meter>() / inertia.get::<kilogram_square_meter>(),
    )
}

/// Time to swing through an angle from rest under a steady torque, `t = √(2 θ / α)`; with a fastest
/// rate `ω_m` that is reached before, `t = θ/ω_m + ω_m/(2 α)`.
///
/// It is still turning at the end. Source: OpenStax, University Physics Volume 1, section 10.2.
pub fn swing_time(
    angle: Angle,
    acceleration: AngularAcceleration,
    fastest: Option<AngularVelocity>,
) -> Time {
    let (angle, alpha) = in_radians(angle, acceleration);
    let free = (2.0 * angle / alpha).sqrt();
    let seconds = match fastest.map(|rate| rate.get::<radian_per_second>()) {
        Some(rate) if rate < alpha * free => angle / rate + rate / (2.0 * alpha),
        _ => free,
    };
    Time::new::<second>(seconds)
}

/// Time to swing through an angle from rest to rest, the torque one way for half of it and the other
/// way for the rest, `t = 2 √(θ / α)`: the shortest there is for that torque; with a fastest rate
/// `ω_m` that is reached before, `t = θ/ω_m + ω_m/α`.
///
/// Source: as [`swing_time`], for each half.
pub fn swing_and_stop_time(
    angle: Angle,
    acceleration: AngularAcceleration,
    fastest: Option<AngularVelocity>,
) -> Time {
    swing_time(angle / 2.0, acceleration, fastest) * 2.0
}

fn in_radians(angle: Angle, acceleration: AngularAcceleration) -> (f64, f64) {
    (angle.get::<radian>(), acceleration.get::<radian_per_second_squared>())
}

/// Moment that swings a body through an angle from rest to rest in a time, half the way each,
/// `M = 4 I θ / t²`.
///
/// Source: [`swing_and_stop_time`] solved for the moment.
pub fn moment_for_swing(inertia: MomentOfInertia, angle: Angle, time: Time) -> Torque {
    let seconds = time.get::<second>();
    Torque::new::<newton_meter>(
        4.0 * inertia.get::<kilogram_square_meter>() * angle.get::<radian>() / (seconds * seconds),
    )
}

/// Rate after swinging through an angle from rest, `ω = √(2 α θ)`, no more than the fastest.
///
/// Source: OpenStax, University Physics Volume 1, section 10.8.
pub fn rate_after(
    angle: Angle,
    acceleration: AngularAcceleration,
    fastest: Option<AngularVelocity>,
) -> AngularVelocity {
    let (angle, alpha) = in_radians(angle, acceleration);
    let free = AngularVelocity::new::<radian_per_second>((2.0 * alpha * angle).sqrt());
    fastest.map_or(free, |fastest| if fastest < free { fastest } else { free })
}

/// Fastest turning on the spot that tracks of a top speed can follow, `ω = 2 v / B`; slip left out.
///
/// Source: OpenStax, University Physics Volume 1, section 10.3.
pub fn fastest_turn(top_speed: Velocity, gauge: Length) -> AngularVelocity {
    let metres = gauge.get::<uom::si::length::meter>();
    let speed = top_speed.get::<uom::si::velocity::meter_per_second>();
    AngularVelocity::new::<radian_per_second>(2.0 * speed / metres)
}

/// Longest contact over gauge that still steers while driving on, `L/B = 2 (μ − c)/μ_t`.
///
/// The outer track drives all it can, the inner one rolls along braked to nothing: its half of the
/// load grips by `μ`, both halves roll with `c`, and the moment `μ_t W L/4` holds.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 6, steerability of tracked vehicles
/// (from memory).
///
/// # Errors
/// [`Impossible::Stuck`] when rolling takes all of the grip: it does not even go straight on.
pub fn steer_limit(grip: Ratio, rolling: Ratio, sideways: Ratio) -> Result<Ratio, Impossible> {
    if grip > rolling { Ok((grip - rolling) * 2.0 / sideways) } else { Err(Impossible::Stuck) }
}

/// Torque to bring a body from rest to a rate in a time, `M = I ω / t`.
///
/// Source: OpenStax, University Physics Volume 1, section 10.7.
pub fn torque_for(inertia: MomentOfInertia, rate: AngularVelocity, time: Time) -> Torque {
    Torque::new::<newton_meter>(
        inertia.get::<kilogram_square_meter>() * rate.get::<radian_per_second>()
            / time.get::<second>(),
    )
}
