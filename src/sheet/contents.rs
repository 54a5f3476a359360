//! A build file as read.

use std::collections::BTreeMap;
use std::ops::Deref;
use std::sync::{Arc, OnceLock};

use super::parsed::Parsed;
use super::part::{Part, TrialMass};
use super::report::Report;
use super::sum::Reading;
use crate::quantity::AnyId;

/// A build file: its text, what it says, and what there is to say about it.
#[derive(Debug, Clone, Default)]
pub(super) struct Contents {
    pub text: String,
    /// Where things stand in the text without byte order mark; none where nobody has parsed it.
    pub parsed: Option<Parsed>,
    pub format: i64,
    pub entries: Entries,
    pub reports: Vec<Report>,
}

/// Where things stand follows from the text.
impl PartialEq for Contents {
    fn eq(&self, other: &Self) -> bool {
        self.text == other.text
            && self.format == other.format
            && self.entries == other.entries
            && self.reports == other.reports
    }
}

/// What a build file says.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Entries {
    pub name: String,
    pub note: String,
    pub numbers: BTreeMap<AnyId, String>,
    pub parts: Parts,
    pub trial: Option<TrialMass>,
}

/// The parts list, and each part in numbers once they were asked for: of thousands, an edit changes one,
/// and the build before it shares the others.
#[derive(Debug, Clone, Default)]
pub(super) struct Parts {
    list: Vec<Arc<Part>>,
    readings: OnceLock<Vec<Reading>>,
}

impl Parts {
    /// Each part in numbers, in the order of the list.
    pub fn readings(&self) -> &[Reading] {
        self.readings.get_or_init(|| self.list.iter().map(|part| Reading::of(part)).collect())
    }

    /// Changes a part; nothing when there is no such part.
    pub fn change<T>(&mut self, index: usize, change: impl FnOnce(&mut Part) -> T) -> Option<T> {
        let part = Arc::make_mut(self.list.get_mut(index)?);
        let done = change(part);
        if let Some(reading) = self.readings.get_mut().and_then(|all| all.get_mut(index)) {
            *reading = Reading::of(part);
        }
        Some(done)
    }

    /// Puts a part in before the one of that place, or at the end.
    pub fn insert(&mut self, index: usize, part: Arc<Part>) {
        let index = index.min(self.list.len());
        if let Some(readings) = self.readings.get_mut() {
            readings.insert(index, Reading::of(&part));
        }
        self.list.insert(index, part);
    }

    /// Takes a part out; nothing when there is no such part.
    pub fn remove(&mut self, index: usize) -> Option<Arc<Part>> {
        let there = index < self.list.len();
        if let Some(readings) = self.readings.get_mut().filter(|_| there) {
            readings.remove(index);
        }
        there.then(|| self.list.remove(index))
    }
}

/// The readings follow from the list.
impl PartialEq for Parts {
    fn eq(&self, other: &Self) -> bool {
        self.list == other.list
    }
}

impl Deref for Parts {
    type Target = [Arc<Part>];

    fn deref(&self) -> &[Arc<Part>] {
        &self.list
    }
}
