//! What is said about a place in a build file.

use std::fmt;

/// A place in a text, for people: both counted from one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Position {
    /// The line.
    pub line: usize,
    /// The character within the line.
    pub column: usize,
}

impl Position {
    /// The position of a byte of a text.
    pub(super) fn of(text: &str, byte: usize) -> Self {
        let before = text.get(..byte.min(text.len())).unwrap_or(text);
        let line = before.matches('\n').count() + 1;
        let start = before.rfind('\n').map_or(0, |newline| newline + 1);
        Self { line, column: before[start..].chars().count() + 1 }
    }
}

impl fmt::Display for Position {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}, column {}", self.line, self.column)
    }
}

/// Something in a build file that the reader should know of; nothing was dropped.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Report {
    /// Where.
    pub position: Position,
    /// What it is and how to mend it.
    pub message: String,
}

impl fmt::Display for Report {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.position, self.message)
    }
}

/// Why a text cannot be read as a build at all.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{position}: {message} {mend}")]
pub struct SyntaxError {
    /// Where reading stopped.
    pub position: Position,
    /// What is wrong, and what was expected.
    pub message: String,
    /// How to mend it.
    pub mend: String,
}
