//! A picture on the clipboard, as dots. Text goes there through the window; a picture needs more.

use std::sync::{Mutex, PoisonError};

use arboard::{Clipboard, Error, ImageData};

use crate::plot::save::{Figure, SaveError};

/// Who pastes a picture is handed it by this program, which keeps the clipboard for that.
static HELD: Mutex<Option<Clipboard>> = Mutex::new(None);

/// Why a picture cannot be put there.
#[derive(Debug, thiserror::Error)]
pub enum CannotCopy {
    /// It cannot be turned into dots.
    #[error(transparent)]
    Dots(#[from] SaveError),
    /// There is no clipboard, or it takes no pictures.
    #[error(transparent)]
    Clipboard(#[from] Error),
}

/// Puts a picture on the clipboard.
///
/// # Errors
/// It cannot be drawn, or there is no clipboard for pictures.
pub fn put(figure: &Figure) -> Result<(), CannotCopy> {
    let dots = figure.dots()?;
    let (width, height) = (dots.width() as usize, dots.height() as usize);
    let plain = dots.pixels().iter().map(|dot| dot.demultiply());
    let bytes = plain.flat_map(|dot| [dot.red(), dot.green(), dot.blue(), dot.alpha()]);
    let image = ImageData { width, height, bytes: bytes.collect() };
    let mut held = HELD.lock().unwrap_or_else(PoisonError::into_inner);
    let clipboard = match held.take() {
        Some(clipboard) => clipboard,
        None => Clipboard::new()?,
    };
    Ok(held.insert(clipboard).set_image(image)?)
}

/// Hands what is there to the system's own clipboard manager, where there is one: the program ends.
pub fn hand_over() {
    drop(HELD.lock().unwrap_or_else(PoisonError::into_inner).take());
}
