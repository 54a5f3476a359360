//! The numbers to watch while parts are changed.

use iced::widget::{Row, column, row, text};
use iced::{Center, Element, Fill, Length};

use crate::app::page::{Message, Page};
use crate::app::theme::{self, BOLD, UNIT, size};
use crate::app::widget::symbol::capitalised;
use crate::quantity::{AnyId, Entry, catalogue};

/// The numbers, each with what it was before the change.
pub fn view<'a>(ids: &[AnyId], page: Page<'a>) -> Element<'a, Message> {
    let numbers =
        ids.iter().filter_map(|id| catalogue::find(id.name())).map(|entry| number(entry, page));
    Row::with_children(numbers).spacing(3.0 * UNIT).width(Fill).wrap().vertical_spacing(UNIT).into()
}

fn number<'a>(entry: &'static Entry, page: Page<'a>) -> Element<'a, Message> {
    let shown = |si: f64| page.settings.units.show(entry, si).to_string();
    let now = page.desk.outcome.values.si(entry.id).map_or_else(|| "not known".to_owned(), shown);
    // Held open while nothing has changed, so that nothing jumps.
    let was = page
        .desk
        .before()
        .values
        .si(entry.id)
        .map(shown)
        .filter(|was| page.desk.revision() > 0 && *was != now)
        .map_or_else(String::new, |was| format!("was {was}"));
    column![
        text(capitalised(entry.label)).size(size::SMALL).style(theme::soft),
        row![
            text(now).size(size::HEADING).font(BOLD),
            text(was).size(size::SMALL).style(theme::soft),
        ]
        .spacing(UNIT)
        .align_y(Center),
    ]
    .width(Length::Fixed(250.0))
    .into()
}
