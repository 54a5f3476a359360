//! The walk-round: every limit checked at once, what gives first at the top.

use super::outcome::Outcome;
use super::words::{lacking, the};
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
    running_gear::CONTACT_LENGTH,
    structure::*,
    turning::*,
};
use crate::rules::{Lack, Value};

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
    /// The lesson that explains it.
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
        lesson: "pressure",
        first_move: "Make the contact wider or longer, or take mass off.",
        gives: "The machine goes in deeper than 20 mm, even with the load in the middle.",
    },
    Limit {
        margin: LOW_END_MARGIN.any(),
        demand: LOW_END_PRESSURE.any(),
        capacity: HOLDING_PRESSURE.any(),
        title: "The ground under the low end",
        lesson: "pressure",
        first_move: "Move mass towards the middle of the contact; it costs nothing.",
        gives: "The end that the load leans towards goes in first.",
    },
    Limit {
        margin: BALANCE_MARGIN.any(),
        demand: PRESSURE_OFFSET.any(),
        capacity: CONTACT_LENGTH.any(),
        title: "Before one end lifts",
        lesson: "pressure",
        first_move: "Move mass towards the middle of the contact, or lower on a slope.",
        gives: "The light end of the contact carries nothing, so the rest presses harder.",
    },
    Limit {
        margin: SIDE_SLOPE_MARGIN.any(),
        demand: SIDE_SLOPE_DEMAND.any(),
        capacity: STABILITY_FACTOR.any(),
        title: "Over the side on a side slope",
        lesson: "pressure",
        first_move: "Set the heavy parts lower, or the tracks further apart.",
        gives: "The machine tips over to the low side.",
    },
    Limit {
        margin: FRONT_LIFT_MARGIN.any(),
        demand: CLIMB_DEMAND.any(),
        capacity: FRONT_LIFT_LIMIT.any(),
        title: "Over backwards in climbing",
        lesson: "pressure",
        first_move: "Move mass forward or lower, or start off more gently.",
        gives: "The front lifts and the machine goes over backwards.",
    },
    Limit {
        margin: NOSE_OVER_MARGIN.any(),
        demand: BRAKE_DEMAND.any(),
        capacity: NOSE_OVER_LIMIT.any(),
        title: "Over the nose in braking",
        lesson: "pressure",
        first_move: "Move mass back or lower, or brake more gently.",
        gives: "The rear lifts and the machine goes over its nose.",
    },
    Limit {
        margin: TURN_MARGIN.any(),
        demand: DRIVING_SPEED.any(),
        capacity: TURN_SPEED_LIMIT.any(),
        title: "Speed in the turn",
        lesson: "pressure",
        first_move: "Slow down before the turn, or make it wider.",
        gives: "The machine tips over or slides out of the turn.",
    },
    Limit {
        margin: FRAME_MARGIN.any(),
        demand: PEAK_IMPACT_FORCE.any(),
        capacity: FRAME_STRENGTH.any(),
        title: "The weakest mount in a stop",
        lesson: "impact",
        first_move: "Give the stop more distance: a softer or longer bumper.",
        gives: "The weakest mount bends or breaks.",
    },
    Limit {
        margin: SHOCK_MARGIN.any(),
        demand: PEAK_DECELERATION_G.any(),
        capacity: SHOCK_LIMIT.any(),
        title: "The most delicate part in a stop",
        lesson: "impact",
        first_move: "Set the delicate part on something soft, or give the stop more distance.",
        gives: "The most delicate part sees more shock than it may.",
    },
    Limit {
        margin: PUSH_MARGIN.any(),
        demand: DRIVING_RESISTANCE.any(),
        capacity: PEAK_PUSH.any(),
        title: "Before the motors stall",
        lesson: "pressure",
        first_move: "Gear it lower; it costs speed but no money.",
        gives: "The motors stand still and turn all they draw into heat.",
    },
    Limit {
        margin: MOTOR_HEAT_MARGIN.any(),
        demand: WINDING_RISE.any(),
        capacity: ALLOWED_RISE.any(),
        title: "The winding of the motor, working without rest",
        lesson: "pressure",
        first_move: "Gear it lower, or rest it: heat goes with the square of the current.",
        gives: "The winding passes its limit: magnets weaken and insulation chars.",
    },
    Limit {
        margin: CONTROLLER_MARGIN.any(),
        demand: CHIP_RISE.any(),
        capacity: CHIP_ALLOWED_RISE.any(),
        title: "The chips of the controller",
        lesson: "pressure",
        first_move: "Give the heat a metal path out of the box.",
        gives: "The controller shuts off or burns out.",
    },
    Limit {
        margin: TOUCH_MARGIN.any(),
        demand: HOTTEST_RISE.any(),
        capacity: TOUCH_RISE.any(),
        title: "What hands can reach, on heat",
        lesson: "pressure",
        first_move: "Guard it or mark it, and let it cool before hands come near.",
        gives: "A touch burns.",
    },
    Limit {
        margin: CUTOFF_MARGIN.any(),
        demand: PEAK_BATTERY_CURRENT.any(),
        capacity: COLD_CUTOFF_CURRENT.any(),
        title: "The battery in a cold start",
        lesson: "pressure",
        first_move: "Keep the pack warm, or start off gently.",
        gives: "The voltage sags below the cut-off, and the machine stops although the pack is full.",
    },
    Limit {
        margin: LABEL_MARGIN.any(),
        demand: PEAK_BATTERY_CURRENT.any(),
        capacity: LABEL_CURRENT.any(),
        title: "The battery by its label",
        lesson: "pressure",
        first_move: "Limit the current of the controller.",
        gives: "The pack is asked for more than its label allows: it heats, swells and ages.",
    },
    Limit {
        margin: WIRE_MARGIN.any(),
        demand: BATTERY_CURRENT.any(),
        capacity: WIRE_RATED_CURRENT.any(),
        title: "Wires and plugs",
        lesson: "pressure",
        first_move: "Shorten the run, then take thicker wire and larger plugs.",
        gives: "Wires or plugs get hotter than their insulation takes.",
    },
    Limit {
        margin: REGULATOR_MARGIN.any(),
        demand: REGULATOR_DEMAND.any(),
        capacity: REGULATOR_LIMIT.any(),
        title: "The regulator with every servo stalled",
        lesson: "pressure",
        first_move: "Give the servos a supply of their own.",
        gives: "The voltage at the receiver dips, and it resets.",
    },
    Limit {
        margin: BEAM_MARGIN.any(),
        demand: BEAM_STRESS.any(),
        capacity: MATERIAL_STRENGTH.any(),
        title: "The beam under its load",
        lesson: "impact",
        first_move: "Make the section deeper, or the span shorter: both count more than the material.",
        gives: "The beam stays bent or breaks.",
    },
    Limit {
        margin: ACROSS_MARGIN.any(),
        demand: BEAM_STRESS.any(),
        capacity: STRENGTH_ACROSS.any(),
        title: "The printed beam across its layers",
        lesson: "impact",
        first_move: "Print it lying down, so that the strands run along it.",
        gives: "The part comes apart between its layers.",
    },
    Limit {
        margin: ROD_MARGIN.any(),
        demand: ROD_STRESS.any(),
        capacity: MATERIAL_STRENGTH.any(),
        title: "The rod under its pull",
        lesson: "impact",
        first_move: "Give the pull more section where it is thinnest.",
        gives: "The rod stays longer or breaks.",
    },
    Limit {
        margin: SLIP_MARGIN.any(),
        demand: JOINT_LOAD.any(),
        capacity: LEAST_SLIP_LOAD.any(),
        title: "The bolted joint before it slips",
        lesson: "impact",
        first_move: "Tighten to the maker's torque, and clean paint and oil off the faces.",
        gives: "The joint slips, and then works its bolts loose.",
    },
    Limit {
        margin: SHEAR_MARGIN.any(),
        demand: JOINT_LOAD.any(),
        capacity: JOINT_SHEAR_LOAD.any(),
        title: "The bolts once the joint has slipped",
        lesson: "impact",
        first_move: "Keep the joint from slipping; else more or thicker bolts.",
        gives: "The bolts shear off.",
    },
    Limit {
        margin: CLAMP_MARGIN.any(),
        demand: HIGHEST_CLAMP.any(),
        capacity: PROOF_LOAD.any(),
        title: "The bolt against its own clamp",
        lesson: "impact",
        first_move: "Tighten less, or take a higher class; the maker's torque table comes first.",
        gives: "Tightening alone may stretch the bolt for good.",
    },
];

