//! Standard shock pulses.

use heftwise::quantity::catalogue::impact::*;

use super::unit::*;
use super::{Case, Expect::Found, check, recalled};

/// Peak over mean by the area of the figure.
const HALF_SINE: f64 = std::f64::consts::FRAC_PI_2;
const SAW_TOOTH: f64 = 2.0;
const TRAPEZOID: f64 = 1.0 / 0.9;

const IEC: &str = "IEC 60068-2-27 (Test Ea, Shock), Table 1, velocity change, from memory";
const MIL: &str = "MIL-STD-202 Method 213, Table 213-I, test conditions, from memory";
const ONE_DECIMAL: &str = "The table prints one decimal.";

/// A row of a pulse table: peak, duration and shape to a velocity change.
macro_rules! pulse {
    ($id:literal, $shape:ident, $peak:literal, $duration:literal, $expect:expr, $tolerance:literal, $source:expr) => {
        recalled(
            $id,
            $tolerance,
            &[
                (TEST_PULSE_PEAK.any(), $peak),
                (TEST_PULSE_TIME.any(), $duration * MS),
                (PULSE_FACTOR.any(), $shape),
            ],
            &[Found(TEST_PULSE_SPEED.any(), $expect)],
            $source,
            ONE_DECIMAL,
        )
    };
}

pub(crate) const CASES: &[Case] = &[
    pulse!("pulse-iec-half-sine-15gn-11ms", HALF_SINE, 15.0, 11.0, 1.0, 0.05, IEC),
    pulse!("pulse-iec-half-sine-30gn-18ms", HALF_SINE, 30.0, 18.0, 3.4, 0.02, IEC),
    pulse!("pulse-iec-saw-tooth-30gn-18ms", SAW_TOOTH, 30.0, 18.0, 2.6, 0.025, IEC),
    pulse!("pulse-iec-trapezoid-30gn-18ms", TRAPEZOID, 30.0, 18.0, 4.8, 0.02, IEC),
    pulse!("pulse-iec-half-sine-100gn-6ms", HALF_SINE, 100.0, 6.0, 3.7, 0.02, IEC),
    pulse!("pulse-mil-half-sine-100g-6ms", HALF_SINE, 100.0, 6.0, 12.3 * FOOT, 0.01, MIL),
    pulse!("pulse-mil-saw-tooth-100g-6ms", SAW_TOOTH, 100.0, 6.0, 9.7 * FOOT, 0.01, MIL),
    pulse!("pulse-mil-half-sine-50g-11ms", HALF_SINE, 50.0, 11.0, 11.3 * FOOT, 0.01, MIL),
    pulse!("pulse-iec-half-sine-50gn-11ms", HALF_SINE, 50.0, 11.0, 3.4, 0.02, IEC),
    pulse!("pulse-iec-trapezoid-100gn-6ms", TRAPEZOID, 100.0, 6.0, 5.3, 0.02, IEC),
    pulse!("pulse-mil-saw-tooth-30g-11ms", SAW_TOOTH, 30.0, 11.0, 5.3 * FOOT, 0.01, MIL),
    recalled(
        "equivalent-drop-jedec-b",
        0.005,
        &[(TEST_PULSE_PEAK.any(), 1500.0), (TEST_PULSE_TIME.any(), 0.5 * MS)],
        &[Found(TEST_PULSE_SPEED.any(), 4.67), Found(TEST_PULSE_DROP.any(), 1.12)],
        "JEDEC JESD22-B104C, table of component test levels, service condition B, from memory",
        "Without bounce. The rule takes a half-sine when nothing is said.",
    ),
    recalled(
        "peak-jedec-b-from-speed",
        0.005,
        &[(IMPACT_SPEED.any(), 4.67), (STOP_TIME.any(), 0.5 * MS)],
        &[Found(PEAK_DECELERATION_G.any(), 1500.0)],
        "JEDEC JESD22-B104C, table of component test levels, service condition B, from memory",
        "The same row from its velocity change and length to its peak.",
    ),
    recalled(
        "peak-half-sine",
        0.002,
        &[(STOPPING_FORCE.any(), 661.2), (WEIGHT_SHARE.any(), 0.0)],
        &[Found(PEAK_IMPACT_FORCE.any(), 1039.0)],
        "Area of a half-sine pulse, 2/π of its box, from memory; mean force of University Physics Volume 1, Example 9.5",
        "Worked out. The rule takes a half-sine when nothing is said.",
    ),
    recalled(
        "peak-triangle",
        0.002,
        &[(STOPPING_FORCE.any(), 661.2), (WEIGHT_SHARE.any(), 0.0), (PULSE_FACTOR.any(), 2.0)],
        &[Found(PEAK_IMPACT_FORCE.any(), 1322.0)],
        "Area of a triangular or saw-tooth pulse, half of its box, from memory",
        "Worked out.",
    ),
];

#[test]
fn pulses() {
    check(CASES);
}
