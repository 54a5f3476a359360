//! A text field that answers Esc with a message of its own, where it would only let go of the focus.

use iced::advanced::Shell;
use iced::advanced::text::Renderer as TextRenderer;
use iced::advanced::widget::Tree;
use iced::keyboard::{self, key::Named};
use iced::widget::text_input;
use iced::{Element, Event, Renderer};

use super::delegate::{Gate, delegate};

struct Escaping<Message>(Message);

type FieldState = text_input::State<<Renderer as TextRenderer>::Paragraph>;

impl<Message: Clone> Gate<Message> for Escaping<Message> {
    fn hears(&self, event: &Event, inner: &Tree, shell: &mut Shell<'_, Message>) -> bool {
        let Event::Keyboard(keyboard::Event::KeyPressed {
            key: keyboard::Key::Named(Named::Escape),
            ..
        }) = event
        else {
            return true;
        };
        if !inner.state.downcast_ref::<FieldState>().is_focused() {
            return true;
        }
        shell.publish(self.0.clone());
        shell.capture_event();
        false
    }
}

/// Lets Esc in a text field be a message.
pub fn escaping<'a, Message: Clone + 'a>(
    field: text_input::TextInput<'a, Message>,
    on_escape: Message,
) -> Element<'a, Message> {
    delegate(Escaping(on_escape), field)
}
