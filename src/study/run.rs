//! A run: something the build does over time, from a launch to a hit, moment by moment.
//!
//! A run is worked out once from the numbers given, by the same physics as the rules, and can then be
//! read at any moment.

mod empty;
mod heat;
mod impact;
mod motion;
mod words;

use crate::quantity::catalogue::{heat as hot, impact as hit, motion as moving};
use crate::quantity::channel::{self, RunKind, RunPulse};
use crate::quantity::{AnyId, Entry, Units};
use crate::rules::{Givens, Lack, Value, Values, catalogue::partner, evaluate, impossible};
use crate::study::words::lacking;
pub use words::Words;

/// How many even steps a run is told in, before what happens between them is added.
const STEPS: usize = 240;

/// What run is asked for. Numbers in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ask {
    /// Which.
    pub kind: RunKind,
    /// The moment to show it from; none: the start.
    pub from: Option<f64>,
    /// The moment to show it to; none: the end.
    pub to: Option<f64>,
    /// The speed it begins with, or for a launch ends with; none: the build's.
    pub speed: Option<f64>,
    /// How long it works at a stretch; none: the build's.
    pub on: Option<f64>,
    /// How long it rests between; none: the build's.
    pub off: Option<f64>,
    /// The shape of an impact; none: the one that goes with the build's peak over mean.
    pub pulse: Option<RunPulse>,
}

impl Ask {
    /// A run from start to end with the build's own numbers.
    pub fn new(kind: RunKind) -> Self {
        Self { kind, from: None, to: None, speed: None, on: None, off: None, pulse: None }
    }

    /// The numbers of the build with those asked for in their place.
    fn put_into(&self, givens: &Givens) -> Givens {
        let mut givens = givens.clone();
        let speed = match self.kind {
            RunKind::Launch => moving::TARGET_SPEED.any(),
            RunKind::Impact => hit::IMPACT_SPEED.any(),
            _ => moving::DRIVING_SPEED.any(),
        };
        let (on, off) = (hot::WORK_TIME.any(), hot::REST_TIME.any());
        for (id, si) in [(speed, self.speed), (on, self.on), (off, self.off)] {
            let Some(si) = si else { continue };
            if let Some(pair) = partner(id) {
                givens.clear(if pair.one == id { pair.other } else { pair.one });
            }
            givens.set(id, si);
        }
        givens
    }
}

/// Why there is no run, in words.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct NoRun(pub String);

impl From<crate::physics::Impossible> for NoRun {
    fn from(why: crate::physics::Impossible) -> Self {
        Self(impossible(why).to_owned())
    }
}

/// A limit beside a series, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// What it is called.
    pub label: &'static str,
    /// Where.
    pub at: f64,
}

/// One number over time.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    /// What it is.
    pub channel: &'static Entry,
    /// Its value at each of the run's times, in SI units.
    pub values: Vec<f64>,
    /// What it should stay on one side of.
    pub limits: Vec<Limit>,
}

/// A moment at which something happens.
#[derive(Debug, Clone, PartialEq)]
pub struct Mark {
    /// When, in seconds.
    pub at: f64,
    /// In which series it shows.
    pub channel: &'static Entry,
    /// What the series is at there, in SI units.
    pub value: f64,
    /// Whether it stays so from then on.
    pub lasts: bool,
    /// The same in very few words, where the place says the rest.
    pub brief: &'static str,
    /// What happens: "it goes past the winding limit".
    pub words: Words,
}

impl Mark {
    /// When it happens, in words: "at 12.0 ms", "from 35.1 ms on", "at first".
    pub fn when(&self, units: &Units) -> String {
        let at = units.show(&channel::TIME, self.at);
        match self.lasts {
            _ if self.at == 0.0 => "at first".to_owned(),
            true => format!("from {at} on"),
            false => format!("at {at}"),
        }
    }
}

/// A run, moment by moment. All numbers in SI units, never NaN or infinite.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// Which kind.
    pub kind: RunKind,
    /// The moments, strictly increasing, two or more.
    pub times: Vec<f64>,
    /// What is known at each of them.
    pub series: Vec<Series>,
    /// What happens when, in order.
    pub marks: Vec<Mark>,
    /// What ended it, and what came of it.
    pub ending: Words,
    /// What is taken for granted.
    pub assumes: Vec<Words>,
}

impl Run {
    /// Works a run out from the numbers given.
    ///
    /// # Errors
    /// In words: the numbers that are lacking, or why they lead to no run.
    pub fn of(ask: &Ask, givens: &Givens) -> Result<Self, NoRun> {
        let changed = ask.put_into(givens);
        let values = evaluate(&changed);
        let run = match ask.kind {
            RunKind::Launch => motion::launch(&values),
            RunKind::Coast => motion::coast(&values),
            RunKind::Stop => motion::stop(&values),
            RunKind::WarmUp => heat::warm_up(&values, ask.to),
            RunKind::Impact => impact::impact(&values, ask.pulse),
            RunKind::UntilEmpty => empty::until_empty(&changed, &values, ask.speed),
        }?;
        run.sound()?.between(ask.from, ask.to)
    }

