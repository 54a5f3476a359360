//! What the shell does on each message.

use iced::advanced::widget::operate;
use iced::advanced::widget::operation::scrollable;
use iced::widget::operation;
use iced::{Point, Size, Task, keyboard, theme::Mode, widget::Id, window};

use super::{App, Message};
use crate::app::desk::Desk;
use crate::app::printing::Print;
use crate::app::question::{self, Question};
use crate::app::screen::preferences::Choices;
use crate::app::screen::reading::{self, Reading};
use crate::app::screen::{Place, build_sheet, walk_round};
use crate::app::settings::{Daylight, Settings};
use crate::app::widget::field;
use crate::app::{focus, keys};
use crate::lesson::Front;
use crate::quantity::UnitSet;
use crate::sheet::Edit;

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

impl App {
    pub(super) fn read(&mut self, message: reading::Message) -> Task<Message> {
        let Some(reading) = &mut self.reading else { return Task::none() };
        match reading.update(message, &self.settings) {
            reading::Action::None => Task::none(),
            reading::Action::Scrolled => self.look_where(),
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
            reading::Action::Part { lesson, anchor } => self.go_to_part(lesson, &anchor),
            reading::Action::Show => self.show(),
            reading::Action::Print => self.print_here(),
            reading::Action::Web(address) => self.ask(Question::Web(address)),
            reading::Action::Noted(noted) => self.noted(noted),
            reading::Action::Figure(unsaved) => self.choose_figure(unsaved),
            reading::Action::Copy(unsaved) => self.copy_figure(unsaved),
            reading::Action::Run(task) => task.map(Message::Reading),
        }
    }

    /// Looks under which heading the page stands now.
    fn look_where(&mut self) -> Task<Message> {
        let Some(reading) = &self.reading else { return Task::none() };
        let Some(lesson) = self.lesson(&reading.id) else { return Task::none() };
        let now = reading.section.as_deref();
        reading::section_at(&lesson.headings, reading.offset, now).map(Message::Reading)
    }

    pub(super) fn enter(&mut self, message: build_sheet::Message) -> Task<Message> {
        match self.build_sheet.update(message) {
            build_sheet::Action::None => Task::none(),
            build_sheet::Action::Field(event) => self.field(&event),
            build_sheet::Action::Edit(edit, gesture) => {
                let task = self.edit(&edit, gesture.as_deref());
                let count = self.desk.sheet().parts().len();
                match build_sheet::focus_after(&edit, count) {
                    Some((part, word)) if self.question.is_none() => {
                        self.build_sheet.show_part(part);
                        task.chain(focus::on(build_sheet::control(part, word)))
                    }
                    _ => task,
                }
            }
        }
    }

    pub(super) fn walk(&mut self, message: walk_round::Message) -> Task<Message> {
        match self.walk_round.update(message) {
            walk_round::Action::None => Task::none(),
            walk_round::Action::Lesson(id) => self.go(Place::Lesson(id)),
            walk_round::Action::Print => self.print(Print::WalkRound),
        }
    }

    pub(super) fn edit(&mut self, edit: &Edit, gesture: Option<&str>) -> Task<Message> {
        match self.desk.apply(edit, gesture) {
            Ok(()) => Task::none(),
            Err(words) => self.ask(Question::Told(words)),
        }
    }

    pub(super) fn field(&mut self, event: &field::Event) -> Task<Message> {
        field::perform(event, &mut self.desk, &self.settings);
        Task::none()
    }

    pub(super) fn go(&mut self, place: Place) -> Task<Message> {
        if let Place::Lesson(id) | Place::Workshop(id) = &place {
            let known = self.reading.as_ref().is_some_and(|reading| reading.id == *id);
            if !known {
                let Some(lesson) = self.lesson(id) else { return Task::none() };
                let mut reading = Reading::new(lesson, |file| self.library.picture(id, file));
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
        if let Some(reading) = &self.reading {
            self.settings.section.clone_from(&reading.section);
        }
        match place {
            Place::BuildSheet => self.build_sheet.open(),
            Place::Notebook => self.notes.open(self.book.notebook()),
            Place::Bench => self.bench.look(&self.settings.recent),
            Place::Settings => self.choices = Choices::new(&self.settings),
            _ => {}
        }
        self.place = place;
        operation::scroll_to(reading::PAGE, operation::AbsoluteOffset { x: 0.0, y: offset })
    }

    /// Opens a lesson at a heading.
    pub(super) fn go_to_part(&mut self, lesson: String, anchor: &str) -> Task<Message> {
        let there = self.go(Place::Lesson(lesson));
        there.chain(reading::jump_to(anchor).map(Message::Reading))
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
    pub(super) fn neighbours(&self, id: &str) -> (Option<&Front>, Option<&Front>) {
        let lessons = self.library.fronts();
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
        operation::focus(question::FIRST)
    }

    pub(super) fn answered(&mut self) -> Task<Message> {
        self.question = None;
        self.call_off_printing();
        self.put_off_recovery();
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
    pub(super) fn save_settings(&mut self) {
        if let Some(reading) = &self.reading {
            self.settings.place = reading.offset;
            self.settings.section.clone_from(&reading.section);
        }
        let _ = self.settings.save(&self.folders.settings);
    }

    pub(super) fn scroll(&mut self, how: keys::Scroll) -> Task<Message> {
        // A question that stands over the page moves in its place.
        let page = Id::new(if self.question.is_some() { question::SHEET } else { reading::PAGE });
        let by = |y| {
            let offset = scrollable::AbsoluteOffset { x: 0.0, y };
            operate(scrollable::scroll_by(page.clone(), offset))
        };
        match how {
            keys::Scroll::Lines(lines) => by(f32::from(lines) * 60.0),
            keys::Scroll::Pages(pages) => {
                by(f32::from(pages) * (self.size().height * 0.75).max(120.0))
            }
            keys::Scroll::Top => operation::snap_to(page, operation::RelativeOffset::START),
            keys::Scroll::End => operation::snap_to(page, operation::RelativeOffset::END),
        }
    }

    pub(super) fn key(&mut self, event: &keyboard::Event) -> Task<Message> {
        match keys::message(event, self.question.as_ref(), &self.place) {
            Some(message) => self.update(message),
            None => Task::none(),
        }
    }

    /// Makes the window no larger than the screen it stands on, which may be another than the last time.
    pub(super) fn fit(&mut self, id: window::Id, screen: Option<Size>) -> Task<Message> {
        let (now, screen) = (self.size(), screen.unwrap_or(Size::INFINITE));
        let fits = Size::new(now.width.min(screen.width), now.height.min(screen.height));
        if fits == now { Task::none() } else { window::resize(id, fits) }
    }

    pub(super) fn resized(&mut self, size: Size) -> Task<Message> {
        self.pixels = size * self.scale();
        self.settings.window = (self.pixels.width, self.pixels.height);
        Task::none()
    }

    pub(super) fn moved(&mut self, to: Point) -> Task<Message> {
        let scale = self.scale();
        self.settings.at = Some((to.x * scale, to.y * scale));
        Task::none()
    }

    pub(super) fn system(&mut self, mode: Mode) -> Task<Message> {
        self.system_dark = mode == Mode::Dark;
        Task::none()
    }
}
