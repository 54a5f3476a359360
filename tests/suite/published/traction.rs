//! Soft ground, grip, snow and the indices of mobility.

mod friction;
mod indices;
mod plates;
mod snow;
mod thrown;
mod thrust;
