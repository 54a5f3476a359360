//! A table being read.

use std::ops::Range;

use pulldown_cmark::Alignment as Column;

use crate::lesson::document::{Alignment, Block, BlockKind, Span};
use crate::lesson::inline::{self, Inline, Text};
use crate::lesson::place::{Fault, Report};

/// A table being read.
pub(super) struct Table {
    line: usize,
    alignments: Vec<Alignment>,
    rows: Vec<Vec<Vec<Span>>>,
    row: Vec<Vec<Span>>,
    cell: Option<Inline>,
    cell_end: usize,
}

impl Table {
    /// An empty table that starts at an offset of the text.
    pub(super) fn new(columns: Vec<Column>, line: usize, start: usize) -> Self {
        Self {
            line,
            alignments: columns.into_iter().map(alignment).collect(),
            rows: Vec::new(),
            row: Vec::new(),
            cell: None,
            cell_end: start,
        }
    }

    /// The cell being read.
    pub(super) fn cell(&mut self) -> Option<&mut Inline> {
        self.cell.as_mut()
    }

    pub(super) fn start_cell(&mut self) {
        self.cell = Some(Inline::default());
    }

    pub(super) fn end_cell(&mut self, end: usize) {
        self.row.push(self.cell.take().unwrap_or_default().into_spans());
        self.cell_end = end;
    }

    /// Ends a row; cells beyond the header's, which Markdown drops, join the last one.
    pub(super) fn end_row(&mut self, at: &Range<usize>, from: Text, report: &mut Report) {
        let mut row = std::mem::take(&mut self.row);
        let rest = from.text.get(self.cell_end..at.end).unwrap_or_default();
        let rest = rest.trim_matches(|c: char| c == '|' || c.is_whitespace());
        if !rest.is_empty() {
            let fault = Fault::new("the row has more cells than the header", "as many cells");
            report.add(from.origin.file(at.start), fault);
            if let Some(last) = row.last_mut() {
                last.push(inline::plain(format!(" {rest}")));
            }
        }
        self.rows.push(row);
    }

    pub(super) fn into_block(self) -> Block {
        let mut rows = self.rows.into_iter();
        let header = rows.next().unwrap_or_default();
        let kind = BlockKind::Table { alignments: self.alignments, header, rows: rows.collect() };
        Block { line: self.line, kind }
    }
}

fn alignment(column: Column) -> Alignment {
    match column {
        Column::None => Alignment::Unset,
        Column::Left => Alignment::Left,
        Column::Center => Alignment::Centre,
        Column::Right => Alignment::Right,
    }
}
