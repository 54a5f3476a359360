//! How soft ground carries, drags and grips.

use crate::quantity::{Entry, Force, Id, Ratio, Topic::Traction};

pub const DRIVEN_SHARE: Id<Ratio> = Id::new("driven-share");
pub const GRIP_PUSH: Id<Force> = Id::new("grip-push");
pub const ROLLING_RESISTANCE: Id<Force> = Id::new("rolling-resistance");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Traction, DRIVEN_SHARE, "share of the load on driven gear", r"s_d", "How much of the weight stands on tracks or wheels that drive.")
        .assumed(1.0)
        .possible(0.0, 1.0)
        .units(&["%"], &["%"])
        .usual(0.3, 1.0),
    Entry::found(Traction, GRIP_PUSH, "push the grip allows", r"F_g", "The most the machine can push before it spins, by the grip coefficient, whatever its motor.")
        .headline(),
    Entry::found(Traction, ROLLING_RESISTANCE, "rolling resistance", r"R_r", "How hard ground and running gear hold the machine back, by the rolling coefficient.")
        .headline(),
];
