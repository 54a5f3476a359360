//! What a curve does, in one sentence.

use super::{Curve, Relative, Sample, Scale};
use crate::quantity::{Entry, Shown, Units, catalogue};
use crate::study::moved::ratio_in_words;

/// How far a power may be from a round one and still be called by it.
const ROUND: f64 = 0.01;

impl Curve {
    /// What the curve does, in one sentence: "Halving the track width doubles the ground
    /// pressure (mean)." With a family, where its members lie; with a spread, how sure it is.
    /// Each quantity is said in one unit.
    pub fn summary(&self, units: &Units) -> String {
        let known: Vec<(f64, f64)> =
            self.samples.iter().filter_map(|(x, y)| Some((*x, (*y)?))).collect();
        let (Some(x_entry), Some(y_entry)) =
            (catalogue::find(self.x.name()), catalogue::find(self.y.name()))
        else {
            return String::new();
        };
        let units = self.in_one_unit(units, x_entry, y_entry, &known);
        let says = Says { curve: self, x_entry, y_entry, units: &units };
        let mut sentence = says.law(&known);
        let range = says.range();
        let family = says.family(range.is_some());
        for clause in range.into_iter().chain(family) {
            sentence = format!("{}; {clause}.", sentence.trim_end_matches('.'));
        }
        sentence
    }

    /// The units with one picked for each of the two quantities.
    fn in_one_unit(&self, units: &Units, x: &Entry, y: &Entry, known: &[(f64, f64)]) -> Units {
        let mut units = units.clone();
        let widest = self.from.abs().max(self.to.abs());
        let mut sizes: Vec<f64> = known.iter().map(|(_, y)| y.abs()).collect();
        sizes.sort_by(f64::total_cmp);
        // A spike at one end is not typical.
        let most = sizes.get(sizes.len() * 9 / 10).copied().unwrap_or_default();
        for (entry, size) in [(x, widest), (y, most)] {
            // Half of the largest is a size typical of all.
            let unit = units.unit_for(entry, size / 2.0);
            units.picks.insert(entry.id.name().to_owned(), unit.symbol.to_owned());
        }
        units
    }

    /// Where the curve is spoken of: at the build, or in the middle if that lies outside.
    fn spoken_of(&self) -> f64 {
        let here = self.point.map(|(x, _)| x).filter(|x| (self.from..=self.to).contains(x));
        here.unwrap_or(match self.scale {
            Scale::Linear => (self.from + self.to) / 2.0,
            Scale::Log => (self.from * self.to).sqrt(),
        })
    }
}

struct Says<'a> {
    curve: &'a Curve,
    x_entry: &'static Entry,
    y_entry: &'static Entry,
    units: &'a Units,
}

impl Says<'_> {
    fn show_x(&self, si: f64) -> Shown {
        self.units.show(self.x_entry, si).short()
    }

    fn show_y(&self, si: f64) -> Shown {
        self.units.show(self.y_entry, si)
    }

    /// How the build's own line runs.
    fn law(&self, known: &[(f64, f64)]) -> String {
        let (x, y) = (self.x_entry.label, self.y_entry.label);
        let (Some(&first), Some(&last)) = (known.first(), known.last()) else {
            let why = self.curve.gaps.first().map(|gap| gap.why.as_str()).unwrap_or_default();
            return format!("There is no {y} anywhere on this curve. {why}").trim_end().to_owned();
        };
        let size = known.iter().fold(0.0_f64, |most, (_, y)| most.max(y.abs()));
        let (low, high) = known
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), (_, y)| (a.min(*y), b.max(*y)));
        if high - low <= 1e-9 * size {
            return format!("The {x} makes no difference to the {y}.");
        }
        if let Some(says) = power(known).and_then(|power| power_law(power, x, y)) {
            return says;
        }
        let (start, end) = (self.show_x(first.0), self.show_x(last.0));
        let rises = last.1 > first.1;
        match turning(known) {
            Some((at, extreme, peak)) => format!(
                "Between {start} and {end} {x} the {y} goes from {} to {}, with its {} of {} at {}.",
                self.show_y(first.1),
                self.show_y(last.1),
                if peak { "highest" } else { "lowest" },
                self.show_y(extreme),
                self.show_x(at),
            ),
            None => format!(
                "As the {x} goes from {start} to {end}, the {y} {} from {} to {}.",
                if rises { "rises" } else { "falls" },
                self.show_y(first.1),
                self.show_y(last.1),
            ),
        }
    }

    /// Where the members of the family lie: "at 90 mm the mass takes it from 0.519 kPa (4 kg) to
    /// 1.04 kPa (8 kg)"; "there" where the place has been `said`.
    fn family(&self, said: bool) -> Option<String> {
        let family = self.curve.family.as_ref()?;
        let x = self.curve.spoken_of();
        let what = family.label();
        let at = if said { "there".to_owned() } else { format!("at {}", self.show_x(x)) };
        let name = |relative: &Relative| family.name(&relative.member, self.units);
        let mut found: Vec<(f64, String)> = Vec::new();
        let mut lost: Vec<String> = Vec::new();
        for relative in &self.curve.relatives {
            match value_at(&relative.samples, x) {
                Some(y) => found.push((y, name(relative))),
                None => lost.push(name(relative)),
            }
        }
        found.sort_by(|a, b| a.0.total_cmp(&b.0));
        let without = if lost.is_empty() {
            String::new()
        } else {
            format!(", and there is no number with {}", lost.join(", "))
        };
        let (Some(least), Some(most)) = (found.first(), found.last()) else {
            return Some(format!("{at} there is no number for any of the {what} lines"));
        };
        if most.0 - least.0 <= 1e-9 * most.0.abs().max(least.0.abs()) {
            return Some(format!("{at} the {what} makes no difference to it{without}"));
        }
        Some(format!(
            "{at} the {what} takes it from {} ({}) to {} ({}){without}",
            self.show_y(least.0),
            least.1,
            self.show_y(most.0),
            most.1
        ))
    }

    /// How sure the number is: "at 90 mm it is 790 to 870 Pa by the spread of the other numbers".
    fn range(&self) -> Option<String> {
        let x = self.curve.spoken_of();
        let known: Vec<(f64, (f64, f64))> =
            self.curve.band.iter().filter_map(|(at, ends)| Some((*at, (*ends)?))).collect();
        let lows: Vec<Sample> = known.iter().map(|(at, (low, _))| (*at, Some(*low))).collect();
        let highs: Vec<Sample> = known.iter().map(|(at, (_, high))| (*at, Some(*high))).collect();
        let (low, high) = (value_at(&lows, x)?, value_at(&highs, x)?);
        let range = self.units.show_range(self.y_entry, (low, (low + high) / 2.0, high));
        (high > low).then(|| {
            let at = self.show_x(x);
            format!("at {at} it is {range} by the spread of the other numbers")
        })
    }
}

/// The number at an x, between its two nearest samples.
fn value_at(samples: &[Sample], x: f64) -> Option<f64> {
    let right = samples.partition_point(|(at, _)| *at < x);
    let (xb, yb) = *samples.get(right)?;
    let Some((xa, ya)) = right.checked_sub(1).and_then(|left| samples.get(left)).copied() else {
        return yb;
    };
    let (ya, yb) = (ya?, yb?);
    Some(ya + (yb - ya) * (x - xa) / (xb - xa))
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
