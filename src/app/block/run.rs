//! The run: something over time, to be played, slowed or speeded, and looked along.

mod overlay;
mod told;

use std::collections::HashMap;
use std::time::{Duration, Instant};

use iced::widget::{Column, Row, canvas, column, container, row, stack, text};
use iced::{Center, Element, Fill, Length, Padding};
use plotters_iced::ChartWidget;

use super::curve::{chart, rows::rows};
use super::{PICTURE, each, file_name, frame, saving};
use crate::app::desk::Desk;
use crate::app::page::{Message, Page, Pictured};
use crate::app::settings::Settings;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::mark::mark;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::scrub::scrub;
use crate::app::widget::symbol::capitalised;
use crate::lesson::{Block, BlockKind, Run, RunPace};
use crate::plot::save::Figure;
use crate::plot::{Axis, PlotStyle, figures_of, panel_height, plot_rect, run_svg};
use told::{Key, Told};

/// A frame that comes late moves on by no more than this.
const LATE: Duration = Duration::from_millis(200);
/// Runs that last this long, in seconds, can be followed as they are.
const FOLLOWED: std::ops::RangeInclusive<f64> = 2.0..=30.0;
/// The width of a number that changes, so that nothing moves with it.
const CELL: f32 = 128.0;

/// A run being looked at.
#[derive(Default)]
pub struct State {
    told: Option<(Key, Result<Told, String>)>,
    /// How far along, 0 to 1, once the reader or the clock has moved it.
    at: Option<f64>,
    /// While it plays, when it was last moved on.
    playing: Option<Instant>,
    pace: Option<RunPace>,
}

/// What is done in a run.
#[derive(Debug, Clone)]
pub enum Act {
    /// Play, or stop playing.
    Play,
    /// Go back to the start.
    ToStart,
    /// Play at this pace.
    Pace(RunPace),
    /// Look at this part of it, 0 to 1.
    Look(f64),
    /// The table is opened or closed.
    Table,
}

/// Works out anew the runs of a page that the last change has made stale.
pub fn refresh(
    states: &mut HashMap<usize, State>,
    blocks: &[Block],
    desk: &Desk,
    settings: &Settings,
    dark: bool,
) {
    each(blocks, &mut |block| {
        if let BlockKind::Run(run) = &block.kind {
            let state = states.entry(block.line).or_default();
            let key = Key::of(desk, settings, dark);
            if state.told.as_ref().is_none_or(|(told, _)| *told != key) {
                state.told = Some((key, Told::of(run, desk, &settings.units)));
            }
            if state.pace.is_none() {
                state.pace = run.pace;
            }
            if settings.still {
                state.playing = None;
            }
        }
    });
}

impl State {
    /// Throws away what was drawn from another build.
    pub fn forget(&mut self) {
        *self = Self { pace: self.pace, ..Self::default() };
    }

    /// Whether it plays, so that it must be moved on.
    pub fn plays(&self) -> bool {
        self.playing.is_some()
    }

    /// Acts on what is done.
    pub fn perform(&mut self, act: &Act) {
        match act {
            Act::Play if self.plays() => self.playing = None,
            Act::Play => {
                if self.at.is_some_and(|at| at >= 1.0) {
                    self.at = None;
                }
                self.playing = Some(Instant::now());
            }
            Act::ToStart => self.at = Some(0.0),
            Act::Pace(pace) => self.pace = Some(*pace),
            Act::Look(at) => {
                self.playing = None;
                self.at = Some(at.clamp(0.0, 1.0));
            }
            Act::Table => {}
        }
    }

    /// Moves on to a moment of the clock on the wall.
    pub fn tick(&mut self, now: Instant) {
        let Some(last) = self.playing else { return };
        let passed = now.saturating_duration_since(last).min(LATE).as_secs_f64();
        let at = self.at.unwrap_or_default() + passed / self.lasts();
        self.at = Some(at.min(1.0));
        self.playing = (at < 1.0).then_some(now);
    }

