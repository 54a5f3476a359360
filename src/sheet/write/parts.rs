//! Writing the parts list: each part is a block of lines that is put in, copied, moved or taken out.

use std::ops::Range;

use toml_edit::{ArrayOfTables, InlineTable, Item, Table, TableLike, Value};

use super::layout::{block, headings, insert_block, splice, without_block};
use super::{
    EditRefused, Written, listed, new_block, odd, put_in, put_inline, quoted, take_out_of, value_in,
};
use crate::sheet::part::Part;
use Form::{Braces, Lines};

/// Adds a part at the end of the list.
pub(in crate::sheet) fn add_part(
    Written { text, document }: Written<'_>,
    part: &Part,
) -> Result<String, EditRefused> {
    let mut lines = format!("[[parts]]\nname = {}", quoted(&part.name));
    if !part.mass.is_empty() {
        lines += &format!("\nmass = {}", quoted(&part.mass));
    }
    if let Some(at) = &part.at {
        lines += &format!("\nat = {}", listed(at));
    }
    if document.get("parts").is_none() {
        return Ok(new_block(text, document, "parts", &lines));
    }
    let last = blocks(text, document)?.pop().ok_or_else(|| odd("parts"))?;
    Ok(insert_block(text, last.end, &lines))
}

/// Puts a copy of a part right after it.
pub(in crate::sheet) fn copy_part(
    Written { text, document }: Written<'_>,
    index: usize,
) -> Result<String, EditRefused> {
    let start = start_of(document, index)?;
    let block = block(text, &headings(document), start);
    Ok(insert_block(text, block.end, &text[start..block.end]))
}

/// Takes a part out.
pub(in crate::sheet) fn remove_part(
    Written { text, document }: Written<'_>,
    index: usize,
) -> Result<String, EditRefused> {
    Ok(without_block(text, &headings(document), start_of(document, index)?))
}

/// Moves a part to another place in the list; the gaps between parts stay where they are.
pub(in crate::sheet) fn move_part(
    Written { text, document }: Written<'_>,
    from: usize,
    to: usize,
) -> Result<String, EditRefused> {
    let slots = blocks(text, document)?;
    if from >= slots.len() || to >= slots.len() {
        return Err(odd("parts"));
    }
    let mut order: Vec<usize> = (0..slots.len()).collect();
    let moved = order.remove(from);
    order.insert(to, moved);
    let moves = slots.iter().zip(order).rev();
    Ok(moves.fold(text.to_owned(), |changed, (slot, source)| {
        splice(&changed, slot.clone(), &text[slots[source].clone()])
    }))
}

/// The value of an entry of a part; none when it has no such entry.
pub(in crate::sheet) fn part_value<'a>(
    document: &'a Table,
    index: usize,
    key: &str,
) -> Result<Option<&'a Value>, EditRefused> {
    let table: Option<&dyn TableLike> = match part(document, index)? {
        Lines(table) => Some(table),
        Braces(table) => Some(table),
    };
    value_in(table, key)
}

/// One of the three lengths of a part's place.
pub(in crate::sheet) fn part_length(
    document: &Table,
    index: usize,
    axis: usize,
) -> Result<&Value, EditRefused> {
    let at = part_value(document, index, "at")?.and_then(Value::as_array);
    at.and_then(|at| at.get(axis)).ok_or_else(|| odd("at"))
}

/// Adds one entry to a part that has none of that name, `literal` being TOML.
pub(in crate::sheet) fn put_in_part(
    Written { text, document }: Written<'_>,
    index: usize,
    key: &str,
    literal: &str,
) -> Result<String, EditRefused> {
    match part(document, index)? {
        Lines(table) => Ok(put_in(text, table, key, literal, "")),
        Braces(table) => put_inline(text, table, key, literal),
    }
}

/// Takes the place of a part out.
pub(in crate::sheet) fn unplace_part(
    Written { text, document }: Written<'_>,
    index: usize,
) -> Result<String, EditRefused> {
    match part(document, index)? {
        Lines(table) => take_out_of(text, table, false, "at"),
        Braces(table) => take_out_of(text, table, true, "at"),
    }
}

/// A part as the file has it: lines below a heading, or a table in braces.
enum Form<'a> {
    Lines(&'a Table),
    Braces(&'a InlineTable),
}

fn part(document: &Table, index: usize) -> Result<Form<'_>, EditRefused> {
    match document.get("parts") {
        Some(Item::ArrayOfTables(tables)) => tables.get(index).map(Lines),
        Some(Item::Value(Value::Array(list))) => {
            list.get(index).and_then(Value::as_inline_table).map(Braces)
        }
        _ => None,
    }
    .ok_or_else(|| odd("parts"))
}

/// The lines of each part.
fn blocks(text: &str, document: &Table) -> Result<Vec<Range<usize>>, EditRefused> {
    let headings = headings(document);
    let starts = tables(document)?.iter().map(|table| table.span().map(|span| span.start));
    starts
        .map(|start| start.map(|start| block(text, &headings, start)).ok_or_else(|| odd("parts")))
        .collect()
}

fn start_of(document: &Table, index: usize) -> Result<usize, EditRefused> {
    let table = tables(document)?.get(index);
    table.and_then(|table| table.span()).map(|span| span.start).ok_or_else(|| odd("parts"))
}

fn tables(document: &Table) -> Result<&ArrayOfTables, EditRefused> {
    document.get("parts").and_then(Item::as_array_of_tables).ok_or_else(|| {
        EditRefused::Layout(
            "The parts are written as one list in brackets. Write each as lines below a heading \
             [[parts]] of its own in a text editor, then open the build again."
                .to_owned(),
        )
    })
}
