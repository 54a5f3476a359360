//! Levers: what one more step of each given number does to an answer, the largest effect first.

use super::changed::{Changed, Trial, number};
use super::moved::Moved;
use super::outcome::Outcome;
use super::words::label;
use crate::quantity::{AnyId, Effort, Entry, Step, Units, catalogue};
use crate::rules::{Course, Origin, Values, catalogue::partner};

/// A change smaller than this part of the number is rounding, not an effect.
const ROUNDING: f64 = 1e-12;

/// What a step of one given number does to the answer. Numbers in SI units.
#[derive(Debug, Clone, PartialEq)]
pub struct Lever {
    /// The number moved.
    pub id: AnyId,
    /// What it takes to move it.
    pub effort: Effort,
    /// Whether it is counted in whole ones, so that its step is one more, far more than a percent.
    pub counted: bool,
    /// The number as it is.
    pub from: f64,
    /// The number after the step; it goes the other way where this way is impossible.
    pub to: f64,
    /// The answer as it is.
    pub before: f64,
    /// The answer after the step, or why there is none.
    pub after: Result<f64, String>,
    /// Its part of the doubt in the answer, 0 to 1; none when it carries no spread.
    pub doubt: Option<f64>,
}

impl Lever {
    /// What the step does to the answer, in words: `down 0.99 %`.
    pub fn effect(&self) -> String {
        match &self.after {
            Ok(after) => {
                Moved { id: self.id, before: Some(self.before), after: Some(*after) }.in_words()
            }
            Err(_) => "no answer".to_owned(),
        }
    }

    /// How much the answer moves, as a part of it, or in SI units where it is zero; none when the
    /// step leaves no answer.
    pub fn size(&self) -> Option<f64> {
        let after = *self.after.as_ref().ok()?;
        let change = (after - self.before).abs();
        Some(if self.before == 0.0 { change } else { change / self.before.abs() })
    }
}

/// What each given number does to an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Levers {
    /// The answer.
    pub of: AnyId,
    /// The step taken with each number, one at a time.
    pub step: Step,
    /// The answer as it is, in SI units, or why there is none.
    pub now: Result<f64, String>,
    /// The numbers that move it, the largest effect first; those that leave no answer
    /// stand last.
    pub levers: Vec<Lever>,
}

impl Levers {
    /// Moves every given number of the build that bears on the answer, one at a time.
    pub fn of(of: impl Into<AnyId>, step: &Step, outcome: &Outcome) -> Self {
        let of = of.into();
        let now = number(outcome.values.of(of));
        let mut trial = Trial::new(&outcome.givens, &outcome.values);
        let mut levers: Vec<Lever> = match &now {
            Ok(before) => catalogue::all()
                .iter()
                .filter_map(|entry| lever((of, *before), entry, step, outcome, &mut trial))
                .collect(),
            Err(_) => Vec::new(),
        };
        let order = |lever: &Lever| lever.size().unwrap_or(-1.0);
        levers.sort_by(|a, b| order(b).total_cmp(&order(a)));
        Self { of, step: step.clone(), now, levers }
    }

    /// The levers of one kind that are not counted, the largest effect first.
    pub fn by(&self, effort: Effort) -> impl Iterator<Item = &Lever> {
        self.levers.iter().filter(move |lever| lever.effort == effort && !lever.counted)
    }

    /// The levers counted in whole ones, the largest effect first.
    pub fn counted(&self) -> impl Iterator<Item = &Lever> {
        self.levers.iter().filter(|lever| lever.counted)
    }

    /// What does most, what does most at no cost, and where most of the doubt comes from.
    pub fn sentence(&self, units: &Units) -> String {
        let answer = label(self.of);
        if let Err(why) = &self.now {
            return format!("There is no {answer} yet. {why}");
        }
        let within =
            |lever: &&Lever| lever.effort != Effort::Fixed && !lever.counted && lever.after.is_ok();
        let Some(first) = self.levers.iter().find(within) else {
            return format!("No number of yours moves the {answer} by this step.");
        };
        let does = |lever: &Lever| self.does(lever, units);
        let mut words = format!("What does most is the {}: {}.", label(first.id), does(first));
        if first.effort == Effort::Free {
            words.push_str(" It costs nothing.");
        } else if let Some(free) = self.by(Effort::Free).find(|lever| lever.after.is_ok()) {
            words.push_str(&format!(
                " Of the moves that cost nothing, the {} does most: {}.",
                label(free.id),
                does(free)
            ));
        } else {
            words.push_str(" No move that costs nothing bears on it.");
        }
        if let Some((lever, share)) = self.most_doubted() {
            words.push_str(&format!(
                " {:.0} % of the doubt comes from the {}.",
                share * 100.0,
                label(lever.id)
            ));
        }
        words
    }

    fn does(&self, lever: &Lever, units: &Units) -> String {
        let shown = |si| {
            catalogue::find(lever.id.name())
                .map_or_else(String::new, |entry| units.show(entry, si).short().to_string())
        };
        format!(
            "from {} to {} puts the {} {}",
            shown(lever.from),
            shown(lever.to),
            label(self.of),
            lever.effect()
        )
    }

    /// The given that makes most of the doubt, and its part of it.
    pub fn most_doubted(&self) -> Option<(&Lever, f64)> {
        self.levers
            .iter()
            .filter_map(|lever| Some((lever, lever.doubt?)))
            .max_by(|a, b| a.1.total_cmp(&b.1))
    }
}

fn lever(
    (of, before): (AnyId, f64),
    entry: &'static Entry,
    step: &Step,
    outcome: &Outcome,
    trial: &mut Trial<'_>,
) -> Option<Lever> {
    let id = entry.id;
    let from = outcome.values.si(id)?;
    if id == of || outcome.values.origin(id)? == Origin::Found {
        return None;
    }
    let course = Course::between(&[id], &[of]);
    if course.is_empty() {
        return None;
    }
    let change = step.of(entry, from)?;
    let to = [from + change, from - change].into_iter().find(|to| entry.admits(*to))?;
    let read = |values: &Values| number(values.of(of));
    let after = if said_twice(id, outcome) {
        Changed::new(id, &outcome.givens, &[of]).at(to, read)
    } else {
        let [after] = trial.of(id, [Some(to)], &course, read);
        after?
    };
    if after.as_ref().is_ok_and(|after| (after - before).abs() <= ROUNDING * before.abs()) {
        return None;
    }
    let doubt = outcome
        .range(of)
        .and_then(|range| range.contributions.iter().find(|part| part.id == id))
        .map(|part| part.share);
    Some(Lever { id, effort: entry.effort, counted: entry.whole, from, to, before, after, doubt })
}

/// Whether both ways to say a number are given: one does not move without the other.
fn said_twice(id: AnyId, outcome: &Outcome) -> bool {
    partner(id).is_some_and(|pair| {
        [pair.one, pair.other].iter().all(|id| outcome.givens.get(*id).is_some())
    })
}
