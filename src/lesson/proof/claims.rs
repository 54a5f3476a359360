//! What lessons say of the rules, held against the rules on the example builds.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use crate::lesson::block::Direction;
use crate::lesson::claim::{Basis, Claim, End, Says, Way};
use crate::lesson::problem::Problem;
use crate::quantity::{AnyId, Units, catalogue};
use crate::rules::{Givens, Origin, Value, Values, catalogue::partner, evaluate};
use crate::sheet::{Sheet, Tally, demo};
use crate::study::Outcome;

/// A change smaller than this part of a number is rounding.
const SAME: f64 = 1e-9;

/// How far a number is moved to see which way another goes, as a part of it.
const STEP: f64 = 0.01;

/// Two live numbers nearer than this, as a share, look alike.
const ALIKE: f64 = 0.005;

/// An example build, and all that follows from it.
struct Example {
    id: &'static str,
    givens: Givens,
    spreads: BTreeMap<AnyId, f64>,
    values: Values,
}

static EXAMPLES: LazyLock<Vec<Example>> = LazyLock::new(|| {
    demo::ALL
        .iter()
        .filter_map(|demo| {
            let Tally { givens, spreads, .. } = Sheet::read(demo.text).ok()?.tally();
            Some(Example { id: demo.id, values: evaluate(&givens), givens, spreads })
        })
        .collect()
});

/// Everything that a file says of the rules and the rules do not say.
pub(super) fn problems(file: &str, claims: &[Claim]) -> impl Iterator<Item = Problem> {
    claims.iter().filter_map(move |claim| problem(file, claim))
}

fn problem(file: &str, claim: &Claim) -> Option<Problem> {
    let (message, expected) = match &claim.says {
        Says::Answer { quantity, si, tolerance, basis } => {
            let (said, expected) = match answer(*quantity, None, basis) {
                Answer::Found(found) if tolerance.holds(*si, found) => return None,
                answer => answer.in_words(|found| shown(*quantity, found)),
            };
            (format!("{} as {}: {said}", shown(*quantity, *si), quantity.name()), expected)
        }
        Says::Prints { quantity, printed, end, basis } => {
            let (said, expected) = match answer(*quantity, *end, basis) {
                Answer::Found(found) if printed.is(found) => return None,
                answer => answer.in_words(|found| printed.rather(found)),
            };
            let end = match end {
                None => "",
                Some(End::Low) => "the low end of ",
                Some(End::High) => "the high end of ",
            };
            (format!("{} as {end}{}: {said}", printed.text(), quantity.name()), expected)
        }
        Says::Moves { moves, by, find, answer } => moved(*moves, *by, *find, *answer)?,
        Says::Words { quantity, si, near } => words(*quantity, *si, *near)?,
        Says::Apart { right, wrong } => apart(*right, *wrong)?,
    };
    Some(Problem {
        file: file.to_owned(),
        line: claim.line,
        column: claim.column,
        message,
        expected,
        nearest: None,
    })
}

enum Answer {
    Found(f64),
    /// The rules find none, and what would help.
    Unknown(String),
    NoBasis,
}

impl Answer {
    /// What the rules say, and what is expected instead.
    fn in_words(self, shown: impl Fn(f64) -> String) -> (&'static str, String) {
        match self {
            Self::Found(found) => ("the rules find another", shown(found)),
            Self::Unknown(help) => ("the rules find none", help),
            Self::NoBasis => (
                "nothing says what it is true of",
                "on = \"sandpiper\" (an example build) or a table [given] of numbers".to_owned(),
            ),
        }
    }
}

/// What the rules find from an example build and the numbers given: a number, or an end of its range.
fn answer(quantity: AnyId, end: Option<End>, basis: &Basis) -> Answer {
    if *basis == Basis::default() {
        return Answer::NoBasis;
    }
    let build = EXAMPLES.iter().find(|example| basis.on == Some(example.id));
    let (mut givens, mut spreads) = match (&basis.parts, build) {
        (Some(sheet), _) => {
            let Tally { givens, spreads, .. } = sheet.tally();
            (givens, spreads)
        }
        (None, Some(build)) => (build.givens.clone(), build.spreads.clone()),
        (None, None) => Default::default(),
    };
    for (id, amount) in &basis.given {
        put(&mut givens, *id, amount.si);
        spreads.remove(id);
        spreads.extend(amount.spread.map(|spread| (*id, spread)));
    }
    let Some(end) = end else {
        let values = evaluate(&givens);
        return values.si(quantity).map_or_else(|| unknown(values.of(quantity)), Answer::Found);
    };
    let outcome = Outcome::of(givens, &spreads, 0);
    match (outcome.values.of(quantity), outcome.range(quantity)) {
        (Value::Known(_), Some(range)) => Answer::Found(match end {
            End::Low => range.low,
            End::High => range.high,
        }),
        (Value::Known(_), None) => {
            Answer::Unknown("a spread (± 5 %) of a number that it follows from".to_owned())
        }
        (value, _) => unknown(value),
    }
}

