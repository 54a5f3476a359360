//! Lines as unbroken runs inside the plot.

use super::RangeRun;
use crate::plot::axis::Axis;
use crate::study::curve::{RangeSample, Sample};

/// The range about a line, in display units, pressed flat where it leaves the plot.
pub(super) fn range_runs(band: &[RangeSample], x: &Axis, y: &Axis) -> Vec<RangeRun> {
    let mut runs: Vec<RangeRun> = Vec::new();
    let mut open = false;
    for &(at, ends) in band {
        let Some((low, high)) = ends else {
            open = false;
            continue;
        };
        let bound = |si: f64| y.unit.from_si(si).clamp(y.from, y.to);
        let (a, b) = (bound(low), bound(high));
        let here = (x.unit.from_si(at), a.min(b), a.max(b));
        match runs.last_mut() {
            Some(run) if open => run.push(here),
            _ => runs.push(vec![here]),
        }
        open = true;
    }
    // A range of nothing is no range.
    runs.retain(|run| run.len() > 1 && run.iter().any(|(_, low, high)| high > low));
    runs
}

/// Unbroken runs in display units, cut off at the top and bottom of the plot.
pub(in crate::plot) fn runs(samples: &[Sample], x: &Axis, y: &Axis) -> Vec<Vec<(f64, f64)>> {
    let mut runs: Vec<Vec<(f64, f64)>> = Vec::new();
    let mut last: Option<(f64, f64)> = None;
    for &(at, found) in samples {
        let here = found.map(|found| (x.unit.from_si(at), y.unit.from_si(found)));
        let Some(here) = here.filter(|(_, at)| !y.log || *at > 0.0) else {
            last = None;
            continue;
        };
        let piece = match last {
            Some(before) => cut(before, here, y),
            None => inside(here.1, y).then_some((here, here)),
        };
        if let Some((a, b)) = piece {
            match runs.last_mut() {
                Some(run) if last.is_some() && run.last() == Some(&a) => run.push(b),
                _ if a == b => runs.push(vec![a]),
                _ => runs.push(vec![a, b]),
            }
        }
        last = Some(here);
    }
    runs
}

fn inside(at: f64, y: &Axis) -> bool {
    (y.from..=y.to).contains(&at)
}

/// The part of a straight piece between the top and the bottom of the plot.
fn cut(a: (f64, f64), b: (f64, f64), y: &Axis) -> Option<((f64, f64), (f64, f64))> {
    if (a.1 < y.from && b.1 < y.from) || (a.1 > y.to && b.1 > y.to) {
        return None;
    }
    let bring = |end: (f64, f64), other: (f64, f64)| {
        let bound = end.1.clamp(y.from, y.to);
        if bound == end.1 {
            return end;
        }
        (end.0 + (other.0 - end.0) * (bound - end.1) / (other.1 - end.1), bound)
    };
    Some((bring(a, b), bring(b, a)))
}
