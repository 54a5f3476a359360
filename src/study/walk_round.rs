//! The walk-round: every limit checked at once, what gives first at the top.

mod limits;
mod moves;

use super::outcome::Outcome;
use super::words::{lacking, the};
use crate::quantity::catalogue::{self, balance::*, drive::*, pressure::*, turning::*};
use crate::quantity::{AnyId, Units};
use crate::rules::{Lack, Lacks, Value};
pub use limits::{LIMITS, Limit, Only};
pub use moves::{Moves, STEP, moves};

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
    NotKnown(Lacks),
    /// The numbers given cannot be meant, or have no answer, and why.
    Invalid(String),
    /// It is about other machines than this one.
    DoesNotApply,
}

impl Verdict {
    /// How it stands, in a word or two: `Holds`.
    pub const fn in_a_word(&self) -> &'static str {
        match self {
            Self::Gives => "Gives",
            Self::Doubtful => "In doubt",
            Self::Holds => "Holds",
            Self::NotKnown(_) => "Not known yet",
            Self::Invalid(_) => "No answer",
            Self::DoesNotApply => "Does not apply",
        }
    }
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
    /// Lowest first: what has no answer, then by margin, then what is not known or not meant.
    fn rank(&self) -> (u8, f64) {
        match self.verdict {
            Verdict::Invalid(_) => (0, 0.0),
            Verdict::NotKnown(_) => (2, 0.0),
            Verdict::DoesNotApply => (3, 0.0),
            _ => (1, self.margin.unwrap_or(f64::INFINITY)),
        }
    }
}

/// Checks every limit, the smallest margin first; what is not known and then what does not apply
/// stand last.
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
        for lack in of_this.iter() {
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
    let value = outcome.values.of(limit.margin);
    if value.si().is_none()
        && let Some(why) = limit.only.leaves_out(&outcome.values)
    {
        return finding(None, None, Verdict::DoesNotApply, why.to_owned());
    }
    match value {
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
        Value::Invalid(why) => {
            let why = why.to_string();
            finding(None, None, Verdict::Invalid(why.clone()), why)
        }
        Value::Known(known) => {
            let range = outcome.range(limit.margin);
            // To first order a range may reach below zero, where no margin is.
            let range = range.map(|range| (range.low.max(known.si.min(0.0)), range.high));
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
                shown(limit, low),
                shown(limit, high)
            ),
        ),
        _ if margin < 1.0 => (
            Verdict::Gives,
            format!(
                "It gives: {capacity} is only {} times {demand}. {}",
                shown(limit, margin),
                limit.gives
            ),
        ),
        _ => (
            Verdict::Holds,
            format!("It holds: {capacity} is {} times {demand}.", shown(limit, margin)),
        ),
    }
}

/// What the margin puts over the demand, in words.
fn capacity(limit: &Limit) -> String {
    let capacity = the(limit.capacity);
    if limit.margin == BALANCE_MARGIN.any() { format!("a sixth of {capacity}") } else { capacity }
}

/// A margin as it is shown everywhere: three significant figures.
pub fn shown(limit: &Limit, margin: f64) -> String {
    catalogue::find(limit.margin.name())
        .map_or_else(String::new, |entry| Units::default().show(entry, margin).to_string())
}
