//! The whole machine: mass, balance, where it stands.

use std::f64::consts::PI;

use crate::quantity::{Acceleration, Angle, Entry, Force, Id, Length, Mass, Topic::Machine};

pub const MASS: Id<Mass> = Id::new("mass");
pub const GRAVITY: Id<Acceleration> = Id::new("gravity");
pub const SLOPE: Id<Angle> = Id::new("slope");
pub const BALANCE_OFFSET: Id<Length> = Id::new("balance-offset");
pub const CG_HEIGHT: Id<Length> = Id::new("cg-height");
pub const WEIGHT: Id<Force> = Id::new("weight");
pub const GROUND_FORCE: Id<Force> = Id::new("ground-force");
pub const SLOPE_FORCE: Id<Force> = Id::new("slope-force");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(
        Machine,
        MASS,
        "mass",
        "m",
        "How much stuff the whole machine is, ready to run, load and all.",
    )
    .above_zero()
    .usual(0.3, 500.0)
    .headline(),
    Entry::given(
        Machine,
        GRAVITY,
        "gravity",
        "g",
        "How strongly the Earth pulls on each kilogram.",
    )
    .assumed(9.80665)
    .above_zero()
    .units(&["m/s²"], &["ft/s²"])
    .usual(9.78, 9.84)
    .fixed(),
    Entry::given(
        Machine,
        SLOPE,
        "slope",
        r"\theta",
        "How steep the ground is, along the machine; nose uphill is positive.",
    )
    .assumed(0.0)
    .possible(-80.0 * PI / 180.0, 80.0 * PI / 180.0)
    .usual(0.0, 40.0 * PI / 180.0)
    .fixed(),
    Entry::given(
        Machine,
        BALANCE_OFFSET,
        "balance point offset",
        "e_0",
        "How far the balance point is ahead of the middle of the ground contact: of the tracks’ flat, or of the axles where there are no tracks. Behind it is negative.",
    )
    .assumed(0.0)
    .possible(-100.0, 100.0)
    .usual(-0.15, 0.15)
    .free(),
    Entry::given(
        Machine,
        CG_HEIGHT,
        "centre of gravity height",
        "h_g",
        "How high the centre of gravity is above the ground.",
    )
    .usual(0.02, 0.8)
    .free(),
    Entry::found(
        Machine,
        WEIGHT,
        "weight",
        "W",
        "The force with which the Earth pulls the machine down.",
    )
    .headline(),
    Entry::found(
        Machine,
        GROUND_FORCE,
        "force on the ground",
        "N",
        "The part of the weight that presses square into the ground.",
    ),
    Entry::found(
        Machine,
        SLOPE_FORCE,
        "force along the slope",
        r"F_{\mathrm{slope}}",
        "The part of the weight that pulls the machine down the slope.",
    )
    .possible(f64::MIN, f64::MAX),
];
