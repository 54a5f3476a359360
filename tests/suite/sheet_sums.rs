//! Parts and trial mass added up, against published examples.

use approx::assert_relative_eq;
use heftwise::quantity::catalogue::balance::SIDE_OFFSET;
use heftwise::quantity::catalogue::machine::{BALANCE_OFFSET, CG_HEIGHT, MASS};
use heftwise::quantity::catalogue::turning::{YAW_ACCELERATION, YAW_INERTIA};
use heftwise::rules::{Origin, evaluate};
use heftwise::sheet::{Place, Sheet, Tally};

use crate::sheet_edit::{set, sheet};

/// A build of parts: mass, then forward, left and up; an empty place is left out.
fn build(parts: &[(&str, [&str; 3])], more: &str) -> Sheet {
    let parts: String = parts
        .iter()
        .enumerate()
        .map(|(index, (mass, at))| {
            let at = if at[0].is_empty() { String::new() } else { format!("at = {at:?}\n") };
            format!("[[parts]]\nname = \"part {index}\"\nmass = \"{mass}\"\n{at}")
        })
        .collect();
    sheet(&format!("format = 1\n{parts}{more}"))
}

fn si(tally: &Tally, id: impl Into<heftwise::quantity::AnyId>) -> f64 {
    tally.givens.get(id.into()).expect("it is given").0
}

/// cg-benchmark-bicycle: Meijaard, Papadopoulos, Ruina and Schwab, Proc. R. Soc. A 463 (2007) 1955, Table 1: rear
/// wheel, rider with frame, fork, front wheel. The sum of mass times height is printed as the
/// stiffness entry -80.95; the heights and distances divided by 94 kg are worked from it.
#[test]
fn the_benchmark_bicycle_has_its_centre_of_gravity_where_published() {
    let tally = build(
        &[
            ("2 kg", ["0 m", "0 m", "0.3 m"]),
            ("85 kg", ["0.3 m", "0 m", "0.9 m"]),
            ("4 kg", ["0.9 m", "0 m", "0.7 m"]),
            ("3 kg", ["1.02 m", "0 m", "0.35 m"]),
        ],
        "",
    )
    .tally();
    assert_eq!(tally.problems, []);
    assert_eq!(tally.givens.get(MASS.any()).unwrap().1, Origin::Parts);
    assert_relative_eq!(si(&tally, MASS), 94.0, max_relative = 1e-12);
    assert_relative_eq!(si(&tally, CG_HEIGHT) * 94.0, 80.95, max_relative = 1e-9);
    assert_relative_eq!(si(&tally, BALANCE_OFFSET), 0.342128, max_relative = 2e-6);
    assert_relative_eq!(si(&tally, CG_HEIGHT), 0.861170, max_relative = 2e-6);
}

/// cg-block-hole-wedge: Baker and Haynes, Engineering Statics: Open and Interactive, chapter 7, "3D Center of Mass":
/// a block, a hole and a wedge. The weights are proportional to these masses; the hole, a negative
/// part, is the trial mass.
#[test]
fn a_hole_taken_out_by_the_trial_mass_moves_the_centre_as_published() {
    let tally = build(
        &[("27000 lb", ["-3 ft", "2 ft", "4.5 ft"]), ("5916 lb", ["-4 ft", "4.67 ft", "1 ft"])],
        "[trial-mass]\nmass = \"-6283 lb\"\nat = [\"-3 ft\", \"2 ft\", \"6 ft\"]\n",
    )
    .tally();
    assert_eq!(tally.problems, []);
    let feet = tally.cg.expect("there is a centre of gravity").map(|metres| metres / 0.3048);
    for (found, published) in feet.into_iter().zip([-3.22, 2.59, 3.37]) {
        assert_relative_eq!(found, published, max_relative = 3e-3);
    }
    assert_relative_eq!(si(&tally, BALANCE_OFFSET) / 0.3048, -3.22, max_relative = 3e-3);
    assert_relative_eq!(si(&tally, CG_HEIGHT) / 0.3048, 3.37, max_relative = 3e-3);
}

