//! A table of a lesson.

use iced::alignment::Horizontal;
use iced::widget::{Column, Row, column, container, rule};
use iced::{Element, Fill, Length};

use super::{flow, plain};
use crate::app::page::{Message, Page};
use crate::app::theme::{self, UNIT, size};
use crate::lesson::{Alignment, Span};

/// Columns from which on the gaps between them are narrow.
const MANY: usize = 5;

/// Rows under a header, columns as wide as their cells ask for. A header asks for its longest word
/// alone: it may take two lines where a figure may not.
pub fn table(
    alignments: &[Alignment],
    header: &[Vec<Span>],
    rows: &[Vec<Vec<Span>>],
    page: Page<'_>,
) -> Element<'static, Message> {
    let portions: Vec<u16> = (0..header.len())
        .map(|place| {
            let cells = rows.iter().filter_map(|row| row.get(place));
            let cell = cells.map(|cell| plain(cell).chars().count()).max().unwrap_or(1);
            let words = header.get(place).map(|cell| plain(cell)).unwrap_or_default();
            let word = words.split(' ').map(|word| word.chars().count()).max().unwrap_or(1);
            cell.max(word).clamp(8, 40) as u16
        })
        .collect();
    let gap = if header.len() < MANY { 2.0 * UNIT } else { UNIT };
    let line = |cells: &[Vec<Span>]| -> Element<'static, Message> {
        let cells = cells.iter().enumerate().map(|(place, cell)| {
            let alignment = alignments.get(place).copied().unwrap_or_default();
            container(flow(cell, size::LABEL, page))
                .width(Length::FillPortion(portions.get(place).copied().unwrap_or(1)))
                .align_x(match alignment {
                    Alignment::Right => Horizontal::Right,
                    Alignment::Centre => Horizontal::Center,
                    Alignment::Left | Alignment::Unset => Horizontal::Left,
                })
                .into()
        });
        container(Row::with_children(cells).spacing(gap).width(Fill))
            .padding([UNIT / 2.0, UNIT])
            .into()
    };
    let mut body = Column::new().width(Fill);
    for cells in rows {
        body = body.push(rule::horizontal(1).style(theme::hairline)).push(line(cells));
    }
    column![
        container(line(header)).style(theme::panel).width(Fill),
        body,
        rule::horizontal(1).style(theme::hairline),
    ]
    .width(Fill)
    .into()
}
