//! Proofreading: everything wrong in a set of lessons.

mod claims;
mod prints;

use super::document::{Front, Lesson, Mention, MentionKind};
use super::library::{Leaf, Library};
use super::problem::Problem;
use crate::quantity::catalogue::nearest_of;

/// Everything wrong in a library, file by file, top to bottom; empty when all is well.
pub fn check(library: &Library) -> Vec<Problem> {
    library.read_all();
    let lessons = library.fronts().iter().flat_map(|front| library.problems_of(&front.id));
    let mut problems: Vec<_> = library.problems.iter().chain(lessons).cloned().collect();
    problems.extend(library.leaves().flat_map(|(_, leaf)| proofread(leaf)));
    problems.sort_by(|a, b| (&a.file, a.line, a.column).cmp(&(&b.file, b.line, b.column)));
    problems
}

/// What is wrong with a text that it works with.
fn proofread(leaf: &Leaf) -> Vec<Problem> {
    let (lesson, claims, mut problems) = super::proofread(&leaf.text, &leaf.file, leaf.is_page);
    problems.extend(claims::problems(&lesson.file, &claims));
    problems.extend(prints::problems(&lesson, &claims));
    problems
}

/// Holds a lesson against the others of its library; notes what is wrong in it.
pub(super) fn hold_to_others(lesson: &mut Lesson, others: &[Front]) {
    let found: Vec<_> =
        lesson.mentions.iter().filter_map(|mention| problem(mention, lesson, others)).collect();
    lesson.problems.extend(found);
    lesson.problems.sort_by_key(|problem| (problem.line, problem.column));
}

fn problem(mention: &Mention, lesson: &Lesson, others: &[Front]) -> Option<Problem> {
    let name = &mention.name;
    let (folder, order) = (&lesson.front.id, lesson.front.order);
    let other = others.iter().find(|other| other.id == *name);
    let about = |message: String| Problem::about(&lesson.file, mention, message);
    match mention.kind {
        MentionKind::Id if name != folder => Some(Problem {
            expected: "the name of its folder".to_owned(),
            nearest: Some(folder.clone()),
            ..about(format!("the lesson \"{name}\" stands in the folder \"{folder}\""))
        }),
        MentionKind::Need | MentionKind::Lesson if other.is_none() => Some(Problem {
            expected: "the id of a lesson".to_owned(),
            nearest: nearest_of(name, others.iter().map(|other| other.id.as_str()))
                .map(str::to_owned),
            ..about(format!("unknown lesson \"{name}\""))
        }),
        MentionKind::Need if other.is_some_and(|other| other.order >= order) => Some(Problem {
            expected: format!("a lesson with an order below {order}"),
            ..about(format!("needs \"{name}\", which does not come before it"))
        }),
        _ => None,
    }
}
