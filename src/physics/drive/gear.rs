//! Gears, and what turns into travel.

use std::f64::consts::PI;

use uom::si::f64::{AngularVelocity, Force, Length, Power, Ratio, Torque, Velocity};

use crate::physics::{Impossible, si};

/// Three stages in a row, ratios or efficiencies, `G = g₁ g₂ g₃`.
///
/// A stage that is not there counts 1.
/// Source: the definition of a gear train; any textbook of machine elements.
pub fn three_stages(first: Ratio, second: Ratio, third: Ratio) -> Ratio {
    first * second * third
}

/// Distance per turn of a wheel or sprocket, `s = π d`.
///
/// The effective diameter: what rolls off, belt thickness and squash included.
pub fn distance_per_turn(diameter: Length) -> Length {
    diameter * PI
}

/// Effective diameter from the distance of one turn, `d = s / π`.
pub fn effective_diameter(distance: Length) -> Length {
    distance / PI
}

/// Speed over the ground without slip, `v = (ω / 2π) s / G`.
pub fn ground_speed(motor: AngularVelocity, ratio: Ratio, distance: Length) -> Velocity {
    si(motor.value / (2.0 * PI) * distance.value / ratio.value)
}

/// Torque each motor must give for a push, `T = F s / (2π G η n)`.
///
/// Where the slope pushes (`F < 0`) the motors brake, and the gears' loss helps them:
/// `T = F s η / (2π G n)`.
/// Source: power balance over the gears; any textbook of machine elements.
pub fn motor_torque(
    push: Force,
    distance: Length,
    ratio: Ratio,
    efficiency: Ratio,
    motors: Ratio,
) -> Torque {
    let loss = if push.value < 0.0 { efficiency.value } else { 1.0 / efficiency.value };
    si(push.value * distance.value * loss / (2.0 * PI * ratio.value * motors.value))
}

/// The most push over the push needed.
///
/// # Errors
/// [`Impossible::NothingAsked`] where nothing holds the machine back, or the slope pushes it on.
pub fn push_margin(most: Force, needed: Force) -> Result<Ratio, Impossible> {
    if needed.value <= 0.0 { Err(Impossible::NothingAsked) } else { Ok(most / needed) }
}

/// Push of a motor torque at the ground, `F = T 2π G η n / s`; grip is another matter.
pub fn push(
    torque: Torque,
    distance: Length,
    ratio: Ratio,
    efficiency: Ratio,
    motors: Ratio,
) -> Force {
    let turns = ratio.value * efficiency.value * motors.value;
    si(torque.value * 2.0 * PI * turns / distance.value)
}

/// Power at the ground, `P = F v`.
///
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power.
pub fn push_power(push: Force, speed: Velocity) -> Power {
    push * speed
}
