//! `guess`: a question answered before the number is shown, with the reader's own numbers.

mod claimed;
mod variant;

use super::basis;
use super::number::{Reference, Tolerance, reference, tolerance};
use crate::lesson::claim::Says;
use crate::lesson::document::Span;
use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::{AnyId, Entry, catalogue};
pub use variant::{Asked, Variant};

/// A question answered before the number is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct Guess {
    /// Its name in the notebook, `pressure/which-end-sinks`: the lesson and the question's words,
    /// so that other changes to the lesson leave the reader's answers in place.
    pub key: String,
    /// What is asked.
    pub question: Vec<Span>,
    /// How it is answered.
    pub kind: GuessKind,
    /// Shown after any answer.
    pub why: Vec<Span>,
    /// What is asked when the reader tries again, in turn.
    pub variants: Vec<Variant>,
}

/// How a question is answered.
#[derive(Debug, Clone, PartialEq)]
pub enum GuessKind {
    /// One of several answers, of which exactly one is right.
    Choice(Vec<Choice>),
    /// Up, the same, or down.
    Direction {
        /// The right one.
        answer: Direction,
        /// What is said to the wrong ones.
        replies: Vec<(Direction, Vec<Span>)>,
    },
    /// A number.
    Number {
        /// The right number.
        answer: Reference,
        /// What the number measures, and so in which units it is typed.
        quantity: AnyId,
        /// How near is near enough.
        tolerance: Tolerance,
        /// Wrong numbers that a known mistake leads to.
        slips: Vec<Slip>,
    },
}

/// One answer to choose.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// The answer.
    pub text: Vec<Span>,
    /// Whether it is the right one.
    pub right: bool,
    /// The idea behind it: for a wrong answer, the wrong idea, named.
    pub idea: Option<String>,
    /// What is said to a reader who chose it; never empty for a wrong answer.
    pub reply: Vec<Span>,
}

/// Which way a number goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Direction {
    /// It grows.
    Up,
    /// It stays.
    Same,
    /// It shrinks.
    Down,
}

/// A wrong number that a known mistake leads to.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// The number it leads to.
    pub value: SlipValue,
    /// The mistake, named.
    pub idea: String,
    /// What is said to a reader who made it.
    pub reply: Vec<Span>,
}

/// The number a mistake leads to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SlipValue {
    /// A number of its own.
    Is(Reference),
    /// So many times the right number.
    Times(f64),
}

/// The fields of every guess.
const COMMON: &[&str] = &["question", "kind", "why", "variant"];
/// The fields of every variant.
const VARIANT: &[&str] = &["question", "why"];
/// The fields of each kind, of a guess and of its variants.
const CHOICE_KIND: &[&str] = &["choice"];
const DIRECTION_KIND: &[&str] = &["answer", "reply", "moves", "by", "find"];
const NUMBER_KIND: &[&str] = &["answer", "quantity", "tolerance", "slip", "on", "given"];
const CHOICE: &[&str] = &["text", "right", "idea", "reply"];
const SLIP: &[&str] = &["value", "factor", "idea", "reply"];

/// The tables of a guess and the fields of each.
pub(in crate::lesson) const TABLES: &[(&str, &[&str])] = &[
    ("", COMMON),
    ("", CHOICE_KIND),
    ("", DIRECTION_KIND),
    ("", NUMBER_KIND),
    ("choice", CHOICE),
    ("slip", SLIP),
    ("reply", &["up", "same", "down"]),
    ("variant", VARIANT),
];

