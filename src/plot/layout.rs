//! Where things go: one pure mapping for drawing, hovering and tests.

use super::labels::width;
use super::spec::PlotSpec;

/// The part of the width that the names of a family's lines may take.
const NAMES: f32 = 0.36;

/// A rectangle on screen, y downwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rect {
    /// Left edge.
    pub x: f32,
    /// Upper edge.
    pub y: f32,
    /// Width.
    pub width: f32,
    /// Height.
    pub height: f32,
}

impl Rect {
    /// The right edge.
    pub fn right(&self) -> f32 {
        self.x + self.width
    }

    /// The lower edge.
    pub fn bottom(&self) -> f32 {
        self.y + self.height
    }

    /// Whether a point lies inside or on the edge.
    pub fn holds(&self, x: f32, y: f32) -> bool {
        (self.x..=self.right()).contains(&x) && (self.y..=self.bottom()).contains(&y)
    }

    /// Whether all of another rectangle lies inside, to a hundredth of a pixel.
    pub fn holds_all(&self, other: &Self) -> bool {
        other.x >= self.x - 0.01
            && other.y >= self.y - 0.01
            && other.right() <= self.right() + 0.01
            && other.bottom() <= self.bottom() + 0.01
    }

    /// Whether two rectangles share any ground.
    pub fn overlaps(&self, other: &Self) -> bool {
        self.x < other.right()
            && other.x < self.right()
            && self.y < other.bottom()
            && other.y < self.bottom()
    }
}

/// The rectangle between the axes, for a picture of that size and text of that height.
///
/// Margins depend on nothing but the text size, so that plots line up and nothing jumps while
/// numbers change. Never smaller than one pixel each way.
pub fn plot_rect((width, height): (f32, f32), text_size: f32) -> Rect {
    inner_rect((width, height), text_size, true)
}

/// The room above a plot and below it, with or without a foot.
pub(super) fn above_and_below(foot: bool, text_size: f32) -> (f32, f32) {
    (2.2 * text_size, if foot { 3.6 } else { 0.8 } * text_size)
}

fn inner_rect((width, height): (f32, f32), text_size: f32, foot: bool) -> Rect {
    let (left, right) = (4.6 * text_size, 1.4 * text_size);
    let (top, bottom) = above_and_below(foot, text_size);
    Rect {
        x: left,
        y: top,
        width: (width - left - right).max(1.0),
        height: (height - top - bottom).max(1.0),
    }
}

/// A plot laid out on a surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layout {
    /// The whole surface.
    pub size: (f32, f32),
    /// Height of the text.
    pub text_size: f32,
    /// The rectangle between the axes.
    pub plot: Rect,
}

impl Layout {
    /// Lays out a surface.
    pub fn new(size: (f32, f32), text_size: f32) -> Self {
        Self { size, text_size, plot: plot_rect(size, text_size) }
    }

    /// Lays out a surface for a plot: the lines of a family are named in a wider right margin, and
    /// without a foot there is no room kept for one.
    pub fn of(spec: &PlotSpec, size: (f32, f32), text_size: f32) -> Self {
        let plot = inner_rect(size, text_size, spec.foot);
        let mut layout = Self { size, text_size, plot };
        let names = spec.relatives.iter().map(|line| width(&line.label, text_size));
        let widest = names.fold(0.0_f32, f32::max).min(NAMES * size.0);
        if widest > 0.0 {
            let right = layout.plot.right() - widest - 0.4 * text_size;
            layout.plot.width = (right - layout.plot.x).max(1.0);
        }
        layout
    }

    /// The whole surface as a rectangle.
    pub fn surface(&self) -> Rect {
        Rect { x: 0.0, y: 0.0, width: self.size.0, height: self.size.1 }
    }

    /// Where a point in display units lies on the surface.
    pub fn to_screen(&self, spec: &PlotSpec, (x, y): (f64, f64)) -> (f32, f32) {
        (
            self.plot.x + self.plot.width * spec.x.part(x) as f32,
            self.plot.bottom() - self.plot.height * spec.y.part(y) as f32,
        )
    }

    /// The point in display units under a place on the surface.
    pub fn from_screen(&self, spec: &PlotSpec, (x, y): (f32, f32)) -> (f64, f64) {
        (
            spec.x.value(f64::from((x - self.plot.x) / self.plot.width)),
            spec.y.value(f64::from((self.plot.bottom() - y) / self.plot.height)),
        )
    }
}
