//! A slider that takes the focus and moves by the arrow keys, for looking along something.

use iced::Element;
use iced::advanced::widget::Id;
use iced::keyboard::{Key, key::Named};
use iced::widget::slider;

use super::focusing::focusing;
use crate::app::theme;

/// A step by an arrow key, as a part of the whole; ten of them with Shift.
const STEP: f64 = 0.01;

/// A slider at a part of the whole, 0 to 1.
pub fn scrub<'a, Message: Clone + 'a>(
    id: impl Into<Id>,
    at: f64,
    on_move: impl Fn(f64) -> Message + Clone + 'a,
) -> Element<'a, Message> {
    let slider = slider(0.0..=1.0, at, on_move.clone()).step(0.001).style(theme::slide);
    focusing(id, slider, move |key, modifiers| moved(at, key, modifiers.shift()).map(&on_move))
}

/// Where a key moves it, if it is one that does.
fn moved(at: f64, key: &Key, coarse: bool) -> Option<f64> {
    let step = if coarse { 10.0 * STEP } else { STEP };
    let to = match key {
        Key::Named(Named::ArrowLeft | Named::ArrowDown) => at - step,
        Key::Named(Named::ArrowRight | Named::ArrowUp) => at + step,
        Key::Named(Named::Home) => 0.0,
        Key::Named(Named::End) => 1.0,
        _ => return None,
    };
    Some(to.clamp(0.0, 1.0))
}
