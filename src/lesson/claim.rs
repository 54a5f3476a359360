//! What a lesson says of the rules, put down so that proofreading can run them and compare.

use super::block::{Direction, Tolerance};
use super::printed::Printed;
use crate::quantity::{Amount, AnyId};
use crate::sheet::Sheet;

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
        /// What it follows from.
        basis: Basis,
    },
    /// A number is printed in the text around.
    Prints {
        /// Which number.
        quantity: AnyId,
        /// How it is printed.
        printed: Printed,
        /// Which end of its range it is; nothing: the number itself.
        end: Option<End>,
        /// What it follows from.
        basis: Basis,
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

/// What a number follows from.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Basis {
    /// The example build it is true of; nothing: none.
    pub on: Option<&'static str>,
    /// That build with another parts list, or parts alone; nothing: its own list.
    pub parts: Option<Sheet>,
    /// Numbers that overrule the build's, or stand alone.
    pub given: Vec<(AnyId, Amount)>,
}

/// An end of the range of a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum End {
    /// The lower one.
    Low,
    /// The upper one.
    High,
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