/// How a limit stands.
#[derive(Debug, Clone, PartialEq)]
pub enum Verdict {
    /// More is asked than it can take.
    Gives,
    /// How sure the numbers are leaves it open.
    Doubtful,
    /// It can take what is asked.
    Holds,
    /// These given quantities are lacking.
    NotKnown(Vec<Lack>),
    /// The numbers given cannot be meant, or have no answer, and why.
    Invalid(String),
}

/// One limit, checked.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// Which limit.
    pub limit: &'static Limit,
    /// The margin, if known.
    pub margin: Option<f64>,
    /// The lower and upper end of the margin, if its range is known.
    pub range: Option<(f64, f64)>,
    /// How it stands.
    pub verdict: Verdict,
    /// How it stands, in plain words.
    pub sentence: String,
}

impl Finding {
    /// Lowest first: what has no answer, then by margin, then what is not known.
    fn rank(&self) -> (u8, f64) {
        match self.verdict {
            Verdict::Invalid(_) => (0, 0.0),
            Verdict::NotKnown(_) => (2, 0.0),
            _ => (1, self.margin.unwrap_or(f64::INFINITY)),
        }
    }
}

/// Checks every limit, the smallest margin first and what is not known last.
pub fn walk_round(outcome: &Outcome) -> Vec<Finding> {
    let mut findings: Vec<Finding> = LIMITS.iter().map(|limit| check(limit, outcome)).collect();
    findings.sort_by(|a, b| {
        let ((rank, margin), (other_rank, other)) = (a.rank(), b.rank());
        rank.cmp(&other_rank).then(margin.total_cmp(&other))
    });
    findings
}

