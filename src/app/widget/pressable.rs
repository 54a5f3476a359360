//! Whatever can be pressed, by pointer or by key: it takes focus in turn, shows it, and answers
//! Enter and Space. iced's own buttons do not take focus, so every control that is pressed is one
//! of these.

use iced::advanced::widget::operation::Focusable;
use iced::advanced::widget::{Id, Operation, Tree, tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, overlay, renderer};
use iced::keyboard::{self, key};
use iced::{
    Background, Border, Color, Element, Event, Length, Padding, Rectangle, Renderer, Shadow, Size,
    Theme, Vector, border, touch, window,
};

use crate::app::theme::ink;

/// What a pressable is for, which decides how it looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// The main thing to do here.
    Main,
    /// Something else to do here.
    Plain,
    /// A line of a list; `true` while it is the chosen one.
    Line(bool),
    /// A word in running text.
    Word,
}

/// Content that can be pressed.
pub struct Pressable<'a, Message> {
    id: Option<Id>,
    content: Element<'a, Message>,
    on_press: Option<Message>,
    kind: Kind,
    width: Length,
    padding: Padding,
}

/// Makes content pressable.
pub fn pressable<'a, Message>(
    kind: Kind,
    content: impl Into<Element<'a, Message>>,
) -> Pressable<'a, Message> {
    let content = content.into();
    let width = content.as_widget().size_hint().width.fluid();
    let padding = match kind {
        Kind::Main | Kind::Plain => Padding::from([6, 12]),
        Kind::Line(_) => Padding::from([6, 10]),
        Kind::Word => Padding::ZERO,
    };
    Pressable { id: None, content, on_press: None, kind, width, padding }
}

impl<Message> Pressable<'_, Message> {
    /// The message when pressed; without one it is greyed and skipped.
    pub fn on_press(mut self, message: Message) -> Self {
        self.on_press = Some(message);
        self
    }

    /// The message when pressed, if it can be pressed now.
    pub fn on_press_maybe(mut self, message: Option<Message>) -> Self {
        self.on_press = message;
        self
    }

    /// A name, to give it focus by.
    pub fn id(mut self, id: impl Into<Id>) -> Self {
        self.id = Some(id.into());
        self
    }

    /// Its width.
    pub fn width(mut self, width: impl Into<Length>) -> Self {
        self.width = width.into();
        self
    }

    /// The space around its content.
    pub fn padding(mut self, padding: impl Into<Padding>) -> Self {
        self.padding = padding.into();
        self
    }
}

#[derive(Debug, Default)]
struct State {
    focused: bool,
    pressed: bool,
    hovered: bool,
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

/// The ring about whatever has the focus.
pub(super) fn ring(renderer: &mut Renderer, theme: &Theme, bounds: Rectangle, radius: f32) {
    use iced::advanced::Renderer as _;
    renderer.fill_quad(
        renderer::Quad {
            bounds: bounds.expand(2.0),
            border: border::rounded(radius + 2.0).width(2).color(ink(theme).accent),
            shadow: Shadow::default(),
            snap: true,
        },
        Background::Color(Color::TRANSPARENT),
    );
}

struct Dress {
    background: Color,
    edge: Color,
    text: Color,
}

impl<Message> Pressable<'_, Message> {
    fn dress(&self, theme: &Theme, state: &State, inherited: Color) -> Dress {
        let ink = ink(theme);
        let clear = Color::TRANSPARENT;
        if self.on_press.is_none() {
            return Dress { background: clear, edge: clear, text: ink.soft };
        }
        let active = state.hovered || state.pressed;
        match self.kind {
            Kind::Main => Dress {
                background: if active { ink.text } else { ink.accent },
                edge: clear,
                text: if active { ink.paper } else { ink.on_accent },
            },
            Kind::Plain => Dress {
                background: if active { ink.wash } else { ink.paper },
                edge: ink.edge,
                text: ink.text,
            },
            Kind::Line(chosen) => Dress {
                background: if active || chosen { ink.wash } else { clear },
                edge: clear,
                text: inherited,
            },
            Kind::Word => Dress {
                background: if active { ink.wash } else { clear },
                edge: clear,
                text: ink.accent,
            },
        }
    }
}

