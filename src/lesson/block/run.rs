//! `run`: something over time: a launch, a stop, a warm-up, an impact pulse.

use crate::lesson::fields::Fields;
use crate::lesson::known;
use crate::lesson::place::{Fault, Report};
use crate::quantity::catalogue::heat::{REST_TIME, WORK_TIME};
use crate::quantity::catalogue::motion::DRIVING_SPEED;
use crate::quantity::channel::{RunKind, RunPulse, TIME};
use crate::quantity::{AnyId, Entry, catalogue};

/// Something over time. Numbers in SI units.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// What it shows, in a line.
    pub title: Option<String>,
    /// Which run.
    pub kind: RunKind,
    /// What of it is plotted, at least one.
    pub show: Vec<&'static Entry>,
    /// The moment it is shown from; nothing: the start.
    pub from: Option<f64>,
    /// The moment it is shown to; nothing: the end.
    pub to: Option<f64>,
    /// The speed it begins with, or for a launch ends with; nothing: the build's.
    pub speed: Option<f64>,
    /// How long it works at a stretch; nothing: the build's.
    pub on: Option<f64>,
    /// How long it rests between; nothing: the build's.
    pub off: Option<f64>,
    /// The shape of an impact; nothing: the one that goes with the build.
    pub pulse: Option<RunPulse>,
    /// How fast it plays at first; nothing: whatever can be followed.
    pub pace: Option<RunPace>,
}

/// How fast a run plays.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum RunPace {
    /// As fast as it happens.
    True,
    /// The whole of it in ten seconds.
    TenSeconds,
    /// The whole of it in half a minute.
    HalfMinute,
}

impl RunPace {
    /// Every pace and its word.
    pub const WORDS: [(&'static str, Self); 3] =
        [("true", Self::True), ("10 s", Self::TenSeconds), ("30 s", Self::HalfMinute)];
}

pub(super) const FIELDS: &[&str] =
    &["title", "kind", "show", "from", "to", "speed", "on", "off", "pulse", "pace"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Run> {
    fields.allow(FIELDS, report);
    let title = fields.text("title", report).map(|title| title.value);
    let kind = fields.required("kind", report)?;
    let kind = known::one_of("kind of run", &kind, &RunKind::WORDS, report)?;
    let (from, to) = known::range(fields, &TIME, "the run", report);
    let mut word = |name| fields.text(name, report);
    let (pulse, pace) = (word("pulse"), word("pace"));
    let pulse = pulse.and_then(|text| known::one_of("pulse", &text, &RunPulse::WORDS, report));
    let pace = pace.and_then(|text| known::one_of("pace", &text, &RunPace::WORDS, report));
    let run = Run {
        title,
        kind,
        show: shown(kind, fields, report),
        from,
        to,
        speed: number("speed", DRIVING_SPEED.any(), fields, report),
        on: number("on", WORK_TIME.any(), fields, report),
        off: number("off", REST_TIME.any(), fields, report),
        pulse,
        pace,
    };
    let heat = kind == RunKind::WarmUp;
    let fits = [
        ("speed", kind.takes_speed(), "a run that moves"),
        ("on", heat, "a warm-up"),
        ("off", heat, "a warm-up"),
        ("pulse", kind == RunKind::Impact, "an impact"),
    ];
    for (name, fits, wanted) in fits {
        if fields.has(name) && !fits {
            let fault = Fault::new(format!("{name} says nothing about this kind of run"), wanted);
            report.add(fields.place(name), fault);
        }
    }
    Some(run)
}

/// The number of a field, in the units and within the bounds of a quantity.
fn number(name: &str, like: AnyId, fields: &Fields, report: &mut Report) -> Option<f64> {
    let text = fields.text(name, report)?;
    known::amount(&text, catalogue::find(like.name())?, report)
}

/// What is listed, each once; all that the run has when nothing is.
fn shown(kind: RunKind, fields: &Fields, report: &mut Report) -> Vec<&'static Entry> {
    let all = kind.channels();
    if !fields.has("show") {
        return all;
    }
    let table: Vec<(&'static str, &'static Entry)> =
        all.iter().map(|entry| (entry.id.name(), *entry)).collect();
    let before = report.count();
    let mut shown: Vec<&'static Entry> = Vec::new();
    for text in fields.texts("show", report) {
        let Some(entry) = known::one_of("part of this run", &text, &table, report) else {
            continue;
        };
        if shown.iter().any(|other| other.id == entry.id) {
            let fault = Fault::new(format!("\"{}\" stands twice in show", text.value), "each once");
            report.add(text.at, fault);
        } else {
            shown.push(entry);
        }
    }
    if shown.is_empty() && report.count() == before {
        let fault = Fault::new("show is empty", format!("some of {}", known::names(&table)));
        report.add(fields.place("show"), fault);
    }
    shown
}
