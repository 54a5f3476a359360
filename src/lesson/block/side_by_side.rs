//! `side-by-side`: builds in columns, numbers in rows.

use super::calculator::some;
use crate::lesson::fields::Fields;
use crate::lesson::known::Wanted;
use crate::lesson::place::{Fault, Report};
use crate::quantity::{AnyId, catalogue};
use crate::sheet::demo;

/// Builds in columns, numbers in rows: the reader's own, the companions, and shipped examples.
#[derive(Debug, Clone, PartialEq)]
pub struct SideBySide {
    /// What it compares, in a line.
    pub title: Option<String>,
    /// The numbers, at least one.
    pub show: Vec<AnyId>,
    /// Shipped example builds that stand beside the reader's, up to two; their names as in
    /// [`demo::ALL`].
    pub with: Vec<&'static str>,
}

/// The most example builds: with the reader's own, three columns fit a page.
const MOST: usize = 2;

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "show", "with"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<SideBySide> {
    fields.allow(FIELDS, report);
    let title = fields.text("title", report).map(|title| title.value);
    let show = some(fields, "show", Wanted::Any, report);
    let with = examples(fields, report);
    Some(SideBySide { title, show: show?, with })
}

fn examples(fields: &Fields, report: &mut Report) -> Vec<&'static str> {
    let mut with: Vec<&'static str> = Vec::new();
    for text in fields.texts("with", report) {
        let names = demo::ALL.map(|demo| demo.id);
        match demo::find(&text.value) {
            Some(demo) if with.contains(&demo.id) => {
                let fault =
                    Fault::new(format!("\"{}\" stands twice in with", demo.id), "each once");
                report.add(text.at, fault);
            }
            Some(demo) => with.push(demo.id),
            None => {
                let fault = Fault::new(
                    format!("unknown example build \"{}\"", text.value),
                    format!("one of {}", names.join(", ")),
                );
                report.add(text.at, fault.nearest(catalogue::nearest_of(&text.value, names)));
            }
        }
    }
    if with.len() > MOST {
        let fault =
            Fault::new(format!("{} builds to set beside", with.len()), format!("at most {MOST}"));
        report.add(fields.place("with"), fault);
    }
    with
}
