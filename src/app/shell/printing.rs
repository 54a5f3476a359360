//! What the shell does about printing: it asks how and where, and has the page made beside the
//! window, so that nothing stands still meanwhile.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use iced::Task;
use iced::futures::channel::mpsc;

use super::filing::taken;
use super::{App, Message};
use crate::app::files;
use crate::app::printing::{Act, Held, Order, Print};
use crate::app::question::Question;
use crate::app::screen::Place;
use crate::handout;

/// How printing ended: where the page is, nothing if it was called off, or why it is not there.
pub type Printed = Result<Option<PathBuf>, String>;

/// What is heard of a page being made.
enum Heard {
    /// So many of so many sheets are made.
    Made(usize, usize),
    /// It ended.
    Done(Printed),
}

impl App {
    /// Asks how something is to be printed.
    pub(super) fn print(&mut self, what: Print) -> Task<Message> {
        let order = Order::new(what, &self.desk, &self.settings);
        self.ask(Question::Print(order))
    }

    /// Prints what is shown, where that is something for paper.
    pub(super) fn print_here(&mut self) -> Task<Message> {
        match &self.place {
            Place::Lesson(id) | Place::Workshop(id) => self.print(Print::Lesson(id.clone())),
            Place::WalkRound => self.print(Print::WalkRound),
            Place::Notebook => self.print(Print::Notebook),
            Place::Contents | Place::BuildSheet | Place::Bench | Place::Settings => Task::none(),
        }
    }

    pub(super) fn print_act(&mut self, act: Act) -> Task<Message> {
        if let Some(Question::Print(order)) = &mut self.question {
            order.perform(act);
        }
        Task::none()
    }

    /// Asks where the page is to go, once the card says clearly what it is.
    pub(super) fn print_ordered(&mut self) -> Task<Message> {
        let Some(Question::Print(order)) = &mut self.question else { return Task::none() };
        if !order.is_clear() {
            return Task::none();
        }
        let order = order.clone();
        self.question = None;
        let task = files::choose_paper(&order.name(&self.desk), &self.desk);
        self.order = Some(order);
        task
    }

    /// A path to begin with where it is typed: beside the build, else where exports go.
    pub(super) fn paper_path(&self) -> Option<PathBuf> {
        let name = format!("{}.{}", self.order.as_ref()?.name(&self.desk), files::PAPER);
        let folder = self.desk.path.as_deref().and_then(Path::parent);
        Some(folder.unwrap_or(&self.folders.exports).join(name))
    }

    /// Prints to a path typed, where no dialog has asked before a file is written over.
    pub(super) fn print_new(&mut self, path: &Path) -> Task<Message> {
        let path = files::with_ending(path.to_owned(), files::PAPER);
        if path.exists() { self.ask(taken(&path)) } else { self.print_at(path) }
    }

    /// The dialog has asked already before an existing file is written over.
    pub(super) fn print_at(&mut self, path: PathBuf) -> Task<Message> {
        let Some(order) = self.order.take() else { return Task::none() };
        let held =
            Held { library: Arc::clone(&self.library), notebook: self.book.notebook().clone() };
        let job = order.job(&self.desk, &self.settings, held);
        let called_off = Arc::new(AtomicBool::new(false));
        self.writing = Some(Arc::clone(&called_off));
        let (say, hear) = mpsc::unbounded();
        thread::spawn(move || {
            let told = |made, of| {
                // Nobody listens once the window is closed.
                let _ = say.unbounded_send(Heard::Made(made, of));
                !called_off.load(Ordering::Relaxed)
            };
            let done = job.page(&told).and_then(|page| written(page, path, &called_off));
            let _ = say.unbounded_send(Heard::Done(done));
        });
        let asked = self.ask(Question::Writing { made: 0, of: 1 });
        let heard = Task::run(hear, |heard| match heard {
            Heard::Made(made, of) => Message::Printing { made, of },
            Heard::Done(done) => Message::Printed(done),
        });
        Task::batch([asked, heard])
    }

    /// So many of so many sheets are made.
    pub(super) fn printing(&mut self, now: (usize, usize)) -> Task<Message> {
        if let Some(Question::Writing { made, of }) = &mut self.question {
            (*made, *of) = now;
        }
        Task::none()
    }

    /// The page is there, or why not.
    pub(super) fn printed(&mut self, done: Printed) -> Task<Message> {
        self.writing = None;
        match done {
            Ok(None) => Task::none(),
            Ok(Some(path)) => self.ask(Question::Written(path)),
            Err(words) => self.ask(Question::Told(words)),
        }
    }

    /// A page being made is not wanted any more.
    pub(super) fn call_off_printing(&mut self) {
        self.order = None;
        if let Some(writing) = self.writing.take() {
            writing.store(true, Ordering::Relaxed);
        }
    }
}

/// Writes the page, unless it has been called off meanwhile: then nothing is written.
fn written(page: Option<String>, path: PathBuf, called_off: &AtomicBool) -> Printed {
    let Some(page) = page.filter(|_| !called_off.load(Ordering::Relaxed)) else { return Ok(None) };
    handout::save(&path, &page)?;
    Ok(Some(path))
}
