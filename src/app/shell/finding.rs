//! What the shell does about Find.

use iced::Task;
use iced::widget::operation;

use super::{App, Message};
use crate::app::find::view::{Act, FIELD, Finding};
use crate::app::find::{Index, Way};
use crate::app::question::Question;
use crate::app::screen::{Place, build_sheet};

impl App {
    pub(super) fn find(&mut self, act: Act) -> Task<Message> {
        match act {
            Act::Begin => {
                self.menu = false;
                self.question = Some(Question::Find(Finding::default()));
                operation::focus(FIELD)
            }
            Act::Typed(text) => {
                let index = self.index.get_or_init(|| Index::of(&self.library));
                let found = index.find(&text);
                self.question = Some(Question::Find(Finding { text, found }));
                Task::none()
            }
            Act::First => match &self.question {
                Some(Question::Find(finding)) => {
                    finding.first().cloned().map_or_else(Task::none, |way| self.follow(way))
                }
                _ => Task::none(),
            },
            Act::Open(way) => self.follow(way),
        }
    }

    fn follow(&mut self, way: Way) -> Task<Message> {
        self.question = None;
        match way {
            Way::Lesson(id) => self.go(Place::Lesson(id)),
            Way::Part { lesson, anchor } => self.go_to_part(lesson, &anchor),
            Way::Number(id) => {
                let wanted = build_sheet::Message::Find(id.name().to_owned());
                Task::batch([self.go(Place::BuildSheet), self.enter(wanted)])
            }
        }
    }
}
