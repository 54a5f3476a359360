//! Rows of text in aligned columns.

use std::io::{self, Write};

/// Writes rows with every column as wide as its longest cell; the last runs free.
pub(super) fn write(out: &mut dyn Write, rows: &[impl AsRef<[String]>]) -> io::Result<()> {
    let columns = rows.iter().map(|row| row.as_ref().len()).max().unwrap_or_default();
    let mut widths = vec![0; columns];
    for row in rows {
        for (width, cell) in widths.iter_mut().zip(row.as_ref()) {
            *width = (*width).max(cell.chars().count());
        }
    }
    for row in rows {
        let mut line = String::new();
        for (width, cell) in widths.iter().zip(row.as_ref()) {
            line.push_str(&format!("{cell:<width$}  "));
        }
        writeln!(out, "{}", line.trim_end())?;
    }
    Ok(())
}
