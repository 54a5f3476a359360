//! The catalogue of quantities: one uniform entry each, by topic.
#![expect(missing_docs, reason = "the entry beside each id says what it is")]

pub mod balance;
pub mod drive;
pub mod electrics;
pub mod ground;
pub mod heat;
pub mod impact;
pub mod machine;
pub mod motion;
pub mod pressure;
pub mod running_gear;
pub mod structure;
pub mod traction;
pub mod turning;
pub mod whole;

use std::collections::HashMap;
use std::sync::LazyLock;

use super::entry::Entry;
use super::id::AnyId;

static ENTRIES: LazyLock<Vec<Entry>> = LazyLock::new(|| {
    [
        machine::ENTRIES,
        running_gear::ENTRIES,
        ground::ENTRIES,
        pressure::ENTRIES,
        impact::ENTRIES,
        impact::collision::ENTRIES,
        impact::pulse::ENTRIES,
        impact::support::ENTRIES,
        traction::ENTRIES,
        motion::ENTRIES,
        turning::ENTRIES,
        balance::ENTRIES,
        structure::material::ENTRIES,
        structure::section::ENTRIES,
        structure::beam::ENTRIES,
        structure::bolt::ENTRIES,
        drive::ENTRIES,
        electrics::ENTRIES,
        heat::ENTRIES,
        heat::enclosure::ENTRIES,
        heat::surface::ENTRIES,
        heat::touch::ENTRIES,
        heat::brake::ENTRIES,
        whole::ENTRIES,
    ]
    .concat()
});

static BY_NAME: LazyLock<HashMap<&'static str, usize>> =
    LazyLock::new(|| ENTRIES.iter().enumerate().map(|(i, e)| (e.id.name(), i)).collect());

/// Every quantity, topic by topic.
pub fn all() -> &'static [Entry] {
    &ENTRIES
}

/// The place of a quantity in [`all`], for tables indexed by quantity.
pub fn index(id: AnyId) -> Option<usize> {
    BY_NAME.get(id.name()).copied()
}

/// The entry of that name.
pub fn find(name: &str) -> Option<&'static Entry> {
    BY_NAME.get(name).map(|&i| &ENTRIES[i])
}

/// The name nearest to a mistyped one, if any is near.
pub fn nearest(name: &str) -> Option<&'static str> {
    nearest_of(name, ENTRIES.iter().map(|e| e.id.name()))
}

/// The candidate nearest to a mistyped word, if any is near enough to be meant.
pub fn nearest_of<'a>(
    word: &str,
    candidates: impl IntoIterator<Item = &'a str>,
) -> Option<&'a str> {
    candidates
        .into_iter()
        .map(|candidate| (strsim::jaro_winkler(word, candidate), candidate))
        .filter(|(likeness, _)| *likeness > 0.8)
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, candidate)| candidate)
}
