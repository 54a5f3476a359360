//! What the shell does about printing: it asks how and where, and has the page made beside the
//! window, so that nothing stands still meanwhile.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use iced::Task;
use iced::futures::channel::oneshot;

use super::filing::taken;
use super::{App, Message};
use crate::app::files;
use crate::app::printing::{Act, Held, Job, Order, Print};
use crate::app::question::Question;
use crate::handout;

/// How printing ended: where the page is, nothing if it was called off, or why it is not there.
pub type Printed = Result<Option<PathBuf>, String>;

impl App {
    /// Asks how something is to be printed.
    pub(super) fn print(&mut self, what: Print) -> Task<Message> {
        let order = Order::new(what, &self.desk, &self.settings);
        self.ask(Question::Print(order))
    }

    /// Prints the lesson on the page.
    pub(super) fn print_lesson(&mut self) -> Task<Message> {
        let id = self.reading.as_ref().map(|reading| reading.id.clone());
        id.map_or_else(Task::none, |id| self.print(Print::Lesson(id)))
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
        let (say, hear) = oneshot::channel();
        thread::spawn(move || {
            // Nobody listens once the window is closed.
            let _ = say.send(written(job, path, &called_off));
        });
        let asked = self.ask(Question::Writing);
        let heard = Task::perform(hear, |done| {
            Message::Printed(done.unwrap_or_else(|_| Err("The page was not made.".to_owned())))
        });
        Task::batch([asked, heard])
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

/// Makes the page and writes it, unless it has been called off meanwhile: then nothing is written.
fn written(job: Job, path: PathBuf, called_off: &AtomicBool) -> Printed {
    let page = job.page()?;
    if called_off.load(Ordering::Relaxed) {
        return Ok(None);
    }
    handout::save(&path, &page)?;
    Ok(Some(path))
}
