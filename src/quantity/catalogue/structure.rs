//! Beams, bolts, materials and mounts.

pub(super) mod beam;
pub(super) mod bolt;
pub(super) mod joined;
pub(super) mod material;
pub(super) mod section;
pub(super) mod twist;

pub use beam::*;
pub use bolt::*;
pub use joined::*;
pub use material::*;
pub use section::*;
pub use twist::*;
