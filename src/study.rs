//! Study: what is asked of the rules beyond one pass: how sure a number is, how it runs against
//! another, what gets it where it is wanted, what moves it most, how builds compare, what else moved,
//! and what gives first.

mod changed;
pub mod curve;
pub mod difference;
pub mod hundred_grams;
pub mod ledger;
pub mod levers;
pub mod moved;
mod outcome;
pub mod run;
pub mod side_by_side;
pub mod sketch;
pub mod spread;
pub mod target;
pub mod walk_round;
mod words;

pub use curve::{Ask, Curve, Scale};
pub use difference::Difference;
pub use hundred_grams::{Bought, hundred_grams};
pub use ledger::Ledger;
pub use levers::{Lever, Levers};
pub use moved::{Moved, moved};
pub use outcome::Outcome;
pub use run::Run;
pub use side_by_side::SideBySide;
pub use sketch::Sketch;
pub use spread::{Range, Ranges};
pub use target::{Target, Wish};
pub use walk_round::{Finding, Verdict, walk_round};
