//! Battery, wires, controller and regulator.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
