//! What the machine stands on.

use crate::quantity::{Entry, Id, Length, Mass, Pressure, Topic::Ground};

pub const BLOCK_MASS: Id<Mass> = Id::new("block-mass");
pub const BLOCK_SIDE: Id<Length> = Id::new("block-side");
pub const HOLDING_PRESSURE: Id<Pressure> = Id::new("holding-pressure");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Ground, BLOCK_MASS, "block test load", r"m_b", "The mass on the test block, block and all, when it has sunk 20 mm into your ground today.")
        .above_zero()
        .usual(0.2, 60.0)
        .fixed(),
    Entry::given(Ground, BLOCK_SIDE, "block side", r"s_b", "The side of the square block of the block test.")
        .assumed(0.1)
        .above_zero()
        .usual(0.05, 0.3)
        .fixed(),
    Entry::found(Ground, HOLDING_PRESSURE, "holding pressure of the ground", r"p_h", "The pressure your ground held in the block test; press harder and the machine goes in deeper than 20 mm.")
        .above_zero()
        .usual(500.0, 2e5)
        .headline(),
];
