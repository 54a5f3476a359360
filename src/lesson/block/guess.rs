//! `guess`: a question answered before the number is shown, with the reader's own numbers.

use crate::lesson::document::Span;
use crate::quantity::AnyId;

/// A question answered before the number is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct Guess {
    /// Its name in the notebook, `pressure/which-end-sinks`: the lesson and the question's words,
    /// so that other changes to the lesson leave the reader's answers in place.
    pub key: String,
    /// What is asked.
    pub question: Vec<Span>,
    /// How it is answered.
    pub kind: GuessKind,
    /// Shown after any answer.
    pub why: Vec<Span>,
}

/// How a question is answered.
#[derive(Debug, Clone, PartialEq)]
pub enum GuessKind {
    /// One of several answers, of which exactly one is right.
    Choice(Vec<Choice>),
    /// Up, the same, or down.
    Direction {
        /// The right one.
        answer: Direction,
        /// What is said to the wrong ones.
        replies: Vec<(Direction, Vec<Span>)>,
    },
    /// A number.
    Number {
        /// The right number.
        answer: Reference,
        /// What the number measures, and so in which units it is typed.
        quantity: AnyId,
        /// How near is near enough.
        tolerance: Tolerance,
        /// Wrong numbers that a known mistake leads to.
        slips: Vec<Slip>,
    },
}

/// One answer to choose.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// The answer.
    pub text: Vec<Span>,
    /// Whether it is the right one.
    pub right: bool,
    /// The idea behind it: for a wrong answer, the wrong idea, named.
    pub idea: Option<String>,
    /// What is said to a reader who chose it; never empty for a wrong answer.
    pub reply: Vec<Span>,
}

/// Which way a number goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Direction {
    /// It grows.
    Up,
    /// It stays.
    Same,
    /// It shrinks.
    Down,
}

/// A number, or where in the build it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reference {
    /// The build's number.
    Live(AnyId),
    /// A number in SI units.
    Si(f64),
}

/// How near to the right number is near enough.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Tolerance {
    /// A share of the right number: 0.15 for 15 %.
    Share(f64),
    /// An amount in SI units.
    Si(f64),
}

/// A wrong number that a known mistake leads to.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// The number it leads to.
    pub value: SlipValue,
    /// The mistake, named.
    pub idea: String,
    /// What is said to a reader who made it.
    pub reply: Vec<Span>,
}

/// The number a mistake leads to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SlipValue {
    /// A number of its own.
    Is(Reference),
    /// So many times the right number.
    Times(f64),
}
