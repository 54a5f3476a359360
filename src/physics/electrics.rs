//! Battery, wires, controller and regulator.

pub mod battery;
pub mod controller;
pub mod wire;
