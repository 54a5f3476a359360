//! What a reader answers: guesses before the number, lines to fill, a wish to meet.

use maud::{Markup, html};

use super::super::prose::spans;
use super::super::{Ink, Subject, label};
use super::{boxed, gap};
use crate::asked;
use crate::lesson::{Asked, Direction, Faded, Guess, GuessKind, SlipValue, Step, TargetBlock};
use crate::quantity::{UnitSet, catalogue};
use crate::sheet::{Sheet, demo};
use crate::study;

/// A prediction, to be made before the number.
pub(super) fn guess(guess: &Guess, ink: Ink<'_>) -> Markup {
    let asked = guess.asked(0);
    let ways = match asked.kind {
        GuessKind::Choice(_) => choices(asked, ink),
        GuessKind::Direction { answer, .. } => directions(*answer, ink),
        GuessKind::Number { .. } => number(asked, ink),
    };
    boxed(
        None,
        &html! {
            p.kind { "Your guess first" }
            p { (spans(asked.question, ink)) }
            (ways)
            @if ink.key {
                p { (spans(asked.why, ink)) }
            } @else {
                p.small { "I think so because" }
                span.lines {}
            }
        },
    )
}

fn tick(right: bool) -> Markup {
    html! { span.tick { @if right { "✓" } } }
}

fn choices(asked: Asked<'_>, ink: Ink<'_>) -> Markup {
    html! {
        @for (_, choice) in asked.choices() {
            p {
                (tick(ink.key && choice.right)) (spans(&choice.text, ink))
                @if let Some(idea) = choice.idea.as_deref().filter(|_| ink.key) {
                    br; em { "“" (idea) "” " } (spans(&choice.reply, ink))
                }
            }
        }
    }
}

fn directions(answer: Direction, ink: Ink<'_>) -> Markup {
    let words = |direction| match direction {
        Direction::Up => "It goes up",
        Direction::Same => "It stays the same",
        Direction::Down => "It goes down",
    };
    html! {
        p {
            @for direction in Direction::ALL {
                (tick(ink.key && direction == answer)) (words(direction)) " \u{2003} "
            }
        }
    }
}

fn number(asked: Asked<'_>, ink: Ink<'_>) -> Markup {
    let GuessKind::Number { answer, quantity, slips, .. } = asked.kind else { return html! {} };
    let truth = answer.si(|id| ink.subject.si(id));
    let shown = truth.map(|si| ink.shown(*quantity, si));
    html! {
        p { (gap(shown, ink.unit(*quantity), ink.key)) }
        @if ink.key {
            @for slip in slips {
                @if let Some(value) = slip_value(slip.value, truth, ink.subject) {
                    p.small {
                        (ink.shown(*quantity, value)) ": “" (slip.idea) "” " (spans(&slip.reply, ink))
                    }
                }
            }
        }
    }
}

/// The wrong number that a common slip gives.
pub(in crate::handout) fn slip_value(
    slip: SlipValue,
    truth: Option<f64>,
    subject: &Subject,
) -> Option<f64> {
    match slip {
        SlipValue::Is(reference) => reference.si(|id| subject.si(id)),
        SlipValue::Times(factor) => truth.map(|truth| factor * truth),
    }
}

/// A worked example on the left, and its blanked twin with the reader's numbers on the right.
pub(super) fn faded(faded: &Faded, ink: Ink<'_>) -> Markup {
    let example = ink.companion.cloned().or_else(|| example_for(ink.subject));
    html! {
        div.box {
            h3 { (faded.title.as_deref().unwrap_or("Line by line")) }
            div.twin {
                @if let Some(example) = &example {
                    div { (chain(faded, Ink { subject: example, key: true, ..ink })) }
                }
                div { (chain(faded, ink)) }
            }
        }
    }
}

/// A demonstration build that is not the reader's own.
fn example_for(subject: &Subject) -> Option<Subject> {
    demo::ALL
        .iter()
        .filter_map(|demo| Sheet::read(demo.text).ok())
        .find(|sheet| sheet.name() != subject.name && sheet.name() != subject.sheet.name())
        .map(|sheet| Subject::new(sheet.name().to_owned(), sheet))
}

fn chain(faded: &Faded, ink: Ink<'_>) -> Markup {
    html! {
        p.kind { (ink.subject.name) }
        ol {
            @for step in &faded.steps {
                li {
                    (spans(&step.say, ink)) br;
                    (gap(result(step, ink), unit_of(step, ink), ink.key || !step.blank))
                }
            }
        }
    }
}

/// What comes out of a line, in the unit its author chose.
pub(in crate::handout) fn result(step: &Step, ink: Ink<'_>) -> Option<String> {
    let si = step.is.si(|id| ink.subject.si(id))?;
    let entry = catalogue::find(step.quantity.name())?;
    let unit = step.unit.as_deref().filter(|_| ink.units.set == UnitSet::Metric);
    let chosen = unit.and_then(|unit| ink.units.show_in(entry, si, unit).ok());
    Some(chosen.unwrap_or_else(|| ink.units.show(entry, si)).to_string())
}

fn unit_of<'a>(step: &'a Step, ink: Ink<'a>) -> &'a str {
    match step.unit.as_deref() {
        Some(unit) if ink.units.set == UnitSet::Metric => unit,
        _ => ink.unit(step.quantity),
    }
}

/// A wish: what to change, and how far.
pub(super) fn target(asked: &TargetBlock, ink: Ink<'_>) -> Markup {
    let found = study::Target::of(&asked::wish(asked), &ink.subject.outcome.givens);
    let words = found.map_or_else(|error| error.to_string(), |found| found.sentence(ink.units));
    boxed(
        asked.title.as_deref(),
        &html! {
            p {
                "Wanted: " (label(asked.make)) " " b { (ink.shown(asked.make, asked.be)) }
                ". To be changed: " (label(asked.by)) "."
            }
            @if ink.key {
                p.right { (words) }
            } @else {
                p { "It takes: " (gap(None, ink.unit(asked.by), false)) }
            }
        },
    )
}
