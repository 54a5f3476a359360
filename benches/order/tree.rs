//! Names of functions as a tree of crates, modules, types and functions, and the patterns that pick
//! those out which ran.

use std::collections::BTreeMap;

/// A pattern may pick out what did not run too, up to this many bytes for each that ran, ...
const SLACK: f64 = 0.5;
/// ... and these.
const SPARE: u64 = 256;

#[derive(Default)]
pub struct Tree {
    ran: u64,
    all: u64,
    below: BTreeMap<String, Tree>,
}

impl Tree {
    pub fn grow(&mut self, section: &str, size: u64, has_run: bool) {
        let mut tree = self;
        for step in [String::new()].into_iter().chain(steps(section)) {
            tree = tree.below.entry(step).or_default();
            tree.all += size;
            tree.ran += if has_run { size } else { 0 };
        }
    }

    /// The fewest patterns that pick out all that ran, and little else.
    pub fn patterns(&self) -> Vec<String> {
        let mut patterns = Vec::new();
        for tree in self.below.values() {
            tree.gather(".text.", 0, &mut patterns);
        }
        patterns
    }

    fn gather(&self, path: &str, depth: usize, patterns: &mut Vec<String>) {
        if self.ran == 0 {
            return;
        }
        let is_close = self.all as f64 <= self.ran as f64 * (1.0 + SLACK) + SPARE as f64;
        if self.below.is_empty() || depth > 1 && is_close {
            patterns.push(format!("{path}*"));
        } else {
            for (step, tree) in &self.below {
                tree.gather(&format!("{path}{step}"), depth + 1, patterns);
            }
        }
    }
}

/// The name of a function's section in pieces, without what changes from one compiler to the next.
/// Rust has two ways to write names: `_ZN`, pieces that say their length first, and a hash; and `_R`,
/// with a mark of each crate, `Cs…_`.
fn steps(section: &str) -> Vec<String> {
    let rare = if section.starts_with("unlikely.") { "unlikely." } else { "" };
    let name = &section[rare.len()..];
    let Some(mut rest) = name.strip_prefix("_ZN") else {
        let mut pieces = name.split("Cs");
        let mut plain = pieces.next().unwrap_or_default().to_owned();
        for piece in pieces {
            plain += "Cs*_";
            plain += piece.split_once('_').map_or("", |(_mark, rest)| rest);
        }
        return vec![rare.to_owned(), plain.split(".llvm.").next().unwrap_or_default().to_owned()];
    };
    let mut steps = vec![format!("{rare}_ZN")];
    while let Some(end) = rest.find(|c: char| !c.is_ascii_digit()).filter(|end| *end > 0) {
        let length = rest[..end].parse::<usize>().unwrap_or(usize::MAX);
        let Some(piece) = end.checked_add(length).and_then(|end| rest.get(..end)) else { break };
        // The hash, the last piece: 16 digits after an `h`.
        let is_hash = length == 17 && rest[piece.len()..].starts_with('E');
        if is_hash {
            break;
        }
        steps.push(piece.to_owned());
        rest = &rest[piece.len()..];
    }
    steps
}
