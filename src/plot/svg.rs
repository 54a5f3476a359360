//! A plot as a self-contained SVG picture.

use plotters::drawing::IntoDrawingArea;
use plotters::prelude::SVGBackend;

use super::draw::{PlotStyle, Rgb, draw};
use super::labels::{Anchor, Part, PlacedText, texts};
use super::layout::Layout;
use super::letters::FAMILY;
use super::spec::PlotSpec;

/// The plot as an SVG of that size in pixels, with a title and a description for those who
/// cannot see it.
///
/// The picture is drawn in whole units on a canvas `k` times larger; its `viewBox` scales it back.
pub fn svg(spec: &PlotSpec, size: (u32, u32), style: &PlotStyle) -> String {
    let layout = Layout::of(spec, (size.0 as f32, size.1 as f32), style.text_size);
    let style = PlotStyle { k: style.k.max(1), stroke_k: style.k.max(1), ..*style };
    let mut drawn = String::new();
    {
        let canvas = (size.0 * style.k, size.1 * style.k);
        let area = SVGBackend::with_string(&mut drawn, canvas).into_drawing_area();
        // Writing to a string does not fail; a picture cut short would still be a picture.
        let _ = draw(&area, spec, &layout, &style).and_then(|()| area.present());
    }
    // The backend's own outer element gives way to ours.
    let shapes = drawn
        .split_once('>')
        .and_then(|(_, rest)| rest.rsplit_once("</svg>"))
        .map_or("", |(shapes, _)| shapes);
    let mut out = format!(
        concat!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{w}\" height=\"{h}\" ",
            "viewBox=\"0 0 {vw} {vh}\">\n<title>{title}</title>\n<desc>{desc}</desc>\n{shapes}"
        ),
        w = size.0,
        h = size.1,
        vw = size.0 * style.k,
        vh = size.1 * style.k,
        title = escaped(&spec.title),
        desc = escaped(&spec.summary),
        shapes = shapes.trim_start(),
    );
    for text in texts(spec, &layout) {
        out.push_str(&element(&text, &style));
    }
    out.push_str("</svg>\n");
    out
}

fn element(text: &PlacedText, style: &PlotStyle) -> String {
    let k = style.k as f32;
    let anchor = match text.anchor {
        Anchor::Start => "start",
        Anchor::Middle => "middle",
        Anchor::End => "end",
    };
    // The baseline lies about a third of the text size under the middle.
    let (x, y) = (text.x * k, (text.y + 0.35 * style.text_size) * k);
    format!(
        concat!(
            "<text x=\"{x:.0}\" y=\"{y:.0}\" text-anchor=\"{anchor}\" fill=\"{fill}\" ",
            "font-family=\"{family}, sans-serif\" font-size=\"{size:.0}\">{words}</text>\n"
        ),
        x = x,
        y = y,
        anchor = anchor,
        fill = hex(colour(text.part, style)),
        family = FAMILY,
        size = style.text_size * k,
        words = escaped(&text.text),
    )
}

fn colour(part: Part, style: &PlotStyle) -> Rgb {
    match part {
        Part::Dot(role) | Part::Line(role) | Part::Edge(role) => style.of(role),
        Part::Relative(_) => style.relative,
        Part::Limit => style.limit,
        Part::Tick | Part::Caption => style.ink,
    }
}

pub(super) fn hex((red, green, blue): Rgb) -> String {
    format!("#{red:02x}{green:02x}{blue:02x}")
}

pub(super) fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
