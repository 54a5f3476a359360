//! A page that is painted in one piece when it has moved.

use iced::{Element, Event, Rectangle, mouse};

use super::delegate::{Gate, delegate};

/// By so much the view of the page is shorter every other time, in pixels: less than a screen shows.
const LESS: f32 = 1.0 / 64.0;

/// The software renderer looks for what differs between two frames and paints each piece by itself;
/// on a page that has moved these are hundreds. A view of another size is one piece that differs.
struct Afresh {
    /// Turned over whenever the page has moved, where that is told.
    moved: Option<bool>,
}

/// Lets a page that scrolls be painted in one piece whenever `moved` differs from the time before, or,
/// where nothing tells that the page has moved, after each turn of the wheel.
pub fn afresh<'a, Message: 'a>(
    moved: Option<bool>,
    page: impl Into<Element<'a, Message>>,
) -> Element<'a, Message> {
    delegate(Afresh { moved }, page)
}

impl<Message> Gate<Message> for Afresh {
    fn moves(&self, event: &Event) -> bool {
        matches!(event, Event::Mouse(mouse::Event::WheelScrolled { .. }))
    }

    fn seen(&self, bounds: Rectangle, view: Rectangle, turned: bool) -> Rectangle {
        let seen = bounds.intersection(&view).unwrap_or(view);
        let less = if self.moved.unwrap_or(turned) { LESS } else { 0.0 };
        Rectangle { height: seen.height - less, ..seen }
    }
}
