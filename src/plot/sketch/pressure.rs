//! The pressure on the ground as it is spread: under tracks from end to end, under wheels and skis
//! row by row.

use super::labels::Labels;
use super::load::Scales;
use super::pen::Pen;
use super::{Tone, View};
use crate::quantity::Units;
use crate::study::Sketch;
use crate::study::sketch::{Bearer, pressure_in_words};

type Point = (f32, f32);

/// From the side and from behind as a diagram under the ground, from above as ink on the contact,
/// the deeper the harder.
pub fn pressure(
    pen: &mut Pen,
    labels: &mut Labels,
    sketch: &Sketch,
    scales: &Scales,
    units: &Units,
) {
    match pen.map.view {
        View::Side => {
            diagram(pen, labels, sketch, scales, units);
            rows(pen, labels, sketch, scales, units);
        }
        View::Top => {
            patches(pen, labels, sketch, units);
            row_patches(pen, labels, sketch, units);
        }
        View::Rear => from_behind(pen, labels, sketch, scales, units),
    }
}

/// A place on the ground moved into it by a pressure.
fn deep(pen: &Pen, place: [f64; 3], pascals: f64, scales: &Scales) -> Point {
    let ((x, y), out) = (pen.map.px(place), pen.map.out());
    let deep = (pascals * scales.pressure) as f32;
    (x - deep * out.0, y - deep * out.1)
}

/// An area under the ground, from its upper line to its lower one.
fn hung(pen: &mut Pen, upper: [Point; 2], lower: &[Point]) {
    let points = lower.iter().copied().chain([upper[1], upper[0]]);
    pen.fill(points.collect(), Tone::Pressure, 0.35);
    for ends in lower.windows(2) {
        pen.marked(ends[0], ends[1], 1.5, Tone::Reaction);
    }
    for (end, deep) in [(upper[0], lower.first()), (upper[1], lower.last())] {
        if let Some(deep) = deep {
            pen.marked(end, *deep, 1.5, Tone::Reaction);
        }
    }
}

fn diagram(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, scales: &Scales, units: &Units) {
    let Some(under) = &sketch.underneath else { return };
    let (worst, place) = under.worst();
    let at = |pen: &Pen, place: f64, pascals: f64| deep(pen, [place, 0.0, 0.0], pascals, scales);
    let lower: Vec<_> = under.profile.iter().map(|(place, p)| at(pen, *place, *p)).collect();
    let (Some(tail), Some(nose)) = (under.profile.first(), under.profile.last()) else { return };
    hung(pen, [at(pen, tail.0, 0.0), at(pen, nose.0, 0.0)], &lower);
    let flat = worst <= under.mean * 1.001;
    let mean = (at(pen, tail.0, under.mean), at(pen, nose.0, under.mean));
    if !flat {
        pen.dashes(&[mean.0, mean.1], 1.5, Tone::Ink);
        pen.mark(mean.0, mean.1, 1.0);
    }
    let light_end = if place > 0.0 { mean.0 } else { mean.1 };
    let word = if flat { "everywhere" } else { "mean" };
    let [mean_words, worst_words] = under.in_words(units);
    labels.add(format!("{word} {mean_words}"), light_end, Tone::Ink);
    if !flat {
        labels.add(format!("worst {worst_words}"), at(pen, place, worst), Tone::Reaction);
    }
}

/// An even pressure under each row of wheels, skis or tracks.
fn rows(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, scales: &Scales, units: &Units) {
    let rows = sketch.rows();
    for (place, pascals) in &rows {
        let on_row = |bearer: &&Bearer| bearer.forward == *place && bearer.pressure.is_some();
        let Some(bearer) = sketch.bearers.iter().find(on_row) else { continue };
        let half = bearer.contact / 2.0;
        let ends = [place - half, place + half];
        let upper = ends.map(|end| deep(pen, [end, 0.0, 0.0], 0.0, scales));
        let lower = ends.map(|end| deep(pen, [end, 0.0, 0.0], *pascals, scales));
        hung(pen, upper, &lower);
    }
    for (place, words) in row_words(&rows, units) {
        let pascals = rows.iter().find(|row| row.0 == place).map_or(0.0, |row| row.1);
        labels.add(words, deep(pen, [place, 0.0, 0.0], pascals, scales), Tone::Reaction);
    }
}

