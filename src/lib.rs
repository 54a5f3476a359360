//! Heftwise: one build, every rule.
pub mod lesson;
pub mod physics;
pub mod plot;
pub mod quantity;
pub mod rules;
pub mod study;
