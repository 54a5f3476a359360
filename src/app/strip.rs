//! What else moved: what the last change did everywhere else, whichever lesson it belongs to.

use iced::widget::{Row, column, container, row, scrollable, text};
use iced::{Element, Fill};

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::symbol;
use crate::quantity::catalogue;
use crate::study::Moved;

/// The height of the strip: it keeps it while numbers come and go.
pub const HEIGHT: f32 = 84.0;

/// The strip, on the foot of every screen.
pub fn view<'a, Message: 'a>(desk: &'a Desk, settings: &'a Settings) -> Element<'a, Message> {
    let inside: Element<'a, Message> = if desk.moved.is_empty() {
        let words = if desk.revision() == 0 {
            "Change any number, and what it moves in every lesson shows here."
        } else {
            "The last change moved no headline number."
        };
        text(words).size(size::LABEL).style(theme::soft).into()
    } else {
        let each = desk.moved.iter().filter_map(|moved| one(moved, settings));
        scrollable(Row::with_children(each).spacing(3.0 * UNIT))
            .horizontal()
            .style(theme::scroll)
            .width(Fill)
            .into()
    };
    container(
        row![text("What else\nmoved").size(size::SMALL).font(SEMIBOLD).width(72), inside]
            .spacing(2.0 * UNIT)
            .align_y(iced::Center),
    )
    .id("strip")
    .style(theme::panel)
    .padding([UNIT, 2.0 * UNIT])
    .height(HEIGHT)
    .width(Fill)
    .align_y(iced::Center)
    .into()
}

fn one<'a, Message: 'a>(moved: &Moved, settings: &'a Settings) -> Option<Element<'a, Message>> {
    let entry = catalogue::find(moved.id.name())?;
    let shown = |si: Option<f64>| {
        si.map_or_else(|| "not known".to_owned(), |si| settings.units.show(entry, si).to_string())
    };
    Some(
        column![
            text(symbol::capitalised(entry.label)).size(size::SMALL).style(theme::soft),
            row![
                text(format!("{} →", shown(moved.before))).size(size::LABEL),
                text(shown(moved.after)).size(size::LABEL).font(SEMIBOLD),
                text(moved.in_words()).size(size::SMALL).style(theme::soft),
            ]
            .spacing(UNIT / 2.0)
            .align_y(iced::Center),
        ]
        .spacing(2)
        .into(),
    )
}
