//! The window put together: rail, page, strip, and a question over them.

use iced::widget::{column, container, row};
use iced::{Element, Fill};

use super::{App, Message};
use crate::app::rail::{self, Rail};
use crate::app::screen::Place;
use crate::app::screen::reading::{self, Around, MARGIN};
use crate::app::theme::{self, MEASURE, UNIT};
use crate::app::widget::inert::inert;
use crate::app::{letters, question, strip};

/// From this width on there is room for the rail beside the page.
const RAIL_FROM: f32 = 860.0;
/// From this width on there is room for the margin as well.
const MARGIN_FROM: f32 = rail::WIDTH + MARGIN + 520.0;

/// The width that the rail takes beside the page.
fn beside(width: f32) -> f32 {
    if width >= RAIL_FROM { rail::WIDTH } else { 0.0 }
}

impl App {
    /// What the window shows.
    pub fn view(&self) -> Element<'_, Message> {
        letters::load();
        let width = self.size().width;
        let lessons = self.library.fronts();
        let page = container(self.page(width)).style(theme::page).width(Fill).height(Fill);
        if let Place::Workshop(_) = self.place {
            return self.under_question(page);
        }
        let rail = Rail { place: &self.place, lessons, desk: &self.desk, settings: &self.settings };
        let body: Element<'_, Message> = if width >= RAIL_FROM {
            row![rail.beside(), page].height(Fill).into()
        } else {
            column![rail.above(self.menu, self.size()), page].height(Fill).into()
        };
        let window = column![body, strip::view(&self.desk, &self.settings, width, self.strip)];
        self.under_question(window)
    }

    /// The window, and over it what is asked.
    fn under_question<'a>(
        &'a self,
        window: impl Into<Element<'a, Message>>,
    ) -> Element<'a, Message> {
        let window = inert(self.question.is_some(), window);
        match &self.question {
            _ if self.hovered => question::invitation(window),
            Some(asked) => question::over(window, asked),
            None => iced::widget::stack![window].into(),
        }
    }

    fn page(&self, width: f32) -> Element<'_, Message> {
        let lessons = self.library.fronts();
        match &self.place {
            Place::Contents => self.contents(),
            Place::Lesson(id) => self.reading(id, width),
            Place::Workshop(id) => self.class(id),
            Place::BuildSheet => {
                self.build_sheet.view(&self.desk, &self.settings, width).map(Message::BuildSheet)
            }
            Place::WalkRound => {
                self.walk_round.view(lessons, &self.desk, &self.settings).map(Message::WalkRound)
            }
            Place::Notebook => self
                .notes
                .view(lessons, self.book.notebook(), &self.settings.units)
                .map(Message::Notebook),
            Place::Bench => self.bench.view(&self.desk, &self.settings, width - beside(width)),
            Place::Settings => self.preferences(),
        }
    }

    fn reading(&self, id: &str, width: f32) -> Element<'_, Message> {
        let (Some(reading), Some(lesson)) = (&self.reading, self.lesson(id)) else {
            return iced::widget::text("This lesson is not there any more. Pick another.").into();
        };
        let margin_under = width < MARGIN_FROM;
        let margin = if margin_under { 0.0 } else { MARGIN };
        let (before, after) = self.neighbours(id);
        let around = Around {
            library: &self.library,
            before,
            after,
            finished: self.book.notebook().lesson(id).is_some_and(|it| it.finished.is_some()),
            margin_under,
            column: (width - beside(width) - margin - 4.0 * UNIT).clamp(200.0, MEASURE),
            dark: self.is_dark(),
        };
        reading::Reading::view(reading, lesson, around, &self.desk, &self.settings)
            .map(Message::Reading)
    }
}
