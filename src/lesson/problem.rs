//! What is wrong in a lesson, and where.

use std::fmt;

use super::document::Mention;

/// One thing that is wrong in a lesson file.
///
/// Shown as `lessons/pressure/lesson.md:41:9: unknown quantity "ground-presure"; expected the id of
/// a quantity; did you mean "ground-pressure"?`
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// The file as messages name it.
    pub file: String,
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// What is wrong.
    pub message: String,
    /// What was expected there.
    pub expected: String,
    /// The known word nearest to what was written, if any is near.
    pub nearest: Option<String>,
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}:{}: {}", self.file, self.line, self.column, self.message)?;
        if !self.expected.is_empty() {
            write!(f, "; expected {}", self.expected)?;
        }
        if let Some(nearest) = &self.nearest {
            write!(f, "; did you mean \"{nearest}\"?")?;
        }
        Ok(())
    }
}

impl Problem {
    /// Something wrong with what a lesson names.
    pub(super) fn about(file: &str, mention: &Mention, message: String) -> Self {
        Self {
            file: file.to_owned(),
            line: mention.line,
            column: mention.column,
            message,
            expected: String::new(),
            nearest: None,
        }
    }
}
