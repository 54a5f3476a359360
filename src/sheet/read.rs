//! From the text of a build file to what it says.

use std::collections::BTreeMap;

use toml_edit::{Array, Item, Table, TableLike, Value};

use super::contents::{Contents, Entries};
use super::parsed::Parsed;
use super::part::{Part, TrialMass};
use super::report::{Position, Report, SyntaxError};
use super::{FORMAT, syntax};
use crate::quantity::{Entry, Topic, catalogue};

/// The marker some editors put at the start of a text.
pub(super) const BYTE_ORDER_MARK: char = '\u{feff}';

/// Every name the top of a build file may hold.
const TOP: [&str; 5] = ["format", "name", "note", "parts", "trial-mass"];

/// Reads a text; unknown names and odd values are reported and left alone.
pub(super) fn read(text: &str) -> Result<Contents, SyntaxError> {
    let body = text.strip_prefix(BYTE_ORDER_MARK).unwrap_or(text);
    let parsed = Parsed::new(body).map_err(|error| syntax::explain(body, &error))?;
    let document = parsed.document();
    let mut reader =
        Reader { body, entries: Entries::default(), own: BTreeMap::new(), reports: Vec::new() };
    let format = reader.format(document);
    for (key, item) in document.iter() {
        reader.top(key, item, place(document, key));
    }
    let Reader { entries, mut reports, .. } = reader;
    reports.sort_by_key(|report| report.position);
    Ok(Contents { text: text.to_owned(), parsed: Some(parsed), format, entries, reports })
}

struct Reader<'a> {
    body: &'a str,
    entries: Entries,
    /// For each number read, whether it stood in the table of its own topic.
    own: BTreeMap<&'static str, bool>,
    reports: Vec<Report>,
}