const KINDS: [&str; 3] = ["choice", "direction", "number"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Guess> {
    let question = fields.required("question", report).map(|text| text.spans(report));
    let why = fields.required("why", report).map(|text| text.spans(report));
    let name = fields.required("kind", report)?;
    let read: Kind = match name.value.as_str() {
        "choice" => choice,
        "direction" => direction,
        "number" => number,
        other => {
            let fault = Fault::new(format!("unknown kind \"{other}\""), KINDS.join(", "));
            report.add(name.at, fault.nearest(catalogue::nearest_of(other, KINDS)));
            return None;
        }
    };
    let kind = read(fields, None, report);
    let (question, kind, why) = (question?, kind?, why?);
    let variants = variant::read(fields, read, &kind, report);
    Some(Guess { key: String::new(), question, kind, why, variants })
}

/// Reads how a question is answered; a variant gives what it is a variant of.
type Kind = fn(&Fields, Option<&GuessKind>, &mut Report) -> Option<GuessKind>;

/// Reports every field that neither a guess nor a guess of this kind has.
fn allow(fields: &Fields, own: &[&str], of: Option<&GuessKind>, report: &mut Report) {
    let all = if of.is_none() { COMMON } else { VARIANT };
    fields.allow(&[all, own].concat(), report);
}

fn choice(fields: &Fields, of: Option<&GuessKind>, report: &mut Report) -> Option<GuessKind> {
    allow(fields, CHOICE_KIND, of, report);
    let tables = fields.tables("a choice", "choice", report);
    let choices: Vec<_> = tables.iter().filter_map(|table| one_choice(table, report)).collect();
    if tables.len() < 2 {
        let fault = Fault::new(
            format!("a guess with {} to choose from", tables.len()),
            "two or more tables that start with [[choice]]",
        );
        report.add(fields.at(), fault);
    }
    let right = choices.iter().filter(|choice| choice.right).count();
    if right != 1 && choices.len() == tables.len() {
        let fault = Fault::new(
            format!("a guess with {right} right choices"),
            "right = true in exactly one [[choice]]",
        );
        report.add(fields.at(), fault);
    }
    claimed::choices(&choices, fields.at(), report);
    Some(GuessKind::Choice(choices))
}

fn one_choice(fields: &Fields, report: &mut Report) -> Option<Choice> {
    fields.allow(CHOICE, report);
    let text = fields.required("text", report);
    let right = fields.truth("right", report).unwrap_or(false);
    let (idea, reply) = if right {
        (fields.text("idea", report), fields.text("reply", report))
    } else {
        (fields.required("idea", report), fields.required("reply", report))
    };
    Some(Choice {
        text: text?.spans(report),
        right,
        idea: idea.map(|idea| idea.value),
        reply: reply.map(|reply| reply.spans(report)).unwrap_or_default(),
    })
}

fn direction(fields: &Fields, of: Option<&GuessKind>, report: &mut Report) -> Option<GuessKind> {
    allow(fields, DIRECTION_KIND, of, report);
    let text = fields.required("answer", report)?;
    let Some(answer) = Direction::named(&text.value) else {
        let fault = Fault::new(format!("unknown answer \"{}\"", text.value), "up, same or down");
        let names = Direction::ALL.map(Direction::name);
        report.add(text.at, fault.nearest(catalogue::nearest_of(&text.value, names)));
        return None;
    };
    if !fields.has("reply") {
        fields.missing("reply", "a table [reply] with a text for each wrong answer", report);
    }
    let table = fields.table("a reply", "reply", report)?;
    let wrong: Vec<_> = Direction::ALL.into_iter().filter(|way| *way != answer).collect();
    let names: Vec<_> = wrong.iter().map(|way| way.name()).collect();
    table.allow(&names, report);
    let mut replies = Vec::new();
    for way in wrong {
        if let Some(text) = table.required(way.name(), report) {
            replies.push((way, text.spans(report)));
        }
    }
    claimed::direction(fields, answer, report);
    Some(GuessKind::Direction { answer, replies })
}

impl Direction {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Up, Self::Same, Self::Down];

    /// As lessons write it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Up => "up",
            Self::Same => "same",
            Self::Down => "down",
        }
    }

    fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|way| way.name() == name)
    }
}

fn number(fields: &Fields, of: Option<&GuessKind>, report: &mut Report) -> Option<GuessKind> {
    allow(fields, NUMBER_KIND, of, report);
    let (same, near, known_slips) = match of {
        Some(GuessKind::Number { quantity, tolerance, slips, .. }) => {
            (catalogue::find(quantity.name()), Some(*tolerance), slips.as_slice())
        }
        _ => (None, None, [].as_slice()),
    };
    let entry = match same.filter(|_| !fields.has("quantity")) {
        Some(entry) => entry,
        None => known::quantity(fields, "quantity", Wanted::Any, report)?,
    };
    let answer = fields.required("answer", report);
    let answer = answer.and_then(|text| reference(&text, entry, report));
    let tolerance = match near.filter(|_| !fields.has("tolerance")) {
        Some(tolerance) => Some(tolerance),
        None => {
            let text = fields.required("tolerance", report);
            text.and_then(|text| self::tolerance(&text, entry, report))
        }
    };
    let tables = fields.tables("a slip", "slip", report);
    let mut slips: Vec<_> = tables.iter().filter_map(|table| slip(table, entry, report)).collect();
    if !fields.has("slip") {
        slips.extend_from_slice(known_slips);
    }
    let (answer, tolerance) = (answer?, tolerance?);
    let basis = basis::read(fields, report);
    if let Reference::Si(si) = answer {
        let says = Says::Answer { quantity: entry.id, si, tolerance, basis };
        report.claim(fields.place("answer"), says);
    }
    Some(GuessKind::Number { answer, quantity: entry.id, tolerance, slips })
}

fn slip(fields: &Fields, entry: &Entry, report: &mut Report) -> Option<Slip> {
    fields.allow(SLIP, report);
    let idea = fields.required("idea", report);
    let reply = fields.required("reply", report);
    let value = match (fields.text("value", report), fields.number("factor", report)) {
        (Some(text), None) => reference(&text, entry, report).map(SlipValue::Is),
        (None, Some(1.0)) => {
            let fault = Fault::new("a factor of 1 is the right answer", "another factor");
            report.add(fields.place("factor"), fault);
            None
        }
        (None, Some(factor)) => Some(SlipValue::Times(factor)),
        (Some(_), Some(_)) => {
            let fault = Fault::new("a slip with both a value and a factor", "one of the two");
            report.add(fields.place("factor"), fault);
            None
        }
        (None, None) => {
            if !fields.has("value") && !fields.has("factor") {
                fields.missing("value", "a value or a factor of the right answer", report);
            }
            None
        }
    };
    Some(Slip { value: value?, idea: idea?.value, reply: reply?.spans(report) })
}
