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
use std::hash::{BuildHasherDefault, Hasher};
use std::sync::LazyLock;

use super::entry::Entry;
use super::id::{AnyId, hash};

static ENTRIES: LazyLock<Vec<Entry>> = LazyLock::new(|| {
    [
        machine::ENTRIES,
        running_gear::ENTRIES,
        ground::ENTRIES,
        pressure::ENTRIES,
        impact::ENTRIES,
        impact::bounce::ENTRIES,
        impact::collision::ENTRIES,
        impact::pulse::ENTRIES,
        impact::support::ENTRIES,
        traction::ENTRIES,
        motion::ENTRIES,
        turning::ENTRIES,
        balance::ENTRIES,
        structure::material::ENTRIES,
        structure::section::ENTRIES,
        structure::joined::ENTRIES,
        structure::twist::ENTRIES,
        structure::beam::ENTRIES,
        structure::bolt::ENTRIES,
        drive::ENTRIES,
        drive::plate::ENTRIES,
        drive::supplied::ENTRIES,
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

/// Passes on the hash that an id carries already.
#[derive(Default)]
struct AsItIs(u64);

impl Hasher for AsItIs {
    fn finish(&self) -> u64 {
        self.0
    }

    fn write(&mut self, bytes: &[u8]) {
        self.0 = bytes.iter().fold(self.0, |hash, byte| hash.rotate_left(8) ^ u64::from(*byte));
    }

    fn write_u64(&mut self, hash: u64) {
        self.0 = hash;
    }
}

static BY_HASH: LazyLock<HashMap<u64, usize, BuildHasherDefault<AsItIs>>> =
    LazyLock::new(|| ENTRIES.iter().enumerate().map(|(i, e)| (e.id.hash(), i)).collect());

/// Every quantity, topic by topic.
pub fn all() -> &'static [Entry] {
    &ENTRIES
}

/// The place of a quantity in [`all`], for tables indexed by quantity.
pub fn index(id: AnyId) -> Option<usize> {
    BY_HASH.get(&id.hash()).copied()
}

/// The entry of that name.
pub fn find(name: &str) -> Option<&'static Entry> {
    BY_HASH.get(&hash(name)).map(|&i| &ENTRIES[i]).filter(|entry| entry.id.name() == name)
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
