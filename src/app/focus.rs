//! Moving the focus by key, and keeping what has it in view.

use iced::advanced::widget::operation::{Focusable, Outcome, Scrollable, scrollable};
use iced::advanced::widget::{Id, Operation, operate};
use iced::widget::operation;
use iced::{Rectangle, Task, Vector};

/// Room kept above and below what has the focus.
const ROOM: f32 = 48.0;

/// Gives the focus to the next control in reading order and brings it into view.
pub fn next<T: Send + 'static>() -> Task<T> {
    operation::focus_next().chain(reveal())
}

/// Gives the focus to the previous control in reading order and brings it into view.
pub fn previous<T: Send + 'static>() -> Task<T> {
    operation::focus_previous().chain(reveal())
}

/// Gives the focus to the first control of a page.
pub fn first_in<T: Send + 'static>(page: &'static str) -> Task<T> {
    operate(FocusFirst { page: Id::new(page), content: None, done: false }).chain(reveal())
}

/// Gives the focus to the first control of that name and brings it into view; if there is none, the
/// focus stays where it is.
pub fn on<T: Send + 'static>(id: String) -> Task<T> {
    operate(Find { id: Id::from(id), found: false })
        .then(|id| operate(FocusOne { id, done: false }))
        .chain(reveal())
}

struct Find {
    id: Id,
    found: bool,
}

impl Operation<Id> for Find {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<Id>)) {
        operate(self);
    }

    fn focusable(&mut self, id: Option<&Id>, _bounds: Rectangle, _state: &mut dyn Focusable) {
        self.found |= id == Some(&self.id);
    }

    fn finish(&self) -> Outcome<Id> {
        if self.found { Outcome::Some(self.id.clone()) } else { Outcome::None }
    }
}

struct FocusOne {
    id: Id,
    done: bool,
}

impl<T> Operation<T> for FocusOne {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<T>)) {
        operate(self);
    }

    fn focusable(&mut self, id: Option<&Id>, _bounds: Rectangle, state: &mut dyn Focusable) {
        if id == Some(&self.id) && !self.done {
            state.focus();
            self.done = true;
        } else {
            state.unfocus();
        }
    }
}

struct FocusFirst {
    page: Id,
    content: Option<Rectangle>,
    done: bool,
}

impl<T> Operation<T> for FocusFirst {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<T>)) {
        operate(self);
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        _bounds: Rectangle,
        content: Rectangle,
        _translation: Vector,
        _state: &mut dyn Scrollable,
    ) {
        if id == Some(&self.page) {
            self.content = Some(content);
        }
    }

    fn focusable(&mut self, _id: Option<&Id>, bounds: Rectangle, state: &mut dyn Focusable) {
        let inside = self.content.is_some_and(|content| content.contains(bounds.center()));
        if inside && !self.done {
            state.focus();
            self.done = true;
        } else {
            state.unfocus();
        }
    }
}

/// Scrolls the page that holds the focused control until the control is in view.
pub fn reveal<T: Send + 'static>() -> Task<T> {
    operate(FindFocused::default())
        .then(|(page, offset)| operate(scrollable::scroll_to(page, offset)))
}

#[derive(Default)]
struct FindFocused {
    page: Option<Page>,
    found: Option<(Page, Rectangle)>,
}

#[derive(Clone)]
struct Page {
    id: Id,
    bounds: Rectangle,
    content: Rectangle,
    translation: Vector,
}

impl Operation<(Id, scrollable::AbsoluteOffset<Option<f32>>)> for FindFocused {
    fn traverse(
        &mut self,
        operate: &mut dyn FnMut(&mut dyn Operation<(Id, scrollable::AbsoluteOffset<Option<f32>>)>),
    ) {
        let outer = self.page.clone();
        operate(self);
        self.page = outer;
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        bounds: Rectangle,
        content: Rectangle,
        translation: Vector,
        _state: &mut dyn Scrollable,
    ) {
        self.page = id.map(|id| Page { id: id.clone(), bounds, content, translation });
    }

    fn focusable(&mut self, _id: Option<&Id>, bounds: Rectangle, state: &mut dyn Focusable) {
        if state.is_focused()
            && let Some(page) = &self.page
            && page.content.contains(bounds.center())
        {
            self.found = Some((page.clone(), bounds));
        }
    }

    fn finish(&self) -> Outcome<(Id, scrollable::AbsoluteOffset<Option<f32>>)> {
        let Some((page, bounds)) = &self.found else { return Outcome::None };
        let top = bounds.y - page.bounds.y - page.translation.y;
        let bottom = top + bounds.height;
        let y = if top < ROOM {
            page.translation.y + top - ROOM
        } else if bottom > page.bounds.height - ROOM {
            page.translation.y + bottom + ROOM - page.bounds.height
        } else {
            return Outcome::None;
        };
        let offset = scrollable::AbsoluteOffset { x: None, y: Some(y.max(0.0)) };
        Outcome::Some((page.id.clone(), offset))
    }
}
