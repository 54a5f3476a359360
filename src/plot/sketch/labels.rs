//! Words on a sketch, each in a free place near what it belongs to.

use super::gear::DrawnBox;
use super::pen::Pen;
use super::{Shape, Tone};
use crate::plot::labels::{LINE, width};
use crate::plot::layout::Rect;

type Point = (f32, f32);

/// How many parts are named beside their box.
const NAMED: usize = 5;
/// On a narrower surface there is no room for that, in pixels.
const ROOMY: f32 = 420.0;
/// What the place of a part's name may cost at most; see [`Labels::cost`].
const CLEAR: f32 = 6.0;

/// Words in their place. They start at the upper left corner of their rectangle.
#[derive(Debug, Clone, PartialEq)]
pub struct Label {
    /// The words.
    pub text: String,
    /// The room they are given; no two rooms overlap.
    pub bounds: Rect,
    /// What they belong to.
    pub tone: Tone,
}

struct Wanted {
    text: String,
    at: Point,
    tone: Tone,
}

/// Words waiting for a place.
pub struct Labels {
    surface: Rect,
    text_size: f32,
    wanted: Vec<Wanted>,
    placed: Vec<Label>,
    marks: Vec<(Point, f32)>,
    /// The line of the ground: words had better stay on the side of what they belong to.
    ground: Option<(Point, Point)>,
}

impl Labels {
    /// No words yet.
    pub fn new(surface: Rect, text_size: f32) -> Self {
        Self {
            surface,
            text_size,
            wanted: Vec::new(),
            placed: Vec::new(),
            marks: Vec::new(),
            ground: None,
        }
    }

    /// Words that belong to a point.
    pub fn add(&mut self, text: String, at: Point, tone: Tone) {
        self.wanted.push(Wanted { text, at, tone });
    }

    /// Words that belong to a point: in one line where that is short, else one by one.
    pub fn add_list(&mut self, words: Vec<String>, at: Point, tone: Tone) {
        let joined = words.join(", ");
        if width(&joined, self.text_size) <= 0.55 * self.surface.width {
            self.add(joined, at, tone);
        } else {
            words.into_iter().for_each(|words| self.add(words, at, tone));
        }
    }

    /// Words in an upper corner.
    pub fn corner(&mut self, words: &str, left: bool, tone: Tone) {
        let bounds = self.room(words, (0.0, 0.0));
        let x = if left { 2.0 } else { self.surface.right() - bounds.width - 2.0 };
        let bounds = Rect { x, y: 2.0, ..bounds };
        self.put(words.to_owned(), bounds, tone);
    }

    /// The line that words had better not cross.
    pub fn stay_on_side_of(&mut self, a: Point, b: Point) {
        self.ground = Some((a, b));
    }

    /// Points to leave free where there is a choice.
    pub fn keep_off(&mut self, marks: &[(Point, f32)]) {
        self.marks = marks.to_vec();
    }

    fn room(&self, text: &str, (x, y): Point) -> Rect {
        Rect { x, y, width: width(text, self.text_size), height: LINE * self.text_size }
    }

    fn is_free(&self, bounds: &Rect) -> bool {
        self.surface.holds_all(bounds)
            && !self.placed.iter().any(|label| label.bounds.overlaps(bounds))
    }

    fn put(&mut self, text: String, bounds: Rect, tone: Tone) {
        if self.is_free(&bounds) {
            self.placed.push(Label { text, bounds, tone });
        }
    }

    /// Places the words, with a line to what they belong to where they stand away from it, then
    /// the names of the parts where they fit inside their box.
    pub fn place(mut self, pen: &mut Pen, boxes: &[DrawnBox]) -> Vec<Label> {
        for wanted in std::mem::take(&mut self.wanted) {
            let Some(bounds) = self.best(&wanted) else { continue };
            let near = nearest(&bounds, wanted.at);
            let away = (near.0 - wanted.at.0).hypot(near.1 - wanted.at.1);
            if away > 1.2 * self.text_size {
                pen.line(wanted.at, near, 1.0, Tone::Leader);
            }
            self.marks.extend(along(wanted.at, near));
            self.back(pen, &bounds);
            self.put(wanted.text, bounds, wanted.tone);
        }
        let mut outside: Vec<&DrawnBox> = Vec::new();
        for (place, drawn) in boxes.iter().enumerate() {
            if !self.name_inside(drawn, boxes.get(place + 1..).unwrap_or_default()) {
                outside.push(drawn);
            }
        }
        outside.sort_by(|a, b| b.mass.total_cmp(&a.mass));
        let named = if self.surface.width < ROOMY { 0 } else { NAMED };
        for drawn in outside.into_iter().take(named) {
            self.name_outside(pen, drawn);
        }
        self.placed
    }

    /// Paper behind words, so that they read over whatever is drawn there.
    fn back(&self, pen: &mut Pen, bounds: &Rect) {
        let Rect { x, y, .. } = *bounds;
        // The room of a text is somewhat wider than most texts.
        let (right, bottom) = (x + 0.92 * bounds.width, bounds.bottom());
        let points = vec![(x, y), (right, y), (right, bottom), (x, bottom)];
        pen.shapes.push(Shape { points, tone: Tone::Paper, strength: 0.82 });
    }