/// cg-three-boxes: Baker and Haynes, as above, "Simple Center of Gravity": 50, 10 and 30 N at 0, 1.2 and 2 m.
#[test]
fn three_boxes_balance_where_published() {
    let up = "0 m";
    let tally = build(
        &[("50 kg", ["0 m", up, up]), ("10 kg", ["1.2 m", up, up]), ("30 kg", ["2.0 m", up, up])],
        "",
    )
    .tally();
    assert_relative_eq!(si(&tally, BALANCE_OFFSET), 0.8, max_relative = 1e-12);
}

#[test]
fn a_stated_mass_wins_over_the_parts_and_the_difference_is_said() {
    let parts = [("1 kg", ["10 mm", "0 mm", "50 mm"])];
    let tally = build(&parts, "[machine]\nmass = \"1.2 kg\"\n").tally();
    assert_eq!(tally.givens.get(MASS.any()), Some((1.2, Origin::Given)));
    assert_eq!(tally.cautions.len(), 1);
    assert!(tally.cautions[0].message.contains("less"), "{:?}", tally.cautions);
    assert_relative_eq!(si(&tally, CG_HEIGHT), 0.05, max_relative = 1e-12);
    let agreed = build(&parts, "[machine]\nmass = \"1.0001 kg\"\n").tally();
    assert_eq!(agreed.cautions, []);
}

#[test]
fn stated_balance_is_not_moved_and_that_is_said() {
    let tally = build(
        &[("1 kg", ["10 mm", "0 mm", "50 mm"])],
        "[machine]\nbalance-offset = \"3 mm\"\n[trial-mass]\nmass = \"1 kg\"\nat = [\"30 mm\", \"0 mm\", \"70 mm\"]\n",
    )
    .tally();
    assert_eq!(tally.givens.get(BALANCE_OFFSET.any()), Some((0.003, Origin::Given)));
    assert_relative_eq!(si(&tally, CG_HEIGHT), 0.06, max_relative = 1e-12);
    assert_eq!(tally.cautions.len(), 1);
}

#[test]
fn a_trial_mass_without_a_place_moves_no_balance() {
    let tally =
        build(&[("1 kg", ["10 mm", "0 mm", "50 mm"])], "[trial-mass]\nmass = \"+500 g\"\n").tally();
    assert_relative_eq!(si(&tally, MASS), 1.5, max_relative = 1e-12);
    assert_relative_eq!(si(&tally, BALANCE_OFFSET), 0.01, max_relative = 1e-12);
}

#[test]
fn parts_without_a_place_count_only_while_they_are_light() {
    let placed = ("990 g", ["10 mm", "0 mm", "50 mm"]);
    let light = build(&[placed, ("10 g", ["", "", ""])], "").tally();
    assert_relative_eq!(si(&light, BALANCE_OFFSET), 0.01, max_relative = 1e-12);
    assert!(light.cautions[0].message.contains("part 1"));
    let heavy = build(&[placed, ("11 g", ["", "", ""])], "").tally();
    assert_eq!(heavy.givens.get(BALANCE_OFFSET.any()), None);
    assert_eq!(heavy.givens.get(CG_HEIGHT.any()), None);
    assert!(heavy.cautions[0].message.contains("part 1"));
    assert_eq!(heavy.parts.unplaced, ["part 1"]);
    assert_relative_eq!(heavy.parts.placed_mass, 0.99, max_relative = 1e-12);
}

#[test]
fn nothing_is_left_when_the_trial_mass_takes_all() {
    for mass in ["-1 kg", "-2 kg"] {
        let trial = format!("[trial-mass]\nmass = \"{mass}\"\n");
        let tally = build(&[("1 kg", ["0 mm", "0 mm", "1 mm"])], &trial).tally();
        assert_eq!(tally.givens.get(MASS.any()), None);
        assert_eq!(tally.problems[0].place, Place::Trial);
    }
}

