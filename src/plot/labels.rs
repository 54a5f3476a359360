//! Every word of a plot and its place: nothing overlaps, nothing leaves the surface.

pub(super) mod family;

use super::layout::{Layout, Rect};
use super::spec::{PlotSpec, Role};

/// Estimated width of a character, as a part of the text size; generous for most faces.
const CHARACTER: f32 = 0.56;
/// The mean width of a character of a label in the shipped face, 0.46 to 0.49, and a little to spare.
const LETTER: f32 = 0.5;
/// Height of a line of text, as a part of the text size.
pub(super) const LINE: f32 = 1.25;

/// Which end of a text stands at its place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Anchor {
    /// It runs to the right from there.
    Start,
    /// It is centred there.
    Middle,
    /// It ends there.
    End,
}

/// What a text belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Part {
    /// A number beside a tick.
    Tick,
    /// Quantity and unit of an axis.
    Caption,
    /// A limit.
    Limit,
    /// A build's dot.
    Dot(Role),
    /// A build's line without a dot.
    Line(Role),
    /// A build outside the plot.
    Edge(Role),
    /// A line of a family, by its rank.
    Relative(usize),
}

/// A text in its place.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacedText {
    /// The words.
    pub text: String,
    /// Where its anchor is, left to right.
    pub x: f32,
    /// The middle of its height, downwards.
    pub y: f32,
    /// Which end stands at `x`.
    pub anchor: Anchor,
    /// What it belongs to.
    pub part: Part,
}

impl PlacedText {
    /// The room it is given.
    pub fn bounds(&self, text_size: f32) -> Rect {
        self.place(width(&self.text, text_size), LINE * text_size)
    }

    /// About where its letters stand, which is less.
    pub fn letters(&self, text_size: f32) -> Rect {
        self.place(width(&self.text, text_size) * LETTER / CHARACTER, text_size)
    }

    fn place(&self, width: f32, height: f32) -> Rect {
        let left = match self.anchor {
            Anchor::Start => self.x,
            Anchor::Middle => self.x - width / 2.0,
            Anchor::End => self.x - width,
        };
        Rect { x: left, y: self.y - height / 2.0, width, height }
    }
}

/// About how wide a text is.
pub(super) fn width(text: &str, text_size: f32) -> f32 {
    text.chars().count() as f32 * CHARACTER * text_size
}

/// Every text of a plot; drawn by the window itself, and written into an SVG.
///
/// The caption of the y axis stands level above it, where it reads without turning the head.
/// A label that finds no free place is left out: the table and the legend still have it.
pub fn texts(spec: &PlotSpec, layout: &Layout) -> Vec<PlacedText> {
    let mut placed = Placer { layout, texts: Vec::new(), obstacles: obstacles(spec, layout) };
    placed.captions(spec);
    placed.ticks(spec);
    for dot in &spec.dots {
        let at = layout.to_screen(spec, (dot.x, dot.y));
        placed.beside(&dot.label, at, Part::Dot(dot.role));
    }
    for edge in &spec.edges {
        let at = layout.to_screen(spec, (edge.x, edge.y));
        placed.beside(&edge.label, at, Part::Edge(edge.role));
    }
    placed.family(spec);
    for limit in &spec.limits {
        placed.limit(spec, &limit.label, &limit.runs);
    }
    for line in &spec.lines {
        let has_dot = spec.dots.iter().any(|dot| dot.role == line.role)
            || spec.edges.iter().any(|edge| edge.role == line.role);
        let end = line.runs.last().and_then(|run| run.last());
        let end = end.filter(|_| !has_dot && !line.label.is_empty());
        if let Some(&end) = end {
            placed.beside(&line.label, layout.to_screen(spec, end), Part::Line(line.role));
        }
    }
    placed.texts
}

/// The places a label had better leave free: the dots, and every few pixels along the lines.
fn obstacles(spec: &PlotSpec, layout: &Layout) -> Vec<(f32, f32)> {
    let edges = spec.edges.iter().map(|edge| layout.to_screen(spec, (edge.x, edge.y)));
    let dots = spec.dots.iter().map(|dot| layout.to_screen(spec, (dot.x, dot.y))).chain(edges);
    let relatives = spec.relatives.iter().flat_map(|line| &line.runs);
    let lines = spec.lines.iter().flat_map(|line| &line.runs).chain(relatives);
    let limits = spec.limits.iter().flat_map(|limit| &limit.runs);
    let along = lines.chain(limits).flat_map(|run| {
        let points: Vec<_> = run.iter().map(|point| layout.to_screen(spec, *point)).collect();
        points.windows(2).flat_map(|ends| stepping_stones(ends[0], ends[1])).collect::<Vec<_>>()
    });
    dots.chain(along).collect()
}

