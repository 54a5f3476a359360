//! Undo and redo.

use std::collections::VecDeque;

use super::Sheet;
use super::edit::{Edit, EditRefused};

/// How many steps can be undone.
const STEPS: usize = 500;

/// One movement of the reader's hand, such as one drag of a slider: its edits are undone as one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Gesture(pub u64);

/// A build and what it was before, so that every change can be undone.
#[derive(Debug, Clone)]
pub struct History {
    past: VecDeque<Sheet>,
    present: Sheet,
    future: Vec<Sheet>,
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
        Self { past: VecDeque::new(), present, future: Vec::new(), gesture: None, saved: None }
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
        if gesture.is_some() && gesture == self.gesture {
            self.present = next;
        } else {
            self.step_to(next);
            self.gesture = gesture;
        }
        Ok(())
    }

    /// Takes another build in place of this one, such as the file read anew; it can be undone.
    pub fn replace(&mut self, sheet: Sheet) {
        if sheet.text() != self.present.text() {
            self.step_to(sheet);
        }
    }

    fn step_to(&mut self, next: Sheet) {
        self.past.push_back(std::mem::replace(&mut self.present, next));
        if self.past.len() > STEPS {
            self.past.pop_front();
        }
        self.future.clear();
        self.gesture = None;
    }

    /// Goes one step back; false when there is none.
    pub fn undo(&mut self) -> bool {
        let Some(before) = self.past.pop_back() else { return false };
        self.future.push(std::mem::replace(&mut self.present, before));
        self.gesture = None;
        true
    }

    /// Takes one step back again; false when there is none.
    pub fn redo(&mut self) -> bool {
        let Some(after) = self.future.pop() else { return false };
        self.past.push_back(std::mem::replace(&mut self.present, after));
        self.gesture = None;
        true
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
