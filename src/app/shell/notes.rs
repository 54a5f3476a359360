//! What the shell does with the notebook.

use iced::Task;

use super::{App, Message};
use crate::app::printing::Print;
use crate::app::question::Question;
use crate::app::screen::notebook;
use crate::app::screen::reading::Noted;
use crate::app::{book, files, focus};
use crate::notebook::file::export;
use crate::notebook::markdown;

impl App {
    /// Writes down what was done on a page.
    pub(super) fn noted(&mut self, noted: Noted) -> Task<Message> {
        let Some(reading) = &mut self.reading else { return Task::none() };
        let id = reading.id.clone();
        let Some(lesson) = self.library.lesson(&id) else { return Task::none() };
        match noted {
            Noted::Answered(key) => {
                let build = (&self.desk, &self.settings);
                if let Some(answer) = reading.answer(lesson, &key, build, book::now()) {
                    self.book.change(|notebook| notebook.answered(&id, answer));
                }
            }
            Noted::Filled { line, step } => {
                if let Some(field) = reading.next_blank(lesson, line, step, &self.desk) {
                    return focus::on(field);
                }
            }
            Noted::Measured { line, take } => {
                let measured = reading.measurement(lesson, line, &self.settings, book::now());
                let Some((measurement, edit)) = measured else { return Task::none() };
                let refused = take.then(|| self.desk.apply(&edit, None)).and_then(Result::err);
                if !reading.mark_measured(line, take && refused.is_none()) {
                    self.book.change(|notebook| notebook.measured(&id, measurement));
                }
                if let Some(words) = refused {
                    return self.ask(Question::Told(words));
                }
            }
            Noted::Finished(finished) => {
                let when = finished.then(book::now);
                self.book.change(|notebook| notebook.finished(&id, when));
            }
        }
        Task::none()
    }

    /// Acts on what is done on the notebook's screen.
    pub(super) fn write_notes(&mut self, message: notebook::Message) -> Task<Message> {
        match self.notes.update(message) {
            notebook::Action::None => Task::none(),
            notebook::Action::Noted(id, note) => {
                self.book.change(|notebook| notebook.noted(&id, note));
                Task::none()
            }
            notebook::Action::Go(place) => self.go(place),
            notebook::Action::Choose => files::choose_export(),
            notebook::Action::Print => self.print(Print::Notebook),
            notebook::Action::Export { path, over } => {
                let titles = self.library.titles();
                let text = markdown(self.book.notebook(), &titles, &self.settings.units);
                let done = export(&path, &text, over);
                self.notes.exported(&path, done);
                Task::none()
            }
        }
    }

    pub(super) fn keep_notebook(&mut self) -> Task<Message> {
        match self.book.keep() {
            Some(words) => self.ask(Question::Told(words)),
            None => Task::none(),
        }
    }
}
