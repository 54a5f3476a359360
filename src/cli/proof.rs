//! `heftwise proof`: lessons proofread.

use std::io::Write;
use std::path::PathBuf;

use clap::Args;

use super::Stop;

/// Proofreads lessons
#[derive(Debug, Args)]
pub(super) struct Proof {
    paths: Vec<PathBuf>,
}

impl Proof {
    pub(super) fn run(&self, _out: &mut dyn Write) -> Result<(), Stop> {
        let _ = &self.paths;
        Ok(())
    }
}
