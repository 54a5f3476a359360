//! Writing one entry into the text of a build file, every other byte left as it is.
//!
//! Each function takes a whole text with its document and gives the changed text. The document only
//! says where things are; the text itself is never printed anew.

mod layout;
mod parts;

use toml_edit::{InlineTable, Item, Table, TableLike, Value};

use super::edit::EditRefused;
use super::parsed::Parsed;
pub(super) use layout::splice;
use layout::{after_line, headings, line_start};
pub(super) use parts::{
    add_part, copy_part, move_part, part_length, part_value, put_in_part, remove_part, unplace_part,
};

/// The order of tables in a file: topics as on the build sheet, then parts, then the trial mass.
const ORDER: [&str; 7] =
    ["machine", "running-gear", "ground", "pressure", "impact", "parts", "trial-mass"];

/// Where an entry stands or goes: at the top of the file, or in a table of it.
pub(super) type Under<'a> = Option<&'a str>;

/// The text of a build file and the document it was parsed to.
#[derive(Clone, Copy)]
pub(super) struct Written<'a> {
    /// The text, without byte order mark.
    pub text: &'a str,
    /// Where things stand in it.
    pub document: &'a Table,
}

/// A piece of text as TOML writes it, on one line whatever is in it.
pub(super) fn quoted(text: &str) -> String {
    // JSON escapes as TOML does, but lets DEL stand.
    serde_json::Value::from(text).to_string().replace('\u{7f}', "\\u007F")
}

/// Three pieces of text as a TOML list.
pub(super) fn listed(texts: &[String; 3]) -> String {
    let quoted: Vec<String> = texts.iter().map(|text| quoted(text)).collect();
    format!("[{}]", quoted.join(", "))
}

/// The value of an entry; none when there is no such entry.
pub(super) fn value<'a>(
    document: &'a Table,
    under: Under<'_>,
    key: &str,
) -> Result<Option<&'a Value>, EditRefused> {
    let table: Option<&dyn TableLike> = match under {
        None => Some(document),
        Some(name) => {
            let item = document.get(name);
            item.map(|item| item.as_table_like().ok_or_else(|| odd(name))).transpose()?
        }
    };
    value_in(table, key)
}

fn value_in<'a>(
    table: Option<&'a dyn TableLike>,
    key: &str,
) -> Result<Option<&'a Value>, EditRefused> {
    let item = table.and_then(|table| table.get(key));
    item.map(|item| item.as_value().ok_or_else(|| odd(key))).transpose()
}

/// Adds one entry that is not there yet, `literal` being TOML.
pub(super) fn put(
    Written { text, document }: Written<'_>,
    under: Under<'_>,
    key: &str,
    literal: &str,
) -> Result<String, EditRefused> {
    let Some(table) = under else {
        return Ok(put_in(text, document, key, literal, ""));
    };
    match document.get(table) {
        None => Ok(new_table(text, document, table, key, literal)),
        Some(Item::Table(found)) if found.is_implicit() && !found.is_dotted() => {
            Ok(new_table(text, document, table, key, literal))
        }
        Some(Item::Table(found)) if found.is_dotted() => {
            Ok(put_in(text, found, key, literal, &format!("{table}.")))
        }
        Some(Item::Table(found)) => Ok(put_in(text, found, key, literal, "")),
        Some(Item::Value(Value::InlineTable(found))) => put_inline(text, found, key, literal),
        Some(_) => Err(odd(table)),
    }
}

/// Takes one entry out; its line goes, comments above it stay.
pub(super) fn take_out(
    Written { text, document }: Written<'_>,
    under: Under<'_>,
    key: &str,
) -> Result<String, EditRefused> {
    let table: &dyn TableLike = match under {
        None => document,
        Some(table) => {
            document.get(table).and_then(Item::as_table_like).ok_or_else(|| odd(table))?
        }
    };
    let inline = under.is_some_and(|name| document.get(name).is_some_and(Item::is_inline_table));
    take_out_of(text, table, inline, key)
}

