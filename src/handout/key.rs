//! The key: every answer with the wrong numbers that common slips give, the answers of each group,
//! and the teacher's page.

use maud::{Markup, html};

use super::block::{result, slip_value};
use super::copies::Group;
use super::lesson::{Request, ink};
use super::{Ink, label, prose};
use crate::lesson::{BlockKind, GuessKind, of_spans};
use crate::quantity::AnyId;

/// The key of a handout, and of each of its groups.
pub(super) fn key(request: &Request<'_>, groups: &[Group]) -> Markup {
    let lesson = request.lesson;
    let own = ink(request, request.subject, true);
    let asked = lesson.every_block().into_iter().filter(|block| {
        matches!(
            block.kind,
            BlockKind::Guess(_)
                | BlockKind::Faded(_)
                | BlockKind::Target(_)
                | BlockKind::Calculator(_)
                | BlockKind::Levers(_)
                | BlockKind::Measure(_)
                | BlockKind::Answers(_)
        )
    });
    html! {
        h1 { "Key: " (lesson.front.title) }
        p { "With the numbers of " (request.subject.name) ". Not for those who are asked." }
        @for groups in groups.chunks(ABREAST) { (of_groups(request, groups)) }
        @for block in asked { (prose::one(block, own)) }
    }
}

/// How many groups stand side by side in a table.
const ABREAST: usize = 6;

/// The numbers the groups got, what they come to, and what slips give.
fn of_groups(request: &Request<'_>, groups: &[Group]) -> Markup {
    let Some(first) = groups.first() else { return html! {} };
    let columns: Vec<Vec<Row>> =
        groups.iter().map(|group| rows(request, ink(request, &group.subject, true))).collect();
    let asked: Vec<&Row> = columns.first().into_iter().flatten().collect();
    html! {
        table.long.dense {
            thead {
                tr {
                    th { "Number" }
                    @for group in groups { th { "Group " (group.number) } }
                }
            }
            tbody {
                @for (place, (id, _)) in first.numbers.iter().enumerate() {
                    tr {
                        td { (label(*id)) }
                        @for group in groups {
                            td {
                                @if let Some((id, si)) = group.numbers.get(place) {
                                    (ink(request, &group.subject, true).shown(*id, *si))
                                }
                            }
                        }
                    }
                }
                @for (place, row) in asked.iter().enumerate() {
                    (across(html! { b { (row.asked) } }, &columns, |column| {
                        column.get(place).map(|row| row.answer.as_str())
                    }))
                    @for (slip, (_, idea)) in row.slips.iter().enumerate() {
                        (across(html! { span.small { "slip: " (idea) } }, &columns, |column| {
                            column.get(place)?.slips.get(slip).map(|(wrong, _)| wrong.as_str())
                        }))
                    }
                }
            }
        }
    }
}

/// A row with one cell for each group.
fn across(head: Markup, columns: &[Vec<Row>], cell: impl Fn(&[Row]) -> Option<&str>) -> Markup {
    html! {
        tr { td { (head) } @for column in columns { td { (cell(column).unwrap_or_default()) } } }
    }
}

struct Row {
    asked: String,
    answer: String,
    /// Wrong numbers, and the slip that gives each.
    slips: Vec<(String, String)>,
}

/// Every number that the lesson asks for, each once.
fn rows(request: &Request<'_>, ink: Ink<'_>) -> Vec<Row> {
    let mut found: Vec<AnyId> = Vec::new();
    let mut rows = Vec::new();
    for block in request.lesson.every_block() {
        match &block.kind {
            BlockKind::Guess(guess) => {
                let GuessKind::Number { answer, quantity, slips, .. } = &guess.kind else {
                    continue;
                };
                let Some(truth) = answer.si(|id| ink.subject.si(id)) else { continue };
                let slips = slips.iter().filter_map(|slip| {
                    let si = slip_value(slip.value, Some(truth), ink.subject)?;
                    Some((ink.shown(*quantity, si), slip.idea.clone()))
                });
                rows.push(Row {
                    asked: format!("{} (guess)", label(*quantity)),
                    answer: ink.shown(*quantity, truth),
                    slips: slips.collect(),
                });
            }
            BlockKind::Faded(faded) => {
                for step in faded.steps.iter().filter(|step| step.blank) {
                    rows.push(Row {
                        asked: of_spans(&step.say),
                        answer: result(step, ink).unwrap_or_default(),
                        slips: Vec::new(),
                    });
                }
            }
            BlockKind::Calculator(calculator) => found.extend(&calculator.find),
            _ => {}
        }
    }
    let mut seen: Vec<AnyId> = Vec::new();
    for id in found {
        if seen.contains(&id) {
            continue;
        }
        seen.push(id);
        rows.push(Row {
            asked: label(id).to_owned(),
            answer: ink.number(id).unwrap_or_else(|| "not known yet".to_owned()),
            slips: Vec::new(),
        });
    }
    rows
}

/// The teacher's page and the notes that stand in the lesson, on pages of their own.
pub(super) fn teacher(request: &Request<'_>) -> Option<Markup> {
    let ink = ink(request, request.subject, true);
    let notes: Vec<_> = request
        .lesson
        .every_block()
        .into_iter()
        .filter(|block| matches!(block.kind, BlockKind::Teacher(_)))
        .collect();
    if request.teacher.is_none() && notes.is_empty() {
        return None;
    }
    Some(html! {
        @if let Some(page) = request.teacher { (prose::blocks(page, ink)) }
        @for note in notes { (prose::one(note, ink)) }
    })
}
