//! Numbers that a text is said to print, looked for in the text from heading to heading.

use crate::lesson::claim::{Claim, Says};
use crate::lesson::document::Lesson;
use crate::lesson::printed::alike;
use crate::lesson::problem::Problem;
use crate::lesson::words::sections_in_full;

/// A part of a text from one heading to the next.
struct Part<'a> {
    line: usize,
    title: Option<&'a str>,
    text: String,
}

/// Every number that a text is said to print and does not.
pub(super) fn problems(lesson: &Lesson, claims: &[Claim]) -> Vec<Problem> {
    if !claims.iter().any(|claim| matches!(claim.says, Says::Prints { .. })) {
        return Vec::new();
    }
    let parts: Vec<_> = sections_in_full(lesson)
        .into_iter()
        .map(|section| Part {
            line: section.heading.map_or(0, |heading| heading.line),
            title: section.heading.map(|heading| heading.title.as_str()),
            text: alike(&section.text),
        })
        .collect();
    claims.iter().filter_map(|claim| problem(&lesson.file, claim, &parts)).collect()
}

fn problem(file: &str, claim: &Claim, parts: &[Part]) -> Option<Problem> {
    let Says::Prints { printed, .. } = &claim.says else { return None };
    let part = parts.iter().rev().find(|part| part.line <= claim.line)?;
    if printed.stands_in(&part.text) {
        return None;
    }
    let place = match part.title {
        Some(title) => format!("under the heading \"{title}\""),
        None => "before the first heading".to_owned(),
    };
    Some(Problem {
        file: file.to_owned(),
        line: claim.line,
        column: claim.column,
        message: format!("the text prints no \"{}\" {place}", printed.text()),
        expected: "the number as it is printed there, or a block without it".to_owned(),
        nearest: None,
    })
}
