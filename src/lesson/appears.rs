//! Where quantities appear: in which lessons, under which headings.

use std::collections::BTreeMap;

use super::document::{Lesson, MentionKind};
use crate::quantity::catalogue;

/// A part of a lesson in which a quantity appears.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Appearance {
    /// The lesson's id.
    pub lesson: String,
    /// The lesson's title.
    pub title: String,
    /// The heading it stands under, by anchor and words; nothing before the first.
    pub heading: Option<(String, String)>,
}

/// Where every quantity appears, by its name; in the order of the lessons, each heading once.
pub(super) fn index<'l>(
    lessons: impl Iterator<Item = &'l Lesson>,
) -> BTreeMap<&'static str, Vec<Appearance>> {
    let mut index: BTreeMap<&'static str, Vec<Appearance>> = BTreeMap::new();
    for lesson in lessons {
        for mention in lesson.mentions.iter().filter(|m| m.kind == MentionKind::Quantity) {
            let Some(entry) = catalogue::find(&mention.name) else { continue };
            let before = lesson.headings.iter().take_while(|h| h.line <= mention.line);
            let heading = before.last().map(|h| (h.anchor.clone(), h.title.clone()));
            let here = Appearance {
                lesson: lesson.front.id.clone(),
                title: lesson.front.title.clone(),
                heading,
            };
            let known = index.entry(entry.id.name()).or_default();
            if !known.contains(&here) {
                known.push(here);
            }
        }
    }
    index
}