/// Why the rules find no number.
fn unknown(value: &Value) -> Answer {
    Answer::Unknown(match value {
        Value::Missing(lacks) if !lacks.is_empty() => {
            let either = |lack: &Vec<AnyId>| {
                lack.iter().map(|id| id.name()).collect::<Vec<_>>().join(" or ")
            };
            let each: Vec<_> = lacks.iter().map(either).collect();
            format!("numbers it follows from: {}", each.join(", "))
        }
        Value::Invalid(why) => format!("other numbers: {why}"),
        _ => "numbers it follows from".to_owned(),
    })
}

/// What is wrong with which way a number goes, on any build that has both numbers.
fn moved(moves: AnyId, by: Way, find: AnyId, answer: Direction) -> Option<(String, String)> {
    let ways: Vec<_> = EXAMPLES
        .iter()
        .filter_map(|example| Some((example.id, way(example, moves, by, find)?)))
        .collect();
    if ways.is_empty() {
        return Some((
            format!("no example build shows what {moves} does to {find}"),
            "two numbers that an example build has".to_owned(),
        ));
    }
    let (build, way) = ways.into_iter().find(|(_, way)| *way != answer)?;
    Some((
        format!("the answer is {}, but on {build} the rules say {}", answer.name(), way.name()),
        way.name().to_owned(),
    ))
}

/// Which way a number goes on a build when another is moved a little.
fn way(example: &Example, moves: AnyId, by: Way, find: AnyId) -> Option<Direction> {
    let (before, from) = (example.values.si(find)?, example.values.si(moves)?);
    let entry = catalogue::find(moves.name())?;
    let size = if from == 0.0 { entry.usual.1 - entry.usual.0 } else { from.abs() };
    let step = match by {
        Way::Up => STEP * size,
        Way::Down => -STEP * size,
        Way::Out => STEP * size * if from < 0.0 { -1.0 } else { 1.0 },
    };
    let mut givens = example.givens.clone();
    put(&mut givens, moves, from + step);
    let change = evaluate(&givens).si(find)? - before;
    Some(if change.abs() <= SAME * before.abs() {
        Direction::Same
    } else if change > 0.0 {
        Direction::Up
    } else {
        Direction::Down
    })
}

/// What is wrong with the words of a live number: they are true of no example build.
fn words(quantity: AnyId, si: f64, near: f64) -> Option<(String, String)> {
    let found = || EXAMPLES.iter().filter_map(|e| Some((e.id, e.values.si(quantity)?)));
    if found().any(|(_, found)| (found - si).abs() <= near * found.abs().max(f64::MIN_POSITIVE)) {
        return None;
    }
    let each: Vec<_> =
        found().map(|(id, found)| format!("{} ({id})", shown(quantity, found))).collect();
    let expected =
        if each.is_empty() { "words without a number".to_owned() } else { each.join(" or ") };
    Some((format!("no example build has {} as {quantity}", shown(quantity, si)), expected))
}

/// What is wrong with two choices: on an example build they show the same.
fn apart(right: AnyId, wrong: AnyId) -> Option<(String, String)> {
    let alike = EXAMPLES.iter().find(|example| {
        let both = example.values.si(right).zip(example.values.si(wrong));
        both.is_some_and(|(right, wrong)| (right - wrong).abs() <= ALIKE * right.abs())
    })?;
    Some((
        format!("on {} the right choice and a wrong one show the same number", alike.id),
        format!("a number further from {right} than {wrong} is"),
    ))
}

/// Gives a number, and takes away what says the same in another way.
fn put(givens: &mut Givens, id: AnyId, si: f64) {
    if let Some(pair) = partner(id) {
        givens.clear(if pair.one == id { pair.other } else { pair.one });
    }
    givens.put(id, si, Origin::Given);
}

fn shown(id: AnyId, si: f64) -> String {
    catalogue::find(id.name())
        .map_or_else(String::new, |entry| Units::default().show(entry, si).to_string())
}
