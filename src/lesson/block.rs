//! The live blocks: one file each. A new one is a file, an entry in [`GRAMMARS`] and a kind of block.

mod calculator;
mod curve;
mod guess;
mod levers;
mod side_by_side;
mod target;

pub use calculator::Calculator;
pub use curve::Curve;
pub use guess::{Choice, Direction, Guess, GuessKind, Reference, Slip, SlipValue, Tolerance};
pub use levers::Levers;
pub use side_by_side::SideBySide;
pub use target::Target;

use super::document::BlockKind;
use super::fields::{self, Fields};
use super::place::{Fault, Origin, Report};

/// How one live block is read.
struct Grammar {
    /// The info string of its fence.
    name: &'static str,
    /// What it is called in messages.
    what: &'static str,
    /// Reads its body; nothing if it cannot be used, the reasons reported.
    read: fn(&Fields, &mut Report) -> Option<BlockKind>,
}

const GRAMMARS: &[Grammar] = &[
    Grammar {
        name: "calculator",
        what: "a calculator",
        read: |fields, report| calculator::read(fields, report).map(BlockKind::Calculator),
    },
    Grammar {
        name: "curve",
        what: "a curve",
        read: |fields, report| curve::read(fields, report).map(BlockKind::Curve),
    },
    Grammar {
        name: "guess",
        what: "a guess",
        read: |fields, report| guess::read(fields, report).map(BlockKind::Guess),
    },
    Grammar {
        name: "side-by-side",
        what: "a side by side",
        read: |fields, report| side_by_side::read(fields, report).map(BlockKind::SideBySide),
    },
    Grammar {
        name: "target",
        what: "a target",
        read: |fields, report| target::read(fields, report).map(BlockKind::Target),
    },
    Grammar {
        name: "levers",
        what: "a levers block",
        read: |fields, report| levers::read(fields, report).map(BlockKind::Levers),
    },
];

/// Whether a fence names a live block, be it with a slip of the pen; anything else is plain code.
pub(super) fn is_meant(info: &str) -> bool {
    let name = info.split_whitespace().next().unwrap_or_default().to_lowercase();
    GRAMMARS.iter().any(|grammar| is_near(&name, grammar.name))
}

/// One slip in a short name, two in a long one: `curry` is a language, not a curve.
fn is_near(name: &str, known: &str) -> bool {
    strsim::osa_distance(name, known) <= if known.len() > 6 { 2 } else { 1 }
}

/// Reads the body of a live block whose fence stands at `at`.
pub(super) fn read(
    info: &str,
    body: String,
    origin: &Origin,
    at: usize,
    report: &mut Report,
) -> BlockKind {
    let before = report.count();
    let kind = match GRAMMARS.iter().find(|grammar| grammar.name == info.trim()) {
        Some(grammar) => {
            fields::read(grammar.what, (&body, origin), at, report, grammar.read).flatten()
        }
        None => {
            report.add(at, unknown(info));
            None
        }
    };
    match kind {
        Some(kind) if report.count() == before => kind,
        _ => BlockKind::Broken {
            name: info.to_owned(),
            source: body,
            problems: report.since(before).to_vec(),
        },
    }
}

fn unknown(info: &str) -> Fault {
    let name = info.to_lowercase();
    let name = name.split_whitespace().next().unwrap_or_default();
    let names: Vec<_> = GRAMMARS.iter().map(|grammar| grammar.name).collect();
    let nearest = names.iter().copied().find(|known| is_near(name, known));
    Fault::new(format!("unknown block \"{info}\""), format!("one of {}", names.join(", ")))
        .nearest(nearest)
}
