//! Two bodies that meet along one line, and shock pulses.

use crate::quantity::{
    Energy, Entry, Force, Id, Length, Mass, Momentum, Ratio, Speed, Time, Topic::Impact,
};

pub const OTHER_MASS: Id<Mass> = Id::new("other-mass");
pub const OTHER_SPEED: Id<Speed> = Id::new("other-speed");
pub const CLOSING_SPEED: Id<Speed> = Id::new("closing-speed");
pub const COMMON_SPEED: Id<Speed> = Id::new("common-speed");
pub const EXCHANGED_IMPULSE: Id<Momentum> = Id::new("exchanged-impulse");
pub const SPEED_AFTER: Id<Speed> = Id::new("speed-after");
pub const OTHER_SPEED_AFTER: Id<Speed> = Id::new("other-speed-after");
pub const COLLISION_ENERGY_LOST: Id<Energy> = Id::new("collision-energy-lost");
pub const TEST_PULSE_PEAK: Id<Ratio> = Id::new("test-pulse-peak");
pub const TEST_PULSE_TIME: Id<Time> = Id::new("test-pulse-time");
pub const TEST_PULSE_SPEED: Id<Speed> = Id::new("test-pulse-speed");
pub const TEST_PULSE_DROP: Id<Length> = Id::new("test-pulse-drop");
pub const MOUNTED_MASS: Id<Mass> = Id::new("mounted-mass");
pub const MOUNT_LOAD: Id<Force> = Id::new("mount-load");
pub const LOOSE_MOUNT_LOAD: Id<Force> = Id::new("loose-mount-load");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Impact, OTHER_MASS, "mass of the other body", r"m_2", "The mass of what it runs into, when that can move.")
        .above_zero()
        .usual(0.1, 2000.0),
    Entry::given(Impact, OTHER_SPEED, "speed of the other body", r"v_2", "How fast the other goes at first touch, the same way as the machine; negative when it comes towards it.")
        .assumed(0.0)
        .possible(f64::MIN, f64::MAX)
        .usual(-10.0, 10.0),
    Entry::found(Impact, CLOSING_SPEED, "closing speed", r"u", "How fast the two close in on each other.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, COMMON_SPEED, "common speed", r"v_c", "The speed of both if they go on together.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, EXCHANGED_IMPULSE, "impulse on each", r"J_2", "Force times time that each gives the other."),
    Entry::found(Impact, SPEED_AFTER, "speed after the collision", r"v_1'", "How fast the machine goes afterwards; negative when it is thrown back.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, OTHER_SPEED_AFTER, "speed of the other after the collision", r"v_2'", "How fast the other goes afterwards.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Impact, COLLISION_ENERGY_LOST, "energy lost in the collision", r"E_L", "The energy that bending, heat and noise take from both together."),
    Entry::given(Impact, TEST_PULSE_PEAK, "peak of the shock test", r"G_t", "The peak of the pulse a part was tested with, in multiples of g, as on its datasheet.")
        .above_zero()
        .units(&["g"], &["g"])
        .usual(5.0, 2000.0),
    Entry::given(Impact, TEST_PULSE_TIME, "length of the shock test", r"t_t", "How long that pulse lasts.")
        .above_zero()
        .usual(2e-4, 0.05),
    Entry::found(Impact, TEST_PULSE_SPEED, "speed the shock test takes away", r"\Delta v_t", "The change of speed in that pulse."),
    Entry::found(Impact, TEST_PULSE_DROP, "drop the shock test stands for", r"h_t", "The height of a free fall that such a pulse would stop, no bounce."),
    Entry::given(Impact, MOUNTED_MASS, "mass of the mounted part", r"m_p", "The mass of one part on its mount: a battery, a motor, a camera.")
        .above_zero()
        .usual(0.02, 50.0),
    Entry::found(Impact, MOUNT_LOAD, "load on the mount (peak)", r"F_m", "What the part pulls its mount with at the peak of the stop, held stiffly.")
        .headline(),
    Entry::found(Impact, LOOSE_MOUNT_LOAD, "load on the mount when it shakes (most)", r"F_{m2}", "The most it can be when the part shakes on its mount: twice the load of a stiff one."),
];
