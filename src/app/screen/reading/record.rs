//! What a page leaves in the notebook and in the build, and takes back from the notebook.

use super::Reading;
use crate::app::block::{faded, guess, measure};
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::lesson::{BlockKind, Lesson, Line};
use crate::notebook::{Answer, Measurement, Moment, Record};
use crate::sheet::Edit;

impl Reading {
    /// The answer given to a guess, as the notebook keeps it.
    pub fn answer(
        &self,
        lesson: &Lesson,
        key: &str,
        (desk, settings): (&Desk, &Settings),
        when: Moment,
    ) -> Option<Answer> {
        let guess = lesson.every_block().into_iter().find_map(|block| match &block.kind {
            BlockKind::Guess(guess) if guess.key == key => Some(guess),
            _ => None,
        })?;
        guess::recorded(guess, self.marks.guesses.get(key)?, desk, settings, when)
    }

    /// The field of the next open line of a faded example, if the `step` just filled is right.
    pub fn next_blank(
        &self,
        lesson: &Lesson,
        line: usize,
        step: usize,
        desk: &Desk,
    ) -> Option<String> {
        let faded = lesson.every_block().into_iter().find_map(|block| match &block.kind {
            BlockKind::Faded(faded) if block.line == line => Some(faded),
            _ => None,
        })?;
        let state = self.marks.faded.get(&line)?;
        let lines = state.lines(faded, |id| desk.outcome.values.si(id));
        let right = matches!(lines.get(step), Some(Line::Right { .. }));
        let next = lines.iter().position(|line| *line == Line::Open)?;
        right.then(|| faded::field_id(line, next))
    }

    /// The readings of a measure as the notebook keeps them, and the edit that puts them into the
    /// build; nothing until all readings are there.
    pub fn measurement(
        &self,
        lesson: &Lesson,
        line: usize,
        settings: &Settings,
        when: Moment,
    ) -> Option<(Measurement, Edit)> {
        let measure = lesson.every_block().into_iter().find_map(|block| match &block.kind {
            BlockKind::Measure(measure) if block.line == line => Some(measure),
            _ => None,
        })?;
        let state = self.marks.measures.get(&line)?;
        let text = state.number(measure, &settings.units)?;
        let edit = Edit::Set { id: measure.quantity, text };
        Some((state.measurement(measure, when)?, edit))
    }

    /// Marks the readings of a measure as written down, and maybe as put into the build. Says
    /// whether they were written down before.
    pub fn mark_measured(&mut self, line: usize, taken: bool) -> bool {
        let state = self.marks.measures.entry(line).or_default();
        state.taken |= taken;
        std::mem::replace(&mut state.written, true)
    }

    /// Puts the readings last written down back on the page.
    pub fn recall(&mut self, lesson: &Lesson, record: &Record) {
        for block in lesson.every_block() {
            if let BlockKind::Measure(measure) = &block.kind
                && let Some(last) = record.last_measured(&measure.what)
                && last.quantity == measure.quantity.name()
                && let Some(state) = measure::State::recalled(last)
            {
                self.marks.measures.insert(block.line, state);
            }
        }
    }
}
