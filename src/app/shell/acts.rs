//! What the shell does on each message.

use std::path::Path;

use iced::advanced::widget::operate;
use iced::advanced::widget::operation::scrollable;
use iced::widget::operation;
use iced::{Size, Task, keyboard, theme::Mode, widget::Id};

use super::{App, Message};
use crate::app::desk::Desk;
use crate::app::files::Purpose;
use crate::app::question::{Next, Question};
use crate::app::screen::reading::{self, Reading};
use crate::app::screen::{Place, build_sheet, contents};
use crate::app::settings::{Daylight, Settings};
use crate::app::widget::field;
use crate::app::{files, keys};
use crate::lesson::Library;
use crate::quantity::UnitSet;
use crate::sheet::file::{self, SaveError, Stamp, autosave};
use crate::sheet::{Edit, History, Sheet};

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

/// The other set of units.
pub(super) fn other_units(settings: &mut Settings) {
    settings.units.set = match settings.units.set {
        UnitSet::Metric => UnitSet::Imperial,
        UnitSet::Imperial => UnitSet::Metric,
    };
}

/// The next of light, dark and as the system.
pub(super) fn other_light(settings: &mut Settings) {
    settings.daylight = match settings.daylight {
        Daylight::Day => Daylight::Night,
        Daylight::Night => Daylight::Follow,
        Daylight::Follow => Daylight::Day,
    };
}

/// A path typed leads to a file that is there already.
pub(super) fn taken(path: &Path) -> Question {
    Question::Told(format!(
        "There is a file at {} already. Save under another name.",
        path.display()
    ))
}

impl App {
    pub(super) fn read(&mut self, message: reading::Message) -> Task<Message> {
        let Some(reading) = &mut self.reading else { return Task::none() };
        match reading.update(message, &self.settings) {
            reading::Action::None => Task::none(),
            reading::Action::Field(event) => self.field(&event),
            reading::Action::Edit(edit, gesture) => self.edit(&edit, gesture.as_deref()),
            reading::Action::NextUnit(id) => {
                let si = self.desk.outcome.values.si(id).unwrap_or_default();
                self.with_settings(|settings| settings.units.pick_next(id, si))
            }
            reading::Action::PutBack(ids) => {
                self.desk.put_back(&ids);
                Task::none()
            }
            reading::Action::Lesson(id) => self.go(Place::Lesson(id)),
            reading::Action::Web(address) => self.ask(Question::Web(address)),
            reading::Action::Noted(noted) => self.noted(noted),
            reading::Action::Figure(unsaved) => self.choose_figure(unsaved),
            reading::Action::Run(task) => task.map(Message::Reading),
        }
    }

    pub(super) fn enter(&mut self, message: build_sheet::Message) -> Task<Message> {
        match self.build_sheet.update(message) {
            build_sheet::Action::None => Task::none(),
            build_sheet::Action::Field(event) => self.field(&event),
            build_sheet::Action::Edit(edit, gesture) => self.edit(&edit, gesture.as_deref()),
        }
    }

    fn edit(&mut self, edit: &Edit, gesture: Option<&str>) -> Task<Message> {
        match self.desk.apply(edit, gesture) {
            Ok(()) => Task::none(),
            Err(words) => self.ask(Question::Told(words)),
        }
    }

    fn field(&mut self, event: &field::Event) -> Task<Message> {
        field::perform(event, &mut self.desk, &self.settings);
        Task::none()
    }

    pub(super) fn pick(&mut self, message: contents::Message) -> Task<Message> {
        self.go(match message {
            contents::Message::Lesson(id) => Place::Lesson(id),
            contents::Message::BuildSheet => Place::BuildSheet,
            contents::Message::WalkRound => Place::WalkRound,
        })
    }

