//! Lessons: Markdown read into a document, the grammar of the live blocks, and proofing.

mod block;
mod document;
mod problem;

pub use block::{
    Calculator, Choice, Curve, Direction, Guess, GuessKind, Reference, Slip, SlipValue, Tolerance,
};
pub use document::{AlertKind, Alignment, Block, BlockKind, Heading, Lesson, Span, Style, Target};
pub use problem::Problem;
