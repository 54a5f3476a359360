//! The live blocks: one file each.

mod calculator;
mod curve;
mod guess;

pub use calculator::Calculator;
pub use curve::Curve;
pub use guess::{Choice, Direction, Guess, GuessKind, Reference, Slip, SlipValue, Tolerance};
