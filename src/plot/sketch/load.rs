//! Weight, the force of the ground, the pressure under the tracks, and the centre of gravity.

use super::labels::Labels;
use super::pen::{Pen, clipped};
use super::{Tone, View};
use crate::quantity::catalogue::machine::{GROUND_FORCE, SLOPE_FORCE, WEIGHT};
use crate::quantity::{AnyId, Units, catalogue};
use crate::study::Sketch;

/// A force as drawn: its length over [`force_scale`](super::Drawing::force_scale) is the force.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Arrow {
    /// Its tail in pixels.
    pub from: (f32, f32),
    /// Its head in pixels.
    pub to: (f32, f32),
    /// The force in newtons.
    pub newtons: f64,
}

/// How long forces and pressures are drawn.
pub struct Scales {
    /// Pixels to the newton.
    pub force: f64,
    /// Pixels to the pascal.
    pub pressure: f64,
}

impl Scales {
    /// Scales that keep every arrow and the diagram within the room under the ground.
    pub fn of(sketch: &Sketch, pen: &Pen, under: f32) -> Self {
        let room = f64::from(under);
        let forces = [sketch.weight, sketch.ground_force, Some(sketch.slope_force.abs())];
        let most = forces.into_iter().flatten().fold(0.0, f64::max);
        let high = sketch.cg.and_then(|cg| cg.up).map_or(room, |up| 0.9 * up * pen.map.scale);
        let longest = high.clamp(36.0, (0.8 * room).max(36.0));
        let worst = sketch.underneath.as_ref().map_or(0.0, |under| under.worst().0);
        Self {
            force: if most > 0.0 { longest / most } else { 0.0 },
            pressure: if worst > 0.0 { 0.66 * room / worst } else { 0.0 },
        }
    }
}

fn show(id: AnyId, si: f64, units: &Units) -> String {
    catalogue::find(id.name()).map_or_else(String::new, |entry| units.show(entry, si).to_string())
}

/// The pressure under the tracks: from the side as a diagram under the ground, from above as ink
/// on the contact, the deeper the harder.
pub fn pressure(
    pen: &mut Pen,
    labels: &mut Labels,
    sketch: &Sketch,
    scales: &Scales,
    units: &Units,
) {
    match pen.map.view {
        View::Side => diagram(pen, labels, sketch, scales, units),
        View::Top => patches(pen, labels, sketch, units),
        View::Rear => {}
    }
}

fn diagram(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, scales: &Scales, units: &Units) {
    let Some(under) = &sketch.underneath else { return };
    let (worst, place) = under.worst();
    let out = pen.map.out();
    let at = |pen: &Pen, place: f64, pascals: f64| {
        let (x, y) = pen.map.px([place, 0.0, 0.0]);
        let deep = (pascals * scales.pressure) as f32;
        (x - deep * out.0, y - deep * out.1)
    };
    let lower: Vec<_> = under.profile.iter().map(|(place, p)| at(pen, *place, *p)).collect();
    let (Some(tail), Some(nose)) = (under.profile.first(), under.profile.last()) else { return };
    let upper = [at(pen, nose.0, 0.0), at(pen, tail.0, 0.0)];
    pen.fill(lower.iter().copied().chain(upper).collect(), Tone::Pressure, 0.35);
    for ends in lower.windows(2) {
        pen.marked(ends[0], ends[1], 1.5, Tone::Reaction);
    }
    for (end, deep) in [(upper[1], lower.first()), (upper[0], lower.last())] {
        if let Some(deep) = deep {
            pen.marked(end, *deep, 1.5, Tone::Reaction);
        }
    }
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

/// The weight from the centre of gravity, and what the ground answers with.
pub fn forces(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, scales: &Scales, units: &Units) {
    if pen.map.view == View::Top {
        return;
    }
    let side = pen.map.view == View::Side;
    let long = |newtons: f64| (newtons * scales.force) as f32;
    if let (Some(weight), Some(cg)) = (sketch.weight, sketch.cg)
        && let Some(up) = cg.up
    {
        let from = pen.map.px([cg.forward, cg.left, up]);
        let to = (from.0, from.1 + long(weight));
        // The plumb line goes on to where the load bears down.
        if let Some(load) = sketch.load.filter(|_| side) {
            let foot = pen.map.px([load, 0.0, 0.0]);
            let plumb = (foot.1 > to.1).then(|| clipped(to, foot, &pen.surface)).flatten();
            if let Some((head, foot)) = plumb {
                pen.dashes(&[head, foot], 1.0, Tone::Weight);
            }
        }
        pen.arrow(from, to, weight, Tone::Weight);
        let words = format!("weight {}", show(WEIGHT.any(), weight, units));
        labels.add(words, middle(from, to), Tone::Weight);
    }
    let bears = if side { sketch.load } else { sketch.cg.map(|cg| cg.left) };
    let (Some(force), Some(bears)) = (sketch.ground_force, bears) else { return };
    if sketch.tips() || (!side && sketch.slope != 0.0) {
        return;
    }
    let place = if side { [bears, 0.0, 0.0] } else { [0.0, bears, 0.0] };
    let (to, out) = (pen.map.px(place), pen.map.out());
    let from = (to.0 - long(force) * out.0, to.1 - long(force) * out.1);
    pen.arrow(from, to, force, Tone::Reaction);
    let words = format!("ground pushes {}", show(GROUND_FORCE.any(), force, units));
    labels.add(words, from, Tone::Reaction);
    if side && sketch.slope_force != 0.0 {
        let (ahead, along) = (pen.map.ahead(), long(sketch.slope_force));
        let foot = (to.0 - 5.0 * out.0, to.1 - 5.0 * out.1);
        let head = (foot.0 + along * ahead.0, foot.1 + along * ahead.1);
        pen.arrow(foot, head, sketch.slope_force.abs(), Tone::Reaction);
        let words = format!("holds {}", show(SLOPE_FORCE.any(), sketch.slope_force.abs(), units));
        labels.add(words, head, Tone::Reaction);
    }
}

fn middle(a: (f32, f32), b: (f32, f32)) -> (f32, f32) {
    ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0)
}

