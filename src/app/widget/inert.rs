//! A page that does not answer while a question stands over it: neither pointer nor key nor focus
//! reaches it, and its state stays.

use iced::advanced::Shell;
use iced::advanced::widget::Tree;
use iced::{Element, Event, window};

use super::delegate::{Gate, delegate};

struct Inert(bool);

impl<Message> Gate<Message> for Inert {
    fn hears(&self, event: &Event, _inner: &Tree, _shell: &mut Shell<'_, Message>) -> bool {
        !self.0 || matches!(event, Event::Window(window::Event::RedrawRequested(_)))
    }

    fn is_open(&self) -> bool {
        !self.0
    }
}

/// Content that answers only while it is not `inert`.
pub fn inert<'a, Message: 'a>(
    inert: bool,
    content: impl Into<Element<'a, Message>>,
) -> Element<'a, Message> {
    delegate(Inert(inert), content)
}