fn take_out_of(
    text: &str,
    table: &dyn TableLike,
    inline: bool,
    key: &str,
) -> Result<String, EditRefused> {
    let Some((name, Item::Value(value))) = table.get_key_value(key) else {
        return Err(odd(key));
    };
    let (Some(start), Some(end)) = (name.span(), value.span()) else { return Err(odd(key)) };
    let range = if inline {
        layout::item_with_comma(text, start.start..end.end)
    } else {
        line_start(text, start.start)..after_line(text, end.end)
    };
    Ok(splice(text, range, ""))
}

/// Takes a table out, with its heading and the comments right above it.
pub(super) fn take_table_out(written: Written<'_>, table: &str) -> Result<String, EditRefused> {
    let Written { text, document } = written;
    match document.get(table) {
        Some(Item::Table(found)) if !found.is_dotted() => {
            let start = found.span().ok_or_else(|| odd(table))?.start;
            Ok(layout::without_block(text, &headings(document), start))
        }
        Some(Item::Value(_)) => take_out(written, None, table),
        Some(Item::Table(found)) => {
            let keys: Vec<String> = found.iter().map(|(key, _)| key.to_owned()).collect();
            keys.iter().try_fold(text.to_owned(), |text, key| {
                let parsed = parse(&text)?;
                take_out(Written { text: &text, document: parsed.document() }, Some(table), key)
            })
        }
        _ => Err(odd(table)),
    }
}

/// Adds an entry to a table with a heading or of dotted names.
fn put_in(text: &str, table: &Table, key: &str, literal: &str, prefix: &str) -> String {
    let last = table.get_values().iter().filter_map(|(_, value)| value.span()).map(|s| s.end).max();
    let heading = table.span().map(|span| span.end).filter(|end| *end > 0);
    let at = last.or(heading).map_or(0, |end| after_line(text, end));
    layout::insert_lines(text, at, &format!("{prefix}{key} = {literal}"))
}

/// Adds an entry to a table in braces.
fn put_inline(
    text: &str,
    table: &InlineTable,
    key: &str,
    literal: &str,
) -> Result<String, EditRefused> {
    let last = table.get_values().iter().filter_map(|(_, value)| value.span()).map(|s| s.end).max();
    let braces = table.span().ok_or_else(|| odd(key))?;
    Ok(match last {
        Some(end) => splice(text, end..end, &format!(", {key} = {literal}")),
        None => splice(text, braces, &format!("{{ {key} = {literal} }}")),
    })
}

/// Adds a table with one entry, in its place in the order of tables.
fn new_table(text: &str, document: &Table, table: &str, key: &str, literal: &str) -> String {
    new_block(text, document, table, &format!("[{table}]\n{key} = {literal}"))
}

/// Adds a heading and its lines before the first table that comes later in the order.
fn new_block(text: &str, document: &Table, table: &str, lines: &str) -> String {
    let rank = |name: &str| ORDER.iter().position(|known| *known == name);
    let own = rank(table);
    let later = headings(document)
        .into_iter()
        .find(|heading| heading.depth == 1 && rank(&heading.name) > own);
    match later {
        Some(heading) => {
            layout::insert_lines(text, layout::lead(text, heading.start), &format!("{lines}\n"))
        }
        None => layout::append_block(text, lines),
    }
}

/// A text whose sheet was read before, parsed.
pub(super) fn parse(text: &str) -> Result<Parsed, EditRefused> {
    Parsed::new(text).map_err(|error| {
        EditRefused::Layout(format!("The file cannot be read: {}.", error.message()))
    })
}

/// Why an entry of the file cannot be changed.
pub(super) fn odd(name: &str) -> EditRefused {
    EditRefused::Layout(format!(
        "`{name}` is written in the file in a way that cannot be changed from here. \
         Change it in a text editor, then open the build again."
    ))
}
