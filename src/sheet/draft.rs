//! Making one change: to what the build says and to its text, which then have to agree.

use std::ops::Range;
use std::sync::Arc;

use toml_edit::Value;

use super::contents::{Contents, Entries};
use super::edit::{Edit, EditRefused};
use super::parsed::Parsed;
use super::part::{Axis, Part, PartField, TrialMass};
use super::read::{self, BYTE_ORDER_MARK};
use super::report::{Position, Report};
use super::write::{self, listed, quoted};
use super::{FORMAT, LARGEST, sum};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::{Amount, AnyId, catalogue};
use crate::rules::catalogue::partner;

/// The contents after one change.
pub(super) fn changed(contents: &Contents, edit: &Edit) -> Result<Contents, EditRefused> {
    if contents.format > FORMAT {
        return Err(EditRefused::ReadOnly);
    }
    let body = contents.text.strip_prefix(BYTE_ORDER_MARK);
    let mut draft = Draft {
        text: body.unwrap_or(&contents.text).to_owned(),
        parsed: contents.parsed.clone(),
        reports: &contents.reports,
        is_as_read: true,
        entries: contents.entries.clone(),
    };
    draft.make(edit)?;
    if body.is_some() {
        draft.text.insert(0, BYTE_ORDER_MARK);
    }
    if draft.text.len() > LARGEST {
        return Err(EditRefused::TooLarge);
    }
    let Draft { text, parsed, is_as_read, entries, .. } = draft;
    if is_as_read {
        let reports = contents.reports.clone();
        let changed = Contents { text, parsed, format: contents.format, entries, reports };
        debug_assert!(
            read::read(&changed.text).is_ok_and(|read| read == changed),
            "the text says something else after {edit:?}"
        );
        return Ok(changed);
    }
    match read::read(&text) {
        // What was made of the parts that did not change goes on with them.
        Ok(read) if read.entries == entries => Ok(Contents { entries, ..read }),
        _ => Err(EditRefused::Layout(
            "The file is laid out in a way this change cannot be written into. Change it in a \
             text editor, then open the build again."
                .to_owned(),
        )),
    }
}

/// A build being changed: its text without byte order mark, and what it says.
struct Draft<'a> {
    text: String,
    /// Where things stand in the text; none when its lines have changed since it was parsed.
    parsed: Option<Parsed>,
    /// What was reported of the text when it was read.
    reports: &'a [Report],
    /// Whether text was written over text and nothing else, so that all of it still says and
    /// reports what it did, but for the entries changed here.
    is_as_read: bool,
    entries: Entries,
}

/// A value by its place in the document, and whether it is text.
type Stood = (Range<usize>, bool);

fn stood(value: &Value) -> Option<Stood> {
    Some((value.span()?, value.is_str()))
}

