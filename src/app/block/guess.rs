//! The guess: a question answered before the number is shown, with the reader's own numbers.

mod judge;
pub mod vote;

use iced::widget::{Column, column, container, row, text};
use iced::{Center, Element, Fill, Length};

use super::{frame, typed};
use crate::app::document::flow;
use crate::app::page::{Audience, Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Asked, Direction, Guess, GuessKind};
use crate::quantity::{self, AnyId, catalogue};
pub use judge::recorded;
use judge::{in_words, judge};

/// What the reader has answered.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct State {
    /// The number being typed.
    pub text: String,
    /// The answer given.
    pub given: Option<Given>,
    /// What is wrong with the number typed.
    pub error: Option<String>,
    /// How often it was tried before on this page.
    pub tries: usize,
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
            Act::Again => *self = Self { tries: self.tries + 1, ..Self::default() },
        }
    }

    fn commit(&mut self, id: AnyId, units: &quantity::Units) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        match typed::read(&self.text, id, units.unit_for(entry, 0.0)) {
            Ok(si) => self.given = Some(Given::Number(si)),
            Err(words) => self.error = Some(words),
        }
    }
}

/// A guess, with its reply once answered.
pub fn view<'a>(guess: &'a Guess, page: Page<'a>) -> Element<'a, Message> {
    if page.audience != Audience::Reader {
        return vote::view(guess, page);
    }
    let state = page.marks.guesses.get(&guess.key);
    let given = state.and_then(|state| state.given);
    let asked = guess.asked(state.map_or(0, |state| state.tries));
    let question = flow(asked.question, size::BODY, page);
    let ways = match asked.kind {
        GuessKind::Choice(_) => {
            let ways = asked.choices().into_iter().map(|(place, choice)| {
                way(guess, Given::Choice(place), given, flow(&choice.text, size::BODY, page))
            });
            Column::with_children(ways).spacing(UNIT).into()
        }
        GuessKind::Direction { .. } => directions(guess, given),
        GuessKind::Number { quantity, .. } => number(guess, *quantity, state, page),
    };
    let reply = given.map(|given| reply(guess, asked, given, page));
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
    let place = match this {
        Given::Choice(place) => place.to_string(),
        Given::Direction(direction) => direction.name().to_owned(),
        Given::Number(_) => String::new(),
    };
    pressable(Kind::Line(chosen), row![mark, words].spacing(UNIT).align_y(Center))
        .id(format!("guess:{}:{place}", guess.key))
        .width(Fill)
        .on_press_maybe(given.is_none().then_some(act))
        .into()
}

fn directions<'a>(guess: &'a Guess, given: Option<Given>) -> Element<'a, Message> {
    let ways = Direction::ALL.map(|direction| {
        let words = text(in_words(direction)).size(size::BODY);
        way(guess, Given::Direction(direction), given, words.into())
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
    let error = state.and_then(|state| state.error.as_deref());
    let id_of_field = format!("guess:{}", guess.key);
    let unit = page.settings.units.unit_for(entry, 0.0);
    let mut field =
        typed::field(id_of_field, typed, error.is_some(), unit).width(Length::Fixed(180.0));
    if !answered {
        field = field
            .on_input(move |text| Message::Guess(key.clone(), Act::Typed(text)))
            .on_submit(act(Act::Committed(id)));
    }
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

fn reply<'a>(
    guess: &'a Guess,
    asked: Asked<'a>,
    given: Given,
    page: Page<'a>,
) -> Element<'a, Message> {
    let verdict = judge(asked.kind, given, page.desk, &page.settings.units);
    let title = if verdict.right { "Yes." } else { "Not quite." };
    let again = Message::Guess(guess.key.clone(), Act::Again);
    let stack = column![
        text(title).size(size::BODY).font(SEMIBOLD),
        verdict.idea.map(|idea| {
            text(format!("A common idea: “{idea}”")).size(size::LABEL).style(theme::soft)
        }),
        (!verdict.reply.is_empty()).then(|| flow(verdict.reply, size::BODY, page)),
        verdict.truth.map(|truth| text(truth).size(size::BODY)),
        flow(asked.why, size::BODY, page),
        pressable(Kind::Plain, text("Try again").size(size::LABEL)).on_press(again),
    ]
    .spacing(UNIT);
    container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill).into()
}
