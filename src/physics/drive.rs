//! Motor, engine, gears and what they give at the ground.

pub mod engine;
pub mod gear;
pub mod motor;
pub mod supplied;
