//! Shock tests of a datasheet, and what a pulse does to a mounted part.

use crate::quantity::{Entry, Force, Id, Length, Mass, Ratio, Speed, Time, Topic::Impact};

pub const TEST_PULSE_PEAK: Id<Ratio> = Id::new("test-pulse-peak");
pub const TEST_PULSE_TIME: Id<Time> = Id::new("test-pulse-time");
pub const TEST_PULSE_SPEED: Id<Speed> = Id::new("test-pulse-speed");
pub const TEST_PULSE_DROP: Id<Length> = Id::new("test-pulse-drop");
pub const MOUNTED_MASS: Id<Mass> = Id::new("mounted-mass");
pub const MOUNT_LOAD: Id<Force> = Id::new("mount-load");
pub const LOOSE_MOUNT_LOAD: Id<Force> = Id::new("loose-mount-load");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(
        Impact,
        TEST_PULSE_PEAK,
        "peak of the shock test",
        r"G_t",
        "The peak of the pulse a part was tested with, in multiples of g, as on its datasheet.",
    )
    .above_zero()
    .units(&["g"], &["g"])
    .usual(5.0, 2000.0),
    Entry::given(
        Impact,
        TEST_PULSE_TIME,
        "length of the shock test",
        r"t_t",
        "How long that pulse lasts.",
    )
    .above_zero()
    .usual(2e-4, 0.05),
    Entry::found(
        Impact,
        TEST_PULSE_SPEED,
        "speed the shock test takes away",
        r"\Delta v_t",
        "The change of speed in that pulse.",
    ),
    Entry::found(
        Impact,
        TEST_PULSE_DROP,
        "drop the shock test stands for",
        r"h_t",
        "The height of a free fall that such a pulse would stop, no bounce.",
    ),
    Entry::given(
        Impact,
        MOUNTED_MASS,
        "mass of the mounted part",
        r"m_p",
        "The mass of one part on its mount: a battery, a motor, a camera.",
    )
    .above_zero()
    .usual(0.02, 50.0),
    Entry::found(
        Impact,
        MOUNT_LOAD,
        "load on the mount (peak)",
        r"F_m",
        "What the part pulls its mount with at the peak of the stop, held stiffly.",
    )
    .headline(),
    Entry::found(
        Impact,
        LOOSE_MOUNT_LOAD,
        "load on the mount when it shakes (most)",
        r"F_{m2}",
        "The most it can be when the part shakes on its mount: twice the load of a stiff one.",
    ),
];
