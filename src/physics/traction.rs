//! How soft ground carries, drags and grips.
//!
//! Bekker's pressure and sinkage, the Mohr–Coulomb limit, Janosi and Hanamoto's slip, the shallow
//! snow model of CRREL, the army's indices of mobility, and plain friction. None of them counts
//! slip sinkage, a second pass in the same rut, bulldozing, a belly that drags or losses inside
//! the running gear; most of these make a real machine do worse.

pub mod band;
pub mod climb;
pub mod ice;
pub mod mobility;
pub mod resistance;
pub mod sinkage;
pub mod snow;
pub mod thrust;
