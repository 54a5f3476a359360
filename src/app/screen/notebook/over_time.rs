//! What was measured more than once: each time beside what was predicted, over the dates.

use iced::widget::canvas::{self, Path, Stroke, Text};
use iced::widget::{Column, column, container, row, text};
use iced::{Center, Element, Fill, Length, Pixels, Point, Rectangle, Renderer, Size, Theme, mouse};

use super::Message;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, ink, size};
use crate::app::widget::symbol::capitalised;
use crate::notebook::{Record, Summary, ratio_figures};
use crate::plot::Axis;
use crate::quantity::{Entry, Units};

const HEIGHT: f32 = 170.0;
/// Room for the figures beside the plot, and for the dates under it.
const LEFT: f32 = 56.0;
const UNDER: f32 = 24.0;
/// The width of a date, with air.
const DATE: f32 = 96.0;
/// Half the size of a mark.
const MARK: f32 = 4.0;

/// A quantity measured at least twice in a lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    entry: &'static Entry,
    times: Vec<Time>,
}

/// It was measured then.
#[derive(Debug, Clone, PartialEq)]
struct Time {
    date: String,
    /// Days since 1970, if the date is one.
    days: Option<f64>,
    summary: Summary,
    predicted: Option<f64>,
}

impl Series {
    /// What was measured at least twice in a lesson, in the order of the first time.
    pub fn of(record: &Record) -> Vec<Self> {
        let mut all: Vec<Self> = Vec::new();
        for measurement in &record.measurements {
            let Some(reckoned) = measurement.reckoned() else { continue };
            let time = Time {
                date: measurement.when.date().to_owned(),
                days: measurement.when.days(),
                summary: reckoned.summary,
                predicted: reckoned.predicted,
            };
            match all.iter_mut().find(|series| series.entry.id == reckoned.entry.id) {
                Some(series) => series.times.push(time),
                None => all.push(Self { entry: reckoned.entry, times: vec![time] }),
            }
        }
        all.retain(|series| series.times.len() > 1);
        all
    }

    /// How far along each time stands, 0 to 1: by its date, or one after the other where a date
    /// cannot be told.
    fn along(&self) -> Vec<f32> {
        let days: Option<Vec<f64>> = self.times.iter().map(|time| time.days).collect();
        let days = days.unwrap_or_default();
        let ends = days.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(from, to), day| {
            (from.min(*day), to.max(*day))
        });
        let last = (self.times.len() - 1).max(1) as f32;
        let by_date = ends.1 > ends.0;
        (0..self.times.len())
            .map(|place| match days.get(place) {
                Some(day) if by_date => ((day - ends.0) / (ends.1 - ends.0)) as f32,
                _ => place as f32 / last,
            })
            .collect()
    }

    /// The plot, what its marks mean, and the same in words.
    pub fn view<'a>(&'a self, units: &Units) -> Element<'a, Message> {
        let plot = Plot { series: self, axis: self.axis(units) };
        let title = capitalised(&plot.axis.label);
        let each = self.times.iter().map(|time| {
            let shown = |si| units.show(self.entry, si).to_string();
            let predicted = time.predicted.map_or_else(|| "nothing".to_owned(), shown);
            let ratio = time.predicted.and_then(|predicted| time.summary.ratio(predicted));
            let ratio =
                ratio.map_or_else(String::new, |ratio| format!(": {} of it", ratio_figures(ratio)));
            let words = format!(
                "{}: predicted {predicted}, measured {}{ratio}.",
                time.date,
                shown(time.summary.mean)
            );
            text(words).size(size::SMALL).width(Fill).into()
        });
        let inside = column![
            text(format!("{title}, over time")).size(size::LABEL).font(SEMIBOLD).width(Fill),
            row![
                text("□ predicted").size(size::SMALL).style(theme::soft),
                text("● measured, with its range").size(size::SMALL).style(theme::soft),
            ]
            .spacing(2.0 * UNIT)
            .align_y(Center)
            .wrap(),
            iced::widget::canvas(plot).width(Fill).height(Length::Fixed(HEIGHT)),
            Column::with_children(each),
        ]
        .spacing(UNIT);
        container(inside).style(theme::block).padding(1.5 * UNIT).width(Fill).into()
    }

    /// The axis up the side: it holds every mark, and zero unless that would flatten them.
    fn axis(&self, units: &Units) -> Axis {
        let ends = self.times.iter().flat_map(|time| {
            let Summary { low, high, .. } = time.summary;
            [Some(low), Some(high), time.predicted].into_iter().flatten()
        });
        let (low, high) = ends.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), si| {
            (low.min(si), high.max(si))
        });
        let unit = units.unit_for(self.entry, if high.abs() > low.abs() { high } else { low });
        let (low, high) = (unit.from_si(low), unit.from_si(high));
        let air = 0.12 * (high - low).max(0.1 * high.abs().max(low.abs())).max(1e-9);
        let from = if low >= 0.0 && low < 0.5 * high { 0.0 } else { low - air };
        Axis::new(self.entry, unit, false, from, high + air)
    }
}

/// The drawing.
struct Plot<'a> {
    series: &'a Series,
    axis: Axis,
}

impl canvas::Program<Message> for Plot<'_> {
    type State = ();

    fn draw(
        &self,
        _state: &(),
        renderer: &Renderer,
        theme: &Theme,
        bounds: Rectangle,
        _cursor: mouse::Cursor,
    ) -> Vec<canvas::Geometry> {
        let mut frame = canvas::Frame::new(renderer, bounds.size());
        let ink = ink(theme);
        let (left, right) = (LEFT + 3.0 * MARK, bounds.width - 0.5 * DATE);
        let foot = HEIGHT - UNDER;
        let up = |value: f64| foot - (foot - UNIT) * self.axis.part(value) as f32;
        let write = |frame: &mut canvas::Frame, content: &str, position| {
            frame.fill_text(Text {
                content: content.to_owned(),
                position,
                color: ink.soft,
                size: Pixels(size::SMALL),
                font: REGULAR,
                ..Text::default()
            });
        };
        for tick in self.axis.ticks.iter().filter(|tick| tick.text.is_some()) {
            let y = up(tick.at);
            let line = Size::new(bounds.width - LEFT, 1.0);
            frame.fill_rectangle(Point::new(LEFT, y.round()), line, ink.line);
            let words = tick.text.as_deref().unwrap_or_default();
            write(&mut frame, words, Point::new(0.0, y - 0.65 * size::SMALL));
        }
        let mut free = 0.0;
        for (time, along) in self.series.times.iter().zip(self.series.along()) {
            let x = left + along * (right - left).max(1.0);
            let shown = |si: f64| up(self.axis.unit.from_si(si));
            let (low, high) = (shown(time.summary.low), shown(time.summary.high));
            let range = Size::new(2.0, (low - high).max(1.0));
            frame.fill_rectangle(Point::new(x - 1.0, high), range, ink.yours);
            let mean = Point::new(x, shown(time.summary.mean));
            frame.fill(&Path::circle(mean, MARK), ink.yours);
            if let Some(predicted) = time.predicted {
                let corner = Point::new(x - 1.5 * MARK, shown(predicted) - 1.5 * MARK);
                let square = Path::rectangle(corner, Size::new(3.0 * MARK, 3.0 * MARK));
                frame.stroke(&square, Stroke::default().with_color(ink.text).with_width(2.0));
            }
            let start = (x - 0.5 * DATE + UNIT).max(LEFT);
            if start >= free {
                write(&mut frame, &time.date, Point::new(start, foot + 4.0));
                free = start + DATE;
            }
        }
        vec![frame.into_geometry()]
    }
}
