//! Study: what is asked of the rules beyond one pass: how sure a number is, how it runs against
//! another, what else moved, and what gives first.

pub mod curve;
pub mod hundred_grams;
pub mod ledger;
pub mod moved;
mod outcome;
pub mod sketch;
pub mod spread;
pub mod walk_round;
mod words;

pub use curve::{Ask, Curve, Scale};
pub use hundred_grams::{Bought, hundred_grams};
pub use ledger::Ledger;
pub use moved::{Moved, moved};
pub use outcome::Outcome;
pub use sketch::Sketch;
pub use spread::{Range, Ranges};
pub use walk_round::{Finding, Verdict, walk_round};
