//! The card of the five questions.

use iced::widget::{Column, Row, column, container, row, text, text_input};
use iced::{Center, Element, Fill};

use super::{Act, Asked, Carries, Drives, Five, GROUNDS, HEAVY};
use crate::app::screen::bench::Message;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pick::pick;
use crate::app::widget::pressable::{Kind, pressable};
use crate::quantity::catalogue::{self, pressure::GROUND_PRESSURE};
use crate::quantity::{Units, unusual};

/// The first field, which has the focus when the card opens.
pub const FIRST: &str = HEAVY.field;

/// The card.
pub fn card<'a>(five: &'a Five, units: &'a Units) -> Element<'a, Message> {
    let act = |act| Message::Five(act);
    let carries = Carries::ALL
        .into_iter()
        .map(|one| pick(one.words(), five.carries == Some(one), act(Act::Carries(one))));
    let drives = Drives::ALL
        .into_iter()
        .map(|one| pick(one.words(), five.drives == Some(one), act(Act::Drives(one))));
    let grounds = GROUNDS.iter().enumerate().map(|(place, (words, ..))| {
        pick(words, five.ground == Some(place), act(Act::Ground(place)))
    });
    let wrap = |picks: Vec<Element<'a, Message>>| -> Element<'a, Message> {
        Row::with_children(picks).spacing(UNIT / 2.0).wrap().vertical_spacing(UNIT / 2.0).into()
    };
    let fields = |asked: Vec<Asked>| -> Element<'a, Message> {
        let each = asked.into_iter().map(|asked| field(five, asked, units));
        Column::with_children(each).spacing(UNIT).into()
    };
    let inside = column![
        text("Start a build with five questions").size(size::MINOR).font(SEMIBOLD),
        text(
            "Leave out what you do not know. Every answer can be changed later on the build sheet."
        )
        .size(size::LABEL)
        .style(theme::soft)
        .width(Fill),
        question("1", "What carries it?", wrap(carries.collect())),
        question("2", "How heavy is it?", fields(vec![HEAVY])),
        question("3", "How long and wide does it touch the ground?", fields(five.sizes())),
        question(
            "4",
            "What drives it?",
            column![wrap(drives.collect()), fields(five.power().into_iter().collect())]
                .spacing(UNIT)
                .into(),
        ),
        question(
            "5",
            "What does it stand on?",
            column![
                wrap(grounds.collect()),
                text(
                    "These are rows of published tables or the demo’s own, none of them your \
                     ground. Measure yours with the block test of the pressure lesson. None is \
                     for ice."
                )
                .size(size::SMALL)
                .style(theme::soft)
                .width(Fill),
            ]
            .spacing(UNIT / 2.0)
            .into(),
        ),
        so_far(five, units),
        row![
            pressable(Kind::Main, text("Start this build").size(size::LABEL))
                .on_press(Message::Begin),
            pressable(Kind::Plain, text("Skip, start blank").size(size::LABEL))
                .on_press(Message::Blank),
            pressable(Kind::Plain, text("Close").size(size::LABEL)).on_press(Message::FiveTurned),
        ]
        .spacing(UNIT)
        .wrap()
        .vertical_spacing(UNIT),
    ]
    .spacing(2.0 * UNIT);
    container(inside).style(theme::block).padding(2.0 * UNIT).width(Fill).into()
}

fn question<'a>(
    number: &'a str,
    words: &'a str,
    answers: Element<'a, Message>,
) -> Element<'a, Message> {
    column![
        row![
            text(number).size(size::BODY).font(SEMIBOLD).style(theme::accent),
            text(words).size(size::BODY).font(SEMIBOLD).width(Fill),
        ]
        .spacing(UNIT),
        answers,
    ]
    .spacing(UNIT)
    .into()
}

fn field<'a>(five: &'a Five, asked: Asked, units: &'a Units) -> Element<'a, Message> {
    let Asked { field, id, words, example } = asked;
    let Some(entry) = catalogue::find(id.name()) else { return text(id.name()).into() };
    let fault = five.faults.get(field);
    let such_as = format!("such as {}", units.show(entry, example).short());
    let typed = five.text(field);
    let hint = catalogue_hint(typed, entry, units);
    let (below, style): (Option<String>, fn(&iced::Theme) -> text::Style) = match fault {
        Some(words) => (Some(words.clone()), theme::warning),
        None => (hint, theme::soft),
    };
    let input = text_input(&such_as, typed)
        .id(field)
        .font(REGULAR)
        .size(size::LABEL)
        .padding([6, 8])
        .width(176)
        .style(if fault.is_some() { theme::field_wrong } else { theme::field })
        .on_input(move |text| Message::Five(Act::Typed(field, text)))
        .on_submit(Message::Begin);
    column![
        row![text(words).size(size::LABEL).width(260), input]
            .spacing(UNIT)
            .align_y(Center)
            .wrap()
            .vertical_spacing(UNIT / 2.0),
        below.map(|words| text(words).size(size::SMALL).style(style).width(Fill)),
    ]
    .spacing(2)
    .into()
}

/// Whether a number is so far from the usual that its unit may be wrong.
fn catalogue_hint(
    typed: &str,
    entry: &'static crate::quantity::Entry,
    units: &Units,
) -> Option<String> {
    let amount = crate::quantity::parse(typed, entry).ok()?;
    unusual(entry, amount.si, units)
}

/// What follows already.
fn so_far<'a>(five: &Five, units: &Units) -> Element<'a, Message> {
    let shown = catalogue::find(GROUND_PRESSURE.any().name())
        .zip(five.pressure)
        .map(|(entry, si)| units.show(entry, si).to_string());
    match shown {
        Some(shown) => row![
            text("So far, mean ground pressure").size(size::LABEL),
            text(shown).size(size::HEADING).font(theme::BOLD),
        ]
        .spacing(1.5 * UNIT)
        .align_y(Center)
        .wrap()
        .into(),
        None => text("Mass, length and width give the first answer: the ground pressure.")
            .size(size::LABEL)
            .style(theme::soft)
            .width(Fill)
            .height(40)
            .into(),
    }
}
