//! `sketch`: the machine drawn to scale.

use crate::lesson::fields::Fields;
use crate::lesson::known;
use crate::lesson::place::{Fault, Report};

/// The machine drawn to scale.
#[derive(Debug, Clone, PartialEq)]
pub struct Sketch {
    /// What it shows, in a line.
    pub title: Option<String>,
    /// From where it is seen first.
    pub view: SketchView,
    /// What is drawn besides what carries the machine; at least one.
    pub show: Vec<SketchLayer>,
}

/// From where a sketch is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum SketchView {
    /// From the side, front to the right.
    #[default]
    Side,
    /// From above, front to the right.
    Top,
    /// From behind.
    Rear,
}

/// What a sketch can show.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum SketchLayer {
    /// The pressure under the tracks.
    Pressure,
    /// The centre of gravity.
    Cg,
    /// Weight and force on the ground, as arrows.
    Weight,
    /// The parts as boxes.
    Parts,
}

impl SketchLayer {
    /// Everything a sketch can show.
    pub const ALL: [Self; 4] = [Self::Pressure, Self::Cg, Self::Weight, Self::Parts];
}

const VIEWS: [(&str, SketchView); 3] =
    [("side", SketchView::Side), ("top", SketchView::Top), ("rear", SketchView::Rear)];

const LAYERS: [(&str, SketchLayer); 4] = [
    ("pressure", SketchLayer::Pressure),
    ("cg", SketchLayer::Cg),
    ("weight", SketchLayer::Weight),
    ("parts", SketchLayer::Parts),
];

/// The fields of its table.
pub(super) const FIELDS: &[&str] = &["title", "view", "show"];

pub(super) fn read(fields: &Fields, report: &mut Report) -> Option<Sketch> {
    fields.allow(FIELDS, report);
    let view = match fields.text("view", report) {
        Some(text) => known::one_of("view", &text, &VIEWS, report)?,
        None => SketchView::default(),
    };
    Some(Sketch {
        title: fields.text("title", report).map(|title| title.value),
        view,
        show: layers(fields, report),
    })
}

/// The layers listed, each once; all of them when none are.
fn layers(fields: &Fields, report: &mut Report) -> Vec<SketchLayer> {
    if !fields.has("show") {
        return SketchLayer::ALL.to_vec();
    }
    let before = report.count();
    let mut layers = Vec::new();
    for text in fields.texts("show", report) {
        let Some(layer) = known::one_of("part of a sketch", &text, &LAYERS, report) else {
            continue;
        };
        if layers.contains(&layer) {
            let fault = Fault::new(format!("\"{}\" stands twice in show", text.value), "each once");
            report.add(text.at, fault);
        } else {
            layers.push(layer);
        }
    }
    if layers.is_empty() && report.count() == before {
        let fault = Fault::new("show is empty", format!("some of {}", known::names(&LAYERS)));
        report.add(fields.place("show"), fault);
    }
    layers
}