    /// The run as a file may hold it, and a name for that file.
    pub fn figure(&self) -> Option<(Figure, String)> {
        let Some((_, Ok(Told { pictured, .. }))) = &self.told else { return None };
        let svg = run_svg(pictured, PICTURE.0, &PlotStyle::PAPER);
        let name = file_name(&pictured.first()?.title);
        Some((Figure { svg, numbers: figures_of(pictured) }, name))
    }

    /// How long it lasts as it happens, in seconds.
    fn duration(&self) -> f64 {
        match &self.told {
            Some((_, Ok(told))) => told.span().1 - told.span().0,
            _ => 0.0,
        }
    }

    fn pace(&self) -> RunPace {
        let usual =
            if FOLLOWED.contains(&self.duration()) { RunPace::True } else { RunPace::TenSeconds };
        self.pace.unwrap_or(usual)
    }

    /// How long it plays, in seconds, above zero.
    fn lasts(&self) -> f64 {
        match self.pace() {
            RunPace::True => self.duration().max(1e-3),
            RunPace::TenSeconds => 10.0,
            RunPace::HalfMinute => 30.0,
        }
    }

    /// How far along it is looked at; untouched, the start, or the end where nothing may move.
    fn part(&self, settings: &Settings) -> f64 {
        self.at.unwrap_or(if settings.still { 1.0 } else { 0.0 })
    }
}

/// A run that starts on `line` of its lesson.
pub fn view<'a>(run: &'a Run, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let title = run.title.as_deref();
    match page.marks.runs.get(&line).and_then(|state| Some((state, state.told.as_ref()?))) {
        Some((state, (_, Ok(told)))) => frame(title, inside(state, told, line, page)),
        Some((_, (_, Err(why)))) => {
            frame(title, text(why.as_str()).size(size::LABEL).style(theme::warning).width(Fill))
        }
        None => frame(title, text("")),
    }
}

fn inside<'a>(
    state: &'a State,
    told: &'a Told,
    line: usize,
    page: Page<'a>,
) -> Element<'a, Message> {
    let (from, to) = told.span();
    let part = state.part(page.settings);
    let at = from + part * (to - from);
    let place = format!("run:{line}");
    let open = page.marks.open.contains(&place);
    let word = if open { "Hide the table" } else { "Show as a table" };
    let act = move |act| Message::Run(line, act);
    let words = |words: &'a String, size| text(words.as_str()).size(size).width(Fill);
    let happens = told.happens.iter().map(|it| words(it, size::LABEL).into());
    let assumes = told.assumes.iter().map(|it| words(it, size::SMALL).style(theme::soft).into());
    column![
        names(told),
        plots(told, at, line, page),
        container(scrub(format!("{place}:at"), part, move |at| Message::Run(line, Act::Look(at))))
            .padding(under_the_axis()),
        keys(state, line, page),
        now(told, at),
        Column::with_children(happens.chain(assumes)).spacing(UNIT / 2.0),
        row![
            pressable(Kind::Word, text(word).size(size::LABEL)).on_press(act(Act::Table)),
            saving("Save the run", (line, Pictured::Run), page),
        ]
        .spacing(2.0 * UNIT)
        .wrap()
        .vertical_spacing(UNIT / 2.0),
        open.then(|| rows(told.table.clone(), page.width)),
    ]
    .spacing(1.5 * UNIT)
    .into()
}

/// The room beside the slider that puts its handle under the moment it stands for.
fn under_the_axis() -> Padding {
    const HANDLE: f32 = 8.0;
    const WIDTH: f32 = 1000.0;
    let plot = plot_rect((WIDTH, WIDTH), size::SMALL);
    Padding::ZERO.left(plot.x - HANDLE).right(WIDTH - plot.right() - HANDLE)
}

/// Whose line is which, where there are several.
fn names<'a>(told: &'a Told) -> Option<Element<'a, Message>> {
    let names = told.runs.iter().map(|(role, name, _)| {
        row![mark(*role), text(name.as_str()).size(size::LABEL)]
            .spacing(UNIT / 2.0)
            .align_y(Center)
            .into()
    });
    (told.runs.len() > 1).then(|| Row::with_children(names).spacing(2.0 * UNIT).wrap().into())
}

