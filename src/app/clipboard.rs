//! A picture on the clipboard, as dots. Text goes there through the window; a picture needs more.

use std::sync::{Mutex, PoisonError};

use arboard::{Clipboard, ImageData};

use crate::plot::save::Figure;

/// Who pastes a picture is handed it by this program, which keeps the clipboard for that.
static HELD: Mutex<Option<Clipboard>> = Mutex::new(None);

/// Puts a picture on the clipboard, and tells whether it is there: it may not be drawn, and there may be
/// no clipboard, or none that takes pictures.
pub fn put(figure: &Figure) -> bool {
    let Ok(dots) = figure.dots() else { return false };
    let (width, height) = (dots.width() as usize, dots.height() as usize);
    let plain = dots.pixels().iter().map(|dot| dot.demultiply());
    let bytes = plain.flat_map(|dot| [dot.red(), dot.green(), dot.blue(), dot.alpha()]);
    let image = ImageData { width, height, bytes: bytes.collect() };
    let mut held = HELD.lock().unwrap_or_else(PoisonError::into_inner);
    let Some(clipboard) = held.take().or_else(|| Clipboard::new().ok()) else { return false };
    held.insert(clipboard).set_image(image).is_ok()
}

/// Hands what is there to the system's own clipboard manager, where there is one: the program ends.
pub fn hand_over() {
    drop(HELD.lock().unwrap_or_else(PoisonError::into_inner).take());
}
