//! Getting up to speed, step by step.

use differential_equations::prelude::*;
use uom::ConstZero;
use uom::si::acceleration::meter_per_second_squared;
use uom::si::f64::{Acceleration, Force, Length, Mass, Power, Time, Velocity};
use uom::si::length::meter;
use uom::si::time::second;
use uom::si::velocity::meter_per_second;

use super::drive::Drive;
use crate::physics::Impossible;

/// How long and how far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Run {
    /// Time.
    pub time: Time,
    /// Distance.
    pub distance: Length,
}

/// Time and distance over speed: `dt/dv = 1/a(v)` and `ds/dv = v/a(v)`.
struct SpeedUp<'a> {
    drive: &'a Drive,
    target: Velocity,
    drag: Force,
}

impl SpeedUp<'_> {
    fn acceleration(&self, speed: f64) -> f64 {
        let speed = Velocity::new::<meter_per_second>(speed);
        let share = speed / self.target;
        self.drive
            .acceleration(speed, self.drag * share * share)
            .map_or(f64::INFINITY, |(a, _)| a.get::<meter_per_second_squared>())
    }
}

impl ODE<f64, [f64; 2]> for SpeedUp<'_> {
    fn diff(&self, speed: f64, _: &[f64; 2], over_speed: &mut [f64; 2]) {
        let acceleration = self.acceleration(speed);
        *over_speed = [1.0 / acceleration, speed / acceleration];
    }
}

/// Time and distance from rest to a speed, by integrating over the speed (Dormand and Prince's
/// Runge-Kutta method of order 8, relative tolerance 10⁻⁹).
///
/// `drag` is the air drag at the target speed; below, it goes with the square of the speed. Speeds in
/// metres per second. Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2.
///
/// # Errors
/// [`Impossible::NeverThatFast`] when the acceleration runs out before the target, and
/// [`Impossible::NoLimitKnown`] when nothing limits it.
pub fn run_up(drive: &Drive, target: Velocity, drag: Force) -> Result<Run, Impossible> {
    if target == Velocity::ZERO {
        return Ok(Run { time: Time::ZERO, distance: Length::ZERO });
    }
    let speed_up = SpeedUp { drive, target, drag };
    let end = target.get::<meter_per_second>();
    // Acceleration never grows with speed, so its end tells whether the target is reached.
    let last = speed_up.acceleration(end);
    if last.is_infinite() {
        return Err(Impossible::NoLimitKnown);
    }
    if last <= 0.0 {
        return Err(Impossible::NeverThatFast);
    }
    let solved = IVP::ode(&speed_up, 0.0, end, [0.0, 0.0])
        .method(ExplicitRungeKutta::dop853().rtol(1e-9).atol(1e-12))
        .solve();
    let [time, distance] = match solved {
        Ok(solution) => solution.y.last().copied(),
        // The solver may stop a rounding error short of the end, with no step left to take.
        Err(Error::StepSize { t, y }) if t >= end * (1.0 - 1e-9) => Some(y),
        Err(_) => None,
    }
    .ok_or(Impossible::NeverThatFast)?;
    Ok(Run { time: Time::new::<second>(time), distance: Length::new::<meter>(distance) })
}

/// Mean acceleration from rest, `a = v / t`.
///
/// Source: OpenStax, University Physics Volume 1, section 3.3.
pub fn mean_acceleration(speed: Velocity, time: Time) -> Acceleration {
    speed / time
}

/// Mean power of a run from rest, `P = (½ m v² + R s) / t`.
///
/// Source: work-energy theorem, OpenStax, University Physics Volume 1, section 7.4 Power.
pub fn mean_power(
    mass: Mass,
    speed: Velocity,
    resistance: Force,
    distance: Length,
    time: Time,
) -> Power {
    (mass * speed * speed * 0.5 + resistance * distance) / time
}
