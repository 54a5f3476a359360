//! Where losses go and how hot things get.

use crate::quantity::Entry;

pub(super) const ENTRIES: &[Entry] = &[];
