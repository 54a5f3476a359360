//! Quantities: what the program can hold a number for, and how such numbers are read and written.

pub mod catalogue;
pub mod channel;
mod dimension;
mod entry;
mod id;
mod parse;
mod preference;
mod show;
mod step;
pub mod unit;

pub use dimension::*;
pub use entry::{Effort, Entry, Role, Topic};
pub use id::{AnyId, Id};
pub use parse::{Amount, NumberError, NumberFault, parse, parse_in};
pub use preference::{NoSuchUnit, UnitSet, Units, units_of, unusual};
pub use show::{Shown, field_text, show_plain};
pub use step::{Step, StepError};
pub use unit::{Unit, si_unit};
