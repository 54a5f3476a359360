//! The card of a first start: one number to change, one answer that follows.

use iced::widget::{column, container, row, text};
use iced::{Center, Element, Fill};

use super::Message;
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{field, symbol};
use crate::lesson::Front;
use crate::quantity::catalogue::{self, machine::MASS, pressure::GROUND_PRESSURE};

/// The place of its number.
pub const MASS_FIELD: &str = "welcome:mass";

/// The card.
pub fn card<'a>(
    lessons: &'a [Front],
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let name = desk.name();
    let title = match desk.path {
        None => format!("This is {name}, an example. Change its mass and watch."),
        Some(_) => format!("This is {name}. Change its mass and watch."),
    };
    let first = lessons.first().map(|lesson| {
        pressable(Kind::Plain, text(format!("Read “{}”", lesson.title)).size(size::LABEL))
            .on_press(Message::Lesson(lesson.id.clone()))
    });
    let inside = column![
        text(title).size(size::MINOR).font(SEMIBOLD).width(Fill),
        field::in_words(MASS_FIELD, MASS.any(), desk, settings).map(Message::Field),
        answer(desk, settings),
        text(
            "Type a number with its unit, drag the slider, or press ↑ and ↓ in the field. What \
             else the change moved stands at the foot of the window. Ctrl+Z takes it back."
        )
        .size(size::SMALL)
        .style(theme::soft)
        .width(Fill),
        row![
            pressable(Kind::Main, text("Start my own").size(size::LABEL))
                .on_press(Message::StartOwn),
            first,
            pressable(Kind::Plain, text("Put this away").size(size::LABEL))
                .on_press(Message::WelcomeClosed),
        ]
        .spacing(UNIT)
        .wrap()
        .vertical_spacing(UNIT),
    ]
    .spacing(1.5 * UNIT);
    container(inside).style(theme::block).padding(2.0 * UNIT).width(Fill).into()
}

/// The mean ground pressure, and what it was before the change.
fn answer<'a>(desk: &Desk, settings: &Settings) -> Element<'a, Message> {
    let Some(entry) = catalogue::find(GROUND_PRESSURE.any().name()) else {
        return text("").into();
    };
    let shown = |si: f64| settings.units.show(entry, si).to_string();
    let now = desk.outcome.values.si(GROUND_PRESSURE);
    let before = desk.before().values.si(GROUND_PRESSURE);
    let was = match (before, now) {
        (Some(before), Some(now)) if desk.revision() > 0 && shown(before) != shown(now) => {
            format!("was {}", shown(before))
        }
        _ => String::new(),
    };
    column![
        text(symbol::capitalised(entry.label)).size(size::LABEL),
        row![
            text(now.map_or_else(|| "Not known yet".to_owned(), shown))
                .size(size::ANSWER)
                .font(BOLD),
            text(was).size(size::LABEL).style(theme::soft),
        ]
        .spacing(UNIT)
        .align_y(Center),
    ]
    .spacing(UNIT / 2.0)
    .into()
}
