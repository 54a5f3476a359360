//! The difference of two builds, against numbers worked out by hand.

use heftwise::quantity::catalogue::{machine::MASS, pressure::GROUND_PRESSURE, running_gear::*};
use heftwise::sheet::{Edit, Part, Sheet};
use heftwise::study::{Difference, Outcome, Verdict};

fn outcome(sheet: &Sheet) -> Outcome {
    let tally = sheet.tally();
    Outcome::of(tally.givens, &tally.spreads, 0)
}

fn of(theirs: &Sheet, yours: &Sheet) -> Difference {
    Difference::of((theirs, &outcome(theirs)), (yours, &outcome(yours)))
}

fn sandpiper() -> Sheet {
    Sheet::read(heftwise::sheet::demo::find("sandpiper").unwrap().text).unwrap()
}

fn changed(edit: Edit) -> Sheet {
    let mut sheet = sandpiper();
    sheet.apply(&edit).unwrap();
    sheet
}

#[test]
fn a_build_and_itself_do_not_differ() {
    let same = of(&sandpiper(), &sandpiper());
    assert!(same.is_none());
    assert_eq!(same, Difference::default());
    // Its name is no number.
    assert!(of(&sandpiper(), &changed(Edit::Name("Other".to_owned()))).is_none());
}

#[test]
fn the_number_changed_is_given_and_what_follows_is_found() {
    let wide = changed(Edit::Set { id: TRACK_WIDTH.any(), text: "180 mm".to_owned() });
    let difference = of(&wide, &sandpiper());
    let [width] = difference.given.as_slice() else { panic!("{:?}", difference.given) };
    assert_eq!(width.id, TRACK_WIDTH.any());
    approx::assert_relative_eq!(width.ratio().unwrap(), 2.0, max_relative = 1e-12);
    let pressure = difference.found.iter().find(|one| one.id == GROUND_PRESSURE.any()).unwrap();
    // Twice the area under the same weight: half the pressure.
    approx::assert_relative_eq!(pressure.ratio().unwrap(), 0.5, max_relative = 1e-12);
    assert!(difference.found.iter().all(|one| one.id != MASS.any()), "the mass is the same");
    let apart: Vec<f64> =
        difference.found.iter().filter_map(|one| Some(one.ratio()?.ln().abs())).collect();
    assert!(apart.is_sorted_by(|a, b| a >= b), "the largest ratio first");
}

#[test]
fn a_number_only_one_build_has_stands_last_without_a_ratio() {
    let without = changed(Edit::Clear { id: TRACK_WIDTH.any() });
    let difference = of(&without, &sandpiper());
    let width = difference.given.iter().find(|one| one.id == TRACK_WIDTH.any()).unwrap();
    assert_eq!((width.theirs, width.yours), (None, Some(0.09)));
    assert_eq!(width.ratio(), None);
    assert_eq!(difference.given.last(), Some(width));
}

#[test]
fn parts_are_told_apart_by_name() {
    let part =
        |name: &str, mass: &str| Part { name: name.to_owned(), mass: mass.to_owned(), at: None };
    let sheet = |parts: &[Part]| {
        let mut sheet = Sheet::blank();
        parts.iter().for_each(|part| sheet.apply(&Edit::AddPart(part.clone())).unwrap());
        sheet
    };
    let theirs = sheet(&[part("rake", "1 kg"), part("battery", "600 g"), part("rack", "1 kg")]);
    let yours = sheet(&[part("battery", "620 g"), part("rack", "1 kg"), part("arm", "90 g")]);
    let found: Vec<_> = of(&theirs, &yours)
        .parts
        .into_iter()
        .map(|part| (part.name, part.theirs, part.yours))
        .collect();
    let some = |mass: &str| Some(mass.to_owned());
    assert_eq!(
        found,
        [
            ("rake".to_owned(), some("1 kg"), None),
            ("battery".to_owned(), some("600 g"), some("620 g")),
            ("arm".to_owned(), None, some("90 g")),
        ]
    );
}

#[test]
fn limits_that_turn_are_told_with_both_verdicts() {
    // Ten times the mass on the same contact breaks through mud that bore 2.7 times the load.
    let heavy = changed(Edit::Set { id: MASS.any(), text: "64 kg".to_owned() });
    let difference = of(&sandpiper(), &heavy);
    let low_end = difference
        .turned
        .iter()
        .find(|turned| turned.yours.limit.margin.name() == "low-end-margin")
        .unwrap_or_else(|| panic!("{:?}", difference.turned));
    assert_eq!(low_end.theirs.verdict, Verdict::Holds);
    assert_eq!(low_end.yours.verdict, Verdict::Gives);
    for turned in &difference.turned {
        assert_ne!(turned.theirs.verdict.in_a_word(), turned.yours.verdict.in_a_word());
    }
}
