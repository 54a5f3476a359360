//! What stands on the ground, and the parts.

use std::f64::consts::PI;

use super::labels::Labels;
use super::map::overhang;
use super::pen::Pen;
use super::{Tone, View};
use crate::plot::layout::Rect;
use crate::study::Sketch;
use crate::study::sketch::{Bearer, BearerKind, PartBox};

type Point = (f32, f32);

/// A part as drawn: its name and the room it takes.
pub struct DrawnBox {
    /// What it is called.
    pub name: String,
    /// Its mass in kilograms.
    pub mass: f64,
    /// The largest upright rectangle about its middle that lies within it.
    pub room: Rect,
}

/// Tracks, wheels and skis.
pub fn bearers(pen: &mut Pen, sketch: &Sketch) {
    let edge = 4.5 / pen.map.scale;
    let tones = (Tone::GearEdge, Tone::Gear);
    for bearer in &sketch.bearers {
        let Some(outer) = outline(pen, bearer, 0.0) else { continue };
        for ends in outer.windows(2) {
            pen.mark(ends[0], ends[1], 0.6);
        }
        match (pen.map.view, bearer.kind) {
            (View::Side, BearerKind::Ski) => pen.fill(outer, Tone::GearEdge, 1.0),
            (View::Side, _) => {
                let inner = outline(pen, bearer, edge).unwrap_or_default();
                pen.outlined(outer, inner, tones);
            }
            _ => {
                let inner = outline(pen, bearer, edge / 3.0).unwrap_or_default();
                pen.outlined(outer, inner, tones);
            }
        }
        if pen.map.view == View::Side && bearer.kind == BearerKind::Wheel {
            let hub = outline(pen, bearer, 0.35 * (bearer.height + bearer.squash));
            pen.fill(hub.unwrap_or_default(), Tone::GearEdge, 1.0);
        }
    }
}

/// The companion's running gear as a dashed outline, so many metres higher, and its name.
pub fn ghost(pen: &mut Pen, labels: &mut Labels, ghost: &Sketch, raised: f64) {
    let map = pen.map;
    pen.map = map.raised(raised);
    let mut highest: Option<Point> = None;
    for bearer in &ghost.bearers {
        let Some(mut outline) = outline(pen, bearer, 0.0) else { continue };
        outline.extend(outline.first().copied());
        let top = outline.iter().copied().min_by(|a, b| a.1.total_cmp(&b.1));
        highest = match (highest, top) {
            (Some(a), Some(b)) => Some(if b.1 < a.1 { b } else { a }),
            (a, b) => a.or(b),
        };
        pen.dashes(&outline, 1.6, Tone::Ghost);
    }
    pen.map = map;
    if let Some(highest) = highest {
        labels.add(ghost.name.clone(), highest, Tone::Ghost);
    }
}

/// The outline of a bearer so many metres within its edge; nothing where its place or its width is
/// not known.
fn outline(pen: &Pen, bearer: &Bearer, inset: f64) -> Option<Vec<Point>> {
    if pen.map.view == View::Side {
        let profile = profile(bearer, inset);
        return Some(profile.into_iter().map(|(x, z)| pen.map.px([x, 0.0, z])).collect());
    }
    let (left, width) = (bearer.left?, bearer.width?);
    let wide = shrunk((left - width / 2.0, left + width / 2.0), inset);
    let (ahead, behind) = overhang(bearer);
    let long = shrunk((bearer.forward - behind, bearer.forward + ahead), inset);
    let high = shrunk((0.0, bearer.height), inset);
    let corners = match pen.map.view {
        View::Rear => rectangle(wide, high).map(|(y, z)| [0.0, y, z]),
        _ => rectangle(long, wide).map(|(x, y)| [x, y, 0.0]),
    };
    Some(corners.map(|place| pen.map.px(place)).to_vec())
}

