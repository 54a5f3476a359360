//! What the program costs beside the bare work it does: `cargo bench --bench ratios`.
//!
//! Both sides of each figure are measured in one run, in turn, and the quickest round of each
//! counts. Ends with 1 when a goal is missed.
//!
//! `-- --guard`, as the CI has it, leaves out what is held against seconds and gives the goals some
//! slack: it is to catch what has become half as slow again, on a machine shared with others.
#![allow(clippy::unwrap_used, reason = "a bench may be blunt")]

#[path = "ratios/by_hand.rs"]
mod by_hand;

use std::hint::black_box;
use std::io::{Write, stdout};
use std::process::ExitCode;
use std::time::{Duration, Instant};

use heftwise::lesson::{Library, Shipped, Source};
use heftwise::quantity::catalogue::{
    impact::*, machine::*, motion::RUN_UP_TIME, pressure::*, running_gear::*,
};
use heftwise::quantity::{AnyId, Step, catalogue};
use heftwise::rules::{Course, Givens, Origin, Values, evaluate};
use heftwise::sheet::{Sheet, demo};
use heftwise::study::curve::{Ask, Scale};
use heftwise::study::{Curve, Levers, Outcome};
use pulldown_cmark::{Options, Parser};

/// Rounds of each side; the quickest counts.
const ROUNDS: usize = 40;

/// What a goal is multiplied by while guarding.
const SLACK: f64 = 1.5;

/// Points of the curves that are held against as many passes.
const POINTS: u32 = 200;

/// One figure: what it is called, ours, what it is held against, and the ratio it may reach.
type Figure = (String, Duration, Duration, f64);

/// Measures some of them.
type Part = fn() -> Vec<Figure>;

/// The parts, each by a word that asks for it alone: `cargo bench --bench ratios -- rules`.
const PARTS: [(&str, Part); 4] =
    [("rules", rules), ("curves", curves), ("levers", levers), ("lessons", lessons)];

/// The part whose goal is a time and no ratio: no guard.
const TIMED: &str = "levers";

