//! The faded example: a worked chain whose blanks the reader fills, each checked on commit.

use std::collections::HashMap;

use iced::widget::{Column, column, row, text};
use iced::{Center, Element, Fill, Length};

use super::{frame, typed};
use crate::app::document::flow;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Faded, Line, Step};
use crate::quantity::{self, AnyId, Entry, Unit, UnitSet, Units, catalogue};

/// What the reader has filled in, by line of the chain counted from zero.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct State {
    blanks: HashMap<usize, Blank>,
}

#[derive(Debug, Clone, PartialEq, Default)]
struct Blank {
    text: String,
    error: Option<String>,
    /// The number committed last, SI.
    said: Option<f64>,
    /// Whether the program filled it, on request.
    shown: bool,
}

/// What is done in a faded example; each names the line, counted from zero.
#[derive(Debug, Clone)]
pub enum Act {
    /// The number typed is now this.
    Typed(usize, String),
    /// The number typed is the answer.
    Committed(usize, AnyId, &'static Unit),
    /// The answer, SI, is to be shown.
    Shown(usize, f64),
    /// All lines are to be filled anew.
    Again,
}

impl State {
    /// Takes what was done; says which line was filled.
    pub fn perform(&mut self, act: Act) -> Option<usize> {
        match act {
            Act::Typed(place, text) => {
                let blank = self.blanks.entry(place).or_default();
                blank.text = text;
                blank.error = None;
                None
            }
            Act::Committed(place, id, unit) => {
                let blank = self.blanks.entry(place).or_default();
                match typed::read(&blank.text, id, unit) {
                    Ok(si) => blank.said = Some(si),
                    Err(words) => blank.error = Some(words),
                }
                blank.said.map(|_| place)
            }
            Act::Shown(place, si) => {
                let blank = self.blanks.entry(place).or_default();
                *blank = Blank { said: Some(si), shown: true, ..Blank::default() };
                Some(place)
            }
            Act::Again => {
                self.blanks.clear();
                None
            }
        }
    }

    /// How each line stands.
    pub fn lines(&self, faded: &Faded, live: impl Fn(AnyId) -> Option<f64>) -> Vec<Line> {
        faded.lines(|place| self.blanks.get(&place).and_then(|blank| blank.said), live)
    }
}

/// The name of the field of a line.
pub fn field_id(line: usize, place: usize) -> String {
    format!("faded:{line}:{place}")
}

/// A faded example that starts on `line` of its lesson.
pub fn view<'a>(faded: &'a Faded, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let untouched = State::default();
    let state = page.marks.faded.get(&line).unwrap_or(&untouched);
    let lines = state.lines(faded, |id| page.desk.outcome.values.si(id));
    let done = !lines
        .iter()
        .any(|line| matches!(line, Line::Open | Line::Wrong { .. } | Line::Unknown | Line::Later));
    let steps = faded.steps.iter().zip(lines).enumerate();
    let steps = steps.map(|(place, (step, stands))| {
        let blank = page.marks.faded.get(&line).and_then(|state| state.blanks.get(&place));
        one(Blanked { step, stands, blank, line, place }, page)
    });
    let again = done.then(|| {
        row![
            text("The chain is complete.").size(size::LABEL).width(Fill),
            pressable(Kind::Plain, text("Do it again").size(size::LABEL))
                .on_press(Message::Faded(line, Act::Again)),
        ]
        .align_y(Center)
    });
    let title = faded.title.as_deref().unwrap_or("Fill in the blanks");
    frame(
        Some(title),
        column![Column::with_children(steps).spacing(1.5 * UNIT), again].spacing(2.0 * UNIT),
    )
}

/// One line of the chain and where it stands.
struct Blanked<'a> {
    step: &'a Step,
    stands: Line,
    blank: Option<&'a Blank>,
    line: usize,
    place: usize,
}

