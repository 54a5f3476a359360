//! From metres on the machine to pixels on the surface.

use super::{Show, View};
use crate::plot::layout::Rect;
use crate::study::Sketch;
use crate::study::sketch::{Bearer, BearerKind};

/// The mapping from places of the machine to the surface.
#[derive(Debug, Clone, Copy)]
pub struct Map {
    /// From where the machine is seen.
    pub view: View,
    /// Pixels to the metre.
    pub scale: f64,
    origin: (f64, f64),
    sin: f64,
    cos: f64,
}

/// How much of the surface, in pixels, is kept free under the ground.
pub fn under(view: View, show: Show, sketch: &Sketch, surface: &Rect, text_size: f32) -> f32 {
    let pressed = sketch.underneath.is_some() || !sketch.rows().is_empty();
    let pressure = show.pressure && pressed;
    let force = show.weight && sketch.ground_force.is_some() && view != View::Top;
    match (view, pressure || force) {
        (View::Top, _) => 0.0,
        (_, true) => (0.31 * surface.height).max(6.4 * text_size),
        (_, false) => 1.6 * text_size,
    }
}

impl Map {
    /// Fits the machine into the surface; nothing when there is nothing to fit.
    pub fn fit(
        sketch: &Sketch,
        (view, show): (View, Show),
        surface: &Rect,
        (under, text_size): (f32, f32),
    ) -> Option<Self> {
        // Only the view from the side shows the slope.
        let slope = if view == View::Side { sketch.slope } else { 0.0 };
        let (sin, cos) = slope.sin_cos();
        let mut map = Self { view, scale: 1.0, origin: (0.0, 0.0), sin, cos };
        let places = reach(sketch, show);
        let flat = || places.iter().map(|place| map.flat(*place));
        let across = span(flat().map(|(u, _)| u))?;
        let upright = span(flat().map(|(_, v)| v))?;
        let side = f64::from(1.5 * text_size);
        let top = f64::from(2.6 * text_size);
        let bottom = f64::from(surface.height - under) - f64::from(0.6 * text_size);
        let room = ((f64::from(surface.width) - 2.0 * side).max(1.0), (bottom - top).max(1.0));
        let (wide, high) = (across.1 - across.0, upright.1 - upright.0);
        map.scale = (room.0 / wide.max(1e-9)).min(room.1 / high.max(1e-9));
        map.origin.0 = f64::from(surface.width) / 2.0 - map.scale * (across.0 + across.1) / 2.0;
        map.origin.1 = match view {
            View::Top => (top + bottom) / 2.0 + map.scale * (upright.0 + upright.1) / 2.0,
            // What stands on the ground stands low, however little of the height it needs.
            View::Side | View::Rear => bottom + map.scale * upright.0,
        };
        Some(map)
    }

    /// A place as metres across and up the surface.
    fn flat(&self, [forward, left, up]: [f64; 3]) -> (f64, f64) {
        match self.view {
            View::Side => (forward * self.cos - up * self.sin, forward * self.sin + up * self.cos),
            View::Top => (forward, left),
            View::Rear => (-left, up),
        }
    }

    /// A place as pixels.
    pub fn px(&self, place: [f64; 3]) -> (f32, f32) {
        let (u, v) = self.flat(place);
        ((self.origin.0 + self.scale * u) as f32, (self.origin.1 - self.scale * v) as f32)
    }

    /// The same map for what stands so much higher, in metres.
    pub fn raised(mut self, metres: f64) -> Self {
        let (u, v) = self.flat([0.0, 0.0, if self.view == View::Top { 0.0 } else { metres }]);
        self.origin.0 += self.scale * u;
        self.origin.1 -= self.scale * v;
        self
    }

    /// The direction square out of the ground on the surface, one pixel long.
    pub fn out(&self) -> (f32, f32) {
        (-self.sin as f32, -self.cos as f32)
    }

    /// The direction forward along the ground on the surface, one pixel long.
    pub fn ahead(&self) -> (f32, f32) {
        (self.cos as f32, -self.sin as f32)
    }
}

/// How far a bearer reaches: forward and back of its middle, and up.
pub fn overhang(bearer: &Bearer) -> (f64, f64) {
    let half = bearer.contact / 2.0;
    match bearer.kind {
        BearerKind::Track => (half + bearer.height / 2.0, half + bearer.height / 2.0),
        BearerKind::Wheel => {
            let radius = (bearer.height + bearer.squash) / 2.0;
            (radius, radius)
        }
        BearerKind::Ski => (half + 0.15 * bearer.contact, half),
    }
}

/// Every corner of what is drawn, in metres.
fn reach(sketch: &Sketch, show: Show) -> Vec<[f64; 3]> {
    let mut places = gear(sketch);
    for part in sketch.boxes.iter().filter(|_| show.parts) {
        let side = |axis: usize| {
            (part.at[axis] - part.size[axis] / 2.0, part.at[axis] + part.size[axis] / 2.0)
        };
        places.extend(corners(side(0), side(1), side(2)));
    }
    if places.is_empty() {
        return places;
    }
    let ghost = sketch.ghost.as_deref();
    places.extend(ghost.into_iter().flat_map(gear));
    let marked = [Some(sketch), ghost].into_iter().flatten().filter_map(|sketch| sketch.cg);
    places.extend(
        marked
            .filter(|_| show.cg || show.weight)
            .map(|cg| [cg.forward, cg.left, cg.up.unwrap_or(0.0)]),
    );
    places
}

/// Every corner of the running gear, in metres.
fn gear(sketch: &Sketch) -> Vec<[f64; 3]> {
    let each = sketch.bearers.iter().flat_map(|bearer| {
        let (ahead, behind) = overhang(bearer);
        let half = bearer.width.unwrap_or(0.0) / 2.0;
        let left = bearer.left.unwrap_or(0.0);
        corners(
            (bearer.forward - behind, bearer.forward + ahead),
            (left - half, left + half),
            (0.0, bearer.height),
        )
    });
    each.collect()
}

fn corners(x: (f64, f64), y: (f64, f64), z: (f64, f64)) -> impl Iterator<Item = [f64; 3]> {
    [x.0, x.1].into_iter().flat_map(move |x| {
        [y.0, y.1].into_iter().flat_map(move |y| [z.0, z.1].into_iter().map(move |z| [x, y, z]))
    })
}

/// The smallest and the largest.
fn span(numbers: impl Iterator<Item = f64>) -> Option<(f64, f64)> {
    numbers.fold(None, |span, number| {
        let (low, high) = span.unwrap_or((number, number));
        Some((number.min(low), number.max(high)))
    })
}