    pub(super) fn go(&mut self, place: Place) -> Task<Message> {
        if let Place::Lesson(id) = &place {
            let known = self.reading.as_ref().is_some_and(|reading| reading.id == *id);
            if !known {
                let Some(lesson) = self.lesson(id) else { return Task::none() };
                let source = &self.source;
                let mut reading = Reading::new(lesson, |file| source.picture(id, file));
                if let Some(record) = self.book.notebook().lesson(id) {
                    reading.recall(lesson, record);
                }
                self.reading = Some(reading);
                self.book.opened(id);
            }
            self.settings.lesson = Some(id.clone());
        }
        let offset = match (&place, &self.reading) {
            (Place::Lesson(_), Some(reading)) => reading.offset,
            _ => 0.0,
        };
        self.menu = false;
        if place == Place::Notebook {
            self.notes.open(self.book.notebook());
        }
        self.place = place;
        operation::scroll_to(reading::PAGE, operation::AbsoluteOffset { x: 0.0, y: offset })
    }

    pub(super) fn turn(&mut self, back: bool) -> Task<Message> {
        let Place::Lesson(id) = &self.place else { return Task::none() };
        let (before, after) = self.neighbours(id);
        match if back { before } else { after } {
            Some(lesson) => self.go(Place::Lesson(lesson.id.clone())),
            None => Task::none(),
        }
    }

    /// The lessons before and after one.
    pub(super) fn neighbours(
        &self,
        id: &str,
    ) -> (Option<&crate::lesson::Lesson>, Option<&crate::lesson::Lesson>) {
        let lessons = &self.library.lessons;
        let Some(place) = lessons.iter().position(|lesson| lesson.id == id) else {
            return (None, None);
        };
        (place.checked_sub(1).and_then(|before| lessons.get(before)), lessons.get(place + 1))
    }

    pub(super) fn stepped(&mut self, step: fn(&mut Desk) -> bool) -> Task<Message> {
        if self.question.is_none() {
            step(&mut self.desk);
        }
        Task::none()
    }

    pub(super) fn ask(&mut self, question: Question) -> Task<Message> {
        self.question = Some(question);
        operation::focus("answer:0")
    }

    pub(super) fn answered(&mut self) -> Task<Message> {
        self.question = None;
        self.after_save = None;
        self.menu = false;
        Task::none()
    }

    pub(super) fn turn_menu(&mut self) -> Task<Message> {
        self.menu = !self.menu;
        Task::none()
    }

    pub(super) fn turn_strip(&mut self) -> Task<Message> {
        self.strip = !self.strip;
        Task::none()
    }

    pub(super) fn with_settings(&mut self, change: impl FnOnce(&mut Settings)) -> Task<Message> {
        change(&mut self.settings);
        self.save_settings();
        Task::none()
    }

    /// Settings are never worth stopping for, so a folder that cannot be written is let be.
    fn save_settings(&mut self) {
        if let Some(reading) = &self.reading {
            self.settings.place = reading.offset;
        }
        let _ = self.settings.save(&self.folders.settings);
    }

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
            Next::Open => files::choose(Purpose::Open),
            Next::OpenPath(path) => self.open(&path),
            Next::Demo(id) => files::open_demo(id).map_or_else(Task::none, |desk| self.put(desk)),
            Next::Blank => {
                let task = self.put(blank());
                Task::batch([task, self.go(Place::BuildSheet)])
            }
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

