//! Rules: which physics function finds which quantity from which, in what order, and the working.

pub mod catalogue;
pub mod checks;
mod evaluate;
mod rule;
mod value;
mod words;
mod working;

pub use evaluate::{Course, all_bearing_on, bears_on, evaluate, used_by};
pub use rule::{Caution, Fault, Input, Inputs, Maybe, Need, Outcome, Rule};
pub use value::{Givens, Known, Lack, Lacks, Origin, Value, Values};
pub use words::{impossible, impossible_given as out_of_bounds};
pub use working::{Working, plain, working};