    /// How long it lasts, in seconds.
    pub fn duration(&self) -> f64 {
        self.end() - self.start()
    }

    /// The first moment shown.
    pub fn start(&self) -> f64 {
        self.times.first().copied().unwrap_or_default()
    }

    /// The last moment shown.
    pub fn end(&self) -> f64 {
        self.times.last().copied().unwrap_or_default()
    }

    /// The series of that channel.
    pub fn series(&self, channel: &Entry) -> Option<&Series> {
        self.series.iter().find(|series| series.channel.id == channel.id)
    }

    /// What ended it and what happened on the way, in one sentence.
    pub fn sentence(&self, units: &Units) -> String {
        let happened = self
            .marks
            .iter()
            .map(|mark| format!("{} {}", mark.when(units), mark.words.told(units)));
        let all: Vec<String> = std::iter::once(self.ending.told(units)).chain(happened).collect();
        format!("{}.", all.join("; "))
    }

    /// The part of it between two moments.
    fn between(self, from: Option<f64>, to: Option<f64>) -> Result<Self, NoRun> {
        let (start, end) = (self.start(), self.end());
        let (from, to) = (from.unwrap_or(start).max(start), to.unwrap_or(end).min(end));
        if from >= to {
            let over = Units::default().show(&channel::TIME, end);
            return Err(NoRun(format!(
                "The run is over after {over}: let from and to lie before that, from first."
            )));
        }
        let inner =
            self.times.iter().copied().filter(|time| (from..to).contains(time) && *time > from);
        let times: Vec<f64> = std::iter::once(from).chain(inner).chain([to]).collect();
        let series = self
            .series
            .iter()
            .map(|series| Series {
                values: times.iter().map(|time| series.at(&self.times, *time)).collect(),
                ..series.clone()
            })
            .collect();
        let marks = self.marks.into_iter().filter(|mark| (from..=to).contains(&mark.at)).collect();
        Ok(Self { times, series, marks, ..self })
    }

    /// Refuses numbers that are not finite, and drops moments that do not follow the one before.
    fn sound(mut self) -> Result<Self, NoRun> {
        let mut last = f64::NEG_INFINITY;
        let later: Vec<bool> = self
            .times
            .iter()
            .map(|time| {
                let later = *time > last;
                last = last.max(*time);
                later
            })
            .collect();
        let keep = |values: &mut Vec<f64>| {
            let mut later = later.iter().copied();
            values.retain(|_| later.next().unwrap_or(false));
        };
        keep(&mut self.times);
        self.series.iter_mut().for_each(|series| keep(&mut series.values));
        let values = self.series.iter().flat_map(|series| &series.values);
        let finite = values.chain(&self.times).all(|value| value.is_finite());
        if finite && self.times.len() > 1 {
            Ok(self)
        } else {
            Err(NoRun("The numbers are too large or too small to make a run of them.".to_owned()))
        }
    }
}

impl Series {
    /// Its value at a moment, between the two nearest of the run's `times`; at the ends what it is
    /// there.
    pub fn at(&self, times: &[f64], time: f64) -> f64 {
        let right = times.partition_point(|at| *at < time).min(times.len().saturating_sub(1));
        let left = right.saturating_sub(1);
        let get = |i: usize| {
            let at = times.get(i).copied().unwrap_or_default();
            (at, self.values.get(i).copied().unwrap_or_default())
        };
        let ((ta, a), (tb, b)) = (get(left), get(right));
        let part = if tb > ta { ((time - ta) / (tb - ta)).clamp(0.0, 1.0) } else { 0.0 };
        a + (b - a) * part
    }

    /// Where it first goes past a limit from below, between moments.
    fn passes(&self, times: &[f64], limit: f64) -> Option<f64> {
        let over = self.values.iter().position(|value| *value > limit)?;
        let Some(before) = over.checked_sub(1) else { return times.first().copied() };
        let (a, b) = (self.values.get(before)?, self.values.get(over)?);
        let (from, to) = (times.get(before)?, times.get(over)?);
        Some(from + (to - from) * (limit - a) / (b - a))
    }
}

/// The numbers of several quantities, or in words all that is lacking.
fn known<const N: usize>(values: &Values, ids: [AnyId; N]) -> Result<[f64; N], NoRun> {
    let mut lacks: Vec<Lack> = Vec::new();
    let mut found = [0.0; N];
    for (place, id) in found.iter_mut().zip(ids) {
        match values.of(id) {
            Value::Known(known) => *place = known.si,
            Value::Invalid(why) => return Err(NoRun(why.to_string())),
            Value::Missing(more) => {
                for lack in more.iter() {
                    if !lacks.contains(lack) {
                        lacks.push(lack.clone());
                    }
                }
            }
        }
    }
    if lacks.is_empty() { Ok(found) } else { Err(NoRun(lacking(&lacks))) }
}

/// A part of even steps, both ends included.
fn even(steps: usize) -> impl Iterator<Item = f64> {
    (0..=steps).map(move |step| step as f64 / steps.max(1) as f64)
}
