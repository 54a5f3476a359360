//! A table of a lesson.

use iced::alignment::Horizontal;
use iced::widget::{Column, Row, column, container, row, rule};
use iced::{Element, Fill, Length, Padding};

use super::{flow, plain};
use crate::app::page::{Message, Page};
use crate::app::theme::{self, UNIT, size};
use crate::lesson::{Alignment, Span};

/// So many letters of a cell stay on one line, and so wide is a letter, in pixels.
const TOGETHER: u16 = 12;
const LETTER: f32 = 7.5;

/// Under this width of the page, long cells take less of it.
const NARROW: f32 = 420.0;

/// Columns from which on the gaps between them are narrow.
const MANY: usize = 5;

/// Rows under a header, columns as wide as their cells ask for, where there is room for them. A header
/// asks for its longest word alone: it may take two lines where a figure may not.
pub fn table(
    alignments: &[Alignment],
    header: &[Vec<Span>],
    rows: &[Vec<Vec<Span>>],
    page: Page<'_>,
) -> Element<'static, Message> {
    // On a narrow page running text gives way to short cells.
    let most = if page.width < NARROW { 18 } else { 40 };
    let portions: Vec<u16> = (0..header.len())
        .map(|place| {
            let cells = rows.iter().filter_map(|row| row.get(place));
            let cell = cells.map(|cell| plain(cell).chars().count()).max().unwrap_or(1);
            let words = header.get(place).map(|cell| plain(cell)).unwrap_or_default();
            let word = words.split(' ').map(|word| word.chars().count()).max().unwrap_or(1);
            cell.max(word).clamp(8, most) as u16
        })
        .collect();
    let gap = if header.len() < MANY { 2.0 * UNIT } else { UNIT };
    if !fits(&portions, gap, page.width) {
        return stacked(header, rows, page);
    }
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

/// Each row by itself: its first cell as a title, then each other cell beside its header.
fn stacked(
    header: &[Vec<Span>],
    rows: &[Vec<Vec<Span>>],
    page: Page<'_>,
) -> Element<'static, Message> {
    let row = |cells: &Vec<Vec<Span>>| -> Element<'static, Message> {
        let title = cells.first().map(|cell| flow(cell, size::LABEL, page));
        let others = header.iter().zip(cells).skip(1).map(|(head, cell)| {
            row![
                container(flow(head, size::SMALL, page)).width(Length::FillPortion(2)),
                container(flow(cell, size::LABEL, page)).width(Length::FillPortion(3)),
            ]
            .spacing(UNIT)
            .into()
        });
        column![title, Column::with_children(others).spacing(2).padding(Padding::ZERO.left(UNIT))]
            .spacing(UNIT / 2.0)
            .padding([UNIT, 0.0])
            .into()
    };
    let mut body = Column::new().width(Fill);
    for cells in rows {
        body = body.push(row(cells)).push(rule::horizontal(1).style(theme::hairline));
    }
    body.into()
}

/// Whether columns of so many letters stand side by side in a width without breaking a figure from
/// its unit.
fn fits(letters: &[u16], gap: f32, width: f32) -> bool {
    let letters_in_all: u16 = letters.iter().map(|letters| (*letters).min(TOGETHER)).sum();
    let gaps = gap * letters.len().saturating_sub(1) as f32 + 2.0 * UNIT;
    f32::from(letters_in_all) * LETTER + gaps <= width
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_that_is_too_wide_is_told() {
        // A material, its density, stiffness and strength; then a symbol, its meaning and its unit.
        let (four, three) = ([17, 10, 8, 8], [8, 40, 8]);
        let (telephone, page) = (328.0, 600.0);
        assert!(fits(&four, 16.0, page) && !fits(&four, 16.0, telephone));
        assert!(fits(&three, 16.0, page) && fits(&three, 16.0, telephone));
        assert!(!fits(&three, 16.0, 200.0));
    }
}
