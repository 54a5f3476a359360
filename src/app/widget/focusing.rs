//! Content that takes the focus and answers keys of its own while it has it.

use iced::Element;
use iced::advanced::widget::Id;
use iced::keyboard::{Key, Modifiers};

use super::delegate::{Gate, delegate};

struct Focusing<F> {
    id: Id,
    on_key: F,
}

impl<Message, F: Fn(&Key, Modifiers) -> Option<Message>> Gate<Message> for Focusing<F> {
    fn focus(&self) -> Option<&Id> {
        Some(&self.id)
    }

    fn keyed(&self, key: &Key, modifiers: Modifiers) -> Option<Message> {
        (self.on_key)(key, modifiers)
    }
}

/// Lets content take the focus; a key that gives no message goes on to the page.
pub fn focusing<'a, Message: 'a>(
    id: impl Into<Id>,
    content: impl Into<Element<'a, Message>>,
    on_key: impl Fn(&Key, Modifiers) -> Option<Message> + 'a,
) -> Element<'a, Message> {
    delegate(Focusing { id: id.into(), on_key }, content)
}
