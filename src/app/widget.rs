//! Pieces that screens and blocks are put together from.

pub mod afresh;
pub mod choice;
mod delegate;
pub mod escaping;
pub mod field;
pub mod focusing;
pub mod formula;
pub mod inert;
pub mod kept;
pub mod mark;
pub mod pick;
pub mod picture;
pub mod pressable;
pub mod scrub;
pub mod stepping;
pub mod stretch;
pub mod symbol;
