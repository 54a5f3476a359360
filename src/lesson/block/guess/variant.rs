//! What a guess asks when the reader tries again.
//!
//! ```toml
//! [[variant]]                          # as many as wanted, after everything else of the guess
//! question = "And with half the mass?"
//! why = "..."                          # optional: the guess's own without it
//! [[variant.choice]]                   # what the kind asks for: choices, or answer and replies, or
//! text = "..."                         # answer with slips, quantity and tolerance taken over
//! right = true
//! ```

use super::{Choice, Guess, GuessKind, Kind};
use crate::lesson::document::Span;
use crate::lesson::fields::Fields;
use crate::lesson::place::Report;

/// Another question on the same idea, answered in the same way.
#[derive(Debug, Clone, PartialEq)]
pub struct Variant {
    /// What is asked.
    pub question: Vec<Span>,
    /// How it is answered.
    pub kind: GuessKind,
    /// Shown after any answer; nothing: what the guess itself says.
    pub why: Option<Vec<Span>>,
}

/// What is asked in one try.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked<'a> {
    /// The question.
    pub question: &'a [Span],
    /// How it is answered.
    pub kind: &'a GuessKind,
    /// Shown after any answer.
    pub why: &'a [Span],
    /// How often this very question was asked before.
    lap: usize,
}

impl Guess {
    /// What is asked in a try, counted from zero: first the guess itself, then its variants in
    /// turn, then all of them again with their choices in another order.
    pub fn asked(&self, attempt: usize) -> Asked<'_> {
        let questions = self.variants.len() + 1;
        let lap = attempt / questions;
        match (attempt % questions).checked_sub(1).and_then(|place| self.variants.get(place)) {
            Some(variant) => Asked {
                question: &variant.question,
                kind: &variant.kind,
                why: variant.why.as_ref().unwrap_or(&self.why),
                lap,
            },
            None => Asked { question: &self.question, kind: &self.kind, why: &self.why, lap },
        }
    }
}

impl<'a> Asked<'a> {
    /// The choices in the order of this try, each with its place in the lesson; none if it is not
    /// answered by choosing.
    pub fn choices(&self) -> Vec<(usize, &'a Choice)> {
        let GuessKind::Choice(choices) = self.kind else { return Vec::new() };
        let mut choices: Vec<_> = choices.iter().enumerate().collect();
        if !choices.is_empty() {
            let (turns, by) = (self.lap / choices.len(), self.lap % choices.len());
            choices.rotate_left(by);
            if turns % 2 == 1 && choices.len() > 2 {
                choices.reverse();
            }
        }
        choices
    }
}

/// Reads the tables `[[variant]]` of a guess that is answered as `of` says.
pub(super) fn read(
    fields: &Fields,
    kind: Kind,
    of: &GuessKind,
    report: &mut Report,
) -> Vec<Variant> {
    let tables = fields.tables("a variant", "variant", report);
    let variant = |table: &Fields, report: &mut Report| {
        let question = table.required("question", report).map(|text| text.spans(report));
        let why = table.text("why", report).map(|text| text.spans(report));
        let kind = kind(table, Some(of), report);
        Some(Variant { question: question?, kind: kind?, why })
    };
    tables.iter().filter_map(|table| variant(table, report)).collect()
}