/// The outline of a bearer from the side: metres forward and up.
fn profile(bearer: &Bearer, inset: f64) -> Vec<(f64, f64)> {
    let half = bearer.contact / 2.0;
    match bearer.kind {
        BearerKind::Track => {
            let middle = bearer.height / 2.0;
            let radius = (middle - inset).max(0.0);
            let end = |at: f64, from: f64| {
                (0..=12).map(move |step| {
                    let angle = from + PI * f64::from(step) / 12.0;
                    (bearer.forward + at + radius * angle.cos(), middle + radius * angle.sin())
                })
            };
            end(half, -PI / 2.0).chain(end(-half, PI / 2.0)).collect()
        }
        BearerKind::Wheel => {
            let radius = (bearer.height + bearer.squash) / 2.0;
            let middle = bearer.height - radius;
            let reach = (radius - inset).max(0.0);
            let rim = (0..48).map(|step| 2.0 * PI * f64::from(step) / 48.0);
            rim.map(|angle| {
                // The ground cuts off what the tyre is squashed by.
                let up = (middle + reach * angle.sin()).max(inset.min(middle));
                (bearer.forward + reach * angle.cos(), up)
            })
            .collect()
        }
        BearerKind::Ski => {
            let nose = bearer.forward + half + 0.15 * bearer.contact;
            let thick = 0.02 * bearer.contact;
            vec![
                (bearer.forward - half, 0.0),
                (bearer.forward + half, 0.0),
                (nose, bearer.height - thick),
                (nose, bearer.height),
                (bearer.forward + half, thick),
                (bearer.forward - half, thick),
            ]
        }
    }
}

/// A stretch made shorter at both ends.
fn shrunk((low, high): (f64, f64), inset: f64) -> (f64, f64) {
    let inset = inset.min((high - low) / 2.0);
    (low + inset, high - inset)
}

fn rectangle(one: (f64, f64), other: (f64, f64)) -> [(f64, f64); 4] {
    [(one.0, other.0), (one.1, other.0), (one.1, other.1), (one.0, other.1)]
}

/// The parts, the farthest from the eye first.
pub fn parts(pen: &mut Pen, sketch: &Sketch) -> Vec<DrawnBox> {
    let mut order: Vec<&PartBox> = sketch.boxes.iter().collect();
    let depth = |part: &PartBox| match pen.map.view {
        View::Side => -part.at[1],
        View::Top => part.at[2],
        View::Rear => -part.at[0],
    };
    order.sort_by(|a, b| depth(a).total_cmp(&depth(b)));
    order.into_iter().map(|part| drawn(pen, part)).collect()
}

fn drawn(pen: &mut Pen, part: &PartBox) -> DrawnBox {
    let side = |axis: usize| {
        (part.at[axis] - part.size[axis] / 2.0, part.at[axis] + part.size[axis] / 2.0)
    };
    let (edge, inside) =
        if part.trial { (Tone::Tip, Tone::Trial) } else { (Tone::PartEdge, Tone::Part) };
    let ((one, other), place): (_, fn(f64, f64) -> [f64; 3]) = match pen.map.view {
        View::Side => ((side(0), side(2)), |x, z| [x, 0.0, z]),
        View::Top => ((side(0), side(1)), |x, y| [x, y, 0.0]),
        View::Rear => ((side(1), side(2)), |y, z| [0.0, y, z]),
    };
    let corners = rectangle(one, other).map(|(a, b)| pen.map.px(place(a, b)));
    // What lies behind shows through a little.
    pen.fill(corners.to_vec(), inside, 0.72);
    for (place, corner) in corners.iter().enumerate() {
        let next = corners[(place + 1) % 4];
        pen.line(*corner, next, 1.2, edge);
        pen.mark(*corner, next, 0.6);
    }
    // Words stand beside the boxes rather than across them.
    let [a, b, c, d] = corners;
    for row in 1..8u8 {
        let part = f32::from(row) / 8.0;
        let between = |a: Point, b: Point| (a.0 + part * (b.0 - a.0), a.1 + part * (b.1 - a.1));
        pen.mark(between(a, d), between(b, c), 0.3);
    }
    // The upright rectangle within a box that leans with the slope is a little smaller.
    let middle = pen.map.px(part.at);
    let wide = (corners[1].0 - corners[0].0).abs() - (corners[3].0 - corners[0].0).abs();
    let high = (corners[3].1 - corners[0].1).abs() - (corners[1].1 - corners[0].1).abs();
    let (width, height) = (wide.max(0.0), high.max(0.0));
    let room = Rect { x: middle.0 - width / 2.0, y: middle.1 - height / 2.0, width, height };
    DrawnBox { name: part.name.clone(), mass: part.mass.abs(), room }
}
