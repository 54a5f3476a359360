//! A text field whose number goes up and down with the arrow keys while it has the focus.

use iced::advanced::Shell;
use iced::advanced::text::Renderer as TextRenderer;
use iced::advanced::widget::Tree;
use iced::keyboard::{self, key::Named};
use iced::widget::text_input;
use iced::{Element, Event, Renderer};

use super::delegate::{Gate, delegate};

/// How far a step goes: a fine one, or ten of them with Shift.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Step {
    /// Up or down.
    pub up: bool,
    /// Ten steps at once.
    pub coarse: bool,
}

struct Stepping<F>(F);

type FieldState = text_input::State<<Renderer as TextRenderer>::Paragraph>;

impl<Message, F: Fn(Step) -> Message> Gate<Message> for Stepping<F> {
    fn hears(&self, event: &Event, inner: &Tree, shell: &mut Shell<'_, Message>) -> bool {
        let Event::Keyboard(keyboard::Event::KeyPressed {
            key: keyboard::Key::Named(named @ (Named::ArrowUp | Named::ArrowDown)),
            modifiers,
            ..
        }) = event
        else {
            return true;
        };
        if !inner.state.downcast_ref::<FieldState>().is_focused() {
            return true;
        }
        let step = Step { up: *named == Named::ArrowUp, coarse: modifiers.shift() };
        shell.publish((self.0)(step));
        shell.capture_event();
        false
    }
}

/// Adds stepping keys to a text field.
pub fn stepping<'a, Message: Clone + 'a>(
    field: text_input::TextInput<'a, Message>,
    on_step: impl Fn(Step) -> Message + 'a,
) -> Element<'a, Message> {
    delegate(Stepping(on_step), field)
}
