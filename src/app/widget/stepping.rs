//! A text field whose number goes up and down with the arrow keys while it has the focus.

use iced::advanced::text::Renderer as TextRenderer;
use iced::advanced::widget::{Operation, Tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, overlay, renderer};
use iced::keyboard::{self, key::Named};
use iced::widget::text_input;
use iced::{Element, Event, Length, Rectangle, Renderer, Size, Theme, Vector};

/// How far a step goes: a fine one, or ten of them with Shift.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Step {
    /// Up or down.
    pub up: bool,
    /// Ten steps at once.
    pub coarse: bool,
}

/// A text field with stepping keys.
pub struct Stepping<'a, Message> {
    field: Element<'a, Message>,
    on_step: Box<dyn Fn(Step) -> Message + 'a>,
}

/// Adds stepping keys to a text field.
pub fn stepping<'a, Message: Clone + 'a>(
    field: text_input::TextInput<'a, Message>,
    on_step: impl Fn(Step) -> Message + 'a,
) -> Stepping<'a, Message> {
    Stepping { field: field.into(), on_step: Box::new(on_step) }
}

type FieldState = text_input::State<<Renderer as TextRenderer>::Paragraph>;

impl<Message> Widget<Message, Theme, Renderer> for Stepping<'_, Message> {
    fn children(&self) -> Vec<Tree> {
        vec![Tree::new(&self.field)]
    }

    fn diff(&self, tree: &mut Tree) {
        tree.diff_children(std::slice::from_ref(&self.field));
    }

    fn size(&self) -> Size<Length> {
        self.field.as_widget().size()
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        self.field.as_widget_mut().layout(&mut tree.children[0], renderer, limits)
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        self.field.as_widget_mut().operate(&mut tree.children[0], layout, renderer, operation);
    }

    fn update(
        &mut self,
        tree: &mut Tree,
        event: &Event,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        renderer: &Renderer,
        clipboard: &mut dyn Clipboard,
        shell: &mut Shell<'_, Message>,
        viewport: &Rectangle,
    ) {
        if let Event::Keyboard(keyboard::Event::KeyPressed {
            key: keyboard::Key::Named(named @ (Named::ArrowUp | Named::ArrowDown)),
            modifiers,
            ..
        }) = event
            && tree.children[0].state.downcast_ref::<FieldState>().is_focused()
        {
            let step = Step { up: *named == Named::ArrowUp, coarse: modifiers.shift() };
            shell.publish((self.on_step)(step));
            shell.capture_event();
            return;
        }
        self.field.as_widget_mut().update(
            &mut tree.children[0],
            event,
            layout,
            cursor,
            renderer,
            clipboard,
            shell,
            viewport,
        );
    }

    fn draw(
        &self,
        tree: &Tree,
        renderer: &mut Renderer,
        theme: &Theme,
        style: &renderer::Style,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        viewport: &Rectangle,
    ) {
        self.field.as_widget().draw(
            &tree.children[0],
            renderer,
            theme,
            style,
            layout,
            cursor,
            viewport,
        );
    }

    fn mouse_interaction(
        &self,
        tree: &Tree,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        viewport: &Rectangle,
        renderer: &Renderer,
    ) -> mouse::Interaction {
        self.field.as_widget().mouse_interaction(
            &tree.children[0],
            layout,
            cursor,
            viewport,
            renderer,
        )
    }

    fn overlay<'b>(
        &'b mut self,
        tree: &'b mut Tree,
        layout: Layout<'b>,
        renderer: &Renderer,
        viewport: &Rectangle,
        translation: Vector,
    ) -> Option<overlay::Element<'b, Message, Theme, Renderer>> {
        self.field.as_widget_mut().overlay(
            &mut tree.children[0],
            layout,
            renderer,
            viewport,
            translation,
        )
    }
}

impl<'a, Message: 'a> From<Stepping<'a, Message>> for Element<'a, Message> {
    fn from(stepping: Stepping<'a, Message>) -> Self {
        Element::new(stepping)
    }
}
