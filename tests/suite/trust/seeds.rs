//! The seeds of `fuzz/corpus`, and changes to them, through the same doors that the fuzzer knocks at.

#[path = "../../../fuzz/src/lib.rs"]
mod doors;

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

use super::Dice;

/// What is put into a seed besides its own pieces: marks of the formats, and numbers and letters
/// that programs stumble over.
const ODD: &[&str] = &[
    "\0",
    "\u{feff}",
    "\r",
    "\r\n",
    "\u{202e}",
    "שלום",
    "é",
    "e\u{301}",
    "🦀",
    "\u{85}",
    "\u{a0}",
    "\"",
    "'",
    "\"\"\"",
    "[",
    "]",
    "[[",
    "{",
    "}",
    "=",
    "#",
    ".",
    ",",
    "+++\n",
    "```",
    "> ",
    "- ",
    "|",
    "$$",
    "[^a]",
    "±",
    "%",
    "−",
    "-0",
    "0",
    "1e308",
    "1e-320",
    "9999999999999999999999",
    "NaN",
    "inf",
    "²",
    " kg",
    " m/s²",
    "live:",
    "--json",
    "--",
    "=",
];

/// A seed, changed in one to four places.
fn changed(seed: &[u8], other: &[u8], dice: &mut Dice) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..=dice.below(4) {
        let at = dice.below(bytes.len() + 1);
        let end = (at + dice.below(40)).min(bytes.len());
        match dice.below(6) {
            0 => drop(bytes.drain(at..end)),
            1 => {
                let piece = bytes[at..end].to_vec();
                bytes.splice(at..at, piece);
            }
            2 if at < bytes.len() => bytes[at] ^= 1 << dice.below(8),
            3 => {
                let from = dice.below(other.len() + 1);
                let to = (from + dice.below(80)).min(other.len());
                bytes.splice(at..end, other[from..to].iter().copied());
            }
            4 => bytes.truncate(at),
            _ => drop(bytes.splice(at..at, ODD[dice.below(ODD.len())].bytes())),
        }
    }
    bytes
}

/// Hands each seed of a folder and `changes` of them to a door.
fn knock(name: &str, door: fn(&[u8]), changes: usize) {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/corpus").join(name);
    let mut paths: Vec<_> = folder.read_dir().unwrap().map(|entry| entry.unwrap().path()).collect();
    paths.sort();
    assert!(!paths.is_empty(), "no seeds for {name}");
    let seeds: Vec<Vec<u8>> = paths.iter().map(|path| std::fs::read(path).unwrap()).collect();
    let mut dice = Dice(1);
    let all = seeds.iter().cloned().chain((0..changes).map(|number| {
        let other = &seeds[dice.below(seeds.len())];
        changed(&seeds[number % seeds.len()], other, &mut dice)
    }));
    for bytes in all {
        if catch_unwind(AssertUnwindSafe(|| door(&bytes))).is_err() {
            panic!("{name} failed on {:?}", String::from_utf8_lossy(&bytes));
        }
    }
}

#[test]
fn build_files() {
    knock("build_file", doors::build_file, 600);
}

#[test]
fn lessons() {
    knock("lesson", doors::lesson, 600);
}

#[test]
fn texts_of_numbers() {
    knock("quantity", doors::quantity, 2000);
}

#[test]
fn notebooks() {
    knock("notebook", doors::notebook, 2000);
}

#[test]
fn settings() {
    knock("settings", doors::settings, 500);
}

#[test]
fn command_lines() {
    knock("command", doors::command, 600);
}
