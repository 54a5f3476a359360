//! Undo and redo.

mod step;

use std::collections::VecDeque;

use super::Sheet;
use super::edit::{Edit, EditRefused};
use step::Step;

/// How much the steps that can be undone may hold, in bytes: some hundred thousand changed numbers.
const HELD: usize = 16 << 20;

/// One movement of the reader's hand, such as one drag of a slider: its edits are undone as one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Gesture(pub u64);

/// A build and what it was before, so that every change can be undone.
#[derive(Debug, Clone)]
pub struct History {
    past: VecDeque<Step>,
    /// What the past holds, in bytes.
    held: usize,
    present: Sheet,
    future: Vec<Step>,
    /// The gesture whose edits the present grew out of, while it may go on.
    gesture: Option<Gesture>,
    /// The text of the file as last opened or saved.
    saved: Option<Sheet>,
}

impl History {
    /// Starts with a build as it stands in its file.
    pub fn opened(sheet: Sheet) -> Self {
        Self { saved: Some(sheet.clone()), ..Self::unsaved(sheet) }
    }

    /// Starts with a build that is in no file yet.
    pub fn unsaved(present: Sheet) -> Self {
        Self {
            past: VecDeque::new(),
            held: 0,
            present,
            future: Vec::new(),
            gesture: None,
            saved: None,
        }
    }

    /// The build as it is now.
    pub fn sheet(&self) -> &Sheet {
        &self.present
    }

    /// Makes a change. Changes with the same gesture, one after another, are undone as one.
    ///
    /// # Errors
    /// As [`Sheet::apply`]; nothing has changed then.
    pub fn apply(&mut self, edit: &Edit, gesture: Option<Gesture>) -> Result<(), EditRefused> {
        let mut next = self.present.clone();
        next.apply(edit)?;
        if next.text() == self.present.text() {
            return Ok(());
        }
        let goes_on = gesture.is_some() && gesture == self.gesture;
        if goes_on && let Some(begun) = self.past.pop_back() {
            self.held -= begun.size();
            self.step(&begun.back(self.present.text()), next);
        } else {
            self.step_to(next);
        }
        self.gesture = gesture;
        Ok(())
    }

    /// Takes another build in place of this one, such as the file read anew; it can be undone.
    pub fn replace(&mut self, sheet: Sheet) {
        if sheet.text() != self.present.text() {
            self.step_to(sheet);
        }
    }

    fn step_to(&mut self, next: Sheet) {
        let before = self.present.clone();
        self.step(before.text(), next);
        self.future.clear();
        self.gesture = None;
    }

    /// Takes the next build as one step from a text; the oldest steps go when they hold too much.
    fn step(&mut self, before: &str, next: Sheet) {
        let step = Step::between(before, next.text());
        self.held += step.size();
        self.past.push_back(step);
        self.present = next;
        while self.held > HELD && self.past.len() > 1 {
            self.held -= self.past.pop_front().map_or(0, |oldest| oldest.size());
        }
    }

    /// Goes one step back; false when there is none.
    pub fn undo(&mut self) -> bool {
        let Some(step) = self.past.pop_back() else { return false };
        self.held -= step.size();
        self.take(&step.back(self.present.text()));
        self.future.push(step);
        true
    }

    /// Takes one step back again; false when there is none.
    pub fn redo(&mut self) -> bool {
        let Some(step) = self.future.pop() else { return false };
        self.held += step.size();
        self.take(&step.forth(self.present.text()));
        self.past.push_back(step);
        true
    }

    /// Makes a text of the past or the future the present: every one of them was read before.
    fn take(&mut self, text: &str) {
        if let Ok(sheet) = Sheet::read(text) {
            self.present = sheet;
        }
        self.gesture = None;
    }

    /// Whether there is a step to undo.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step to redo.
    pub fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// Says that the file now holds this build: the one given to [`save`](super::file::save).
    pub fn mark_saved(&mut self, sheet: Sheet) {
        self.saved = Some(sheet);
        self.gesture = None;
    }

    /// The build as last opened or saved; none while it is in no file.
    pub fn saved(&self) -> Option<&Sheet> {
        self.saved.as_ref()
    }

    /// Whether the build differs from its file.
    pub fn is_changed_since_save(&self) -> bool {
        self.saved.as_ref().is_none_or(|saved| saved.text() != self.present.text())
    }
}
