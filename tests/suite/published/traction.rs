//! Soft ground, grip, snow and the indices of mobility.

pub(crate) mod friction;
pub(crate) mod indices;
pub(crate) mod plates;
pub(crate) mod shear_test;
pub(crate) mod snow;
pub(crate) mod thrown;
pub(crate) mod thrust;
