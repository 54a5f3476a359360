//! The build on the desk: its history, what the rules make of it, and the texts being typed.
//! The shell owns it; screens and blocks read it and hand back edits.

use std::collections::HashMap;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::PathBuf;

use crate::app::companion::Company;
use crate::quantity::{self, AnyId, Entry, Units, catalogue};
use crate::rules::{Origin, Value, catalogue::partner};
use crate::sheet::file::{Stamp, name_of};
use crate::sheet::{Edit, Gesture, History, Sheet, Tally};
use crate::study::{Moved, Outcome, moved::moved};

/// A text in a field that is not, or not yet, a number of the build.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// As typed.
    pub text: String,
    /// Why it is not a number, in words.
    pub error: Option<String>,
}

/// A number with all its figures and its half-width (SI) in one unit: `124.53 ± 2 mm`.
fn exact_with_spread(entry: &Entry, si: f64, spread: f64, units: &Units) -> String {
    let unit = units.unit_for(entry, si);
    if unit.offset != 0.0 {
        // The half-width of a temperature is no temperature.
        return units.show_spread(entry, si, spread);
    }
    let mut one = units.clone();
    one.picks.insert(entry.id.name().to_owned(), unit.symbol.to_owned());
    let number = quantity::field_text(entry, si, &one);
    let number = number.trim_end_matches(unit.symbol).trim_end();
    format!("{number} ± {}", quantity::field_text(entry, spread, &one))
}

/// The edit that enters a text: without a unit it is in `unit`, and without anything the number is
/// taken out.
///
/// # Errors
/// Why the text is no such number, in words.
pub fn entered(entry: &Entry, text: &str, unit: &'static quantity::Unit) -> Result<Edit, String> {
    if text.trim().is_empty() {
        return Ok(Edit::Clear { id: entry.id });
    }
    let (amount, text) = match quantity::parse(text, entry) {
        Ok(amount) => (amount, text.trim().to_owned()),
        Err(words) => match quantity::parse_in(text, entry, unit) {
            Ok(amount) => (amount, format!("{} {}", text.trim(), unit.symbol)),
            Err(_) => return Err(words.to_string()),
        },
    };
    if !entry.admits(amount.si) && entry.id != catalogue::machine::MASS.any() {
        return Err(crate::rules::out_of_bounds(entry));
    }
    Ok(Edit::Set { id: entry.id, text })
}

/// The build being worked on.
pub struct Desk {
    /// The build and its past.
    pub history: History,
    /// The file it was read from or last saved to.
    pub path: Option<PathBuf>,
    /// What that file held when last read or written.
    pub stamp: Option<Stamp>,
    /// What the parts and texts add up to.
    pub tally: Tally,
    /// What the rules make of it.
    pub outcome: Outcome,
    /// The builds beside it.
    pub company: Company,
    /// What the last change moved, whichever lesson it belongs to.
    pub moved: Vec<Moved>,
    /// What was known before the last change.
    before: Outcome,
    /// The gesture the last change belongs to.
    gesture: Option<String>,
    drafts: HashMap<String, Draft>,
    /// Counts the gestures that are over.
    settled: u64,
    revision: u64,
}

impl Desk {
    /// A build put on the desk: `path` and `stamp` say which file it was read from, if any.
    pub fn new(history: History, path: Option<PathBuf>, stamp: Option<Stamp>) -> Self {
        let tally = history.sheet().tally();
        let outcome = Outcome::of(tally.givens.clone(), &tally.spreads, 0);
        Self {
            history,
            path,
            stamp,
            before: outcome.clone(),
            tally,
            outcome,
            company: Company::default(),
            moved: Vec::new(),
            gesture: None,
            drafts: HashMap::new(),
            settled: 0,
            revision: 0,
        }
    }

    /// The build as it is now.
    pub fn sheet(&self) -> &Sheet {
        self.history.sheet()
    }

    /// The name of the build, or of its file when it has none.
    pub fn name(&self) -> String {
        name_of(self.sheet(), self.path.as_deref())
    }

