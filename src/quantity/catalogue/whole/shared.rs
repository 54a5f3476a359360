//! What the whole machine takes from its motor, its battery and its driving.

use crate::quantity::{Energy, Entry, Force, Id, Ratio, Speed, Topic::Whole};

pub const BATTERY_ENERGY: Id<Energy> = Id::new("battery-energy");
pub const USABLE_SHARE: Id<Ratio> = Id::new("usable-share");
pub const DRIVE_EFFICIENCY: Id<Ratio> = Id::new("drive-efficiency");
pub const TOTAL_RESISTANCE: Id<Force> = Id::new("total-resistance");
pub const SPEED: Id<Speed> = Id::new("speed");
pub const USABLE_ENERGY: Id<Energy> = Id::new("usable-energy");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(
        Whole,
        BATTERY_ENERGY,
        "energy of the battery",
        r"E_b",
        "All the energy in the full battery.",
    )
    .above_zero()
    .units(&["W·h"], &["W·h"])
    .usual(3.6e4, 7.2e6),
    Entry::given(
        Whole,
        USABLE_SHARE,
        "usable part of the battery",
        r"u_b",
        "The part of its energy that may be taken out before it has to be charged.",
    )
    .assumed(0.8)
    .possible(0.0, 1.0)
    .usual(0.5, 0.95),
    Entry::given(
        Whole,
        DRIVE_EFFICIENCY,
        "efficiency of the drive",
        r"\eta",
        "Power at the ground over power from the battery.",
    )
    .above_zero()
    .possible(1e-6, 1.0)
    .usual(0.3, 0.85),
    Entry::given(
        Whole,
        TOTAL_RESISTANCE,
        "resistance (all together)",
        "R",
        "All that holds the machine back at a steady speed: ground, slope and air.",
    )
    .above_zero()
    .usual(1.0, 1000.0),
    Entry::given(Whole, SPEED, "speed", "V", "The steady speed it drives at.")
        .above_zero()
        .usual(0.1, 8.0),
    Entry::found(
        Whole,
        USABLE_ENERGY,
        "usable energy",
        r"E_u",
        "The energy that may be taken out before it has to be charged.",
    )
    .units(&["W·h"], &["W·h"]),
];
