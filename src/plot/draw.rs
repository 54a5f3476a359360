//! Drawing a plot with any plotters backend, all but its words.
//!
//! Backends take whole pixels, which turns gentle curves into stairs. So everything is drawn
//! `k` times larger, and whoever owns the surface scales it back.

pub(super) mod dashes;
mod family;
mod outside;

use plotters::coord::Shift;
use plotters::prelude::{
    Circle, Color, DrawingArea, DrawingAreaErrorKind, DrawingBackend, PathElement, Polygon,
    RGBColor, Rectangle, ShapeStyle,
};

use super::labels::{Part, PlacedText, texts};
use super::layout::{Layout, Rect};
use super::spec::{PlotSpec, Role, Shape, Stroke};
use dashes::dashes;

/// A colour: red, green, blue.
pub type Rgb = (u8, u8, u8);
/// What can go wrong while drawing: the backend's own error.
pub type DrawError<DB> = DrawingAreaErrorKind<<DB as DrawingBackend>::ErrorType>;

type Points = Vec<(i32, i32)>;

/// How a plot looks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlotStyle {
    /// Behind everything; none leaves the surface as it is.
    pub background: Option<Rgb>,
    /// What the surface looks like without the plot.
    pub ground: Rgb,
    /// Axes and words.
    pub ink: Rgb,
    /// Grid lines.
    pub grid: Rgb,
    /// Where there is no number.
    pub band: Rgb,
    /// Limits.
    pub limit: Rgb,
    /// The range about the reader's own line.
    pub range: Rgb,
    /// The lines of a family.
    pub relative: Rgb,
    /// The builds, by [`Role`].
    pub builds: [Rgb; 3],
    /// Height of the text, in pixels of the layout.
    pub text_size: f32,
    /// How many times larger the surface is than the layout.
    pub k: u32,
    /// How many times wider strokes are drawn: `k` where they shrink with the picture, 1 where
    /// the surface keeps their width.
    pub stroke_k: u32,
}

impl PlotStyle {
    /// For print: black on white, the builds' colours, legible in grey.
    pub const PAPER: Self = Self {
        background: Some((255, 255, 255)),
        ground: (255, 255, 255),
        ink: (26, 26, 26),
        grid: (221, 221, 221),
        band: (240, 240, 240),
        limit: (85, 85, 85),
        range: (217, 233, 243),
        relative: (70, 70, 70),
        // Okabe and Ito's blue, vermilion and bluish green.
        builds: [(0, 114, 178), (213, 94, 0), (0, 158, 115)],
        text_size: 14.0,
        k: 16,
        stroke_k: 16,
    };

    /// The colour of a build.
    pub const fn of(&self, role: Role) -> Rgb {
        let [yours, first, second] = self.builds;
        match role {
            Role::Yours => yours,
            Role::First => first,
            Role::Second => second,
        }
    }
}

/// Draws everything but the words, for which see [`texts`](super::texts).
///
/// # Errors
/// Whatever the backend reports.
pub fn draw<DB: DrawingBackend>(
    area: &DrawingArea<DB, Shift>,
    spec: &PlotSpec,
    layout: &Layout,
    style: &PlotStyle,
) -> Result<(), DrawError<DB>> {
    let words = texts(spec, layout);
    let pen = Pen { area, spec, layout, style, words: &words };
    pen.ground()?;
    for run in &spec.range {
        pen.range(run)?;
    }
    pen.grid()?;
    for limit in &spec.limits {
        for run in &limit.runs {
            pen.line(run, style.limit, 1, &[10.0, 3.0, 2.0, 3.0])?;
        }
    }
    pen.relatives()?;
    for line in spec.lines.iter().rev() {
        let pattern: &[f32] = match line.role.stroke() {
            Stroke::Solid => &[],
            Stroke::Dashed => &[9.0, 5.0],
            Stroke::Dotted => &[2.0, 4.0],
        };
        for run in &line.runs {
            pen.line(run, style.of(line.role), 2, pattern)?;
        }
    }
    pen.clearings()?;
    for edge in &spec.edges {
        pen.edge(edge)?;
    }
    for dot in spec.dots.iter().rev() {
        pen.dot((dot.x, dot.y), dot.role)?;
    }
    Ok(())
}

struct Pen<'a, DB: DrawingBackend> {
    area: &'a DrawingArea<DB, Shift>,
    spec: &'a PlotSpec,
    layout: &'a Layout,
    style: &'a PlotStyle,
    words: &'a [PlacedText],
}

