//! Small pieces of sentences shared by the studies.

use crate::quantity::{AnyId, catalogue};
use crate::rules::Lack;

/// What a quantity is called.
pub(super) fn label(id: AnyId) -> &'static str {
    catalogue::find(id.name()).map_or(id.name(), |entry| entry.label)
}

/// The same inside a sentence: "the mass", but "what the side slope asks".
pub(super) fn the(id: AnyId) -> String {
    let label = label(id);
    if label.starts_with("what ") { label.to_owned() } else { format!("the {label}") }
}

/// What is lacking: "Say the mass, and the speed at touch or the drop height."
pub(super) fn lacking(lacks: &[Lack]) -> String {
    let items: Vec<String> = lacks
        .iter()
        .filter(|lack| !lack.is_empty())
        .map(|lack| lack.iter().map(|id| the(*id)).collect::<Vec<_>>().join(" or "))
        .collect();
    match items.as_slice() {
        [] => "Numbers are lacking.".to_owned(),
        [one] => format!("Say {one}."),
        [first @ .., last] => format!("Say {}, and {last}.", first.join(", ")),
    }
}
