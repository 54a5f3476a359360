//! What the shell does with build files: opening, saving, and putting a build away.

use std::path::{Path, PathBuf};

use iced::Task;
use iced::widget::operation;

use super::App;
use super::Message;
use crate::app::desk::Desk;
use crate::app::files;
use crate::app::files::Purpose;
use crate::app::question::{Next, Question};
use crate::app::screen::Place;
use crate::sheet::file::autosave::Slot;
use crate::sheet::file::{self, SaveError, Stamp};
use crate::sheet::{History, Sheet};

/// The build the window starts with, and what to say if the one asked for cannot be read.
pub(super) fn first_desk(build: Option<&Path>) -> (Desk, Option<String>) {
    let demo = || {
        let demo = crate::sheet::demo::ALL.first().map(|demo| demo.id);
        demo.and_then(files::open_demo).unwrap_or_else(blank)
    };
    match build.map(files::open) {
        None => (demo(), None),
        Some(Ok(desk)) => (desk, None),
        Some(Err(words)) => (demo(), Some(words)),
    }
}

fn blank() -> Desk {
    Desk::new(History::opened(Sheet::blank()), None, None)
}

/// A path typed leads to a file that is there already.
pub(super) fn taken(path: &Path) -> Question {
    Question::Told(format!(
        "There is a file at {} already. Save under another name.",
        path.display()
    ))
}

impl App {
    pub(super) fn leave(&mut self, next: Next) -> Task<Message> {
        if self.desk.history.is_changed_since_save() {
            self.ask(Question::Unsaved(next))
        } else {
            self.proceed(next)
        }
    }

    pub(super) fn save_then(&mut self, next: Next) -> Task<Message> {
        self.question = None;
        self.after_save = Some(next);
        self.save()
    }

    pub(super) fn proceed(&mut self, next: Next) -> Task<Message> {
        self.question = None;
        match next {
            Next::Close => self.close(),
            Next::Open => files::choose(Purpose::Open, self.settings.builds.as_deref()),
            Next::OpenPath(path) => self.open(&path),
            Next::Demo(id) => files::open_demo(id).map_or_else(Task::none, |desk| self.put(desk)),
            Next::Blank => {
                self.bench.begun();
                let task = self.put(blank());
                Task::batch([task, self.go(Place::BuildSheet)])
            }
            Next::Begin(edits) => self.begin(&edits),
            Next::WhatIf => self.what_if(),
        }
    }

    fn close(&mut self) -> Task<Message> {
        // Told once; a notebook that cannot be saved does not hold the window open.
        if let Some(words) = self.book.keep() {
            return self.ask(Question::Told(words));
        }
        self.forget_recovery();
        self.save_settings();
        iced::exit()
    }

    pub(super) fn put(&mut self, desk: Desk) -> Task<Message> {
        self.forget_recovery();
        self.slot = Slot::new();
        let company = std::mem::take(&mut self.desk.company);
        self.desk = desk;
        self.desk.company = company;
        self.kept = self.desk.revision();
        if let Some(reading) = &mut self.reading {
            reading.forget_drawn();
        }
        self.build_sheet.forget_drawn();
        self.walk_round.forget();
        self.bench.forget_drawn();
        self.bench.look(&self.settings.recent);
        self.offer_recovery()
    }

    pub(super) fn open(&mut self, path: &Path) -> Task<Message> {
        match files::open(path) {
            Ok(desk) => {
                self.settings.remember(path);
                self.save_settings();
                self.put(desk)
            }
            Err(words) => self.ask(Question::Told(words)),
        }
    }

    pub(super) fn hover(&mut self, hovers: bool) -> Task<Message> {
        self.hovered = hovers;
        Task::none()
    }

    /// A file let go over the window is opened as a build.
    pub(super) fn dropped(&mut self, path: PathBuf) -> Task<Message> {
        self.hovered = false;
        self.leave(Next::OpenPath(path))
    }

    /// A dialog that ended without a pick: put away by the reader, or never there at all, and then
    /// the path can be typed.
    pub(super) fn unpicked(&mut self, how: files::Unpicked) -> Task<Message> {
        if how.at_once {
            let text = match how.purpose {
                Purpose::Figure => self.figure_path(),
                Purpose::Paper => self.paper_path(),
                _ => self.desk.path.clone(),
            };
            let text = text.map(|path| path.display().to_string()).unwrap_or_default();
            self.question = Some(Question::Path { purpose: how.purpose, text });
            operation::focus(crate::app::question::PATH)
        } else {
            self.after_save = None;
            self.figure = None;
            self.order = None;
            Task::none()
        }
    }

