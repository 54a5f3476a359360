//! The limits that are checked.

use crate::quantity::AnyId;
use crate::quantity::catalogue::{
    balance::*,
    drive::*,
    electrics::*,
    ground::HOLDING_PRESSURE,
    heat::*,
    impact::*,
    motion::{DRIVING_RESISTANCE, DRIVING_SPEED},
    pressure::*,
    running_gear::{CONTACT_LENGTH, SKI_COUNT, WHEEL_COUNT},
    structure::*,
};
use crate::rules::Values;

/// Which machines a limit is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Only {
    /// Any machine.
    Any,
    /// A machine on tracks and nothing else.
    TracksAlone,
    /// A machine that electric motors drive.
    Electric,
}

impl Only {
    /// Why the limit does not apply to a machine with these numbers, in a sentence; nothing if it
    /// does.
    pub fn leaves_out(self, values: &Values) -> Option<&'static str> {
        let some = |id: AnyId| values.si(id).is_some_and(|si| si > 0.0);
        match self {
            Self::TracksAlone if some(WHEEL_COUNT.any()) || some(SKI_COUNT.any()) => Some(
                "It does not apply: it is about machines on tracks alone, and wheels and skis share the load from end to end in another way.",
            ),
            Self::Electric if some(ENGINE_POWER.any()) && !some(SPEED_CONSTANT.any()) => {
                Some("It does not apply: an engine drives this machine.")
            }
            _ => None,
        }
    }
}

/// A limit of the machine: something asked of it, against what it can take.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// The margin: what it can take over what is asked; below 1 it gives.
    pub margin: AnyId,
    /// What is asked.
    pub demand: AnyId,
    /// What it can take.
    pub capacity: AnyId,
    /// What is checked, as a heading.
    pub title: &'static str,
    /// Which machines it is about.
    pub only: Only,
    /// The lesson that explains it, by its id; there may be none of that id in the library.
    pub lesson: &'static str,
    /// The first thing to try when it gives.
    pub first_move: &'static str,
    /// What happens when it gives, as a sentence.
    pub gives: &'static str,
}

