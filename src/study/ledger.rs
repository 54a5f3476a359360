//! The ledger: the parts by mass, each with its share, and the next number when one is stepped.

use crate::quantity::catalogue::machine::{BALANCE_OFFSET, MASS};
use crate::quantity::{self, Entry, Id, Measure, Units, catalogue};
use crate::sheet::{Sheet, Tally};

/// How far a part is moved at a step, in metres, before it is fitted to the unit shown.
const NUDGE: f64 = 0.01;

/// A line of the ledger.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// The part, counted from zero in the order of the build.
    pub part: usize,
    /// Its mass in kilograms, if it can be read.
    pub mass: Option<f64>,
    /// Its share of all that is listed, zero to one.
    pub share: Option<f64>,
    /// How far forward of the middle of the contact it is in metres, if it has a place.
    pub forward: Option<f64>,
}

/// The parts with their shares.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Ledger {
    /// The parts in the order of the build.
    pub rows: Vec<Row>,
    /// What is stated beyond the parts, in kilograms, and its share; none when nothing is.
    pub unlisted: Option<(f64, f64)>,
    /// All of it in kilograms, without the trial mass.
    pub total: f64,
}

impl Ledger {
    /// The ledger of a build. Shares are of the stated mass where the parts weigh less, else of
    /// the parts; with the unlisted rest they add up to one.
    pub fn of(sheet: &Sheet, tally: &Tally) -> Self {
        let parts = tally.parts.mass;
        let stated = entry_of(MASS)
            .zip(sheet.number(MASS))
            .and_then(|(entry, text)| quantity::parse(text, entry).ok())
            .map(|amount| amount.si)
            .filter(|stated| *stated > parts * (1.0 + 5e-4));
        let total = stated.unwrap_or(parts);
        let share = |mass: f64| (total > 0.0).then(|| mass / total);
        let rows = tally.parts.each.iter().enumerate().map(|(part, numbers)| Row {
            part,
            mass: numbers.mass,
            share: numbers.mass.and_then(share),
            forward: numbers.at.map(|at| at[0]),
        });
        let rest = total - parts;
        let unlisted = stated.and(share(rest)).map(|share| (rest, share));
        Self { rows: rows.collect(), unlisted, total }
    }

    /// The parts from the heaviest to the lightest, those without a mass last.
    pub fn by_mass(&self) -> Vec<usize> {
        let mut order: Vec<usize> = self.rows.iter().map(|row| row.part).collect();
        let mass = |part: &usize| self.rows.get(*part).and_then(|row| row.mass).unwrap_or(-1.0);
        order.sort_by(|a, b| mass(b).total_cmp(&mass(a)));
        order
    }
}

fn entry_of<Q: Measure>(id: Id<Q>) -> Option<&'static Entry> {
    catalogue::find(id.any().name())
}

/// The text of a part's mass one step up or down, its spread kept; nothing when it is no number or
/// would fall below zero. A step is one in the second figure shown, or ten of them when coarse.
pub fn stepped_mass(text: &str, up: bool, coarse: bool, units: &Units) -> Option<String> {
    let entry = entry_of(MASS)?;
    let amount = quantity::parse(text, entry).ok()?;
    let unit = units.unit_for(entry, amount.si);
    let shown = unit.from_si(amount.si);
    let size = if shown == 0.0 { 1.0 } else { 10f64.powf(shown.abs().log10().floor() - 1.0) };
    let size = if coarse { 10.0 * size } else { size };
    let next = on_grid(shown, size, up);
    if next < 0.0 || next == shown {
        return None;
    }
    Some(written(entry, unit.to_si(next), amount.spread, units))
}

/// The text of a trial mass one step up or down, below zero where it takes away; nothing when it
/// is no number. A step is about a hundredth of the mass of the build, or ten of them when coarse.
pub fn stepped_trial(
    text: &str,
    (up, coarse): (bool, bool),
    of: f64,
    units: &Units,
) -> Option<String> {
    let entry = entry_of(MASS)?;
    let amount = quantity::parse(text, entry).ok()?;
    let unit = units.unit_for(entry, amount.si);
    let hundredth = unit.from_si(of / 100.0).abs();
    let size = if hundredth > 0.0 { 10f64.powf(hundredth.log10().round()) } else { 1.0 };
    let size = if coarse { 10.0 * size } else { size };
    let next = on_grid(unit.from_si(amount.si), size, up);
    let written = written(entry, unit.to_si(next), amount.spread, units);
    Some(if next > 0.0 { format!("+{written}") } else { written })
}

/// The text of a place one step forward or back, its spread kept; nothing when it is no number.
/// A step is about a centimetre, round in the unit shown.
pub fn nudged(text: &str, forward: bool, units: &Units) -> Option<String> {
    let entry = entry_of(BALANCE_OFFSET)?;
    let amount = quantity::parse(text, entry).ok()?;
    let unit = units.unit_for(entry, amount.si);
    let size = 10f64.powf(unit.from_si(NUDGE).abs().log10().round());
    let next = on_grid(unit.from_si(amount.si), size, forward);
    Some(written(entry, unit.to_si(next), amount.spread, units))
}

/// The next number up or down on a grid of that size.
fn on_grid(shown: f64, size: f64, up: bool) -> f64 {
    (shown / size + if up { 1.0 } else { -1.0 }).round() * size + 0.0
}

fn written(entry: &Entry, si: f64, spread: Option<f64>, units: &Units) -> String {
    match spread {
        Some(spread) => units.show_spread(entry, si, spread),
        None => quantity::field_text(entry, si, units),
    }
}
