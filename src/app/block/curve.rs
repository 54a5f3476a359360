//! The curve: a found number against a given one, your build as a dot that can be dragged.

mod chart;
mod overlay;

use std::collections::HashMap;

use iced::widget::canvas::Cache;
use iced::widget::{Column, Row, canvas, column, container, space, stack, text};
use iced::{Element, Fill, Length};
use plotters_iced::ChartWidget;

use super::frame;
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::settings::Settings;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::field;
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Block, BlockKind, Curve};
use crate::plot::{Build, PlotSpec, table};
use crate::quantity::Units;
use crate::study::curve::{Ask, Scale};

/// The height of the plot, in pixels.
const HEIGHT: f32 = 320.0;
/// The line above the plot where the pointer's reading stands.
const READING: f32 = 24.0;

/// What is drawn of a curve, and for which build it was drawn.
#[derive(Default)]
pub struct State {
    drawn: Option<Drawn>,
}

struct Drawn {
    spec: PlotSpec,
    cache: Cache,
    revision: u64,
    company: u64,
    units: Units,
    name: String,
    dark: bool,
}

/// What is done in a curve.
#[derive(Debug, Clone)]
pub enum Act {
    /// The number along the foot is being changed.
    Field(field::Event),
    /// The table is opened or closed.
    Table,
}

/// Draws anew the curves of a page that the last change has made stale.
pub fn refresh(
    states: &mut HashMap<usize, State>,
    blocks: &[Block],
    desk: &Desk,
    settings: &Settings,
    dark: bool,
) {
    for block in blocks {
        match &block.kind {
            BlockKind::Curve(curve) => {
                states.entry(block.line).or_default().refresh(curve, desk, settings, dark);
            }
            BlockKind::Quote(inner) | BlockKind::Alert { blocks: inner, .. } => {
                refresh(states, inner, desk, settings, dark);
            }
            BlockKind::List { items, .. } => {
                for item in items {
                    refresh(states, item, desk, settings, dark);
                }
            }
            _ => {}
        }
    }
}

impl State {
    fn refresh(&mut self, curve: &Curve, desk: &Desk, settings: &Settings, dark: bool) {
        let name = desk.name();
        let fresh = self.drawn.as_ref().is_some_and(|drawn| {
            drawn.revision == desk.revision()
                && drawn.company == desk.company.changes()
                && drawn.units == settings.units
                && drawn.name == name
                && drawn.dark == dark
        });
        if fresh {
            return;
        }
        let ask = Ask {
            find: curve.find,
            against: curve.against,
            from: curve.from,
            to: curve.to,
            scale: if curve.log { Scale::Log } else { Scale::Linear },
            limits: curve.limits.clone(),
            family: curve.family.clone(),
        };
        let own = crate::study::Curve::of(&ask, &desk.outcome.givens).ok();
        let others: Vec<(&str, crate::study::Curve)> = desk
            .company
            .all()
            .iter()
            .filter_map(|companion| {
                let curve = crate::study::Curve::of(&ask, &companion.outcome.givens).ok()?;
                Some((companion.name.as_str(), curve))
            })
            .collect();
        self.drawn = own
            .and_then(|own| {
                let others = others.iter().map(|(name, curve)| Build { name, curve });
                let builds: Vec<_> =
                    std::iter::once(Build { name: &name, curve: &own }).chain(others).collect();
                PlotSpec::of(&builds, &settings.units)
            })
            .map(|spec| Drawn {
                spec,
                cache: Cache::new(),
                revision: desk.revision(),
                company: desk.company.changes(),
                units: settings.units.clone(),
                name,
                dark,
            });
    }
}

/// A curve that starts on `line` of its lesson.
pub fn view<'a>(curve: &'a Curve, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let place = format!("curve:{line}");
    let plot: Element<'a, Message> =
        match page.marks.curves.get(&line).and_then(|s| s.drawn.as_ref()) {
            Some(drawn) => plot(curve, line, drawn, page)
                .map(move |event| Message::Curve(line, Act::Field(event))),
            None => text("This curve cannot be drawn for this build.").style(theme::warning).into(),
        };
    let drawn = page.marks.curves.get(&line).and_then(|state| state.drawn.as_ref());
    let open = page.marks.open.contains(&place);
    let word = if open { "Hide the table" } else { "Show as a table" };
    frame(
        curve.title.as_deref(),
        column![
            column![
                plot,
                drawn.map(|drawn| text(drawn.spec.summary.as_str()).size(size::LABEL).width(Fill)),
            ]
            .spacing(1.5 * UNIT),
            field::full(&place, curve.against, page.desk, page.settings)
                .map(move |event| Message::Curve(line, Act::Field(event))),
            pressable(Kind::Word, text(word).size(size::LABEL))
                .on_press(Message::Curve(line, Act::Table)),
            drawn.filter(|_| open).map(|drawn| rows(&drawn.spec)),
        ]
        .spacing(1.5 * UNIT),
    )
}

fn plot<'a>(
    curve: &'a Curve,
    line: usize,
    drawn: &'a Drawn,
    page: Page<'a>,
) -> Element<'a, field::Event> {
    let chart = chart::Plot { spec: &drawn.spec, cache: &drawn.cache, dark: page.dark };
    let under = column![
        space().height(READING),
        ChartWidget::new(chart).width(Fill).height(Length::Fixed(HEIGHT)),
    ];
    let overlay = overlay::Overlay {
        spec: &drawn.spec,
        place: format!("curve:{line}"),
        against: curve.against,
    };
    container(stack![under, canvas(overlay).width(Fill).height(Length::Fixed(HEIGHT + READING)),])
        .id(format!("plot:{line}"))
        .into()
}

/// The curve as a table.
fn rows<'a>(spec: &PlotSpec) -> Element<'a, Message> {
    let table = table(spec);
    let cells = |cells: Vec<String>, bold: bool| -> Element<'a, Message> {
        let font = if bold { SEMIBOLD } else { theme::REGULAR };
        Row::with_children(
            cells
                .into_iter()
                .map(|cell| text(cell).size(size::LABEL).font(font).width(Fill).into()),
        )
        .spacing(UNIT)
        .into()
    };
    let rows = table.rows.into_iter().map(|row| cells(row, false));
    column![cells(table.head, true), Column::with_children(rows).spacing(2)].spacing(4).into()
}
