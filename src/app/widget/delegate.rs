//! A widget that is its content in everything but what it lets through, and the focus it may take.

use iced::advanced::widget::operation::Focusable;
use iced::advanced::widget::{Id, Operation, Tree, tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, overlay, renderer};
use iced::keyboard::{self, Key, Modifiers};
use iced::{Element, Event, Length, Rectangle, Renderer, Size, Theme, Vector, touch};

use super::pressable::ring;

/// What is let through to the content.
pub trait Gate<Message> {
    /// Whether the content hears an event; its state is `inner`.
    fn hears(&self, _event: &Event, _inner: &Tree, _shell: &mut Shell<'_, Message>) -> bool {
        true
    }

    /// Under what name the content takes the focus as a whole, if it does.
    fn focus(&self) -> Option<&Id> {
        None
    }

    /// What a key is for while the content has the focus; nothing for a key that goes on to the page.
    fn keyed(&self, _key: &Key, _modifiers: Modifiers) -> Option<Message> {
        None
    }

    /// Whether an event may move the content.
    fn moves(&self, _event: &Event) -> bool {
        false
    }

    /// What is seen, in a view of the page, of the content that stands at `bounds`; `turned` goes over
    /// and back with each event that may move it.
    fn seen(&self, _bounds: Rectangle, view: Rectangle, _turned: bool) -> Rectangle {
        view
    }

    /// Whether focus and pointer reach the content.
    fn is_open(&self) -> bool {
        true
    }
}

/// Content behind a gate.
pub struct Delegate<'a, Message, G> {
    content: Element<'a, Message>,
    gate: G,
}

/// Puts content behind a gate.
pub fn delegate<'a, Message: 'a, G: Gate<Message> + 'a>(
    gate: G,
    content: impl Into<Element<'a, Message>>,
) -> Element<'a, Message> {
    Element::new(Delegate { content: content.into(), gate })
}

#[derive(Default)]
struct State {
    /// Turned over by each event that may move the content.
    turned: bool,
    /// Whether the content has the focus as a whole.
    focused: bool,
}

impl Focusable for State {
    fn is_focused(&self) -> bool {
        self.focused
    }
    fn focus(&mut self) {
        self.focused = true;
    }
    fn unfocus(&mut self) {
        self.focused = false;
    }
}

impl<Message, G: Gate<Message>> Delegate<'_, Message, G> {
    /// Takes or loses the focus by a press, and answers keys while it has it; whether that was all.
    fn answers(
        &self,
        event: &Event,
        is_over: bool,
        state: &mut State,
        shell: &mut Shell<'_, Message>,
    ) -> bool {
        match event {
            Event::Mouse(mouse::Event::ButtonPressed(mouse::Button::Left))
            | Event::Touch(touch::Event::FingerPressed { .. }) => {
                state.focused = is_over;
                false
            }
            Event::Keyboard(keyboard::Event::KeyPressed { key, modifiers, .. })
                if state.focused && !modifiers.command() && !modifiers.alt() =>
            {
                let Some(message) = self.gate.keyed(key, *modifiers) else { return false };
                shell.publish(message);
                shell.capture_event();
                true
            }
            _ => false,
        }
    }
}

impl<Message, G: Gate<Message>> Widget<Message, Theme, Renderer> for Delegate<'_, Message, G> {
    fn tag(&self) -> tree::Tag {
        tree::Tag::of::<State>()
    }

    fn state(&self) -> tree::State {
        tree::State::new(State::default())
    }

    fn children(&self) -> Vec<Tree> {
        vec![Tree::new(&self.content)]
    }

    fn diff(&self, tree: &mut Tree) {
        tree.diff_children(std::slice::from_ref(&self.content));
    }

    fn size(&self) -> Size<Length> {
        self.content.as_widget().size()
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        self.content.as_widget_mut().layout(&mut tree.children[0], renderer, limits)
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        if self.gate.is_open() {
            if let Some(id) = self.gate.focus() {
                operation.focusable(Some(id), layout.bounds(), tree.state.downcast_mut::<State>());
            }
            let inner = &mut tree.children[0];
            self.content.as_widget_mut().operate(inner, layout, renderer, operation);
        }
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
        let state: &mut State = tree.state.downcast_mut();
        state.turned ^= self.gate.moves(event);
        if self.gate.focus().is_some()
            && self.answers(event, cursor.is_over(layout.bounds()), state, shell)
        {
            return;
        }
        let inner = &mut tree.children[0];
        if self.gate.hears(event, inner, shell) {
            self.content
                .as_widget_mut()
                .update(inner, event, layout, cursor, renderer, clipboard, shell, viewport);
        }
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
        let inner = &tree.children[0];
        let state: &State = tree.state.downcast_ref();
        let seen = self.gate.seen(layout.bounds(), *viewport, state.turned);
        self.content.as_widget().draw(inner, renderer, theme, style, layout, cursor, &seen);
        if state.focused {
            ring(renderer, theme, layout.bounds(), 4.0);
        }
    }

    fn mouse_interaction(
        &self,
        tree: &Tree,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        viewport: &Rectangle,
        renderer: &Renderer,
    ) -> mouse::Interaction {
        if !self.gate.is_open() {
            return mouse::Interaction::default();
        }
        let inner = &tree.children[0];
        self.content.as_widget().mouse_interaction(inner, layout, cursor, viewport, renderer)
    }

    fn overlay<'b>(
        &'b mut self,
        tree: &'b mut Tree,
        layout: Layout<'b>,
        renderer: &Renderer,
        viewport: &Rectangle,
        translation: Vector,
    ) -> Option<overlay::Element<'b, Message, Theme, Renderer>> {
        let inner = &mut tree.children[0];
        let content = self.content.as_widget_mut();
        self.gate
            .is_open()
            .then(|| content.overlay(inner, layout, renderer, viewport, translation))
            .flatten()
    }
}
