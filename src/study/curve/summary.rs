//! What a curve does, in one sentence.

use super::Curve;
use crate::quantity::{Units, catalogue};
use crate::study::moved::ratio_in_words;
use crate::study::words::label;

/// How far a power may be from a round one and still be called by it.
const ROUND: f64 = 0.01;

impl Curve {
    /// What the curve does, in one sentence: "Halving the track width doubles the ground
    /// pressure (mean)."
    pub fn summary(&self, units: &Units) -> String {
        let (x, y) = (label(self.x), label(self.y));
        let known: Vec<(f64, f64)> =
            self.samples.iter().filter_map(|(x, y)| Some((*x, (*y)?))).collect();
        let (Some(&first), Some(&last)) = (known.first(), known.last()) else {
            let why = self.gaps.first().map(|gap| gap.why.as_str()).unwrap_or_default();
            return format!("There is no {y} anywhere on this curve. {why}").trim_end().to_owned();
        };
        let size = known.iter().fold(0.0_f64, |most, (_, y)| most.max(y.abs()));
        let (low, high) = known
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), (_, y)| (a.min(*y), b.max(*y)));
        if high - low <= 1e-9 * size {
            return format!("The {x} makes no difference to the {y}.");
        }
        if let Some(says) = power(&known).and_then(|power| power_law(power, x, y)) {
            return says;
        }
        let (Some(x_entry), Some(y_entry)) =
            (catalogue::find(self.x.name()), catalogue::find(self.y.name()))
        else {
            return String::new();
        };
        let show_x = |si: f64| units.show(x_entry, si).short();
        let show_y = |si: f64| units.show(y_entry, si);
        let (start, end) = (show_x(first.0), show_x(last.0));
        let rises = last.1 > first.1;
        match turning(&known) {
            Some((at, extreme, peak)) => format!(
                "Between {start} and {end} {x} the {y} goes from {} to {}, with its {} of {} at {}.",
                show_y(first.1),
                show_y(last.1),
                if peak { "highest" } else { "lowest" },
                show_y(extreme),
                show_x(at),
            ),
            None => format!(
                "As the {x} goes from {start} to {end}, the {y} {} from {} to {}.",
                if rises { "rises" } else { "falls" },
                show_y(first.1),
                show_y(last.1),
            ),
        }
    }
}

/// Where a curve turns between its ends: the place, the number, and whether it is a peak.
fn turning(known: &[(f64, f64)]) -> Option<(f64, f64, bool)> {
    let (first, last) = (known.first()?.1, known.last()?.1);
    let highest = known.iter().max_by(|a, b| a.1.total_cmp(&b.1))?;
    let lowest = known.iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    let above = highest.1 - first.max(last);
    let below = first.min(last) - lowest.1;
    if above.max(below) <= 0.0 {
        return None;
    }
    Some(if above >= below { (highest.0, highest.1, true) } else { (lowest.0, lowest.1, false) })
}

/// The power of x that y follows all along the curve, if one does.
fn power(known: &[(f64, f64)]) -> Option<f64> {
    let known: Vec<(f64, f64)> =
        known.iter().copied().filter(|(x, y)| *x > 0.0 && *y > 0.0).collect();
    let (first, last) = (*known.first()?, *known.last()?);
    let middle = known[known.len() / 2];
    let slope = |a: (f64, f64), b: (f64, f64)| (b.1 / a.1).ln() / (b.0 / a.0).ln();
    let (whole, left, right) = (slope(first, last), slope(first, middle), slope(middle, last));
    let agree = (whole - left).abs() < ROUND && (whole - right).abs() < ROUND;
    (known.len() > 4 && whole.is_finite() && agree).then_some(whole)
}

fn power_law(power: f64, x: &str, y: &str) -> Option<String> {
    let near = |round: f64| (power - round).abs() < ROUND;
    if near(-1.0) {
        return Some(format!("Halving the {x} doubles the {y}."));
    }
    if near(0.5) {
        return Some(format!("Four times the {x} makes twice the {y}."));
    }
    if near(-0.5) {
        return Some(format!("Four times the {x} halves the {y}."));
    }
    if near(-2.0) {
        return Some(format!("Halving the {x} makes four times the {y}."));
    }
    if near(1.0) {
        return Some(format!("Doubling the {x} doubles the {y}."));
    }
    if near(2.0) {
        return Some(format!("Doubling the {x} makes four times the {y}."));
    }
    let ratio = 2_f64.powf(power);
    (power.abs() > ROUND).then(|| {
        let words = ratio_in_words(ratio);
        format!("Doubling the {x} changes the {y}: {words}.")
    })
}
