//! Quantities: what the program can hold a number for, and how such numbers are read and written.

pub mod catalogue;
mod dimension;
mod entry;
mod id;
mod show;

pub use dimension::*;
pub use entry::{Entry, Role, Topic};
pub use id::{AnyId, Id};
pub use show::show_plain;