/// Points along a straight line, close enough together that no label slips between them.
fn stepping_stones((x, y): (f32, f32), (to_x, to_y): (f32, f32)) -> Vec<(f32, f32)> {
    const STRIDE: f32 = 4.0;
    let steps = ((to_x - x).hypot(to_y - y) / STRIDE).ceil().clamp(1.0, 2000.0) as u16;
    (0..=steps)
        .map(|step| f32::from(step) / f32::from(steps))
        .map(|part| (x + part * (to_x - x), y + part * (to_y - y)))
        .collect()
}

struct Placer<'a> {
    layout: &'a Layout,
    texts: Vec<PlacedText>,
    obstacles: Vec<(f32, f32)>,
}

impl Placer<'_> {
    fn size(&self) -> f32 {
        self.layout.text_size
    }

    /// Whether a text fits the room and touches no other.
    fn is_free(&self, text: &PlacedText, room: &Rect) -> bool {
        let bounds = text.bounds(self.size());
        room.holds_all(&bounds)
            && !self.texts.iter().any(|other| other.bounds(self.size()).overlaps(&bounds))
    }

    fn put(&mut self, text: PlacedText, room: &Rect) {
        if self.is_free(&text, room) {
            self.texts.push(text);
        }
    }

    /// The free candidate that covers the fewest points; the earlier one of equals.
    fn put_best(&mut self, candidates: impl IntoIterator<Item = PlacedText>, room: &Rect) -> bool {
        let covered = |text: &PlacedText| {
            let bounds = text.bounds(self.size());
            self.obstacles.iter().filter(|(x, y)| bounds.holds(*x, *y)).count()
        };
        let best = candidates
            .into_iter()
            .filter(|text| self.is_free(text, room))
            .min_by_key(|text| covered(text));
        let found = best.is_some();
        self.texts.extend(best);
        found
    }

    fn captions(&mut self, spec: &PlotSpec) {
        let (surface, plot, size) = (self.layout.surface(), self.layout.plot, self.size());
        let text = self.shortened(&spec.y.label, surface.width - 0.6 * size);
        let (x, y) = (0.3 * size, 0.9 * size);
        self.put(PlacedText { text, x, y, anchor: Anchor::Start, part: Part::Caption }, &surface);
        if !spec.foot {
            return;
        }
        let text = self.shortened(&spec.x.label, surface.width - 0.6 * size);
        // Under the middle of the axis, or pushed in from the edge by a long text.
        let half = width(&text, size) / 2.0;
        let least = half + 0.3 * size;
        let x = (plot.x + plot.width / 2.0).min(surface.right() - least).max(least);
        let y = plot.bottom() + 2.6 * size;
        self.put(PlacedText { text, x, y, anchor: Anchor::Middle, part: Part::Caption }, &surface);
    }

    fn ticks(&mut self, spec: &PlotSpec) {
        let (surface, plot, size) = (self.layout.surface(), self.layout.plot, self.size());
        for tick in &spec.y.ticks {
            if let Some(text) = tick.text.clone() {
                let y = self.layout.to_screen(spec, (spec.x.from, tick.at)).1;
                let x = plot.x - 0.6 * size;
                let anchor = Anchor::End;
                self.put(PlacedText { text, x, y, anchor, part: Part::Tick }, &surface);
            }
        }
        let named: Vec<PlacedText> = spec
            .x
            .ticks
            .iter()
            .filter(|_| spec.foot)
            .filter_map(|tick| {
                let text = tick.text.clone()?;
                let x = self.layout.to_screen(spec, (tick.at, spec.y.from)).0;
                let y = plot.bottom() + 1.3 * size;
                Some(PlacedText { text, x, y, anchor: Anchor::Middle, part: Part::Tick })
            })
            .collect();
        let gap = CHARACTER * size;
        for text in thinned(&named, |text| text.bounds(size), gap) {
            self.put(text.clone(), &surface);
        }
    }

    /// A label beside a point, on whichever side is free.
    fn beside(&mut self, label: &str, (x, y): (f32, f32), part: Part) {
        let (plot, size) = (self.layout.plot, self.size());
        let text = self.shortened(label, plot.width);
        let candidates: Vec<PlacedText> = [1.1, 2.2, 3.6]
            .into_iter()
            .flat_map(|away| {
                [
                    (0.8, -away, Anchor::Start),
                    (-0.8, -away, Anchor::End),
                    (0.8, away, Anchor::Start),
                    (-0.8, away, Anchor::End),
                    (0.0, -away, Anchor::Middle),
                    (0.0, away, Anchor::Middle),
                ]
            })
            .map(|(right, down, anchor)| PlacedText {
                text: text.clone(),
                x: x + right * size,
                y: y + down * size,
                anchor,
                part,
            })
            .collect();
        self.put_best(candidates, &plot);
    }

    /// A limit's label along its line, or in a corner when the line lies outside the plot.
    fn limit(&mut self, spec: &PlotSpec, label: &str, runs: &[Vec<(f64, f64)>]) {
        let (plot, size) = (self.layout.plot, self.size());
        let text = self.shortened(label, plot.width - 0.6 * size);
        let points: Vec<(f32, f32)> =
            runs.iter().flatten().map(|p| self.layout.to_screen(spec, *p)).collect();
        let placed = |x: f32, y: f32, anchor: Anchor| PlacedText {
            text: text.clone(),
            x,
            y,
            anchor,
            part: Part::Limit,
        };
        let (Some(first), Some(last)) = (points.first(), points.last()) else {
            let (top, bottom) = (plot.y + 0.9 * size, plot.bottom() - 0.9 * size);
            let (left, right) = (plot.x + 0.3 * size, plot.right() - 0.3 * size);
            let below = label.ends_with("below this plot");
            let rows = if below { [bottom, bottom - 1.4 * size] } else { [top, top + 1.4 * size] };
            let candidates = rows
                .into_iter()
                .flat_map(|y| [placed(right, y, Anchor::End), placed(left, y, Anchor::Start)]);
            self.put_best(candidates.collect::<Vec<_>>(), &plot);
            return;
        };
        let inner = [2, 1, 3].map(|quarter| {
            let (x, y) = points[(points.len() - 1) * quarter / 4];
            (x, y, Anchor::Middle)
        });
        let ends = [
            (last.0 - 0.3 * size, last.1, Anchor::End),
            (first.0 + 0.3 * size, first.1, Anchor::Start),
        ];
        let along: Vec<_> = ends.into_iter().chain(inner).collect();
        let candidates: Vec<PlacedText> = [-0.8, 0.8, -2.0, 2.0, -3.4, 3.4]
            .into_iter()
            .flat_map(|down| along.iter().map(move |(x, y, anchor)| (*x, y + down * size, *anchor)))
            .map(|(x, y, anchor)| placed(x, y, anchor))
            .collect();
        self.put_best(candidates, &plot);
    }

    /// The text, or as much of it as fits, with an ellipsis. A number at the end, or the unit after
    /// a comma, stays whole where it can: the words before it give way.
    fn shortened(&self, text: &str, room: f32) -> String {
        let most = (room / (CHARACTER * self.size())).floor().max(0.0) as usize;
        if text.chars().count() <= most {
            return text.to_owned();
        }
        let tail = tail(text);
        let (tail, left) = match most.checked_sub(tail.chars().count() + 1) {
            Some(left) if left >= SHORTEST => (tail, left),
            _ => ("", most.saturating_sub(1)),
        };
        let kept: String = text.chars().take(left).collect();
        format!("{}…{tail}", kept.trim_end())
    }
}

/// Every text, or every second, third and so on: as many as keep a gap between them.
fn thinned<T>(texts: &[T], bounds: impl Fn(&T) -> Rect, gap: f32) -> impl Iterator<Item = &T> {
    let fits = |stride: &usize| {
        let kept: Vec<Rect> = texts.iter().step_by(*stride).map(&bounds).collect();
        kept.windows(2).all(|pair| pair[0].right() + gap <= pair[1].x)
    };
    let stride = (1..=texts.len()).find(fits).unwrap_or(1);
    texts.iter().step_by(stride)
}

/// The fewest characters worth keeping before a number.
const SHORTEST: usize = 4;

/// The part of a label that says the number, or the unit of an axis; empty when it has neither.
fn tail(text: &str) -> &str {
    let numeral = |c: char| c.is_ascii_digit() || c == '−';
    let number = text
        .match_indices(' ')
        .filter_map(|(at, _)| text.get(at..))
        .find(|rest| rest.trim_start().starts_with(numeral));
    number.or_else(|| text.rfind(',').and_then(|at| text.get(at..))).unwrap_or_default()
}
