//! Numbers that answers are held against: the build's, or the author's, and how near is near enough.

use crate::lesson::fields::Text;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::{AnyId, Dimension, Entry};

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

impl Reference {
    /// The number, `live` giving those of the build; nothing if the build does not give it.
    pub fn si(self, live: impl Fn(AnyId) -> Option<f64>) -> Option<f64> {
        match self {
            Self::Live(id) => live(id),
            Self::Si(si) => Some(si),
        }
    }
}

impl Tolerance {
    /// Whether a number said is near enough to the true one, both in SI units.
    pub fn holds(self, said: f64, truth: f64) -> bool {
        (said - truth).abs() <= self.width(truth)
    }

    /// How far from a number is still near enough, in SI units.
    pub fn width(self, truth: f64) -> f64 {
        match self {
            Self::Share(share) => share * truth.abs(),
            Self::Si(width) => width,
        }
    }
}

/// `live:ground-pressure`, or a number with its unit.
pub(super) fn reference(text: &Text, entry: &Entry, report: &mut Report) -> Option<Reference> {
    let Some(name) = text.value.strip_prefix("live:") else {
        return known::amount(text, entry, report).map(Reference::Si);
    };
    let other = known::named(name, Wanted::Any, text.at, report)?;
    if other.dimension != entry.dimension {
        let fault = Fault::new(
            format!("\"{}\" is {}", other.id, other.dimension.in_words()),
            format!("{}, as \"{}\" is", entry.dimension.in_words(), entry.id),
        );
        report.add(text.at, fault);
        return None;
    }
    Some(Reference::Live(other.id))
}

pub(super) fn tolerance(text: &Text, entry: &Entry, report: &mut Report) -> Option<Tolerance> {
    let tolerance = match text.value.trim().strip_suffix('%') {
        Some(share) => share.trim().parse().ok().map(|share: f64| Tolerance::Share(share / 100.0)),
        // A reading has a zero of its own, so a difference cannot be read as one.
        None if entry.dimension == Dimension::Temperature => None,
        None => known::amount(text, entry, report).map(Tolerance::Si),
    };
    match tolerance {
        Some(Tolerance::Share(near) | Tolerance::Si(near)) if near > 0.0 && near.is_finite() => {}
        _ => {
            let fault = Fault::new(
                format!("\"{}\" is no tolerance", text.value),
                "a share of the answer such as \"5 %\", or an amount above zero",
            );
            report.add(text.at, fault);
            return None;
        }
    }
    tolerance
}
