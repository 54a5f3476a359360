//! Companions: builds shown beside the reader's own, for reading alone.

use std::collections::HashMap;
use std::path::Path;
use std::sync::LazyLock;

use crate::app::desk::Desk;
use crate::app::settings::Kept;
use crate::plot::Role;
use crate::sheet::file::{self, name_of};
use crate::sheet::{Sheet, demo};
use crate::study::Outcome;

/// How many companions there can be: with the reader's own, three builds can be told apart.
pub const MOST: usize = 2;

/// A build shown beside the reader's own.
#[derive(Debug, Clone)]
pub struct Companion {
    /// What it is called.
    pub name: String,
    /// The build.
    pub sheet: Sheet,
    /// What follows from it.
    pub outcome: Outcome,
    /// Its colour, stroke and shape.
    pub role: Role,
    /// Where it came from, to be found again; none for a copy.
    pub kept: Option<Kept>,
}

impl Companion {
    fn new(name: String, sheet: Sheet, kept: Option<Kept>) -> Self {
        let tally = sheet.tally();
        let outcome = Outcome::of(tally.givens, &tally.spreads, 0);
        Self { name, sheet, outcome, role: Role::First, kept }
    }

    /// A build read from a file.
    ///
    /// # Errors
    /// Why it cannot be read, in words.
    pub fn from_file(path: &Path) -> Result<Self, String> {
        let sheet = file::load(path).map_err(|error| error.to_string())?.sheet;
        Ok(Self::new(name_of(&sheet, Some(path)), sheet, Some(Kept::File(path.to_owned()))))
    }

    /// A build that comes with the program.
    pub fn example(id: &str) -> Option<&'static Self> {
        EXAMPLES.get(id)
    }

    /// The reader's own build as it leaves the desk: found again in its file or among the examples,
    /// if it is as it is there.
    pub fn left(desk: &Desk) -> Self {
        let file = || {
            let saved = !desk.history.is_changed_since_save();
            desk.path.clone().filter(|_| saved).map(Kept::File)
        };
        let example = demo::ALL.iter().find(|demo| demo.text == desk.sheet().text());
        let kept = example.map(|demo| Kept::Example(demo.id.to_owned())).or_else(file);
        Self::new(desk.name(), desk.sheet().clone(), kept)
    }

    /// The reader's own build as it is now, to change the own one and compare.
    pub fn copy(desk: &Desk) -> Self {
        Self::new(format!("{}, copy", desk.name()), desk.sheet().clone(), None)
    }
}

static EXAMPLES: LazyLock<HashMap<&'static str, Companion>> = LazyLock::new(|| {
    demo::ALL
        .iter()
        .filter_map(|demo| {
            let sheet = Sheet::read(demo.text).ok()?;
            let kept = Some(Kept::Example(demo.id.to_owned()));
            Some((demo.id, Companion::new(name_of(&sheet, None), sheet, kept)))
        })
        .collect()
});

/// A companion remembered that cannot be found again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Gone {
    /// Where it was.
    pub kept: Kept,
    /// Why it is not here, in words.
    pub why: String,
}

/// The companions on the desk.
#[derive(Debug, Clone, Default)]
pub struct Company {
    companions: Vec<Companion>,
    gone: Vec<Gone>,
    changes: u64,
}

impl Company {
    /// The companions remembered; what cannot be found again is told as gone.
    pub fn remembered(kept: &[Kept]) -> Self {
        let mut company = Self::default();
        company.seek(kept.to_vec());
        company
    }

    /// Sets beside what can be found again.
    fn seek(&mut self, kept: Vec<Kept>) {
        for kept in kept {
            let found = match &kept {
                Kept::File(path) => Companion::from_file(path),
                Kept::Example(id) => Companion::example(id)
                    .cloned()
                    .ok_or_else(|| format!("No example is called {id} any more.")),
            };
            match found {
                Ok(companion) => self.add(companion),
                Err(why) => self.gone.push(Gone { kept, why }),
            }
        }
    }

    /// Looks again for those that are gone.
    pub fn look_again(&mut self) {
        if self.has_room() {
            let gone = std::mem::take(&mut self.gone);
            self.seek(gone.into_iter().map(|gone| gone.kept).collect());
        }
    }

    /// Those that cannot be found again.
    pub fn gone(&self) -> &[Gone] {
        &self.gone
    }

    /// Looks no more for one that is gone.
    pub fn forget(&mut self, place: usize) {
        if place < self.gone.len() {
            self.gone.remove(place);
        }
    }

    /// All of them, the first first.
    pub fn all(&self) -> &[Companion] {
        &self.companions
    }

    /// Whether there is room for one more.
    pub fn has_room(&self) -> bool {
        self.companions.len() < MOST
    }

    /// Counts the changes; whatever is drawn from companions is stale when it differs.
    pub fn changes(&self) -> u64 {
        self.changes
    }

    /// Sets a build beside; without room, or when the same file or example is there already,
    /// nothing happens.
    pub fn add(&mut self, companion: Companion) {
        let known = |other: &Companion| companion.kept.is_some() && other.kept == companion.kept;
        if self.has_room() && !self.companions.iter().any(known) {
            self.gone.retain(|gone| companion.kept.as_ref() != Some(&gone.kept));
            self.companions.push(companion);
            self.changed();
        }
    }

    /// Takes one away.
    pub fn remove(&mut self, place: usize) {
        if place < self.companions.len() {
            self.companions.remove(place);
            self.changed();
        }
    }

    fn changed(&mut self) {
        for (companion, role) in self.companions.iter_mut().zip([Role::First, Role::Second]) {
            companion.role = role;
        }
        self.changes += 1;
    }

    /// What to remember of them; one that is gone may come back.
    pub fn kept(&self) -> Vec<Kept> {
        let here = self.companions.iter().filter_map(|companion| companion.kept.clone());
        here.chain(self.gone.iter().map(|gone| gone.kept.clone())).collect()
    }
}
