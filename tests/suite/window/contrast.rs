//! Text and marks stand out from what they stand on, by day and by night.
//!
//! Source of the formula and the limits: W3C, Web Content Accessibility Guidelines (WCAG) 2.2,
//! "relative luminance" and "contrast ratio"; success criteria 1.4.3 (text, 4.5:1) and 1.4.11
//! (controls and graphics, 3:1).

use approx::assert_relative_eq;
use heftwise::app::theme::{DAY, Ink, NIGHT};
use iced::Color;

const TEXT: f64 = 4.5;
const MARK: f64 = 3.0;

fn luminance(colour: Color) -> f64 {
    let linear = |part: f32| {
        let part = f64::from(part);
        if part <= 0.04045 { part / 12.92 } else { ((part + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * linear(colour.r) + 0.7152 * linear(colour.g) + 0.0722 * linear(colour.b)
}

fn contrast(one: Color, other: Color) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// A name, the ink and the ground it stands on.
type Pair = (&'static str, Color, Color);

fn texts(ink: &Ink) -> Vec<Pair> {
    let mut pairs = vec![
        ("button", ink.on_accent, ink.accent),
        ("button under the pointer", ink.paper, ink.text),
        ("typed", ink.text, ink.field),
        ("placeholder", ink.soft, ink.field),
        ("selected", ink.text, ink.wash),
    ];
    let grounds = [
        ("paper", ink.paper),
        ("panel", ink.panel),
        ("wash", ink.wash),
        ("caution", ink.caution_wash),
    ];
    for (name, ground) in grounds {
        pairs.push((name, ink.text, ground));
        pairs.push((name, ink.soft, ground));
        pairs.push((name, ink.accent, ground));
        pairs.push((name, ink.caution, ground));
    }
    pairs
}

fn marks(ink: &Ink) -> Vec<Pair> {
    let mut pairs = vec![("edge of a field, inside", ink.edge, ink.field)];
    for (name, ground) in [("paper", ink.paper), ("panel", ink.panel)] {
        pairs.push((name, ink.edge, ground));
        pairs.push((name, ink.accent, ground));
        pairs.push((name, ink.yours, ground));
        pairs.push((name, ink.limit, ground));
    }
    pairs
}

fn faint(pairs: &[Pair], least: f64) -> Vec<String> {
    pairs
        .iter()
        .filter(|(_, ink, ground)| contrast(*ink, *ground) < least)
        .map(|(name, ink, ground)| {
            format!("{ink} on {ground} ({name}): {:.2} < {least}", contrast(*ink, *ground))
        })
        .collect()
}

#[test]
fn the_formula_gives_the_known_ratios() {
    assert_relative_eq!(contrast(Color::BLACK, Color::WHITE), 21.0, epsilon = 1e-9);
    assert_relative_eq!(contrast(Color::WHITE, Color::WHITE), 1.0, epsilon = 1e-9);
    // #767676 is the lightest grey that passes on white, and #777777 does not: W3C, "Understanding
    // SC 1.4.3" says 4.54 and 4.48 (from memory).
    let grey = |part| Color::from_rgb8(part, part, part);
    assert_relative_eq!(contrast(grey(0x76), Color::WHITE), 4.54, epsilon = 0.005);
    assert_relative_eq!(contrast(grey(0x77), Color::WHITE), 4.48, epsilon = 0.005);
}

#[test]
fn every_text_stands_out_from_its_ground() {
    let faint = [DAY, NIGHT].map(|ink| faint(&texts(&ink), TEXT)).concat();
    assert!(faint.is_empty(), "\n{}", faint.join("\n"));
}

#[test]
fn every_edge_and_mark_stands_out_from_its_ground() {
    let faint = [DAY, NIGHT].map(|ink| faint(&marks(&ink), MARK)).concat();
    assert!(faint.is_empty(), "\n{}", faint.join("\n"));
}
