//! The centre of gravity, and what the machine would tip over.

use super::labels::Labels;
use super::load::middle;
use super::pen::Pen;
use super::{Tone, View};
use crate::quantity::Units;
use crate::study::Sketch;
use crate::study::sketch::Bearer;

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

/// The companion's centre of gravity, as a ring, so many metres higher.
pub fn ghost_cg(pen: &mut Pen, ghost: &Sketch, raised: f64) {
    let place = ghost.cg.and_then(|cg| match pen.map.view {
        View::Top => Some([cg.forward, cg.left, 0.0]),
        _ => cg.up.map(|up| [cg.forward, cg.left, up]),
    });
    if let Some(at) = place.map(|place| pen.map.raised(raised).px(place)) {
        pen.sector(at, 7.0, (0.0, 1.0), Tone::Ghost);
        pen.sector(at, 4.5, (0.0, 1.0), Tone::Paper);
    }
}

/// What the machine would tip over: from above the lines round what it stands on, from the side and
/// from behind a small triangle at each end of them.
pub fn tip_axes(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch) {
    let ends = |of: &dyn Fn(&Bearer) -> Option<(f64, f64)>| {
        let each = sketch.bearers.iter().filter_map(of);
        each.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1))).filter(|(low, high)| low < high)
    };
    let along = ends(&|bearer| {
        let half = bearer.contact / 2.0;
        Some((bearer.forward - half, bearer.forward + half))
    });
    let across = ends(&|bearer| Some((bearer.left?, bearer.left?)));
    let view = pen.map.view;
    if view == View::Top {
        let (Some((tail, nose)), Some((right, left))) = (along, across) else { return };
        let corners = [(tail, right), (nose, right), (nose, left), (tail, left), (tail, right)];
        let corners = corners.map(|(x, y)| pen.map.px([x, y, 0.0]));
        pen.dashes(&corners, 1.6, Tone::Tip);
        for ends in corners.windows(2) {
            pen.mark(ends[0], ends[1], 1.0);
        }
        labels.add("tip axes".to_owned(), middle(corners[1], corners[2]), Tone::Leader);
        return;
    }
    let Some((low, high)) = (if view == View::Side { along } else { across }) else { return };
    let load = sketch.load.filter(|_| view == View::Side);
    let load = load.or(sketch.cg.map(|cg| cg.left).filter(|_| view == View::Rear)).unwrap_or(0.0);
    let near = if load < (low + high) / 2.0 { low } else { high };
    for end in [low, high] {
        let place = if view == View::Side { [end, 0.0, 0.0] } else { [0.0, end, 0.0] };
        let foot = triangle(pen, pen.map.px(place));
        if end == near {
            labels.add("tip axis".to_owned(), foot, Tone::Leader);
        }
    }
}

/// A triangle under a point of the ground; returns the middle of its foot.
fn triangle(pen: &mut Pen, tip: (f32, f32)) -> (f32, f32) {
    let (out, ahead) = (pen.map.out(), pen.map.ahead());
    let foot = (tip.0 - 9.0 * out.0, tip.1 - 9.0 * out.1);
    let wings = vec![
        tip,
        (foot.0 + 5.0 * ahead.0, foot.1 + 5.0 * ahead.1),
        (foot.0 - 5.0 * ahead.0, foot.1 - 5.0 * ahead.1),
    ];
    pen.fill(wings, Tone::Tip, 1.0);
    pen.mark(tip, foot, 3.0);
    foot
}
