//! Axle loads, tipping and nosing over.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
