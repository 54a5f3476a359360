//! The guess: a question answered before the number is shown, with the reader's own numbers.

use iced::widget::{Column, column, container, row, text, text_input};
use iced::{Center, Element, Fill, Length};

use super::frame;
use crate::app::document::flow;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Direction, Guess, GuessKind, Reference, Slip, SlipValue, Span, Tolerance};
use crate::quantity::{self, AnyId, catalogue};

/// What the reader has answered.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct State {
    /// The number being typed.
    pub text: String,
    /// The answer given.
    pub given: Option<Given>,
    /// What is wrong with the number typed.
    pub error: Option<String>,
}

/// An answer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Given {
    /// The choice, counted from zero.
    Choice(usize),
    /// Up, the same or down.
    Direction(Direction),
    /// A number in SI units.
    Number(f64),
}

/// What is done in a guess.
#[derive(Debug, Clone)]
pub enum Act {
    /// An answer is given.
    Answered(Given),
    /// The number typed is now this.
    Typed(String),
    /// The number typed is the answer.
    Committed(AnyId),
    /// Another try.
    Again,
}

impl State {
    /// Takes what was done.
    pub fn perform(&mut self, act: Act, units: &quantity::Units) {
        match act {
            Act::Answered(given) => self.given = Some(given),
            Act::Typed(text) => {
                self.text = text;
                self.error = None;
            }
            Act::Committed(id) => self.commit(id, units),
            Act::Again => *self = Self::default(),
        }
    }

    fn commit(&mut self, id: AnyId, units: &quantity::Units) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        let unit = units.unit_for(entry, 0.0);
        let read = quantity::parse(&self.text, entry)
            .or_else(|words| quantity::parse_in(&self.text, entry, unit).map_err(|_| words));
        match read {
            Ok(amount) => self.given = Some(Given::Number(amount.si)),
            Err(words) => self.error = Some(words.to_string()),
        }
    }
}

/// What is said of an answer.
struct Verdict<'a> {
    right: bool,
    idea: Option<&'a str>,
    reply: &'a [Span],
    truth: Option<String>,
}

/// A guess, with its reply once answered.
pub fn view<'a>(guess: &'a Guess, page: Page<'a>) -> Element<'a, Message> {
    let state = page.marks.guesses.get(&guess.key);
    let given = state.and_then(|state| state.given);
    let question = flow(&guess.question, size::BODY, page);
    let ways = match &guess.kind {
        GuessKind::Choice(choices) => {
            let ways = choices.iter().enumerate().map(|(place, choice)| {
                way(guess, Given::Choice(place), given, flow(&choice.text, size::BODY, page))
            });
            Column::with_children(ways).spacing(UNIT).into()
        }
        GuessKind::Direction { .. } => directions(guess, given),
        GuessKind::Number { quantity, .. } => number(guess, *quantity, state, page),
    };
    let reply = given.map(|given| reply(guess, given, page));
    frame(Some("Your guess first"), column![question, ways, reply].spacing(1.5 * UNIT))
}

fn way<'a>(
    guess: &'a Guess,
    this: Given,
    given: Option<Given>,
    words: Element<'a, Message>,
) -> Element<'a, Message> {
    let chosen = given == Some(this);
    let mark = text(if chosen { "●" } else { "○" }).size(size::LABEL);
    let act = Message::Guess(guess.key.clone(), Act::Answered(this));
    pressable(Kind::Line(chosen), row![mark, words].spacing(UNIT).align_y(Center))
        .width(Fill)
        .on_press_maybe(given.is_none().then_some(act))
        .into()
}

fn directions<'a>(guess: &'a Guess, given: Option<Given>) -> Element<'a, Message> {
    let ways = [
        (Direction::Up, "It goes up"),
        (Direction::Same, "It stays the same"),
        (Direction::Down, "It goes down"),
    ];
    let ways = ways.map(|(direction, words)| {
        way(guess, Given::Direction(direction), given, text(words).size(size::BODY).into())
    });
    Column::with_children(ways).spacing(UNIT).into()
}

