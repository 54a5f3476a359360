//! Link definitions, `[label]: destination`, which Markdown drops when no link uses them.

use std::collections::HashSet;
use std::ops::Range;

use pulldown_cmark::{Event, LinkType, Parser, RefDefs, Tag};

use crate::lesson::inline::OPTIONS;

/// The link definitions of a text.
pub(super) struct Definitions {
    /// Where those stand that some link uses, in order.
    used: Vec<Range<usize>>,
}

impl Definitions {
    /// The definitions the parser found in the text.
    pub(super) fn of(text: &str, found: &RefDefs) -> Self {
        let labels = match found.iter().next() {
            Some(_) => labels_used(text),
            None => HashSet::new(),
        };
        let mut used: Vec<_> = found
            .iter()
            .filter(|(label, _)| labels.contains(&label.to_lowercase()))
            .map(|(_, definition)| definition.span.clone())
            .collect();
        used.sort_by_key(|span| span.start);
        Self { used }
    }

    /// The words of definitions without use between two blocks, and where they start. Beside them
    /// such a part of the text holds marks alone.
    pub(super) fn unused(&self, text: &str, part: Range<usize>) -> Option<(usize, String)> {
        let mut from = part.start;
        let mut rest = String::new();
        let first = self.used.partition_point(|span| span.end <= from);
        for span in self.used.iter().skip(first).take_while(|span| span.start < part.end) {
            rest.push_str(text.get(from..span.start).unwrap_or_default());
            from = span.end;
        }
        rest.push_str(text.get(from..part.end).unwrap_or_default());
        if !rest.contains("]:") {
            return None;
        }
        let lines = rest.lines().map(|line| line.trim_start_matches(['>', ' ', '\t']).trim_end());
        let lines: Vec<_> = lines.filter(|line| !line.is_empty()).collect();
        let written = text.get(part.clone()).unwrap_or_default();
        let start = lines.first().and_then(|line| written.find(line)).unwrap_or(0);
        Some((part.start + start, lines.join(" ")))
    }
}

/// The labels that some link uses, in small letters.
fn labels_used(text: &str) -> HashSet<String> {
    Parser::new_ext(text, OPTIONS)
        .filter_map(|event| match event {
            Event::Start(Tag::Link { link_type, id, .. } | Tag::Image { link_type, id, .. }) => {
                matches!(link_type, LinkType::Reference | LinkType::Collapsed | LinkType::Shortcut)
                    .then(|| id.to_lowercase())
            }
            _ => None,
        })
        .collect()
}