    /// The name of the build as files may be called, without an ending.
    pub fn file_name(&self) -> String {
        let letter = |letter: char| if letter.is_alphanumeric() { letter } else { '-' };
        self.name().to_lowercase().chars().map(letter).collect()
    }

    /// What was known of a quantity before the last change.
    pub fn before(&self) -> &Outcome {
        &self.before
    }

    /// Counts the changes; whatever is drawn from the build is stale when it differs.
    pub fn revision(&self) -> u64 {
        self.revision
    }

    /// Changes the build. Changes of one `gesture`, such as a drag, count as one.
    ///
    /// # Errors
    /// The reason, in words, when the build does not take the change.
    pub fn apply(&mut self, edit: &Edit, gesture: Option<&str>) -> Result<(), String> {
        let token = gesture.map(|gesture| self.token(gesture));
        self.history.apply(edit, token).map_err(|refused| refused.to_string())?;
        let same = gesture.is_some() && self.gesture.as_deref() == gesture;
        if !same {
            self.before = self.outcome.clone();
        }
        self.gesture = gesture.map(str::to_owned);
        self.reckon();
        Ok(())
    }

    /// Takes the last change back; `false` when there is none.
    pub fn undo(&mut self) -> bool {
        let undone = self.history.undo();
        self.turned(undone)
    }

    /// Makes the change taken back last again; `false` when there is none.
    pub fn redo(&mut self) -> bool {
        let redone = self.history.redo();
        self.turned(redone)
    }

    fn turned(&mut self, turned: bool) -> bool {
        if turned {
            self.before = self.outcome.clone();
            self.gesture = None;
            self.drafts.clear();
            self.reckon();
        }
        turned
    }

    /// Puts another build in place of this one, as one change that can be undone.
    pub fn replace(&mut self, sheet: Sheet) {
        self.history.replace(sheet);
        self.turned(true);
    }

    /// Names a gesture for the history: the place, and which gesture in that place.
    fn token(&self, gesture: &str) -> Gesture {
        let mut hasher = DefaultHasher::new();
        (gesture, self.settled).hash(&mut hasher);
        Gesture(hasher.finish())
    }

    fn reckon(&mut self) {
        self.revision += 1;
        self.tally = self.sheet().tally();
        self.outcome = Outcome::of(self.tally.givens.clone(), &self.tally.spreads, self.revision);
        self.moved = moved(&self.before.values, &self.outcome.values);
    }

    /// The text being typed in a place, if it is not what the build says.
    pub fn draft(&self, place: &str) -> Option<&Draft> {
        self.drafts.get(place)
    }

    /// The text of a quantity's field when nothing is being typed in it.
    pub fn text_of(&self, entry: &Entry, units: &Units) -> String {
        let typed = self.sheet().number(entry.id);
        if let Some(typed) = typed
            && (units.set == quantity::UnitSet::Metric || quantity::parse(typed, entry).is_err())
            && !units.picks.contains_key(entry.id.name())
        {
            return typed.to_owned();
        }
        let Value::Known(known) = self.outcome.values.of(entry.id) else { return String::new() };
        match known.origin {
            Origin::Given => match self.tally.spreads.get(&entry.id).copied() {
                Some(spread) => units.show_spread(entry, known.si, spread),
                None => quantity::field_text(entry, known.si, units),
            },
            _ => match self.tally.spreads.get(&entry.id) {
                Some(spread) => units.show_spread(entry, known.si, *spread),
                None => units.show(entry, known.si).to_string(),
            },
        }
    }

