//! How soft ground carries, drags and grips.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
