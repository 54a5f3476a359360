//! A margin as a bar: the limit marked in the middle, the margin as a mark, its range as a band.

use iced::widget::{canvas, column, row, text};
use iced::{Center, Element, Fill, Length, Point, Rectangle, Renderer, Right, Size, Theme, mouse};

use super::Message;
use crate::app::theme::{self, ink, size};

const HEIGHT: f32 = 20.0;
/// The track is lower than the marks that stand on it.
const TRACK: f32 = 8.0;
const MARK: f32 = 4.0;

/// A margin and its range; as far left of the middle as a margin is under 1 by division, so far
/// right is its inverse: half and twice stand even.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bar {
    /// What holds over what is asked.
    pub margin: f64,
    /// The lower and upper end of it.
    pub range: Option<(f64, f64)>,
}

/// Where a margin stands along a bar, 0 to 1: the limit at one half, any margin within.
pub fn place(margin: f64) -> f32 {
    let margin = margin.max(0.0);
    if margin.is_infinite() { 1.0 } else { (margin / (1.0 + margin)) as f32 }
}

impl Bar {
    /// The bar with what its ends mean.
    pub fn view<'a>(self) -> Element<'a, Message> {
        let small = |words| text(words).size(size::SMALL).style(theme::soft).width(Fill);
        column![
            canvas(self).width(Fill).height(Length::Fixed(HEIGHT)),
            row![small("gives"), small("1").align_x(Center), small("holds").align_x(Right)],
        ]
        .into()
    }
}

impl canvas::Program<Message> for Bar {
    type State = ();

    fn draw(
        &self,
        _state: &(),
        renderer: &Renderer,
        theme: &Theme,
        bounds: Rectangle,
        _cursor: mouse::Cursor,
    ) -> Vec<canvas::Geometry> {
        let mut frame = canvas::Frame::new(renderer, bounds.size());
        let ink = ink(theme);
        let across = |part: f32| part * bounds.width;
        let low = |height: f32| 0.5 * (HEIGHT - height);
        let mut block = |from: f32, to: f32, height: f32, colour| {
            let size = Size::new((to - from).max(1.0), height);
            frame.fill_rectangle(Point::new(from, low(height)), size, colour);
        };
        block(0.0, bounds.width, TRACK, ink.line);
        if let Some((from, to)) = self.range {
            block(across(place(from)), across(place(to)), 1.5 * TRACK, ink.edge);
        }
        let limit = across(0.5);
        block(limit - 1.0, limit + 1.0, HEIGHT, ink.soft);
        let colour = if self.margin < 1.0 { ink.caution } else { ink.text };
        let at = across(place(self.margin)).clamp(0.5 * MARK, bounds.width - 0.5 * MARK);
        // Paper about the mark keeps it apart from the band.
        block(at - MARK, at + MARK, HEIGHT, ink.paper);
        block(at - 0.5 * MARK, at + 0.5 * MARK, HEIGHT, colour);
        vec![frame.into_geometry()]
    }
}
