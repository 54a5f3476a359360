//! Ways through a page: to a heading, and back to the mark of a footnote.

use iced::advanced::widget::{Id, Operation, operate, operation};
use iced::{Rectangle, Task, Vector};

use super::{Message, PAGE};
use crate::app::{document, focus};
use crate::lesson::Heading;

/// Gives the focus to the mark of a footnote and brings it into view.
pub(super) fn back_to(name: &str) -> Task<Message> {
    focus::on(document::footnote_id(name))
}

/// Scrolls the page to a heading.
pub fn to(anchor: &str) -> Task<Message> {
    operate(FindHeading { heading: Id::from(document::heading_id(anchor)), page: None, top: None })
        .then(|y| {
            let offset = operation::scrollable::AbsoluteOffset { x: None, y: Some(y) };
            operate(operation::scrollable::scroll_to(Id::new(PAGE), offset))
        })
}

/// Finds the heading that a page scrolled by `offset` stands under; says nothing if it is still `now`.
pub fn section_at(headings: &[Heading], offset: f32, now: Option<&str>) -> Task<Message> {
    let headings = headings
        .iter()
        .map(|heading| (Id::from(document::heading_id(&heading.anchor)), heading.anchor.clone()));
    let (headings, now) = (headings.collect(), now.map(str::to_owned));
    operate(FindSection { headings, offset, now, page: None, last: None }).map(Message::Stands)
}

/// A heading this near under the upper edge of the page counts as reached, in pixels.
const REACHED: f32 = 120.0;

struct FindSection {
    headings: Vec<(Id, String)>,
    offset: f32,
    now: Option<String>,
    page: Option<Rectangle>,
    last: Option<String>,
}

impl Operation<Option<String>> for FindSection {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<Option<String>>)) {
        operate(self);
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        bounds: Rectangle,
        _content: Rectangle,
        _translation: Vector,
        _state: &mut dyn operation::Scrollable,
    ) {
        if id == Some(&Id::new(PAGE)) {
            self.page = Some(bounds);
        }
    }

    fn container(&mut self, id: Option<&Id>, bounds: Rectangle) {
        let Some(page) = self.page else { return };
        let known = self.headings.iter().find(|(heading, _)| id == Some(heading));
        if let Some((_, anchor)) = known
            && bounds.y - page.y <= self.offset + REACHED
        {
            self.last = Some(anchor.clone());
        }
    }

    fn finish(&self) -> operation::Outcome<Option<String>> {
        if self.last == self.now {
            operation::Outcome::None
        } else {
            operation::Outcome::Some(self.last.clone())
        }
    }
}

struct FindHeading {
    heading: Id,
    page: Option<Rectangle>,
    top: Option<f32>,
}

impl Operation<f32> for FindHeading {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<f32>)) {
        operate(self);
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        bounds: Rectangle,
        _content: Rectangle,
        _translation: Vector,
        _state: &mut dyn operation::Scrollable,
    ) {
        if id == Some(&Id::new(PAGE)) {
            self.page = Some(bounds);
        }
    }

    fn container(&mut self, id: Option<&Id>, bounds: Rectangle) {
        if id == Some(&self.heading)
            && let Some(page) = self.page
        {
            self.top = Some((bounds.y - page.y).max(0.0));
        }
    }

    fn finish(&self) -> operation::Outcome<f32> {
        self.top.map_or(operation::Outcome::None, operation::Outcome::Some)
    }
}
