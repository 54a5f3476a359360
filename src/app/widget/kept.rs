//! Content that is made and laid out once, and kept until what it is made of changes.

use std::hash::{DefaultHasher, Hash, Hasher};

use iced::advanced::widget::{Operation, Tree, tree};
use iced::advanced::{Clipboard, Layout, Shell, Widget, layout, mouse, renderer};
use iced::{Element, Event, Fill, Length, Point, Rectangle, Renderer, Shrink, Size, Theme};

/// Content that opens nothing over the page.
struct Kept<'a, Message> {
    /// How wide the content makes itself.
    width: Length,
    /// A digest of all that the content shows and asks for.
    of: u64,
    make: Box<dyn Fn() -> Element<'static, Message> + 'a>,
}

/// What is kept from one view to the next.
struct State<Message> {
    held: Option<Held<Message>>,
}

struct Held<Message> {
    /// What it was made of; none once the reader has acted on it, which may leave it other than made.
    of: Option<u64>,
    content: Element<'static, Message>,
    /// The content laid out, and in which room.
    laid: Option<(layout::Limits, layout::Node)>,
}

/// Keeps what `make` makes, a piece as wide as its place, until `of` changes: all that it depends on.
pub fn kept<'a, Message: 'static>(
    of: impl Hash,
    make: impl Fn() -> Element<'static, Message> + 'a,
) -> Element<'a, Message> {
    Element::new(Kept { width: Fill, of: digest(of), make: Box::new(make) })
}

/// Keeps what `make` makes of a thing, and of nothing else, until the thing is another; `width` is how
/// wide that makes itself.
pub fn kept_of<'a, T: Hash + 'a, Message: 'static>(
    width: Length,
    thing: T,
    make: fn(&T) -> Element<'static, Message>,
) -> Element<'a, Message> {
    Element::new(Kept { width, of: digest(&thing), make: Box::new(move || make(&thing)) })
}

fn digest(of: impl Hash) -> u64 {
    let mut hasher = DefaultHasher::new();
    of.hash(&mut hasher);
    hasher.finish()
}

/// The content, its state, and where it stands within the place of the whole.
fn parts<'t, Message: 'static>(
    tree: &'t mut Tree,
    layout: Layout<'_>,
) -> Option<(&'t mut Element<'static, Message>, &'t mut Tree, Layout<'t>)> {
    let held = tree.state.downcast_mut::<State<Message>>().held.as_mut()?;
    let node = &held.laid.as_ref()?.1;
    let inner = Layout::with_offset(layout.position() - Point::ORIGIN, node);
    Some((&mut held.content, tree.children.first_mut()?, inner))
}

/// The same, to be looked at.
fn seen<'t, Message: 'static>(
    tree: &'t Tree,
    layout: Layout<'_>,
) -> Option<(&'t Element<'static, Message>, &'t Tree, Layout<'t>)> {
    let held = tree.state.downcast_ref::<State<Message>>().held.as_ref()?;
    let node = &held.laid.as_ref()?.1;
    let inner = Layout::with_offset(layout.position() - Point::ORIGIN, node);
    Some((&held.content, tree.children.first()?, inner))
}

impl<Message: 'static> Widget<Message, Theme, Renderer> for Kept<'_, Message> {
    fn tag(&self) -> tree::Tag {
        tree::Tag::of::<State<Message>>()
    }

    fn state(&self) -> tree::State {
        tree::State::new(State::<Message> { held: None })
    }

    fn children(&self) -> Vec<Tree> {
        vec![Tree::empty()]
    }

    // What has changed is made in `layout`, which follows.
    fn diff(&self, _tree: &mut Tree) {}

    fn size(&self) -> Size<Length> {
        Size { width: self.width, height: Shrink }
    }

    fn layout(
        &mut self,
        tree: &mut Tree,
        renderer: &Renderer,
        limits: &layout::Limits,
    ) -> layout::Node {
        let state = tree.state.downcast_mut::<State<Message>>();
        if state.held.as_ref().is_none_or(|held| held.of != Some(self.of)) {
            let content = (self.make)();
            if let Some(inner) = tree.children.first_mut() {
                inner.diff(&content);
            }
            state.held = Some(Held { of: Some(self.of), content, laid: None });
        }
        let (Some(held), Some(inner)) = (&mut state.held, tree.children.first_mut()) else {
            return layout::Node::default();
        };
        let size = match &held.laid {
            Some((room, node)) if room == limits => node.size(),
            _ => {
                let node = held.content.as_widget_mut().layout(inner, renderer, limits);
                let size = node.size();
                held.laid = Some((*limits, node));
                size
            }
        };
        layout::Node::new(size)
    }

    fn operate(
        &mut self,
        tree: &mut Tree,
        layout: Layout<'_>,
        renderer: &Renderer,
        operation: &mut dyn Operation,
    ) {
        if let Some((content, inner, layout)) = parts::<Message>(tree, layout) {
            content.as_widget_mut().operate(inner, layout, renderer, operation);
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
        let mut messages = Vec::new();
        let mut own = Shell::new(&mut messages);
        if let Some((content, inner, layout)) = parts::<Message>(tree, layout) {
            content
                .as_widget_mut()
                .update(inner, event, layout, cursor, renderer, clipboard, &mut own, viewport);
        }
        let (is_acted_on, is_moved) = (!own.is_empty(), own.is_layout_invalid());
        shell.merge(own, |message| message);
        if let Some(held) = &mut tree.state.downcast_mut::<State<Message>>().held {
            if is_acted_on {
                held.of = None;
            }
            if is_moved {
                held.laid = None;
            }
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
        if let Some((content, inner, layout)) = seen::<Message>(tree, layout) {
            content.as_widget().draw(inner, renderer, theme, style, layout, cursor, viewport);
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
        seen::<Message>(tree, layout).map_or(
            mouse::Interaction::None,
            |(content, inner, layout)| {
                content.as_widget().mouse_interaction(inner, layout, cursor, viewport, renderer)
            },
        )
    }
}
