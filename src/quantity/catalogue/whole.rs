//! Range, the weight spiral and scaling.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
