//! A step by which a number is changed: a share of it, or an amount.

use std::fmt;

use super::dimension::Dimension;
use super::entry::Entry;
use super::{catalogue, parse};

/// A step by which numbers are changed.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    size: Size,
    text: String,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Size {
    Share(f64),
    Amount { si: f64, dimension: Dimension },
}

/// A text that is no step.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error(
    "\"{0}\" is no step. Write a share up to 100 % such as \"1 %\", or an amount with its unit such as \"10 mm\"."
)]
pub struct StepError(pub String);

impl Step {
    /// So many percent of each number; more than −100 and at most 100, not zero.
    ///
    /// # Errors
    /// The share is zero, not finite or too large.
    pub fn percent(percent: f64) -> Result<Self, StepError> {
        let text = format!("{percent} %");
        if percent == 0.0 || !(percent > -100.0 && percent <= 100.0) {
            return Err(StepError(text));
        }
        Ok(Self { size: Size::Share(percent / 100.0), text })
    }

    /// Reads `1 %`, `-5 %`, `10 mm` or `200 g`.
    ///
    /// # Errors
    /// It is neither a share nor an amount with a unit, or it is zero.
    pub fn read(text: &str) -> Result<Self, StepError> {
        let wrong = || StepError(text.to_owned());
        let text = text.trim();
        if let Some(share) = text.strip_suffix('%') {
            let share = share.trim().replace('−', "-").parse().map_err(|_| wrong())?;
            return Self::percent(share).map_err(|_| wrong());
        }
        // A reading of temperature has a zero of its own, so no amount can be read as a step.
        let fits = |entry: &&Entry| {
            entry.is_given()
                && !matches!(entry.dimension, Dimension::Temperature | Dimension::Ratio)
        };
        let amount = catalogue::all()
            .iter()
            .filter(fits)
            .find_map(|entry| Some((parse(text, entry).ok()?.si, entry.dimension)));
        match amount {
            Some((si, dimension)) if si != 0.0 && si.is_finite() => {
                Ok(Self { size: Size::Amount { si, dimension }, text: text.to_owned() })
            }
            _ => Err(wrong()),
        }
    }

    /// The change of a quantity that is now `si`, in SI units; none when the step does not apply
    /// to it. A count goes by one, and one that is zero stays; a share of any other zero is that share of
    /// the usual range.
    pub fn of(&self, entry: &Entry, si: f64) -> Option<f64> {
        let change = match self.size {
            Size::Amount { si, dimension } if dimension == entry.dimension => si,
            Size::Amount { .. } => return None,
            Size::Share(_) if entry.whole && si == 0.0 => return None,
            Size::Share(share) if entry.whole => share.signum(),
            Size::Share(share) if si == 0.0 => share * (entry.usual.1 - entry.usual.0),
            Size::Share(share) => share * si.abs(),
        };
        (change != 0.0 && change.is_finite()).then_some(change)
    }

    /// Whether it is a share of each number.
    pub fn is_share(&self) -> bool {
        matches!(self.size, Size::Share(_))
    }
}

impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::AnyId;
    use crate::quantity::catalogue::{machine::*, running_gear::*};

    fn change(step: &str, id: impl Into<AnyId>, si: f64) -> Option<f64> {
        Step::read(step).unwrap().of(catalogue::find(id.into().name()).unwrap(), si)
    }

    #[test]
    fn shares_and_amounts() {
        assert_eq!(change("1 %", MASS, 6.4), Some(0.064));
        assert_eq!(change("−50 %", MASS, 6.4), Some(-3.2));
        assert_eq!(change("10 mm", TRACK_WIDTH, 0.09), Some(0.01));
        assert_eq!(change("10 mm", MASS, 6.4), None);
        assert_eq!(change("200 g", MASS, 6.4), Some(0.2));
        assert_eq!(change("1 %", TRACK_COUNT, 2.0), Some(1.0));
        assert_eq!(change("1 %", WHEEL_COUNT, 0.0), None);
        // Of nothing, one percent of the usual 0.3 m either way.
        assert_eq!(change("1 %", BALANCE_OFFSET, 0.0), Some(0.003));
        // Backwards is negative, and half more is forwards.
        assert_eq!(change("50 %", BALANCE_OFFSET, -0.022), Some(0.011));
        for wrong in ["", "0 %", "1", "mm", "100.1 %", "-100 %", "nan %", "0 mm", "1e999 %"] {
            assert!(Step::read(wrong).is_err(), "{wrong}");
        }
    }
}
