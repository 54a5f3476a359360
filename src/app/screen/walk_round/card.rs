//! One limit: how it stands, and what would change that.

use iced::widget::{Column, column, container, row, text};
use iced::{Center, Element, Fill};

use super::{Message, bar::Bar};
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::symbol::{capitalised, unbroken};
use crate::lesson::Front;
use crate::quantity::{AnyId, Units, catalogue};
use crate::study::Lever;
use crate::study::walk_round::{Finding, Moves, STEP, Verdict, shown};

/// A limit with its moves, if they are unfolded, and the lesson that explains it.
pub fn view<'a>(
    finding: &'a Finding,
    (moves, lesson): (Option<&'a Moves>, Option<&'a Front>),
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let word = match finding.verdict {
        Verdict::Gives => "Gives",
        Verdict::Doubtful => "In doubt",
        Verdict::Holds => "Holds",
        Verdict::NotKnown(_) => "Not known yet",
        Verdict::Invalid(_) => "No answer",
        Verdict::DoesNotApply => "Does not apply",
    };
    let limit = finding.limit;
    let urgent = matches!(finding.verdict, Verdict::Gives | Verdict::Doubtful);
    let number =
        finding.margin.map(|margin| text(shown(limit, margin)).size(size::ANSWER).font(BOLD));
    let range = finding.range.map(|(low, high)| {
        text(format!("could be {} to {}", shown(limit, low), shown(limit, high)))
            .size(size::SMALL)
            .style(theme::soft)
    });
    let compared = compared(finding, desk, settings);
    let bar = finding.margin.map(|margin| Bar { margin, range: finding.range }.view());
    let turn = finding.margin.map(|_| {
        let mark = if moves.is_some() { "−" } else { "+" };
        pressable(Kind::Word, text(format!("What would change this? {mark}")).size(size::LABEL))
            .on_press(Message::Turn(limit.margin))
    });
    let lesson = lesson.map(|lesson| {
        pressable(Kind::Word, text(format!("Why: {}", lesson.title)).size(size::LABEL))
            .on_press(Message::Lesson(lesson.id.clone()))
    });
    let label = |words: &str| text(unbroken(words).into_owned()).size(size::LABEL).width(Fill);
    container(
        column![
            row![
                text(limit.title).size(size::MINOR).font(SEMIBOLD).width(Fill),
                text(word).size(size::LABEL).font(SEMIBOLD).style(if urgent {
                    theme::warning
                } else {
                    theme::soft
                }),
            ]
            .spacing(UNIT),
            row![number, range].spacing(UNIT).align_y(Center),
            bar,
            compared.as_deref().map(label),
            label(&finding.sentence),
            label(&format!("First thing to try: {}", limit.first_move)),
            row![turn, lesson].spacing(2.0 * UNIT).width(Fill).wrap().vertical_spacing(UNIT),
            moves.map(|moves| change(moves, &settings.units)),
        ]
        .spacing(UNIT),
    )
    .style(if urgent { theme::caution } else { theme::block })
    .padding(2.0 * UNIT)
    .width(Fill)
    .into()
}

/// What would change it: moves that cost nothing, moves that are bought, and what to measure.
fn change<'a>(moves: &Moves, units: &Units) -> Element<'a, Message> {
    let none = (moves.free.is_empty() && moves.bought.is_empty())
        .then(|| text("No number in your hands raises this margin.").size(size::LABEL));
    let doubt = match moves.doubt {
        Some((id, share)) => format!(
            "What to measure first: the {}. {:.0}\u{a0}% of the doubt comes from it.",
            label(id),
            100.0 * share
        ),
        None => "What to measure first cannot be said: none of its numbers says how sure it is."
            .to_owned(),
    };
    let inside = column![
        text(format!("Each number moved by {STEP:.0}\u{a0}%, alone, the way that helps."))
            .size(size::SMALL)
            .style(theme::soft)
            .width(Fill),
        none,
        group("Costs nothing", &moves.free, units),
        group("Takes parts or work", &moves.bought, units),
        text(doubt).size(size::LABEL).width(Fill),
    ]
    .spacing(UNIT);
    container(inside).style(theme::note).padding(1.5 * UNIT).width(Fill).into()
}

fn group<'a>(title: &'a str, levers: &[Lever], units: &Units) -> Option<Element<'a, Message>> {
    let each: Vec<_> = levers.iter().map(|lever| one(lever, units)).collect();
    (!each.is_empty()).then(|| {
        column![
            text(title).size(size::LABEL).font(SEMIBOLD),
            Column::with_children(each).spacing(UNIT / 2.0),
        ]
        .spacing(UNIT / 2.0)
        .into()
    })
}

/// A number, its way, and what it does to the margin.
fn one<'a>(lever: &Lever, units: &Units) -> Element<'a, Message> {
    let shown = |si| {
        catalogue::find(lever.id.name())
            .map_or_else(String::new, |entry| units.show(entry, si).to_string())
    };
    let span = format!("{} → {}", shown(lever.from), shown(lever.to));
    column![
        row![
            text(capitalised(label(lever.id))).size(size::LABEL).width(Fill),
            text(format!("margin {}", lever.effect())).size(size::LABEL).font(SEMIBOLD),
        ]
        .spacing(UNIT),
        text(span).size(size::SMALL).style(theme::soft).width(Fill),
    ]
    .into()
}

fn label(id: AnyId) -> &'static str {
    catalogue::find(id.name()).map_or(id.name(), |entry| entry.label)
}

fn compared(finding: &Finding, desk: &Desk, settings: &Settings) -> Option<String> {
    let shown = |id: AnyId| {
        let entry = catalogue::find(id.name())?;
        let si = desk.outcome.values.si(id)?;
        Some(format!("{} {}", entry.label, settings.units.show(entry, si)))
    };
    let (demand, capacity) = (shown(finding.limit.demand)?, shown(finding.limit.capacity)?);
    Some(capitalised(&format!("{demand}; {capacity}.")))
}