/// Every limit.
pub const LIMITS: &[Limit] = &[
    Limit {
        margin: PRESSURE_MARGIN.any(),
        demand: GROUND_PRESSURE.any(),
        capacity: HOLDING_PRESSURE.any(),
        title: "The ground under the whole machine",
        only: Only::Any,
        lesson: "pressure",
        first_move: "Make the contact wider or longer, or take mass off.",
        gives: "The machine goes in deeper than 20 mm, even with the load in the middle.",
    },
    Limit {
        margin: LOW_END_MARGIN.any(),
        demand: LOW_END_PRESSURE.any(),
        capacity: HOLDING_PRESSURE.any(),
        title: "The ground under the low end",
        only: Only::TracksAlone,
        lesson: "pressure",
        first_move: "Move mass towards the middle of the contact; it costs nothing.",
        gives: "The end that the load leans towards goes in first.",
    },
    Limit {
        margin: BALANCE_MARGIN.any(),
        demand: PRESSURE_OFFSET.any(),
        capacity: CONTACT_LENGTH.any(),
        title: "Before one end lifts",
        only: Only::TracksAlone,
        lesson: "pressure",
        first_move: "Move mass towards the middle of the contact, or lower on a slope.",
        gives: "The light end of the contact carries nothing, so the rest presses harder.",
    },
    Limit {
        margin: SIDE_SLOPE_MARGIN.any(),
        demand: SIDE_SLOPE_DEMAND.any(),
        capacity: STABILITY_FACTOR.any(),
        title: "Over the side on a side slope",
        only: Only::Any,
        lesson: "balance",
        first_move: "Set the heavy parts lower, or the tracks further apart.",
        gives: "The machine tips over to the low side.",
    },
    Limit {
        margin: FRONT_LIFT_MARGIN.any(),
        demand: CLIMB_DEMAND.any(),
        capacity: FRONT_LIFT_LIMIT.any(),
        title: "Over backwards in climbing",
        only: Only::Any,
        lesson: "balance",
        first_move: "Move mass forward or lower, or start off more gently.",
        gives: "The front lifts and the machine goes over backwards.",
    },
    Limit {
        margin: NOSE_OVER_MARGIN.any(),
        demand: BRAKE_DEMAND.any(),
        capacity: NOSE_OVER_LIMIT.any(),
        title: "Over the nose in braking",
        only: Only::Any,
        lesson: "balance",
        first_move: "Move mass back or lower, or brake more gently.",
        gives: "The rear lifts and the machine goes over its nose.",
    },
    Limit {
        margin: TURN_MARGIN.any(),
        demand: DRIVING_SPEED.any(),
        capacity: TURN_SPEED_LIMIT.any(),
        title: "Speed in the turn",
        only: Only::Any,
        lesson: "turning",
        first_move: "Slow down before the turn, or make it wider.",
        gives: "The machine tips over or slides out of the turn.",
    },
    Limit {
        margin: FRAME_MARGIN.any(),
        demand: PEAK_IMPACT_FORCE.any(),
        capacity: FRAME_STRENGTH.any(),
        title: "The weakest mount in a stop",
        only: Only::Any,
        lesson: "impact",
        first_move: "Give the stop more distance: a softer or longer bumper.",
        gives: "The weakest mount bends or breaks.",
    },
    Limit {
        margin: SHOCK_MARGIN.any(),
        demand: PEAK_DECELERATION_G.any(),
        capacity: SHOCK_LIMIT.any(),
        title: "The most delicate part in a stop",
        only: Only::Any,
        lesson: "impact",
        first_move: "Set the delicate part on something soft, or give the stop more distance.",
        gives: "The most delicate part sees more shock than it may.",
    },
    Limit {
        margin: PUSH_MARGIN.any(),
        demand: DRIVING_RESISTANCE.any(),
        capacity: PEAK_PUSH.any(),
        title: "Before the motors stall",
        only: Only::Electric,
        lesson: "drive",
        first_move: "Gear it lower; it costs speed but no money.",
        gives: "The motors stand still and turn all they draw into heat.",
    },
    Limit {
        margin: MOTOR_HEAT_MARGIN.any(),
        demand: WINDING_RISE.any(),
        capacity: ALLOWED_RISE.any(),
        title: "The winding of the motor, working without rest",
        only: Only::Electric,
        lesson: "heat",
        first_move: "Gear it lower, or rest it: heat goes with the square of the current.",
        gives: "The winding passes its limit: magnets weaken and insulation chars.",
    },
    Limit {
        margin: CONTROLLER_MARGIN.any(),
        demand: CHIP_RISE.any(),
        capacity: CHIP_ALLOWED_RISE.any(),
        title: "The chips of the controller",
        only: Only::Electric,
        lesson: "heat",
        first_move: "Give the heat a metal path out of the box.",
        gives: "The controller shuts off or burns out.",
    },
    Limit {
        margin: TOUCH_MARGIN.any(),
        demand: HOTTEST_RISE.any(),
        capacity: TOUCH_RISE.any(),
        title: "What hands can reach, on heat",
        only: Only::Any,
        lesson: "heat",
        first_move: "Guard it or mark it, and let it cool before hands come near.",
        gives: "A touch burns.",
    },
    Limit {
        margin: CUTOFF_MARGIN.any(),
        demand: PEAK_BATTERY_CURRENT.any(),
        capacity: COLD_CUTOFF_CURRENT.any(),
        title: "The battery in a cold start",
        only: Only::Electric,
        lesson: "drive",
        first_move: "Keep the pack warm, or start off gently.",
        gives: "The voltage sags below the cut-off, and the machine stops although the pack is full.",
    },
    Limit {
        margin: LABEL_MARGIN.any(),
        demand: PEAK_BATTERY_CURRENT.any(),
        capacity: LABEL_CURRENT.any(),
        title: "The battery by its label",
        only: Only::Electric,
        lesson: "drive",
        first_move: "Limit the current of the controller.",
        gives: "The pack is asked for more than its label allows: it heats, swells and ages.",
    },
    Limit {
        margin: WIRE_MARGIN.any(),
        demand: BATTERY_CURRENT.any(),
        capacity: WIRE_RATED_CURRENT.any(),
        title: "Wires and plugs",
        only: Only::Electric,
        lesson: "drive",
        first_move: "Shorten the run, then take thicker wire and larger plugs.",
        gives: "Wires or plugs get hotter than their insulation takes.",
    },
    Limit {
        margin: REGULATOR_MARGIN.any(),
        demand: REGULATOR_DEMAND.any(),
        capacity: REGULATOR_LIMIT.any(),
        title: "The regulator with every servo stalled",
        only: Only::Any,
        lesson: "drive",
        first_move: "Give the servos a supply of their own.",
        gives: "The voltage at the receiver dips, and it resets.",
    },
    Limit {
        margin: BEAM_MARGIN.any(),
        demand: BEAM_STRESS.any(),
        capacity: MATERIAL_STRENGTH.any(),
        title: "The beam under its load",
        only: Only::Any,
        lesson: "structure",
        first_move: "Make the section deeper, or the span shorter: both count more than the material.",
        gives: "The beam stays bent or breaks.",
    },
    Limit {
        margin: ACROSS_MARGIN.any(),
        demand: BEAM_STRESS.any(),
        capacity: STRENGTH_ACROSS.any(),
        title: "The printed beam across its layers",
        only: Only::Any,
        lesson: "structure",
        first_move: "Print it lying down, so that the strands run along it.",
        gives: "The part comes apart between its layers.",
    },
    Limit {
        margin: ROD_MARGIN.any(),
        demand: ROD_STRESS.any(),
        capacity: MATERIAL_STRENGTH.any(),
        title: "The rod under its pull",
        only: Only::Any,
        lesson: "structure",
        first_move: "Give the pull more section where it is thinnest.",
        gives: "The rod stays longer or breaks.",
    },
    Limit {
        margin: SLIP_MARGIN.any(),
        demand: JOINT_LOAD.any(),
        capacity: LEAST_SLIP_LOAD.any(),
        title: "The bolted joint before it slips",
        only: Only::Any,
        lesson: "structure",
        first_move: "Tighten to the maker's torque, and clean paint and oil off the faces.",
        gives: "The joint slips, and then works its bolts loose.",
    },
    Limit {
        margin: SHEAR_MARGIN.any(),
        demand: JOINT_LOAD.any(),
        capacity: JOINT_SHEAR_LOAD.any(),
        title: "The bolts once the joint has slipped",
        only: Only::Any,
        lesson: "structure",
        first_move: "Keep the joint from slipping; else more or thicker bolts.",
        gives: "The bolts shear off.",
    },
    Limit {
        margin: CLAMP_MARGIN.any(),
        demand: HIGHEST_CLAMP.any(),
        capacity: PROOF_LOAD.any(),
        title: "The bolt against its own clamp",
        only: Only::Any,
        lesson: "structure",
        first_move: "Tighten less, or take a higher class; the maker's torque table comes first.",
        gives: "Tightening alone may stretch the bolt for good.",
    },
];
