//! What a guess says of the rules with its right answer, for proofreading.
//!
//! ```toml
//! # kind = "direction":
//! moves = "stop-distance"    # the number that is moved,
//! by = "down"                # which way: up (without it), down, or out, which is away from zero,
//! find = "peak-impact-force" # and the number asked for
//! ```

use super::{Choice, Direction};
use crate::lesson::claim::{Says, Way};
use crate::lesson::document::{Span, Target};
use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::{Fault, Report};
use crate::quantity::{AnyId, catalogue};

const WAYS: [(&str, Way); 3] = [("up", Way::Up), ("down", Way::Down), ("out", Way::Out)];

/// Puts down which way a number goes when another is moved, where the author says which.
pub(super) fn direction(fields: &Fields, answer: Direction, report: &mut Report) {
    let by = match fields.text("by", report) {
        Some(text) => known::one_of("way to move a number", &text, &WAYS, report),
        None => Some(Way::default()),
    };
    let mut named = |name: &'static str, wanted| {
        fields.has(name).then(|| known::quantity(fields, name, wanted, report)).flatten()
    };
    let (moves, find) = (named("moves", Wanted::Given), named("find", Wanted::Found));
    for (name, other) in [("moves", "find"), ("find", "moves"), ("by", "moves")] {
        if fields.has(name) && !fields.has(other) {
            fields.missing(other, &format!("a quantity, as there is \"{name}\""), report);
        }
    }
    if let (Some(moves), Some(find), Some(by)) = (moves, find, by) {
        let says = Says::Moves { moves: moves.id, by, find: find.id, answer };
        report.claim(fields.place("answer"), says);
    }
}

/// Puts down that the right choice shows another number than each wrong one.
pub(super) fn choices(choices: &[Choice], at: usize, report: &mut Report) {
    let Some(right) = choices.iter().find(|c| c.right).and_then(|c| live(&c.text)) else { return };
    for wrong in choices.iter().filter(|c| !c.right).filter_map(|c| live(&c.text)) {
        let dimension = |id: AnyId| catalogue::find(id.name()).map(|entry| entry.dimension);
        if right == wrong {
            let fault = Fault::new(
                format!("a right and a wrong choice both show \"{right}\""),
                "another number in the wrong one",
            );
            report.add(at, fault);
        } else if dimension(right) == dimension(wrong) {
            report.claim(at, Says::Apart { right, wrong });
        }
    }
}

/// The live number that words show, if they show one.
fn live(spans: &[Span]) -> Option<AnyId> {
    spans.iter().find_map(|span| match span {
        Span::Link { to: Target::Live { id, .. }, .. } => Some(*id),
        _ => None,
    })
}
