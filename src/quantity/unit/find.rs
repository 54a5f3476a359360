//! Finding the unit a reader typed.

use super::{UNITS, Unit};
use crate::quantity::catalogue::nearest_of;
use crate::quantity::entry::Entry;

/// Why no unit was found.
#[derive(Debug, Clone, PartialEq)]
pub enum Missed {
    /// Capital and small letters mean different units here; these fit.
    Case(Vec<&'static str>),
    /// A unit, but of something else.
    Other(&'static Unit),
    /// No unit at all; perhaps this one was meant.
    Unknown(Option<&'static str>),
}

/// The unit of an entry's dimension with this spelling: `m2`, `N*m`, `KG`.
///
/// Capitals decide first; a spelling that fits one unit alone but for its capitals is taken too.
///
/// # Errors
/// The spelling fits no unit of the dimension, or several.
pub fn find(entry: &Entry, text: &str) -> Result<&'static Unit, Missed> {
    let own = || UNITS.iter().filter(|unit| is_of(unit, entry));
    // The symbols the program itself writes are looked up on every number shown.
    if let Some(unit) = own().find(|unit| unit.symbol == text) {
        return Ok(unit);
    }
    match matching(own(), text).as_slice() {
        [] => {}
        [unit] => return Ok(unit),
        several => return Err(Missed::Case(several.iter().map(|unit| unit.symbol).collect())),
    }
    let others = UNITS.iter().filter(|u| u.dimension != entry.dimension && !u.listed_only);
    Err(match matching(others, text).first() {
        Some(unit) => Missed::Other(unit),
        None => Missed::Unknown(nearest(own(), text)),
    })
}

/// Whether a text says percent.
pub fn is_percent(text: &str) -> bool {
    !matching(UNITS.iter().filter(|unit| unit.symbol == "%"), text).is_empty()
}

fn is_of(unit: &Unit, entry: &Entry) -> bool {
    let listed = || entry.metric.contains(&unit.symbol) || entry.imperial.contains(&unit.symbol);
    unit.dimension == entry.dimension && (!unit.listed_only || listed())
}

/// The units spelt exactly so, else those spelt so but for capitals.
fn matching(units: impl Iterator<Item = &'static Unit>, text: &str) -> Vec<&'static Unit> {
    let typed = normal(text);
    let small = typed.to_lowercase();
    let mut near = Vec::new();
    for unit in units {
        if spellings(unit).any(|known| is_same(&typed, &known)) {
            return vec![unit];
        }
        if spellings(unit).any(|known| is_same(&small, &known.to_lowercase())) {
            near.push(unit);
        }
    }
    near
}

fn spellings(unit: &'static Unit) -> impl Iterator<Item = String> {
    std::iter::once(&unit.symbol).chain(unit.aliases).map(|spelling| normal(spelling))
}

/// Whether a typed spelling is a known one; the dot of a product may be left out.
fn is_same(typed: &str, known: &str) -> bool {
    typed == known
        || (!typed.contains('·') && known.contains('·') && typed == known.replace('·', ""))
}

/// One way to write what can be written many ways: `N*m` and `N·m`, `m^2` and `m²`.
fn normal(text: &str) -> String {
    text.trim()
        .trim_end_matches('.')
        .replace(" per ", "/")
        .chars()
        .filter_map(|c| match c {
            '²' | '₂' => Some('2'),
            '³' => Some('3'),
            '⁴' => Some('4'),
            '^' => None,
            '*' | '×' | '⋅' | '•' | '.' | '-' => Some('·'),
            'µ' | 'μ' => Some('u'),
            'º' | '˚' => Some('°'),
            '′' | '’' => Some('\''),
            '″' | '”' => Some('"'),
            '⁄' | '∕' => Some('/'),
            c if c.is_whitespace() => None,
            c => Some(c),
        })
        .collect()
}

fn nearest(units: impl Iterator<Item = &'static Unit> + Clone, text: &str) -> Option<&'static str> {
    let known = || {
        units
            .clone()
            .flat_map(|u| std::iter::once(&u.symbol).chain(u.aliases).map(move |s| (*s, u)))
    };
    let spelling = nearest_of(text.trim(), known().map(|(spelling, _)| spelling))?;
    known().find(|(known, _)| *known == spelling).map(|(_, unit)| unit.symbol)
}
