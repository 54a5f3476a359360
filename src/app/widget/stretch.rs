//! A stretch of a long list: as many lines as are taken in at a time, and the way to the others.
//! A list of thousands then costs a frame no more than a short one.

use std::ops::Range;

use iced::widget::{Row, text};
use iced::{Center, Element, Fill};

use super::pressable::{Kind, pressable};
use crate::app::theme::{UNIT, size};

/// Where in a long list the reader is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stretch {
    /// The first line that is to be shown.
    first: usize,
    /// How many lines are shown.
    length: usize,
}

impl Stretch {
    /// The start of a list shown `length` lines at a time; one at least.
    pub fn new(length: usize) -> Self {
        Self { first: 0, length: length.max(1) }
    }

    /// Moves to the stretch that a line stands in.
    pub fn go(&mut self, line: usize) {
        self.first = line - line % self.length;
    }

    /// The lines shown of so many: the last stretch of them where the list has grown shorter.
    pub fn of(&self, count: usize) -> Range<usize> {
        let mut shown = *self;
        shown.go(self.first.min(count.saturating_sub(1)));
        shown.first..count.min(shown.first + self.length)
    }

    /// Which lines of how many are shown, and the way to the others; nothing while all are.
    pub fn way<'a, Message: Clone + 'a>(
        &self,
        what: &str,
        count: usize,
        go: fn(usize) -> Message,
    ) -> Option<Element<'a, Message>> {
        if count <= self.length {
            return None;
        }
        let shown = self.of(count);
        let to = |word: &'a str, line: Option<usize>| {
            pressable(Kind::Plain, text(word).size(size::LABEL)).on_press_maybe(line.map(go)).into()
        };
        let before = shown.start.checked_sub(self.length);
        let after = (shown.end < count).then_some(shown.end);
        let told = format!("{what} {} to {} of {count}", shown.start + 1, shown.end);
        let all = [
            text(told).size(size::LABEL).into(),
            to("First", before.map(|_| 0)),
            to("Earlier", before),
            to("Later", after),
            to("Last", after.map(|_| count - 1)),
        ];
        let all = Row::with_children(all).spacing(UNIT).align_y(Center).width(Fill);
        Some(all.wrap().vertical_spacing(UNIT / 2.0).into())
    }
}

#[cfg(test)]
mod tests {
    use super::Stretch;

    #[test]
    fn it_covers_the_list_and_ends_with_it() {
        let mut stretch = Stretch::new(40);
        assert_eq!((stretch.of(0), stretch.of(40), stretch.of(95)), (0..0, 0..40, 0..40));
        stretch.go(94);
        assert_eq!(stretch.of(95), 80..95);
        assert_eq!(stretch.of(81), 80..81);
        assert_eq!(stretch.of(80), 40..80, "the list has grown shorter");
        assert_eq!(stretch.of(3), 0..3);
        stretch.go(40);
        assert_eq!(stretch.of(95), 40..80);
    }
}
