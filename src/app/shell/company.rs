//! What the shell does about companions: it sets builds beside the reader's own and remembers them.

use std::path::Path;

use iced::Task;

use super::{App, Message};
use crate::app::companion::Companion;
use crate::app::question::Question;

impl App {
    /// Sets a build beside the reader's own and remembers it.
    pub(super) fn accompany(&mut self, companion: Companion) -> Task<Message> {
        self.bench.chosen();
        self.desk.company.add(companion);
        self.remember_company()
    }

    pub(super) fn accompany_file(&mut self, path: &Path) -> Task<Message> {
        match Companion::from_file(path) {
            Ok(companion) => self.accompany(companion),
            Err(words) => self.ask(Question::Told(words)),
        }
    }

    pub(super) fn accompany_example(&mut self, id: &str) -> Task<Message> {
        Companion::example(id)
            .cloned()
            .map_or_else(Task::none, |companion| self.accompany(companion))
    }

    pub(super) fn part_from(&mut self, place: usize) -> Task<Message> {
        self.desk.company.remove(place);
        self.remember_company()
    }

    /// Looks no more for a companion that is gone.
    pub(super) fn forget_companion(&mut self, place: usize) -> Task<Message> {
        self.desk.company.forget(place);
        self.remember_company()
    }

    fn remember_company(&mut self) -> Task<Message> {
        let kept = self.desk.company.kept();
        self.with_settings(|settings| settings.companions = kept)
    }
}
