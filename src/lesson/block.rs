//! The live blocks: one file each. A new one is a file, an entry in [`GRAMMARS`] and a kind of block.

mod basis;
mod calculator;
mod curve;
mod faded;
mod figures;
mod guess;
mod hundred_grams;
mod ledger;
mod levers;
mod measure;
mod number;
mod parts;
pub(super) mod prose;
mod run;
mod side_by_side;
mod sketch;
mod target;

pub use calculator::Calculator;
pub use curve::Curve;
pub use faded::{Faded, Line, Step};
pub use guess::{Asked, Choice, Direction, Guess, GuessKind, Slip, SlipValue, Variant};
pub use hundred_grams::HundredGrams;
pub use ledger::{Ledger, LedgerSort};
pub use levers::Levers;
pub use measure::{FAR_OVER, FAR_UNDER, Measure};
pub use number::{Reference, Tolerance};
pub use prose::Deeper;
pub use run::{Run, RunPace};
pub use side_by_side::SideBySide;
pub use sketch::{Sketch, SketchLayer, SketchView};
pub use target::Target;

use super::document::BlockKind;
use super::fields::{self, Fields};
use super::place::{Fault, Origin, Report};

/// How one live block is read.
pub(super) struct Grammar {
    /// The info string of its fence.
    pub(super) name: &'static str,
    /// What it is called in messages.
    what: &'static str,
    /// Its tables and the fields of each; its own table has no name.
    pub(super) tables: &'static [(&'static str, &'static [&'static str])],
    /// Reads its body; nothing if it cannot be used, the reasons reported.
    read: fn(&Fields, &mut Report) -> Option<BlockKind>,
}

/// Every live block of TOML.
pub(super) const GRAMMARS: &[Grammar] = &[
    Grammar {
        name: "calculator",
        what: "a calculator",
        tables: &[("", calculator::FIELDS)],
        read: |fields, report| calculator::read(fields, report).map(BlockKind::Calculator),
    },
    Grammar {
        name: "curve",
        what: "a curve",
        tables: &[("", curve::FIELDS)],
        read: |fields, report| curve::read(fields, report).map(BlockKind::Curve),
    },
    Grammar {
        name: "guess",
        what: "a guess",
        tables: guess::TABLES,
        read: |fields, report| guess::read(fields, report).map(BlockKind::Guess),
    },
    Grammar {
        name: "sketch",
        what: "a sketch",
        tables: &[("", sketch::FIELDS)],
        read: |fields, report| sketch::read(fields, report).map(BlockKind::Sketch),
    },
    Grammar {
        name: "ledger",
        what: "a ledger",
        tables: &[("", ledger::FIELDS)],
        read: |fields, report| ledger::read(fields, report).map(BlockKind::Ledger),
    },
    Grammar {
        name: "faded",
        what: "a faded example",
        tables: &[("", faded::FIELDS), ("step", faded::STEP)],
        read: |fields, report| faded::read(fields, report).map(BlockKind::Faded),
    },
    Grammar {
        name: "measure",
        what: "a measure",
        tables: &[("", measure::FIELDS)],
        read: |fields, report| measure::read(fields, report).map(BlockKind::Measure),
    },
    Grammar {
        name: "side-by-side",
        what: "a side by side",
        tables: &[("", side_by_side::FIELDS)],
        read: |fields, report| side_by_side::read(fields, report).map(BlockKind::SideBySide),
    },
    Grammar {
        name: "target",
        what: "a target",
        tables: &[("", target::FIELDS)],
        read: |fields, report| target::read(fields, report).map(BlockKind::Target),
    },
    Grammar {
        name: "levers",
        what: "a levers block",
        tables: &[("", levers::FIELDS)],
        read: |fields, report| levers::read(fields, report).map(BlockKind::Levers),
    },
    Grammar {
        name: "hundred-grams",
        what: "a hundred-grams block",
        tables: &[("", hundred_grams::FIELDS)],
        read: |fields, report| hundred_grams::read(fields, report).map(BlockKind::HundredGrams),
    },
    Grammar {
        name: "run",
        what: "a run",
        tables: &[("", run::FIELDS)],
        read: |fields, report| run::read(fields, report).map(BlockKind::Run),
    },
    Grammar {
        name: figures::NAME,
        what: "a figures block",
        tables: &[("", figures::FIELDS), ("parts", parts::PART)],
        read: |fields, report| {
            figures::read(fields, report);
            None
        },
    },
];

/// Whether a fence names a live block, be it with a slip of the pen; anything else is plain code.
pub(super) fn is_meant(info: &str) -> bool {
    let name = info.split_whitespace().next().unwrap_or_default().to_lowercase();
    names().any(|known| known == name) || names().any(|known| is_near(&name, known))
}

/// The name of every live block, those of TOML and those of Markdown.
fn names() -> impl Iterator<Item = &'static str> {
    GRAMMARS.iter().map(|grammar| grammar.name).chain(prose::NAMES)
}

/// One slip in a short name, two in a long one: `curry` is a language, not a curve.
fn is_near(name: &str, known: &str) -> bool {
    strsim::osa_distance(name, known) <= if known.len() > 6 { 2 } else { 1 }
}

/// Reads the body of a live block whose fence stands at `at`; nothing if there is nothing to show.
pub(super) fn read(
    info: &str,
    body: String,
    origin: &Origin,
    at: usize,
    report: &mut Report,
) -> Option<BlockKind> {
    let before = report.count();
    let name = info.trim();
    if prose::NAMES.contains(&name) {
        return Some(prose::read(name, body, origin, at, report));
    }
    if name == figures::NAME && !report.proofs() {
        return None;
    }
    let kind = match GRAMMARS.iter().find(|grammar| grammar.name == name) {
        Some(grammar) => {
            fields::read(grammar.what, (&body, origin), at, report, grammar.read).flatten()
        }
        None => {
            report.add(at, unknown(info));
            None
        }
    };
    if name == figures::NAME {
        report.make_flaws(before);
        return None;
    }
    Some(match kind {
        Some(kind) if report.count() == before => kind,
        _ => BlockKind::Broken {
            name: info.to_owned(),
            source: body,
            problems: report.since(before).to_vec(),
        },
    })
}

fn unknown(info: &str) -> Fault {
    let name = info.to_lowercase();
    let name = name.split_whitespace().next().unwrap_or_default();
    let names: Vec<_> = names().collect();
    let nearest = names.iter().copied().find(|known| is_near(name, known));
    Fault::new(format!("unknown block \"{info}\""), format!("one of {}", names.join(", ")))
        .nearest(nearest)
}
