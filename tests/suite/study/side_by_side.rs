//! Builds side by side.

use std::collections::BTreeMap;

use heftwise::quantity::Units;
use heftwise::quantity::catalogue::{ground::*, machine::*, pressure::*};
use heftwise::study::Outcome;
use heftwise::study::moved::compared_in_words;
use heftwise::study::side_by_side::{Build, SideBySide};

use super::sandpiper;

#[test]
fn ratios_and_what_gives_first() {
    let mut own = sandpiper();
    own.set(BLOCK_MASS, 3.0);
    let mut heavy = own.clone();
    heavy.set(MASS, 14.9);
    heavy.set(BALANCE_OFFSET, -0.052);
    let (own, heavy) =
        (Outcome::of(own, &BTreeMap::new(), 0), Outcome::of(heavy, &BTreeMap::new(), 0));
    let builds =
        [Build { name: "Sandpiper", outcome: &own }, Build { name: "Bullock", outcome: &heavy }];
    let show = [MASS.any(), GROUND_PRESSURE.any(), CG_HEIGHT.any()];
    let table = SideBySide::of(&show, &builds);
    assert_eq!(table.rows[0].cells[0].ratio, None);
    approx::assert_relative_eq!(table.rows[0].cells[1].ratio.unwrap(), 14.9 / 6.4);
    assert_eq!(table.rows[2].cells[1].number, Err("Say the centre of gravity height.".to_owned()));
    let first = table.columns[1].gives_first.as_ref().unwrap();
    assert_eq!(first.limit.margin, LOW_END_MARGIN.any());
    let says = table.sentence(&Units::default());
    assert!(says.contains("Bullock differs most in the mass: 2.3 times yours."), "{says}");
    assert!(
        says.contains(
            "Nearest to giving is Bullock: the ground under the low end, margin 0.873, gives now."
        ),
        "{says}"
    );
}

#[test]
fn ratios_to_yours_in_words() {
    for (ratio, words) in [
        (1.8, "1.8 times yours"),
        (2.0, "twice yours"),
        (0.5, "half of yours"),
        (1.12, "12 % more than yours"),
        (0.88, "12 % less than yours"),
        (1.0, "the same as yours"),
        (0.01, "100 times less than yours"),
        (f64::NAN, "not known"),
    ] {
        assert_eq!(compared_in_words(ratio), words);
    }
}