impl Draft<'_> {
    /// What the text was parsed to.
    fn parsed(&mut self) -> Result<&Parsed, EditRefused> {
        let parsed = self.parsed.take().map_or_else(|| write::parse(&self.text), Ok)?;
        Ok(self.parsed.insert(parsed))
    }

    /// The text with its document, which says where things stand in it.
    fn written(&mut self) -> Result<write::Written<'_>, EditRefused> {
        let fresh = self.parsed.take().filter(Parsed::is_fresh);
        let parsed = fresh.map_or_else(|| write::parse(&self.text), Ok)?;
        Ok(write::Written { text: &self.text, document: self.parsed.insert(parsed).document() })
    }

    /// Writes a change into the text.
    fn write(
        &mut self,
        change: impl FnOnce(write::Written<'_>) -> Result<String, EditRefused>,
    ) -> Result<(), EditRefused> {
        let text = change(self.written()?)?;
        if text != self.text {
            (self.text, self.parsed, self.is_as_read) = (text, None, false);
        }
        Ok(())
    }

    /// Writes text over a value.
    fn write_over(&mut self, (value, is_text): Stood, literal: &str) -> Result<(), EditRefused> {
        let now = self.parsed()?.now(&value);
        let old = self.text.get(now.clone()).ok_or_else(|| write::odd(literal))?;
        if old == literal {
            return Ok(());
        }
        let is_like_it = is_text && !old.contains('\n') && !self.is_reported_after(now.end);
        self.text = write::splice(&self.text, now, literal);
        match self.parsed.as_mut().filter(|_| is_like_it) {
            Some(parsed) => parsed.write_over(&value, literal.len()),
            None => (self.parsed, self.is_as_read) = (None, false),
        }
        Ok(())
    }

    /// Whether something is reported further on in the line that holds a byte.
    fn is_reported_after(&self, byte: usize) -> bool {
        if self.reports.is_empty() {
            return false;
        }
        let at = Position::of(&self.text, byte);
        let mut places = self.reports.iter().map(|report| report.position);
        places.any(|place| place.line == at.line && place > at)
    }

    /// Writes text over an entry, or adds the entry.
    fn put(
        &mut self,
        under: write::Under<'_>,
        key: &str,
        literal: &str,
    ) -> Result<(), EditRefused> {
        match write::value(self.parsed()?.document(), under, key)?.and_then(stood) {
            Some(value) => self.write_over(value, literal),
            None => self.write(|written| write::put(written, under, key, literal)),
        }
    }

    /// Writes text over an entry of a part, or adds the entry.
    fn put_in_part(&mut self, index: usize, key: &str, literal: &str) -> Result<(), EditRefused> {
        match write::part_value(self.parsed()?.document(), index, key)?.and_then(stood) {
            Some(value) => self.write_over(value, literal),
            None => self.write(|written| write::put_in_part(written, index, key, literal)),
        }
    }

    fn make(&mut self, edit: &Edit) -> Result<(), EditRefused> {
        match edit {
            Edit::Set { id, text } => self.set(*id, text),
            Edit::Clear { id } => self.clear(*id),
            Edit::Preset { values } => values.iter().try_for_each(|(id, text)| self.set(*id, text)),
            Edit::Name(name) => {
                self.entries.name.clone_from(name);
                self.words("name", name)
            }
            Edit::Note(note) => {
                self.entries.note.clone_from(note);
                self.words("note", note)
            }
            Edit::AddPart(part) => self.add(part),
            Edit::SetPart { index, field, text } => self.set_part(*index, *field, text),
            Edit::UnplacePart { index } => self.unplace(*index),
            Edit::DuplicatePart { index } => self.duplicate(*index),
            Edit::RemovePart { index } => self.remove(*index),
            Edit::MovePart { from, to } => self.shift(*from, *to),
            Edit::SetTrial { mass, at } => {
                self.set_trial(TrialMass { mass: mass.clone(), at: at.clone() })
            }
            Edit::ClearTrial => self.clear_trial(),
        }
    }

    /// Enters a number, or clears it when the text is empty.
    fn set(&mut self, id: AnyId, text: &str) -> Result<(), EditRefused> {
        if text.trim().is_empty() {
            return self.clear(id);
        }
        if id == MASS.any() {
            if !self.entries.numbers.contains_key(&id)
                && let Some(parts) = sum::whole_mass(&self.entries.parts)
            {
                return self.drag_mass(text, parts);
            }
            self.clear_trial()?;
        }
        if let Some(pair) = partner(id) {
            self.clear(if pair.one == id { pair.other } else { pair.one })?;
        }
        let place = self.home(id)?;
        self.put(place, id.name(), &quoted(text))?;
        self.entries.numbers.insert(id, text.to_owned());
        Ok(())
    }

    /// Sets the trial mass to what is lacking between the parts and the mass asked for, as unsure
    /// as the two of them leave it.
    fn drag_mass(&mut self, text: &str, parts: Amount) -> Result<(), EditRefused> {
        let amount = sum::mass(text).map_err(EditRefused::Number)?;
        let at = self.entries.trial.as_ref().and_then(|trial| trial.at.clone());
        let spread = amount.spread.map_or(0.0, |whole| sum::rest(whole, parts.spread));
        let mass = sum::trial_text(amount.si - parts.si, spread);
        if mass.is_none() && at.is_none() {
            return self.clear_trial();
        }
        self.set_trial(TrialMass { mass: mass.unwrap_or_else(|| "+0 g".to_owned()), at })
    }

    fn clear(&mut self, id: AnyId) -> Result<(), EditRefused> {
        while self.entries.numbers.contains_key(&id) {
            let place = self.home(id)?;
            self.write(|written| write::take_out(written, place, id.name()))?;
            self.reread_number(id)?;
        }
        Ok(())
    }

    /// Looks whether a number that was taken out is given once more elsewhere in the file.
    fn reread_number(&mut self, id: AnyId) -> Result<(), EditRefused> {
        let read =
            read::read(&self.text).map_err(|error| EditRefused::Layout(error.to_string()))?;
        self.parsed = read.parsed;
        match read.entries.numbers.get(&id) {
            Some(text) => self.entries.numbers.insert(id, text.clone()),
            None => self.entries.numbers.remove(&id),
        };
        Ok(())
    }

    /// The table where a number is read from, or where it goes when it is not there yet.
    fn home(&mut self, id: AnyId) -> Result<write::Under<'static>, EditRefused> {
        let unknown = || EditRefused::Layout(format!("`{id}` is no quantity of the catalogue."));
        let entry = catalogue::find(id.name()).ok_or_else(unknown)?;
        let own: write::Under<'static> = Some(entry.topic.key());
        let document = self.parsed()?.document();
        let holds = |place: write::Under<'static>| {
            matches!(write::value(document, place, id.name()), Ok(Some(_)))
        };
        if holds(own) {
            return Ok(own);
        }
        // The first in the file counts, as when reading.
        let places = document.iter().filter_map(|(key, _)| match read::topic(key) {
            Some(topic) => Some(Some(topic.key())),
            None => (key == id.name()).then_some(None),
        });
        let mut others = places.filter(|place| holds(*place));
        Ok(others.next().unwrap_or(own))
    }

    fn words(&mut self, key: &str, words: &str) -> Result<(), EditRefused> {
        if !words.is_empty() {
            return self.put(None, key, &quoted(words));
        }
        if self.parsed()?.document().contains_key(key) {
            self.write(|written| write::take_out(written, None, key))?;
        }
        Ok(())
    }

    /// Changes a part as listed.
    fn part<T>(
        &mut self,
        index: usize,
        change: impl FnOnce(&mut Part) -> T,
    ) -> Result<T, EditRefused> {
        let count = self.entries.parts.len();
        self.entries.parts.change(index, change).ok_or(EditRefused::NoSuchPart { index, count })
    }

    fn add(&mut self, part: &Part) -> Result<(), EditRefused> {
        self.write(|written| write::add_part(written, part))?;
        self.entries.parts.insert(self.entries.parts.len(), Arc::new(part.clone()));
        Ok(())
    }

    fn set_part(&mut self, index: usize, field: PartField, text: &str) -> Result<(), EditRefused> {
        let key = match field {
            PartField::Name => "name",
            PartField::Mass => "mass",
            PartField::At(axis) => return self.set_place(index, axis, text),
        };
        self.part(index, |part| match field {
            PartField::Name => text.clone_into(&mut part.name),
            _ => text.clone_into(&mut part.mass),
        })?;
        self.put_in_part(index, key, &quoted(text))
    }

    fn set_place(&mut self, index: usize, axis: Axis, text: &str) -> Result<(), EditRefused> {
        let (at, placed) = self.part(index, |part| {
            let placed = part.at.is_some();
            let at = part.at.get_or_insert_with(|| Axis::ALL.map(|_| "0 mm".to_owned()));
            text.clone_into(&mut at[axis.index()]);
            (at.clone(), placed)
        })?;
        if !placed {
            return self.put_in_part(index, "at", &listed(&at));
        }
        let length = write::part_length(self.parsed()?.document(), index, axis.index())?;
        let value = stood(length).ok_or_else(|| write::odd("at"))?;
        self.write_over(value, &quoted(text))
    }

    fn unplace(&mut self, index: usize) -> Result<(), EditRefused> {
        if self.part(index, |part| part.at.take())?.is_some() {
            self.write(|written| write::unplace_part(written, index))?;
        }
        Ok(())
    }

    fn duplicate(&mut self, index: usize) -> Result<(), EditRefused> {
        let copy = Arc::new(self.part(index, |part| part.clone())?);
        self.write(|written| write::copy_part(written, index))?;
        self.entries.parts.insert(index + 1, copy);
        Ok(())
    }

    fn remove(&mut self, index: usize) -> Result<(), EditRefused> {
        self.part(index, |_| ())?;
        self.write(|written| write::remove_part(written, index))?;
        self.entries.parts.remove(index);
        Ok(())
    }

    fn shift(&mut self, from: usize, to: usize) -> Result<(), EditRefused> {
        self.part(to, |_| ())?;
        self.part(from, |_| ())?;
        self.write(|written| write::move_part(written, from, to))?;
        if let Some(part) = self.entries.parts.remove(from) {
            self.entries.parts.insert(to, part);
        }
        Ok(())
    }

    fn set_trial(&mut self, trial: TrialMass) -> Result<(), EditRefused> {
        const TABLE: write::Under<'static> = Some("trial-mass");
        self.put(TABLE, "mass", &quoted(&trial.mass))?;
        let placed = self.entries.trial.as_ref().and_then(|before| before.at.as_ref());
        match (&trial.at, placed) {
            (now, before) if now.as_ref() == before => {}
            (Some(at), _) => self.put(TABLE, "at", &listed(at))?,
            (None, _) => self.write(|written| write::take_out(written, TABLE, "at"))?,
        }
        self.entries.trial = Some(trial);
        Ok(())
    }

    fn clear_trial(&mut self) -> Result<(), EditRefused> {
        if self.entries.trial.take().is_some() {
            self.write(|written| write::take_table_out(written, "trial-mass"))?;
        }
        Ok(())
    }
}
