//! Shock pulses.

use std::f64::consts::{FRAC_PI_2, PI};

use uom::si::f64::{Acceleration, Force, Length, Mass, Ratio, SurfaceTension, Time, Velocity};
use uom::si::ratio::ratio;

use crate::physics::si;

/// How the force of a stop rises and falls with time.
///
/// Source: IEC 60068-2-27 (half-sine, saw-tooth, trapezoid), from memory; triangle and square by
/// the area of the figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PulseShape {
    /// Half a sine wave: a straight spring, most rubber and foam.
    HalfSine,
    /// Rises and falls evenly.
    Triangle,
    /// Rises evenly and drops at once.
    Sawtooth,
    /// Rises and falls over a tenth of the time each, level between.
    Trapezoid,
    /// Level from touch to rest: a perfect crumple zone.
    Square,
}

impl PulseShape {
    /// The peak over the mean: how much of its box the pulse leaves empty.
    pub fn peak_over_mean(self) -> Ratio {
        Ratio::new::<ratio>(match self {
            Self::HalfSine => FRAC_PI_2,
            Self::Triangle | Self::Sawtooth => 2.0,
            Self::Trapezoid => 1.0 / 0.9,
            Self::Square => 1.0,
        })
    }
}

/// One moment of a stop by a pulse, as multiples of what the whole stop has on average.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// The deceleration over its mean.
    pub deceleration: f64,
    /// The part of the speed that is gone, 0 to 1.
    pub speed_lost: f64,
    /// The travel over speed at touch times stop time.
    pub travel: f64,
}

impl PulseShape {
    /// Every shape.
    pub const ALL: [Self; 5] =
        [Self::HalfSine, Self::Triangle, Self::Sawtooth, Self::Trapezoid, Self::Square];

    /// The moment at a part of the stop time, 0 to 1, outside of which it stays as at the end.
    ///
    /// The pulse `f(τ)` of mean 1, its integral `F(τ)`, and `τ − ∫F`, in closed form.
    /// Source: kinematics, OpenStax, University Physics Volume 1, section 3.6.
    pub fn moment(self, part: f64) -> Moment {
        let t = part.clamp(0.0, 1.0);
        let (deceleration, speed_lost, integral) = match self {
            Self::HalfSine => {
                let angle = PI * t;
                let integral = t / 2.0 - angle.sin() / (2.0 * PI);
                (FRAC_PI_2 * angle.sin(), (1.0 - angle.cos()) / 2.0, integral)
            }
            Self::Sawtooth => (2.0 * t, t * t, t.powi(3) / 3.0),
            Self::Square => (1.0, t, t * t / 2.0),
            // Both are the same from either end.
            Self::Triangle | Self::Trapezoid if t > 0.5 => {
                let other = self.moment(1.0 - t);
                let integral = t - 0.5 + (1.0 - t) - other.travel;
                (other.deceleration, 1.0 - other.speed_lost, integral)
            }
            Self::Triangle => (4.0 * t, 2.0 * t * t, 2.0 * t.powi(3) / 3.0),
            Self::Trapezoid => {
                let peak = 1.0 / 0.9;
                if t < 0.1 {
                    (peak * t / 0.1, peak * t * t / 0.2, peak * t.powi(3) / 0.6)
                } else {
                    let integral = t * t / 2.0 - 0.05 * t + 1.0 / 600.0;
                    (peak, peak * (t - 0.05), peak * integral)
                }
            }
        };
        Moment { deceleration, speed_lost, travel: t - integral }
    }
}

/// A stop by one straight spring, slack at first touch, that takes all the motion.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpringStop {
    /// The mass.
    pub mass: Mass,
    /// The speed at touch.
    pub speed: Velocity,
    /// The part of the weight that the spring holds up as well.
    pub weight_share: Force,
    /// The stiffness of the spring.
    pub rate: SurfaceTension,
}

impl SpringStop {
    /// Angular frequency `ω = √(k/m)` in radians per second.
    fn frequency(&self) -> f64 {
        (self.rate.value / self.mass.value).sqrt()
    }

    /// From first touch to rest, `ω t = atan2(v m ω, −F_W)`: a quarter of a swing along the level.
    pub fn duration(&self) -> Time {
        let frequency = self.frequency();
        let push = self.speed.value * self.mass.value * frequency;
        si(push.atan2(-self.weight_share.value) / frequency)
    }

    /// Travel `x = v/ω sin ωt + F_W/k (1 − cos ωt)` and the speed left, at a time.
    ///
    /// Source: simple harmonic motion, OpenStax, University Physics Volume 1, section 15.1.
    pub fn after(&self, time: Time) -> (Length, Velocity) {
        let frequency = self.frequency();
        let (sin, cos) = (frequency * time.value).sin_cos();
        let sunk = self.weight_share.value / self.rate.value;
        let travel = self.speed.value / frequency * sin + sunk * (1.0 - cos);
        (si(travel), si(self.speed.value * cos + sunk * frequency * sin))
    }
}

/// Speed that a pulse takes away or gives, `Δv = a_peak t / k_p`.
///
/// Duration in seconds over the whole pulse, `k_p ≥ 1` its peak over its mean in time: how much of
/// its box it leaves empty. A half-sine has `π/2`, a triangle and a saw-tooth 2, a trapezoid that
/// rises and falls over a tenth of the time each `1/0.9`, a square pulse 1.
/// Source: area under the pulse; shapes of IEC 60068-2-27 (from memory).
pub fn pulse_speed(peak: Acceleration, duration: Time, pulse_factor: Ratio) -> Velocity {
    peak * duration / pulse_factor
}
