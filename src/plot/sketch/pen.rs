//! Lines, discs and arrows, all as filled polygons.

use std::f32::consts::TAU;

use super::load::Arrow;
use super::map::Map;
use super::{Shape, Tone};
use crate::plot::draw::dashes::dashes;
use crate::plot::layout::Rect;

type Point = (f32, f32);

/// Draws on a surface.
pub struct Pen {
    /// Where places of the machine are.
    pub map: Map,
    /// The surface.
    pub surface: Rect,
    /// What has been drawn.
    pub shapes: Vec<Shape>,
    /// The forces drawn.
    pub arrows: Vec<Arrow>,
    /// Points that a label had better leave free, each with how much it matters.
    pub marks: Vec<(Point, f32)>,
}

impl Pen {
    /// A pen over an empty surface.
    pub fn new(map: Map, surface: &Rect) -> Self {
        Self { map, surface: *surface, shapes: Vec::new(), arrows: Vec::new(), marks: Vec::new() }
    }

    /// A filled polygon.
    pub fn fill(&mut self, points: Vec<Point>, tone: Tone, strength: f32) {
        if points.len() > 2 {
            self.shapes.push(Shape { points, tone, strength });
        }
    }

    /// A straight line as a thin rectangle.
    pub fn line(&mut self, a: Point, b: Point, width: f32, tone: Tone) {
        let long = (b.0 - a.0).hypot(b.1 - a.1);
        if long < 0.01 {
            return;
        }
        let (x, y) = ((b.1 - a.1) / long * width / 2.0, (b.0 - a.0) / long * width / 2.0);
        let corners =
            vec![(a.0 + x, a.1 - y), (b.0 + x, b.1 - y), (b.0 - x, b.1 + y), (a.0 - x, a.1 + y)];
        self.fill(corners, tone, 1.0);
    }

    /// The same, to be left free by labels.
    pub fn marked(&mut self, a: Point, b: Point, width: f32, tone: Tone) {
        self.line(a, b, width, tone);
        self.mark(a, b, 3.0);
    }

    /// A dashed line from point to point.
    pub fn dashes(&mut self, points: &[Point], width: f32, tone: Tone) {
        for dash in dashes(points, &[5.0, 4.0]) {
            for ends in dash.windows(2) {
                self.line(ends[0], ends[1], width, tone);
            }
        }
    }

    /// Notes that a label had better not lie on a line.
    pub fn mark(&mut self, a: Point, b: Point, weight: f32) {
        let steps = ((b.0 - a.0).hypot(b.1 - a.1) / 6.0).ceil().clamp(1.0, 400.0) as u16;
        self.marks.extend((0..=steps).map(|step| {
            let part = f32::from(step) / f32::from(steps);
            ((a.0 + part * (b.0 - a.0), a.1 + part * (b.1 - a.1)), weight)
        }));
    }

    /// A part of a disc between two angles in turns, clockwise from the right.
    pub fn sector(&mut self, centre: Point, radius: f32, (from, to): (f32, f32), tone: Tone) {
        let whole = to - from >= 1.0;
        let arc = (0..=24).map(|step| {
            let angle = TAU * (from + (to - from) * step as f32 / 24.0);
            (centre.0 + radius * angle.cos(), centre.1 + radius * angle.sin())
        });
        let points =
            if whole { arc.collect() } else { std::iter::once(centre).chain(arc).collect() };
        self.fill(points, tone, 1.0);
    }

    /// A polygon with an outline: the larger one under the smaller.
    pub fn outlined(&mut self, outer: Vec<Point>, inner: Vec<Point>, (edge, inside): (Tone, Tone)) {
        self.fill(outer, edge, 1.0);
        self.fill(inner, inside, 1.0);
    }

    /// An arrow for a force, its head within its length.
    pub fn arrow(&mut self, from: Point, to: Point, newtons: f64, tone: Tone) {
        self.arrows.push(Arrow { from, to, newtons });
        let long = (to.0 - from.0).hypot(to.1 - from.1);
        if long < 0.5 {
            return;
        }
        let (x, y) = ((to.0 - from.0) / long, (to.1 - from.1) / long);
        let head = long.min(11.0);
        let neck = (to.0 - head * x, to.1 - head * y);
        self.line(from, (neck.0 + x, neck.1 + y), 3.0, tone);
        let half = 0.5 * head;
        let wings = vec![
            to,
            (neck.0 - half * y, neck.1 + half * x),
            (neck.0 + half * y, neck.1 - half * x),
        ];
        self.fill(wings, tone, 1.0);
        self.mark(from, to, 4.0);
    }
}

/// The part of a line that lies inside a rectangle (Liang and Barsky).
pub fn clipped(a: Point, b: Point, room: &Rect) -> Option<(Point, Point)> {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let (mut from, mut to) = (0.0f32, 1.0f32);
    let edges = [
        (-dx, a.0 - room.x),
        (dx, room.right() - a.0),
        (-dy, a.1 - room.y),
        (dy, room.bottom() - a.1),
    ];
    for (step, room) in edges {
        if step == 0.0 {
            if room < 0.0 {
                return None;
            }
        } else if step < 0.0 {
            from = from.max(room / step);
        } else {
            to = to.min(room / step);
        }
    }
    let at = |part: f32| (a.0 + part * dx, a.1 + part * dy);
    (from < to).then(|| (at(from), at(to)))
}
