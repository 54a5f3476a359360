//! Which units a reader wants to see.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::catalogue;
use super::entry::Entry;
use super::id::AnyId;
use super::show::{self, Shown};
use super::unit::{self, Unit};

/// A family of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum UnitSet {
    /// Millimetres, kilograms, newtons.
    #[default]
    Metric,
    /// Inches, pounds, pounds of force.
    Imperial,
}

impl UnitSet {
    /// Both sets, metric first.
    pub const ALL: [Self; 2] = [Self::Metric, Self::Imperial];

    /// Whether a unit belongs to this set.
    pub fn holds(self, unit: &Unit) -> bool {
        match self {
            Self::Metric => unit.metric,
            Self::Imperial => unit.imperial,
        }
    }
}

/// The units a reader wants: a set, and single quantities shown otherwise.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Units {
    /// The set for everything not picked.
    pub set: UnitSet,
    /// Quantity id to unit symbol; a pick that does not fit the quantity is passed over.
    pub picks: BTreeMap<String, String>,
}

/// The program has no such unit for a quantity.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("The {label} cannot be shown in {symbol}. Take one of these: {choices}.")]
pub struct NoSuchUnit {
    /// What was asked for.
    pub symbol: String,
    /// The quantity's label.
    pub label: &'static str,
    /// The units it can be shown in.
    pub choices: String,
}

impl Units {
    /// One set, nothing picked.
    pub fn of(set: UnitSet) -> Self {
        Self { set, picks: BTreeMap::new() }
    }

    /// The unit for a value: the one picked, else the one that makes a number of handy size.
    pub fn unit_for(&self, entry: &Entry, si: f64) -> &'static Unit {
        self.picked(entry).unwrap_or_else(|| handy(entry, &ladder(entry, self.set), si))
    }

    fn picked(&self, entry: &Entry) -> Option<&'static Unit> {
        unit::find(entry, self.picks.get(entry.id.name())?).ok()
    }

    /// The units a value may be in as well where no unit is picked, large to small.
    pub(super) fn other_units(&self, entry: &Entry) -> Vec<&'static Unit> {
        match self.picked(entry) {
            Some(_) => Vec::new(),
            None => ladder(entry, self.set).into_iter().rev().collect(),
        }
    }

    /// Picks the next unit of the set for a quantity shown as `si`, after the last one none again.
    pub fn pick_next(&mut self, id: AnyId, si: f64) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        let own = |unit: &&'static Unit| self.set.holds(unit) && !unit.symbol.is_empty();
        let choices: Vec<&'static Unit> = units_of(entry).into_iter().filter(own).collect();
        let now = self.unit_for(entry, si);
        let place = choices.iter().position(|unit| *unit == now);
        match place.and_then(|place| choices.get(place + 1)).or(choices.first()) {
            Some(next) if choices.len() > 1 => {
                self.picks.insert(id.name().to_owned(), next.symbol.to_owned());
            }
            _ => {}
        }
    }

    /// A value in words, three significant figures: `830 Pa`.
    pub fn show(&self, entry: &Entry, si: f64) -> Shown {
        Shown::new(entry, si, self.unit_for(entry, si))
    }

    /// A value in a unit asked for by any of its spellings: `0.830 kPa`.
    ///
    /// # Errors
    /// The quantity cannot be shown in that unit.
    pub fn show_in(&self, entry: &Entry, si: f64, symbol: &str) -> Result<Shown, NoSuchUnit> {
        let unit = unit::find(entry, symbol).map_err(|_| NoSuchUnit {
            symbol: symbol.to_owned(),
            label: entry.label,
            choices: units_of(entry).iter().map(|u| u.symbol).collect::<Vec<_>>().join(", "),
        })?;
        Ok(Shown::new(entry, si, unit))
    }

    /// The ends of a range in the unit its middle value is shown in: `790 to 870 Pa`.
    pub fn show_range(&self, entry: &Entry, (low, si, high): (f64, f64, f64)) -> String {
        let unit = self.unit_for(entry, si);
        show::span(entry, low, high, unit)
    }

    /// A value and its half-width (SI) in one unit: `90.0 ± 2.0 mm`.
    pub fn show_spread(&self, entry: &Entry, si: f64, half_width: f64) -> String {
        let unit = self.unit_for(entry, si);
        show::with_spread(unit, si, half_width)
    }
}

