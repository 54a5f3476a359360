//! What a reader may count on: odd input ends in words, nothing saved is lost, nothing is sent out,
//! and what is packaged is whole.

mod bounds;
mod closed;
mod disk;
mod edges;
mod killed;
mod licences;
mod markdown;
mod packaged;
mod round_trip;
mod seeds;
mod soak;
mod written_over;

use std::path::Path;
use std::process::Command;

/// This test program again, to run one test alone in a process of its own.
fn again(test: &str) -> Command {
    let mut command = Command::new(std::env::current_exe().unwrap());
    command.args(["--exact", test, "--quiet"]);
    command
}

/// Numbers that only look random, the same on every run (Knuth's MMIX generator).
struct Dice(u64);

impl Dice {
    fn below(&mut self, end: usize) -> usize {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap() % end.max(1)
    }
}

/// A file of this repository.
fn ours(path: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(path);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}
