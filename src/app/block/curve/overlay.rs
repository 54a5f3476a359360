//! What lies over a plot: its words, what the pointer reads, and the dot being dragged.

use iced::mouse::{self, Cursor, Interaction};
use iced::widget::canvas::{Action, Frame, Geometry, Path, Program, Stroke, Text};
use iced::{Color, Event, Point, Rectangle, Renderer, Size, Theme, alignment, touch};

use super::{Act, READING, Read, room};
use crate::app::theme::{REGULAR, SEMIBOLD, ink, size};
use crate::app::widget::field;
use crate::plot::{Anchor, Layout, PlotSpec, Role, reading, readings, texts};
use crate::quantity::AnyId;

/// How near to the dot, in pixels, a press takes hold of it.
const HOLD: f32 = 18.0;

/// The words and the pointer over a plot.
pub struct Overlay<'a> {
    /// What the plot shows.
    pub spec: &'a PlotSpec,
    /// The gesture a drag belongs to.
    pub place: String,
    /// The quantity along the foot.
    pub against: AnyId,
    /// Where the reader reads by key, in the unit of the foot.
    pub reading: Option<f64>,
}

/// Writes the words of a plot that lies so far `down` the frame.
pub fn words(frame: &mut Frame, spec: &PlotSpec, layout: &Layout, (down, color): (f32, Color)) {
    for placed in texts(spec, layout) {
        frame.fill_text(Text {
            content: placed.text,
            position: Point::new(placed.x, placed.y + down),
            color,
            size: size::SMALL.into(),
            font: REGULAR,
            align_x: match placed.anchor {
                Anchor::Start => iced::widget::text::Alignment::Left,
                Anchor::Middle => iced::widget::text::Alignment::Center,
                Anchor::End => iced::widget::text::Alignment::Right,
            },
            align_y: alignment::Vertical::Center,
            ..Text::default()
        });
    }
}

/// Where the pointer is, and whether it holds the dot.
#[derive(Debug, Default)]
pub struct Pointer {
    at: Option<Point>,
    holds: bool,
}

impl Overlay<'_> {
    fn layout(&self, bounds: Rectangle) -> Layout {
        Layout::of(self.spec, (bounds.width, bounds.height - READING), size::SMALL)
    }

    /// The place on the plot under a point of the canvas.
    fn on_plot(point: Point) -> (f32, f32) {
        (point.x, point.y - READING)
    }

    fn near_dot(&self, layout: &Layout, point: Point) -> bool {
        self.spec.dots.iter().find(|dot| dot.role == Role::Yours).is_some_and(|dot| {
            let (x, y) = layout.to_screen(self.spec, (dot.x, dot.y));
            Point::new(x, y + READING).distance(point) <= HOLD
        })
    }

    fn event(&self, act: field::Act) -> Act {
        Act::Field(field::Event { place: self.place.clone(), id: self.against, act })
    }

    /// The number along the foot under a point, SI, kept within the axis.
    fn slid(&self, layout: &Layout, point: Point) -> f64 {
        let (x, _) = layout.from_screen(self.spec, Self::on_plot(point));
        let axis = &self.spec.x;
        let x = x.clamp(axis.from, axis.to);
        // Three figures: a drag leaves a number a person would write.
        let size = if x == 0.0 { 1.0 } else { 10f64.powf(x.abs().log10().floor() - 2.0) };
        axis.unit.to_si((x / size).round() * size)
    }
}

