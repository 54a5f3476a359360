//! Making one change: to what the build says and to its text, which then have to agree.

use std::borrow::Cow;

use toml_edit::Document;

use super::contents::{Contents, Entries};
use super::edit::{Edit, EditRefused};
use super::part::{Axis, Part, PartField, TrialMass};
use super::read::{self, BYTE_ORDER_MARK};
use super::write::{self, listed, quoted};
use super::{FORMAT, LARGEST, sum};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::{Amount, AnyId, Topic, catalogue};
use crate::rules::catalogue::partner;

/// The contents after one change.
pub(super) fn changed(contents: &Contents, edit: &Edit) -> Result<Contents, EditRefused> {
    if contents.format > FORMAT {
        return Err(EditRefused::ReadOnly);
    }
    let body = contents.text.strip_prefix(BYTE_ORDER_MARK);
    let mut draft = Draft {
        text: body.unwrap_or(&contents.text).to_owned(),
        document: contents.document.as_ref().map(Cow::Borrowed),
        entries: contents.entries.clone(),
    };
    draft.make(edit)?;
    if body.is_some() {
        draft.text.insert(0, BYTE_ORDER_MARK);
    }
    if draft.text.len() > LARGEST {
        return Err(EditRefused::TooLarge);
    }
    match read::read(&draft.text) {
        // What was made of the parts that did not change goes on with them.
        Ok(read) if read.entries == draft.entries => {
            Ok(Contents { entries: draft.entries, ..read })
        }
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
    /// What the text was parsed to, until it changes.
    document: Option<Cow<'a, Document<String>>>,
    entries: Entries,
}

impl Draft<'_> {
    /// The text with its document.
    fn written(&mut self) -> Result<write::Written<'_>, EditRefused> {
        let document = match self.document.take() {
            Some(document) => document,
            None => Cow::Owned(write::parse(self.text.clone())?),
        };
        let document = self.document.insert(document).as_table();
        Ok(write::Written { text: &self.text, document })
    }

    /// Writes a change into the text.
    fn write(
        &mut self,
        change: impl FnOnce(write::Written<'_>) -> Result<String, EditRefused>,
    ) -> Result<(), EditRefused> {
        let text = change(self.written()?)?;
        if text != self.text {
            (self.text, self.document) = (text, None);
        }
        Ok(())
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
        self.write(|written| write::put(written, place, id.name(), &quoted(text)))?;
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
        let own = Some(entry.topic.key());
        let document = self.written()?.document;
        let holds = |place: &write::Under<'static>| match place {
            Some(table) => document
                .get(table)
                .and_then(|item| item.as_table_like())
                .is_some_and(|table| table.contains_key(id.name())),
            None => document.contains_key(id.name()),
        };
        if holds(&own) {
            return Ok(own);
        }
        // The first in the file counts, as when reading.
        let tables = document.iter().map(|(key, _)| read::topic(key).map(Topic::key));
        let mut others = tables.filter(|place| place.is_some()).chain([None]);
        Ok(others.find(holds).unwrap_or(own))
    }

    fn words(&mut self, key: &str, words: &str) -> Result<(), EditRefused> {
        self.write(|written| match (words.is_empty(), written.document.contains_key(key)) {
            (false, _) => write::put(written, None, key, &quoted(words)),
            (true, true) => write::take_out(written, None, key),
            (true, false) => Ok(written.text.to_owned()),
        })
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
        self.entries.parts.insert(self.entries.parts.len(), part.clone());
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
        self.write(|written| write::part_entry(written, index, key, Some(&quoted(text))))
    }

    fn set_place(&mut self, index: usize, axis: Axis, text: &str) -> Result<(), EditRefused> {
        let (at, placed) = self.part(index, |part| {
            let placed = part.at.is_some();
            let at = part.at.get_or_insert_with(|| Axis::ALL.map(|_| "0 mm".to_owned()));
            text.clone_into(&mut at[axis.index()]);
            (at.clone(), placed)
        })?;
        self.write(|written| match placed {
            true => write::part_length(written, index, axis.index(), &quoted(text)),
            false => write::part_entry(written, index, "at", Some(&listed(&at))),
        })
    }

    fn unplace(&mut self, index: usize) -> Result<(), EditRefused> {
        if self.part(index, |part| part.at.take())?.is_some() {
            self.write(|written| write::part_entry(written, index, "at", None))?;
        }
        Ok(())
    }

    fn duplicate(&mut self, index: usize) -> Result<(), EditRefused> {
        let copy = self.part(index, |part| part.clone())?;
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
        self.write(|written| write::put(written, TABLE, "mass", &quoted(&trial.mass)))?;
        let placed = self.entries.trial.as_ref().is_some_and(|before| before.at.is_some());
        match &trial.at {
            Some(at) => self.write(|written| write::put(written, TABLE, "at", &listed(at)))?,
            None if placed => self.write(|written| write::take_out(written, TABLE, "at"))?,
            None => {}
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
