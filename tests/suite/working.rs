//! The working of a rule, with symbols and with numbers.

use heftwise::quantity::catalogue::{impact::*, machine::*, pressure::*, running_gear::*};
use heftwise::quantity::{AnyId, Units};
use heftwise::rules::catalogue::{all, finder};
use heftwise::rules::{Givens, Working, evaluate, working};

fn of(id: AnyId, givens: &Givens) -> Working {
    working(finder(id).unwrap(), &evaluate(givens), &Units::default())
}

#[test]
fn numbers_stand_where_symbols_stood() {
    let mut givens = Givens::default();
    givens.set(MASS, 6.4);
    givens.set(TRACK_COUNT, 2.0);
    givens.set(TRACK_WIDTH, 0.09);
    givens.set(CONTACT_LENGTH, 0.42);
    let pressure = of(GROUND_PRESSURE.any(), &givens);
    assert_eq!(pressure.symbols_text, "p = N / A");
    assert_eq!(pressure.numbers_text, "p = (62.8 N) / (0.0756 m²)");
    assert_eq!(pressure.answer_text.as_deref(), Some("p = 830 Pa"));
    assert_eq!(pressure.symbols_tex, r"{p} = \dfrac{{N}}{{A}}");
    assert_eq!(pressure.numbers_tex, r"{p} = \dfrac{{62.8\,\mathrm{N}}}{{0.0756\,\mathrm{m^{2}}}}");
    assert_eq!(pressure.inputs.len(), 2);
    let tracks = of(TRACK_CONTACT_AREA.any(), &givens);
    assert_eq!(tracks.numbers_text, "A_tracks = 2 · 0.0900 m · 0.420 m");
}

#[test]
fn a_power_takes_brackets_and_an_unknown_keeps_its_symbol() {
    let mut givens = Givens::default();
    givens.set(IMPACT_SPEED, 1.5);
    let energy = of(KINETIC_ENERGY.any(), &givens);
    assert!(
        energy.numbers_tex.contains(r"{m} \cdot \left(1.50\,\mathrm{m/s}\right)^2"),
        "{}",
        energy.numbers_tex
    );
    assert_eq!(energy.answer_tex, None);
    givens.set(MASS, 6.4);
    let energy = of(KINETIC_ENERGY.any(), &givens);
    assert_eq!(energy.answer_tex.as_deref(), Some(r"E = 7.20\,\mathrm{J}"));
}

#[test]
fn angles_are_in_degrees_and_negatives_in_brackets() {
    let mut givens = Givens::default();
    givens.set(MASS, 6.4);
    givens.set(SLOPE, -12_f64.to_radians());
    let force = of(SLOPE_FORCE.any(), &givens);
    assert_eq!(force.numbers_text, "F_slope = 62.8 N · sin (−12.0°)");
}

/// Every working of a full build is whole: no placeholder left, no stray command in the text,
/// and TeX that the formula reader takes.
#[test]
fn every_rule_shows_its_working() {
    let mut givens = Givens::default();
    for entry in heftwise::quantity::catalogue::all().iter().filter(|entry| entry.is_given()) {
        givens.set(entry.id, (entry.usual.0 + entry.usual.1) / 2.0);
    }
    let values = evaluate(&givens);
    for rule in all() {
        for values in [&values, &evaluate(&Givens::default())] {
            let shown = working(rule, values, &Units::default());
            for text in [&shown.symbols_text, &shown.numbers_text] {
                assert!(!text.contains(['\\', '$']), "{}: {text}", rule.finds);
            }
            for tex in [&shown.symbols_tex, &shown.numbers_tex] {
                assert!(!tex.contains(r"\q"), "{}: {tex}", rule.finds);
                assert!(ratex_parser::parse(tex).is_ok(), "{}: {tex}", rule.finds);
            }
        }
    }
}
