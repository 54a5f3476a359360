//! Runs over time: against closed forms, laws for any numbers, faults in words, the plots.

mod closed_forms;
mod faults;
mod laws;
mod picture;

use heftwise::quantity::channel::RunKind;
use heftwise::quantity::{AnyId, Entry};
use heftwise::rules::Givens;
use heftwise::study::Run;
use heftwise::study::run::{Ask, NoRun};

fn givens(numbers: &[(AnyId, f64)]) -> Givens {
    let mut givens = Givens::default();
    for (id, si) in numbers {
        givens.set(*id, *si);
    }
    givens
}

fn run(kind: RunKind, numbers: &[(AnyId, f64)]) -> Result<Run, NoRun> {
    Run::of(&Ask::new(kind), &givens(numbers))
}

/// The value of a channel at a moment.
fn at(run: &Run, channel: &Entry, time: f64) -> f64 {
    run.series(channel).unwrap().at(&run.times, time)
}

/// Moments and values of a channel together.
fn points<'a>(run: &'a Run, channel: &Entry) -> impl Iterator<Item = (f64, f64)> + 'a {
    run.times.iter().copied().zip(run.series(channel).unwrap().values.iter().copied())
}

/// Sandpiper, the example build.
fn sandpiper() -> Givens {
    let demo = heftwise::sheet::demo::find("sandpiper").unwrap();
    heftwise::sheet::Sheet::read(demo.text).unwrap().tally().givens
}
