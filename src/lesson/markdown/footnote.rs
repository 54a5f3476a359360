//! Footnotes and the marks that lead to them.

use std::collections::HashSet;

use crate::lesson::place::{Fault, Report};

/// The footnotes of a text.
#[derive(Default)]
pub(super) struct Footnotes {
    /// Every footnote, with its place in the file.
    stand: Vec<(String, usize)>,
    /// The names that marks lead to.
    marked: HashSet<String>,
}

impl Footnotes {
    /// Takes down a footnote that stands at a place of the file.
    pub(super) fn stands(&mut self, name: &str, at: usize) {
        self.stand.push((name.to_owned(), at));
    }

    /// Takes down a mark.
    pub(super) fn mark(&mut self, name: &str) {
        self.marked.insert(name.to_owned());
    }

    /// Reports footnotes that no mark leads to, and those that share a name.
    pub(super) fn check(&self, report: &mut Report) {
        let mut known = HashSet::new();
        for (name, at) in &self.stand {
            if !self.marked.contains(name) {
                let fault = Fault::new(
                    format!("no mark leads to the footnote \"{name}\""),
                    format!("[^{name}] in the text"),
                );
                report.flaw(*at, fault);
            }
            if !known.insert(name) {
                let fault =
                    Fault::new(format!("a second footnote \"{name}\""), "a name of its own");
                report.flaw(*at, fault);
            }
        }
    }
}
