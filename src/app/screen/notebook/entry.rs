//! One answer and one measurement in the notebook.

use iced::widget::{Row, column, container, row, text};
use iced::{Element, Fill};

use super::Message;
use crate::app::block::measure::in_words;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::notebook::{Answer, Measurement, ratio_figures};
use crate::quantity::Units;

/// What was asked, what was said, and whether it was right.
pub fn answer(answer: &Answer) -> Element<'_, Message> {
    let verdict = if answer.right { "✓ right" } else { "✗ not right" };
    let idea =
        answer.idea.as_ref().filter(|_| !answer.right).map(|idea| {
            text(format!("The idea behind it: “{idea}”")).size(size::LABEL).width(Fill)
        });
    card(
        answer.when.date(),
        column![
            text(&answer.asked).size(size::LABEL).width(Fill),
            row![
                text(format!("“{}”", answer.said)).size(size::LABEL).font(SEMIBOLD).width(Fill),
                text(verdict).size(size::LABEL),
            ]
            .spacing(UNIT),
            idea,
        ]
        .spacing(UNIT / 2.0)
        .into(),
    )
}

/// What was predicted beside what was measured, with the ratio.
pub fn measurement<'a>(measurement: &'a Measurement, units: &Units) -> Element<'a, Message> {
    let cell = |name: &'a str, number: String| -> Element<'a, Message> {
        column![
            text(name).size(size::SMALL).style(theme::soft),
            text(number).size(size::LABEL).font(SEMIBOLD),
        ]
        .width(128)
        .into()
    };
    let mut cells = Vec::new();
    let mut ratio = None;
    if let Some(reckoned) = measurement.reckoned() {
        let summary = reckoned.summary;
        let shown = |si| units.show(reckoned.entry, si).to_string();
        let predicted = reckoned.predicted.map_or_else(|| "nothing".to_owned(), shown);
        cells.push(cell("Predicted", predicted));
        cells.push(cell("Measured, mean", shown(summary.mean)));
        let ends = (summary.low, summary.mean, summary.high);
        cells.push(cell("Range", units.show_range(reckoned.entry, ends)));
        ratio = reckoned.predicted.and_then(|predicted| summary.ratio(predicted));
    }
    let readings = format!("Readings: {}", measurement.readings.join(", "));
    let ratio = ratio.map(|ratio| {
        text(format!("Measured over predicted: {}, {}.", ratio_figures(ratio), in_words(ratio)))
            .size(size::LABEL)
            .width(Fill)
    });
    card(
        measurement.when.date(),
        column![
            text(&measurement.what).size(size::LABEL).width(Fill),
            Row::with_children(cells).spacing(UNIT).width(Fill).wrap().vertical_spacing(UNIT / 2.0),
            ratio,
            text(readings).size(size::SMALL).style(theme::soft).width(Fill),
        ]
        .spacing(UNIT / 2.0)
        .into(),
    )
}

fn card<'a>(date: &'a str, inside: Element<'a, Message>) -> Element<'a, Message> {
    let dated = column![text(date).size(size::SMALL).style(theme::soft), inside];
    container(dated).style(theme::block).padding(1.5 * UNIT).width(Fill).into()
}