fn plots<'a>(told: &'a Told, at: f64, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let panels = told.panels.iter().map(|(spec, cache)| {
        let height = Length::Fixed(panel_height(spec, size::SMALL));
        let chart = chart::Plot { spec, cache, dark: page.dark };
        let overlay = overlay::Overlay { spec, at: spec.x.unit.from_si(at) };
        stack![
            ChartWidget::new(chart).width(Fill).height(height),
            canvas(overlay).width(Fill).height(height),
        ]
        .into()
    });
    container(Column::with_children(panels)).id(format!("run:{line}")).into()
}

/// Play, to the start, and the pace; nothing of it where nothing may move.
fn keys<'a>(state: &State, line: usize, page: Page<'a>) -> Option<Element<'a, Message>> {
    if page.settings.still {
        return None;
    }
    let key = |kind, words: &'a str, act| -> Element<'a, Message> {
        pressable(kind, text(words).size(size::LABEL)).on_press(Message::Run(line, act)).into()
    };
    let play = if state.plays() { "Pause" } else { "Play" };
    // As wide with either word, so that nothing moves.
    let play = pressable(Kind::Main, text(play).size(size::LABEL).width(Fill).align_x(Center))
        .width(Length::Fixed(84.0))
        .on_press(Message::Run(line, Act::Play))
        .into();
    let pace = |words, pace| key(Kind::Line(state.pace() == pace), words, Act::Pace(pace));
    let keys = [
        play,
        key(Kind::Plain, "To start", Act::ToStart),
        pace("True speed", RunPace::True),
        pace("In 10 s", RunPace::TenSeconds),
        pace("In 30 s", RunPace::HalfMinute),
    ];
    let keys = Row::with_children(keys).spacing(UNIT).align_y(Center);
    let slowed = slowed(state.lasts() / state.duration().max(f64::MIN_POSITIVE));
    let slowed = text(slowed).size(size::SMALL).style(theme::soft);
    Some(column![keys.wrap().vertical_spacing(UNIT / 2.0), slowed].spacing(UNIT / 2.0).into())
}

/// How the pace compares with the truth, in words.
fn slowed(times: f64) -> String {
    let figures = |times: f64| {
        let place = 10f64.powf(times.log10().floor() - 1.0);
        ((times / place).round() * place).to_string()
    };
    match times {
        _ if !times.is_finite() => String::new(),
        times if times > 1.05 => format!("{} times slower than true", figures(times)),
        times if times < 0.95 => format!("{} times faster than true", figures(1.0 / times)),
        _ => "as fast as it happens".to_owned(),
    }
}

/// The numbers at the moment looked at, each in its place.
fn now<'a>(told: &'a Told, at: f64) -> Element<'a, Message> {
    let Some((first, _)) = told.panels.first() else { return column![].into() };
    let figure = |axis: &Axis, si: f64| {
        format!("{} {}", axis.figure(axis.unit.from_si(si)), axis.unit.symbol)
    };
    let cell = |axis: &'a Axis, lines: Vec<Element<'a, Message>>| -> Element<'a, Message> {
        let label = text(capitalised(axis.entry.label)).size(size::SMALL).style(theme::soft);
        column![label, Column::with_children(lines)].spacing(2).width(Length::Fixed(CELL)).into()
    };
    let many = told.runs.len() > 1;
    let time = text(figure(&first.x, at)).size(size::BODY).font(SEMIBOLD).into();
    let numbers = told.panels.iter().map(|(spec, _)| {
        let lines = told.runs.iter().filter_map(|(role, _, run)| {
            let si = run.series(spec.y.entry)?.at(&run.times, at);
            let number = text(figure(&spec.y, si)).size(size::BODY).font(SEMIBOLD);
            let shown = row![many.then(|| mark(*role)), number];
            Some(shown.spacing(UNIT / 2.0).align_y(Center).into())
        });
        cell(&spec.y, lines.collect())
    });
    let cells = std::iter::once(cell(&first.x, vec![time])).chain(numbers);
    Row::with_children(cells).spacing(UNIT).wrap().vertical_spacing(UNIT).into()
}
