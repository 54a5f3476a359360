//! A plot as a table.

use iced::widget::{Column, Row, column, container, scrollable, text};
use iced::{Element, Fill, Length};

use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::plot::Table;

/// The least width of a column, in pixels.
const COLUMN: f32 = 104.0;

/// The rows of a plot; columns that find no room side by side can be scrolled to.
pub(in crate::app::block) fn rows<'a, Message: 'a>(
    table: Table,
    width: f32,
) -> Element<'a, Message> {
    let columns = table.head.len() as f32;
    let wide = columns * (COLUMN + UNIT) > width;
    let column_width = if wide { Length::Fixed(COLUMN) } else { Fill };
    let cells = move |cells: Vec<String>, bold: bool| -> Element<'a, Message> {
        let font = if bold { SEMIBOLD } else { theme::REGULAR };
        let cell = |cell| text(cell).size(size::LABEL).font(font).width(column_width).into();
        Row::with_children(cells.into_iter().map(cell)).spacing(UNIT).into()
    };
    let head = cells(table.head, true);
    let rows = table.rows.into_iter().map(|row| cells(row, false));
    let all = column![head, Column::with_children(rows).spacing(2)].spacing(4);
    if !wide {
        return all.into();
    }
    let bar = scrollable::Scrollbar::new();
    scrollable(container(all).padding(iced::Padding::ZERO.bottom(1.5 * UNIT)))
        .direction(scrollable::Direction::Horizontal(bar))
        .style(theme::scroll)
        .into()
}
