//! Unsaved work: kept aside while it is made, offered after the program ended without warning.

use iced::Task;

use super::{App, Message};
use crate::app::question::Question;
use crate::sheet::Sheet;
use crate::sheet::file::autosave::{self, Slot};
use crate::sheet::file::name_of;

/// Unsaved work that was found, while the reader decides about it.
pub(super) struct Found {
    slot: Slot,
    sheet: Sheet,
}

impl App {
    pub(super) fn keep(&mut self) -> Task<Message> {
        if self.desk.history.is_changed_since_save() {
            // A copy that cannot be kept is no reason to stop the reader; saving still says why.
            let _ = autosave::write(
                &self.folders.recovery,
                &self.slot,
                self.desk.path.as_deref(),
                self.desk.sheet(),
            );
        }
        self.kept = self.desk.revision();
        Task::none()
    }

    /// Offers the newest work kept for the build on the desk that has not been put off already.
    pub(super) fn offer_recovery(&mut self) -> Task<Message> {
        self.recovered = None;
        if self.question.is_some() {
            return Task::none();
        }
        let path = self.desk.path.clone();
        let mut but = self.put_off.clone();
        but.push(self.slot.clone());
        while let Ok(Some((slot, found))) =
            autosave::find(&self.folders.recovery, path.as_deref(), &but)
        {
            but.push(slot.clone());
            if let Ok(sheet) = Sheet::read(&found.text)
                && sheet != *self.desk.sheet()
            {
                let build = match &path {
                    Some(path) => path.display().to_string(),
                    None => format!("{}, which is in no file,", name_of(&sheet, None)),
                };
                self.recovered = Some(Found { slot, sheet });
                return self.ask(Question::Recover(build));
            }
        }
        Task::none()
    }

    /// Brings it back; from here on its copy is that of the build on the desk.
    pub(super) fn recover(&mut self) -> Task<Message> {
        self.question = None;
        if let Some(Found { slot, sheet }) = self.recovered.take() {
            self.forget_recovery();
            self.slot = slot;
            self.desk.replace(sheet);
        }
        Task::none()
    }

    /// Throws it away, and offers what else waits.
    pub(super) fn refuse_recovery(&mut self) -> Task<Message> {
        if let Some(found) = self.recovered.take() {
            let _ = autosave::discard(&self.folders.recovery, &found.slot);
        }
        let task = self.answered();
        task.chain(self.offer_recovery())
    }

    /// Leaves it where it is until the program starts again.
    pub(super) fn put_off_recovery(&mut self) {
        self.put_off.extend(self.recovered.take().map(|found| found.slot));
    }

    /// Takes away the copy of the build on the desk; others that wait are not touched.
    pub(super) fn forget_recovery(&mut self) {
        let _ = autosave::discard(&self.folders.recovery, &self.slot);
    }
}
