//! The ground, what stands on it, and the parts.

use std::f64::consts::PI;

use super::labels::Labels;
use super::map::overhang;
use super::pen::{Pen, clipped};
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

/// The ground, which way is front, and the middle of the contact.
pub fn ground(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch) {
    let surface = pen.surface;
    let far = f64::from(surface.width + surface.height) / pen.map.scale;
    match pen.map.view {
        View::Side | View::Rear => {
            let (a, b) = match pen.map.view {
                View::Rear => ([0.0, far, 0.0], [0.0, -far, 0.0]),
                _ => ([-far, 0.0, 0.0], [far, 0.0, 0.0]),
            };
            if let Some((a, b)) = clipped(pen.map.px(a), pen.map.px(b), &surface) {
                pen.marked(a, b, 2.0, Tone::Ground);
                labels.stay_on_side_of(a, b);
            }
        }
        View::Top => {
            if let Some((a, b)) =
                clipped(pen.map.px([-far, 0.0, 0.0]), pen.map.px([far, 0.0, 0.0]), &surface)
            {
                pen.dashes(a, b, 1.0, Tone::Leader);
            }
        }
    }
    match pen.map.view {
        View::Rear => {
            labels.corner("left", true, Tone::Leader);
            labels.corner("right", false, Tone::Leader);
        }
        _ => labels.corner("front →", false, Tone::Leader),
    }
    tip_axes(pen, sketch);
}

/// A small triangle under each end of the contact: what the machine would tip over.
fn tip_axes(pen: &mut Pen, sketch: &Sketch) {
    let ends = sketch.bearers.iter().filter_map(|bearer| match pen.map.view {
        View::Side => {
            let half = bearer.contact / 2.0;
            Some((bearer.forward - half, bearer.forward + half))
        }
        View::Rear => bearer.left.map(|left| (left, left)),
        View::Top => None,
    });
    let span = ends.fold(None, |span: Option<(f64, f64)>, (low, high)| {
        let (least, most) = span.unwrap_or((low, high));
        Some((low.min(least), high.max(most)))
    });
    let Some((low, high)) = span.filter(|(low, high)| low < high) else { return };
    let (out, ahead) = (pen.map.out(), pen.map.ahead());
    for end in [low, high] {
        let place = if pen.map.view == View::Side { [end, 0.0, 0.0] } else { [0.0, end, 0.0] };
        let tip = pen.map.px(place);
        let foot = (tip.0 - 9.0 * out.0, tip.1 - 9.0 * out.1);
        let wings = vec![
            tip,
            (foot.0 + 5.0 * ahead.0, foot.1 + 5.0 * ahead.1),
            (foot.0 - 5.0 * ahead.0, foot.1 - 5.0 * ahead.1),
        ];
        pen.fill(wings, Tone::Tip, 1.0);
        pen.mark(tip, foot, 3.0);
    }
}

/// Tracks, wheels and skis.
pub fn bearers(pen: &mut Pen, sketch: &Sketch) {
    for bearer in &sketch.bearers {
        match pen.map.view {
            View::Side => from_the_side(pen, bearer),
            View::Top => {
                let (Some(left), Some(width)) = (bearer.left, bearer.width) else { continue };
                let (ahead, behind) = overhang(bearer);
                let long = (bearer.forward - behind, bearer.forward + ahead);
                let wide = (left - width / 2.0, left + width / 2.0);
                block(pen, (long, wide), |x, y| [x, y, 0.0], (Tone::GearEdge, Tone::Gear));
            }
            View::Rear => {
                let (Some(left), Some(width)) = (bearer.left, bearer.width) else { continue };
                let wide = (left - width / 2.0, left + width / 2.0);
                let tones = (Tone::GearEdge, Tone::Gear);
                block(pen, (wide, (0.0, bearer.height)), |y, z| [0.0, y, z], tones);
            }
        }
    }
}

