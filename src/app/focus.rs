//! Moving the focus by key, and keeping what has it in view.

use iced::advanced::widget::operation::{Focusable, Outcome, Scrollable, focusable, scrollable};
use iced::advanced::widget::{Id, Operation, operate};
use iced::widget::operation;
use iced::{Rectangle, Task, Vector};

/// Room kept above and below what has the focus.
const ROOM: f32 = 48.0;

/// Gives the focus to the next control in reading order, after the last to the first, and brings
/// it into view.
pub fn next<T: Send + 'static>() -> Task<T> {
    operate(focusable::count())
        .then(|count| {
            // iced lets go of the focus after the last one, so one more step is the first.
            let last = count.focused.is_some_and(|focused| focused + 1 == count.total);
            let again = if last { operation::focus_next() } else { Task::none() };
            operation::focus_next().chain(again)
        })
        .chain(reveal())
}

/// Gives the focus to the previous control in reading order, before the first to the last, and
/// brings it into view.
pub fn previous<T: Send + 'static>() -> Task<T> {
    operate(focusable::count())
        .then(|count| {
            let first = count.focused == Some(0);
            let again = if first { operation::focus_previous() } else { Task::none() };
            operation::focus_previous().chain(again)
        })
        .chain(reveal())
}

/// Gives the focus to the first control of a page.
pub fn first_in<T: Send + 'static>(page: &'static str) -> Task<T> {
    nth_in(page, 0)
}

/// Which control of a page has the focus, counted from zero; nothing if none of the page has it.
pub fn place_in(page: &'static str) -> Task<usize> {
    operate(FindPlace { page: Id::new(page), content: None, before: 0, found: None })
}

/// Gives the focus to the control of that place on a page, counted from zero, and brings it into
/// view.
pub fn nth_in<T: Send + 'static>(page: &'static str, place: usize) -> Task<T> {
    operate(FocusNth { page: Id::new(page), content: None, left: Some(place) }).chain(reveal())
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

struct FindPlace {
    page: Id,
    content: Option<Rectangle>,
    before: usize,
    found: Option<usize>,
}

impl Operation<usize> for FindPlace {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<usize>)) {
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
        if self.content.is_some_and(|content| content.contains(bounds.center())) {
            if state.is_focused() {
                self.found = Some(self.before);
            }
            self.before += 1;
        }
    }

    fn finish(&self) -> Outcome<usize> {
        self.found.map_or(Outcome::None, Outcome::Some)
    }
}

struct FocusNth {
    page: Id,
    content: Option<Rectangle>,
    /// How many controls of the page are still to be passed; nothing once it is done.
    left: Option<usize>,
}

impl<T> Operation<T> for FocusNth {
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
        match self.left {
            Some(0) if inside => {
                state.focus();
                self.left = None;
                return;
            }
            Some(left) if inside => self.left = Some(left - 1),
            _ => {}
        }
        state.unfocus();
    }
}

/// Scrolls whatever the focused control stands in until the control is in view.
pub fn reveal<T: Send + 'static>() -> Task<T> {
    operate(FindFocused::default()).then(|moves| {
        Task::batch(
            moves.into_iter().map(|(page, offset)| operate(scrollable::scroll_to(page, offset))),
        )
    })
}

/// A page to move, and how far down or right.
type Move = (Id, scrollable::AbsoluteOffset<Option<f32>>);

#[derive(Default)]
struct FindFocused {
    /// The pages around what is looked at, the outermost first.
    pages: Vec<Page>,
    found: Option<(Vec<Page>, Rectangle)>,
}

#[derive(Clone)]
struct Page {
    id: Id,
    bounds: Rectangle,
    content: Rectangle,
    translation: Vector,
}

impl Page {
    /// How to move the page so that `bounds` of its content are in view, if they are not.
    fn towards(&self, bounds: Rectangle) -> Option<Move> {
        let (page, moved) = (self.bounds, self.translation);
        let x = along(bounds.x - page.x, bounds.width, page.width, moved.x);
        let y = along(bounds.y - page.y, bounds.height, page.height, moved.y);
        (x.is_some() || y.is_some()).then(|| (self.id.clone(), scrollable::AbsoluteOffset { x, y }))
    }
}

/// Where to scroll to along one axis so that what is `from` there and `long` is in `view`.
fn along(from: f32, long: f32, view: f32, scrolled: f32) -> Option<f32> {
    let to = if from - scrolled < ROOM {
        from - ROOM
    } else if from + long - scrolled > view - ROOM {
        from + long + ROOM - view
    } else {
        return None;
    };
    Some(to.max(0.0))
}

impl Operation<Vec<Move>> for FindFocused {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<Vec<Move>>)) {
        let outer = self.pages.len();
        operate(self);
        self.pages.truncate(outer);
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        bounds: Rectangle,
        content: Rectangle,
        translation: Vector,
        _state: &mut dyn Scrollable,
    ) {
        if let Some(id) = id {
            self.pages.push(Page { id: id.clone(), bounds, content, translation });
        }
    }

    fn focusable(&mut self, _id: Option<&Id>, bounds: Rectangle, state: &mut dyn Focusable) {
        if state.is_focused() {
            let around = self.pages.iter().filter(|page| page.content.contains(bounds.center()));
            self.found = Some((around.cloned().collect(), bounds));
        }
    }

    fn finish(&self) -> Outcome<Vec<Move>> {
        let Some((pages, bounds)) = &self.found else { return Outcome::None };
        Outcome::Some(pages.iter().filter_map(|page| page.towards(*bounds)).collect())
    }
}
