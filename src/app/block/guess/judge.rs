//! What is said of an answer, on the page and in the notebook.

use super::{Given, State};
use crate::app::desk::Desk;
use crate::app::document::spoken;
use crate::app::settings::Settings;
use crate::lesson::{Direction, Guess, GuessKind, SlipValue, Span};
use crate::notebook::{Answer, Moment};
use crate::quantity::{Units, catalogue};

/// What is said of an answer.
pub(super) struct Verdict<'a> {
    pub(super) right: bool,
    /// The wrong idea behind it, named.
    pub(super) idea: Option<&'a str>,
    pub(super) reply: &'a [Span],
    /// The number said beside the right one.
    pub(super) truth: Option<String>,
}

/// Judges an answer with the build's numbers as they are now.
pub(super) fn judge<'a>(
    kind: &'a GuessKind,
    given: Given,
    desk: &Desk,
    units: &Units,
) -> Verdict<'a> {
    let none = Verdict { right: false, idea: None, reply: &[], truth: None };
    match (kind, given) {
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
        (GuessKind::Number { .. }, Given::Number(si)) => number(kind, si, desk, units),
        _ => none,
    }
}

fn number<'a>(kind: &'a GuessKind, si: f64, desk: &Desk, units: &Units) -> Verdict<'a> {
    let none = Verdict { right: false, idea: None, reply: &[], truth: None };
    let GuessKind::Number { answer, quantity, tolerance, slips } = kind else { return none };
    let live = |id| desk.outcome.values.si(id);
    let Some(truth) = answer.si(live) else {
        let words = "Your build does not give this number yet.".to_owned();
        return Verdict { truth: Some(words), ..none };
    };
    let right = tolerance.holds(si, truth);
    let slip = slips.iter().filter(|_| !right).find(|slip| {
        let value = match slip.value {
            SlipValue::Is(reference) => reference.si(live),
            SlipValue::Times(factor) => Some(factor * truth),
        };
        value.is_some_and(|value| tolerance.holds(si, value))
    });
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

/// An answer as the notebook keeps it; nothing while none is given.
pub fn recorded(
    guess: &Guess,
    state: &State,
    desk: &Desk,
    settings: &Settings,
    when: Moment,
) -> Option<Answer> {
    let given = state.given?;
    let asked = guess.asked(state.tries);
    let verdict = judge(asked.kind, given, desk, &settings.units);
    let said = match (asked.kind, given) {
        (GuessKind::Choice(choices), Given::Choice(place)) => {
            spoken(&choices.get(place)?.text, desk, settings)
        }
        (GuessKind::Number { quantity, .. }, Given::Number(si)) => {
            settings.units.show(catalogue::find(quantity.name())?, si).to_string()
        }
        (_, Given::Direction(direction)) => in_words(direction).to_owned(),
        _ => return None,
    };
    Some(Answer {
        guess: guess.key.clone(),
        asked: spoken(asked.question, desk, settings),
        said,
        right: verdict.right,
        idea: verdict.idea.map(str::to_owned),
        when,
        ..Answer::default()
    })
}

/// Which way, as it is answered.
pub fn in_words(direction: Direction) -> &'static str {
    match direction {
        Direction::Up => "It goes up",
        Direction::Same => "It stays the same",
        Direction::Down => "It goes down",
    }
}