fn number<'a>(
    guess: &'a Guess,
    id: AnyId,
    state: Option<&'a State>,
    page: Page<'a>,
) -> Element<'a, Message> {
    let Some(entry) = catalogue::find(id.name()) else { return text(id.name()).into() };
    let typed = state.map_or("", |state| state.text.as_str());
    let answered = state.is_some_and(|state| state.given.is_some());
    let act = |act| Message::Guess(guess.key.clone(), act);
    let key = guess.key.clone();
    let unit = page.settings.units.unit_for(entry, 0.0).symbol;
    let mut field = text_input(&format!("a number in {unit}"), typed)
        .id(format!("guess:{}", guess.key))
        .font(REGULAR)
        .size(size::LABEL)
        .padding([6, 8])
        .width(Length::Fixed(180.0))
        .style(theme::field);
    if !answered {
        field = field
            .on_input(move |text| Message::Guess(key.clone(), Act::Typed(text)))
            .on_submit(act(Act::Committed(id)));
    }
    let error = state.and_then(|state| state.error.as_deref());
    column![
        row![
            field,
            pressable(Kind::Main, text("This is my guess").size(size::LABEL))
                .on_press_maybe((!answered && !typed.is_empty()).then(|| act(Act::Committed(id)))),
        ]
        .spacing(UNIT)
        .align_y(Center),
        error.map(|words| text(words).size(size::SMALL).style(theme::warning)),
    ]
    .spacing(UNIT / 2.0)
    .into()
}

fn reply<'a>(guess: &'a Guess, given: Given, page: Page<'a>) -> Element<'a, Message> {
    let verdict = judge(guess, given, page);
    let title = if verdict.right { "Yes." } else { "Not quite." };
    let again = Message::Guess(guess.key.clone(), Act::Again);
    let stack = column![
        text(title).size(size::BODY).font(SEMIBOLD),
        verdict.idea.map(|idea| {
            text(format!("A common idea: “{idea}”")).size(size::LABEL).style(theme::soft)
        }),
        (!verdict.reply.is_empty()).then(|| flow(verdict.reply, size::BODY, page)),
        verdict.truth.map(|truth| text(truth).size(size::BODY)),
        flow(&guess.why, size::BODY, page),
        pressable(Kind::Plain, text("Try again").size(size::LABEL)).on_press(again),
    ]
    .spacing(UNIT);
    container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill).into()
}

fn judge<'a>(guess: &'a Guess, given: Given, page: Page<'_>) -> Verdict<'a> {
    let none = Verdict { right: false, idea: None, reply: &[], truth: None };
    match (&guess.kind, given) {
        (GuessKind::Choice(choices), Given::Choice(place)) => {
            choices.get(place).map_or(none, |choice| Verdict {
                right: choice.right,
                idea: choice.idea.as_deref(),
                reply: &choice.reply,
                truth: None,
            })
        }
        (GuessKind::Direction { answer, replies }, Given::Direction(direction)) => {
            let reply = replies.iter().find(|(way, _)| *way == direction);
            Verdict {
                right: *answer == direction,
                reply: reply.map_or(&[], |(_, spans)| spans.as_slice()),
                ..none
            }
        }
        (GuessKind::Number { answer, quantity, tolerance, slips }, Given::Number(si)) => {
            number_verdict(*answer, *quantity, *tolerance, slips, si, page)
        }
        _ => none,
    }
}

fn number_verdict<'a>(
    answer: Reference,
    quantity: AnyId,
    tolerance: Tolerance,
    slips: &'a [Slip],
    si: f64,
    page: Page<'_>,
) -> Verdict<'a> {
    let of = |reference| match reference {
        Reference::Live(id) => page.desk.outcome.values.si(id),
        Reference::Si(si) => Some(si),
    };
    let Some(truth) = of(answer) else {
        let words = "Your build does not give this number yet.".to_owned();
        return Verdict { right: false, idea: None, reply: &[], truth: Some(words) };
    };
    let close = |to: f64| match tolerance {
        Tolerance::Share(share) => (si - to).abs() <= share * to.abs(),
        Tolerance::Si(width) => (si - to).abs() <= width,
    };
    let right = close(truth);
    let slip = slips.iter().filter(|_| !right).find(|slip| {
        let value = match slip.value {
            SlipValue::Is(reference) => of(reference),
            SlipValue::Times(factor) => Some(factor * truth),
        };
        value.is_some_and(close)
    });
    let units = &page.settings.units;
    let words = catalogue::find(quantity.name()).map(|entry| {
        format!(
            "You said {}; your build gives {}.",
            units.show(entry, si),
            units.show(entry, truth)
        )
    });
    Verdict {
        right,
        idea: slip.map(|slip| slip.idea.as_str()),
        reply: slip.map_or(&[], |slip| slip.reply.as_slice()),
        truth: words,
    }
}
