//! The test suite: one binary, one file a subject.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test may be blunt: what it trips over is its own failure"
)]

mod commands;
mod imports;
mod numbers;
mod plot;
mod study;
mod units;
mod working;
