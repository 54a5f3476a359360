//! Curves and sketches as pictures.

use maud::{Markup, PreEscaped, html};

use super::Ink;
use crate::asked;
use crate::lesson::{Curve, Run, Sketch as Asked};
use crate::plot::{Build, PlotSpec, PlotStyle, Runner, panels, run_svg};
use crate::study::curve::{Numbers, together};
use crate::study::{self, Sketch};

/// Width and height of a curve, in pixels of 1/96 inch.
const CURVE: (u32, u32) = (660, 280);
/// Width and height of a sketch.
const SKETCH: (u32, u32) = (660, 280);

pub(super) fn curve(curve: &Curve, ink: Ink<'_>) -> Markup {
    let ask = asked::curve(curve);
    let own = ink.subject;
    let numbers = Numbers { givens: &own.outcome.givens, spreads: &own.tally.spreads };
    let beside: Vec<_> = ink.companion.iter().map(|it| &it.outcome.givens).collect();
    let spec = together(&ask, numbers, &beside).ok().and_then(|(curve, others)| {
        let first = Build { name: &own.name, curve: &curve };
        let others = ink.companion.iter().zip(&others);
        let others =
            others.filter_map(|(it, curve)| Some(Build { name: &it.name, curve: curve.as_ref()? }));
        let builds: Vec<Build<'_>> = std::iter::once(first).chain(others).collect();
        PlotSpec::of(&builds, ink.units)
    });
    let Some(spec) = spec else {
        return html! { p { "This curve cannot be drawn for this build." } };
    };
    html! {
        figure {
            @if let Some(title) = &curve.title { h3 { (title) } }
            (PreEscaped(crate::plot::svg(&spec, CURVE, &PlotStyle::PAPER)))
            figcaption { (spec.summary) }
        }
    }
}

pub(super) fn sketch(asked: &Asked, ink: Ink<'_>) -> Markup {
    let of = |subject: &super::super::Subject| {
        Sketch::of(&subject.name, &subject.sheet, &subject.tally, &subject.outcome.values)
    };
    let mut sketch = of(ink.subject);
    if let Some(companion) = ink.companion {
        sketch = sketch.with_ghost(of(companion));
    }
    let how = asked::sketch(asked);
    html! {
        figure {
            @if let Some(title) = &asked.title { h3 { (title) } }
            (PreEscaped(crate::plot::sketch::svg(&sketch, how, ink.units, SKETCH)))
            figcaption { (sketch.in_words(ink.units)) }
        }
    }
}

/// A run as it looks from start to end.
pub(super) fn run(asked: &Run, ink: Ink<'_>) -> Markup {
    let run = match study::Run::of(&asked::run(asked), &ink.subject.outcome.givens) {
        Ok(run) => run,
        Err(why) => return html! { p { (why.to_string()) } },
    };
    let runners = [Runner { name: &ink.subject.name, run: &run }];
    let panels = panels(&runners, &asked.show, ink.units);
    html! {
        figure.tall {
            @if let Some(title) = &asked.title { h3 { (title) } }
            (PreEscaped(run_svg(&panels, CURVE.0, &PlotStyle::PAPER)))
            figcaption { (run.sentence(ink.units)) }
        }
    }
}
