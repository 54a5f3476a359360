//! Two bodies that meet along one line, and shock pulses of a datasheet.

use super::{NO_AIR, PULSE, PULSES, SHAPE_ASSUMED};
use crate::physics::impact;
use crate::quantity::catalogue::impact::*;
use crate::quantity::catalogue::machine::{GRAVITY, MASS};
use crate::quantity::{Acceleration, Measure, Ratio, Speed, Time};
use crate::rules::{Caution, Rule};

const UP_9: &str = "OpenStax, University Physics Volume 1, sections 9.3 and 9.4";
const CP_8: &str = "OpenStax, College Physics 2e, sections 8.4 and 8.5";
const ONE_LINE: &[&str] = &[
    "Both move along one line and meet middle to middle, so neither starts to spin.",
    "Ground and motor push little while the collision lasts.",
];
const STRAIGHT: &str = "Straight collisions of two free bodies.";

const PARTING: &[Caution] = &[Caution {
    when: |values| values.si(OTHER_SPEED) >= values.si(IMPACT_SPEED),
    says: "The two do not close in on each other, so there is no collision.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = collision();
    rules.extend(pulses());
    rules
}

fn collision() -> Vec<Rule> {
    let straight = |rule: Rule| rule.assumes(ONE_LINE).holds(STRAIGHT);
    vec![
        straight(Rule::new(CLOSING_SPEED, (IMPACT_SPEED, OTHER_SPEED), impact::closing_speed))
            .title("How fast they close in")
            .formula(r"\q{closing-speed} = \q{impact-speed} - \q{other-speed}")
            .source(UP_9)
            .cautions(PARTING),
        straight(Rule::new(COMMON_SPEED, (MASS, IMPACT_SPEED, OTHER_MASS, OTHER_SPEED), impact::common_speed))
            .title("Momentum is shared by both masses")
            .formula(r"\q{common-speed} = \dfrac{\q{mass} \cdot \q{impact-speed} + \q{other-mass} \cdot \q{other-speed}}{\q{mass} + \q{other-mass}}")
            .source(CP_8),
        straight(Rule::new(EXCHANGED_IMPULSE, (MASS, OTHER_MASS, CLOSING_SPEED, RESTITUTION), impact::exchanged_impulse))
            .title("Each gets the same impulse, the other way round")
            .formula(r"\q{exchanged-impulse} = (1 + \q{restitution}) \, \q{closing-speed} \, \dfrac{\q{mass} \cdot \q{other-mass}}{\q{mass} + \q{other-mass}}")
            .source(CP_8)
            .cautions(PARTING),
        straight(Rule::new(SPEED_AFTER, (MASS, IMPACT_SPEED, EXCHANGED_IMPULSE), impact::speed_held_back))
            .title("The impulse holds the machine back")
            .formula(r"\q{speed-after} = \q{impact-speed} - \dfrac{\q{exchanged-impulse}}{\q{mass}}")
            .source(UP_9)
            .cautions(PARTING),
        straight(Rule::new(OTHER_SPEED_AFTER, (OTHER_MASS, OTHER_SPEED, EXCHANGED_IMPULSE), impact::speed_pushed_on))
            .title("The impulse pushes the other on")
            .formula(r"\q{other-speed-after} = \q{other-speed} + \dfrac{\q{exchanged-impulse}}{\q{other-mass}}")
            .source(UP_9)
            .cautions(PARTING),
        straight(Rule::new(COLLISION_ENERGY_LOST, (CLOSING_SPEED, EXCHANGED_IMPULSE, RESTITUTION), impact::energy_lost))
            .title("What bending, heat and noise take")
            .formula(r"\q{collision-energy-lost} = \frac{1}{2} \, \q{closing-speed} \cdot \q{exchanged-impulse} \, (1 - \q{restitution})")
            .source(CP_8)
            .cautions(PARTING),
    ]
}

fn pulses() -> Vec<Rule> {
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
