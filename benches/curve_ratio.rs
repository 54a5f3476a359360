//! What a curve costs beside the rules it is made of, both sides in one run: a curve of 200 points
//! at most 1.2 times 200 passes over all rules. `cargo bench --bench curve_ratio`; ends with 1 when
//! one costs more.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench may be blunt")]

use std::hint::black_box;
use std::process::ExitCode;
use std::time::{Duration, Instant};

use heftwise::quantity::catalogue::{impact::*, machine::*, pressure::*, running_gear::*};
use heftwise::rules::evaluate;
use heftwise::sheet::{Sheet, demo};
use heftwise::study::Curve;
use heftwise::study::curve::{Ask, Scale};

/// Points of the curve that is held against as many passes.
const POINTS: usize = 200;
/// What a point may cost, in passes.
const MOST: f64 = 1.2;
/// The best of so many runs counts: what else the machine does only adds.
const RUNS: usize = 15;

fn best(mut work: impl FnMut()) -> Duration {
    let once = |work: &mut dyn FnMut()| {
        let start = Instant::now();
        work();
        start.elapsed()
    };
    (0..RUNS).map(|_| once(&mut work)).min().unwrap_or_default()
}

fn main() -> ExitCode {
    let givens = Sheet::read(demo::find("sandpiper").unwrap().text).unwrap().tally().givens;
    let passes = best(|| {
        for _ in 0..POINTS {
            black_box(evaluate(black_box(&givens)));
        }
    });
    let asks = [
        Ask::new(GROUND_PRESSURE, TRACK_WIDTH),
        Ask::new(LOW_END_PRESSURE, BALANCE_OFFSET),
        Ask { scale: Scale::Log, ..Ask::new(PEAK_IMPACT_FORCE, STOP_DISTANCE) },
        Ask::new(LOW_END_MARGIN, MASS),
    ];
    let mut fits = true;
    for ask in &asks {
        let points = Curve::of(ask, &givens).unwrap().samples.len();
        let curve = best(|| drop(black_box(Curve::of(black_box(ask), &givens))));
        let of_200 = curve.as_secs_f64() * POINTS as f64 / points as f64;
        let ratio = of_200 / passes.as_secs_f64();
        fits &= ratio <= MOST;
        println!("{} against {}: {points} points, {ratio:.3} of {MOST}", ask.find, ask.against);
    }
    if fits { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
