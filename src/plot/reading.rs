//! Reading numbers off a plot: at one place, and as a table.

mod columns;

use super::axis::{Axis, nice_step};
use super::spec::{PlotSpec, Role};
use crate::quantity::{Shown, Units};
pub(super) use columns::at;
pub(super) use columns::plain;
pub use columns::{Table, figures, figures_of, table, table_of};

/// About how many places along a plot are read one after the other.
const STOPS: usize = 120;

/// What one line says at one x.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Whose line; none for a line of a family.
    pub role: Option<Role>,
    /// What the build, or the member of the family, is called.
    pub label: String,
    /// The number, in the unit of the y axis.
    pub y: f64,
    /// The number and its unit, as shown, with its range if it has one.
    pub text: String,
}

/// What every line says at an x in display units, the builds before the family; a line without a
/// number there says nothing.
pub fn readings(spec: &PlotSpec, x: f64) -> Vec<Reading> {
    let builds = spec.lines.iter().map(|line| (Some(line.role), &line.label, &line.runs));
    let relatives = spec.relatives.iter().map(|line| (None, &line.full, &line.runs));
    builds
        .chain(relatives)
        .filter_map(|(role, label, runs)| {
            let y = at(runs, x)?;
            let mut text = shown(&spec.y, y)?.to_string();
            if role == Some(Role::Yours)
                && let Some((low, high)) = columns::range_at(spec, x)
            {
                let (low, high) = (shown(&spec.y, low)?, shown(&spec.y, high)?);
                text = format!("{text} ({} to {})", low.number, high.number);
            }
            Some(Reading { role, label: label.clone(), y, text })
        })
        .collect()
}

/// What stands at an x, in words of about so many characters: "At track width 90 mm: 0.830 kPa".
/// The reader's own number is always said; names and other lines as far as there is room.
pub fn reading(spec: &PlotSpec, x: f64, room: usize) -> String {
    let at = shown(&spec.x, x).map_or_else(String::new, |shown| shown.to_string());
    let long = format!("At {} {at}: ", spec.x.entry.label);
    let said = readings(spec, x);
    let Some((own, others)) = said.split_first() else { return format!("{long}no answer") };
    let fits = |words: &String| words.chars().count() <= room;
    let named = format!("{long}{} {}", own.label, own.text);
    let plain = format!("{long}{}", own.text);
    let mut words = [named].into_iter().filter(|_| !others.is_empty()).chain([plain]).find(fits);
    let words = words.get_or_insert_with(|| format!("At {at}: {}", own.text));
    for other in others {
        let more = format!("{words}, {} {}", other.label, other.text);
        if !fits(&more) {
            break;
        }
        *words = more;
    }
    words.clone()
}

/// The places along a plot that are read one after the other, in display units: round numbers,
/// and the builds themselves.
pub fn stops(spec: &PlotSpec) -> Vec<f64> {
    let axis = &spec.x;
    let mut stops: Vec<f64> = if axis.log {
        (0..=STOPS).map(|stop| rounded(axis.value(stop as f64 / STOPS as f64))).collect()
    } else {
        let step = nice_step(axis.to - axis.from, STOPS);
        let step = if axis.entry.whole { step.max(1.0) } else { step };
        let (first, last) = ((axis.from / step).ceil(), (axis.to / step).floor());
        let count = (last - first).clamp(0.0, 2.0 * STOPS as f64) as usize;
        (0..=count).map(|stop| (first + stop as f64) * step).collect()
    };
    stops.extend(spec.dots.iter().map(|dot| dot.x));
    if !axis.entry.whole {
        stops.extend([axis.from, axis.to]);
    }
    stops.retain(|stop| (axis.from..=axis.to).contains(stop));
    stops.sort_by(f64::total_cmp);
    let near = 1e-9 * (axis.to - axis.from);
    stops.dedup_by(|a, b| (*a - *b).abs() <= near);
    stops
}

/// Three figures, as a person would write it.
fn rounded(number: f64) -> f64 {
    if number == 0.0 {
        return 0.0;
    }
    let size = 10_f64.powf(number.abs().log10().floor() - 2.0);
    (number / size).round() * size
}

fn shown(axis: &Axis, value: f64) -> Option<Shown> {
    Units::default().show_in(axis.entry, axis.unit.to_si(value), axis.unit.symbol).ok()
}
