//! What the shell does among the lessons.

use iced::{Element, Task};

use super::{App, Message};
use crate::app::screen::Place;
use crate::app::screen::contents::{self, Contents};

impl App {
    /// Acts on what is picked among the lessons.
    pub(super) fn pick(&mut self, message: contents::Message) -> Task<Message> {
        match message {
            contents::Message::Lesson(id) => self.go(Place::Lesson(id)),
            contents::Message::GoOn => self.go_on(),
            contents::Message::BuildSheet => self.go(Place::BuildSheet),
            contents::Message::WalkRound => self.go(Place::WalkRound),
            contents::Message::Settings => self.go(Place::Settings),
            contents::Message::Field(event) => self.field(&event),
            contents::Message::StartOwn => {
                self.put_welcome_away();
                let task = self.go(Place::Bench);
                task.chain(self.ask_five())
            }
            contents::Message::WelcomeClosed => {
                self.put_welcome_away();
                Task::none()
            }
        }
    }

    /// Settings that are kept are the sign that this is no first start.
    fn put_welcome_away(&mut self) {
        self.welcome = false;
        self.save_settings();
    }

    /// Back to the lesson last read: to where the page stood, or at least to its section.
    fn go_on(&mut self) -> Task<Message> {
        let Some(id) = self.settings.lesson.clone() else { return Task::none() };
        let held = self.reading.as_ref().is_some_and(|reading| reading.id == id);
        match self.settings.section.clone() {
            Some(anchor) if !held => self.go_to_part(id, &anchor),
            _ => self.go(Place::Lesson(id)),
        }
    }

    /// The list of lessons.
    pub(super) fn contents(&self) -> Element<'_, Message> {
        let list = Contents {
            library: &self.library,
            desk: &self.desk,
            settings: &self.settings,
            notebook: self.book.notebook(),
            own: &self.own_lessons,
            welcome: self.welcome,
            most: if self.hastens { contents::in_sight(self.size().height) } else { usize::MAX },
        };
        list.view().map(Message::Contents)
    }
}
