//! Shock tests of a datasheet, and what a pulse does to a mounted part.

use super::{NO_AIR, PULSE, PULSES, SHAPE_ASSUMED};
use crate::physics::impact;
use crate::quantity::catalogue::impact::*;
use crate::quantity::catalogue::machine::GRAVITY;
use crate::quantity::{Acceleration, Measure, Ratio, Speed, Time};
use crate::rules::{Caution, Rule};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(TEST_PULSE_SPEED, (TEST_PULSE_PEAK, TEST_PULSE_TIME, PULSE_FACTOR), test_speed)
            .title("The area under the pulse")
            .formula(r"\q{test-pulse-speed} = \dfrac{\q{test-pulse-peak} \cdot 9.80665 \, \text{m/s}^2 \cdot \q{test-pulse-time}}{\q{pulse-factor}}")
            .assumes(PULSE)
            .holds("Single pulses of a shape whose peak over mean is known.")
            .source(PULSES)
            .cautions(SHAPE_ASSUMED),
        Rule::new(TEST_PULSE_DROP, (TEST_PULSE_SPEED, GRAVITY), impact::drop_height)
            .title("The free fall that reaches that speed")
            .formula(r"\q{test-pulse-drop} = \dfrac{\q{test-pulse-speed}^2}{2 \, \q{gravity}}")
            .assumes(NO_AIR)
            .holds("A dead stop; with a bounce the same pulse is reached from a lower drop.")
            .source("JEDEC JESD22-B104, table of test levels (from memory)")
            .cautions(&[Caution {
                when: |_| true,
                says: "A pass at this drop says nothing of a shorter, taller pulse from the same height onto harder ground.",
            }]),
        Rule::new(MOUNT_LOAD, (MOUNTED_MASS, PEAK_DECELERATION_G), impact::mount_load)
            .title("The part pulls with its mass times the peak")
            .formula(r"\q{mount-load} = \q{mounted-mass} \cdot \q{peak-deceleration-g} \cdot 9.80665 \, \text{m/s}^2")
            .assumes(&["The mount is stiff, so the part sees what the machine sees."])
            .holds("Parts held firmly; the weight of the part itself is left out.")
            .source("Newton's second law, OpenStax, University Physics Volume 1, section 5.3")
            .cautions(SHAPE_ASSUMED),
        Rule::new(LOOSE_MOUNT_LOAD, (MOUNT_LOAD,), impact::loose_mount_load)
            .title("A part that shakes may see twice as much")
            .formula(r"\q{loose-mount-load} = 2 \, \q{mount-load}")
            .assumes(&["One pulse in one direction; play that lets the part hit a stop is worse."])
            .holds("An upper bound for springy mounts without play.")
            .source("A. K. Chopra, Dynamics of Structures, chapter 4 (from memory)"),
    ]
}

fn test_speed(peak: Ratio, duration: Time, pulse_factor: Ratio) -> Speed {
    impact::pulse_speed(peak * Acceleration::from_si(9.80665), duration, pulse_factor)
}
