//! The lessons on offer.

use iced::widget::{Column, column, container, row, scrollable, text};
use iced::{Element, Fill, Padding};

use crate::app::desk::Desk;
use crate::app::theme::{self, BOLD, MEASURE, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Lesson;

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
) -> Element<'a, Message> {
    let cards = lessons.iter().map(|lesson| card(lesson, last == Some(lesson.id.as_str())));
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

fn card<'a>(lesson: &'a Lesson, last: bool) -> Element<'a, Message> {
    let minutes = lesson.minutes.map_or_else(String::new, |minutes| format!("{minutes} minutes"));
    let goals = lesson
        .goals
        .iter()
        .map(|goal| text(goal).size(size::LABEL).style(theme::soft).width(Fill).into());
    let word = if last { "Read on" } else { "Read" };
    container(
        column![
            row![
                text(&lesson.title).size(size::HEADING).font(SEMIBOLD).width(Fill),
                text(minutes).size(size::LABEL).style(theme::soft),
            ]
            .spacing(UNIT),
            Column::with_children(goals).spacing(UNIT / 2.0),
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
