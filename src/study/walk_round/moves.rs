//! What would change a margin: the moves that help it most, and the measurement that would say more.

use super::Limit;
use crate::quantity::{AnyId, Dimension, Effort, Step, catalogue};
use crate::study::{Lever, Levers, Outcome};

/// How far each number is moved, in percent of itself.
pub const STEP: f64 = 10.0;
/// How many moves of a kind are told.
const TOLD: usize = 3;

/// What would change a margin. Every move is in the way that raises it.
#[derive(Debug, Clone, PartialEq)]
pub struct Moves {
    /// The moves that cost nothing, the strongest first.
    pub free: Vec<Lever>,
    /// Those that take parts or work, the strongest first.
    pub bought: Vec<Lever>,
    /// The given number from which most of the doubt in the margin comes, and its part of it,
    /// 0 to 1; none if no number that bears on it says how sure it is.
    pub doubt: Option<(AnyId, f64)>,
}

/// What would change the margin of a limit: each number moved by [`STEP`] percent, one at a time,
/// up or down as it helps; counts and temperatures, of which a percentage means nothing, are left
/// out. Empty for a margin that is not known.
pub fn moves(limit: &Limit, outcome: &Outcome) -> Moves {
    let tried =
        |percent| Step::percent(percent).map(|step| Levers::of(limit.margin, &step, outcome));
    let levers = [tried(STEP), tried(-STEP)].into_iter().flatten().flat_map(|it| it.levers);
    let mut helping: Vec<Lever> =
        levers.filter(|lever| has_a_share(lever) && helps(lever)).collect();
    helping.sort_by(|a, b| gain(b).total_cmp(&gain(a)));
    let by = |effort| {
        let mut told: Vec<Lever> = Vec::new();
        for lever in helping.iter().filter(|lever| lever.effort == effort) {
            // Where both ways help, or one way is impossible, the stronger stands for the number.
            if told.len() < TOLD && told.iter().all(|other| other.id != lever.id) {
                told.push(lever.clone());
            }
        }
        told
    };
    let doubt = outcome
        .range(limit.margin)
        .and_then(|range| range.contributions.first())
        .map(|most| (most.id, most.share));
    Moves { free: by(Effort::Free), bought: by(Effort::Bought), doubt }
}

fn gain(lever: &Lever) -> f64 {
    lever.after.as_ref().map_or(f64::NEG_INFINITY, |after| after - lever.before)
}

/// Whether a percentage of the number means something.
fn has_a_share(lever: &Lever) -> bool {
    let entry = catalogue::find(lever.id.name());
    !lever.counted && entry.is_some_and(|entry| entry.dimension != Dimension::Temperature)
}

fn helps(lever: &Lever) -> bool {
    gain(lever) > 0.0
}