fn one<'a>(blanked: Blanked<'a>, page: Page<'a>) -> Element<'a, Message> {
    let Blanked { step, stands, blank, place, .. } = blanked;
    let number = |si: f64| {
        catalogue::find(step.quantity.name())
            .map_or_else(String::new, |entry| shown(step, entry, si, &page.settings.units))
    };
    let answer = |si: f64| text(number(si)).size(size::BODY).font(SEMIBOLD).into();
    let soft = |words: String| text(words).size(size::LABEL).style(theme::soft).width(Fill).into();
    let under: Element<'a, Message> = match stands {
        Line::Given(si) => answer(si),
        Line::Right { said } if blank.is_some_and(|blank| blank.shown) => {
            column![answer(said), soft("Shown, not filled in by you.".to_owned())].into()
        }
        Line::Right { said } => row![
            answer(step.is.si(|id| page.desk.outcome.values.si(id)).unwrap_or(said)),
            soft(format!("Right: you said {}.", number(said))),
        ]
        .spacing(UNIT)
        .align_y(Center)
        .into(),
        Line::Open | Line::Wrong { .. } => fill(blanked, page),
        Line::Unknown => soft("Your build does not give this number yet.".to_owned()),
        Line::Later => soft("Opens when the line above is done.".to_owned()),
    };
    row![
        text(format!("{}.", place + 1))
            .size(size::BODY)
            .line_height(theme::LEADING)
            .width(Length::Fixed(3.0 * UNIT)),
        column![flow(&step.say, size::BODY, page), under].spacing(UNIT / 2.0).width(Fill),
    ]
    .spacing(UNIT / 2.0)
    .into()
}

/// The field of an open line, and what is said of the last try.
fn fill<'a>(blanked: Blanked<'a>, page: Page<'a>) -> Element<'a, Message> {
    let Blanked { step, stands, blank, line, place } = blanked;
    let Some(entry) = catalogue::find(step.quantity.name()) else { return column![].into() };
    let typed = blank.map_or("", |blank| blank.text.as_str());
    let error = blank.and_then(|blank| blank.error.as_deref());
    let unit = unit(step, entry, &page.settings.units);
    let commit = Message::Faded(line, Act::Committed(place, step.quantity, unit));
    let wrong = matches!(stands, Line::Wrong { .. }) || error.is_some();
    let field = typed::field(field_id(line, place), typed, wrong, unit)
        .width(Length::Fixed(150.0))
        .on_input(move |text| Message::Faded(line, Act::Typed(place, text)))
        .on_submit(commit.clone());
    let check = pressable(Kind::Main, text("Check").size(size::LABEL))
        .on_press_maybe((!typed.trim().is_empty()).then_some(commit));
    let verdict = match (stands, error) {
        (_, Some(words)) => {
            Some(column![text(words).size(size::SMALL).style(theme::warning).width(Fill)])
        }
        (Line::Wrong { said, truth }, None) => {
            let show = Message::Faded(line, Act::Shown(place, truth));
            let words = format!(
                "{} is not it: {}.",
                shown(step, entry, said, &page.settings.units),
                off(said, truth)
            );
            Some(
                column![
                    text(words).size(size::LABEL).style(theme::warning).width(Fill),
                    (!step.hint.is_empty()).then(|| flow(&step.hint, size::LABEL, page)),
                    pressable(Kind::Word, text("Show me this line").size(size::LABEL))
                        .on_press(show),
                ]
                .spacing(UNIT / 2.0),
            )
        }
        _ => None,
    };
    column![row![field, check].spacing(UNIT).align_y(Center), verdict].spacing(UNIT / 2.0).into()
}

/// The unit of a line: the author's where the reader has metric units, else the usual one.
fn unit(step: &Step, entry: &'static Entry, units: &Units) -> &'static Unit {
    let own = step.unit.as_ref().filter(|_| units.set == UnitSet::Metric);
    own.and_then(|symbol| quantity::unit::find(entry, symbol).ok())
        .unwrap_or_else(|| units.unit_for(entry, 0.0))
}

/// A number of a line.
fn shown(step: &Step, entry: &'static Entry, si: f64, units: &Units) -> String {
    let own = step.unit.as_ref().filter(|_| units.set == UnitSet::Metric);
    own.and_then(|symbol| units.show_in(entry, si, symbol).ok())
        .unwrap_or_else(|| units.show(entry, si))
        .to_string()
}

/// How a wrong number is off: a slip of units shows as a power of ten.
fn off(said: f64, truth: f64) -> String {
    let tens = (said / truth).abs().log10();
    let slip = tens.is_finite() && (tens - tens.round()).abs() < 0.02 && tens.round() != 0.0;
    let which = if said > truth { "large" } else { "small" };
    if said * truth < 0.0 {
        "it has the other sign".to_owned()
    } else if slip && tens.abs() < 10.0 {
        let times = 10f64.powf(tens.abs().round());
        format!("it is {times} times too {which}; look at the units and the decimal point")
    } else {
        format!("it is too {which}")
    }
}
