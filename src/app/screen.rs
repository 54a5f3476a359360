//! The screens: each a struct, its messages, what it asks of the shell, and its view.

pub mod bench;
pub mod build_sheet;
pub mod contents;
pub mod notebook;
pub mod preferences;
pub mod reading;
pub mod walk_round;
pub mod workshop;

/// Which screen is shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// The list of lessons.
    Contents,
    /// A lesson, by its id.
    Lesson(String),
    /// A lesson shown to a class, by its id.
    Workshop(String),
    /// Every number of the build.
    BuildSheet,
    /// Every limit at once.
    WalkRound,
    /// The reader's answers, measurements and notes.
    Notebook,
    /// The builds: the reader's own, companions, recent ones, a new one.
    Bench,
    /// Units, light, text, folders.
    Settings,
}
