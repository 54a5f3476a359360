//! Getting up to speed, step by step.

use uom::ConstZero;
use uom::si::acceleration::meter_per_second_squared;
use uom::si::f64::{Acceleration, Force, Length, Mass, Power, Time, Velocity};
use uom::si::length::meter;
use uom::si::time::second;
use uom::si::velocity::meter_per_second;

use super::drive::{Drive, Limit};
use crate::physics::{Impossible, accumulate};

/// How long and how far.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Run {
    /// Time.
    pub time: Time,
    /// Distance.
    pub distance: Length,
}

/// A drive against an air drag that goes with the square of the speed.
#[derive(Debug, Clone, Copy)]
pub struct SpeedUp<'a> {
    /// What pushes, and what holds back at any speed.
    pub drive: &'a Drive,
    /// A speed above zero at which the drag is known.
    pub reference: Velocity,
    /// The drag at that speed.
    pub drag: Force,
}

impl SpeedUp<'_> {
    /// Acceleration at a speed and what sets it; none when nothing limits it, as at rest with power
    /// alone.
    pub fn at(&self, speed: Velocity) -> Option<(Acceleration, Limit)> {
        self.by_speed()(speed)
    }

    /// The same as a law of the speed.
    fn by_speed(&self) -> impl Fn(Velocity) -> Option<(Acceleration, Limit)> + '_ {
        let drag_by_square = self.drag / (self.reference * self.reference);
        move |speed| self.drive.acceleration(speed, drag_by_square * (speed * speed))
    }

    /// The acceleration alone, in metres per second squared, as a law of the speed in metres per
    /// second.
    fn acceleration(&self) -> impl Fn(f64) -> f64 + '_ {
        let by_speed = self.by_speed();
        move |speed| {
            by_speed(Velocity::new::<meter_per_second>(speed))
                .map_or(f64::INFINITY, |(a, _)| a.get::<meter_per_second_squared>())
        }
    }

    /// Time and distance from rest to each of several speeds, the first of them zero: `dt/dv =
    /// 1/a(v)` and `ds/dv = v/a(v)` added up over the speed.
    ///
    /// Speeds increasing, in metres per second.
    /// Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2.
    ///
    /// # Errors
    /// [`Impossible::NeverThatFast`] when the acceleration runs out before the last of them, and
    /// [`Impossible::NoLimitKnown`] when nothing limits it.
    pub fn through(&self, speeds: &[Velocity]) -> Result<Vec<Run>, Impossible> {
        let speeds: Vec<f64> = speeds.iter().map(|v| v.get::<meter_per_second>()).collect();
        // Acceleration never grows with speed, so its end tells whether the target is reached.
        let acceleration = self.acceleration();
        let last = speeds.last().map_or(f64::INFINITY, |end| acceleration(*end));
        if last.is_infinite() {
            return Err(Impossible::NoLimitKnown);
        }
        if last <= 0.0 {
            return Err(Impossible::NeverThatFast);
        }
        let over_speed = |speed: f64| {
            let a = acceleration(speed);
            [1.0 / a, speed / a]
        };
        let sums = accumulate(over_speed, &speeds).ok_or(Impossible::NeverThatFast)?;
        Ok(sums
            .into_iter()
            .map(|[time, distance]| Run {
                time: Time::new::<second>(time),
                distance: Length::new::<meter>(distance),
            })
            .collect())
    }

    /// The speed below `limit` at which nothing is left to accelerate with, by halving; none when
    /// it still accelerates there.
    pub fn tops_out(&self, limit: Velocity) -> Option<Velocity> {
        let acceleration = self.acceleration();
        let (mut low, mut high) = (0.0, limit.get::<meter_per_second>());
        if acceleration(high) > 0.0 {
            return None;
        }
        for _ in 0..100 {
            let middle = low + (high - low) / 2.0;
            if acceleration(middle) > 0.0 { low = middle } else { high = middle }
        }
        Some(Velocity::new::<meter_per_second>(low))
    }
}

/// Time and distance from rest to a speed, as [`SpeedUp::through`] has them.
///
/// `drag` is the air drag at the target speed; below, it goes with the square of the speed. Speeds in
/// metres per second.
///
/// # Errors
/// As [`SpeedUp::through`].
pub fn run_up(drive: &Drive, target: Velocity, drag: Force) -> Result<Run, Impossible> {
    if target == Velocity::ZERO {
        return Ok(Run { time: Time::ZERO, distance: Length::ZERO });
    }
    let speed_up = SpeedUp { drive, reference: target, drag };
    let runs = speed_up.through(&[Velocity::ZERO, target])?;
    runs.last().copied().ok_or(Impossible::NeverThatFast)
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
