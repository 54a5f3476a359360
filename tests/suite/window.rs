//! The window without a screen: messages, clicks and keys in, state and words out.

mod bench;
mod build_sheet;
mod contents;
mod contrast;
mod controls;
mod copying;
mod curve;
mod every_block;
mod files;
mod find;
mod gallery;
mod keys;
mod lessons;
mod looks;
mod meaning;
mod notebook;
mod numbers;
mod printing;
mod recovery;
mod remembered;
pub mod rig;
mod runs;
mod seen;
mod settings;
mod walk_round;
mod workshop;
