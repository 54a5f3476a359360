//! Every limit checked at once, what gives first at the top.

mod bar;
mod card;
mod filter;

use std::collections::{HashMap, HashSet};

use iced::widget::{Column, column, row, text};
use iced::{Element, Fill};

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, MEASURE, SEMIBOLD, UNIT, size};
use crate::app::widget::choice::choice;
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Front;
use crate::quantity::AnyId;
use crate::study::walk_round::{Finding, Moves, Verdict, moves, walk_round};
pub use filter::Filter;

/// What the reader looks at on the walk-round, and what was found there.
#[derive(Default)]
pub struct WalkRound {
    filter: Filter,
    /// The limits whose moves are unfolded, by their margin.
    open: HashSet<AnyId>,
    /// Whether the limits that do not apply are unfolded.
    left_out: bool,
    found: Option<Found>,
}

/// What was found of a build.
struct Found {
    revision: u64,
    findings: Vec<Finding>,
    /// What would change the limits that were unfolded.
    moves: HashMap<AnyId, Moves>,
}

/// What happens on the walk-round.
#[derive(Debug, Clone)]
pub enum Message {
    /// A lesson is wanted.
    Lesson(String),
    /// Only these limits are to be shown.
    Filter(Filter),
    /// What would change a limit, in or out; by its margin.
    Turn(AnyId),
    /// The limits that do not apply, in or out.
    TurnLeftOut,
    /// It is to be printed.
    Print,
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// A lesson.
    Lesson(String),
    /// The record of the build on paper.
    Print,
}

impl WalkRound {
    /// Acts on a message.
    pub fn update(&mut self, message: Message) -> Action {
        match message {
            Message::Lesson(id) => return Action::Lesson(id),
            Message::Filter(filter) => self.filter = filter,
            Message::Turn(margin) => {
                if !self.open.remove(&margin) {
                    self.open.insert(margin);
                }
            }
            Message::TurnLeftOut => self.left_out = !self.left_out,
            Message::Print => return Action::Print,
        }
        Action::None
    }

    /// Checks the limits anew where the build has changed, and works out what would change those
    /// that are unfolded.
    pub fn refresh(&mut self, desk: &Desk) {
        let revision = desk.revision();
        let found = self.found.take().filter(|found| found.revision == revision);
        let mut found = found.unwrap_or_else(|| Found {
            revision,
            findings: walk_round(&desk.outcome),
            moves: HashMap::new(),
        });
        for finding in found.findings.iter().filter(|it| self.open.contains(&it.limit.margin)) {
            let worked_out = || moves(finding.limit, &desk.outcome);
            found.moves.entry(finding.limit.margin).or_insert_with(worked_out);
        }
        self.found = Some(found);
    }

    /// Throws away what was found of another build.
    pub fn forget(&mut self) {
        self.found = None;
    }

    /// The limits, worst first.
    pub fn view<'a>(
        &'a self,
        lessons: &'a [Front],
        desk: &'a Desk,
        settings: &'a Settings,
    ) -> Element<'a, Message> {
        let none: &[Finding] = &[];
        let findings = self.found.as_ref().map_or(none, |found| &found.findings);
        let shown: Vec<_> = findings
            .iter()
            .filter(|finding| self.filter.shows(finding))
            .map(|finding| self.card(finding, lessons, (desk, settings)))
            .collect();
        let nothing = shown.is_empty().then(|| {
            text("No limit of this build is of that kind.").size(size::BODY).style(theme::soft)
        });
        let page = column![
            text(format!("Walk round {}", desk.name())).size(size::TITLE).font(BOLD).width(Fill),
            text(
                "Each limit, what gives first at the top. A margin is what holds over what is \
                 asked: under 1 it gives. These checks do not replace a maker’s manual, local \
                 rules or a test with your own eyes on it."
            )
            .size(size::BODY)
            .line_height(theme::LEADING)
            .width(Fill),
            row![
                text(in_all(findings)).size(size::LABEL).font(SEMIBOLD),
                pressable(Kind::Plain, text("Print").size(size::LABEL)).on_press(Message::Print),
            ]
            .spacing(2.0 * UNIT)
            .align_y(iced::Center)
            .width(Fill)
            .wrap()
            .vertical_spacing(UNIT),
            choice(Filter::offered().map(|filter| {
                (filter.in_words(), filter == self.filter, Message::Filter(filter))
            })),
            column![nothing, Column::with_children(shown).spacing(2.0 * UNIT)],
            self.left_out(findings),
        ]
        .spacing(3.0 * UNIT)
        .max_width(MEASURE)
        .width(Fill);
        super::scrolled(page)
    }

    fn card<'a>(
        &'a self,
        finding: &'a Finding,
        lessons: &'a [Front],
        (desk, settings): (&'a Desk, &'a Settings),
    ) -> Element<'a, Message> {
        let margin = finding.limit.margin;
        let moves = self.found.as_ref().and_then(|found| found.moves.get(&margin));
        let moves = moves.filter(|_| self.open.contains(&margin));
        let lesson = lessons.iter().find(|lesson| lesson.id == finding.limit.lesson);
        card::view(finding, (moves, lesson), desk, settings)
    }

    /// The limits that do not apply, and why.
    fn left_out<'a>(&'a self, findings: &'a [Finding]) -> Option<Element<'a, Message>> {
        let left_out: Vec<&Finding> =
            findings.iter().filter(|it| it.verdict == Verdict::DoesNotApply).collect();
        let words = match left_out.len() {
            0 => return None,
            1 => "1 limit does not apply".to_owned(),
            count => format!("{count} limits do not apply"),
        };
        let mark = if self.left_out { "−" } else { "+" };
        let each = left_out.into_iter().filter(|_| self.left_out).map(|finding| {
            column![
                text(finding.limit.title).size(size::LABEL).font(SEMIBOLD).width(Fill),
                text(&finding.sentence).size(size::LABEL).width(Fill),
            ]
            .into()
        });
        Some(
            column![
                pressable(Kind::Plain, text(format!("{words} {mark}")).size(size::LABEL))
                    .on_press(Message::TurnLeftOut),
                Column::with_children(each).spacing(1.5 * UNIT),
            ]
            .spacing(1.5 * UNIT)
            .into(),
        )
    }
}

/// How many stand how, in words.
fn in_all(findings: &[Finding]) -> String {
    let count = |of: fn(&Verdict) -> bool| findings.iter().filter(|it| of(&it.verdict)).count();
    let gives = count(|it| matches!(it, Verdict::Gives));
    let parts = [
        (gives, if gives == 1 { "gives" } else { "give" }),
        (count(|it| matches!(it, Verdict::Doubtful)), "in doubt"),
        (count(|it| matches!(it, Verdict::Invalid(_))), "without an answer"),
        (count(|it| matches!(it, Verdict::Holds)), "hold"),
        (count(|it| matches!(it, Verdict::NotKnown(_))), "not known yet"),
    ];
    let told = parts.iter().filter(|(count, _)| *count > 0);
    told.map(|(count, words)| format!("{count} {words}")).collect::<Vec<_>>().join(", ")
}
