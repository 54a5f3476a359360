//! What changes in the course of a run: named, labelled and given units as quantities are, but true
//! of a moment and not of the build. A lesson names them; a study fills them.

use super::dimension::{
    Acceleration, Current, Force, Length, Ratio, Speed, Temperature, Time, Voltage,
};
use super::entry::{Entry, Topic};
use super::id::Id;

/// The time since the start.
pub static TIME: Entry =
    Entry::found(Topic::Motion, Id::<Time>::new("time"), "time", "t", "Since the start.")
        .usual(0.0, 1e9);
/// The speed over the ground.
pub static SPEED: Entry =
    Entry::found(Topic::Motion, Id::<Speed>::new("speed"), "speed", "v", "Over the ground.");
/// The distance gone.
pub static DISTANCE: Entry =
    Entry::found(Topic::Motion, Id::<Length>::new("distance"), "distance", "s", "Since the start.");
/// The acceleration.
pub static ACCELERATION: Entry = Entry::found(
    Topic::Motion,
    Id::<Acceleration>::new("acceleration"),
    "acceleration",
    "a",
    "How quickly it gains speed.",
)
.units(&["m/s²"], &["ft/s²"]);
/// The temperature of a motor's winding.
pub static WINDING: Entry = Entry::found(
    Topic::Heat,
    Id::<Temperature>::new("winding"),
    "winding temperature",
    r"T_w",
    "The copper inside the motor.",
);
/// The temperature of a motor's housing.
pub static HOUSING: Entry = Entry::found(
    Topic::Heat,
    Id::<Temperature>::new("housing"),
    "housing temperature",
    r"T_h",
    "The outside of the motor.",
);
/// The force of a stop.
pub static FORCE: Entry = Entry::found(
    Topic::Impact,
    Id::<Force>::new("force"),
    "force",
    "F",
    "What stops the machine and holds it up meanwhile.",
);
/// The deceleration of a stop in multiples of standard gravity.
pub static SHOCK: Entry = Entry::found(
    Topic::Impact,
    Id::<Ratio>::new("shock"),
    "shock",
    "G",
    "The deceleration in multiples of standard gravity.",
)
.units(&["g"], &["g"]);
/// The travel since first touch.
pub static CRUSH: Entry =
    Entry::found(Topic::Impact, Id::<Length>::new("crush"), "crush", "x", "Since first touch.");
/// The voltage at the battery's terminals.
pub static VOLTAGE: Entry = Entry::found(
    Topic::Electrics,
    Id::<Voltage>::new("voltage"),
    "battery voltage",
    "V",
    "At the terminals, under load.",
);
/// The current out of the battery.
pub static CURRENT: Entry = Entry::found(
    Topic::Electrics,
    Id::<Current>::new("current"),
    "battery current",
    "I",
    "Out of the battery.",
);
/// The part of the charge that is left.
pub static CHARGE: Entry = Entry::found(
    Topic::Electrics,
    Id::<Ratio>::new("charge"),
    "charge left",
    "q",
    "The part of the charge that is left.",
)
.units(&["%"], &["%"]);

/// A kind of run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RunKind {
    /// From rest to the speed to reach.
    Launch,
    /// Rolling out with the drive let go.
    Coast,
    /// Braking to rest.
    Stop,
    /// A motor getting warm.
    WarmUp,
    /// The milliseconds of a hit.
    Impact,
    /// Driving on one charge.
    UntilEmpty,
}

impl RunKind {
    /// Every kind and its word.
    pub const WORDS: [(&'static str, Self); 6] = [
        ("launch", Self::Launch),
        ("coast", Self::Coast),
        ("stop", Self::Stop),
        ("warm-up", Self::WarmUp),
        ("impact", Self::Impact),
        ("until-empty", Self::UntilEmpty),
    ];

    /// What it shows.
    pub fn channels(self) -> Vec<&'static Entry> {
        match self {
            Self::Launch => vec![&SPEED, &ACCELERATION, &DISTANCE],
            Self::Coast | Self::Stop => vec![&SPEED, &DISTANCE],
            Self::WarmUp => vec![&WINDING, &HOUSING],
            Self::Impact => vec![&FORCE, &SHOCK, &SPEED, &CRUSH],
            Self::UntilEmpty => vec![&VOLTAGE, &CURRENT, &CHARGE, &SPEED, &DISTANCE],
        }
    }

    /// Whether a speed can be asked for.
    pub const fn takes_speed(self) -> bool {
        !matches!(self, Self::WarmUp)
    }
}

/// How the force of an impact rises and falls.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RunPulse {
    /// Comes on and fades smoothly.
    HalfSine,
    /// Rises and falls evenly.
    Triangle,
    /// Climbs to the very end.
    SawTooth,
    /// Rises and falls fast, level between.
    Trapezoid,
    /// Level from touch to rest.
    Steady,
    /// One straight spring.
    Spring,
}

impl RunPulse {
    /// Every pulse and its word.
    pub const WORDS: [(&'static str, Self); 6] = [
        ("half-sine", Self::HalfSine),
        ("triangle", Self::Triangle),
        ("saw-tooth", Self::SawTooth),
        ("trapezoid", Self::Trapezoid),
        ("steady", Self::Steady),
        ("spring", Self::Spring),
    ];
}
