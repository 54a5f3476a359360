//! Reading the TOML of a live block or a front matter, with a place for everything wrong in it.

use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::document::{Block, Span};
use super::inline;
use super::markdown;
use super::place::{Fault, Origin, Report};
use crate::quantity::catalogue;

/// A text value of a field.
pub(super) struct Text {
    /// The text.
    pub(super) value: String,
    /// The place of the value in the file.
    pub(super) at: usize,
    origin: Origin,
}

/// One table of TOML.
pub(super) struct Fields<'t> {
    /// What it is called in messages: "a calculator".
    what: &'static str,
    table: &'t DeTable<'t>,
    toml: &'t str,
    origin: &'t Origin,
    /// The place in the file to point at when something is missing.
    at: usize,
}

/// Reads `toml`, which came from `origin`; nothing if it is no TOML.
pub(super) fn read<R>(
    what: &'static str,
    (toml, origin): (&str, &Origin),
    at: usize,
    report: &mut Report,
    then: impl FnOnce(&Fields, &mut Report) -> R,
) -> Option<R> {
    let (table, errors) = DeTable::parse_recoverable(toml);
    for error in &errors {
        let offset = error.span().map_or(0, |span| span.start);
        let message = format!("this is not TOML: {}", error.message().replace('\n', ", "));
        report.add(origin.file(offset), Fault::new(message, "lines like: name = \"text\""));
    }
    if !errors.is_empty() {
        return None;
    }
    Some(then(&Fields { what, table: table.get_ref(), toml, origin, at }, report))
}

impl<'t> Fields<'t> {
    /// The place of the table in the file.
    pub(super) fn at(&self) -> usize {
        self.at
    }

    /// Reports every field that is not one of these.
    pub(super) fn allow(&self, names: &[&str], report: &mut Report) {
        for key in self.table.keys() {
            let name: &str = key.get_ref();
            if !names.contains(&name) {
                let fault = Fault::new(
                    format!("{} has no field \"{name}\"", self.what),
                    format!("one of {}", names.join(", ")),
                );
                let nearest = catalogue::nearest_of(name, names.iter().copied());
                report.add(self.origin.file(key.span().start), fault.nearest(nearest));
            }
        }
    }

    /// Whether the field is there at all.
    pub(super) fn has(&self, name: &str) -> bool {
        self.table.contains_key(name)
    }

    /// The place of a field's value, or of the table if there is no such field.
    pub(super) fn place(&self, name: &str) -> usize {
        self.table.get(name).map_or(self.at, |value| self.start(value))
    }

    /// The place of an item in the list that a field holds, or of the field's value.
    pub(super) fn place_of(&self, name: &str, item: &str) -> usize {
        let list = self.table.get(name).and_then(|value| value.get_ref().as_array());
        let found =
            list.and_then(|list| list.iter().find(|one| one.get_ref().as_str() == Some(item)));
        found.map_or_else(|| self.place(name), |one| self.start(one))
    }

    /// The names of all fields there are.
    pub(super) fn names(&self) -> impl Iterator<Item = &str> {
        self.table.keys().map(|key| -> &str { key.get_ref() })
    }

    /// The place of a field's name, or of the table if there is no such field.
    pub(super) fn place_of_name(&self, name: &str) -> usize {
        let key = self.table.keys().find(|key| -> bool {
            let key: &str = key.get_ref();
            key == name
        });
        key.map_or(self.at, |key| self.origin.file(key.span().start))
    }

    /// A text; nothing if the field is missing.
    pub(super) fn text(&self, name: &str, report: &mut Report) -> Option<Text> {
        self.table.get(name).and_then(|value| self.as_text(name, value, report))
    }

    /// A text that must be there and say something.
    pub(super) fn required(&self, name: &str, report: &mut Report) -> Option<Text> {
        if !self.has(name) {
            self.missing(name, "a text in quotes", report);
            return None;
        }
        let text = self.text(name, report)?;
        if text.value.trim().is_empty() {
            report.add(text.at, Fault::new(format!("{name} is empty"), "some words"));
            return None;
        }
        Some(text)
    }

    /// A list of texts; empty if the field is missing.
    pub(super) fn texts(&self, name: &str, report: &mut Report) -> Vec<Text> {
        let Some(value) = self.table.get(name) else { return Vec::new() };
        let Some(list) = value.get_ref().as_array() else {
            self.wrong(name, value, "a list in square brackets: [\"...\", \"...\"]", report);
            return Vec::new();
        };
        list.iter().filter_map(|item| self.as_text(name, item, report)).collect()
    }

    /// A text, or a list of texts; empty if the field is missing.
    pub(super) fn text_or_texts(&self, name: &str, report: &mut Report) -> Vec<Text> {
        let is_list = |value: &Spanned<DeValue>| value.get_ref().is_array();
        if self.table.get(name).is_some_and(is_list) {
            return self.texts(name, report);
        }
        self.text(name, report).into_iter().collect()
    }

