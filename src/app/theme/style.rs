//! Named styles: what a thing is, not how it looks, is what a screen asks for.

use iced::widget::{
    container, progress_bar, rule, scrollable, slider, svg, text, text_editor, text_input,
};
use iced::{Background, Border, Color, Theme, border};

use super::{Ink, ink};

fn ground(color: Color) -> container::Style {
    container::Style { background: Some(Background::Color(color)), ..Default::default() }
}

fn boxed(theme: &Theme, pick: fn(&Ink) -> (Color, Color)) -> container::Style {
    let (background, edge) = pick(ink(theme));
    container::Style {
        border: border::rounded(6).width(1).color(edge),
        text_color: Some(ink(theme).text),
        ..ground(background)
    }
}

/// The page itself. Its paper is the ground of the window, and is not painted again.
pub fn page(theme: &Theme) -> container::Style {
    container::Style { text_color: Some(ink(theme).text), ..Default::default() }
}

/// A panel beside the page.
pub fn panel(theme: &Theme) -> container::Style {
    container::Style { text_color: Some(ink(theme).text), ..ground(ink(theme).panel) }
}

/// A block in the reading column.
pub fn block(theme: &Theme) -> container::Style {
    boxed(theme, |ink| (ink.panel, ink.line))
}

/// A screen with nothing on it.
pub fn blank(_theme: &Theme) -> container::Style {
    ground(Color::BLACK)
}

/// A bar that counts hands, or sheets.
pub fn tally(theme: &Theme) -> progress_bar::Style {
    let ink = ink(theme);
    progress_bar::Style {
        background: Background::Color(ink.line),
        bar: Background::Color(ink.yours),
        border: border::rounded(2),
    }
}

/// A caution.
pub fn caution(theme: &Theme) -> container::Style {
    boxed(theme, |ink| (ink.caution_wash, ink.caution))
}

/// A note that is not a caution.
pub fn note(theme: &Theme) -> container::Style {
    boxed(theme, |ink| (ink.wash, ink.line))
}

/// A bar that stands for a share of the reader's build.
pub fn share(theme: &Theme) -> container::Style {
    container::Style { border: border::rounded(2), ..ground(ink(theme).yours) }
}

/// Secondary text.
pub fn soft(theme: &Theme) -> text::Style {
    text::Style { color: Some(ink(theme).soft) }
}

/// Text of what can be changed, and of links.
pub fn accent(theme: &Theme) -> text::Style {
    text::Style { color: Some(ink(theme).accent) }
}

/// Text of a caution or an error.
pub fn warning(theme: &Theme) -> text::Style {
    text::Style { color: Some(ink(theme).caution) }
}

/// A hairline.
pub fn hairline(theme: &Theme) -> rule::Style {
    rule::Style {
        color: ink(theme).line,
        radius: 0.0.into(),
        fill_mode: rule::FillMode::Full,
        snap: true,
    }
}

/// A field that can be typed in.
pub fn field(theme: &Theme, status: text_input::Status) -> text_input::Style {
    let ink = ink(theme);
    let (width, color) = match status {
        text_input::Status::Focused { .. } => (2.0, ink.accent),
        text_input::Status::Hovered => (1.0, ink.accent),
        text_input::Status::Active | text_input::Status::Disabled => (1.0, ink.edge),
    };
    text_input::Style {
        background: Background::Color(ink.field),
        border: Border { color, width, radius: 4.0.into() },
        icon: ink.soft,
        placeholder: ink.soft,
        value: ink.text,
        selection: ink.wash,
    }
}

/// A field of several lines.
pub fn editor(theme: &Theme, status: text_editor::Status) -> text_editor::Style {
    let ink = ink(theme);
    let (width, color) = match status {
        text_editor::Status::Focused { .. } => (2.0, ink.accent),
        text_editor::Status::Hovered => (1.0, ink.accent),
        text_editor::Status::Active | text_editor::Status::Disabled => (1.0, ink.edge),
    };
    text_editor::Style {
        background: Background::Color(ink.field),
        border: Border { color, width, radius: 4.0.into() },
        placeholder: ink.soft,
        value: ink.text,
        selection: ink.wash,
    }
}

/// A field whose text is not a number yet.
pub fn field_wrong(theme: &Theme, status: text_input::Status) -> text_input::Style {
    let mut style = field(theme, status);
    style.border.color = ink(theme).caution;
    style.border.width = 2.0;
    style
}

/// A slider.
pub fn slide(theme: &Theme, status: slider::Status) -> slider::Style {
    let ink = ink(theme);
    let handle = match status {
        slider::Status::Active => ink.accent,
        slider::Status::Hovered | slider::Status::Dragged => ink.text,
    };
    slider::Style {
        rail: slider::Rail {
            backgrounds: (Background::Color(ink.accent), Background::Color(ink.edge)),
            width: 3.0,
            border: border::rounded(2),
        },
        handle: slider::Handle {
            shape: slider::HandleShape::Circle { radius: 8.0 },
            background: Background::Color(handle),
            border_width: 2.0,
            border_color: ink.panel,
        },
    }
}

/// A picture or formula drawn in the ink of the page.
pub fn drawn(theme: &Theme, _status: svg::Status) -> svg::Style {
    svg::Style { color: Some(ink(theme).text) }
}

/// The scroll bar of a page: narrow, beside what it moves.
pub fn bar() -> scrollable::Direction {
    let bar = scrollable::Scrollbar::new().width(6).scroller_width(6).margin(2);
    scrollable::Direction::Vertical(bar)
}

/// The scroll bar of a page.
pub fn scroll(theme: &Theme, status: scrollable::Status) -> scrollable::Style {
    let mut style = scrollable::default(theme, status);
    for rail in [&mut style.vertical_rail, &mut style.horizontal_rail] {
        rail.background = Some(Background::Color(Color::TRANSPARENT));
        rail.scroller.background = Background::Color(ink(theme).edge);
        rail.scroller.border = border::rounded(4);
    }
    style
}
