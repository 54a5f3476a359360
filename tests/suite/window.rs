//! The window without a screen: messages, clicks and keys in, state and words out.

mod build_sheet;
mod contrast;
mod controls;
mod copying;
mod curve;
mod every_block;
mod files;
mod keys;
mod lessons;
mod looks;
mod meaning;
mod notebook;
mod numbers;
mod printing;
mod recovery;
mod remembered;
mod rig;
mod runs;
mod seen;
mod walk_round;
mod workshop;
