//! Proofreading: everything wrong in a set of lessons.

mod claims;
mod prints;

use std::collections::BTreeMap;

use super::document::{Lesson, Mention, MentionKind};
use super::library::{Kept, Library};
use super::problem::Problem;
use crate::quantity::catalogue::nearest_of;

/// Everything wrong in a library, file by file, top to bottom; empty when all is well.
pub fn check(library: &Library) -> Vec<Problem> {
    let lessons = library.lessons.iter().flat_map(|lesson| &lesson.problems);
    let mut problems: Vec<_> = library.problems.iter().chain(lessons).cloned().collect();
    problems.extend(library.kept().iter().flat_map(proofread));
    problems.sort_by(|a, b| (&a.file, a.line, a.column).cmp(&(&b.file, b.line, b.column)));
    problems
}

/// What is wrong with a text that it works with.
fn proofread(kept: &Kept) -> Vec<Problem> {
    let (lesson, claims, mut problems) = super::proofread(&kept.text, &kept.file, kept.is_page);
    problems.extend(claims::problems(&lesson.file, &claims));
    problems.extend(prints::problems(&lesson, &claims));
    problems
}

/// Holds lessons, each with the name of its folder, against each other; notes what is wrong in them.
pub(super) fn hold_together(lessons: &mut [(String, Lesson)]) {
    let known: BTreeMap<String, i64> =
        lessons.iter().map(|(folder, lesson)| (folder.clone(), lesson.order)).collect();
    for (folder, lesson) in lessons {
        let found: Vec<_> = lesson
            .mentions
            .iter()
            .filter_map(|mention| problem(mention, folder, lesson, &known))
            .collect();
        lesson.problems.extend(found);
        lesson.problems.sort_by_key(|problem| (problem.line, problem.column));
    }
}

fn problem(
    mention: &Mention,
    folder: &str,
    lesson: &Lesson,
    known: &BTreeMap<String, i64>,
) -> Option<Problem> {
    let name = &mention.name;
    let about = |message: String| Problem::about(&lesson.file, mention, message);
    match mention.kind {
        MentionKind::Id if name != folder => Some(Problem {
            expected: "the name of its folder".to_owned(),
            nearest: Some(folder.to_owned()),
            ..about(format!("the lesson \"{name}\" stands in the folder \"{folder}\""))
        }),
        MentionKind::Need | MentionKind::Lesson if !known.contains_key(name) => Some(Problem {
            expected: "the id of a lesson".to_owned(),
            nearest: nearest_of(name, known.keys().map(String::as_str)).map(str::to_owned),
            ..about(format!("unknown lesson \"{name}\""))
        }),
        MentionKind::Need if known.get(name).is_some_and(|order| *order >= lesson.order) => {
            Some(Problem {
                expected: format!("a lesson with an order below {}", lesson.order),
                ..about(format!("needs \"{name}\", which does not come before it"))
            })
        }
        _ => None,
    }
}
