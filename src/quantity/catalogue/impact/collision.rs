//! Two bodies that meet along one line.

use crate::quantity::{Energy, Entry, Id, Mass, Momentum, Speed, Topic::Impact};

pub const OTHER_MASS: Id<Mass> = Id::new("other-mass");
pub const OTHER_SPEED: Id<Speed> = Id::new("other-speed");
pub const CLOSING_SPEED: Id<Speed> = Id::new("closing-speed");
pub const COMMON_SPEED: Id<Speed> = Id::new("common-speed");
pub const EXCHANGED_IMPULSE: Id<Momentum> = Id::new("exchanged-impulse");
pub const SPEED_AFTER: Id<Speed> = Id::new("speed-after");
pub const OTHER_SPEED_AFTER: Id<Speed> = Id::new("other-speed-after");
pub const COLLISION_ENERGY_LOST: Id<Energy> = Id::new("collision-energy-lost");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Impact, OTHER_MASS, "mass of the other body", r"m_2", "The mass of what it runs into, when that can move.")
        .above_zero()
        .usual(0.1, 2000.0),
    Entry::given(Impact, OTHER_SPEED, "speed of the other body", r"v_2", "How fast the other goes at first touch, the same way as the machine; negative when it comes towards it.")
        .assumed(0.0)
        .possible(f64::MIN, f64::MAX)
        .usual(-10.0, 10.0),
    Entry::found(Impact, CLOSING_SPEED, "closing speed", r"u", "How fast the two close in on each other.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, COMMON_SPEED, "common speed", r"v_c", "The speed of both if they go on together.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, EXCHANGED_IMPULSE, "impulse on each", r"J_2", "Force times time that each gives the other."),
    Entry::found(Impact, SPEED_AFTER, "speed after the collision", r"v_1'", "How fast the machine goes afterwards; negative when it is thrown back.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, OTHER_SPEED_AFTER, "speed of the other after the collision", r"v_2'", "How fast the other goes afterwards.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, COLLISION_ENERGY_LOST, "energy lost in the collision", r"E_L", "The energy that bending, heat and noise take from both together; below zero when something lets go between them.")
        .possible(f64::MIN, f64::MAX),
];
