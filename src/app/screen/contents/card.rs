//! The card of one lesson.

use iced::widget::{Column, Row, column, container, row, text};
use iced::{Center, Element, Fill, Padding};

use super::{Contents, Message};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Front, Library, Minutes};
use crate::notebook::Record;

impl<'a> Contents<'a> {
    /// A lesson: how long it takes, what it is for, what to read first, how far the reader has come. All
    /// that it is for is told of the `next` one alone; of the others the first, so that many can be
    /// seen at once.
    pub(super) fn card(self, lesson: &'a Front, next: bool) -> Element<'a, Message> {
        let record = self.notebook.lesson(&lesson.id);
        let minutes = self.library.minutes(lesson).map(in_words);
        let goals = lesson.goals.iter().take(if next { usize::MAX } else { 1 }).map(|goal| {
            let mark = next.then(|| text("•").size(size::LABEL).style(theme::soft));
            let goal = text(goal).size(size::LABEL).style(theme::soft).width(Fill);
            row![mark, goal].spacing(UNIT).into()
        });
        let word = match record {
            Some(record) if record.finished.is_some() => "Read again",
            Some(record) if record.opened.is_some() => "Read on",
            _ => "Read",
        };
        let progress = [Some(progress(record)), answered(self.library, record, &lesson.id)];
        let progress = progress.into_iter().flatten().collect::<Vec<_>>().join(" · ");
        let inside = column![
            row![
                text(&lesson.title).size(size::MINOR).font(SEMIBOLD).width(Fill),
                // On the line of the title, which is larger.
                container(text(minutes.unwrap_or_default()).size(size::LABEL).style(theme::soft))
                    .padding(Padding::ZERO.top(UNIT / 2.0)),
            ]
            .spacing(UNIT),
            Column::with_children(goals).spacing(UNIT / 2.0),
            self.needs(lesson),
            row![
                text(progress).size(size::LABEL).font(SEMIBOLD).width(Fill),
                pressable(
                    if next { Kind::Main } else { Kind::Plain },
                    text(word).size(size::LABEL)
                )
                .on_press(Message::Lesson(lesson.id.clone())),
            ]
            .spacing(UNIT)
            .align_y(Center),
        ]
        .spacing(UNIT);
        container(inside).style(theme::block).padding(2.0 * UNIT).width(Fill).into()
    }

    /// The lessons to read first, each a way there.
    fn needs(self, lesson: &'a Front) -> Option<Element<'a, Message>> {
        let needs: Vec<Element<'a, Message>> = lesson
            .needs
            .iter()
            .filter_map(|id| self.library.fronts().iter().find(|front| front.id == *id))
            .map(|need| {
                let mark = if self.is_finished(&need.id) { "✓ " } else { "" };
                pressable(Kind::Word, text(format!("{mark}{}", need.title)).size(size::LABEL))
                    .on_press(Message::Lesson(need.id.clone()))
                    .into()
            })
            .collect();
        (!needs.is_empty()).then(|| {
            let first = text("Read first:").size(size::LABEL).style(theme::soft).into();
            Row::with_children(std::iter::once(first).chain(needs)).spacing(UNIT).wrap().into()
        })
    }
}

/// How far the reader has come: a mark with its word, so that it does not hang on a shape alone.
fn progress(record: Option<&Record>) -> String {
    match record.map(|record| (&record.finished, &record.opened)) {
        Some((Some(when), _)) => format!("✓ Finished {}", when.date()),
        Some((None, Some(when))) => format!("Opened {}", when.date()),
        _ => "Not begun".to_owned(),
    }
}

/// How many of its guesses were answered, right or wrong; nothing for a lesson nobody has opened.
fn answered(library: &Library, record: Option<&Record>, id: &str) -> Option<String> {
    let record = record.filter(|record| record.opened.is_some())?;
    let guesses: Vec<&str> = library.lesson(id)?.guesses().collect();
    let given = |key: &&&str| record.answers.iter().any(|answer| answer.guess == **key);
    let count = guesses.iter().filter(given).count();
    (!guesses.is_empty()).then(|| format!("guesses answered {count} of {}", guesses.len()))
}

/// How long a lesson takes.
fn in_words(minutes: Minutes) -> String {
    let (count, reading) = match minutes {
        Minutes::Said(count) => (count as usize, ""),
        Minutes::Counted(count) => (count, " to read"),
    };
    format!("{count} minute{}{reading}", if count == 1 { "" } else { "s" })
}
