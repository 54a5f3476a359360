//! Beams, bolts, materials and mounts.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
