//! The window without a screen: messages, clicks and keys in, state and words out.

mod contrast;
mod controls;
mod curve;
mod every_block;
mod files;
mod keys;
mod lessons;
mod looks;
mod meaning;
mod notebook;
mod numbers;
mod recovery;
mod remembered;
pub mod rig;
mod runs;
mod workshop;
