//! Study: spreads, curves, targets, levers, builds side by side, what moved, the walk-round.

mod curve;
mod difference;
mod hundred_grams;
mod levers;
mod moved;
mod side_by_side;
mod spread;
mod target;
mod walk_round;

use heftwise::quantity::catalogue::{machine::*, running_gear::*};
use heftwise::rules::Givens;

/// Sandpiper, our own machine: two tracks, balance point in the middle.
fn sandpiper() -> Givens {
    let mut givens = Givens::default();
    givens.set(MASS, 6.4);
    givens.set(TRACK_COUNT, 2.0);
    givens.set(TRACK_WIDTH, 0.09);
    givens.set(CONTACT_LENGTH, 0.42);
    givens
}
