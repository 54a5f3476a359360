//! A slider that takes the focus and moves by the arrow keys, for looking along something.

use iced::advanced::widget::operation::Focusable;
use iced::advanced::widget::{Id, Operation, Tree, tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, renderer};
use iced::keyboard::{self, key::Named};
use iced::widget::slider;
use iced::{Element, Event, Length, Rectangle, Renderer, Size, Theme, touch};

use super::pressable::ring;
use crate::app::theme;

/// A step by an arrow key, as a part of the whole; ten of them with Shift.
const STEP: f64 = 0.01;

/// A slider over 0 to 1.
pub struct Scrub<'a, Message> {
    id: Id,
    at: f64,
    slider: Element<'a, Message>,
    on_move: Box<dyn Fn(f64) -> Message + 'a>,
}

/// A slider at a part of the whole, 0 to 1.
pub fn scrub<'a, Message: Clone + 'a>(
    id: impl Into<Id>,
    at: f64,
    on_move: impl Fn(f64) -> Message + Clone + 'a,
) -> Scrub<'a, Message> {
    let slider = slider(0.0..=1.0, at, on_move.clone()).step(0.001).style(theme::slide).into();
    Scrub { id: id.into(), at, slider, on_move: Box::new(on_move) }
}

#[derive(Debug, Default)]
struct Focus(bool);

impl Focusable for Focus {
    fn is_focused(&self) -> bool {
        self.0
    }
    fn focus(&mut self) {
        self.0 = true;
    }
    fn unfocus(&mut self) {
        self.0 = false;
    }
}

impl<Message> Scrub<'_, Message> {
    /// Where a key moves it, if it is one that does.
    fn moved(&self, key: &keyboard::Key, coarse: bool) -> Option<f64> {
        let step = if coarse { 10.0 * STEP } else { STEP };
        let to = match key {
            keyboard::Key::Named(Named::ArrowLeft | Named::ArrowDown) => self.at - step,
            keyboard::Key::Named(Named::ArrowRight | Named::ArrowUp) => self.at + step,
            keyboard::Key::Named(Named::Home) => 0.0,
            keyboard::Key::Named(Named::End) => 1.0,
            _ => return None,
        };
        Some(to.clamp(0.0, 1.0))
    }
}

impl<Message> Widget<Message, Theme, Renderer> for Scrub<'_, Message> {
    fn tag(&self) -> tree::Tag {
        tree::Tag::of::<Focus>()
    }

    fn state(&self) -> tree::State {
        tree::State::new(Focus::default())
    }

    fn children(&self) -> Vec<Tree> {
        vec![Tree::new(&self.slider)]
    }

    fn diff(&self, tree: &mut Tree) {
        tree.diff_children(std::slice::from_ref(&self.slider));
    }

    fn size(&self) -> Size<Length> {
        self.slider.as_widget().size()
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        self.slider.as_widget_mut().layout(&mut tree.children[0], renderer, limits)
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        _renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        operation.container(Some(&self.id), layout.bounds());
        operation.focusable(Some(&self.id), layout.bounds(), tree.state.downcast_mut::<Focus>());
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
        let focus = tree.state.downcast_mut::<Focus>();
        match event {
            Event::Mouse(mouse::Event::ButtonPressed(_))
            | Event::Touch(touch::Event::FingerPressed { .. }) => {
                focus.0 = cursor.is_over(layout.bounds());
            }
            Event::Keyboard(keyboard::Event::KeyPressed { key, modifiers, .. })
                if focus.0 && !modifiers.command() && !modifiers.alt() =>
            {
                if let Some(to) = self.moved(key, modifiers.shift()) {
                    shell.publish((self.on_move)(to));
                    shell.capture_event();
                    return;
                }
            }
            _ => {}
        }
        self.slider.as_widget_mut().update(
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
        if tree.state.downcast_ref::<Focus>().0 {
            ring(renderer, theme, layout.bounds(), 4.0);
        }
        self.slider.as_widget().draw(
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
        self.slider.as_widget().mouse_interaction(
            &tree.children[0],
            layout,
            cursor,
            viewport,
            renderer,
        )
    }
}

impl<'a, Message: 'a> From<Scrub<'a, Message>> for Element<'a, Message> {
    fn from(scrub: Scrub<'a, Message>) -> Self {
        Element::new(scrub)
    }
}