#[test]
fn a_part_that_cannot_be_read_leaves_the_sum_open() {
    for mass in ["heavy", "-5 g", "4 mm", ""] {
        let tally = build(&[("1 kg", ["0 mm", "0 mm", "1 mm"]), (mass, ["", "", ""])], "").tally();
        assert_eq!(tally.givens.get(MASS.any()), None, "{mass}");
        assert!(matches!(tally.problems[0].place, Place::Part(1, _)), "{mass}");
    }
}

/// JCGM 100:2008, 5.1.2: half-widths that have nothing to do with each other add in quadrature.
#[test]
fn spreads_of_parts_combine_in_quadrature() {
    let tally = build(
        &[
            ("1.0 ± 0.3 kg", ["0 mm", "0 mm", "50 mm"]),
            ("1.0 ± 0.4 kg", ["100 mm", "0 mm", "50 mm"]),
        ],
        "[trial-mass]\nmass = \"+2.0 ± 1.2 kg\"\n",
    )
    .tally();
    assert_eq!(tally.problems, []);
    assert_relative_eq!(tally.parts.mass_spread, 0.5, max_relative = 1e-12);
    assert_relative_eq!(tally.spreads[&MASS.any()], 1.3, max_relative = 1e-12);
    // The balance point x = 0.1 m2 / (m1 + m2): its slopes are -0.025 and 0.025 m/kg.
    assert_relative_eq!(tally.spreads[&BALANCE_OFFSET.any()], 0.0125, max_relative = 1e-12);
    assert_eq!(tally.spreads.get(&CG_HEIGHT.any()), None);
}

#[test]
fn a_mass_set_on_parts_goes_into_the_trial_mass() {
    let mut sheet = build(&[("1.2 kg", ["0 mm", "0 mm", "1 mm"]), ("300 g", ["", "", ""])], "");
    for (typed, trial) in [("2 kg", "+500 g"), ("1.4 kg", "-100 g"), ("4 kg", "+2.5 kg")] {
        sheet.apply(&set(MASS, typed)).unwrap();
        assert_eq!(sheet.trial().map(|trial| trial.mass.as_str()), Some(trial));
        assert_eq!(sheet.number(MASS), None);
    }
    assert_relative_eq!(si(&sheet.tally(), MASS), 4.0, max_relative = 1e-12);
    sheet.apply(&set(MASS, "1.5 kg")).unwrap();
    assert_eq!(sheet.trial(), None);
}

/// The doubt of what was weighed is that of the parts and of the trial mass together
/// (JCGM 100:2008, 5.1.2): 5, 12 and 13 hundredths.
#[test]
fn a_mass_weighed_on_parts_keeps_its_spread() {
    let parts = [("1.0 ± 0.03 kg", ["", "", ""]), ("1.0 ± 0.04 kg", ["", "", ""])];
    let mut sheet = build(&parts, "");
    for (typed, trial, spread) in [
        ("2.5 ± 0.13 kg", Some("+500 ± 120 g"), 0.13),
        ("2 ± 0.13 kg", Some("+0 ± 120 g"), 0.13),
        ("1.9 ± 0.13 kg", Some("-100 ± 120 g"), 0.13),
        ("4 ± 0.13 kg", Some("+2 ± 0.12 kg"), 0.13),
        // The parts are less sure than the scales: their doubt stays.
        ("2.5 ± 0.01 kg", Some("+500 g"), 0.05),
        ("2 ± 0.05 kg", None, 0.05),
    ] {
        sheet.apply(&set(MASS, typed)).unwrap();
        assert_eq!(sheet.trial().map(|trial| trial.mass.as_str()), trial, "{typed}");
        let tally = sheet.tally();
        assert_eq!(tally.problems, []);
        assert_relative_eq!(tally.spreads[&MASS.any()], spread, max_relative = 1e-6);
    }
}

#[test]
fn a_mass_set_on_a_stated_mass_is_the_mass() {
    let mut sheet = sheet("[machine]\nmass = \"6 kg\"\n[trial-mass]\nmass = \"+1 kg\"\n");
    assert_eq!(si(&sheet.tally(), MASS), 7.0);
    sheet.apply(&set(MASS, "8 kg")).unwrap();
    assert_eq!(si(&sheet.tally(), MASS), 8.0);
}

