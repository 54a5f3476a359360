//! The measure: a bench test at home, its readings beside what was predicted.

mod result;

pub use result::in_words;

use iced::widget::{Column, Row, column, text};
use iced::{Element, Fill, Length};

use super::{frame, typed};
use crate::app::document::blocks;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::lesson::Measure;
use crate::notebook::{Measurement, Moment, Summary};
use crate::quantity::{AnyId, Entry, Units, catalogue, field_text};
use crate::rules::out_of_bounds;

/// How many readings are taken: enough to see a spread, few enough to be done.
pub const READINGS: usize = 3;

/// What the reader has measured.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct State {
    readings: [Reading; READINGS],
    /// What was predicted when the first reading was typed, SI: the build may take the measured
    /// number afterwards, and the prediction must not follow it.
    predicted: Option<f64>,
    /// Whether these readings are in the notebook.
    pub written: bool,
    /// Whether they are in the build.
    pub taken: bool,
}

#[derive(Debug, Clone, PartialEq, Default)]
struct Reading {
    text: String,
    number: Option<f64>,
    error: Option<String>,
}

/// What is done in a measure.
#[derive(Debug, Clone)]
pub enum Act {
    /// A reading is being typed.
    Typed {
        /// Which, counted from zero.
        place: usize,
        /// Its text.
        text: String,
        /// What it measures.
        quantity: AnyId,
        /// What the build predicts now, SI.
        predicted: Option<f64>,
    },
    /// The readings go into the notebook.
    Written,
    /// The readings go into the build, and the notebook.
    Taken,
    /// The readings are put away for new ones.
    Again,
}

impl State {
    /// The readings of a measurement in the notebook.
    pub fn recalled(measurement: &Measurement) -> Option<Self> {
        let predicted = measurement.reckoned()?.predicted;
        let quantity = catalogue::find(&measurement.quantity)?.id;
        let mut state = Self { predicted, written: true, ..Self::default() };
        for (reading, text) in state.readings.iter_mut().zip(&measurement.readings) {
            *reading = Reading::typed(text.clone(), quantity, None, &Units::default());
        }
        Some(state)
    }

    /// Takes what was typed.
    pub fn perform(&mut self, act: Act, units: &Units) {
        match act {
            Act::Typed { place, text, quantity, predicted } => {
                if self.readings.iter().all(|reading| reading.text.trim().is_empty()) {
                    self.predicted = predicted;
                }
                if let Some(reading) = self.readings.get_mut(place) {
                    *reading = Reading::typed(text, quantity, self.predicted, units);
                }
                self.written = false;
                self.taken = false;
            }
            Act::Again => *self = Self::default(),
            Act::Written | Act::Taken => {}
        }
    }

    /// What the readings come to, once all are there.
    pub fn summary(&self) -> Option<Summary> {
        let readings: Option<Vec<f64>> =
            self.readings.iter().map(|reading| reading.number).collect();
        Summary::of(&readings?)
    }

    /// What goes into the notebook, once all readings are there.
    pub fn measurement(&self, measure: &Measure, when: Moment) -> Option<Measurement> {
        self.summary()?;
        let entry = catalogue::find(measure.quantity.name())?;
        let written = |si: f64| field_text(entry, si, &Units::default());
        Some(Measurement {
            what: measure.what.clone(),
            quantity: measure.quantity.name().to_owned(),
            readings: self.readings.iter().filter_map(|one| one.number).map(written).collect(),
            predicted: self.predicted.map(written),
            when,
            ..Measurement::default()
        })
    }

    /// The number for the build as its field takes it: `418 ± 6 mm`.
    pub fn number(&self, measure: &Measure, units: &Units) -> Option<String> {
        let entry = catalogue::find(measure.quantity.name())?;
        let summary = self.summary()?;
        let spread = summary.spread(measure.error.width(summary.mean));
        Some(units.show_spread(entry, summary.mean, spread))
    }
}

impl Reading {
    fn typed(text: String, quantity: AnyId, about: Option<f64>, units: &Units) -> Self {
        if text.trim().is_empty() {
            return Self { text, ..Self::default() };
        }
        let Some(entry) = catalogue::find(quantity.name()) else { return Self::default() };
        match typed::read(&text, quantity, units.unit_for(entry, about.unwrap_or_default())) {
            Ok(si) if !entry.admits(si) => {
                Self { text, number: None, error: Some(out_of_bounds(entry)) }
            }
            Ok(si) => Self { text, number: Some(si), error: None },
            Err(words) => Self { text, number: None, error: Some(words) },
        }
    }
}

/// A measure that starts on `line` of its lesson.
pub fn view<'a>(measure: &'a Measure, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let Some(entry) = catalogue::find(measure.quantity.name()) else {
        return text(measure.quantity.name()).into();
    };
    let untouched = &State::default();
    let state = page.marks.measures.get(&line);
    let now = measure.predicted.si(|id| page.desk.outcome.values.si(id));
    let predicted = state.map_or(now, |state| state.predicted.or(now));
    let readings = readings(state.unwrap_or(untouched), entry, (line, now), page);
    let result = state.map(|state| result::view(state, measure, line, page));
    let said = match predicted {
        Some(si) => format!("Predicted: {}", page.settings.units.show(entry, si)),
        None => "Predicted: your build does not give it yet".to_owned(),
    };
    frame(
        Some(&measure.what),
        column![
            text(format!("With {}.", measure.tool))
                .size(size::LABEL)
                .style(theme::soft)
                .width(Fill),
            blocks(&measure.how, page),
            text(said).size(size::BODY).font(SEMIBOLD).width(Fill),
            readings,
            result,
        ]
        .spacing(1.5 * UNIT),
    )
}

/// The fields of the readings; `now` is what the build predicts.
fn readings<'a>(
    state: &State,
    entry: &'static Entry,
    (line, now): (usize, Option<f64>),
    page: Page<'a>,
) -> Element<'a, Message> {
    let about = state.predicted.or(now).unwrap_or_default();
    let unit = page.settings.units.unit_for(entry, about);
    let fields = state.readings.iter().enumerate().map(|(place, reading)| {
        let id = format!("measure:{line}:{place}");
        let field = typed::field(id, &reading.text, reading.error.is_some(), unit)
            .width(Length::Fixed(152.0))
            .on_input(move |text| {
                let act = Act::Typed { place, text, quantity: entry.id, predicted: now };
                Message::Measure(line, act)
            });
        column![text(format!("Reading {}", place + 1)).size(size::SMALL).style(theme::soft), field,]
            .spacing(UNIT / 2.0)
            .into()
    });
    let errors = state.readings.iter().filter_map(|reading| reading.error.clone());
    let errors = errors.map(|words| text(words).size(size::SMALL).style(theme::warning).into());
    column![
        Row::with_children(fields).spacing(2.0 * UNIT).width(Fill).wrap().vertical_spacing(UNIT),
        Column::with_children(errors),
    ]
    .spacing(UNIT / 2.0)
    .into()
}
