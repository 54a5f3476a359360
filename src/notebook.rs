//! The notebook: the reader's answers, measurements, notes and progress, lesson by lesson.
//!
//! It is told what happened and when; it reads no clock. [`mod@file`] keeps it on disk.

pub mod file;
mod markdown;
mod measurement;
mod moment;
mod summary;

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use thiserror::Error;

pub use markdown::markdown;
pub use measurement::{Measurement, Reckoned};
pub use moment::Moment;
pub use summary::{Summary, ratio_figures};

/// The format of the file this program writes.
const FORMAT: u32 = 1;

/// Everything the reader has done. Keys of the file that are not known are kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Notebook {
    format: u32,
    #[serde(default, rename = "lesson")]
    lessons: BTreeMap<String, Record>,
    #[serde(flatten)]
    rest: toml::Table,
}

/// What the reader has done in one lesson.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Record {
    /// When it was first opened.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub opened: Option<Moment>,
    /// When the reader said it was finished.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub finished: Option<Moment>,
    /// The reader's own note.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// Answers to guesses, the oldest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty", rename = "answer")]
    pub answers: Vec<Answer>,
    /// Measurements, the oldest first.
    #[serde(default, skip_serializing_if = "Vec::is_empty", rename = "measurement")]
    pub measurements: Vec<Measurement>,
    #[serde(flatten)]
    rest: toml::Table,
}

/// An answer to a guess.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Answer {
    /// The name of the guess: `pressure/which-end-sinks`.
    pub guess: String,
    /// What was asked, in words.
    pub asked: String,
    /// What the reader said, in words.
    pub said: String,
    /// Whether it was right.
    pub right: bool,
    /// The wrong idea behind it, named, where the lesson knows it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub idea: Option<String>,
    /// When.
    pub when: Moment,
    /// Keys that are not known.
    #[serde(flatten)]
    pub rest: toml::Table,
}

/// Why a text is no notebook.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum ReadError {
    /// It is not laid out as a notebook.
    #[error("{0}")]
    Layout(String),
    /// A newer program wrote it.
    #[error("it has format {0}, written by a newer Heftwise")]
    Newer(u32),
}

impl Default for Notebook {
    fn default() -> Self {
        Self { format: FORMAT, lessons: BTreeMap::new(), rest: toml::Table::new() }
    }
}

impl Notebook {
    /// Reads the text of a notebook's file.
    ///
    /// # Errors
    /// The text is no TOML, is laid out differently, or has a newer format.
    pub fn read(text: &str) -> Result<Self, ReadError> {
        let notebook: Self = toml::from_str(text).map_err(|error| {
            ReadError::Layout(error.to_string().trim_end().replace('\n', "\n    "))
        })?;
        if notebook.format > FORMAT {
            return Err(ReadError::Newer(notebook.format));
        }
        Ok(notebook)
    }

    /// The text of the notebook's file.
    ///
    /// # Errors
    /// Something in it cannot be written as TOML.
    pub fn text(&self) -> Result<String, toml::ser::Error> {
        toml::to_string_pretty(self)
    }

    /// What was done in a lesson.
    pub fn lesson(&self, id: &str) -> Option<&Record> {
        self.lessons.get(id)
    }

    /// Every lesson in which something was done, by id.
    pub fn lessons(&self) -> impl Iterator<Item = (&str, &Record)> {
        self.lessons.iter().map(|(id, record)| (id.as_str(), record))
    }

    /// A lesson was opened; the first time counts. Says whether that is news.
    pub fn opened(&mut self, id: &str, when: Moment) -> bool {
        let opened = &mut self.record(id).opened;
        let news = opened.is_none();
        opened.get_or_insert(when);
        news
    }

    /// A lesson was finished, or taken up again.
    pub fn finished(&mut self, id: &str, when: Option<Moment>) {
        self.record(id).finished = when;
    }

    /// The reader's note on a lesson is now this.
    pub fn noted(&mut self, id: &str, note: String) {
        self.record(id).note = note;
    }

    /// A guess was answered.
    pub fn answered(&mut self, id: &str, answer: Answer) {
        self.record(id).answers.push(answer);
    }

    /// Something was measured.
    pub fn measured(&mut self, id: &str, measurement: Measurement) {
        self.record(id).measurements.push(measurement);
    }

    fn record(&mut self, id: &str) -> &mut Record {
        self.lessons.entry(id.to_owned()).or_default()
    }
}

impl Record {
    /// Whether there is anything to read in it besides that the lesson was opened.
    pub fn is_blank(&self) -> bool {
        self.note.trim().is_empty() && self.answers.is_empty() && self.measurements.is_empty()
    }

    /// The last measurement of that name.
    pub fn last_measured(&self, what: &str) -> Option<&Measurement> {
        self.measurements.iter().rev().find(|measurement| measurement.what == what)
    }
}
