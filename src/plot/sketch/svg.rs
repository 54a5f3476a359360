//! A sketch as a self-contained SVG picture for paper.

use std::fmt::Write;

use super::{Show, Tone, View, draw};
use crate::plot::draw::Rgb;
use crate::plot::svg::{escaped, hex};
use crate::quantity::Units;
use crate::study::Sketch;

/// Height of the words, in pixels.
const TEXT: f32 = 14.0;

/// The sketch as an SVG of that size in pixels, black on white, with a title and a description for
/// those who cannot see it.
pub fn svg(sketch: &Sketch, how: (View, Show), units: &Units, size: (u32, u32)) -> String {
    let drawing = draw(sketch, how, units, (size.0 as f32, size.1 as f32), TEXT);
    let mut out = format!(
        concat!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{w}\" height=\"{h}\" ",
            "viewBox=\"0 0 {w} {h}\">\n<title>{title}</title>\n<desc>{desc}</desc>\n",
            "<rect width=\"{w}\" height=\"{h}\" fill=\"#ffffff\"/>\n"
        ),
        w = size.0,
        h = size.1,
        title = escaped(&sketch.name),
        desc = escaped(&sketch.in_words(units)),
    );
    for shape in &drawing.shapes {
        let points: Vec<String> =
            shape.points.iter().map(|(x, y)| format!("{x:.1},{y:.1}")).collect();
        let fill = hex(colour(shape.tone));
        let opacity = shape.strength;
        // Writing to a string does not fail.
        let _ = writeln!(
            out,
            "<polygon points=\"{}\" fill=\"{fill}\" fill-opacity=\"{opacity:.2}\"/>",
            points.join(" ")
        );
    }
    for label in &drawing.labels {
        let (x, y) = (label.bounds.x, label.bounds.y + TEXT);
        let fill = hex(colour(label.tone));
        let words = escaped(&label.text);
        let _ = writeln!(
            out,
            concat!(
                "<text x=\"{x:.1}\" y=\"{y:.1}\" fill=\"{fill}\" font-family=\"sans-serif\" ",
                "font-size=\"{size}\">{words}</text>"
            ),
            x = x,
            y = y,
            fill = fill,
            size = TEXT,
            words = words,
        );
    }
    out.push_str("</svg>\n");
    out
}

/// The colours of paper, told apart in grey as well.
fn colour(tone: Tone) -> Rgb {
    match tone {
        Tone::Paper | Tone::Part => (255, 255, 255),
        Tone::Gear => (232, 232, 232),
        Tone::GearEdge => (120, 120, 120),
        Tone::PartEdge | Tone::Leader => (110, 110, 110),
        Tone::Ground => (60, 60, 60),
        Tone::Trial => (250, 235, 215),
        Tone::Tip | Tone::Ghost => (213, 94, 0),
        Tone::Pressure | Tone::Reaction => (0, 114, 178),
        Tone::Weight | Tone::Ink => (26, 26, 26),
    }
}
