//! Lines, headings and blocks of a build file.

use std::ops::Range;

use toml_edit::{Item, Table};

/// A heading, `[machine]` or `[[parts]]`.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Heading {
    /// The first name in it.
    pub name: String,
    /// How many names are in it.
    pub depth: usize,
    /// The byte of its bracket.
    pub start: usize,
}

/// Every heading of a document, from top to bottom.
pub(super) fn headings(document: &Table) -> Vec<Heading> {
    let mut found = Vec::new();
    for (key, item) in document.iter() {
        collect(key, 1, item, &mut found);
    }
    found.sort_by_key(|heading| heading.start);
    found
}

fn collect(name: &str, depth: usize, item: &Item, found: &mut Vec<Heading>) {
    let tables: Vec<&Table> = match item {
        Item::Table(table) => vec![table],
        Item::ArrayOfTables(tables) => tables.iter().collect(),
        Item::None | Item::Value(_) => return,
    };
    for table in tables {
        if let Some(span) = table.span().filter(|_| !table.is_implicit() && !table.is_dotted()) {
            found.push(Heading { name: name.to_owned(), depth, start: span.start });
        }
        for (_, item) in table.iter() {
            collect(name, depth + 1, item, found);
        }
    }
}

/// How this text ends its lines.
pub(super) fn newline(text: &str) -> &'static str {
    if text.contains("\r\n") { "\r\n" } else { "\n" }
}

/// The text with a range of it replaced.
pub(in crate::sheet) fn splice(text: &str, range: Range<usize>, by: &str) -> String {
    let (before, after) = (text.get(..range.start), text.get(range.end..));
    [before.unwrap_or(text), by, after.unwrap_or_default()].concat()
}

/// Where the line holding a byte starts.
pub(super) fn line_start(text: &str, byte: usize) -> usize {
    text[..byte].rfind('\n').map_or(0, |newline| newline + 1)
}

/// Where the line holding a byte ends, its newline included.
pub(super) fn after_line(text: &str, byte: usize) -> usize {
    text[byte..].find('\n').map_or(text.len(), |newline| byte + newline + 1)
}

/// An item of a table in braces with the comma that ties it to its neighbour.
pub(super) fn item_with_comma(text: &str, item: Range<usize>) -> Range<usize> {
    let after = text[item.end..].trim_start();
    if let Some(rest) = after.strip_prefix(',') {
        return item.start..text.len() - rest.trim_start().len();
    }
    let before = text[..item.start].trim_end();
    match before.strip_suffix(',') {
        Some(rest) => rest.trim_end().len()..item.end,
        None => item,
    }
}

/// Where what belongs to a heading starts: the comments right above it, else its own line.
pub(super) fn lead(text: &str, heading: usize) -> usize {
    let mut start = line_start(text, heading);
    while start > 0 {
        let above = line_start(text, start - 1);
        if !text[above..start].trim_start().starts_with('#') {
            break;
        }
        start = above;
    }
    start
}

/// A heading with all that belongs to it, without the empty lines after it; tables inside it
/// belong to it.
pub(super) fn block(text: &str, headings: &[Heading], start: usize) -> Range<usize> {
    let inside = headings.iter().find(|heading| heading.start == start).map_or(1, |own| own.depth);
    let next = headings
        .iter()
        .find(|heading| heading.start > start && heading.depth <= inside)
        .map_or(text.len(), |heading| lead(text, heading.start));
    let first = lead(text, start);
    first..first + text[first..next].trim_end().len()
}

/// The text without a block and without the gap that would be left.
pub(super) fn without_block(text: &str, headings: &[Heading], start: usize) -> String {
    let block = block(text, headings, start);
    let gap = text[block.end..].len() - text[block.end..].trim_start().len();
    if block.end + gap < text.len() {
        // Indentation of what follows stays.
        let next = line_start(text, block.end + gap);
        return splice(text, block.start..next.max(block.end), "");
    }
    let before = text[..block.start].trim_end().len();
    splice(text, before..block.end, "")
}

/// The text with whole lines put in at the start of a line.
pub(super) fn insert_lines(text: &str, at: usize, lines: &str) -> String {
    let newline = newline(text);
    let lines = lines.replace('\n', newline);
    let open = at > 0 && !text[..at].ends_with('\n');
    let inserted = if open { format!("{newline}{lines}") } else { format!("{lines}{newline}") };
    splice(text, at..at, &inserted)
}

/// The text with a block put at its end, an empty line before it.
pub(super) fn append_block(text: &str, lines: &str) -> String {
    let end = text.trim_end().len();
    insert_block(text, end, lines)
}

/// The text with a block put in after the end of another, an empty line between them.
pub(super) fn insert_block(text: &str, after: usize, lines: &str) -> String {
    let newline = newline(text);
    let lines = lines.replace("\r\n", "\n").replace('\n', newline);
    if after == 0 {
        return splice(text, 0..0, &format!("{lines}{newline}"));
    }
    // Blanks at the end of a line stay with it.
    let blanks = |rest: &str| rest.len() - rest.trim_start_matches([' ', '\t']).len();
    let after = after + text.get(after..).map_or(0, blanks);
    let end = if text.len() == after { newline } else { "" };
    splice(text, after..after, &format!("{newline}{newline}{lines}{end}"))
}