impl<DB: DrawingBackend> Pen<'_, DB> {
    /// The only way from the layout to the backend's pixels.
    fn px(&self, (x, y): (f32, f32)) -> (i32, i32) {
        let k = self.style.k as f32;
        ((x * k).round() as i32, (y * k).round() as i32)
    }

    fn stroke(&self, colour: Rgb, width: u32) -> ShapeStyle {
        ShapeStyle {
            color: rgb(colour).into(),
            filled: false,
            stroke_width: width * self.style.stroke_k,
        }
    }

    fn fill(&self, colour: Rgb) -> ShapeStyle {
        ShapeStyle { color: rgb(colour).into(), filled: true, stroke_width: 0 }
    }

    fn path(&self, points: &[(f32, f32)], colour: Rgb, width: u32) -> Result<(), DrawError<DB>> {
        let points: Points = points.iter().map(|p| self.px(*p)).collect();
        self.area.draw(&PathElement::new(points, self.stroke(colour, width)))
    }

    fn rectangle(&self, a: (f32, f32), b: (f32, f32), colour: Rgb) -> Result<(), DrawError<DB>> {
        self.area.draw(&Rectangle::new([self.px(a), self.px(b)], self.fill(colour)))
    }

    /// Background, and the stretches without a number.
    fn ground(&self) -> Result<(), DrawError<DB>> {
        if let Some(colour) = self.style.background {
            self.rectangle((0.0, 0.0), self.layout.size, colour)?;
        }
        let plot = self.layout.plot;
        for band in &self.spec.bands {
            let at = |x: f64| self.layout.to_screen(self.spec, (x, self.spec.y.from)).0;
            let (left, right) = (at(band.from).max(plot.x), at(band.to).min(plot.right()));
            if right > left {
                self.rectangle((left, plot.y), (right, plot.bottom()), self.style.band)?;
            }
        }
        Ok(())
    }

    /// What runs through the words inside the plot stands back behind them.
    fn clearings(&self) -> Result<(), DrawError<DB>> {
        const CLEAR: f64 = 0.75;
        let fill =
            ShapeStyle { color: rgb(self.style.ground).mix(CLEAR), filled: true, stroke_width: 0 };
        let inside = |text: &&PlacedText| !matches!(text.part, Part::Tick | Part::Caption);
        for text in self.words.iter().filter(inside) {
            let Rect { x, y, width, height } = text.letters(self.style.text_size);
            let corners = [self.px((x, y)), self.px((x + width, y + height))];
            self.area.draw(&Rectangle::new(corners, fill))?;
        }
        Ok(())
    }

    fn grid(&self) -> Result<(), DrawError<DB>> {
        let plot = self.layout.plot;
        for tick in &self.spec.y.ticks {
            let y = self.layout.to_screen(self.spec, (self.spec.x.from, tick.at)).1;
            if tick.text.is_some() {
                self.path(&[(plot.x, y), (plot.right(), y)], self.style.grid, 1)?;
            } else {
                self.path(&[(plot.x - 3.0, y), (plot.x, y)], self.style.ink, 1)?;
            }
        }
        for tick in &self.spec.x.ticks {
            let x = self.layout.to_screen(self.spec, (tick.at, self.spec.y.from)).0;
            let length = if tick.text.is_some() { 6.0 } else { 3.0 };
            let down = plot.bottom() + length;
            self.path(&[(x, plot.bottom()), (x, down)], self.style.ink, 1)?;
        }
        let corner = (plot.x, plot.bottom());
        self.path(&[(plot.x, plot.y), corner, (plot.right(), plot.bottom())], self.style.ink, 1)
    }

    fn line(
        &self,
        run: &[(f64, f64)],
        colour: Rgb,
        width: u32,
        pattern: &[f32],
    ) -> Result<(), DrawError<DB>> {
        let points: Vec<(f32, f32)> =
            run.iter().map(|p| self.layout.to_screen(self.spec, *p)).collect();
        match points.as_slice() {
            // A lone number still shows.
            [one] => {
                let radius = self.style.k as i32 * width as i32;
                self.area.draw(&Circle::new(self.px(*one), radius, self.fill(colour)))
            }
            _ if pattern.is_empty() => self.path(&points, colour, width),
            _ => {
                dashes(&points, pattern).iter().try_for_each(|dash| self.path(dash, colour, width))
            }
        }
    }

    /// A build's dot, with a rim of background so that it stands clear of its line.
    fn dot(&self, at: (f64, f64), role: Role) -> Result<(), DrawError<DB>> {
        let at = self.layout.to_screen(self.spec, at);
        let radius = 0.36 * self.style.text_size;
        if let Some(rim) = self.style.background {
            self.mark(at, radius + 1.5, role.shape(), rim)?;
        }
        self.mark(at, radius, role.shape(), self.style.of(role))
    }

    fn mark(
        &self,
        (x, y): (f32, f32),
        r: f32,
        shape: Shape,
        colour: Rgb,
    ) -> Result<(), DrawError<DB>> {
        match shape {
            Shape::Round => {
                let radius = (r * self.style.k as f32).round() as i32;
                self.area.draw(&Circle::new(self.px((x, y)), radius, self.fill(colour)))
            }
            Shape::Square => {
                let half = 0.9 * r;
                self.rectangle((x - half, y - half), (x + half, y + half), colour)
            }
            Shape::Triangle => {
                self.polygon((x, y), r, &[(0.0, -1.2), (1.1, 0.8), (-1.1, 0.8)], colour)
            }
        }
    }

    /// Corners about a point, right and down, in parts of a radius.
    fn polygon(
        &self,
        (x, y): (f32, f32),
        r: f32,
        corners: &[(f32, f32)],
        colour: Rgb,
    ) -> Result<(), DrawError<DB>> {
        let corner = |(right, down): &(f32, f32)| self.px((x + right * r, y + down * r));
        let corners: Points = corners.iter().map(corner).collect();
        self.area.draw(&Polygon::new(corners, self.fill(colour)))
    }
}

fn rgb((red, green, blue): Rgb) -> RGBColor {
    RGBColor(red, green, blue)
}
