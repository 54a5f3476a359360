//! Reading a curve by key: a cursor that goes from point to point.

use iced::keyboard::key::Named;
use iced::keyboard::{Key, Modifiers};

use super::{Act, State};
use crate::app::widget::field;
use crate::app::widget::stepping::Step;
use crate::plot::{Role, stops};
use crate::quantity::AnyId;

/// Points that a page key goes past.
const PAGE: isize = 10;

/// What is done to the reading cursor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Read {
    /// On by so many points, back when below zero.
    By(isize),
    /// To the first point.
    First,
    /// To the last point.
    Last,
    /// It is put away.
    Away,
}

/// What a key does while a curve has the focus: across reads, up and down move the dot as in a
/// number. `reads` says whether the cursor is out, `dot` the place and the quantity of the dot.
pub(super) fn act(
    key: &Key,
    modifiers: Modifiers,
    reads: bool,
    dot: impl FnOnce() -> (String, AnyId),
) -> Option<Act> {
    let Key::Named(named) = key else { return None };
    let by = |points: isize| Some(Act::Read(Read::By(points)));
    let far = if modifiers.shift() { PAGE } else { 1 };
    match named {
        Named::ArrowLeft => by(-far),
        Named::ArrowRight => by(far),
        Named::PageDown => by(-PAGE),
        Named::PageUp => by(PAGE),
        Named::Home => Some(Act::Read(Read::First)),
        Named::End => Some(Act::Read(Read::Last)),
        Named::Escape if reads => Some(Act::Read(Read::Away)),
        Named::ArrowUp | Named::ArrowDown => {
            let (place, id) = dot();
            let step = Step { up: *named == Named::ArrowUp, coarse: modifiers.shift() };
            Some(Act::Field(field::Event { place, id, act: field::Act::Stepped(step) }))
        }
        _ => None,
    }
}

impl State {
    /// Moves the reading cursor; it comes out at the reader's own build.
    pub fn read(&mut self, read: Read) {
        let Some(drawn) = &self.drawn else { return };
        let (spec, unit) = (&drawn.spec, drawn.spec.x.unit);
        let stops = stops(spec);
        let own = spec.dots.iter().find(|dot| dot.role == Role::Yours).map(|dot| dot.x);
        let at = self.reading.map(|si| unit.from_si(si));
        let start = at.or(own).unwrap_or_else(|| spec.x.value(0.5));
        let nearest = stops
            .iter()
            .enumerate()
            .min_by(|(_, a), (_, b)| (*a - start).abs().total_cmp(&(*b - start).abs()))
            .map_or(0, |(place, _)| place);
        let last = stops.len().saturating_sub(1);
        let place = match read {
            Read::By(points) if at.is_some() => nearest.saturating_add_signed(points).min(last),
            Read::By(_) => nearest,
            Read::First => 0,
            Read::Last => last,
            Read::Away => {
                self.reading = None;
                return;
            }
        };
        self.reading = stops.get(place).map(|x| unit.to_si(*x));
    }
}
