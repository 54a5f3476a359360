//! Rows of text in aligned columns.

use std::io::{self, Write};

/// Writes rows with every column as wide as its longest cell; the last runs free.
pub(super) fn write<const N: usize>(out: &mut dyn Write, rows: &[[String; N]]) -> io::Result<()> {
    let mut widths = [0; N];
    for row in rows {
        for (width, cell) in widths.iter_mut().zip(row) {
            *width = (*width).max(cell.chars().count());
        }
    }
    for row in rows {
        let mut line = String::new();
        for (width, cell) in widths.iter().zip(row) {
            line.push_str(&format!("{cell:<width$}  "));
        }
        writeln!(out, "{}", line.trim_end())?;
    }
    Ok(())
}
