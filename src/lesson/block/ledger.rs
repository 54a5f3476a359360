//! `ledger`: the parts by mass, and what they change.

use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::Report;
use crate::quantity::AnyId;

/// The parts by mass, and what they change.
#[derive(Debug, Clone, PartialEq)]
pub struct Ledger {
    /// What it asks, in a line.
    pub title: Option<String>,
    /// In which order the parts stand first.
    pub sort: LedgerSort,
    /// Numbers shown under the parts.
    pub watch: Vec<AnyId>,
}

/// An order of parts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum LedgerSort {
    /// The heaviest first.
    #[default]
    Mass,
    /// As the build lists them.
    List,
}

const SORTS: [(&str, LedgerSort); 2] = [("mass", LedgerSort::Mass), ("list", LedgerSort::List)];

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "sort", "watch"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Ledger> {
    fields.allow(FIELDS, report);
    let sort = match fields.text("sort", report) {
        Some(text) => known::one_of("order", &text, &SORTS, report)?,
        None => LedgerSort::default(),
    };
    Some(Ledger {
        title: fields.text("title", report).map(|title| title.value),
        sort,
        watch: known::ids(fields, "watch", Wanted::Any, report),
    })
}
