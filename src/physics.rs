//! Physics: pure functions over uom quantities, one topic a file.
//!
//! Each function's doc comment gives its formula, units, range and published source. Nothing here
//! knows the names of quantities, holds state or speaks to people.

mod accumulate;
pub mod balance;
pub mod drive;
pub mod electrics;
pub mod heat;
pub mod impact;
pub mod motion;
pub mod pressure;
pub mod running_gear;
pub mod structure;
pub mod traction;
pub mod turning;
pub mod weight;
pub mod whole;

pub use accumulate::accumulate;

/// Why a formula has no answer for the numbers it was given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Impossible {
    /// Nothing touches the ground.
    NoContact,
    /// Wheels that do not squash touch along a line, which is no area.
    LineContact,
    /// The squash of a wheel reaches its axle.
    SquashPastAxle,
    /// The load falls outside the contact.
    TipsOver,
    /// Wheels or skis, where the rule is for tracks alone.
    NotTracksAlone,
    /// The load is exactly in the middle, so the ratio has no end.
    Centred,
    /// The speed is zero.
    NoSpeed,
    /// The torque asked for stalls the motor.
    Stalls,
    /// The winding heats its own resistance faster than it cools.
    RunsAway,
    /// The loss at rest never reaches the limit.
    NeverReached,
    /// The air, or the start, is already past the limit.
    TooHotAlready,
    /// One stretch of work alone passes the limit.
    NoRestWillDo,
    /// No resistance to the air is small enough.
    NoHeatSinkWillDo,
    /// The battery falls below its cut-off with no current at all.
    EmptyAlready,
    /// The altitude is outside the lowest layer of the standard atmosphere.
    OutsideTroposphere,
    /// At rest a power sets no force.
    AtRest,
    /// Neither air nor ground holds the machine back.
    NothingHoldsBack,
    /// Nothing that limits the thrust is known.
    NoLimitKnown,
    /// The acceleration runs out before that speed.
    NeverThatFast,
    /// The thrust is more than the weight.
    ClimbsAnything,
    /// The slope pulls more than the ground holds back.
    SlidesOn,
    /// Nothing is asked of the limit.
    NothingAsked,
    /// The battery's own resistance takes all of its voltage.
    PackCollapses,
    /// The machine goes straight on.
    StraightOn,
    /// The steering asks for a turn about a point under the machine or sideways.
    NoTurnThere,
    /// The ground holds the machine against the turning moment.
    HeldByGround,
    /// The mass on the scales is nothing, or the tilt is.
    ScalesSayNothing,
    /// The centre of gravity is not over the supports.
    OffItsSupports,
    /// A body cannot swing that fast about that point.
    TooFastASwing,
    /// More than one kind of running gear, where the rule is for one kind alone.
    MixedGear,
    /// No track, where the rule is for tracks.
    NoTracks,
    /// No wheel, where the rule is for wheels.
    NoWheels,
    /// The ground cannot give that much push at any slip.
    PullTooHard,
    /// The ground would hold on any slope.
    AnySlope,
    /// The ground holds it fast on any slope.
    Stuck,
    /// The snow is as dense already as it would get.
    SnowDense,
    /// The mobility index is zero or less.
    OffTheTable,
    /// Twice the wall is more than the tube is across.
    WallTooThick,
    /// The corners are rounder than the tube is across.
    CornerTooRound,
    /// The pitch leaves nothing of the bolt.
    PitchTooCoarse,
    /// The shock limit is less than holding up the weight takes.
    LimitBelowWeight,
    /// Each kilogram asks for another kilogram or more to carry it.
    NeverCloses,
    /// Downhill the ground drives the motors.
    GroundDrives,
    /// More is left behind than the machine weighs.
    NothingComesBack,
    /// The second test was no heavier than the first, or showed nothing more.
    NoHeavierLoad,
    /// The test was no faster than the rated discharge.
    NoFasterTest,
}

/// A quantity from its value in the coherent SI unit: for the kinds and differences that uom's own
/// arithmetic does not mix (turning, thermometer readings, fitted formulas).
fn si<D: uom::si::Dimension + ?Sized>(value: f64) -> uom::si::Quantity<D, uom::si::SI<f64>, f64> {
    uom::si::Quantity {
        dimension: std::marker::PhantomData,
        units: std::marker::PhantomData,
        value,
    }
}