    fn put(&mut self, desk: Desk) -> Task<Message> {
        self.forget_recovery();
        let company = std::mem::take(&mut self.desk.company);
        self.desk = desk;
        self.desk.company = company;
        self.kept = self.desk.revision();
        self.recovered = None;
        if let Some(reading) = &mut self.reading {
            reading.forget_drawn();
        }
        self.build_sheet.forget_drawn();
        self.offer_recovery();
        Task::none()
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

    /// A dialog that ended without a pick: put away by the reader, or never there at all, and then
    /// the path can be typed.
    pub(super) fn unpicked(&mut self, how: files::Unpicked) -> Task<Message> {
        if how.at_once {
            let text = match how.purpose {
                Purpose::Figure => self.figure_path(),
                _ => self.desk.path.clone(),
            };
            let text = text.map(|path| path.display().to_string()).unwrap_or_default();
            self.question = Some(Question::Path { purpose: how.purpose, text });
            operation::focus(crate::app::question::PATH)
        } else {
            self.after_save = None;
            self.figure = None;
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
            None => files::choose_new(&self.desk),
        }
    }

    pub(super) fn save_as(&mut self) -> Task<Message> {
        self.question = None;
        files::choose_new(&self.desk)
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
            None => files::choose_new(&self.desk),
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

    /// Back at the window: has another program changed the file meanwhile? Asked once a change.
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

    pub(super) fn keep(&mut self) -> Task<Message> {
        if self.desk.history.is_changed_since_save() {
            // A copy that cannot be kept is no reason to stop the reader; saving still says why.
            let _ = autosave::write(
                &self.folders.recovery,
                self.desk.path.as_deref(),
                self.desk.sheet(),
            );
        }
        self.kept = self.desk.revision();
        Task::none()
    }

    pub(super) fn offer_recovery(&mut self) {
        let path = self.desk.path.clone();
        if let Ok(Some(found)) = autosave::find(&self.folders.recovery, path.as_deref())
            && let Ok(sheet) = Sheet::read(&found.text)
            && sheet != *self.desk.sheet()
        {
            self.recovered = Some(sheet);
            self.question.get_or_insert(Question::Recover(
                path.unwrap_or_else(|| "a build without a file".into()),
            ));
        }
    }

    pub(super) fn recover(&mut self) -> Task<Message> {
        self.question = None;
        if let Some(sheet) = self.recovered.take() {
            self.desk.replace(sheet);
        }
        Task::none()
    }

    pub(super) fn refuse_recovery(&mut self) -> Task<Message> {
        self.recovered = None;
        self.forget_recovery();
        self.answered()
    }

    fn forget_recovery(&mut self) {
        if self.recovered.is_none() {
            let _ = autosave::discard(&self.folders.recovery, self.desk.path.as_deref());
        }
    }

    pub(super) fn scroll(&mut self, how: keys::Scroll) -> Task<Message> {
        let page = Id::new(reading::PAGE);
        let by = |y| {
            let offset = scrollable::AbsoluteOffset { x: 0.0, y };
            operate(scrollable::scroll_by(page.clone(), offset))
        };
        match how {
            keys::Scroll::Lines(lines) => by(f32::from(lines) * 60.0),
            keys::Scroll::Pages(pages) => {
                by(f32::from(pages) * (self.size().height * 0.75).max(120.0))
            }
            keys::Scroll::Top => {
                operation::snap_to(reading::PAGE, operation::RelativeOffset::START)
            }
            keys::Scroll::End => operation::snap_to(reading::PAGE, operation::RelativeOffset::END),
        }
    }

    pub(super) fn key(&mut self, event: &keyboard::Event) -> Task<Message> {
        match keys::message(event, self.question.as_ref()) {
            Some(message) => self.update(message),
            None => Task::none(),
        }
    }

    pub(super) fn resized(&mut self, size: Size) -> Task<Message> {
        self.pixels = size * self.scale();
        self.settings.window = (self.pixels.width, self.pixels.height);
        Task::none()
    }

    pub(super) fn system(&mut self, mode: Mode) -> Task<Message> {
        self.system_dark = mode == Mode::Dark;
        Task::none()
    }

    pub(super) fn reload_lessons(&mut self) -> Task<Message> {
        self.library = Library::load(self.source.as_ref());
        let Some(reading) = self.reading.take() else { return Task::none() };
        let id = reading.id.clone();
        self.reading = self.lesson(&id).map(|lesson| {
            let source = &self.source;
            let mut reading = reading.reloaded(lesson, |file| source.picture(&id, file));
            if let Some(record) = self.book.notebook().lesson(&id) {
                reading.recall(lesson, record);
            }
            reading
        });
        Task::none()
    }
}
