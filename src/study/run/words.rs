//! Sentences with numbers in them, told in whatever units the reader wants.

use crate::quantity::{Entry, Units};

/// Words with numbers among them.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Words(Vec<Piece>);

#[derive(Debug, Clone, PartialEq)]
enum Piece {
    Text(String),
    Amount(&'static Entry, f64),
}

impl Words {
    /// Words to begin with.
    pub fn new(text: impl Into<String>) -> Self {
        Self(vec![Piece::Text(text.into())])
    }

    /// More words.
    pub fn text(mut self, text: impl Into<String>) -> Self {
        self.0.push(Piece::Text(text.into()));
        self
    }

    /// A number in SI units.
    pub fn amount(mut self, entry: &'static Entry, si: f64) -> Self {
        self.0.push(Piece::Amount(entry, si));
        self
    }

    /// The words, their numbers in these units.
    pub fn told(&self, units: &Units) -> String {
        let piece = |piece: &Piece| match piece {
            Piece::Text(text) => text.clone(),
            Piece::Amount(entry, si) => units.show(entry, *si).to_string(),
        };
        self.0.iter().map(piece).collect()
    }
}