fn from_the_side(pen: &mut Pen, bearer: &Bearer) {
    let edge = 1.5 / pen.map.scale;
    let tones = (Tone::GearEdge, Tone::Gear);
    match bearer.kind {
        BearerKind::Track => {
            let belt = |inset: f64| {
                let radius = (bearer.height / 2.0 - inset).max(0.0);
                let half = bearer.contact / 2.0;
                let end = |at: f64, from: f64| {
                    (0..=12).map(move |step| {
                        let angle = from + PI * f64::from(step) / 12.0;
                        (
                            bearer.forward + at + radius * angle.cos(),
                            bearer.height / 2.0 + radius * angle.sin(),
                        )
                    })
                };
                end(half, -PI / 2.0).chain(end(-half, PI / 2.0)).collect::<Vec<_>>()
            };
            let (outer, inner) = (belt(0.0), belt(3.0 * edge));
            outline(pen, &outer, &inner, tones);
        }
        BearerKind::Wheel => {
            let radius = (bearer.height + bearer.squash) / 2.0;
            let middle = bearer.height - radius;
            let rim = |inset: f64| {
                (0..48)
                    .map(|step| {
                        let angle = 2.0 * PI * f64::from(step) / 48.0;
                        let reach = (radius - inset).max(0.0);
                        let up = middle + reach * angle.sin();
                        (bearer.forward + reach * angle.cos(), up.max(inset))
                    })
                    .collect::<Vec<_>>()
            };
            let (outer, inner, hub) = (rim(0.0), rim(3.0 * edge), rim(0.7 * radius));
            outline(pen, &outer, &inner, tones);
            let hub = hub.iter().map(|(x, z)| pen.map.px([*x, 0.0, *z])).collect();
            pen.fill(hub, Tone::GearEdge, 1.0);
        }
        BearerKind::Ski => {
            let (half, high) = (bearer.contact / 2.0, bearer.height);
            let nose = bearer.forward + half + 0.15 * bearer.contact;
            let thick = 0.02 * bearer.contact;
            let points = [
                (bearer.forward - half, 0.0),
                (bearer.forward + half, 0.0),
                (nose, high - thick),
                (nose, high),
                (bearer.forward + half, thick),
                (bearer.forward - half, thick),
            ];
            let points = points.iter().map(|(x, z)| pen.map.px([*x, 0.0, *z])).collect();
            pen.fill(points, Tone::GearEdge, 1.0);
        }
    }
}

fn outline(pen: &mut Pen, outer: &[(f64, f64)], inner: &[(f64, f64)], tones: (Tone, Tone)) {
    let px = |points: &[(f64, f64)]| -> Vec<Point> {
        points.iter().map(|(x, z)| pen.map.px([*x, 0.0, *z])).collect()
    };
    let (outer, inner) = (px(outer), px(inner));
    for ends in outer.windows(2) {
        pen.mark(ends[0], ends[1], 0.6);
    }
    pen.outlined(outer, inner, tones);
}

/// A rectangle with an outline one and a half pixels wide.
fn block(
    pen: &mut Pen,
    (one, other): ((f64, f64), (f64, f64)),
    place: impl Fn(f64, f64) -> [f64; 3],
    tones: (Tone, Tone),
) {
    let corners = |inset: f64| {
        let shrunk = |(low, high): (f64, f64)| {
            let inset = inset.min((high - low) / 2.0);
            (low + inset, high - inset)
        };
        let (one, other) = (shrunk(one), shrunk(other));
        [(one.0, other.0), (one.1, other.0), (one.1, other.1), (one.0, other.1)]
            .map(|(a, b)| pen.map.px(place(a, b)))
    };
    let (outer, inner) = (corners(0.0), corners(1.2 / pen.map.scale));
    for (place, corner) in outer.iter().enumerate() {
        pen.mark(*corner, outer[(place + 1) % 4], 0.6);
    }
    pen.outlined(outer.to_vec(), inner.to_vec(), tones);
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
    let corners = [(one.0, other.0), (one.1, other.0), (one.1, other.1), (one.0, other.1)]
        .map(|(a, b)| pen.map.px(place(a, b)));
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
