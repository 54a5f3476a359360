//! What one edit costs, piece by piece: `cargo bench`. Figures, never pass or fail.
#![allow(clippy::unwrap_used, reason = "a bench may be blunt")]

use divan::{Bencher, black_box};
use heftwise::lesson::{Library, Shipped, Source};
use heftwise::quantity::catalogue::{impact::*, machine::BALANCE_OFFSET, pressure::*};
use heftwise::quantity::{Step, Units};
use heftwise::rules::{catalogue, evaluate, working};
use heftwise::sheet::{Edit, Sheet, demo};
use heftwise::study::curve::{Ask, Curve};
use heftwise::study::{Levers, Outcome, Target, Wish, walk_round};

fn main() {
    divan::main();
}

fn sandpiper() -> Sheet {
    Sheet::read(demo::find("sandpiper").unwrap().text).unwrap()
}

fn outcome() -> Outcome {
    let tally = sandpiper().tally();
    Outcome::of(tally.givens, &tally.spreads, 0)
}

/// Every rule once.
#[divan::bench]
fn all_rules(bencher: Bencher<'_, '_>) {
    let givens = sandpiper().tally().givens;
    bencher.bench(|| evaluate(black_box(&givens)));
}

/// Every rule, and how sure each number is.
#[divan::bench]
fn all_rules_with_spreads(bencher: Bencher<'_, '_>) {
    let tally = sandpiper().tally();
    bencher.bench(|| Outcome::of(black_box(tally.givens.clone()), &tally.spreads, 0));
}

/// From a number typed to all that follows from it.
#[divan::bench]
fn one_edit(bencher: Bencher<'_, '_>) {
    let sheet = sandpiper();
    let id = heftwise::quantity::catalogue::running_gear::TRACK_WIDTH.any();
    bencher.bench(|| {
        let mut sheet = sheet.clone();
        sheet.apply(&Edit::Set { id, text: "95 mm".to_owned() }).unwrap();
        let tally = sheet.tally();
        Outcome::of(tally.givens, &tally.spreads, 1)
    });
}

/// One curve, sampled.
#[divan::bench]
fn curve(bencher: Bencher<'_, '_>) {
    let givens = sandpiper().tally().givens;
    let ask = Ask::new(PEAK_IMPACT_FORCE, STOP_DISTANCE);
    bencher.bench(|| Curve::of(black_box(&ask), &givens));
}

/// Every limit checked.
#[divan::bench]
fn every_limit(bencher: Bencher<'_, '_>) {
    let outcome = outcome();
    bencher.bench(|| walk_round(black_box(&outcome)));
}

/// A formula with the numbers put in.
#[divan::bench]
fn one_working(bencher: Bencher<'_, '_>) {
    let values = outcome().values;
    let rule = catalogue::finder(LOW_END_PRESSURE.any()).unwrap();
    bencher.bench(|| working(black_box(rule), &values, &Units::default()));
}

/// The longer shipped lesson, read and checked.
#[divan::bench]
fn parse_a_lesson(bencher: Bencher<'_, '_>) {
    let text = Shipped.text("impact").unwrap();
    bencher.bench(|| heftwise::lesson::parse(black_box(&text), "impact"));
}

/// All shipped lessons listed, as at the start.
#[divan::bench]
fn list_all_lessons() -> Library {
    Library::load(Shipped)
}

/// All of them read, with their teacher's pages.
#[divan::bench]
fn read_all_lessons() -> Library {
    let library = Library::load(Shipped);
    library.read_all();
    library
}

/// What one percent of each number does to an answer.
#[divan::bench]
fn levers(bencher: Bencher<'_, '_>) {
    let (outcome, step) = (outcome(), Step::percent(1.0).unwrap());
    bencher.bench(|| Levers::of(LOW_END_PRESSURE, black_box(&step), &outcome));
}

/// Every answer to a wish.
#[divan::bench]
fn target(bencher: Bencher<'_, '_>) {
    let givens = sandpiper().tally().givens;
    let (make, by) = (LOW_END_PRESSURE.any(), BALANCE_OFFSET.any());
    let wish = Wish { make, be: 1000.0, by, from: None, to: None };
    bencher.bench(|| Target::of(black_box(&wish), &givens));
}
