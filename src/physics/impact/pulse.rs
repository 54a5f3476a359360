//! Shapes of a shock pulse.

use std::f64::consts::FRAC_PI_2;

use uom::si::f64::{Acceleration, Force, Length, Ratio, Time, Velocity};
use uom::si::ratio::ratio;

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

/// Peak force of a pulse from its mean over the same time.
pub fn peak_from_mean(shape: PulseShape, mean: Force) -> Force {
    shape.peak_over_mean() * mean
}

/// Speed that a pulse takes away or gives, `Δv = a_peak t / k_p`.
///
/// Duration in seconds over the whole pulse, `k_p ≥ 1` its peak over its mean.
/// Source: area under the pulse, IEC 60068-2-27 (from memory).
pub fn pulse_speed(peak: Acceleration, duration: Time, pulse_factor: Ratio) -> Velocity {
    peak * duration / pulse_factor
}

/// [`pulse_speed`] of a standard shape.
pub fn velocity_change(shape: PulseShape, peak: Acceleration, duration: Time) -> Velocity {
    pulse_speed(peak, duration, shape.peak_over_mean())
}

/// Height of the free fall without bounce that a pulse stops, `h = Δv² / (2 g)`.
///
/// With a bounce `ε` the same pulse is reached from `1 / (1 + ε)²` of this height.
/// Source: JEDEC JESD22-B104, table of test levels (from memory).
pub fn equivalent_drop(
    shape: PulseShape,
    peak: Acceleration,
    duration: Time,
    gravity: Acceleration,
) -> Length {
    super::drop_height(velocity_change(shape, peak, duration), gravity)
}
