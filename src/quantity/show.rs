//! Printing numbers: three significant figures, plain digits, a proper minus.

use std::fmt;

use super::entry::Entry;
use super::preference::Units;
use super::unit::{self, Unit};

/// Significant figures of every number shown.
const FIGURES: usize = 3;
/// What stands in place of NaN and infinity.
const NOT_A_NUMBER: &str = "not a number";

/// A number as shown, apart from its unit so that a view can set them in different sizes.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// The digits, or words when there is no number.
    pub number: String,
    /// Its unit.
    pub unit: &'static Unit,
}

impl Shown {
    pub(super) fn new(entry: &Entry, si: f64, unit: &'static Unit) -> Self {
        let value = unit.from_si(si);
        if !value.is_finite() {
            let unit = unit::si_unit(super::Dimension::Ratio);
            return Self { number: NOT_A_NUMBER.to_owned(), unit };
        }
        let number = if entry.whole && unit.symbol.is_empty() && is_whole(value) {
            plain(value, 0)
        } else {
            digits(value, FIGURES)
        };
        Self { number, unit }
    }

    /// The same without zeros that only show precision: `80°` for `80.0°`.
    pub fn short(&self) -> Self {
        Self { number: trimmed(&self.number), unit: self.unit }
    }
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}{}", self.number, gap(self.unit), self.unit.symbol)
    }
}

/// A number in metric units without needless zeros: `0 kg`, `80°`.
pub fn show_plain(entry: &Entry, si: f64) -> String {
    Units::default().show(entry, si).short().to_string()
}

/// Text for an edit field, which [`parse`](super::parse) reads back: in the unit, and with as few
/// digits, as give the same value; five digits if no short number does.
///
/// Empty when there is no number.
pub fn field_text(entry: &Entry, si: f64, units: &Units) -> String {
    if !si.is_finite() {
        return String::new();
    }
    let exact = |unit: &Unit| {
        let value = unit.from_si(si);
        (1..=8)
            .map(|figures| rounded_to(value, figures))
            .find(|short| (short - value).abs() <= 1e-10 * value.abs())
    };
    let handy = units.unit_for(entry, si);
    let (number, unit) = std::iter::once(handy)
        .chain(units.other_units(entry))
        .find_map(|unit| exact(unit).map(|number| (number, unit)))
        .unwrap_or_else(|| (rounded_to(handy.from_si(si), 5), handy));
    let number = if number != 0.0 && !(1e-6..1e12).contains(&number.abs()) {
        format!("{number:e}")
    } else {
        // `+ 0.0` turns minus zero into zero.
        format!("{}", number + 0.0)
    };
    format!("{number}{}{}", gap(unit), unit.symbol)
}

/// Two ends in one unit.
pub(super) fn span(entry: &Entry, low: f64, high: f64, unit: &'static Unit) -> String {
    if !low.is_finite() || !high.is_finite() {
        return NOT_A_NUMBER.to_owned();
    }
    let (low, high) = (Shown::new(entry, low, unit), Shown::new(entry, high, unit));
    format!("{} to {high}", low.number)
}

/// A value and its half-width (SI), rounded to the same place: that of the value's third figure,
/// or of the half-width's first where that is finer.
pub(super) fn with_spread(unit: &Unit, si: f64, half_width: f64) -> String {
    let (value, spread) = (unit.from_si(si), half_width.abs() / unit.factor);
    if !value.is_finite() || !spread.is_finite() {
        return NOT_A_NUMBER.to_owned();
    }
    let place = match (value == 0.0, spread == 0.0) {
        (true, _) => place(spread, 2),
        (_, true) => place(value, FIGURES),
        _ => place(value, FIGURES).max(place(spread, 1)),
    };
    let in_reach = |x: f64| x == 0.0 || (-6..9).contains(&exponent(x, FIGURES));
    let digits = |x: f64| match usize::try_from(place) {
        _ if !in_reach(value) || !in_reach(spread) => digits(x, FIGURES),
        Ok(places) => plain(x, places),
        Err(_) => {
            let step = 10f64.powi(-place);
            plain((x / step).round() * step, 0)
        }
    };
    format!("{} ± {}{}{}", digits(value), digits(spread), gap(unit), unit.symbol)
}

/// What stands between a number and its unit: nothing before a degree sign, else a space.
fn gap(unit: &Unit) -> &'static str {
    if unit.symbol.is_empty() || unit.symbol == "°" { "" } else { " " }
}

fn is_whole(value: f64) -> bool {
    (value - value.round()).abs() < 1e-9 && value.abs() < 1e15
}

/// A value rounded as it is shown.
pub(super) fn rounded(value: f64) -> f64 {
    rounded_to(value, FIGURES)
}

/// The largest numbers stay as they are: rounding up leads out of what can be held.
fn rounded_to(value: f64, figures: usize) -> f64 {
    scientific(value, figures).parse().ok().filter(|short: &f64| short.is_finite()).unwrap_or(value)
}

fn scientific(value: f64, figures: usize) -> String {
    format!("{value:.*e}", figures - 1)
}

/// The power of ten of the first digit, after rounding.
fn exponent(value: f64, figures: usize) -> i32 {
    power_of(&scientific(value, figures))
}

/// The power of ten of a number written with one.
fn power_of(scientific: &str) -> i32 {
    scientific.split_once('e').and_then(|(_, power)| power.parse().ok()).unwrap_or(0)
}

/// How many places behind the decimal point the last of so many figures stands.
fn place(value: f64, figures: usize) -> i32 {
    figures as i32 - 1 - exponent(value, figures)
}

/// A finite value to so many significant figures.
fn digits(value: f64, figures: usize) -> String {
    if value == 0.0 {
        return "0".to_owned();
    }
    let text = scientific(value, figures);
    let power = power_of(&text);
    if (-6..9).contains(&power) {
        let places = usize::try_from(figures as i32 - 1 - power).unwrap_or(0);
        return plain(text.parse().unwrap_or(value), places);
    }
    let mantissa = text.split_once('e').map_or(text.as_str(), |(mantissa, _)| mantissa);
    format!("{}×10{}", mantissa.replace('-', "−"), raised(power))
}

fn raised(power: i32) -> String {
    const DIGITS: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    let figures = power.unsigned_abs().to_string();
    let sign = if power < 0 { "⁻" } else { "" };
    let raised: String =
        figures.bytes().filter_map(|b| DIGITS.get(usize::from(b.wrapping_sub(b'0')))).collect();
    format!("{sign}{raised}")
}

/// Plain digits with a proper minus, never minus zero, thin spaces from 10 000 up.
fn plain(value: f64, places: usize) -> String {
    let text = format!("{:.places$}", value.abs());
    let (whole, fraction) = match text.split_once('.') {
        Some((whole, fraction)) => (whole, Some(fraction)),
        None => (text.as_str(), None),
    };
    let is_zero = text.bytes().all(|b| matches!(b, b'0' | b'.'));
    let mut out = String::from(if value < 0.0 && !is_zero { "−" } else { "" });
    for (i, c) in whole.chars().enumerate() {
        if i > 0 && whole.len() > 4 && (whole.len() - i) % 3 == 0 {
            out.push('\u{2009}');
        }
        out.push(c);
    }
    if let Some(fraction) = fraction {
        out.push('.');
        out.push_str(fraction);
    }
    out
}

fn trimmed(number: &str) -> String {
    let (mantissa, power) = match number.find('×') {
        Some(at) => number.split_at(at),
        None => (number, ""),
    };
    if !mantissa.contains('.') {
        return number.to_owned();
    }
    format!("{}{power}", mantissa.trim_end_matches('0').trim_end_matches('.'))
}
