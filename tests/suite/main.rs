//! The test suite: one binary, one file a subject.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::print_stderr,
    reason = "a test may be blunt: what it trips over is its own failure"
)]

mod app_builds;
mod arguments;
mod command_curve;
mod command_list;
mod commands;
mod golden;
mod handout;
mod imports;
mod ledger;
mod lesson_authoring;
mod lesson_figures;
mod lesson_practice;
mod lesson_problems;
mod lesson_proof;
mod lesson_shipped;
mod lesson_text;
mod notebook;
mod numbers;
mod plot;
mod published;
mod real_window;
mod rules_engine;
mod runs;
mod sheet_broken;
mod sheet_edit;
mod sheet_file;
mod sheet_history;
mod sheet_sums;
mod sketch;
mod stories;
mod study;
mod trust;
mod units;
mod window;
mod working;
