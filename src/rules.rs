//! Rules: which physics function finds which quantity from which, in what order, and the working.

pub mod catalogue;
pub mod checks;
mod evaluate;
mod network;
mod rule;
mod value;
mod words;
mod working;

pub use evaluate::{Course, evaluate};
pub use network::{all_bearing_on, bears_on, used_by};
pub use rule::{Caution, Fault, Input, Inputs, Maybe, Need, Outcome, Rule};
pub use value::{Givens, Known, Lack, Lacks, Origin, Value, Values};
pub use words::{impossible, impossible_given as out_of_bounds};
pub use working::{Working, plain, symbols_tex, working};
