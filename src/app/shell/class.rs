//! What the shell does before a class.

use iced::{Element, Task};

use super::{App, Message};
use crate::app::page::{Audience, Page};
use crate::app::screen::Place;
use crate::app::screen::workshop::{self, Workshop};
use crate::app::theme::{MEASURE, UNIT};

impl App {
    /// Shows the lesson on the page to a class; one shown before goes on where it stopped.
    pub(super) fn show(&mut self) -> Task<Message> {
        let Place::Lesson(id) = &self.place else { return Task::none() };
        let id = id.clone();
        if self.workshop.as_ref().is_none_or(|shown| shown.id != id) {
            let Some(lesson) = self.lesson(&id) else { return Task::none() };
            self.workshop = Some(Workshop::new(lesson));
        }
        self.go(Place::Workshop(id))
    }

    /// Acts on what is done before the class.
    pub(super) fn teach(&mut self, message: workshop::Message) -> Task<Message> {
        let library = &self.library;
        let Some(shown) = &mut self.workshop else { return Task::none() };
        let Some(lesson) = library.lesson(&shown.id) else { return Task::none() };
        match shown.update(message, lesson) {
            workshop::Action::Run(task) => task.map(Message::Workshop),
            workshop::Action::Page(message) => {
                self.read(crate::app::screen::reading::Message::Page(message))
            }
            workshop::Action::Leave => {
                let id = shown.id.clone();
                self.go(Place::Lesson(id))
            }
        }
    }

    /// The screen of a class.
    pub(super) fn class(&self, id: &str) -> Element<'_, Message> {
        let (Some(shown), Some(reading), Some(lesson)) =
            (&self.workshop, &self.reading, self.lesson(id))
        else {
            return iced::widget::text("This lesson is not there any more. Press Esc.").into();
        };
        let width = (self.size().width - 6.0 * UNIT).clamp(200.0, MEASURE);
        let sheet = reading.sheet(lesson, (&self.desk, &self.settings), self.is_dark(), width);
        let page = Page { audience: Audience::Class { notes: shown.notes }, ..sheet };
        shown.view(lesson, page).map(Message::Workshop)
    }
}
