//! How much a bounce gives back, and coming down off a ledge.

use crate::quantity::{Entry, Id, Length, Ratio, Speed, Topic::Impact};

pub const BOUNCE_TEST_DROP: Id<Length> = Id::new("bounce-test-drop");
pub const BOUNCE_TEST_REBOUND: Id<Length> = Id::new("bounce-test-rebound");
pub const BOUNCE_TEST_RESTITUTION: Id<Ratio> = Id::new("bounce-test-restitution");
pub const BOUNCE_ENERGY_KEPT: Id<Ratio> = Id::new("bounce-energy-kept");
pub const LEDGE_SPEED: Id<Speed> = Id::new("ledge-speed");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Impact, BOUNCE_TEST_DROP, "bounce test: dropped from", r"h_{\mathrm{test}}", "The height from which the part was dropped onto the ground, in a test of how it bounces.")
        .above_zero()
        .usual(0.1, 2.0),
    Entry::given(Impact, BOUNCE_TEST_REBOUND, "bounce test: came back to", r"h_{\mathrm{test}}'", "How high it came back in that test, seen against a rule or in a film.")
        .usual(0.0, 1.5),
    Entry::found(Impact, BOUNCE_TEST_RESTITUTION, "bounce by the test", r"\epsilon_b", "The coefficient of restitution that the bounce test gives; enter it as the bounce."),
    Entry::found(Impact, BOUNCE_ENERGY_KEPT, "energy that the bounce gives back", r"s_\epsilon", "The part of the energy that comes back in the bounce; the rest goes into bending, heat and noise.")
        .units(&["%"], &["%"]),
    Entry::found(Impact, LEDGE_SPEED, "speed at touch off a ledge", r"v_{\mathrm{ledge}}", "How fast the machine touches down when it drives off an edge of the drop height at the driving speed."),
];
