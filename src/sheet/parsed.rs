//! A text parsed once, and the values in it that were written over since.
//!
//! A number stepped or a letter typed puts one piece of text in place of another. Whatever it says,
//! everything else still stands where it stood, a little further up or down; so a file of thousands
//! of parts is parsed when it is opened and when its lines change, not at every letter.

use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::Arc;

use toml_edit::{Document, Table, TomlError};

/// A text without byte order mark, as the parser sees it.
#[derive(Debug, Clone)]
pub(super) struct Parsed {
    document: Arc<Document<String>>,
    /// The values written over: by where each started when the text was parsed, how far it reached
    /// then and how many bytes it has now.
    over: BTreeMap<usize, (usize, usize)>,
}

impl Parsed {
    /// Parses a text.
    pub fn new(text: &str) -> Result<Self, TomlError> {
        Document::parse(text.to_owned())
            .map(|document| Self { document: Arc::new(document), over: BTreeMap::new() })
    }

    /// What is there. The texts of values and the places are those of the text that was parsed.
    pub fn document(&self) -> &Table {
        &self.document
    }

    /// Whether the text is still the one that was parsed.
    pub fn is_fresh(&self) -> bool {
        self.over.is_empty()
    }

    /// Where a value stands now, by its place in the document.
    pub fn now(&self, value: &Range<usize>) -> Range<usize> {
        let (mut gone, mut come) = (0, 0);
        for (start, (end, length)) in self.over.range(..value.start) {
            gone += end - start;
            come += length;
        }
        let start = (value.start + come).saturating_sub(gone);
        let length = self.over.get(&value.start).map_or(value.len(), |(_, length)| *length);
        start..start + length
    }

    /// Notes that a piece of text, by its place in the document, has so many bytes now.
    pub fn write_over(&mut self, value: &Range<usize>, length: usize) {
        self.over.insert(value.start, (value.end, length));
    }
}
