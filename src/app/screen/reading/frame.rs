//! What stands round the text of a lesson: its title, and the way onward.

use iced::widget::{Column, column, row, rule, text};
use iced::{Element, Fill};

use super::{Around, Message};
use crate::app::theme::{self, BOLD, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Block, BlockKind, Front, Lesson};

/// The title of a lesson, what it is for, and its parts.
pub(super) fn title<'a>(lesson: &'a Lesson) -> Element<'a, Message> {
    let minutes = lesson.front.minutes.map(|minutes| format!("About {minutes} minutes."));
    let goals = lesson.front.goals.iter().map(|goal| {
        row![text("•").size(size::LABEL), text(goal).size(size::LABEL).width(Fill)]
            .spacing(UNIT)
            .into()
    });
    let outline = lesson.headings.iter().filter(|heading| heading.level == 2).map(|heading| {
        pressable(Kind::Word, text(&heading.title).size(size::LABEL))
            .on_press(Message::Jump(heading.anchor.clone()))
            .into()
    });
    let title = text(&lesson.front.title).size(size::TITLE).font(BOLD).line_height(1.2).width(Fill);
    let goals = (!lesson.front.goals.is_empty()).then(|| {
        column![
            text("After this you can").size(size::LABEL).font(SEMIBOLD),
            Column::with_children(goals).spacing(UNIT / 2.0),
        ]
        .spacing(UNIT)
    });
    let outline = (!lesson.headings.is_empty()).then(|| {
        column![
            text("In this lesson").size(size::LABEL).font(SEMIBOLD),
            iced::widget::Row::with_children(outline)
                .spacing(2.0 * UNIT)
                .width(Fill)
                .wrap()
                .vertical_spacing(UNIT / 2.0),
        ]
        .spacing(UNIT)
    });
    column![
        title,
        row![
            minutes.map(|minutes| text(minutes).size(size::LABEL).style(theme::soft)),
            pressable(Kind::Word, text("Show it to a class").size(size::LABEL))
                .on_press(Message::Show),
            pressable(Kind::Word, text("Print a handout").size(size::LABEL))
                .on_press(Message::Print),
        ]
        .spacing(2.0 * UNIT)
        .wrap()
        .vertical_spacing(UNIT / 2.0),
        goals,
        outline,
        rule::horizontal(1).style(theme::hairline),
    ]
    .spacing(UNIT)
    .into()
}

/// The text without a first heading that only says the title again.
pub(super) fn body(lesson: &Lesson) -> &[Block] {
    match lesson.blocks.split_first() {
        Some((Block { kind: BlockKind::Heading { level: 1, .. }, .. }, rest)) => rest,
        _ => &lesson.blocks,
    }
}

/// What stands at the end of a lesson: whether it is finished, and the lessons beside it.
pub(super) fn onward(around: Around<'_>) -> Element<'_, Message> {
    let to = |lesson: &Front, words: String| {
        pressable(Kind::Plain, text(words).size(size::LABEL))
            .on_press(Message::Lesson(lesson.id.clone()))
    };
    let (said, word) = if around.finished {
        ("You have finished this lesson.", "Not finished after all")
    } else {
        ("", "I have finished this lesson")
    };
    column![
        rule::horizontal(1).style(theme::hairline),
        row![
            pressable(Kind::Plain, text(word).size(size::LABEL))
                .on_press(Message::Finished(!around.finished)),
            text(said).size(size::LABEL).style(theme::soft),
        ]
        .spacing(UNIT)
        .align_y(iced::Center),
        row![
            around.before.map(|lesson| to(lesson, format!("← {}", lesson.title))),
            iced::widget::space::horizontal(),
            around.after.map(|lesson| to(lesson, format!("{} →", lesson.title))),
        ],
    ]
    .spacing(2.0 * UNIT)
    .into()
}
