//! The curve: a found number against a given one, your build as a dot that can be dragged.

use std::collections::HashMap;

use iced::Element;
use iced::widget::text;

use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::settings::Settings;
use crate::app::widget::field;
use crate::lesson::{Block, Curve};

/// What is drawn of a curve.
#[derive(Debug, Default)]
pub struct State {}

/// What is done in a curve.
#[derive(Debug, Clone)]
pub enum Act {
    /// The number along the foot is being changed.
    Field(field::Event),
}

/// Draws anew the curves that have changed.
pub fn refresh(_: &mut HashMap<usize, State>, _: &[Block], _: &Desk, _: &Settings) {}

/// A curve that starts on `line` of its lesson.
pub fn view<'a>(_curve: &'a Curve, _line: usize, _page: Page<'a>) -> Element<'a, Message> {
    text("curve").into()
}