    /// Yes or no; nothing if the field is missing.
    pub(super) fn truth(&self, name: &str, report: &mut Report) -> Option<bool> {
        let value = self.table.get(name)?;
        let truth = value.get_ref().as_bool();
        if truth.is_none() {
            self.wrong(name, value, "true or false", report);
        }
        truth
    }

    /// A plain number; nothing if the field is missing.
    pub(super) fn number(&self, name: &str, report: &mut Report) -> Option<f64> {
        let value = self.table.get(name)?;
        let number = match value.get_ref() {
            DeValue::Float(number) => number.as_str().parse::<f64>().ok(),
            DeValue::Integer(number) => whole(number.as_str(), number.radix()).map(|n| n as f64),
            _ => None,
        };
        let number = number.filter(|number| number.is_finite());
        if number.is_none() {
            self.wrong(name, value, "a plain number", report);
        }
        number
    }

    /// A whole number; nothing if the field is missing.
    pub(super) fn integer(&self, name: &str, report: &mut Report) -> Option<i64> {
        let value = self.table.get(name)?;
        let number = value.get_ref().as_integer().and_then(|n| whole(n.as_str(), n.radix()));
        if number.is_none() {
            self.wrong(name, value, "a whole number", report);
        }
        number
    }

    /// The tables written `[[name]]`; empty if there are none.
    pub(super) fn tables(
        &self,
        what: &'static str,
        name: &str,
        report: &mut Report,
    ) -> Vec<Fields<'t>> {
        let Some(value) = self.table.get(name) else { return Vec::new() };
        let Some(list) = value.get_ref().as_array() else {
            self.wrong(name, value, &format!("tables that each start with [[{name}]]"), report);
            return Vec::new();
        };
        list.iter().filter_map(|item| self.as_table(what, name, item, report)).collect()
    }

    /// The table written `[name]`; nothing if there is none.
    pub(super) fn table(
        &self,
        what: &'static str,
        name: &str,
        report: &mut Report,
    ) -> Option<Fields<'t>> {
        self.as_table(what, name, self.table.get(name)?, report)
    }

    /// Reports a field that is not there.
    pub(super) fn missing(&self, name: &str, expected: &str, report: &mut Report) {
        report.add(
            self.at,
            Fault::new(format!("{} needs the field \"{name}\"", self.what), expected),
        );
    }

    fn as_text(
        &self,
        name: &str,
        value: &Spanned<DeValue<'t>>,
        report: &mut Report,
    ) -> Option<Text> {
        let Some(text) = value.get_ref().as_str() else {
            self.wrong(name, value, "a text in quotes", report);
            return None;
        };
        let origin = match verbatim(self.toml, value.span(), text) {
            Some(start) => self.origin.part(start..start + text.len()),
            None => Origin::blurred(self.start(value)),
        };
        Some(Text { value: text.to_owned(), at: self.start(value), origin })
    }

    fn as_table(
        &self,
        what: &'static str,
        name: &str,
        value: &'t Spanned<DeValue<'t>>,
        report: &mut Report,
    ) -> Option<Fields<'t>> {
        let Some(table) = value.get_ref().as_table() else {
            self.wrong(name, value, "a table of fields", report);
            return None;
        };
        let at = self.start(value);
        Some(Fields { what, table, toml: self.toml, origin: self.origin, at })
    }

    fn wrong(&self, name: &str, value: &Spanned<DeValue>, expected: &str, report: &mut Report) {
        let found = match value.get_ref() {
            DeValue::String(_) => "a text",
            DeValue::Integer(_) | DeValue::Float(_) => "a plain number",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a date",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a table",
        };
        report.add(self.start(value), Fault::new(format!("{name} is {found}"), expected));
    }

    fn start(&self, value: &Spanned<DeValue>) -> usize {
        self.origin.file(value.span().start)
    }
}

impl Text {
    /// The text read as Markdown that stays within a line.
    pub(super) fn spans(&self, report: &mut Report) -> Vec<Span> {
        inline::read(&self.value, &self.origin, report)
    }

    /// The text read as Markdown of several blocks.
    pub(super) fn blocks(&self, report: &mut Report) -> Vec<Block> {
        markdown::read_inside(&self.value, &self.origin, report)
    }
}

fn whole(digits: &str, radix: u32) -> Option<i64> {
    i64::from_str_radix(digits, radix).ok()
}

/// Where in the TOML the text of a quoted value starts, if it stands there letter by letter.
fn verbatim(toml: &str, value: Range<usize>, text: &str) -> Option<usize> {
    let written = toml.get(value.clone())?;
    let quote = ["\"\"\"", "'''", "\"", "'"].into_iter().find(|q| written.starts_with(q))?;
    let inside = written.get(quote.len()..written.len().checked_sub(quote.len())?)?;
    let skipped = inside.len().checked_sub(text.len())?;
    (inside.get(skipped..)? == text && inside.get(..skipped)?.trim().is_empty())
        .then_some(value.start + quote.len() + skipped)
}