impl<Message: Clone> Widget<Message, Theme, Renderer> for Pressable<'_, Message> {
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
        Size { width: self.width, height: Length::Shrink }
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        layout::padded(limits, self.width, Length::Shrink, self.padding, |limits| {
            self.content.as_widget_mut().layout(&mut tree.children[0], renderer, limits)
        })
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        let bounds = layout.bounds();
        operation.container(self.id.as_ref(), bounds);
        let state = tree.state.downcast_mut::<State>();
        // What has just become of no use keeps the focus, so that the next one is found from there.
        if self.on_press.is_some() || state.focused {
            operation.focusable(self.id.as_ref(), bounds, state);
        }
        if let Some(inner) = layout.children().next() {
            operation.traverse(&mut |operation| {
                self.content.as_widget_mut().operate(
                    &mut tree.children[0],
                    inner,
                    renderer,
                    operation,
                );
            });
        }
    }

    fn update(
        &mut self,
        tree: &mut Tree,
        event: &Event,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        _renderer: &Renderer,
        _clipboard: &mut dyn Clipboard,
        shell: &mut Shell<'_, Message>,
        _viewport: &Rectangle,
    ) {
        let state = tree.state.downcast_mut::<State>();
        let Some(on_press) = &self.on_press else {
            if let Event::Mouse(mouse::Event::ButtonPressed(_))
            | Event::Touch(touch::Event::FingerPressed { .. }) = event
            {
                state.focused = false;
            }
            return;
        };
        let over = cursor.is_over(layout.bounds());
        match event {
            Event::Mouse(mouse::Event::ButtonPressed(mouse::Button::Left))
            | Event::Touch(touch::Event::FingerPressed { .. }) => {
                // A press anywhere else takes the focus away, as it does from a text field.
                state.focused = false;
                if over {
                    state.pressed = true;
                    shell.capture_event();
                }
            }
            Event::Mouse(mouse::Event::ButtonReleased(mouse::Button::Left))
            | Event::Touch(touch::Event::FingerLifted { .. })
                if state.pressed =>
            {
                state.pressed = false;
                if over {
                    shell.publish(on_press.clone());
                }
                shell.capture_event();
            }
            Event::Keyboard(keyboard::Event::KeyPressed { key, modifiers, .. })
                if state.focused && !modifiers.command() && !modifiers.alt() =>
            {
                if matches!(key, keyboard::Key::Named(key::Named::Enter | key::Named::Space)) {
                    shell.publish(on_press.clone());
                    shell.capture_event();
                }
            }
            Event::Touch(touch::Event::FingerLost { .. }) => state.pressed = false,
            Event::Window(window::Event::RedrawRequested(_)) => {
                state.hovered = over;
            }
            _ => {}
        }
        if over != state.hovered {
            shell.request_redraw();
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
        use iced::advanced::Renderer as _;
        let bounds = layout.bounds();
        let state = tree.state.downcast_ref::<State>();
        let dress = self.dress(theme, state, style.text_color);
        let radius = if self.kind == Kind::Word { 2.0 } else { 5.0 };
        let bare = [dress.background, dress.edge] == [Color::TRANSPARENT; 2];
        if !bare {
            renderer.fill_quad(
                renderer::Quad {
                    bounds,
                    border: Border {
                        color: dress.edge,
                        width: if dress.edge == Color::TRANSPARENT { 0.0 } else { 1.0 },
                        radius: radius.into(),
                    },
                    shadow: Shadow::default(),
                    snap: true,
                },
                Background::Color(dress.background),
            );
        }
        if state.focused {
            ring(renderer, theme, bounds, radius);
        }
        if self.kind == Kind::Word && self.on_press.is_some() {
            let line = Rectangle { y: bounds.y + bounds.height - 3.0, height: 1.0, ..bounds };
            renderer.fill_quad(
                renderer::Quad { bounds: line, snap: true, ..Default::default() },
                Background::Color(dress.text),
            );
        }
        if let Some(inner) = layout.children().next() {
            self.content.as_widget().draw(
                &tree.children[0],
                renderer,
                theme,
                &renderer::Style { text_color: dress.text },
                inner,
                cursor,
                viewport,
            );
        }
    }

    fn mouse_interaction(
        &self,
        _tree: &Tree,
        layout: Layout<'_>,
        cursor: mouse::Cursor,
        _viewport: &Rectangle,
        _renderer: &Renderer,
    ) -> mouse::Interaction {
        if self.on_press.is_some() && cursor.is_over(layout.bounds()) {
            mouse::Interaction::Pointer
        } else {
            mouse::Interaction::default()
        }
    }

    fn overlay<'b>(
        &'b mut self,
        tree: &'b mut Tree,
        layout: Layout<'b>,
        renderer: &Renderer,
        viewport: &Rectangle,
        translation: Vector,
    ) -> Option<overlay::Element<'b, Message, Theme, Renderer>> {
        let inner = layout.children().next()?;
        self.content.as_widget_mut().overlay(
            &mut tree.children[0],
            inner,
            renderer,
            viewport,
            translation,
        )
    }
}

impl<'a, Message: Clone + 'a> From<Pressable<'a, Message>> for Element<'a, Message> {
    fn from(pressable: Pressable<'a, Message>) -> Self {
        Element::new(pressable)
    }
}
