//! Heftwise: one build, every rule.
//!
//! The map of the house, in the order in which numbers flow:
//!
//! - [`physics`]: pure functions over uom quantities, one topic a file;
//! - [`quantity`]: names, dimensions, units, the catalogue, and how numbers are read and written;
//! - [`rules`]: which function finds which quantity from which, in what order, and the working;
//! - [`sheet`]: the build: what the reader entered, its parts, its file and its history;
//! - [`study`]: what is asked of the rules: curves, targets, levers, spreads, what moved, what gives;
//! - [`lesson`]: Markdown to a document with live blocks, and proofing;
//! - [`notebook`]: the reader's answers, measurements and notes;
//! - [`plot`]: what a plot and a sketch are, drawn by any backend;
//! - [`cli`]: the commands; [`app`]: the window.
//!
//! `DEVELOPERS.md` says which may see which, and a test holds it.

pub mod app;
pub mod aside;
pub mod asked;
pub mod cli;
pub mod handout;
pub mod lesson;
pub mod notebook;
pub mod physics;
pub mod plot;
pub mod quantity;
pub mod rules;
pub mod sheet;
pub mod study;