impl Reader<'_> {
    fn report(&mut self, byte: usize, message: String) {
        self.reports.push(Report { position: Position::of(self.body, byte), message });
    }

    fn format(&mut self, document: &Table) -> i64 {
        let Some(item) = document.get("format") else {
            self.report(0, format!("There is no format; it is read as format {FORMAT}. Add a first line: format = {FORMAT}"));
            return FORMAT;
        };
        match item.as_integer() {
            Some(format) if format > FORMAT => {
                self.report(
                    place(document, "format"),
                    format!("This is format {format}, and this Heftwise writes format {FORMAT}. The build is open for reading alone; update Heftwise to change it."),
                );
                format
            }
            Some(format) if format >= 1 => format,
            _ => {
                self.report(
                    place(document, "format"),
                    format!("The format has to be a whole number from 1 up; it is read as format {FORMAT}. Write: format = {FORMAT}"),
                );
                FORMAT
            }
        }
    }

    fn top(&mut self, key: &str, item: &Item, byte: usize) {
        match key {
            "format" => {}
            "name" => self.entries.name = self.words(key, item, byte),
            "note" => self.entries.note = self.words(key, item, byte),
            "parts" => self.parts(item, byte),
            "trial-mass" => self.trial(item, byte),
            _ => match topic(key) {
                Some(topic) => self.topic(topic, item, byte),
                None => self.number(None, key, item, byte),
            },
        }
    }

    fn words(&mut self, key: &str, item: &Item, byte: usize) -> String {
        self.scalar(item).unwrap_or_else(|| {
            self.report(byte, format!("The {key} has to be text. Write: {key} = \"...\""));
            String::new()
        })
    }

    fn topic(&mut self, topic: Topic, item: &Item, byte: usize) {
        let Some(table) = item.as_table_like() else {
            let key = topic.key();
            self.report(byte, format!("`{key}` has to be a table, so its numbers are not read. Write [{key}] on a line of its own and the numbers below it."));
            return;
        };
        for (key, item) in table.iter() {
            self.number(Some(topic), key, item, place(table, key));
        }
    }

    fn number(&mut self, under: Option<Topic>, key: &str, item: &Item, byte: usize) {
        let Some(entry) = catalogue::find(key) else {
            self.unknown(under, key, byte);
            return;
        };
        let Some(text) = self.scalar(item) else {
            self.report(byte, format!("The {} has to be a number with its unit in quotes, so it is not read. Write: {key} = \"...\"", entry.label));
            return;
        };
        if !item.is_str() {
            self.report(
                byte,
                format!(
                    "Put the number in quotes, with its unit if it has one: {key} = \"{text}\""
                ),
            );
        }
        let own = under == Some(entry.topic);
        if !own {
            self.report(
                byte,
                format!(
                    "`{key}` belongs under [{}]; it is read here all the same.",
                    entry.topic.key()
                ),
            );
        }
        self.take(entry, text, own, byte);
    }

    /// Takes a number, unless one from a better place was taken before.
    fn take(&mut self, entry: &Entry, text: String, own: bool, byte: usize) {
        let name = entry.id.name();
        if let Some(before) = self.own.get(name).copied() {
            self.report(byte, format!("`{name}` is given more than once; the one under [{}] counts, else the first. Keep one of them.", entry.topic.key()));
            if before || !own {
                return;
            }
        }
        self.own.insert(name, own);
        self.entries.numbers.insert(entry.id, text);
    }

    fn unknown(&mut self, under: Option<Topic>, key: &str, byte: usize) {
        let near = match under {
            Some(_) => catalogue::nearest(key),
            None => catalogue::nearest_of(key, TOP.into_iter().chain(Topic::ALL.map(Topic::key)))
                .or_else(|| catalogue::nearest(key)),
        };
        let hint = near.map(|near| format!(" Did you mean `{near}`?")).unwrap_or_default();
        self.report(byte, format!("`{key}` is no name that Heftwise knows; it is kept as it stands and not used.{hint}"));
    }

    fn parts(&mut self, item: &Item, byte: usize) {
        if let Some(tables) = item.as_array_of_tables() {
            for table in tables.iter() {
                let part = self.part(table, table.span().map_or(byte, |span| span.start));
                self.entries.parts.insert(usize::MAX, part.into());
            }
            return;
        }
        let tables = item.as_array().map(|list| list.iter().map(Value::as_inline_table));
        let Some(Some(tables)) = tables.map(|tables| tables.collect::<Option<Vec<_>>>()) else {
            self.report(byte, "The parts have to be tables, so they are not read. Write [[parts]] on a line of its own above each part.".to_owned());
            return;
        };
        for table in tables {
            let part = self.part(table, table.span().map_or(byte, |span| span.start));
            self.entries.parts.insert(usize::MAX, part.into());
        }
    }

    fn part(&mut self, table: &dyn TableLike, byte: usize) -> Part {
        let mut part = Part::default();
        for (key, item) in table.iter() {
            let byte = place(table, key);
            match key {
                "name" => part.name = self.words(key, item, byte),
                "mass" => part.mass = self.mass(item, byte),
                "at" => part.at = self.at(item, byte),
                _ => self.unknown_of("part", &["name", "mass", "at"], key, byte),
            }
        }
        if !table.contains_key("mass") {
            self.report(byte, "This part has no mass. Add a line: mass = \"0 g\"".to_owned());
        }
        part
    }

    fn trial(&mut self, item: &Item, byte: usize) {
        let Some(table) = item.as_table_like() else {
            self.report(byte, "The trial mass has to be a table, so it is not read. Write [trial-mass] on a line of its own and below it: mass = \"+200 g\"".to_owned());
            return;
        };
        let mut trial = TrialMass { mass: String::new(), at: None };
        for (key, item) in table.iter() {
            let byte = place(table, key);
            match key {
                "mass" => trial.mass = self.mass(item, byte),
                "at" => trial.at = self.at(item, byte),
                _ => self.unknown_of("trial mass", &["mass", "at"], key, byte),
            }
        }
        self.entries.trial = Some(trial);
    }

    fn mass(&mut self, item: &Item, byte: usize) -> String {
        let text = self.scalar(item);
        if !item.is_str() {
            self.report(
                byte,
                "A mass has to be a number with its unit in quotes. Write: mass = \"412 g\""
                    .to_owned(),
            );
        }
        text.unwrap_or_default()
    }

    fn at(&mut self, item: &Item, byte: usize) -> Option<[String; 3]> {
        let three = item.as_array().and_then(|list| self.three(list));
        if three.is_none() {
            self.report(byte, "A place has to be three lengths in quotes, forward, left and up, so it is not read. Write: at = [\"60 mm\", \"0 mm\", \"55 mm\"]".to_owned());
        }
        three
    }

    fn three(&self, list: &Array) -> Option<[String; 3]> {
        let texts: Option<Vec<String>> =
            list.iter().map(|value| self.scalar_value(value)).collect();
        texts?.try_into().ok()
    }

    fn unknown_of(&mut self, what: &str, known: &[&str], key: &str, byte: usize) {
        let hint = catalogue::nearest_of(key, known.iter().copied())
            .map(|near| format!(" Did you mean `{near}`?"))
            .unwrap_or_default();
        self.report(byte, format!("`{key}` is nothing that Heftwise knows of a {what}; it is kept as it stands and not used.{hint}"));
    }

    fn scalar(&self, item: &Item) -> Option<String> {
        item.as_value().and_then(|value| self.scalar_value(value))
    }

    /// Text as it stands; a bare number as it is typed.
    fn scalar_value(&self, value: &Value) -> Option<String> {
        match value {
            Value::String(text) => Some(text.value().clone()),
            Value::Integer(_) | Value::Float(_) => {
                value.span().and_then(|span| self.body.get(span)).map(str::to_owned)
            }
            _ => None,
        }
    }
}

/// The topic whose table has this name.
pub(super) fn topic(key: &str) -> Option<Topic> {
    Topic::ALL.into_iter().find(|topic| topic.key() == key)
}

/// The byte where an entry of a table starts.
fn place(table: &dyn TableLike, key: &str) -> usize {
    let entry = table.get_key_value(key);
    entry.and_then(|(key, item)| key.span().or_else(|| item.span())).map_or(0, |span| span.start)
}
