//! Formulas: TeX drawn as a picture in the ink of the page, set on the baseline of the text.

use std::collections::HashMap;
use std::sync::{LazyLock, Mutex, PoisonError};

use iced::widget::{container, svg, text};
use iced::{Element, Length};

use crate::app::theme::{self, LEADING};
use crate::plot::formula::{Formula, ROOM, formula};

/// A formula laid out once: a picture and its measures in em.
#[derive(Clone)]
struct Drawn {
    picture: svg::Handle,
    width: f32,
    height: f32,
    depth: f32,
}

/// Formulas by their TeX and whether they stand on a line of their own.
type Table = HashMap<(String, bool), Option<Drawn>>;

/// Pictures of formulas as the window holds them, emptied when there are many.
static DRAWN: LazyLock<Mutex<Table>> = LazyLock::new(|| Mutex::new(HashMap::new()));
const KEPT: usize = 512;
fn draw(tex: &str, display: bool) -> Option<Drawn> {
    let key = (tex.to_owned(), display);
    let mut table = DRAWN.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(drawn) = table.get(&key) {
        return drawn.clone();
    }
    if table.len() >= KEPT {
        table.clear();
    }
    let drawn = lay_out(tex, display);
    table.insert(key, drawn.clone());
    drawn
}

fn lay_out(tex: &str, display: bool) -> Option<Drawn> {
    let formula = formula(tex, display)?;
    let Formula { width, height, depth, .. } = *formula;
    let picture = svg::Handle::from_memory(formula.svg.clone().into_bytes());
    Some(Drawn { picture, width, height, depth })
}

/// A formula on a line of its own, `size` pixels an em; never wider than its place.
pub fn display<'a, Message: 'a>(tex: &str, size: f32) -> Element<'a, Message> {
    match draw(tex, true) {
        Some(drawn) => picture(&drawn, size),
        None => text(tex.to_owned()).size(size).into(),
    }
}

/// A formula within running text of `size` pixels, on the baseline of that text.
pub fn inline<'a, Message: 'a>(tex: &str, size: f32) -> Element<'a, Message> {
    let Some(drawn) = draw(tex, false) else {
        return text(tex.to_owned()).size(size).into();
    };
    let line = size * LEADING;
    let em = size * MATHS;
    // Where the baseline of the shipped family falls in a line of this leading.
    let baseline = (line - size * (ASCENT + DESCENT)) / 2.0 + size * ASCENT;
    let top = (baseline - (drawn.height + ROOM) * em).max(0.0);
    container(picture(&drawn, em))
        .padding(iced::Padding::ZERO.top(top))
        .height(Length::Fixed(line.max(top + (drawn.height + drawn.depth + 2.0 * ROOM) * em)))
        .into()
}

/// How much larger an em of the formulas is set, so that their letters match the text's.
const MATHS: f32 = 1.12;
/// Ascent and descent of IBM Plex Sans, in em.
const ASCENT: f32 = 1.025;
const DESCENT: f32 = 0.275;

fn picture<'a, Message: 'a>(drawn: &Drawn, size: f32) -> Element<'a, Message> {
    svg(drawn.picture.clone())
        .width(Length::Fixed(((drawn.width + 2.0 * ROOM) * size).ceil()))
        .height(Length::Fixed(((drawn.height + drawn.depth + 2.0 * ROOM) * size).ceil()))
        .style(theme::drawn)
        .into()
}
