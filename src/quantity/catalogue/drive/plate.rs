//! A motor by its plate: what it loses at any load, and where it does best.

use crate::quantity::{Current, Entry, Id, Power, Ratio, Topic::Drive};

pub const RATED_MOTOR_POWER: Id<Power> = Id::new("rated-motor-power");
pub const RATED_MOTOR_CURRENT: Id<Current> = Id::new("rated-motor-current");
pub const MOTOR_LOAD: Id<Ratio> = Id::new("motor-load");
pub const STEADY_MOTOR_LOSS: Id<Power> = Id::new("steady-motor-loss");
pub const RATED_WINDING_LOSS: Id<Power> = Id::new("rated-winding-loss");
pub const PART_LOAD_EFFICIENCY: Id<Ratio> = Id::new("part-load-efficiency");
pub const EQUAL_LOSS_CURRENT: Id<Current> = Id::new("equal-loss-current");
pub const EQUAL_LOSS_LOAD: Id<Ratio> = Id::new("equal-loss-load");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(
        Drive,
        RATED_MOTOR_POWER,
        "rated power of a motor",
        r"P_N",
        "The shaft power on the motor's plate: what it gives for long.",
    )
    .above_zero()
    .usual(20.0, 1e4),
    Entry::given(
        Drive,
        RATED_MOTOR_CURRENT,
        "rated current of a motor",
        r"I_N",
        "The current on the motor's plate, at its rated power.",
    )
    .above_zero()
    .usual(1.0, 200.0),
    Entry::given(
        Drive,
        MOTOR_LOAD,
        "load of a motor",
        r"x_m",
        "The part of its rated power that the motor gives; over 1 is an overload.",
    )
    .assumed(1.0)
    .above_zero()
    .usual(0.1, 1.5),
    Entry::found(
        Drive,
        STEADY_MOTOR_LOSS,
        "steady loss of a motor",
        r"P_{\mathrm{st}}",
        "What friction, fan and iron take of a motor that turns, loaded or not.",
    ),
    Entry::found(
        Drive,
        RATED_WINDING_LOSS,
        "winding loss at rated current",
        r"P_{\mathrm{cu},N}",
        "What the rated current makes in the winding.",
    ),
    Entry::found(
        Drive,
        PART_LOAD_EFFICIENCY,
        "motor efficiency at that load",
        r"\eta_x",
        "The part of the electric power that reaches the shaft at that part of the rated load.",
    )
    .possible(0.0, 1.0),
    Entry::found(
        Drive,
        EQUAL_LOSS_CURRENT,
        "current of equal losses",
        r"I_=",
        "The current at which the winding loses as much as all that stays: where efficiency is best.",
    ),
    Entry::found(
        Drive,
        EQUAL_LOSS_LOAD,
        "load of equal losses",
        r"x_=",
        "That current over the rated current: about the load at which the motor does best.",
    ),
];
