//! The sentences a reader gets when a rule finds no number.

use super::catalogue::Pair;
use super::rule::Rule;
use super::value::Values;
use crate::physics::Impossible;
use crate::quantity::{Entry, catalogue as quantities};

fn label(id: crate::quantity::AnyId) -> &'static str {
    quantities::find(id.name()).map_or(id.name(), |entry| entry.label)
}

/// Why a given number cannot be meant.
pub fn impossible_given(entry: &Entry) -> String {
    let (low, high) = entry.possible;
    // The bounds are shown in the units a reader would type.
    let shown = |si: f64| crate::quantity::show_plain(entry, si);
    match (entry.above_only, high < f64::MAX) {
        (true, _) => format!("The {} must be more than {}.", entry.label, shown(low)),
        (false, true) => {
            format!("The {} must be between {} and {}.", entry.label, shown(low), shown(high))
        }
        (false, false) => format!("The {} must be {} or more.", entry.label, shown(low)),
    }
}

/// Why a formula has no answer.
pub fn impossible(why: Impossible) -> &'static str {
    match why {
        Impossible::NoContact => {
            "Nothing touches the ground: say how many tracks, wheels or skis there are."
        }
        Impossible::LineContact => {
            "A wheel that does not squash touches along a line only, which is no area: measure the tyre squash under load."
        }
        Impossible::SquashPastAxle => {
            "The tyre squash must be less than half the wheel diameter, or the axle would be underground."
        }
        Impossible::TipsOver => {
            "The load falls outside the contact: the machine tips over before any pressure can be found."
        }
        Impossible::NotTracksAlone => {
            "How the load spreads from end to end is only known for a machine on tracks alone: wheels and skis share the load in another way."
        }
        Impossible::Centred => {
            "The load bears down exactly in the middle, so no end is near to lifting."
        }
        Impossible::NoSpeed => "It is not moving, so there is nothing to stop.",
        Impossible::Stalls => {
            "The motor stalls: at this voltage it cannot give the torque asked of it. Gear it lower, ask for less push, or give it more voltage."
        }
        Impossible::RunsAway => {
            "There is no steady temperature: warm copper resists more, and here each degree adds more heat than the motor can shed. Less current, or better cooling."
        }
        Impossible::NeverReached => {
            "It never gets there: even at rest temperature it stays under the limit."
        }
        Impossible::TooHotAlready => {
            "The air is already as warm as the limit, so nothing may be heated at all."
        }
        Impossible::NoRestWillDo => {
            "No rest is long enough: one stretch of work alone passes the limit. Shorten the work or lower the current."
        }
        Impossible::NoHeatSinkWillDo => {
            "No heat sink is large enough: the parts between chip and sink already use up the whole temperature step."
        }
        Impossible::EmptyAlready => {
            "The battery is under its cut-off with no load at all: the cells are empty, or the cut-off is set for other cells."
        }
        Impossible::OutsideTroposphere => {
            "The standard air is known here from 5000 m below the sea to 11 000 m above it."
        }
        Impossible::AtRest => {
            "At rest any power would give an unlimited force, so torque, grip or balance sets it: give a driving speed above zero."
        }
        Impossible::NothingHoldsBack => {
            "Neither air nor ground holds the machine back, so its speed has no end: say the drag area or the rolling resistance."
        }
        Impossible::NoLimitKnown => {
            "Nothing that limits the thrust is known: say the power, the torque or the grip."
        }
        Impossible::NeverThatFast => {
            "The machine never gets that fast: what holds it back takes all the thrust before."
        }
        Impossible::ClimbsAnything => {
            "The thrust is more than the whole weight, so strength sets no slope: grip and balance give out first."
        }
        Impossible::SlidesOn => {
            "The slope pulls as much as the ground holds back, so the machine never comes to rest."
        }
        Impossible::PackCollapses => {
            "The battery cannot give this current: its own resistance would take all of its voltage."
        }
        Impossible::NothingAsked => {
            "Nothing is asked of this limit, so there is no margin to state."
        }
        Impossible::StraightOn => "The machine goes straight on, so there is no turn.",
        Impossible::NoTurnThere => {
            "The steering angle must be less than 90° either way, or no turn comes of it."
        }
        Impossible::HeldByGround => {
            "The ground holds the tracks harder than the drive can turn them, so the machine does not swing round: less load, a shorter contact or more thrust would do it."
        }
        Impossible::ScalesSayNothing => {
            "The scales must carry a load, and the raised end must be raised."
        }
        Impossible::OffItsSupports => {
            "The centre of gravity is not between the supports: the machine tips over where it stands."
        }
        Impossible::TooFastASwing => {
            "No body swings that fast about a pivot so far off: measure the period and the pivot distance again."
        }
        Impossible::MixedGear => {
            "How far it sinks is only known for tracks alone or skis alone: a machine on both, or on wheels as well, shares its load in another way."
        }
        Impossible::NoTracks => "This rule is for a machine on tracks: say how many there are.",
        Impossible::NoWheels => "This rule is for a machine on wheels: say how many there are.",
        Impossible::PullTooHard => {
            "This ground does not give that much push at any slip: pull less, or find more area, weight or grip."
        }
        Impossible::AnySlope => {
            "By this sum the ground holds on any slope, so something else sets the limit: tipping over, power, or the ground breaking away."
        }
        Impossible::Stuck => {
            "By this sum the ground holds the machine fast on any slope: it sinks in so deep that its own weight does not get it moving."
        }
        Impossible::SnowDense => {
            "The snow is as dense already as this pressure makes it, so no rut can be reckoned."
        }
        Impossible::OffTheTable => {
            "The mobility index is zero or less: so light a machine is off the end of the army's tables."
        }
        Impossible::WallTooThick => {
            "Two walls are thicker than the tube is across: measure the wall and the outside again."
        }
        Impossible::CornerTooRound => {
            "The corners are rounder than the tube is across: the corner radius must be at most half of the smaller side."
        }
        Impossible::PitchTooCoarse => {
            "The thread pitch is coarser than the bolt is thick: say the pitch from one thread to the next, 1.25 mm for M8."
        }
        Impossible::LimitBelowWeight => {
            "The shock limit is so low that holding up the weight takes all of it: no spring is soft enough."
        }
        Impossible::GroundDrives => {
            "Downhill the ground drives the motors: they brake, with the torque found at each motor, and draw nothing from the battery. What a controller may feed back is not counted; turn the slope round for the way up."
        }
        Impossible::NothingComesBack => {
            "The load left at the far end is all of the machine's mass or more, so nothing comes back: say the load alone."
        }
        Impossible::NoFasterTest => {
            "The test must draw more than the rated discharge and empty the battery sooner, or it says nothing about the exponent."
        }
        Impossible::NoHeavierLoad => {
            "The heavy test must have the larger load, and show at least as much for it: more pull, or a lower voltage. Look whether the two were swapped."
        }
        Impossible::NeverCloses => {
            "No size of battery closes this: each kilogram added asks for more than another kilogram of battery, drive and frame to carry it. Ask for less distance, less drag or a better battery."
        }
    }
}

/// Why a result that is not finite is not shown.
pub(super) fn not_a_number(rule: &Rule, values: &Values) -> String {
    let zeros: Vec<&str> = rule
        .needs
        .iter()
        .filter(|need| values.si(need.id) == Some(0.0))
        .map(|need| label(need.id))
        .collect();
    if zeros.is_empty() {
        format!("The numbers are too large or too small to find the {}.", label(rule.finds))
    } else {
        format!("The {} cannot be found while {} is zero.", label(rule.finds), zeros.join(" and "))
    }
}

/// What to say when both of a pair are given and do not agree.
pub(super) fn pair_disagrees(pair: &Pair, linked: f64) -> String {
    let shown = quantities::find(pair.one.name())
        .map_or_else(|| linked.to_string(), |entry| crate::quantity::show_plain(entry, linked));
    format!(
        "Both the {} and the {} are given, so each is used as it stands. {} It would make the {} {}.",
        label(pair.one),
        label(pair.other),
        pair.link,
        label(pair.one),
        shown
    )
}
