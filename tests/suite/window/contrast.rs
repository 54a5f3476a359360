//! Text and marks stand out from what they stand on, by day and by night.
//!
//! Source of the formula and the limits: W3C, Web Content Accessibility Guidelines (WCAG) 2.2,
//! "relative luminance" and "contrast ratio"; success criteria 1.4.3 (text, 4.5:1) and 1.4.11
//! (controls and graphics, 3:1).

use approx::assert_relative_eq;
use heftwise::app::theme::{DAY, Ink, LEADING, MEASURE, NIGHT, UNIT, size};
use heftwise::plot::Role;
use iced::Color;

/// Where the look is written down.
const PAGE: &str = include_str!("../../../DEVELOPERS.md");

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
        pairs.extend(Role::ALL.map(|role| (name, ink.of(role), ground)));
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

/// The name of a colour and where it stands.
type Pick = (&'static str, fn(&Ink) -> Color);

/// The rows that the page must have, one for each colour.
fn colours() -> Vec<String> {
    let pick: [Pick; 16] = [
        ("paper", |ink| ink.paper),
        ("panel", |ink| ink.panel),
        ("field", |ink| ink.field),
        ("line", |ink| ink.line),
        ("edge", |ink| ink.edge),
        ("text", |ink| ink.text),
        ("soft", |ink| ink.soft),
        ("accent", |ink| ink.accent),
        ("on_accent", |ink| ink.on_accent),
        ("wash", |ink| ink.wash),
        ("caution", |ink| ink.caution),
        ("caution_wash", |ink| ink.caution_wash),
        ("yours", |ink| ink.yours),
        ("first", |ink| ink.first),
        ("second", |ink| ink.second),
        ("limit", |ink| ink.limit),
    ];
    let half = |ink: &Ink, colour: Color| {
        let [red, green, blue, _] = colour.into_rgba8();
        let [paper, panel] = [ink.paper, ink.panel].map(|ground| contrast(colour, ground));
        format!("`#{red:02x}{green:02x}{blue:02x}` | {paper:.1} | {panel:.1}")
    };
    pick.iter()
        .map(|(name, of)| {
            format!("| `{name}` | {} | {} |", half(&DAY, of(&DAY)), half(&NIGHT, of(&NIGHT)))
        })
        .collect()
}

/// The rows of the type scale, without what each step is for.
fn scale() -> Vec<String> {
    [
        ("SMALL", size::SMALL),
        ("LABEL", size::LABEL),
        ("BODY", size::BODY),
        ("MINOR", size::MINOR),
        ("HEADING", size::HEADING),
        ("ANSWER", size::ANSWER),
        ("TITLE", size::TITLE),
    ]
    .map(|(name, pixels)| format!("| `{name}` | {pixels} |"))
    .into()
}

#[test]
fn the_look_is_written_down_as_it_is() {
    let spacing = [
        format!("`UNIT`, {UNIT} pixels"),
        format!("`LEADING`, {LEADING} times"),
        format!("`MEASURE`, {MEASURE} pixels"),
    ];
    let missing: Vec<String> = scale()
        .into_iter()
        .chain(spacing)
        .chain(colours())
        .filter(|words| !PAGE.contains(words))
        .collect();
    assert!(missing.is_empty(), "DEVELOPERS.md does not say:\n{}", missing.join("\n"));
}

/// On a page printed or copied in grey, colour tells nothing: the greys of the builds are alike.
#[test]
fn builds_are_told_apart_without_colour() {
    for (place, one) in Role::ALL.iter().enumerate() {
        for other in &Role::ALL[place + 1..] {
            assert_ne!(one.stroke(), other.stroke(), "{one:?} and {other:?}");
            assert_ne!(one.shape(), other.shape(), "{one:?} and {other:?}");
        }
    }
}