/// How many limits are not known yet and for want of which numbers, each number once; nothing if
/// every limit is known.
pub fn not_known(findings: &[Finding]) -> Option<String> {
    let mut unknown = 0;
    let mut lacks: Vec<Lack> = Vec::new();
    for finding in findings {
        let Verdict::NotKnown(of_this) = &finding.verdict else { continue };
        unknown += 1;
        for lack in of_this {
            if !lacks.contains(lack) {
                lacks.push(lack.clone());
            }
        }
    }
    let limits = if unknown == 1 { "limit is" } else { "limits are" };
    (unknown > 0).then(|| format!("{unknown} {limits} not known yet. {}", lacking(&lacks)))
}

fn check(limit: &'static Limit, outcome: &Outcome) -> Finding {
    let finding =
        |margin, range, verdict, sentence| Finding { limit, margin, range, verdict, sentence };
    match outcome.values.of(limit.margin) {
        Value::Missing(lacks) => {
            finding(None, None, Verdict::NotKnown(lacks.clone()), lacking(lacks))
        }
        Value::Invalid(_) if nothing_asked(limit, outcome) => {
            let sentence = if limit.margin == BALANCE_MARGIN.any() {
                "The load bears down exactly in the middle, so no end is near to lifting."
            } else {
                "Nothing is asked of it, so it holds."
            };
            finding(None, None, Verdict::Holds, sentence.to_owned())
        }
        Value::Invalid(why) => finding(None, None, Verdict::Invalid(why.clone()), why.clone()),
        Value::Known(known) => {
            let range = outcome.range(limit.margin).map(|range| (range.low, range.high));
            let upset = outcome.ranges.upset_by(limit.margin).first().copied();
            let (verdict, sentence) = judge(limit, known.si, range, upset);
            finding(Some(known.si), range, verdict, sentence)
        }
    }
}

/// A margin without an end because nothing is asked, which is as good as can be: a load exactly in
/// the middle, level ground, standing still, driving straight on.
fn nothing_asked(limit: &Limit, outcome: &Outcome) -> bool {
    let si = |id| outcome.values.si(id);
    let straight = match (si(LEFT_SPEED.any()), si(RIGHT_SPEED.any())) {
        (Some(left), Some(right)) => left == right,
        _ => si(STEER_ANGLE.any()) == Some(0.0),
    };
    let level = si(limit.demand) == Some(0.0) && si(limit.capacity).is_some();
    let pushed_on = limit.margin == PUSH_MARGIN.any()
        && si(limit.demand).is_some_and(|resistance| resistance < 0.0);
    level || pushed_on || (limit.margin == TURN_MARGIN.any() && straight)
}

fn judge(
    limit: &Limit,
    margin: f64,
    range: Option<(f64, f64)>,
    upset: Option<AnyId>,
) -> (Verdict, String) {
    let (demand, capacity) = (the(limit.demand), capacity(limit));
    if let Some(given) = upset {
        let sentence = format!(
            "It may give: within how sure you are of {}, there is no answer at all.",
            the(given)
        );
        return (Verdict::Doubtful, sentence);
    }
    match range {
        Some((low, high)) if low < 1.0 && high >= 1.0 => (
            Verdict::Doubtful,
            format!(
                "It may hold or give: how sure the numbers are puts the margin anywhere from {} to {}.",
                figures(low.max(0.0)),
                figures(high)
            ),
        ),
        _ if margin < 1.0 => (
            Verdict::Gives,
            format!(
                "It gives: {capacity} is only {} times {demand}. {}",
                figures(margin),
                limit.gives
            ),
        ),
        _ => {
            (Verdict::Holds, format!("It holds: {capacity} is {} times {demand}.", figures(margin)))
        }
    }
}

/// What the margin puts over the demand, in words.
fn capacity(limit: &Limit) -> String {
    let capacity = the(limit.capacity);
    if limit.margin == BALANCE_MARGIN.any() { format!("a sixth of {capacity}") } else { capacity }
}

/// A margin to three figures or two places, whichever is shorter.
fn figures(margin: f64) -> String {
    match margin {
        m if m >= 100.0 => format!("{m:.0}"),
        m if m >= 10.0 => format!("{m:.1}"),
        m if m >= 0.1 => format!("{m:.2}"),
        m => format!("{m:.3}"),
    }
}
