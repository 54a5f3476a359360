//! The card of Find: a field, and what is found under it.

use iced::widget::{Column, column, row, text, text_input};
use iced::{Center, Element, Fill};

use super::{Hit, Hits, Way};
use crate::app::shell::Message;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::escaping::escaping;
use crate::app::widget::pressable::{Kind, pressable};

/// The field.
pub const FIELD: &str = "find";

/// What is looked for, and what is found.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Finding {
    /// As typed.
    pub text: String,
    /// What has these words.
    pub found: Vec<Hits>,
}

/// What is done on the card.
#[derive(Debug, Clone)]
pub enum Act {
    /// It is opened.
    Begin,
    /// The text is now this.
    Typed(String),
    /// The first hit is the one.
    First,
    /// This one is.
    Open(Way),
}

impl Finding {
    /// Where the first hit leads.
    pub fn first(&self) -> Option<&Way> {
        self.found.first()?.best.first().map(|hit| &hit.to)
    }
}

/// The card.
pub fn card(finding: &Finding) -> Element<'_, Message> {
    let close =
        pressable(Kind::Word, text("Close").size(size::LABEL)).on_press(Message::QuestionClosed);
    let field = text_input("sinkage, stop distance, F_peak …", &finding.text)
        .id(FIELD)
        .font(REGULAR)
        .size(size::BODY)
        .padding([8, 10])
        .style(theme::field)
        .on_input(|text| Message::Find(Act::Typed(text)))
        .on_submit(Message::Find(Act::First));
    column![
        row![text("Find").size(size::MINOR).font(SEMIBOLD).width(Fill), close].align_y(Center),
        escaping(field, Message::QuestionClosed),
        found(finding),
    ]
    .spacing(1.5 * UNIT)
    .into()
}

fn found(finding: &Finding) -> Element<'_, Message> {
    let told =
        |words: &'static str| text(words).size(size::LABEL).style(theme::soft).width(Fill).into();
    if finding.text.trim().is_empty() {
        return told(
            "Type a word or two. Lessons, numbers and rules that have them are listed here. \
             Enter opens the first, ↓ and ↑ go through them.",
        );
    }
    if finding.found.is_empty() {
        return told(
            "Nothing has all of these words. Try fewer, or another name for the thing: a push, \
             a drop, a patch, a stall.",
        );
    }
    Column::with_children(finding.found.iter().map(group)).spacing(1.5 * UNIT).into()
}

fn group(hits: &Hits) -> Element<'_, Message> {
    let count = if hits.best.len() < hits.of {
        format!("{} of {}", hits.best.len(), hits.of)
    } else {
        String::new()
    };
    column![
        row![
            text(hits.group.title()).size(size::SMALL).font(SEMIBOLD).width(Fill),
            text(count).size(size::SMALL).style(theme::soft),
        ],
        Column::with_children(hits.best.iter().map(line)),
    ]
    .spacing(UNIT / 2.0)
    .into()
}

fn line(hit: &Hit) -> Element<'_, Message> {
    let about = (!hit.about.is_empty())
        .then(|| text(hit.about.as_str()).size(size::SMALL).style(theme::soft).width(Fill));
    pressable(
        Kind::Line(false),
        column![text(hit.title.as_str()).size(size::LABEL).width(Fill), about],
    )
    .width(Fill)
    .on_press(Message::Find(Act::Open(hit.to.clone())))
    .into()
}
