//! Motor, engine, gears and what they give at the ground.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
