//! Battery, wires, controller and regulator.
