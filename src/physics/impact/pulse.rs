//! Shock pulses.

use uom::si::f64::{Acceleration, Ratio, Time, Velocity};

/// Speed that a pulse takes away or gives, `Δv = a_peak t / k_p`.
///
/// Duration in seconds over the whole pulse, `k_p ≥ 1` its peak over its mean in time: how much of
/// its box it leaves empty. A half-sine has `π/2`, a triangle and a saw-tooth 2, a trapezoid that
/// rises and falls over a tenth of the time each `1/0.9`, a square pulse 1.
/// Source: area under the pulse; shapes of IEC 60068-2-27 (from memory).
pub fn pulse_speed(peak: Acceleration, duration: Time, pulse_factor: Ratio) -> Velocity {
    peak * duration / pulse_factor
}
