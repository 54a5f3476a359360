//! Beams, bolts, materials and mounts.