fn main() -> ExitCode {
    let guards = std::env::args().any(|argument| argument == "--guard");
    let slack = if guards { SLACK } else { 1.0 };
    let asked: Vec<String> = std::env::args().skip(1).filter(|a| !a.starts_with('-')).collect();
    let mut out = stdout().lock();
    let mut fits = true;
    writeln!(out, "{:<64}{:>12}{:>12}{:>9}{:>9}", "figure", "ours", "beside", "ratio", "goal")
        .unwrap();
    let wanted = |name: &str| asked.is_empty() || asked.iter().any(|a| a == name);
    let parts = PARTS.iter().filter(|(name, _)| wanted(name) && !(guards && *name == TIMED));
    for (_, part) in parts {
        for (figure, ours, beside, goal) in part() {
            let (ratio, goal) = (ours.as_secs_f64() / beside.as_secs_f64(), goal * slack);
            fits &= ratio <= goal;
            writeln!(out, "{figure:<64}{ours:>12.2?}{beside:>12.2?}{ratio:>9.2}{goal:>9.2}")
                .unwrap();
        }
    }
    if fits { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

fn rules() -> Vec<Figure> {
    let (found, [ours, hand]) = rules_beside_hand();
    vec![(format!("{found} rules / the same formulas on bare f64"), ours, hand, 1.5)]
}

fn curves() -> Vec<Figure> {
    curves_beside_passes()
        .into_iter()
        .map(|(name, ours, passes)| {
            (format!("{POINTS} points of {name} / {POINTS} passes"), ours, passes, 1.2)
        })
        .collect()
}

fn levers() -> Vec<Figure> {
    let answers = [("low end", LOW_END_PRESSURE.any()), ("run-up time", RUN_UP_TIME.any())];
    answers
        .into_iter()
        .map(|(name, id)| {
            let figure = format!("whole sheet, spread, levers of the {name} / 2 ms");
            (figure, levers_with_spread(id), Duration::from_millis(2), 1.0)
        })
        .collect()
}

fn lessons() -> Vec<Figure> {
    let [ours, bare] = lessons_beside_markdown();
    vec![("all lessons parsed and bound / Markdown iterated".to_owned(), ours, bare, 3.0)]
}

/// The quickest of some rounds of each, taken in turn, each round so many times over.
fn quickest<const N: usize>(times: u32, mut sides: [&mut dyn FnMut(); N]) -> [Duration; N] {
    let mut best = [Duration::MAX; N];
    for _ in 0..ROUNDS {
        for (side, best) in sides.iter_mut().zip(&mut best) {
            let start = Instant::now();
            (0..times).for_each(|_| side());
            *best = (*best).min(start.elapsed() / times);
        }
    }
    best
}

/// The demo build with what it leaves out of impact said too, so that every rule has an answer.
fn givens() -> Givens {
    let mut givens = Sheet::read(demo::find("sandpiper").unwrap().text).unwrap().tally().givens;
    for (name, si) in by_hand::SAID_TOO {
        givens.set(catalogue::find(name).unwrap().id, si);
    }
    givens
}

/// The way from every number that is not found to those wanted.
fn course(values: &Values, wanted: &[AnyId]) -> Course {
    let set = |id: &AnyId| values.si(*id).is_some();
    let from: Vec<AnyId> = catalogue::all()
        .iter()
        .map(|entry| entry.id)
        .filter(|id| set(id) && values.origin(*id) != Some(Origin::Found))
        .collect();
    Course::between(&from, wanted)
}

/// The rules of weight, running gear, pressure, impact and motion, as the program runs them and by
/// hand; what rules of other topics find on the way is given to both. How many rules find something,
/// and what each side takes.
fn rules_beside_hand() -> (usize, [Duration; 2]) {
    let mut givens = givens();
    let mut values = evaluate(&givens);
    let wanted: Vec<AnyId> =
        by_hand::names().iter().map(|name| catalogue::find(name).unwrap().id).collect();
    for id in course(&values, &wanted).passes().filter(|id| !wanted.contains(id)) {
        values.si(id).into_iter().for_each(|si| givens.set(id, si));
    }
    values = evaluate(&givens);
    let course = course(&values, &wanted);
    let inputs = by_hand::Inputs::of(|name| values.si(catalogue::find(name).unwrap().id).unwrap());
    // Both sides say the same of everything, or there is nothing to compare.
    for (id, by_hand) in wanted.iter().zip(by_hand::all(&inputs)) {
        let ours = values.si(*id).unwrap();
        assert!((ours - by_hand).abs() <= 1e-7 * ours.abs(), "{id}: {ours} by hand {by_hand}");
    }
    let found = course.passes().filter(|id| values.origin(*id) == Some(Origin::Found)).count();
    assert_eq!(found, wanted.len(), "every number found on the course stands by hand too");
    let took = quickest(
        50,
        [&mut || course.run(black_box(&givens), &mut values), &mut || {
            black_box(by_hand::all(black_box(&inputs)));
        }],
    );
    (found, took)
}

/// Curves, reckoned to as many points, and as many passes over all rules.
fn curves_beside_passes() -> Vec<(String, Duration, Duration)> {
    let givens = Sheet::read(demo::find("sandpiper").unwrap().text).unwrap().tally().givens;
    let asks = [
        Ask::new(GROUND_PRESSURE, TRACK_WIDTH),
        Ask::new(LOW_END_PRESSURE, BALANCE_OFFSET),
        Ask { scale: Scale::Log, ..Ask::new(PEAK_IMPACT_FORCE, STOP_DISTANCE) },
        Ask::new(LOW_END_MARGIN, MASS),
    ];
    asks.iter()
        .map(|ask| {
            let points = Curve::of(ask, &givens).unwrap().samples.len() as f64;
            let [curve, pass] = quickest(
                2,
                [&mut || drop(black_box(Curve::of(black_box(ask), &givens))), &mut || {
                    (0..POINTS).for_each(|_| drop(black_box(evaluate(black_box(&givens)))));
                }],
            );
            let name = format!("{} against {}", ask.find, ask.against);
            (name, curve.mul_f64(f64::from(POINTS) / points), pass)
        })
        .collect()
}

/// From the numbers given to every number with its range, and what each given does to an answer.
fn levers_with_spread(of: AnyId) -> Duration {
    let tally = Sheet::read(demo::find("sandpiper").unwrap().text).unwrap().tally();
    let step = Step::percent(1.0).unwrap();
    let [took] = quickest(
        2,
        [&mut || {
            let outcome = Outcome::of(black_box(tally.givens.clone()), &tally.spreads, 0);
            black_box(Levers::of(of, &step, &outcome));
        }],
    );
    took
}

/// Reading all shipped lessons with their teacher's pages, and running the Markdown parser over the
/// same texts.
fn lessons_beside_markdown() -> [Duration; 2] {
    let lessons = Shipped.lessons().unwrap();
    let pages = lessons.iter().filter_map(|id| Shipped.teacher(id).unwrap());
    let texts: Vec<_> = lessons.iter().map(|id| Shipped.text(id).unwrap()).chain(pages).collect();
    let options = Options::ENABLE_TABLES
        | Options::ENABLE_FOOTNOTES
        | Options::ENABLE_STRIKETHROUGH
        | Options::ENABLE_MATH
        | Options::ENABLE_GFM;
    let mut best = [Duration::MAX; 2];
    for _ in 0..4 * ROUNDS {
        let start = Instant::now();
        let library = black_box(Library::load(Shipped));
        library.read_all();
        best[0] = best[0].min(start.elapsed());
        // What was read is thrown away off the clock.
        drop(library);
        let start = Instant::now();
        for text in &texts {
            Parser::new_ext(text, options).into_offset_iter().for_each(|event| {
                black_box(event);
            });
        }
        best[1] = best[1].min(start.elapsed());
    }
    best
}
