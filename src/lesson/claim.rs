//! What a lesson says of the rules, put down so that proofreading can run them and compare.

use super::block::{Direction, Tolerance};
use crate::quantity::AnyId;

/// Something a lesson says of the rules, with its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Claim {
    /// Line where it is said, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// What is said.
    pub says: Says,
}

/// What is said of the rules. Numbers in SI units.
#[derive(Debug, Clone, PartialEq)]
pub enum Says {
    /// A number is so much, as the right answer to a guess.
    Answer {
        /// Which number.
        quantity: AnyId,
        /// How much.
        si: f64,
        /// How near is near enough.
        tolerance: Tolerance,
        /// On which example build; nothing: on none.
        on: Option<&'static str>,
        /// Numbers that overrule the build's, or stand alone.
        given: Vec<(AnyId, f64)>,
    },
    /// A number moves so when another is moved.
    Moves {
        /// The number that is moved.
        moves: AnyId,
        /// Which way it is moved.
        by: Way,
        /// The number asked for.
        find: AnyId,
        /// Which way that one goes.
        answer: Direction,
    },
    /// A live number is so much on an example build: the words that stand for it elsewhere.
    Words {
        /// Which number.
        quantity: AnyId,
        /// How much.
        si: f64,
        /// How near is near enough, as a share.
        near: f64,
    },
    /// Two choices of a guess show different numbers.
    Apart {
        /// What the right one shows.
        right: AnyId,
        /// What a wrong one shows.
        wrong: AnyId,
    },
}

/// Which way a given number is moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Way {
    /// It grows.
    #[default]
    Up,
    /// It shrinks.
    Down,
    /// It gets further from zero, on whichever side it is.
    Out,
}
