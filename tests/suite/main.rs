//! Heftwise against the outside world, one topic a module.

mod lesson_problems;
mod lesson_shipped;
mod lesson_text;
mod numbers;
mod units;
