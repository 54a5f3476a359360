//! What else moved.

use heftwise::quantity::catalogue::{impact::*, machine::*, pressure::*, running_gear::*};
use heftwise::rules::evaluate;
use heftwise::study::moved;
use heftwise::study::moved::ratio_in_words;

use super::sandpiper;

#[test]
fn half_the_width_moves_area_and_pressure_alone() {
    let before = evaluate(&sandpiper());
    let mut givens = sandpiper();
    givens.set(TRACK_WIDTH, 0.045);
    let moved = moved(&before, &evaluate(&givens));
    let ids: Vec<_> = moved.iter().map(|m| m.id).collect();
    assert!(ids.contains(&CONTACT_AREA.any()) && ids.contains(&GROUND_PRESSURE.any()));
    assert!(!ids.contains(&WEIGHT.any()) && !ids.contains(&MASS.any()));
    let of = |id| moved.iter().find(|m| m.id == id).unwrap().in_words();
    assert_eq!(of(CONTACT_AREA.any()), "half");
    assert_eq!(of(GROUND_PRESSURE.any()), "twice");
}

#[test]
fn what_came_or_went_stands_first() {
    let before = evaluate(&sandpiper());
    let mut givens = sandpiper();
    givens.set(MASS, 6.5);
    givens.set(IMPACT_SPEED, 1.0);
    let moved = moved(&before, &evaluate(&givens));
    assert_eq!(moved[0].in_words(), "now known");
    assert!(moved.iter().any(|m| m.id == KINETIC_ENERGY.any() && m.before.is_none()));
    assert_eq!(moved.last().unwrap().in_words(), "up 1.6 %");
}

#[test]
fn nothing_moved_is_empty() {
    let values = evaluate(&sandpiper());
    assert!(moved(&values, &values).is_empty());
}

#[test]
fn ratios_in_words() {
    for (ratio, words) in [
        (1.8, "1.8 times"),
        (2.0, "twice"),
        (12.34, "12 times"),
        (1.12, "up 12 %"),
        (0.88, "down 12 %"),
        (0.5, "half"),
        (0.05, "20 times less"),
        (1.0, "the same"),
        (0.0, "not known"),
        (f64::NAN, "not known"),
    ] {
        assert_eq!(ratio_in_words(ratio), words);
    }
}
