//! The test suite: one binary, one file a subject.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test may be blunt: what it trips over is its own failure"
)]

mod commands;
mod imports;
mod sheet_broken;
mod sheet_edit;
mod sheet_file;
mod sheet_history;
mod sheet_sums;
mod numbers;
mod published;
mod rules_engine;
mod units;
