//! A run as small plots one under the other, all over the same time.

use super::axis::Axis;
use super::labels::LINE;
use super::spec::{Dot, LimitRun, Line, PlotSpec, Role, runs, tame, with_headroom};
use super::svg::{escaped, svg};
use super::{PlotStyle, layout};
use crate::quantity::channel::TIME;
use crate::quantity::{Entry, Units};
use crate::study::Run;
use crate::study::curve::Sample;

/// The height of the part of a panel between its axes, as a multiple of the text size.
const PANEL: f32 = 8.6;

/// A build whose run is plotted.
#[derive(Debug, Clone, Copy)]
pub struct Runner<'a> {
    /// What it is called.
    pub name: &'a str,
    /// Its run.
    pub run: &'a Run,
}

/// One plot for each of the channels, the reader's own build first, over a time axis that holds
/// them all. Only the last names its time axis.
///
/// Empty when there is no run or nothing of it is to be shown.
pub fn panels(runners: &[Runner<'_>], show: &[&'static Entry], units: &Units) -> Vec<PlotSpec> {
    let Some(own) = runners.first() else { return Vec::new() };
    let from = runners.iter().map(|r| r.run.start()).fold(f64::INFINITY, f64::min);
    let to = runners.iter().map(|r| r.run.end()).fold(f64::NEG_INFINITY, f64::max);
    let unit = units.unit_for(&TIME, to / 2.0);
    let x = Axis::new(&TIME, unit, false, unit.from_si(from), unit.from_si(to));
    let shown: Vec<&'static Entry> =
        show.iter().copied().filter(|entry| own.run.series(entry).is_some()).collect();
    let last = shown.last().map(|entry| entry.id);
    let panel = |entry: &&'static Entry| panel(entry, &x, runners, units);
    shown
        .iter()
        .filter_map(panel)
        .map(|spec| PlotSpec { foot: Some(spec.y.entry.id) == last, ..spec })
        .collect()
}

fn panel(
    entry: &'static Entry,
    x: &Axis,
    runners: &[Runner<'_>],
    units: &Units,
) -> Option<PlotSpec> {
    let own = runners.first()?;
    let series = own.run.series(entry)?;
    let y = y_axis(entry, runners, units)?;
    let drawn = |samples: &[Sample]| runs(samples, x, &y);
    let many = runners.len() > 1;
    let lines = Role::ALL
        .into_iter()
        .zip(runners)
        .filter_map(|(role, runner)| {
            let series = runner.run.series(entry)?;
            let samples: Vec<Sample> =
                runner.run.times.iter().zip(&series.values).map(|(t, v)| (*t, Some(*v))).collect();
            let label = if many { runner.name.to_owned() } else { String::new() };
            Some(Line { role, label, runs: drawn(&samples) })
        })
        .collect();
    let limits = series
        .limits
        .iter()
        .map(|limit| {
            let at = y.unit.from_si(limit.at);
            let shown =
                units.show_in(entry, limit.at, y.unit.symbol).map(|shown| shown.to_string());
            let place = if at > y.to {
                ", above this plot"
            } else if at < y.from {
                ", below this plot"
            } else {
                ""
            };
            let label = format!("{} {}{place}", limit.label, shown.unwrap_or_default());
            let level = [x.from, x.to].map(|x| (x, at)).to_vec();
            LimitRun { label, runs: if place.is_empty() { vec![level] } else { Vec::new() } }
        })
        .collect();
    let dots = own
        .run
        .marks
        .iter()
        .filter(|mark| mark.channel.id == entry.id)
        .map(|mark| Dot {
            role: Role::Yours,
            x: x.unit.from_si(mark.at),
            y: y.unit.from_si(mark.value),
            label: format!("{}: {}", mark.when(units), mark.brief),
        })
        .collect();
    Some(PlotSpec {
        title: format!("{} over time", entry.label),
        x: x.clone(),
        foot: true,
        y,
        lines,
        relatives: Vec::new(),
        range: Vec::new(),
        limits,
        dots,
        edges: Vec::new(),
        bands: Vec::new(),
        summary: own.run.sentence(units),
    })
}

/// Room for every build's line, and for a limit while that leaves the lines a third of the height.
fn y_axis(entry: &'static Entry, runners: &[Runner<'_>], units: &Units) -> Option<Axis> {
    let mut found: Vec<f64> = runners
        .iter()
        .filter_map(|runner| runner.run.series(entry))
        .flat_map(|series| series.values.iter().copied())
        .collect();
    found.sort_by(f64::total_cmp);
    // With power alone a launch starts without bounds; a low start, as at rest, is meant.
    let (mut low, mut high) = (*found.first()?, tame(&found)?.1);
    let reach = (high - low).abs();
    let limits = runners.first().and_then(|own| own.run.series(entry));
    for limit in limits.into_iter().flat_map(|series| &series.limits) {
        if (low - 2.0 * reach..=high + 2.0 * reach).contains(&limit.at) {
            (low, high) = (low.min(limit.at), high.max(limit.at));
        }
    }
    let unit = units.unit_for(entry, if high.abs() > low.abs() { high } else { low } / 2.0);
    let (from, to) = with_headroom(unit.from_si(low), unit.from_si(high), unit.offset == 0.0);
    Some(Axis::new(entry, unit, false, from, to))
}

/// The height of a panel for text of that size, in pixels; the one with the foot is taller.
pub fn panel_height(spec: &PlotSpec, text_size: f32) -> f32 {
    let (top, bottom) = layout::above_and_below(spec.foot, text_size);
    top + PANEL * text_size + bottom
}

/// All panels as one SVG of that width in pixels, with the sentence under them.
pub fn run_svg(panels: &[PlotSpec], width: u32, style: &PlotStyle) -> String {
    let mut inside = String::new();
    let mut y = 0;
    for panel in panels {
        let height = panel_height(panel, style.text_size).round() as u32;
        let drawn = svg(panel, (width, height), style);
        // What is inside the panel's own outer element, in a group in its place.
        let shapes = drawn
            .split_once('>')
            .and_then(|(_, rest)| rest.rsplit_once("</svg>"))
            .map_or("", |(shapes, _)| shapes);
        let scale = 1.0 / style.k.max(1) as f32;
        let group = format!("<g transform=\"translate(0 {y}) scale({scale})\">{shapes}</g>\n");
        inside.push_str(&group);
        y += height;
    }
    let words = panels.first().map(|panel| panel.summary.as_str()).unwrap_or_default();
    format!(
        concat!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{w}\" height=\"{h}\" ",
            "viewBox=\"0 0 {w} {h}\">\n<desc>{words}</desc>\n{inside}</svg>\n"
        ),
        w = width,
        h = y + (LINE * style.text_size) as u32,
        words = escaped(words),
        inside = inside,
    )
}
