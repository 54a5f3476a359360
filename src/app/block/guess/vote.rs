//! A guess put to a class: hands are counted, and the answer stays hidden until it is asked for.

use iced::widget::{Column, column, container, progress_bar, row, text, text_input};
use iced::{Center, Element, Fill, Length};

use super::judge::in_words;
use crate::app::block::frame;
use crate::app::document::flow;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Asked, Direction, Guess, GuessKind, Span};
use crate::quantity::catalogue;

/// More hands than any room holds; a typed number stops here.
const MOST: u32 = 999;

/// What a class has said to a question.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Poll {
    /// Hands for each answer, in the order shown.
    votes: Vec<u32>,
    /// Whether the answer is shown.
    shown: bool,
    /// How often the question was put before.
    tries: usize,
}

/// What is done in it.
#[derive(Debug, Clone)]
pub enum Act {
    /// One more hand for the answer of that place.
    Raised(usize),
    /// One hand less.
    Lowered(usize),
    /// The hands for an answer, as typed.
    Typed(usize, String),
    /// The answer, in or out.
    ShownTurned,
    /// The question is put another way.
    Again,
}

impl Poll {
    /// Takes what was done.
    pub fn perform(&mut self, act: Act) {
        match act {
            Act::Raised(place) => self.set(place, self.votes(place) + 1),
            Act::Lowered(place) => self.set(place, self.votes(place).saturating_sub(1)),
            Act::Typed(place, text) => {
                let digits: String = text.chars().filter(char::is_ascii_digit).take(3).collect();
                self.set(place, digits.parse().unwrap_or(0));
            }
            Act::ShownTurned => self.shown = !self.shown,
            Act::Again => *self = Self { tries: self.tries + 1, ..Self::default() },
        }
    }

    fn set(&mut self, place: usize, count: u32) {
        if place >= self.votes.len() {
            self.votes.resize(place + 1, 0);
        }
        if let Some(votes) = self.votes.get_mut(place) {
            *votes = count.min(MOST);
        }
    }

    /// The hands for the answer of that place.
    pub fn votes(&self, place: usize) -> u32 {
        self.votes.get(place).copied().unwrap_or(0)
    }
}

/// One answer a class can vote for.
struct Way<'a> {
    words: Element<'a, Message>,
    right: bool,
    idea: Option<&'a str>,
    reply: &'a [Span],
}

/// The question with a row for each answer.
pub fn view<'a>(guess: &'a Guess, page: Page<'a>) -> Element<'a, Message> {
    let poll = page.marks.polls.get(&guess.key).cloned().unwrap_or_default();
    let asked = guess.asked(poll.tries);
    let shown = poll.shown;
    let ways = ways(asked, page);
    let most = (0..ways.len()).map(|place| poll.votes(place)).max().unwrap_or(0).max(1);
    let right: Vec<usize> =
        ways.iter().enumerate().filter(|(_, way)| way.right).map(|(place, _)| place).collect();
    let mut ideas = Column::new().spacing(UNIT);
    let mut rows = Column::new().spacing(UNIT);
    for (place, way) in ways.into_iter().enumerate() {
        if let Some(idea) = way.idea.filter(|_| shown) {
            ideas = ideas.push(met(place, idea, way.reply, page));
        }
        rows = rows.push(answer(guess, place, way, (poll.votes(place), most), shown));
    }
    let word = if shown { "Hide the answer" } else { "Show the answer" };
    let act = |act| Message::Poll(guess.key.clone(), act);
    let turn = pressable(Kind::Main, text(word).size(size::LABEL))
        .id(format!("answer:{}", guess.key))
        .on_press(act(Act::ShownTurned));
    let again = shown.then(|| {
        pressable(Kind::Plain, text("Ask it another way").size(size::LABEL))
            .on_press(act(Act::Again))
    });
    let reply = shown.then(|| {
        let said = right.first().map(|place| {
            text(format!("It is {}.", letter(*place))).size(size::BODY).font(SEMIBOLD)
        });
        let truth = truth(asked, page).map(|words| text(words).size(size::BODY).font(SEMIBOLD));
        let stack = column![said, truth, flow(asked.why, size::BODY, page), ideas].spacing(UNIT);
        container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill)
    });
    frame(
        Some("Your guess first"),
        column![
            flow(asked.question, size::BODY, page),
            rows,
            row![turn, again].spacing(UNIT),
            reply
        ]
        .spacing(1.5 * UNIT),
    )
}

