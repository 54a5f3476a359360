//! What lies over a panel of a run: its words, and the moment looked at.

use iced::mouse::Cursor;
use iced::widget::canvas::{Frame, Geometry, Path, Program};
use iced::{Point, Rectangle, Renderer, Size, Theme};

use crate::app::block::curve::overlay::words;
use crate::app::theme::{ink, size};
use crate::plot::{Layout, PlotSpec, Shape, readings};

/// The words and the moment over a panel.
pub struct Overlay<'a> {
    /// What the panel shows.
    pub spec: &'a PlotSpec,
    /// The moment, in the unit of its time axis.
    pub at: f64,
}

impl<Message> Program<Message> for Overlay<'_> {
    type State = ();

    fn draw(
        &self,
        (): &(),
        renderer: &Renderer,
        theme: &Theme,
        bounds: Rectangle,
        _cursor: Cursor,
    ) -> Vec<Geometry> {
        let ink = ink(theme);
        let layout = Layout::of(self.spec, (bounds.width, bounds.height), size::SMALL);
        let mut frame = Frame::new(renderer, bounds.size());
        words(&mut frame, self.spec, &layout, (0.0, ink.text));
        let (x, _) = layout.to_screen(self.spec, (self.at, self.spec.y.from));
        // The software renderer repaints what a shape covers, and a bare line covers nothing.
        let (top, height) = (layout.plot.y, layout.plot.height);
        let line = Path::rectangle(Point::new(x - 1.0, top), Size::new(2.0, height));
        frame.fill(&line, ink.accent);
        // The reader's own over all others.
        for reading in readings(self.spec, self.at).into_iter().rev() {
            let Some(role) = reading.role else { continue };
            let (x, y) = layout.to_screen(self.spec, (self.at, reading.y));
            let at = Point::new(x, y);
            frame.fill(&shape(role.shape(), at, 5.5), ink.panel);
            frame.fill(&shape(role.shape(), at, 4.0), ink.of(role));
        }
        vec![frame.into_geometry()]
    }
}

/// The shape of a build's dot.
fn shape(shape: Shape, at: Point, radius: f32) -> Path {
    match shape {
        Shape::Round => Path::circle(at, radius),
        Shape::Square => {
            let corner = Point::new(at.x - radius, at.y - radius);
            Path::rectangle(corner, Size::new(2.0 * radius, 2.0 * radius))
        }
        Shape::Triangle => Path::new(|path| {
            path.move_to(Point::new(at.x, at.y - 1.2 * radius));
            path.line_to(Point::new(at.x + 1.1 * radius, at.y + 0.8 * radius));
            path.line_to(Point::new(at.x - 1.1 * radius, at.y + 0.8 * radius));
            path.close();
        }),
    }
}
