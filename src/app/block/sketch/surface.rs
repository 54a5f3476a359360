//! A sketch on a canvas, kept until the numbers, the light or the width change.

use iced::mouse::Cursor;
use iced::widget::canvas::{Cache, Frame, Geometry, Path, Program, Text};
use iced::{Color, Point, Rectangle, Renderer, Theme};

use crate::app::theme::{Ink, REGULAR, ink, size};
use crate::plot::sketch::{Drawing, Show, Tone, View, draw};
use crate::quantity::Units;
use crate::study::Sketch;

/// A sketch to be drawn.
pub struct Surface<'a> {
    /// The machine.
    pub sketch: &'a Sketch,
    /// The units of the words.
    pub units: &'a Units,
    /// Its drawing, kept.
    pub cache: &'a Cache,
    /// From where it is seen and what of it is shown.
    pub how: (View, Show),
}

impl<Message> Program<Message> for Surface<'_> {
    type State = ();

    fn draw(
        &self,
        _state: &(),
        renderer: &Renderer,
        theme: &Theme,
        bounds: Rectangle,
        _cursor: Cursor,
    ) -> Vec<Geometry> {
        let geometry = self.cache.draw(renderer, bounds.size(), |frame| {
            let room = (bounds.width, bounds.height);
            let drawing = draw(self.sketch, self.how, self.units, room, size::SMALL);
            paint(frame, &drawing, ink(theme));
        });
        vec![geometry]
    }
}

fn paint(frame: &mut Frame, drawing: &Drawing, ink: &Ink) {
    for shape in &drawing.shapes {
        let Some((first, rest)) = shape.points.split_first() else { continue };
        let path = Path::new(|path| {
            path.move_to(Point::new(first.0, first.1));
            for (x, y) in rest {
                path.line_to(Point::new(*x, *y));
            }
            path.close();
        });
        frame.fill(&path, colour(shape.tone, ink).scale_alpha(shape.strength));
    }
    for label in &drawing.labels {
        frame.fill_text(Text {
            content: label.text.clone(),
            position: Point::new(label.bounds.x, label.bounds.y),
            color: words(label.tone, ink),
            size: size::SMALL.into(),
            font: REGULAR,
            ..Text::default()
        });
    }
}

/// The colour of a shape: data and cautions have one, all else is ink or paper.
fn colour(tone: Tone, ink: &Ink) -> Color {
    match tone {
        Tone::Ground => ink.soft,
        Tone::Gear => ink.line,
        Tone::GearEdge => ink.edge,
        Tone::Part => ink.paper,
        Tone::PartEdge | Tone::Leader => ink.edge,
        Tone::Trial => ink.wash,
        Tone::Pressure | Tone::Reaction => ink.yours,
        Tone::Weight | Tone::Ink => ink.text,
        Tone::Paper => ink.panel,
        Tone::Tip => ink.limit,
        Tone::Ghost => ink.first,
    }
}

/// The colour of words: legible on the panel.
fn words(tone: Tone, ink: &Ink) -> Color {
    match tone {
        Tone::Leader => ink.soft,
        Tone::Reaction => ink.yours,
        _ => ink.text,
    }
}
