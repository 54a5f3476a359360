//! Force, power, speed and stopping.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
