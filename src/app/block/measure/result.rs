//! What three readings come to, beside what was predicted.

use iced::widget::{Row, column, container, text};
use iced::{Element, Fill};

use super::{Act, State};
use crate::app::document::flow;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{FAR_OVER, FAR_UNDER, Measure};
use crate::notebook::ratio_figures;
use crate::quantity::catalogue;
use crate::study::moved::ratio_in_words;

/// The mean, the range, the ratio, and what to do with them.
pub fn view<'a>(
    state: &'a State,
    measure: &'a Measure,
    line: usize,
    page: Page<'a>,
) -> Element<'a, Message> {
    let (Some(summary), Some(entry)) = (state.summary(), catalogue::find(measure.quantity.name()))
    else {
        let words = "Three readings give a mean and a range. Measure afresh for each one.";
        return text(words).size(size::LABEL).style(theme::soft).width(Fill).into();
    };
    let units = &page.settings.units;
    let (mean, low, high) = (summary.mean, summary.low, summary.high);
    let ratio = state.predicted.map(|predicted| (predicted, summary.ratio(predicted)));
    let compared = ratio.map(|(predicted, ratio)| match ratio {
        Some(ratio) => {
            format!("Measured over predicted: {}, {}.", ratio_figures(ratio), in_words(ratio))
        }
        None => format!(
            "Predicted {}, so a ratio says nothing here: look at the difference.",
            units.show(entry, predicted)
        ),
    });
    let why = match ratio.and_then(|(_, ratio)| ratio) {
        Some(ratio) if ratio > FAR_OVER => Some(&measure.over),
        Some(ratio) if ratio < FAR_UNDER => Some(&measure.under),
        _ => None,
    };
    let why = why.map(|words| {
        column![
            text("What could explain it").size(size::LABEL).font(SEMIBOLD),
            flow(words, size::BODY, page),
        ]
        .spacing(UNIT / 2.0)
    });
    let stack = column![
        text(format!("Mean {}", units.show(entry, mean))).size(size::MINOR).font(SEMIBOLD),
        text(format!("Range {}", units.show_range(entry, (low, mean, high))))
            .size(size::LABEL)
            .width(Fill),
        compared.map(|words| text(words).size(size::BODY).width(Fill)),
        why,
        ways(state, measure, line, page),
    ]
    .spacing(UNIT);
    container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill).into()
}

/// What can be done with the readings.
fn ways<'a>(state: &State, measure: &Measure, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let way = |kind, words: String, act: Option<Act>| {
        pressable(kind, text(words).size(size::LABEL))
            .on_press_maybe(act.map(|act| Message::Measure(line, act)))
            .into()
    };
    let take = measure.take.then(|| state.number(measure, &page.settings.units)).flatten();
    let take = take.map(|number| {
        if state.taken {
            way(Kind::Plain, format!("{number} is in your build"), None)
        } else {
            way(Kind::Main, format!("Put {number} into my build"), Some(Act::Taken))
        }
    });
    let write = if state.written {
        way(Kind::Plain, "In your notebook".to_owned(), None)
    } else {
        way(Kind::Plain, "Write in the notebook".to_owned(), Some(Act::Written))
    };
    let again = way(Kind::Plain, "New readings".to_owned(), Some(Act::Again));
    Row::with_children(take.into_iter().chain([write, again]))
        .spacing(UNIT)
        .width(Fill)
        .wrap()
        .vertical_spacing(UNIT)
        .into()
}

/// A ratio of measured to predicted in words: `12 % more than predicted`.
pub fn in_words(ratio: f64) -> String {
    let words = ratio_in_words(ratio);
    if words == "the same" {
        return "as predicted".to_owned();
    }
    match (words.strip_prefix("up "), words.strip_prefix("down ")) {
        (Some(more), _) => format!("{more} more than predicted"),
        (_, Some(less)) => format!("{less} less than predicted"),
        _ if words.starts_with("a ") => format!("{words} of what was predicted"),
        _ if words.ends_with(" less") => format!("{words} than predicted"),
        _ => format!("{words} what was predicted"),
    }
}
