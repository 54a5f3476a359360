//! The look: ink and paper by day and by night, the type scale, spacing, and the named styles.

mod style;

pub use style::*;

use iced::font::{Style as Slant, Weight};
use iced::theme::Palette;
use iced::{Color, Font, Theme, color};

use crate::plot::Role;

/// The family of all letters.
pub use crate::plot::FAMILY;

/// Running text.
pub const REGULAR: Font = Font::with_name(FAMILY);
/// Titles of blocks and small headings.
pub const SEMIBOLD: Font = Font { weight: Weight::Semibold, ..REGULAR };
/// Headings and answers.
pub const BOLD: Font = Font { weight: Weight::Bold, ..REGULAR };
/// Emphasis.
pub const ITALIC: Font = Font { style: Slant::Italic, ..REGULAR };

/// The type scale, in pixels at 100 %.
pub mod size {
    /// Notes, sources, units under a field.
    pub const SMALL: f32 = 14.0;
    /// Labels and controls.
    pub const LABEL: f32 = 15.0;
    /// Running text.
    pub const BODY: f32 = 17.0;
    /// Third-level headings, block titles.
    pub const MINOR: f32 = 19.0;
    /// Second-level headings.
    pub const HEADING: f32 = 24.0;
    /// Answers.
    pub const ANSWER: f32 = 28.0;
    /// The title of a screen.
    pub const TITLE: f32 = 34.0;
}

/// Line height of running text, as a multiple of its size.
pub const LEADING: f32 = 1.5;
/// The spacing unit.
pub const UNIT: f32 = 8.0;
/// A window narrower than this, in pixels of the layout, has no room for anything that can be had
/// elsewhere.
pub const TIGHT: f32 = 320.0;
/// The widest a column of running text gets: about 70 characters.
pub const MEASURE: f32 = 600.0;

/// The colours of one time of day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ink {
    /// The page.
    pub paper: Color,
    /// Panels and blocks on the page.
    pub panel: Color,
    /// Fields that can be typed in.
    pub field: Color,
    /// Hairlines and outlines that carry no meaning.
    pub line: Color,
    /// Outlines of controls: 3:1 against paper and panel.
    pub edge: Color,
    /// Text.
    pub text: Color,
    /// Secondary text: 4.5:1 against paper and panel.
    pub soft: Color,
    /// What can be changed, and links.
    pub accent: Color,
    /// Text on the accent.
    pub on_accent: Color,
    /// A wash of the accent, for what is chosen or hovered.
    pub wash: Color,
    /// Cautions: text and bar.
    pub caution: Color,
    /// Cautions: ground.
    pub caution_wash: Color,
    /// The reader's own build in plots and sketches.
    pub yours: Color,
    /// The first companion: vermilion.
    pub first: Color,
    /// The second companion: bluish green.
    pub second: Color,
    /// Limits in plots.
    pub limit: Color,
}

impl Ink {
    /// The colour of a build.
    pub const fn of(&self, role: Role) -> Color {
        match role {
            Role::Yours => self.yours,
            Role::First => self.first,
            Role::Second => self.second,
        }
    }
}

/// Near-black ink on warm paper.
pub const DAY: Ink = Ink {
    paper: color!(0xfbf8f1),
    panel: color!(0xf3eee2),
    field: color!(0xffffff),
    line: color!(0xd9d1bf),
    edge: color!(0x837a68),
    text: color!(0x1f1d1a),
    soft: color!(0x5c564b),
    accent: color!(0x0a665d),
    on_accent: color!(0xffffff),
    wash: color!(0xdcebe4),
    caution: color!(0x8a3f00),
    caution_wash: color!(0xfdeed9),
    yours: color!(0x0072b2),
    first: color!(0xd04f00),
    second: color!(0x007f5c),
    limit: color!(0x5c564b),
};

/// Warm light ink on near-black.
pub const NIGHT: Ink = Ink {
    paper: color!(0x171613),
    panel: color!(0x211f1b),
    field: color!(0x0f0e0c),
    line: color!(0x3d3931),
    edge: color!(0x8b8474),
    text: color!(0xede7da),
    soft: color!(0xb3ab9b),
    accent: color!(0x74c9ba),
    on_accent: color!(0x10201d),
    wash: color!(0x23362f),
    caution: color!(0xf3b765),
    caution_wash: color!(0x33270f),
    yours: color!(0x56b4e9),
    first: color!(0xf0793a),
    second: color!(0x3cc79b),
    limit: color!(0xb3ab9b),
};

/// The theme of the window for a time of day.
pub fn of(dark: bool) -> Theme {
    let (name, ink) = if dark { ("Night", NIGHT) } else { ("Day", DAY) };
    Theme::custom(
        name,
        Palette {
            background: ink.paper,
            text: ink.text,
            primary: ink.accent,
            success: ink.accent,
            warning: ink.caution,
            danger: ink.caution,
        },
    )
}

/// The colours of a theme made by [`of`].
pub fn ink(theme: &Theme) -> &'static Ink {
    if theme.palette().background == NIGHT.paper { &NIGHT } else { &DAY }
}
