//! A widget that is its content in everything but what it lets through.

use iced::advanced::widget::{Operation, Tree, tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, overlay, renderer};
use iced::{Element, Event, Length, Rectangle, Renderer, Size, Theme, Vector};

/// What is let through to the content.
pub trait Gate<Message> {
    /// Whether the content hears an event; its state is `inner`.
    fn hears(&self, event: &Event, inner: &Tree, shell: &mut Shell<'_, Message>) -> bool;

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

/// Turned over by each event that may move the content.
#[derive(Default)]
struct Turned(bool);

impl<Message, G: Gate<Message>> Widget<Message, Theme, Renderer> for Delegate<'_, Message, G> {
    fn tag(&self) -> tree::Tag {
        tree::Tag::of::<Turned>()
    }

    fn state(&self) -> tree::State {
        tree::State::new(Turned::default())
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
        if self.gate.moves(event) {
            let Turned(turned) = tree.state.downcast_mut();
            *turned = !*turned;
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
        let Turned(turned) = *tree.state.downcast_ref();
        let seen = self.gate.seen(layout.bounds(), *viewport, turned);
        self.content.as_widget().draw(inner, renderer, theme, style, layout, cursor, &seen);
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
