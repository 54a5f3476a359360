//! What it takes to swing the machine round.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