/// The centre of gravity, and the middle of the contact it is measured from.
pub fn cg(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, units: &Units) {
    const RADIUS: f32 = 8.0;
    let Some(cg) = sketch.cg else { return };
    let view = pen.map.view;
    // Without its height it has a place only from above.
    let up = match (cg.up, view) {
        (Some(up), _) => up,
        (None, View::Top) => 0.0,
        (None, _) => return,
    };
    let at = pen.map.px([cg.forward, cg.left, up]);
    let middle = match view {
        View::Side | View::Rear => (pen.map.px([0.0; 3]), pen.map.px([0.0, 0.0, up])),
        View::Top => (pen.map.px([0.0; 3]), pen.map.px([cg.forward, 0.0, 0.0])),
    };
    pen.dashes(&[middle.0, middle.1], 1.0, Tone::Ink);
    pen.sector(at, RADIUS + 1.5, (0.0, 1.0), Tone::Paper);
    pen.sector(at, RADIUS, (0.0, 1.0), Tone::Ink);
    pen.sector(at, RADIUS - 1.5, (0.25, 0.5), Tone::Paper);
    pen.sector(at, RADIUS - 1.5, (0.75, 1.0), Tone::Paper);
    pen.mark((at.0 - RADIUS, at.1), (at.0 + RADIUS, at.1), 4.0);
    pen.mark((at.0, at.1 - RADIUS), (at.0, at.1 + RADIUS), 4.0);
    let offset = sketch.offset_in_words(units).filter(|_| view != View::Rear);
    let height = sketch.height_in_words(units).filter(|_| view != View::Top);
    let left = sketch.left_in_words(units).filter(|_| view != View::Side);
    let words: Vec<String> = [offset, left, height].into_iter().flatten().collect();
    if !words.is_empty() {
        labels.add_list(words, at, Tone::Ink);
    }
}

/// The companion's centre of gravity, as a ring.
pub fn ghost_cg(pen: &mut Pen, ghost: &Sketch) {
    let place = ghost.cg.and_then(|cg| match pen.map.view {
        View::Top => Some([cg.forward, cg.left, 0.0]),
        _ => cg.up.map(|up| [cg.forward, cg.left, up]),
    });
    if let Some(at) = place.map(|place| pen.map.px(place)) {
        pen.sector(at, 7.0, (0.0, 1.0), Tone::Ghost);
        pen.sector(at, 4.5, (0.0, 1.0), Tone::Paper);
    }
}