/// The units the program takes of its own accord, small to large.
fn ladder(entry: &Entry, set: UnitSet) -> Vec<&'static Unit> {
    let own = match set {
        UnitSet::Metric => entry.metric,
        UnitSet::Imperial => entry.imperial,
    };
    if own.is_empty() {
        unit::of_dimension(entry.dimension).filter(|u| u.automatic && set.holds(u)).collect()
    } else {
        own.iter().filter_map(|symbol| unit::find(entry, symbol).ok()).collect()
    }
}

/// The unit of a ladder in which the shown number has a handy size, 1 to 999 where possible.
fn handy(entry: &Entry, ladder: &[&'static Unit], si: f64) -> &'static Unit {
    let reaches = |unit: &Unit, size: f64| {
        let value = unit.from_si(si).abs();
        // Rounding to three figures moves a number by half a hundredth of it at most.
        let is_near = (value - size).abs() < 0.01 * size;
        (if is_near { show::rounded(value) } else { value }) >= size
    };
    if si == 0.0 || !si.is_finite() {
        return homely(entry, ladder);
    }
    let place = ladder.iter().rposition(|unit| reaches(unit, 1.0)).unwrap_or(0);
    match ladder.get(place..).unwrap_or_default() {
        [unit, next, ..] if reaches(unit, 1000.0) && reaches(next, 0.1) => next,
        [unit, ..] => unit,
        [] => unit::si_unit(entry.dimension),
    }
}

/// The unit of a ladder that suits the quantity when its value says nothing.
fn homely(entry: &Entry, ladder: &[&'static Unit]) -> &'static Unit {
    let (low, high) = entry.usual;
    let middle = if low > 0.0 { (low * high).sqrt() } else { (low + high) / 2.0 };
    let middle = if middle == 0.0 { high } else { middle };
    if middle != 0.0 && middle.is_finite() {
        return handy(entry, ladder, middle);
    }
    ladder
        .iter()
        .min_by(|a, b| a.factor.log10().abs().total_cmp(&b.factor.log10().abs()))
        .copied()
        .unwrap_or_else(|| unit::si_unit(entry.dimension))
}

/// The units a reader may pick for a quantity: those that suit it first, metric before imperial.
pub fn units_of(entry: &Entry) -> Vec<&'static Unit> {
    let mut units: Vec<&'static Unit> = Vec::new();
    let mut add = |unit: &'static Unit| {
        if !units.contains(&unit) {
            units.push(unit);
        }
    };
    for set in UnitSet::ALL {
        let ladder = ladder(entry, set);
        add(homely(entry, &ladder));
        ladder.into_iter().for_each(&mut add);
    }
    unit::of_dimension(entry.dimension)
        .filter(|u| !u.listed_only && (!entry.whole || u.symbol.is_empty()))
        .for_each(add);
    units
}

/// The few units to name when a unit is missing: `kg, g or lb`; empty for a plain number.
pub(super) fn suggested(entry: &Entry) -> Vec<&'static str> {
    let mut symbols: Vec<&'static str> = Vec::new();
    for (set, most) in [(UnitSet::Metric, 2), (UnitSet::Imperial, 1)] {
        let ladder = ladder(entry, set);
        let first = homely(entry, &ladder);
        let rest = ladder.into_iter().filter(|u| *u != first);
        for unit in std::iter::once(first).chain(rest).take(most) {
            if !unit.symbol.is_empty() && !symbols.contains(&unit.symbol) {
                symbols.push(unit.symbol);
            }
        }
    }
    symbols
}

/// A hint when a value lies outside the usual range: the unit may be wrong.
pub fn unusual(entry: &Entry, si: f64, units: &Units) -> Option<String> {
    let (low, high) = entry.usual;
    if low == high || (low..=high).contains(&si) {
        return None;
    }
    let short = |si: f64| units.show(entry, si).short();
    Some(format!(
        "{} is outside the usual {} to {}; check the unit.",
        short(si),
        short(low),
        short(high)
    ))
}
