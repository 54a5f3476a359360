//! Heftwise: one build, every rule.
pub mod app;
pub mod cli;
pub mod lesson;
pub mod notebook;
pub mod physics;
pub mod plot;
pub mod quantity;
pub mod rules;
pub mod sheet;
pub mod study;