fn ways<'a>(asked: Asked<'a>, page: Page<'a>) -> Vec<Way<'a>> {
    match asked.kind {
        GuessKind::Choice(_) => asked
            .choices()
            .into_iter()
            .map(|(_, choice)| Way {
                words: flow(&choice.text, size::BODY, page),
                right: choice.right,
                idea: choice.idea.as_deref(),
                reply: &choice.reply,
            })
            .collect(),
        GuessKind::Direction { answer, .. } => Direction::ALL
            .into_iter()
            .map(|direction| Way {
                words: text(in_words(direction)).size(size::BODY).into(),
                right: *answer == direction,
                idea: None,
                reply: &[],
            })
            .collect(),
        GuessKind::Number { .. } => Vec::new(),
    }
}

/// The number a number guess asks for, on the build on the desk.
fn truth(asked: Asked<'_>, page: Page<'_>) -> Option<String> {
    let GuessKind::Number { answer, quantity, .. } = asked.kind else { return None };
    let entry = catalogue::find(quantity.name())?;
    Some(answer.si(|id| page.desk.outcome.values.si(id)).map_or_else(
        || format!("{} does not give this number yet.", page.desk.name()),
        |si| format!("{}: {}.", page.desk.name(), page.settings.units.show(entry, si)),
    ))
}

fn answer<'a>(
    guess: &'a Guess,
    place: usize,
    way: Way<'a>,
    (votes, most): (u32, u32),
    shown: bool,
) -> Element<'a, Message> {
    let act = |act| Message::Poll(guess.key.clone(), act);
    let mark = if shown && way.right { "✓" } else { "" };
    let key = guess.key.clone();
    let typed = if votes == 0 { String::new() } else { votes.to_string() };
    let field = text_input("0", &typed)
        .id(format!("votes:{}:{place}", guess.key))
        .on_input(move |text| Message::Poll(key.clone(), Act::Typed(place, text)))
        .font(REGULAR)
        .size(size::LABEL)
        .padding([4, 6])
        .width(Length::Fixed(48.0))
        .style(theme::field);
    let button = |sign, change| {
        pressable(Kind::Plain, text(sign).size(size::LABEL)).padding([2, 8]).on_press(act(change))
    };
    let bar = progress_bar(0.0..=most as f32, votes as f32)
        .girth(Length::Fixed(UNIT / 2.0))
        .style(theme::tally);
    let head = row![
        text(letter(place)).size(size::BODY).font(SEMIBOLD).width(20),
        container(way.words).width(Fill),
        text(mark).size(size::BODY).font(SEMIBOLD).style(theme::accent).width(18),
        button("−", Act::Lowered(place)),
        field,
        button("+", Act::Raised(place)),
    ]
    .spacing(UNIT / 2.0)
    .align_y(Center);
    column![head, bar].spacing(UNIT / 2.0).into()
}

/// A wrong idea, named and met.
fn met<'a>(place: usize, idea: &'a str, reply: &'a [Span], page: Page<'a>) -> Element<'a, Message> {
    let named = text(format!("{}: “{idea}”", letter(place))).size(size::LABEL).font(SEMIBOLD);
    column![named, flow(reply, size::BODY, page)].spacing(UNIT / 2.0).into()
}

/// What an answer is called out as.
fn letter(place: usize) -> String {
    u8::try_from(place)
        .ok()
        .filter(|place| *place < 26)
        .map_or_else(|| (place + 1).to_string(), |place| char::from(b'A' + place).to_string())
}
