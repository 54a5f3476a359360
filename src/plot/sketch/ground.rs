//! The ground, how the machine stands in it, and which way is front.

use super::labels::Labels;
use super::map::overhang;
use super::pen::{Pen, clipped};
use super::{Tone, View};
use crate::quantity::catalogue::machine::SLOPE;
use crate::quantity::{Units, catalogue};
use crate::study::Sketch;
use crate::study::sketch::Sinking;

/// The ground, and which way is front.
pub fn ground(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, units: &Units) {
    match pen.map.view {
        View::Side | View::Rear => {
            let (a, b) = (along(pen, -far(pen), 0.0), along(pen, far(pen), 0.0));
            if let Some((a, b)) = clipped(a, b, &pen.surface) {
                if sketch.sinking.is_none() {
                    pen.marked(a, b, 2.0, Tone::Ground);
                }
                labels.stay_on_side_of(a, b);
            }
        }
        View::Top => {
            let far = far(pen);
            let (a, b) = (pen.map.px([-far, 0.0, 0.0]), pen.map.px([far, 0.0, 0.0]));
            if let Some((a, b)) = clipped(a, b, &pen.surface) {
                pen.dashes(&[a, b], 1.0, Tone::Leader);
            }
        }
    }
    match pen.map.view {
        View::Rear => {
            labels.corner("left", true, Tone::Leader);
            labels.corner("right", false, Tone::Leader);
        }
        View::Top => labels.corner("front →", false, Tone::Leader),
        View::Side => {
            labels.corner("front →", false, Tone::Leader);
            let slope = catalogue::find(SLOPE.any().name()).filter(|_| sketch.slope != 0.0);
            if let Some(entry) = slope {
                let slope = units.show(entry, sketch.slope.abs()).short().to_string();
                labels.corner(&format!("slope {slope}"), true, Tone::Ink);
            }
        }
    }
}

/// How far the ground goes on, in metres: past every edge of the surface.
fn far(pen: &Pen) -> f64 {
    f64::from(pen.surface.width + pen.surface.height) / pen.map.scale
}

/// A place along the ground, forward or to the left, so high over the line of the contact.
fn along(pen: &Pen, place: f64, up: f64) -> (f32, f32) {
    pen.map.px(match pen.map.view {
        View::Rear => [0.0, place, up],
        View::Side | View::Top => [place, 0.0, up],
    })
}

/// The ground that the machine has sunk into, over the running gear: its line stands higher than
/// the contact by the sinkage, to scale.
pub fn sunk(pen: &mut Pen, labels: &mut Labels, sketch: &Sketch, (units, words): (&Units, bool)) {
    let Some(sinking) = &sketch.sinking else { return };
    let Some((tail, nose)) = ends(sketch) else { return };
    // From behind the rear end is seen.
    let rear = sinking.at(tail).max(0.0);
    let view = pen.map.view;
    let up = |place: f64| if view == View::Rear { rear } else { sinking.at(place) };
    match view {
        View::Top => return,
        View::Side => {
            bank(pen, (-far(pen), far(pen)), up);
            let (a, b) = (along(pen, tail, 0.0), along(pen, nose, 0.0));
            pen.marked(a, b, 1.0, Tone::Ground);
        }
        View::Rear => {
            let mut edge = -far(pen);
            for (right, left) in ruts(sketch) {
                if right > edge {
                    bank(pen, (edge, right), up);
                    rut(pen, (right, left), rear);
                }
                edge = edge.max(left);
            }
            bank(pen, (edge, far(pen)), up);
        }
    }
    if words {
        let (tail, nose) = reach(sketch).unwrap_or((tail, nose));
        name(pen, labels, sinking, (tail, nose, rear), units);
    }
}

/// Where the contact begins and ends, in metres forward.
fn ends(sketch: &Sketch) -> Option<(f64, f64)> {
    sketch
        .bearers
        .iter()
        .map(|bearer| {
            let half = bearer.contact / 2.0;
            (bearer.forward - half, bearer.forward + half)
        })
        .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
}

/// Where the running gear begins and ends, in metres forward.
fn reach(sketch: &Sketch) -> Option<(f64, f64)> {
    let each = sketch.bearers.iter().map(|bearer| {
        let (ahead, behind) = overhang(bearer);
        (bearer.forward - behind, bearer.forward + ahead)
    });
    each.reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
}

/// Where the ground is pressed down across the machine, from the right on, in metres to the left.
fn ruts(sketch: &Sketch) -> Vec<(f64, f64)> {
    let sides = sketch.bearers.iter().filter_map(|bearer| {
        let (left, half) = (bearer.left?, bearer.width? / 2.0);
        Some((left - half, left + half))
    });
    let mut ruts: Vec<(f64, f64)> = sides.collect();
    ruts.sort_by(|a, b| a.0.total_cmp(&b.0));
    ruts
}

/// Ground between two places, from the line of the contact up to its own line.
fn bank(pen: &mut Pen, (from, to): (f64, f64), up: impl Fn(f64) -> f64) {
    let line = |high: &dyn Fn(f64) -> f64| {
        clipped(along(pen, from, high(from)), along(pen, to, high(to)), &pen.surface)
    };
    if let (Some((a, b)), Some((d, c))) = (line(&up), line(&|_| 0.0)) {
        pen.fill(vec![a, b, c, d], Tone::Ground, 0.22);
        pen.marked(a, b, 2.0, Tone::Ground);
    }
}

/// The walls and the floor of a rut.
fn rut(pen: &mut Pen, (right, left): (f64, f64), deep: f64) {
    let corners = [(right, deep), (right, 0.0), (left, 0.0), (left, deep)];
    let corners = corners.map(|(place, up)| along(pen, place, up));
    for ends in corners.windows(2) {
        if let Some((a, b)) = clipped(ends[0], ends[1], &pen.surface) {
            pen.marked(a, b, 1.0, Tone::Ground);
        }
    }
}

/// The numbers of the sinkage beside the end they belong to.
fn name(
    pen: &Pen,
    labels: &mut Labels,
    sinking: &Sinking,
    (tail, nose, rear): (f64, f64, f64),
    units: &Units,
) {
    let (mean, worst) = sinking.in_words(units);
    let low_end = sinking.worst.map_or(nose, |(_, place)| place);
    let at = match pen.map.view {
        View::Rear => along(pen, 0.0, rear),
        View::Side | View::Top => {
            let free = if low_end > 0.0 { nose } else { tail };
            along(pen, free, sinking.at(free))
        }
    };
    let rear_is_worst = sinking.worst.is_some_and(|(_, place)| place < 0.0);
    match worst {
        Some(worst) if pen.map.view == View::Rear && rear_is_worst => {
            labels.add(format!("rear end sinks {worst}"), at, Tone::Ink);
        }
        Some(worst) => {
            labels.add_list(
                vec![format!("sinks {mean} (mean)"), format!("{worst} (worst)")],
                at,
                Tone::Ink,
            );
        }
        None => labels.add(format!("sinks {mean}"), at, Tone::Ink),
    }
}
