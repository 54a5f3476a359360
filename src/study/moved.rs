//! What else moved: the headline numbers that the last change changed.

use crate::quantity::{AnyId, catalogue};
use crate::rules::Values;

/// A change smaller than this part of the number is not a change.
const SAME: f64 = 1e-9;

/// A number that is not what it was.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moved {
    /// Which quantity.
    pub id: AnyId,
    /// Its number before, in SI units, if there was one.
    pub before: Option<f64>,
    /// Its number now, in SI units, if there is one.
    pub after: Option<f64>,
}

impl Moved {
    /// Now over before; none when either is lacking, zero, or of the other sign.
    pub fn ratio(&self) -> Option<f64> {
        let ratio = self.after? / self.before?;
        (ratio.is_finite() && ratio > 0.0).then_some(ratio)
    }

    /// The change in words: `1.8 times`, `down 12 %`, `now known`.
    pub fn in_words(&self) -> String {
        match (self.before, self.after) {
            (None, Some(_)) => "now known".to_owned(),
            (Some(_), None) => "no longer known".to_owned(),
            (Some(before), Some(after)) => match self.ratio() {
                Some(ratio) => ratio_in_words(ratio),
                None if after > before => "up".to_owned(),
                None => "down".to_owned(),
            },
            (None, None) => "not known".to_owned(),
        }
    }

    /// How far it moved, for ordering: whether a number came or went counts most.
    fn size(&self) -> f64 {
        match (self.before, self.after) {
            (Some(_), Some(_)) => self.ratio().map_or(f64::MAX, |ratio| ratio.ln().abs()),
            _ => f64::INFINITY,
        }
    }
}

/// A ratio in words: `1.8 times`, `up 12 %`, `a third`, `down 12 %`, `the same`.
///
/// The ratio must be positive and finite; anything else is `not known`.
pub fn ratio_in_words(ratio: f64) -> String {
    if !ratio.is_finite() || ratio <= 0.0 {
        return "not known".to_owned();
    }
    let near = |x: f64| (ratio / x - 1.0).abs() < 5e-3;
    let percent = (ratio - 1.0) * 100.0;
    match ratio {
        _ if percent.abs() < 0.05 => "the same".to_owned(),
        _ if near(2.0) => "twice".to_owned(),
        _ if near(0.5) => "half".to_owned(),
        _ if near(1.0 / 3.0) => "a third".to_owned(),
        _ if near(0.25) => "a quarter".to_owned(),
        r if r >= 1.5 => format!("{} times", two_figures(r)),
        r if r > 1.0 => format!("up {} %", two_figures(percent)),
        r if r >= 0.1 => format!("down {} %", two_figures(-percent)),
        r => format!("{} times less", two_figures(1.0 / r)),
    }
}

/// The ratio of another build's number to the reader's own, in words: `1.8 times yours`,
/// `12 % more than yours`, `half of yours`.
///
/// The ratio must be positive and finite; anything else is `not known`.
pub fn compared_in_words(ratio: f64) -> String {
    let words = ratio_in_words(ratio);
    if let Some(percent) = words.strip_prefix("up ") {
        return format!("{percent} more than yours");
    }
    if let Some(percent) = words.strip_prefix("down ") {
        return format!("{percent} less than yours");
    }
    match words.as_str() {
        "not known" => words,
        "the same" => "the same as yours".to_owned(),
        "half" | "a third" | "a quarter" => format!("{words} of yours"),
        _ if words.ends_with("less") => format!("{words} than yours"),
        _ => format!("{words} yours"),
    }
}

/// A positive number to two figures, no needless zeros.
fn two_figures(x: f64) -> String {
    let places = (1 - x.log10().floor() as i32).max(0) as usize;
    let text = format!("{x:.places$}");
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

/// The headline numbers that changed, came or went, the largest change first.
pub fn moved(before: &Values, after: &Values) -> Vec<Moved> {
    let mut moved: Vec<Moved> = catalogue::all()
        .iter()
        .filter(|entry| entry.headline)
        .map(|entry| Moved { id: entry.id, before: before.si(entry.id), after: after.si(entry.id) })
        .filter(|moved| match (moved.before, moved.after) {
            (Some(a), Some(b)) => (a - b).abs() > SAME * a.abs().max(b.abs()),
            (None, None) => false,
            _ => true,
        })
        .collect();
    moved.sort_by(|a, b| b.size().total_cmp(&a.size()));
    moved
}
