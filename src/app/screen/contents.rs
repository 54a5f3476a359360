//! The lessons on offer, how far the reader has come in each, and where they stopped.

mod card;
mod welcome;

use iced::widget::{Column, column, container, row, text};
use iced::{Element, Fill};

use crate::app::desk::Desk;
use crate::app::screen::preferences::OwnLessons;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, MEASURE, SEMIBOLD, UNIT, size};
use crate::app::widget::field;
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Front, Library};
use crate::notebook::Notebook;
pub use welcome::MASS_FIELD;

/// What is picked.
#[derive(Debug, Clone)]
pub enum Message {
    /// A lesson.
    Lesson(String),
    /// The lesson last read, where it was left.
    GoOn,
    /// The build sheet.
    BuildSheet,
    /// The walk-round.
    WalkRound,
    /// The settings.
    Settings,
    /// A number is being changed.
    Field(field::Event),
    /// A build of the reader's own.
    StartOwn,
    /// The card for a first start is put away.
    WelcomeClosed,
}

/// What the list is drawn from.
#[derive(Clone, Copy)]
pub struct Contents<'a> {
    /// The lessons.
    pub library: &'a Library,
    /// The build.
    pub desk: &'a Desk,
    /// The lesson last read, and units.
    pub settings: &'a Settings,
    /// How far the reader has come.
    pub notebook: &'a Notebook,
    /// How the reader's own lessons stand.
    pub own: &'a OwnLessons,
    /// Whether the card for a first start is shown.
    pub welcome: bool,
    /// How many lessons are listed: all of them, or as many as can be seen before the page is scrolled.
    pub most: usize,
}

/// The least height of a card, and of what stands above the first.
const CARD: f32 = 130.0;
const HEAD: f32 = 150.0;

/// How many cards a page of a height can show.
pub fn in_sight(height: f32) -> usize {
    ((height - HEAD) / CARD).ceil().max(1.0) as usize
}

impl<'a> Contents<'a> {
    /// The list of lessons.
    pub fn view(self) -> Element<'a, Message> {
        let Self { desk, settings, .. } = self;
        let lessons = self.library.fronts();
        let next = lessons.iter().find(|lesson| !self.is_finished(&lesson.id));
        let is_next = |lesson: &Front| next.is_some_and(|next| next.id == lesson.id);
        let cards = lessons.iter().take(self.most).map(|lesson| self.card(lesson, is_next(lesson)));
        let empty = lessons.is_empty().then(|| {
            text("There are no lessons here. Start Heftwise without --lessons to read its own.")
                .size(size::BODY)
                .width(Fill)
        });
        let page = column![
            text("Lessons").size(size::TITLE).font(BOLD),
            // Nothing that comes and goes stands before the field of the welcome.
            self.welcome.then(|| welcome::card(lessons, desk, settings)),
            self.own.wrong.then(|| self.own_lessons()),
            self.go_on(),
            empty,
            text(format!(
                "Each lesson works on the build on your desk, {}. Change a number in a lesson and \
                 every other lesson has it too.",
                desk.name()
            ))
            .size(size::BODY)
            .line_height(theme::LEADING)
            .width(Fill),
            Column::with_children(cards).spacing(2.0 * UNIT),
            row![
                pressable(Kind::Plain, text("See every number of the build").size(size::LABEL))
                    .on_press(Message::BuildSheet),
                pressable(Kind::Plain, text("Check every limit at once").size(size::LABEL))
                    .on_press(Message::WalkRound),
            ]
            .spacing(UNIT)
            .wrap()
            .vertical_spacing(UNIT),
        ]
        .spacing(3.0 * UNIT)
        .max_width(MEASURE)
        .width(Fill);
        super::scrolled(page)
    }

    fn is_finished(self, id: &str) -> bool {
        self.notebook.lesson(id).is_some_and(|record| record.finished.is_some())
    }

    /// The lesson last read and the section the page stood at, unless it is finished.
    fn go_on(self) -> Option<Element<'a, Message>> {
        let id = self.settings.lesson.as_deref().filter(|id| !self.is_finished(id))?;
        let lesson = self.library.lesson(id)?;
        let anchor = self.settings.section.as_deref();
        let heading = anchor.and_then(|it| lesson.headings.iter().find(|h| h.anchor == it));
        let place = match heading {
            Some(heading) => format!("{}: {}", lesson.front.title, heading.title),
            None => lesson.front.title.clone(),
        };
        let inside = column![
            text("Go on where you stopped").size(size::LABEL).style(theme::soft),
            text(place).size(size::MINOR).font(SEMIBOLD).width(Fill),
            pressable(Kind::Main, text("Go on").size(size::LABEL)).on_press(Message::GoOn),
        ]
        .spacing(UNIT);
        Some(container(inside).style(theme::note).padding(2.0 * UNIT).width(Fill).into())
    }

    /// Lessons of the reader's own that cannot be read.
    fn own_lessons(self) -> Element<'a, Message> {
        let words = self.own.words.iter().map(|words| text(words).size(size::LABEL).into());
        let inside = column![
            text("Your own lessons").size(size::LABEL).font(SEMIBOLD),
            Column::with_children(words).spacing(UNIT / 2.0),
            pressable(Kind::Word, text("To the settings").size(size::LABEL))
                .on_press(Message::Settings),
        ]
        .spacing(UNIT);
        container(inside).style(theme::caution).padding(1.5 * UNIT).width(Fill).into()
    }
}
