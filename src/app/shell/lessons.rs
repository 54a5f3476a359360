//! What the shell does when lessons on disk change: it reads them all again on a thread of its own, so
//! that a large folder or a slow disk holds up nothing.

use std::sync::Arc;
use std::thread;
use std::time::Duration;

use iced::Task;
use iced::futures::channel::oneshot;
use iced::widget::operation::{self, AbsoluteOffset};

use super::{App, Message};
use crate::app::screen::preferences::OwnLessons;
use crate::app::screen::{Place, reading};
use crate::lesson::{Folder, Joined, Library, Source};

/// So long a change may take to be whole: a program that saves a file tells of it several times, and
/// for a moment the file may not be there at all.
const SETTLES: Duration = Duration::from_millis(80);

/// All lessons as they were read, with what is worked out from them.
#[derive(Debug)]
pub struct Read {
    library: Arc<Library>,
    own: OwnLessons,
}

impl Read {
    /// Reads all lessons; never fails, since what is wrong stands in the library.
    fn of(first: Arc<dyn Source>, own: Option<Folder>) -> Self {
        let library = Library::load(Joined { first, own: own.clone() });
        Self { own: super::preferences::stand(own.as_ref(), &library), library: Arc::new(library) }
    }
}

/// Whether lessons are being read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) enum Reader {
    /// They are not.
    #[default]
    Idle,
    /// They are.
    Reads,
    /// They are, and have changed since.
    ReadsStale,
}

impl App {
    /// Has all lessons read again, once at a time.
    pub(super) fn reload_lessons(&mut self) -> Task<Message> {
        if self.reader != Reader::Idle {
            self.reader = Reader::ReadsStale;
            return Task::none();
        }
        self.reader = Reader::Reads;
        let (first, own) = (Arc::clone(&self.source), self.own.clone());
        let (say, hear) = oneshot::channel();
        thread::spawn(move || {
            thread::sleep(SETTLES);
            // Nobody listens once the window is closed.
            let _ = say.send(Arc::new(Read::of(first, own)));
        });
        Task::perform(hear, |read| Message::LessonsRead(read.ok()))
    }

    /// Shows the lessons as they were read, at the place where the reader is; without them, those that
    /// are there stay.
    pub(super) fn lessons_read(&mut self, read: Option<Arc<Read>>) -> Task<Message> {
        let stale = std::mem::take(&mut self.reader) == Reader::ReadsStale;
        let was_away = self.is_away();
        if let Some(read) = read.and_then(Arc::into_inner) {
            self.library = read.library;
            self.index.take();
            self.own_lessons = read.own;
            self.read_on();
        }
        let back = match &self.reading {
            Some(reading) if was_away && !self.is_away() => {
                let offset = AbsoluteOffset { x: 0.0, y: reading.offset };
                operation::scroll_to(reading::PAGE, offset)
            }
            _ => Task::none(),
        };
        if stale { Task::batch([back, self.reload_lessons()]) } else { back }
    }

    /// Whether the lesson on the page is not among the lessons.
    fn is_away(&self) -> bool {
        matches!(&self.place, Place::Lesson(id) if self.lesson(id).is_none())
    }

    /// The lesson on the page and the one before a class, as they are now. One that is gone keeps its
    /// place, and has it when it comes back.
    fn read_on(&mut self) {
        if let Some(reading) = self.reading.take() {
            let id = reading.id.clone();
            self.reading = Some(match self.lesson(&id) {
                Some(lesson) => {
                    let mut reading =
                        reading.reloaded(lesson, |file| self.library.picture(&id, file));
                    if let Some(record) = self.book.notebook().lesson(&id) {
                        reading.recall(lesson, record);
                    }
                    reading
                }
                None => reading,
            });
        }
        if let Some(shown) = self.workshop.take() {
            self.workshop = Some(match self.lesson(&shown.id) {
                Some(lesson) => shown.reloaded(lesson),
                None => shown,
            });
        }
    }
}
