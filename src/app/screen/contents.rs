//! The lessons on offer.

use iced::widget::{Column, column, container, row, scrollable, text};
use iced::{Element, Fill, Padding};

use crate::app::desk::Desk;
use crate::app::theme::{self, BOLD, MEASURE, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Lesson;
use crate::notebook::{Notebook, Record};

/// What is picked.
#[derive(Debug, Clone)]
pub enum Message {
    /// A lesson.
    Lesson(String),
    /// The build sheet.
    BuildSheet,
    /// The walk-round.
    WalkRound,
}

/// The list of lessons, with how long each takes and what it is for.
pub fn view<'a>(
    lessons: &'a [Lesson],
    last: Option<&'a str>,
    desk: &'a Desk,
    notebook: &'a Notebook,
) -> Element<'a, Message> {
    let cards = lessons
        .iter()
        .map(|lesson| card(lesson, last == Some(lesson.id.as_str()), notebook.lesson(&lesson.id)));
    let page = column![
        text("Lessons").size(size::TITLE).font(BOLD),
        text(format!(
            "Each lesson works on the build on your desk, {}. Change a number in a lesson and every \
             other lesson has it too.",
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
        .wrap(),
    ]
    .spacing(3.0 * UNIT)
    .max_width(MEASURE)
    .width(Fill);
    scrollable(container(page).center_x(Fill).padding(Padding::from([3.0 * UNIT, 2.0 * UNIT])))
        .id(super::reading::PAGE)
        .direction(theme::bar())
        .style(theme::scroll)
        .height(Fill)
        .into()
}

fn card<'a>(lesson: &'a Lesson, last: bool, record: Option<&'a Record>) -> Element<'a, Message> {
    let minutes = lesson.minutes.map_or_else(String::new, |minutes| format!("{minutes} minutes"));
    let goals = lesson
        .goals
        .iter()
        .map(|goal| text(goal).size(size::LABEL).style(theme::soft).width(Fill).into());
    let word = if last { "Read on" } else { "Read" };
    let progress = record.and_then(progress);
    container(
        column![
            row![
                text(&lesson.title).size(size::HEADING).font(SEMIBOLD).width(Fill),
                text(minutes).size(size::LABEL).style(theme::soft),
            ]
            .spacing(UNIT),
            Column::with_children(goals).spacing(UNIT / 2.0),
            progress.map(|words| text(words).size(size::LABEL).font(SEMIBOLD)),
            pressable(Kind::Main, text(word).size(size::LABEL))
                .on_press(Message::Lesson(lesson.id.clone())),
        ]
        .spacing(UNIT),
    )
    .style(theme::block)
    .padding(2.0 * UNIT)
    .width(Fill)
    .into()
}

/// How far the reader has come: a mark with its word, so that it does not hang on a shape alone.
fn progress(record: &Record) -> Option<String> {
    match (&record.finished, &record.opened) {
        (Some(when), _) => Some(format!("✓ Finished {}", when.date())),
        (None, Some(when)) => Some(format!("Opened {}", when.date())),
        (None, None) => None,
    }
}