/// The parts about their own balance point: a dumb-bell of 1 kg at 0.3 m either way is 0.18 kg·m²
/// (point masses, OpenStax, University Physics Volume 1, section 10.4).
#[test]
fn parts_with_places_give_the_yaw_inertia() {
    let ends = [("1 kg", ["0.5 m", "0 m", "0.1 m"]), ("1 kg", ["-0.1 m", "0 m", "0.2 m"])];
    let tally = build(&ends, "").tally();
    assert_eq!(tally.givens.get(YAW_INERTIA.any()).unwrap().1, Origin::Parts);
    assert_relative_eq!(si(&tally, YAW_INERTIA), 0.18, max_relative = 1e-12);
    let across = [("1 kg", ["0 m", "0.3 m", "0.1 m"]), ("1 kg", ["0 m", "-0.3 m", "0.2 m"])];
    assert_relative_eq!(si(&build(&across, "").tally(), YAW_INERTIA), 0.18, max_relative = 1e-12);
}

/// A trial mass with a place counts as one part more (parallel axis).
#[test]
fn a_trial_mass_counts_in_the_yaw_inertia_like_a_part() {
    let three = [
        ("1 kg", ["0.5 m", "0.1 m", "0 m"]),
        ("2 kg", ["-0.1 m", "0 m", "0 m"]),
        ("0.7 kg", ["0.2 m", "-0.4 m", "0 m"]),
    ];
    let whole = build(&three, "").tally();
    let trial = "[trial-mass]\nmass = \"+0.7 kg\"\nat = [\"0.2 m\", \"-0.4 m\", \"0 m\"]\n";
    let split = build(&three[..2], trial).tally();
    for id in [YAW_INERTIA.any(), SIDE_OFFSET.any(), BALANCE_OFFSET.any()] {
        assert_relative_eq!(si(&split, id), si(&whole, id), max_relative = 1e-12);
    }
}

#[test]
fn a_stated_yaw_inertia_wins_and_one_point_gives_none() {
    let ends = [("1 kg", ["0.5 m", "0 m", "0 m"]), ("1 kg", ["-0.1 m", "0 m", "0 m"])];
    let stated = build(&ends, "[turning]\nyaw-inertia = \"2 kg·m²\"\n").tally();
    assert_eq!(stated.givens.get(YAW_INERTIA.any()), Some((2.0, Origin::Given)));
    let one = build(&ends[..1], "").tally();
    assert_eq!(one.givens.get(YAW_INERTIA.any()), None);
}

/// JCGM 100:2008, 5.1.2: 2 m x times the half-width of each place, in quadrature.
#[test]
fn the_yaw_inertia_carries_the_spread_of_its_places() {
    let ends = [("1 kg", ["0.30 ± 0.01 m", "0 m", "0 m"]), ("1 kg", ["-0.3 m", "0 m", "0 m"])];
    let tally = build(&ends, "").tally();
    assert_relative_eq!(tally.spreads[&YAW_INERTIA.any()], 2.0 * 0.3 * 0.01, max_relative = 1e-12);
}

/// The same half kilogram slows the answer to the steering more at the end than in the middle.
#[test]
fn where_mass_sits_decides_how_quickly_it_answers() {
    let answers = |at: &str| {
        let parts = [("3 kg", ["200 mm", "0 mm", "90 mm"]), ("3 kg", ["-200 mm", "0 mm", "90 mm"])];
        let more = format!(
            "[turning]\nswing-moment = \"2 N·m\"\n[trial-mass]\nmass = \"+500 g\"\nat = [\"{at}\", \"0 mm\", \"90 mm\"]\n"
        );
        let values = evaluate(&build(&parts, &more).tally().givens);
        values.si(YAW_ACCELERATION).expect("it is found")
    };
    let (middle, end) = (answers("0 mm"), answers("260 mm"));
    assert!(end < middle, "{end} and {middle}");
    // 0.24 kg·m² without it; a mass at the balance point adds nothing.
    assert_relative_eq!(middle, 2.0 / 0.24, max_relative = 1e-9);
}