    /// Takes what was typed in a place: into the build if it is a number, else into the draft.
    pub fn typed(&mut self, place: &str, id: AnyId, text: String, units: &Units) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        let unit = units.unit_for(entry, self.outcome.values.si(id).unwrap_or(0.0));
        self.drafts.retain(|other, draft| other == place || draft.error.is_some());
        let error = match entered(entry, &text, unit) {
            Ok(edit) => self.apply(&edit, Some(place)).err(),
            Err(words) => Some(words),
        };
        self.drafts.insert(place.to_owned(), Draft { text, error });
    }

    /// Sets a number from a slider, a step or a drag.
    pub fn moved_to(&mut self, place: &str, id: AnyId, si: f64, units: &Units) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        let (low, high) = entry.possible;
        let si = si.clamp(low, high);
        if !entry.admits(si) {
            return;
        }
        // A number that was measured stays as doubtful as it was.
        let text = match self.tally.spreads.get(&id) {
            Some(spread) if self.is_measured(id, *spread) => units.show_spread(entry, si, *spread),
            _ => quantity::field_text(entry, si, units),
        };
        self.enter(place, id, text);
    }

    /// Whether the doubt of a number came with the number: entered with it, or, where the mass adds
    /// up from parts, with the trial mass, which leaves it more doubtful than the parts are.
    fn is_measured(&self, id: AnyId, spread: f64) -> bool {
        let parts = self.tally.parts.mass_spread;
        let weighed = id == catalogue::machine::MASS.any() && spread > parts * (1.0 + 1e-9);
        self.sheet().number(id).is_some() || weighed
    }

    /// Takes a row of a table of presets; what was being typed gives way to it.
    pub fn preset(&mut self, edit: &Edit) {
        self.drafts.clear();
        // A build open for reading alone takes nothing, and its fields say so.
        let _ = self.apply(edit, None);
    }

    /// Takes an answer into the build, as a change of its own; a number that was measured stays as
    /// doubtful as it was.
    pub fn take(&mut self, place: &str, id: AnyId, si: f64, units: &Units) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        let spread = self.tally.spreads.get(&id).filter(|spread| self.is_measured(id, **spread));
        let text = match spread {
            Some(spread) => exact_with_spread(entry, si, *spread, units),
            None => quantity::field_text(entry, si, units),
        };
        self.settled();
        self.enter(place, id, text);
        self.settled();
    }

    /// Enters a text that a control made, or says at its place why not.
    fn enter(&mut self, place: &str, id: AnyId, text: String) {
        self.drafts.remove(place);
        if let Err(error) = self.apply(&Edit::Set { id, text: text.clone() }, Some(place)) {
            self.drafts.insert(place.to_owned(), Draft { text, error: Some(error) });
        }
    }

    /// Takes a number out of the build; a found one is found again.
    pub fn clear(&mut self, id: AnyId) {
        self.preset(&Edit::Clear { id });
    }

    /// Puts these numbers back to those of the saved build, as one change.
    pub fn put_back(&mut self, ids: &[AnyId]) {
        let edits = self.way_back(ids);
        self.settled();
        self.drafts.clear();
        for edit in &edits {
            // A build open for reading alone has nothing to put back.
            let _ = self.apply(edit, Some("put-back"));
        }
        self.settled();
    }

    /// Whether any of these numbers differs from the saved build.
    pub fn has_way_back(&self, ids: &[AnyId]) -> bool {
        !self.way_back(ids).is_empty()
    }

    /// The edits that put numbers back to those of the saved build: what is to go first, because
    /// entering one of a pair takes the other out.
    fn way_back(&self, ids: &[AnyId]) -> Vec<Edit> {
        let Some(saved) = self.history.saved() else { return Vec::new() };
        let now = self.sheet();
        let partners = ids.iter().filter_map(|id| partner(*id)).flat_map(|p| [p.one, p.other]);
        let (mut edits, mut entered) = (Vec::new(), Vec::new());
        for id in ids.iter().copied().chain(partners) {
            match saved.number(id) {
                then if then == now.number(id) => {}
                Some(text) => entered.push(Edit::Set { id, text: text.to_owned() }),
                None => edits.push(Edit::Clear { id }),
            }
        }
        edits.append(&mut entered);
        // What is changed of a mass that adds up from parts is kept as a trial mass.
        if ids.contains(&catalogue::machine::MASS.any()) && saved.trial() != now.trial() {
            edits.push(saved.trial().map_or(Edit::ClearTrial, |trial| Edit::SetTrial {
                mass: trial.mass.clone(),
                at: trial.at.clone(),
            }));
        }
        edits
    }

    /// Ends a gesture: the next change is one of its own.
    pub fn settled(&mut self) {
        self.gesture = None;
        self.settled += 1;
        self.drafts.retain(|_, draft| draft.error.is_some());
    }
}
