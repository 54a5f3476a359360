//! Heftwise against the outside world, one topic a module.

mod numbers;
mod units;
