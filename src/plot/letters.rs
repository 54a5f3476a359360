//! The shipped letters, for pictures that look the same on every machine.

use std::sync::{Arc, LazyLock};

use usvg::fontdb::Database;

/// The family shipped in `assets/fonts`.
pub const FAMILY: &str = "IBM Plex Sans";

/// Its files: outlines in PostScript form, whose hints a renderer applies without running a program
/// of the font for each size and paragraph.
pub const FONTS: [&[u8]; 4] = [
    include_bytes!("../../assets/fonts/IBMPlexSans-Regular.otf"),
    include_bytes!("../../assets/fonts/IBMPlexSans-Italic.otf"),
    include_bytes!("../../assets/fonts/IBMPlexSans-SemiBold.otf"),
    include_bytes!("../../assets/fonts/IBMPlexSans-Bold.otf"),
];

/// The shipped family alone; any other name leads to it.
static LETTERS: LazyLock<Arc<Database>> = LazyLock::new(|| {
    let mut letters = Database::new();
    for font in FONTS {
        letters.load_font_data(font.to_vec());
    }
    letters.set_sans_serif_family(FAMILY);
    Arc::new(letters)
});

/// How a picture is read: with the shipped letters, nothing from outside it, and no picture packed
/// inside it, which could unpack to any size.
pub fn options() -> usvg::Options<'static> {
    usvg::Options {
        fontdb: LETTERS.clone(),
        font_family: FAMILY.to_owned(),
        image_href_resolver: usvg::ImageHrefResolver {
            resolve_data: Box::new(|_, _, _| None),
            resolve_string: Box::new(|_, _| None),
        },
        ..usvg::Options::default()
    }
}
