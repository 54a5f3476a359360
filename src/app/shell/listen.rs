//! What the window listens to.

use iced::{Subscription, event, keyboard, system, time, window};

use super::{App, Message};
use crate::app::question::Next;
use crate::app::screen::{Place, reading};
use crate::app::watch;

/// From one picture of something that plays to the next.
const FRAME: time::Duration = time::Duration::from_millis(33);

impl App {
    /// What the window listens to.
    pub fn subscription(&self) -> Subscription<Message> {
        let keep = (self.kept != self.desk.revision())
            .then(|| time::every(time::Duration::from_secs(3)).map(|_| Message::Keep));
        let book = self
            .book
            .is_changed()
            .then(|| time::every(time::Duration::from_secs(2)).map(|_| Message::KeepNotebook));
        let shown = self.reading.as_ref().filter(|r| self.place == Place::Lesson(r.id.clone()));
        let plays = shown
            .is_some_and(reading::Reading::plays)
            .then(|| time::every(FRAME).map(|now| Message::Reading(reading::Message::Ticked(now))));
        let own = self.own.as_ref().map(|own| own.0.clone());
        let lessons = self.watched.clone().into_iter().chain(own).map(watch::lessons);
        Subscription::batch(
            [
                keyboard::listen().map(Message::Key),
                window::resize_events().map(|(_, size)| Message::Resized(size)),
                window::close_requests().map(|_| Message::Leave(Next::Close)),
                system::theme_changes().map(Message::System),
                event::listen_with(|event, _, _| match event {
                    iced::Event::Window(window::Event::Focused) => Some(Message::Returned),
                    iced::Event::Window(window::Event::Moved(to)) => Some(Message::Moved(to)),
                    iced::Event::Window(window::Event::FileDropped(path)) => {
                        Some(Message::OpenPath(path))
                    }
                    _ => None,
                }),
            ]
            .into_iter()
            .chain(keep)
            .chain(book)
            .chain(plays)
            .chain(lessons),
        )
    }
}
