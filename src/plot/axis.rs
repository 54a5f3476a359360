//! Axes: their ends, ticks and tick labels, in one display unit.

use crate::quantity::{Entry, Unit};

/// Ticks at most on a linear axis; steps of 1, 2 and 5 then leave at least three.
const MOST_TICKS: usize = 8;

/// A mark on an axis.
#[derive(Debug, Clone, PartialEq)]
pub struct Tick {
    /// Where, in the axis' unit.
    pub at: f64,
    /// What stands beside it; none for a minor tick.
    pub text: Option<String>,
}

/// One axis of a plot.
#[derive(Debug, Clone, PartialEq)]
pub struct Axis {
    /// What runs along it.
    pub entry: &'static Entry,
    /// Its one unit.
    pub unit: &'static Unit,
    /// Quantity and unit: `ground pressure (mean), kPa`.
    pub label: String,
    /// Whether equal steps multiply.
    pub log: bool,
    /// Lower end, in the unit.
    pub from: f64,
    /// Upper end, in the unit; always above `from`.
    pub to: f64,
    /// Its ticks, from low to high.
    pub ticks: Vec<Tick>,
}

impl Axis {
    /// An axis between ends in its unit; a logarithmic one must start above zero.
    pub fn new(entry: &'static Entry, unit: &'static Unit, log: bool, from: f64, to: f64) -> Self {
        let label = if unit.symbol.is_empty() {
            entry.label.to_owned()
        } else {
            format!("{}, {}", entry.label, unit.symbol)
        };
        let ticks = if log { log_ticks(from, to) } else { linear_ticks(from, to, entry.whole) };
        Self { entry, unit, label, log, from, to, ticks }
    }

    /// How far along the axis a value lies: 0 at the lower end, 1 at the upper.
    pub fn part(&self, value: f64) -> f64 {
        if self.log {
            (value.max(f64::MIN_POSITIVE) / self.from).ln() / (self.to / self.from).ln()
        } else {
            (value - self.from) / (self.to - self.from)
        }
    }

    /// A value in figures that keep their places while it moves along the axis.
    pub fn figure(&self, value: f64) -> String {
        tick_text(value, places((self.to - self.from) / 100.0))
    }

    /// The value so far along the axis.
    pub fn value(&self, part: f64) -> f64 {
        if self.log {
            self.from * (self.to / self.from).powf(part)
        } else {
            self.from + (self.to - self.from) * part
        }
    }
}

/// The smallest step of 1, 2 or 5 times a power of ten that takes at most so many steps.
pub(super) fn nice_step(span: f64, most: usize) -> f64 {
    nice_steps(span, most).find(|step| span / step <= most as f64 + 1e-9).unwrap_or(span)
}

/// Steps of 1, 2 and 5 times a power of ten, from one that is surely too small upwards.
fn nice_steps(span: f64, most: usize) -> impl Iterator<Item = f64> {
    let power = (span / most.max(1) as f64).log10().floor();
    [0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0].into_iter().map(move |nice| nice * 10_f64.powf(power))
}

fn linear_ticks(from: f64, to: f64, whole: bool) -> Vec<Tick> {
    let ends = |step: f64| ((from / step - 1e-6).ceil(), (to / step + 1e-6).floor());
    let count = |step: f64| ends(step).1 - ends(step).0 + 1.0;
    let step = nice_steps(to - from, MOST_TICKS)
        .filter(|step| !whole || *step >= 1.0)
        .find(|step| count(*step) <= MOST_TICKS as f64);
    let Some(step) = step.filter(|step| step.is_finite() && *step > 0.0) else {
        return Vec::new();
    };
    let places = places(step);
    (0..count(step).max(0.0) as usize)
        .map(|i| (ends(step).0 + i as f64) * step)
        .map(|at| Tick { at, text: Some(tick_text(at, places)) })
        .collect()
}

/// Decimal places that show every multiple of a step.
fn places(step: f64) -> usize {
    (-step.log10().floor()).clamp(0.0, 12.0) as usize
}

/// A tick's number: no needless digits, a proper minus, never minus zero.
fn tick_text(at: f64, places: usize) -> String {
    if at != 0.0 && (at.abs() >= 1e7 || (at.abs() < 1e-6 && places >= 6)) {
        return power_text(at);
    }
    let text = format!("{:.places$}", at.abs());
    let zero = text.bytes().all(|b| matches!(b, b'0' | b'.'));
    let (whole, fraction) =
        text.split_once('.').map_or((text.as_str(), None), |(a, b)| (a, Some(b)));
    let mut out = String::from(if at < 0.0 && !zero { "−" } else { "" });
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

fn power_text(at: f64) -> String {
    format!("{at:e}").replace('-', "−")
}

fn log_ticks(from: f64, to: f64) -> Vec<Tick> {
    if !(from > 0.0 && to > from) {
        return Vec::new();
    }
    let decades = (to / from).log10();
    // Less than a third of a decade has too few round numbers: mark it as a linear axis.
    if decades < 0.35 {
        return linear_ticks(from, to, false);
    }
    let named: &[u32] = if decades < 2.0 { &[1, 2, 5] } else { &[1] };
    let (first, last) = (from.log10().floor() as i32, to.log10().ceil() as i32);
    let stride = ((last - first) / 7 + 1).max(1);
    let within = |at: f64| at >= from * (1.0 - 1e-9) && at <= to * (1.0 + 1e-9);
    (first..=last)
        .flat_map(|power| (1..10).map(move |digit| (power, digit)))
        .filter_map(|(power, digit)| {
            let at = f64::from(digit) * 10_f64.powi(power);
            let text = named.contains(&digit) && (power - first) % stride == 0;
            within(at).then(|| Tick {
                at,
                text: text.then(|| tick_text(at, usize::try_from(-power).unwrap_or(0))),
            })
        })
        .collect()
}