impl Program<Act> for Overlay<'_> {
    type State = Pointer;

    fn update(
        &self,
        pointer: &mut Pointer,
        event: &Event,
        bounds: Rectangle,
        cursor: Cursor,
    ) -> Option<Action<Act>> {
        let layout = self.layout(bounds);
        match event {
            Event::Mouse(mouse::Event::ButtonPressed(mouse::Button::Left))
            | Event::Touch(touch::Event::FingerPressed { .. }) => {
                let point = cursor.position_in(bounds)?;
                self.near_dot(&layout, point).then(|| {
                    pointer.holds = true;
                    Action::capture()
                })
            }
            Event::Mouse(mouse::Event::CursorMoved { .. })
            | Event::Touch(touch::Event::FingerMoved { .. }) => {
                let was = pointer.at;
                pointer.at = cursor.position_in(bounds);
                if pointer.holds {
                    // Past the edge of the page the pointer still holds the dot.
                    let point = cursor.land().position_from(bounds.position())?;
                    let act = field::Act::Slid(self.slid(&layout, point));
                    return Some(Action::publish(self.event(act)).and_capture());
                }
                if was == pointer.at {
                    return None;
                }
                let on_plot = pointer.at.map(Self::on_plot);
                let over = on_plot.is_some_and(|(x, y)| layout.plot.holds(x, y));
                // Whoever takes the pointer reads with it.
                Some(if over && self.reading.is_some() {
                    Action::publish(Act::Read(Read::Away))
                } else {
                    Action::request_redraw()
                })
            }
            Event::Mouse(mouse::Event::ButtonReleased(mouse::Button::Left))
            | Event::Touch(touch::Event::FingerLifted { .. } | touch::Event::FingerLost { .. })
                if pointer.holds =>
            {
                pointer.holds = false;
                Some(Action::publish(self.event(field::Act::Settled)).and_capture())
            }
            _ => None,
        }
    }

    fn draw(
        &self,
        pointer: &Pointer,
        renderer: &Renderer,
        theme: &Theme,
        bounds: Rectangle,
        _cursor: Cursor,
    ) -> Vec<Geometry> {
        let ink = ink(theme);
        let layout = self.layout(bounds);
        let mut frame = Frame::new(renderer, bounds.size());
        words(&mut frame, self.spec, &layout, (READING, ink.text));
        match (self.reading, pointer.at) {
            (Some(x), _) => self.mark(&mut frame, &layout, x, theme),
            (None, Some(point)) => self.read(&mut frame, &layout, point, theme),
            (None, None) => {}
        }
        vec![frame.into_geometry()]
    }

    fn mouse_interaction(
        &self,
        pointer: &Pointer,
        bounds: Rectangle,
        cursor: Cursor,
    ) -> Interaction {
        let near = cursor
            .position_in(bounds)
            .is_some_and(|point| self.near_dot(&self.layout(bounds), point));
        match (pointer.holds, near) {
            (true, _) => Interaction::Grabbing,
            (false, true) => Interaction::Grab,
            (false, false) => Interaction::default(),
        }
    }
}

impl Overlay<'_> {
    /// A hairline at an x, and a ring about each number there.
    fn mark(&self, frame: &mut Frame, layout: &Layout, value: f64, theme: &Theme) {
        let ink = ink(theme);
        let plot = layout.plot;
        let (x, _) = layout.to_screen(self.spec, (value, self.spec.y.from));
        // The software renderer repaints what a shape covers, and a bare line covers nothing.
        let hairline =
            Path::rectangle(Point::new(x - 0.5, plot.y + READING), Size::new(1.0, plot.height));
        frame.fill(&hairline, ink.soft);
        // As wide as the rings, so that what they leave is repainted too.
        let around =
            Path::rectangle(Point::new(x - 6.0, plot.y + READING), Size::new(12.0, plot.height));
        frame.fill(&around, iced::Color::TRANSPARENT);
        for found in readings(self.spec, value) {
            let (x, y) = layout.to_screen(self.spec, (value, found.y));
            let ring = Path::circle(Point::new(x, y + READING), 4.0);
            frame.stroke(&ring, Stroke::default().with_color(ink.text).with_width(1.5));
        }
    }

    /// What stands under the pointer, marked and in words above the plot.
    fn read(&self, frame: &mut Frame, layout: &Layout, point: Point, theme: &Theme) {
        let (x, y) = Self::on_plot(point);
        if !layout.plot.holds(x, y) {
            return;
        }
        let (value, _) = layout.from_screen(self.spec, (x, y));
        self.mark(frame, layout, value, theme);
        frame.fill_text(Text {
            content: reading(self.spec, value, room(layout.size.0)),
            // From its upper left corner: the renderer repaints to the right of it and below.
            position: Point::new(2.0, 2.0),
            color: ink(theme).text,
            size: size::SMALL.into(),
            font: SEMIBOLD,
            ..Text::default()
        });
    }
}
