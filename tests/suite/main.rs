//! The test suite: one binary, one file a subject.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test may be blunt: what it trips over is its own failure"
)]

mod arguments;
mod commands;
mod golden;
mod imports;
mod lesson_problems;
mod lesson_shipped;
mod lesson_text;
mod numbers;
mod plot;
mod published;
mod rules_engine;
mod sheet_broken;
mod sheet_edit;
mod sheet_file;
mod sheet_history;
mod sheet_sums;
mod stories;
mod study;
mod units;
mod window;
mod working;