    pub(super) fn path_typed(&mut self, typed: String) -> Task<Message> {
        if let Some(Question::Path { text, .. }) = &mut self.question {
            *text = typed;
        }
        Task::none()
    }

    pub(super) fn path_given(&mut self) -> Task<Message> {
        let Some(Question::Path { purpose, text }) = self.question.take() else {
            return Task::none();
        };
        let path = Path::new(text.trim());
        match (text.trim().is_empty(), purpose) {
            (true, _) => self.ask(Question::Path { purpose, text }),
            (false, Purpose::Open) => self.open(path),
            (false, Purpose::Companion) => self.accompany_file(path),
            (false, Purpose::Save) => {
                self.save_new(&files::with_ending(path.to_owned(), files::BUILD))
            }
            (false, Purpose::Figure) => self.save_figure_new(path),
            (false, Purpose::Paper) => self.print_new(path),
        }
    }

    /// Saves at a path typed, where no dialog has asked before a file is written over.
    fn save_new(&mut self, path: &Path) -> Task<Message> {
        if path.exists() && self.desk.path.as_deref() != Some(path) {
            self.ask(taken(path))
        } else {
            self.save_at(path)
        }
    }

    pub(super) fn save(&mut self) -> Task<Message> {
        match self.desk.path.clone() {
            Some(path) => self.write(&path, self.desk.stamp),
            None => files::choose_new(&self.desk, self.settings.builds.as_deref()),
        }
    }

    pub(super) fn save_as(&mut self) -> Task<Message> {
        self.question = None;
        files::choose_new(&self.desk, self.settings.builds.as_deref())
    }

    /// The dialog has asked already before an existing file is written over.
    pub(super) fn save_at(&mut self, path: &Path) -> Task<Message> {
        let stamp = Stamp::on_disk(path).ok().flatten();
        self.write(path, stamp)
    }

    pub(super) fn save_over(&mut self) -> Task<Message> {
        self.question = None;
        match self.desk.path.clone() {
            Some(path) => self.save_at(&path),
            None => files::choose_new(&self.desk, self.settings.builds.as_deref()),
        }
    }

    fn write(&mut self, path: &Path, stamp: Option<Stamp>) -> Task<Message> {
        match file::save(path, self.desk.sheet(), stamp) {
            Ok(stamp) => {
                self.forget_recovery();
                self.desk.path = Some(path.to_owned());
                self.desk.stamp = Some(stamp);
                self.desk.history.mark_saved(self.desk.sheet().clone());
                self.kept = self.desk.revision();
                self.settings.remember(path);
                self.bench.look(&self.settings.recent);
                self.save_settings();
                self.after_save.take().map_or_else(Task::none, |next| self.proceed(next))
            }
            Err(SaveError::ChangedOnDisk { .. }) => {
                self.ask(Question::ChangedOnDisk { unsaved: true })
            }
            Err(error) => self.ask(Question::Told(error.to_string())),
        }
    }

    pub(super) fn reread(&mut self) -> Task<Message> {
        self.question = None;
        match self.desk.path.clone() {
            Some(path) => self.open(&path),
            None => Task::none(),
        }
    }

    /// Back at the window: files may have come, gone or changed meanwhile.
    pub(super) fn returned(&mut self) -> Task<Message> {
        self.bench.look(&self.settings.recent);
        self.desk.company.look_again();
        self.look_at_file()
    }

    /// Has another program changed the file? Asked once a change.
    pub(super) fn look_at_file(&mut self) -> Task<Message> {
        let Some((path, stamp)) = self.desk.path.as_deref().zip(self.desk.stamp) else {
            return Task::none();
        };
        match Stamp::on_disk(path) {
            Ok(Some(now)) if now != stamp && self.seen != Some(now) && self.question.is_none() => {
                self.seen = Some(now);
                let unsaved = self.desk.history.is_changed_since_save();
                self.ask(Question::ChangedOnDisk { unsaved })
            }
            _ => Task::none(),
        }
    }
}
