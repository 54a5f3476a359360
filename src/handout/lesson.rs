//! A lesson on paper: a sheet for one build or for each group, and a key.

use bytes::Bytes;
use maud::{Markup, html};

use super::copies::Group;
use super::page::{Paper, file};
use super::{Copies, Ink, Subject, key, label, prose};
use crate::lesson::{Block, BlockKind, Lesson};
use crate::quantity::Units;

/// What a handout is made of.
#[derive(Clone, Copy)]
pub struct Request<'a> {
    /// The lesson.
    pub lesson: &'a Lesson,
    /// Its teacher's page, printed with the key.
    pub teacher: Option<&'a [Block]>,
    /// The pictures of the lesson, by file.
    pub picture: &'a dyn Fn(&str) -> Option<Bytes>,
    /// The build whose numbers it shows.
    pub subject: &'a Subject,
    /// A build beside it.
    pub companion: Option<&'a Subject>,
    /// The units it is written in.
    pub units: &'a Units,
    /// The paper.
    pub paper: Paper,
    /// Numbers of its own for each group.
    pub copies: Option<Copies>,
    /// Whether a key with the answers follows.
    pub key: bool,
    /// Whether all the text is printed, or only what a bench needs.
    pub whole: bool,
    /// Who is told how far it has come.
    pub told: Told<'a>,
}

/// Told after each sheet how many are made, and of how many; a `false` calls off the rest.
pub type Told<'a> = &'a dyn Fn(usize, usize) -> bool;

/// The handout as one HTML file; nothing if it was called off.
pub fn lesson(request: &Request<'_>) -> Option<String> {
    let (mut groups, mut sheets) = (Vec::new(), Vec::new());
    match request.copies {
        None => sheets.push(sheet(request, request.subject, None)),
        Some(copies) => {
            let each = copies.groups(request.lesson, request.subject, request.units);
            let of = each.len();
            for group in each {
                sheets.push(sheet(request, &group.subject, Some(&group)));
                groups.push(group);
                if !(request.told)(groups.len(), of) {
                    return None;
                }
            }
        }
    }
    if request.key {
        sheets.push(key::key(request, &groups));
        sheets.extend(key::teacher(request));
    }
    Some(file(&request.lesson.front.title, request.paper, &sheets))
}

/// What a sheet of `subject` is written with.
pub(super) fn ink<'a>(request: &Request<'a>, subject: &'a Subject, key: bool) -> Ink<'a> {
    Ink {
        subject,
        companion: request.companion,
        units: request.units,
        picture: request.picture,
        key,
    }
}

fn sheet(request: &Request<'_>, subject: &Subject, group: Option<&Group>) -> Markup {
    let lesson = request.lesson;
    let ink = Ink { key: false, ..ink_of(request, subject) };
    let seed = request.copies.map(|copies| copies.seed);
    html! {
        div.head {
            @if let Some(group) = group {
                b { "Group " (group.number) }
                @if let Some(seed) = seed { span { "seed " (seed) } }
            }
            span.who { "Name:" }
            span.who { "Date:" }
        }
        h1 { (lesson.front.title) }
        @if !lesson.front.goals.is_empty() {
            p { b { "After this you can" } }
            ul { @for goal in &lesson.front.goals { li { (goal) } } }
        }
        (numbers(request, ink))
        @for block in kept(lesson, request.whole) { (prose::one(block, ink)) }
    }
}

fn ink_of<'a>(request: &Request<'a>, subject: &'a Subject) -> Ink<'a> {
    ink(request, subject, false)
}

/// The numbers of the build that the lesson uses.
fn numbers(request: &Request<'_>, ink: Ink<'_>) -> Markup {
    let uses = &request.lesson.front.uses;
    html! {
        @if !uses.is_empty() {
            div.box {
                h3 { "The numbers of " (ink.subject.name) }
                table {
                    thead { tr { th { "Number" } th { "Here" } th { "Our own machine" } } }
                    tbody {
                        @for id in uses {
                            tr {
                                td { (label(*id)) }
                                td { (ink.number(*id).unwrap_or_else(|| "not known yet".to_owned())) }
                                td.write {}
                            }
                        }
                    }
                }
            }
        }
    }
}

/// The blocks a sheet prints. A short sheet leaves out running text where a live block or a picture
/// teaches the same, and all that is folded on the screen.
fn kept(lesson: &Lesson, whole: bool) -> Vec<&Block> {
    if whole {
        return lesson.blocks.iter().collect();
    }
    let mut kept = Vec::new();
    let mut first = true;
    for section in sections(&lesson.blocks) {
        let live = section.iter().any(|block| is_live(&block.kind));
        let mut after_formula = false;
        let mut of_section: Vec<&Block> = Vec::new();
        for block in section {
            let prose = match &block.kind {
                BlockKind::Paragraph(_) => true,
                BlockKind::List { start, .. } => start.is_none(),
                _ => false,
            };
            let folded = matches!(block.kind, BlockKind::Deeper(_) | BlockKind::Teacher(_));
            let keep = !folded && (!prose || !live || after_formula || first);
            after_formula = matches!(block.kind, BlockKind::Formula(_));
            if matches!(block.kind, BlockKind::Paragraph(_)) {
                first = false;
            }
            if keep {
                of_section.push(block);
            }
        }
        // A heading with nothing left under it goes too.
        if of_section.iter().any(|block| !matches!(block.kind, BlockKind::Heading { .. })) {
            kept.extend(of_section);
        }
    }
    kept
}

/// The blocks from one heading to the next.
fn sections(blocks: &[Block]) -> Vec<&[Block]> {
    blocks.chunk_by(|_, next| !matches!(next.kind, BlockKind::Heading { .. })).collect()
}

fn is_live(kind: &BlockKind) -> bool {
    !matches!(
        kind,
        BlockKind::Heading { .. }
            | BlockKind::Paragraph(_)
            | BlockKind::List { .. }
            | BlockKind::Quote(_)
            | BlockKind::Alert { .. }
            | BlockKind::Table { .. }
            | BlockKind::Code { .. }
            | BlockKind::Formula(_)
            | BlockKind::Rule
            | BlockKind::Footnote { .. }
            | BlockKind::Deeper(_)
            | BlockKind::Answers(_)
            | BlockKind::Teacher(_)
    )
}
