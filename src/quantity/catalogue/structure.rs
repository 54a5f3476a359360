//! Beams, bolts, materials and mounts.

pub(super) mod beam;
pub(super) mod bolt;
pub(super) mod material;
pub(super) mod section;

pub use beam::*;
pub use bolt::*;
pub use material::*;
pub use section::*;
