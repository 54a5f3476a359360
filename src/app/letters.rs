//! The letters of every page, put beside those of the system.

use std::sync::{Arc, Once, PoisonError};

use iced::advanced::graphics::text::cosmic_text::fontdb::Source;
use iced::advanced::graphics::text::font_system;

use crate::plot::FONTS;

/// Loads the family, once; who comes meanwhile waits for it. The system's own letters are looked
/// through as well, for signs that the family lacks, and that takes as long as opening a window.
pub fn load() {
    static LOADED: Once = Once::new();
    LOADED.call_once(|| {
        let mut system = font_system().write().unwrap_or_else(PoisonError::into_inner);
        for font in FONTS {
            // From where it stands in the program, without a copy.
            system.raw().db_mut().load_font_source(Source::Binary(Arc::new(font)));
        }
    });
}