/// What stands beside rows: each its own where two differ, else once for all of them.
fn row_words(rows: &[(f64, f64)], units: &Units) -> Vec<(f64, String)> {
    let words = |pascals| pressure_in_words(pascals, units);
    match rows {
        [] => Vec::new(),
        [rear, front] if rear.1 != front.1 => vec![
            (front.0, format!("front {}", words(front.1))),
            (rear.0, format!("rear {}", words(rear.1))),
        ],
        [.., front] => vec![(front.0, format!("mean {}", words(front.1)))],
    }
}

/// From behind: the pressure under the rear end, even from side to side.
fn from_behind(
    pen: &mut Pen,
    labels: &mut Labels,
    sketch: &Sketch,
    scales: &Scales,
    units: &Units,
) {
    let rear_row = sketch.rows().first().copied();
    let tail = sketch.underneath.as_ref().and_then(|under| under.profile.first().copied());
    let mut last = None;
    for bearer in &sketch.bearers {
        let pascals = match (tail, rear_row) {
            (Some((_, pascals)), _) => pascals,
            (None, Some((place, pascals))) if bearer.forward == place => pascals,
            _ => continue,
        };
        let (Some(left), Some(width)) = (bearer.left, bearer.width) else { continue };
        let sides = [left + width / 2.0, left - width / 2.0];
        let upper = sides.map(|side| deep(pen, [0.0, side, 0.0], 0.0, scales));
        let lower = sides.map(|side| deep(pen, [0.0, side, 0.0], pascals, scales));
        hung(pen, upper, &lower);
        last = Some((pascals, lower[1]));
    }
    if let Some((pascals, at)) = last {
        let words = pressure_in_words(pascals, units);
        labels.add(format!("rear end {words}"), at, Tone::Reaction);
    }
}

/// Sheets over each track from the low end on, one where the pressure reaches each step, so that
/// they lie the thicker the harder it presses.
fn patches(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, units: &Units) {
    const SHEETS: u16 = 16;
    const EACH: f32 = 0.08;
    let Some(under) = &sketch.underneath else { return };
    let (worst, low_end) = under.worst();
    let mut ends = None;
    for bearer in &sketch.bearers {
        let (Some(left), Some(width)) = (bearer.left, bearer.width) else { continue };
        let (right, left) = (left - width / 2.0, left + width / 2.0);
        for sheet in 0..SHEETS {
            let step = worst * (f64::from(sheet) + 0.5) / f64::from(SHEETS);
            let to = under.reaches(step);
            let corners = [(low_end, right), (to, right), (to, left), (low_end, left)];
            let corners = corners.map(|(x, y)| pen.map.px([bearer.forward + x, y, 0.0]));
            pen.fill(corners.to_vec(), Tone::Pressure, EACH);
        }
        ends = Some((pen.map.px([low_end, right, 0.0]), pen.map.px([-low_end, right, 0.0])));
    }
    if let Some((low, light)) = ends {
        let [mean, worst] = under.in_words(units);
        labels.add(format!("worst {worst}"), low, Tone::Reaction);
        labels.add(format!("mean {mean}"), light, Tone::Ink);
    }
}

/// The contact of each wheel or ski, the deeper in ink the harder it presses.
fn row_patches(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, units: &Units) {
    const DARKEST: f32 = 0.74;
    let rows = sketch.rows();
    let most = rows.iter().map(|row| row.1).fold(0.0, f64::max);
    let mut edges: Vec<(f64, Point)> = Vec::new();
    for bearer in &sketch.bearers {
        let (Some(pascals), Some(left), Some(width)) = (bearer.pressure, bearer.left, bearer.width)
        else {
            continue;
        };
        let (half, side) = (bearer.contact / 2.0, width / 2.0);
        let (tail, nose) = (bearer.forward - half, bearer.forward + half);
        let corners =
            [(tail, left - side), (nose, left - side), (nose, left + side), (tail, left + side)];
        let corners = corners.map(|(x, y)| pen.map.px([x, y, 0.0]));
        let share = if most > 0.0 { (pascals / most) as f32 } else { 0.0 };
        pen.fill(corners.to_vec(), Tone::Pressure, DARKEST * share);
        edges.push((bearer.forward, pen.map.px([bearer.forward, left - side, 0.0])));
    }
    for (place, words) in row_words(&rows, units) {
        if let Some((_, edge)) = edges.iter().rfind(|edge| edge.0 == place) {
            labels.add(words, *edge, Tone::Reaction);
        }
    }
}
