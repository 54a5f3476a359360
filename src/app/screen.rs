//! The screens: each a struct, its messages, what it asks of the shell, and its view.

pub mod bench;
pub mod build_sheet;
pub mod contents;
pub mod notebook;
pub mod preferences;
pub mod reading;
pub mod walk_round;
pub mod workshop;

use iced::widget::{container, scrollable};
use iced::{Element, Fill, Padding};

use crate::app::theme::{self, UNIT};
use crate::app::widget::afresh::afresh;

/// Which screen is shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// The list of lessons.
    Contents,
    /// A lesson, by its id.
    Lesson(String),
    /// A lesson shown to a class, by its id.
    Workshop(String),
    /// Every number of the build.
    BuildSheet,
    /// Every limit at once.
    WalkRound,
    /// The reader's answers, measurements and notes.
    Notebook,
    /// The builds: the reader's own, companions, recent ones, a new one.
    Bench,
    /// Units, light, text, folders.
    Settings,
}

/// The page of a screen, scrolled when it is taller than its place.
fn scrolled<'a, Message: 'a>(page: impl Into<Element<'a, Message>>) -> Element<'a, Message> {
    let page = container(page).center_x(Fill).padding(Padding::from([3.0 * UNIT, 2.0 * UNIT]));
    let page = scrollable(page)
        .id(reading::PAGE)
        .direction(theme::bar())
        .style(theme::scroll)
        .height(Fill);
    afresh(None, page)
}