    /// The free place that covers the least and is not far.
    fn best(&self, wanted: &Wanted) -> Option<Rect> {
        let size = self.text_size;
        let room = self.room(&wanted.text, (0.0, 0.0));
        let rows = -18..=18;
        let candidates = rows.flat_map(|row| {
            let y = wanted.at.1 - room.height / 2.0 + row as f32 * 0.65 * size;
            let gap = 0.9 * size;
            [0.0, 2.0, 4.5, 8.0, 12.0, 17.0].into_iter().flat_map(move |away| {
                let away = gap + away * size;
                [
                    (wanted.at.0 + away, y),
                    (wanted.at.0 - away - room.width, y),
                    (wanted.at.0 - room.width / 2.0, y),
                ]
            })
        });
        let mut best: Option<(f32, Rect)> = None;
        for bounds in candidates.map(|(x, y)| Rect { x, y, ..room }) {
            let least = best.map_or(f32::INFINITY, |(cost, _)| cost);
            if self.distance(&bounds, wanted.at) < least && self.is_free(&bounds) {
                let cost = self.cost(&bounds, wanted.at);
                if cost < least {
                    best = Some((cost, bounds));
                }
            }
        }
        best.map(|(_, bounds)| bounds)
    }

    /// What a place covers, and how far it is from what it belongs to, in text sizes.
    fn cost(&self, bounds: &Rect, at: Point) -> f32 {
        let covered: f32 = self
            .marks
            .iter()
            .filter(|((x, y), _)| bounds.holds(*x, *y))
            .map(|(_, weight)| weight)
            .sum();
        let near = nearest(bounds, at);
        let crossed = along(at, near)
            .filter(|((x, y), _)| self.placed.iter().any(|label| label.bounds.holds(*x, *y)))
            .count();
        2.5 * covered + self.distance(bounds, at) + 6.0 * crossed as f32
    }

    /// What the way to a place costs: its length, and more if it leads through the ground.
    fn distance(&self, bounds: &Rect, at: Point) -> f32 {
        let near = nearest(bounds, at);
        let away = (near.0 - at.0).hypot(near.1 - at.1) / self.text_size;
        let middle = (bounds.x + bounds.width / 2.0, bounds.y + bounds.height / 2.0);
        let above = |(x, y): Point| {
            self.ground.map(|(a, b)| (b.0 - a.0) * (y - a.1) - (b.1 - a.1) * (x - a.0) <= 0.0)
        };
        0.8 * away + if above(middle) == above(at) { 0.0 } else { 8.0 }
    }

    /// The name of a part inside its box, if it fits there and nothing drawn later covers it.
    fn name_inside(&mut self, drawn: &DrawnBox, over: &[DrawnBox]) -> bool {
        let bounds = self.room(&drawn.name, (0.0, 0.0));
        let x = drawn.room.x + (drawn.room.width - bounds.width) / 2.0;
        let y = drawn.room.y + (drawn.room.height - bounds.height) / 2.0;
        let bounds = Rect { x, y, ..bounds };
        let hidden = || over.iter().any(|other| other.room.overlaps(&bounds));
        let crossed =
            || self.marks.iter().any(|((x, y), weight)| *weight > 1.0 && bounds.holds(*x, *y));
        let fits = drawn.room.holds_all(&bounds);
        let free = fits && self.is_free(&bounds) && !hidden() && !crossed();
        if free {
            self.put(drawn.name.clone(), bounds, Tone::Ink);
        }
        free
    }

    /// The name of a part beside it with a line to it, if there is a clear place near by.
    fn name_outside(&mut self, pen: &mut Pen, drawn: &DrawnBox) {
        let room = drawn.room;
        let at = (room.x + room.width / 2.0, room.y + 0.25 * room.height);
        let wanted = Wanted { text: drawn.name.clone(), at, tone: Tone::Leader };
        let Some(bounds) = self.best(&wanted) else { return };
        if self.cost(&bounds, at) > CLEAR {
            return;
        }
        let near = nearest(&bounds, at);
        pen.line(at, near, 1.0, Tone::Leader);
        pen.sector(at, 2.5, (0.0, 1.0), Tone::Leader);
        self.marks.extend(along(at, near));
        self.put(wanted.text, bounds, wanted.tone);
    }
}

/// The point of a rectangle nearest to a point.
fn nearest(bounds: &Rect, at: Point) -> Point {
    (at.0.clamp(bounds.x, bounds.right()), at.1.clamp(bounds.y, bounds.bottom()))
}

/// Points along a leading line, for later words to leave free.
fn along(a: Point, b: Point) -> impl Iterator<Item = (Point, f32)> {
    (0..=8).map(move |step| {
        let part = step as f32 / 8.0;
        ((a.0 + part * (b.0 - a.0), a.1 + part * (b.1 - a.1)), 1.5)
    })
}
