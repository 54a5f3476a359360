//! The still part of a plot, drawn by plotters and kept until the numbers or the light change.

use iced::widget::canvas::{Cache, Frame, Geometry};
use iced::{Color, Size};
use plotters_iced::plotters_backend::DrawingBackend;
use plotters_iced::{Chart, ChartBuilder, DrawingArea, Renderer};

use crate::app::theme::{DAY, Ink, NIGHT, size};
use crate::plot::{Layout, PlotSpec, PlotStyle, Rgb, Role, draw};

/// plotters counts in whole pixels; drawn this many times larger, gentle curves stay smooth.
const K: u32 = 8;

/// A plot to be drawn.
pub struct Plot<'a> {
    /// What it shows.
    pub spec: &'a PlotSpec,
    /// Its drawing, kept.
    pub cache: &'a Cache,
    /// Whether the paper is dark.
    pub dark: bool,
}

/// The day's or the night's colours as plots want them.
pub fn style(dark: bool) -> PlotStyle {
    let ink: &Ink = if dark { &NIGHT } else { &DAY };
    PlotStyle {
        background: None,
        ground: rgb(ink.panel),
        ink: rgb(ink.soft),
        grid: rgb(ink.line),
        band: rgb(ink.line),
        limit: rgb(ink.limit),
        range: rgb(between(ink.paper, ink.yours, if dark { 0.34 } else { 0.22 })),
        relative: rgb(ink.soft),
        builds: Role::ALL.map(|role| rgb(ink.of(role))),
        text_size: size::SMALL,
        k: K,
        stroke_k: 1,
    }
}

/// A colour part of the way from one to another.
fn between(from: Color, to: Color, part: f32) -> Color {
    let mix = |a: f32, b: f32| a + (b - a) * part;
    Color::from_rgb(mix(from.r, to.r), mix(from.g, to.g), mix(from.b, to.b))
}

fn rgb(colour: Color) -> Rgb {
    let [red, green, blue, _] = colour.into_rgba8();
    (red, green, blue)
}

impl<Message> Chart<Message> for Plot<'_> {
    /// Whether the kept drawing is by day or by night.
    type State = ();

    fn build_chart<DB: DrawingBackend>(&self, _: &(), _: ChartBuilder<'_, '_, DB>) {}

    fn draw_chart<DB: DrawingBackend>(
        &self,
        _: &(),
        area: DrawingArea<DB, plotters::coord::Shift>,
    ) {
        let (width, height) = area.dim_in_pixel();
        let size = (width as f32 / K as f32, height as f32 / K as f32);
        let style = style(self.dark);
        // The window's backend reports no errors of its own; a plot that cannot be drawn stays
        // empty and its table still has the numbers.
        let _ = draw(&area, self.spec, &Layout::of(self.spec, size, style.text_size), &style);
    }

    fn draw<R: Renderer, F: Fn(&mut Frame)>(&self, renderer: &R, bounds: Size, f: F) -> Geometry {
        let large = Size::new(bounds.width * K as f32, bounds.height * K as f32);
        renderer.draw_cache(self.cache, large, |frame| {
            frame.scale(1.0 / K as f32);
            f(frame);
        })
    }
}
