//! Every limit checked at once, what gives first at the top.

use iced::widget::{Column, column, container, progress_bar, row, scrollable, text};
use iced::{Background, Center, Element, Fill, Length, Padding, border};

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, MEASURE, SEMIBOLD, UNIT, ink, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Lesson;
use crate::quantity::catalogue;
use crate::study::walk_round::{Finding, Verdict, shown, walk_round};

/// A lesson is wanted.
#[derive(Debug, Clone)]
pub struct OpenLesson(pub String);

/// The limits, worst first.
pub fn view<'a>(
    lessons: &'a [Lesson],
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, OpenLesson> {
    let findings = walk_round(&desk.outcome);
    let cards = findings.into_iter().map(|finding| card(finding, lessons, desk, settings));
    let page = column![
        text(format!("Walk round {}", desk.name())).size(size::TITLE).font(BOLD).width(Fill),
        text(
            "Each limit, what gives first at the top. A margin is what holds over what is asked: \
             under 1 it gives. These checks do not replace a maker’s manual, local rules or a \
             test with your own eyes on it."
        )
        .size(size::BODY)
        .line_height(theme::LEADING)
        .width(Fill),
        Column::with_children(cards).spacing(2.0 * UNIT),
    ]
    .spacing(3.0 * UNIT)
    .max_width(MEASURE)
    .width(Fill);
    scrollable(container(page).center_x(Fill).padding(Padding::from([3.0 * UNIT, 2.0 * UNIT])))
        .id(super::reading::PAGE)
        .direction(theme::bar())
        .style(theme::scroll)
        .height(Fill)
        .into()
}

fn card<'a>(
    finding: Finding,
    lessons: &'a [Lesson],
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, OpenLesson> {
    let word = finding.verdict.in_a_word();
    let urgent = matches!(finding.verdict, Verdict::Gives | Verdict::Doubtful);
    let number = finding
        .margin
        .map(|margin| text(shown(finding.limit, margin)).size(size::ANSWER).font(BOLD));
    let range = finding.range.map(|(low, high)| {
        let (low, high) = (shown(finding.limit, low), shown(finding.limit, high));
        text(format!("could be {low} to {high}")).size(size::SMALL).style(theme::soft)
    });
    let compared = compared(&finding, desk, settings);
    let applies = finding.verdict != Verdict::DoesNotApply;
    let lesson = lessons.iter().find(|lesson| applies && lesson.id == finding.limit.lesson);
    container(
        column![
            row![
                text(finding.limit.title).size(size::MINOR).font(SEMIBOLD).width(Fill),
                text(word).size(size::LABEL).font(SEMIBOLD).style(if urgent {
                    theme::warning
                } else {
                    theme::soft
                }),
            ]
            .spacing(UNIT),
            row![number, range].spacing(UNIT).align_y(Center),
            finding.margin.map(bar),
            compared.map(|words| text(words).size(size::LABEL).width(Fill)),
            text(finding.sentence).size(size::LABEL).width(Fill),
            applies.then(|| {
                text(format!("First thing to try: {}", finding.limit.first_move))
                    .size(size::LABEL)
                    .width(Fill)
            }),
            lesson.map(|lesson| {
                pressable(Kind::Word, text(format!("Why: {}", lesson.title)).size(size::LABEL))
                    .on_press(OpenLesson(lesson.id.clone()))
            }),
        ]
        .spacing(UNIT),
    )
    .style(if urgent { theme::caution } else { theme::block })
    .padding(2.0 * UNIT)
    .width(Fill)
    .into()
}

/// How much of what holds is asked for, full at the limit.
fn bar<'a>(margin: f64) -> Element<'a, OpenLesson> {
    let asked = (1.0 / margin.max(1e-6)).clamp(0.0, 1.0) as f32;
    let gives = margin < 1.0;
    progress_bar(0.0..=1.0, asked)
        .girth(Length::Fixed(UNIT))
        .style(move |theme| {
            let ink = ink(theme);
            progress_bar::Style {
                background: Background::Color(ink.line),
                bar: Background::Color(if gives { ink.caution } else { ink.soft }),
                border: border::rounded(4),
            }
        })
        .into()
}

fn compared(finding: &Finding, desk: &Desk, settings: &Settings) -> Option<String> {
    let shown = |id: crate::quantity::AnyId| {
        let entry = catalogue::find(id.name())?;
        let si = desk.outcome.values.si(id)?;
        Some(format!("{} {}", entry.label, settings.units.show(entry, si)))
    };
    let (demand, capacity) = (shown(finding.limit.demand)?, shown(finding.limit.capacity)?);
    Some(crate::app::widget::symbol::capitalised(&format!("{demand}; {capacity}.")))
}
