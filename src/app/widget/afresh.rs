//! A page that is painted in one piece when it has moved.

use std::cell::Cell;

use iced::advanced::Shell;
use iced::advanced::widget::Tree;
use iced::{Element, Event, Rectangle, mouse};

use super::delegate::{Gate, delegate};

/// By so much the view of the page is shorter every other time, in pixels: less than a screen shows.
const LESS: f32 = 1.0 / 64.0;

/// The software renderer looks for what differs between two frames and paints each piece by itself;
/// on a page that has moved these are hundreds. A view of another size is one piece that differs.
struct Afresh {
    other: Cell<bool>,
}

/// Lets a page that scrolls be painted in one piece: after a turn of the wheel, and whenever `other`
/// differs from the time before.
pub fn afresh<'a, Message: 'a>(
    other: bool,
    page: impl Into<Element<'a, Message>>,
) -> Element<'a, Message> {
    delegate(Afresh { other: Cell::new(other) }, page)
}

impl<Message> Gate<Message> for Afresh {
    fn hears(&self, event: &Event, _inner: &Tree, _shell: &mut Shell<'_, Message>) -> bool {
        if let Event::Mouse(mouse::Event::WheelScrolled { .. }) = event {
            self.other.set(!self.other.get());
        }
        true
    }

    fn seen(&self, bounds: Rectangle, view: Rectangle) -> Rectangle {
        let seen = bounds.intersection(&view).unwrap_or(view);
        let less = if self.other.get() { LESS } else { 0.0 };
        Rectangle { height: seen.height - less, ..seen }
    }
}
