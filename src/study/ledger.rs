//! The ledger: the parts by mass, each with its share, and the next number when one is stepped.

use crate::quantity::catalogue::machine::{BALANCE_OFFSET, MASS};
use crate::quantity::{self, Entry, Id, Measure, Unit, Units, catalogue};
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

/// The text of a part's mass one step up or down, its unit and its spread kept; nothing when it is
/// no number or would fall below zero. A step is a round fiftieth of it, or ten of them when coarse.
pub fn stepped_mass(text: &str, up: bool, coarse: bool, units: &Units) -> Option<String> {
    let typed = Typed::read(text, entry_of(MASS)?, units)?;
    let size = if typed.value == 0.0 { 1.0 } else { round_size(typed.value / 50.0) };
    let next = typed.stepped(if coarse { 10.0 * size } else { size }, up);
    (next >= 0.0 && next != typed.value).then(|| typed.written(next))
}

/// The text of a trial mass one step up or down, below zero where it takes away; nothing when it
/// is no number. A step is a round hundredth of the whole mass, or ten of them when coarse.
pub fn stepped_trial(
    text: &str,
    (up, coarse): (bool, bool),
    whole: f64,
    units: &Units,
) -> Option<String> {
    let typed = Typed::read(text, entry_of(MASS)?, units)?;
    let size = round_size(typed.unit.from_si(whole) / 100.0);
    let next = typed.stepped(if coarse { 10.0 * size } else { size }, up);
    let sign = if next > 0.0 { "+" } else { "" };
    Some(format!("{sign}{}", typed.written(next)))
}

/// The text of a place one step forward or back, its unit and its spread kept; nothing when it is
/// no number. A step is about a centimetre, round in the unit.
pub fn nudged(text: &str, forward: bool, units: &Units) -> Option<String> {
    let typed = Typed::read(text, entry_of(BALANCE_OFFSET)?, units)?;
    let next = typed.stepped(round_size(typed.unit.from_si(NUDGE)), forward);
    Some(typed.written(next))
}

/// A number in the unit it was typed in, or where that is of the other set, in the unit shown.
struct Typed {
    value: f64,
    spread: Option<f64>,
    unit: &'static Unit,
}

impl Typed {
    fn read(text: &str, entry: &Entry, units: &Units) -> Option<Self> {
        let amount = quantity::parse(text, entry).ok()?;
        let symbol = text.trim_end().rsplit(|c: char| !c.is_alphabetic()).next()?;
        let unit = quantity::units_of(entry)
            .into_iter()
            .find(|unit| unit.symbol == symbol && units.set.holds(unit))
            .unwrap_or_else(|| units.unit_for(entry, amount.si));
        let spread = amount.spread.map(|spread| unit.from_si(spread));
        Some(Self { value: unit.from_si(amount.si), spread, unit })
    }

    /// The next number up or down that is a multiple of the step.
    fn stepped(&self, size: f64, up: bool) -> f64 {
        let steps = self.value / size;
        // A number that is on the grid but for its last digit counts as on it.
        let next = if up { (steps + 1e-6).floor() + 1.0 } else { (steps - 1e-6).ceil() - 1.0 };
        next * size
    }

    fn written(&self, value: f64) -> String {
        let spread =
            self.spread.map_or_else(String::new, |spread| format!(" ± {}", digits(spread)));
        format!("{}{spread} {}", digits(value), self.unit.symbol)
    }
}

/// The number of the row 1, 2, 5, 10, 20 and so on that is nearest to a size, by ratio.
fn round_size(size: f64) -> f64 {
    let power = 10f64.powf(size.abs().max(1e-9).log10().floor());
    let lead = size.abs() / power;
    let lead = [1.0, 2.0, 5.0, 10.0]
        .into_iter()
        .min_by(|a: &f64, b: &f64| (lead / a).ln().abs().total_cmp(&(lead / b).ln().abs()))
        .unwrap_or(1.0);
    lead * power
}

/// A number to seven places behind the point, without zeros at its end.
fn digits(value: f64) -> String {
    let text = format!("{:.7}", value + 0.0);
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
