//! Weight and the force of the ground, and how long forces and pressures are drawn.

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
        let rows = sketch.rows().into_iter().map(|(_, pascals)| pascals).fold(0.0, f64::max);
        let worst = sketch.underneath.as_ref().map_or(rows, |under| under.worst().0);
        Self {
            force: if most > 0.0 { longest / most } else { 0.0 },
            pressure: if worst > 0.0 { 0.66 * room / worst } else { 0.0 },
        }
    }
}

fn show(id: AnyId, si: f64, units: &Units) -> String {
    catalogue::find(id.name()).map_or_else(String::new, |entry| units.show(entry, si).to_string())
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

/// The middle between two points.
pub fn middle(a: (f32, f32), b: (f32, f32)) -> (f32, f32) {
    ((a.0 + b.0) / 2.0, (a.1 + b.1) / 2.0)
}
