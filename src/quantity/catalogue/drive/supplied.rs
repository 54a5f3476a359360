//! What the motors give on this battery and through these gears.

use crate::quantity::{AngularSpeed, Entry, Force, Id, Power, Resistance, Speed, Topic::Drive};

pub const MOTOR_LOOP_RESISTANCE: Id<Resistance> = Id::new("motor-loop-resistance");
pub const SUPPLIED_MOTOR_POWER: Id<Power> = Id::new("supplied-motor-power");
pub const UNLOADED_SPEED: Id<Speed> = Id::new("unloaded-speed");
pub const LINE_PUSH: Id<Force> = Id::new("line-push");
pub const AXLE_RATE: Id<AngularSpeed> = Id::new("axle-rate");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::found(Drive, MOTOR_LOOP_RESISTANCE, "resistance in each motor's loop", r"R_{\mathrm{loop}}", "Winding, controller and supply as one motor sees them, while all motors draw alike.")
        .above_zero(),
    Entry::found(Drive, SUPPLIED_MOTOR_POWER, "greatest motor power on this supply (peak)", r"P_{\mathrm{sup}}", "The most shaft power that battery, wires and controller let a motor give, at the one speed where it does.")
        .headline(),
    Entry::found(Drive, UNLOADED_SPEED, "speed with nothing to push", r"v_0", "The speed over the ground at full throttle if nothing held the machine back."),
    Entry::found(Drive, LINE_PUSH, "push at rest without a current limit", r"F_0", "The other end of the motors' line at the ground: what resistance alone would let them push at rest."),
    Entry::found(Drive, AXLE_RATE, "turning of the axle at the driving speed", r"\omega_a", "How fast the driven wheel or sprocket turns at the driving speed, without slip.")
        .possible(f64::MIN, f64::MAX),
];
