//! What the window listens to.

use iced::{Event, Subscription, event, keyboard, system, time, window};

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
        let drawn = self.hastens.then(|| window::frames().map(|_| Message::Drawn));
        let own = self.own.as_ref().map(|own| own.0.clone());
        let lessons = self.watched.clone().into_iter().chain(own).map(watch::lessons);
        let build = self.desk.path.clone().map(watch::build);
        Subscription::batch(
            [
                keyboard::listen().map(Message::Key),
                window::resize_events().map(|(_, size)| Message::Resized(size)),
                window::close_requests().map(|_| Message::Leave(Next::Close)),
                system::theme_changes().map(Message::System),
                event::listen_with(|event, _, id| heard(event, id)),
            ]
            .into_iter()
            .chain(keep)
            .chain(drawn)
            .chain(book)
            .chain(plays)
            .chain(lessons)
            .chain(build),
        )
    }
}

/// What the window tells that no widget has a use for.
fn heard(event: Event, id: window::Id) -> Option<Message> {
    let Event::Window(event) = event else { return None };
    match event {
        window::Event::Opened { .. } => Some(Message::Opened(id)),
        window::Event::Focused => Some(Message::Returned),
        window::Event::Moved(to) => Some(Message::Moved(to)),
        window::Event::FileHovered(_) => Some(Message::Hovers(true)),
        window::Event::FilesHoveredLeft => Some(Message::Hovers(false)),
        window::Event::FileDropped(path) => Some(Message::Dropped(path)),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_held_over_the_window_and_let_go_is_heard() {
        let heard = |event| heard(Event::Window(event), window::Id::unique());
        let path = std::path::PathBuf::from("cart.toml");
        let over = heard(window::Event::FileHovered(path.clone()));
        assert!(matches!(over, Some(Message::Hovers(true))));
        let away = heard(window::Event::FilesHoveredLeft);
        assert!(matches!(away, Some(Message::Hovers(false))));
        let dropped = heard(window::Event::FileDropped(path.clone()));
        assert!(matches!(dropped, Some(Message::Dropped(it)) if it == path));
        assert!(heard(window::Event::Unfocused).is_none());
    }
}
