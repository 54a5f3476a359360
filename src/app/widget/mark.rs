//! The mark of a build: its colour and shape, as on plots.

use iced::mouse::Cursor;
use iced::widget::canvas::{self, Frame, Geometry, Path};
use iced::{Element, Point, Rectangle, Renderer, Size, Theme};

use crate::app::theme::ink;
use crate::plot::{Role, Shape};

/// The side of the square a mark stands in, in pixels.
const SIDE: f32 = 12.0;

/// The mark of a build.
pub fn mark<'a, Message: 'a>(role: Role) -> Element<'a, Message> {
    canvas::Canvas::new(Mark(role)).width(SIDE).height(SIDE).into()
}

struct Mark(Role);

impl<Message> canvas::Program<Message> for Mark {
    type State = ();

    fn draw(
        &self,
        _state: &(),
        renderer: &Renderer,
        theme: &Theme,
        bounds: Rectangle,
        _cursor: Cursor,
    ) -> Vec<Geometry> {
        let mut frame = Frame::new(renderer, bounds.size());
        let shape = match self.0.shape() {
            Shape::Round => Path::circle(frame.center(), SIDE * 0.42),
            Shape::Square => {
                let side = SIDE * 0.75;
                let corner = (SIDE - side) / 2.0;
                Path::rectangle(Point::new(corner, corner), Size::new(side, side))
            }
            Shape::Triangle => Path::new(|path| {
                path.move_to(Point::new(SIDE / 2.0, SIDE * 0.05));
                path.line_to(Point::new(SIDE, SIDE * 0.92));
                path.line_to(Point::new(0.0, SIDE * 0.92));
                path.close();
            }),
        };
        frame.fill(&shape, ink(theme).of(self.0));
        vec![frame.into_geometry()]
    }
}
