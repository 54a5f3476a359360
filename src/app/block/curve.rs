//! The curve: a found number against a given one, your build as a dot that can be dragged.

pub(super) mod chart;
pub(super) mod overlay;
mod reader;
pub(super) mod rows;

use std::collections::HashMap;

pub use chart::style;
use iced::widget::canvas::Cache;
use iced::widget::{canvas, column, container, row, stack, text};
use iced::{Element, Fill, Length};
use plotters_iced::ChartWidget;
pub use reader::Read;

use super::{PICTURE, file_name, frame, saving};
use crate::app::desk::Desk;
use crate::app::page::{Message, Page, Pictured};
use crate::app::settings::Settings;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::field;
use crate::app::widget::focusing::focusing;
use crate::app::widget::pressable::{Kind, pressable};
use crate::asked;
use crate::lesson::{Block, BlockKind, Curve};
use crate::plot::save::Figure;
use crate::plot::{self, Build, PlotSpec, PlotStyle};
use crate::quantity::Units;
use crate::study::curve::{self as study, Footing, Numbers};

/// The height of the plot, in pixels.
const HEIGHT: f32 = 320.0;
/// The line above the plot where the pointer's reading stands.
const READING: f32 = 24.0;

/// What is drawn of a curve, and for which build it was drawn.
#[derive(Default)]
pub struct State {
    drawn: Option<Drawn>,
    /// Where the reader reads by key, in the SI unit of the foot.
    reading: Option<f64>,
}

struct Drawn {
    spec: PlotSpec,
    cache: Cache,
    /// The state of the build it was last held against, and what it hangs on of it.
    revision: u64,
    footing: Footing,
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
    /// Numbers are read off by key.
    Read(Read),
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
        let mut drawn = self.drawn.as_mut().filter(|drawn| {
            drawn.company == desk.company.changes()
                && drawn.units == settings.units
                && drawn.name == name
                && drawn.dark == dark
        });
        if drawn.as_ref().is_some_and(|drawn| drawn.revision == desk.revision()) {
            return;
        }
        let ask = asked::curve(curve);
        let own = Numbers { givens: &desk.outcome.givens, spreads: &desk.tally.spreads };
        let footing = Footing::of(&ask, own);
        if let Some(drawn) = drawn.take_if(|drawn| drawn.footing == footing) {
            drawn.revision = desk.revision();
            return;
        }
        let company = desk.company.all();
        let givens: Vec<_> = company.iter().map(|companion| &companion.outcome.givens).collect();
        self.drawn = study::together(&ask, own, &givens)
            .ok()
            .and_then(|(own, others)| {
                let others = company.iter().zip(&others).filter_map(|(companion, curve)| {
                    Some(Build { name: &companion.name, curve: curve.as_ref()? })
                });
                let builds: Vec<_> =
                    std::iter::once(Build { name: &name, curve: &own }).chain(others).collect();
                PlotSpec::of(&builds, &settings.units)
            })
            .map(|spec| Drawn {
                spec,
                cache: Cache::new(),
                revision: desk.revision(),
                footing,
                company: desk.company.changes(),
                units: settings.units.clone(),
                name,
                dark,
            });
    }
}

impl State {
    /// The curve as a file may hold it, and a name for that file.
    pub fn figure(&self) -> Option<(Figure, String)> {
        let spec = &self.drawn.as_ref()?.spec;
        let svg = plot::svg(spec, PICTURE, &PlotStyle::PAPER);
        Some((Figure { svg, numbers: plot::figures(spec) }, file_name(&spec.title)))
    }
}

/// A curve that starts on `line` of its lesson.
pub fn view<'a>(curve: &'a Curve, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let place = format!("curve:{line}");
    let state = page.marks.curves.get(&line);
    let drawn = state.and_then(|state| state.drawn.as_ref());
    let plot: Element<'a, Act> = match state.zip(drawn) {
        Some((state, drawn)) => plot(curve, line, state, drawn, page),
        None => text("This curve cannot be drawn for this build.").style(theme::warning).into(),
    };
    let open = page.marks.open.contains(&place);
    let table = if open { "Hide the table" } else { "Show as a table" };
    let content = column![
        column![
            plot,
            drawn.map(|drawn| text(drawn.spec.summary.as_str()).size(size::LABEL).width(Fill)),
        ]
        .spacing(1.5 * UNIT),
        field::full(&place, curve.against, page.desk, page.settings).map(Act::Field),
    ]
    .spacing(1.5 * UNIT);
    let content = Element::from(content).map(move |act| Message::Curve(line, act));
    let rows = drawn.filter(|_| open).map(|drawn| rows::rows(plot::table(&drawn.spec), page.width));
    let table = pressable(Kind::Word, text(table).size(size::LABEL))
        .on_press(Message::Curve(line, Act::Table));
    let save = drawn.map(|_| saving("Save the curve", (line, Pictured::Curve), page));
    let under = row![table, save].spacing(2.0 * UNIT).wrap().vertical_spacing(UNIT / 2.0);
    frame(curve.title.as_deref(), column![content, under, rows].spacing(1.5 * UNIT))
}

/// About how many characters fit above a plot of that width.
fn room(width: f32) -> usize {
    (width / (0.56 * size::SMALL)) as usize
}

fn plot<'a>(
    curve: &'a Curve,
    line: usize,
    state: &'a State,
    drawn: &'a Drawn,
    page: Page<'a>,
) -> Element<'a, Act> {
    let height = page.tall(HEIGHT);
    let chart = chart::Plot { spec: &drawn.spec, cache: &drawn.cache, dark: page.dark };
    let reading = state.reading.map(|si| drawn.spec.x.unit.from_si(si));
    let words = reading.map(|x| plot::reading(&drawn.spec, x, room(page.width - 4.0 * UNIT)));
    let words = text(words.unwrap_or_default())
        .size(size::SMALL)
        .font(SEMIBOLD)
        .wrapping(text::Wrapping::None);
    let under = column![
        container(words).padding([2, 2]).height(READING).clip(true),
        ChartWidget::new(chart).width(Fill).height(Length::Fixed(height)),
    ];
    let place = format!("curve:{line}");
    let overlay = overlay::Overlay {
        spec: &drawn.spec,
        place: place.clone(),
        against: curve.against,
        reading,
    };
    let layers = stack![under, canvas(overlay).width(Fill).height(Length::Fixed(height + READING))];
    let (against, reads) = (curve.against, reading.is_some());
    let keyed = focusing(format!("reads:{line}"), layers, move |key, modifiers| {
        reader::act(key, modifiers, reads, || (place.clone(), against))
    });
    container(keyed).id(format!("plot:{line}")).into()
}
