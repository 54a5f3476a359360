//! Levers, against the exponents of the formulas.

use std::collections::BTreeMap;

use heftwise::quantity::catalogue::{impact::*, machine::*, pressure::*, running_gear::*};
use heftwise::quantity::{AnyId, Effort, Step, Units};
use heftwise::study::Outcome;
use heftwise::study::levers::{Lever, Levers};

use super::sandpiper;

fn outcome(spreads: &[(AnyId, f64)]) -> Outcome {
    let mut givens = sandpiper();
    givens.set(BALANCE_OFFSET, -0.022);
    givens.set(IMPACT_SPEED, 2.0);
    Outcome::of(givens, &spreads.iter().copied().collect::<BTreeMap<_, _>>(), 0)
}

fn lever(levers: &Levers, id: impl Into<AnyId>) -> &Lever {
    let id = id.into();
    levers.levers.iter().find(|lever| lever.id == id).unwrap()
}

#[test]
fn a_step_does_what_the_exponent_says() {
    let step = Step::percent(1.0).unwrap();
    // p = m g / (n b L): exponents 1 of mass, −1 of width and length.
    let pressure = Levers::of(GROUND_PRESSURE, &step, &outcome(&[]));
    for (id, power) in [
        (MASS.any(), 1.0),
        (GRAVITY.any(), 1.0),
        (TRACK_WIDTH.any(), -1.0),
        (CONTACT_LENGTH.any(), -1.0),
    ] {
        let lever = lever(&pressure, id);
        let ratio = lever.after.clone().unwrap() / lever.before;
        approx::assert_relative_eq!(ratio, 1.01f64.powf(power), max_relative = 1e-12);
    }
    assert_eq!(lever(&pressure, TRACK_WIDTH).effect(), "down 0.99 %");
    // E = m v² / 2: exponent 2 of the speed.
    let energy = Levers::of(KINETIC_ENERGY, &step, &outcome(&[]));
    approx::assert_relative_eq!(
        lever(&energy, IMPACT_SPEED).size().unwrap(),
        1.01f64.powi(2) - 1.0,
        max_relative = 1e-9
    );
    assert_eq!(energy.levers[0].id, IMPACT_SPEED.any());
}

#[test]
fn small_steps_agree_with_the_slope() {
    // p_end = p (1 + 6 |e| / L): d p_end / d e = 6 p / L, downhill towards the middle.
    let step = Step::read("0.1 mm").unwrap();
    let levers = Levers::of(LOW_END_PRESSURE, &step, &outcome(&[]));
    let offset = lever(&levers, BALANCE_OFFSET);
    let mean = 6.4 * 9.80665 / (2.0 * 0.09 * 0.42);
    let slope = (offset.after.clone().unwrap() - offset.before) / 1e-4;
    approx::assert_relative_eq!(slope, -6.0 * mean / 0.42, max_relative = 1e-6);
    // An amount moves only what it measures.
    assert!(levers.levers.iter().all(|lever| lever.id != MASS.any()));
}

#[test]
fn sorted_and_what_costs_nothing_apart() {
    let levers = Levers::of(LOW_END_PRESSURE, &Step::percent(1.0).unwrap(), &outcome(&[]));
    assert!(
        levers
            .levers
            .windows(2)
            .all(|pair| pair[0].size().unwrap_or(-1.0) >= pair[1].size().unwrap_or(-1.0))
    );
    let ids = |effort| levers.by(effort).map(|lever| lever.id.name()).collect::<Vec<_>>();
    assert!(ids(Effort::Free).contains(&"balance-offset"));
    assert!(ids(Effort::Bought).contains(&"track-width"));
    // Nobody sets the slope: it is where the machine goes.
    assert_eq!(ids(Effort::Fixed), ["gravity", "slope"]);
    let says = levers.sentence(&Units::default());
    let way = "What does most is the contact length: from 420 mm to 424 mm puts the pressure under the \
               low end (worst) down 1.2 %.";
    assert!(says.starts_with(way), "{says}");
    let free = "Of the moves that cost nothing, the balance point offset does most: from −22 mm to \
                −21.8 mm puts";
    assert!(says.contains(free), "{says}");
    // One track more is no percent, so it stands apart; no wheel is no number to add to.
    assert_eq!(levers.counted().map(|lever| lever.id).collect::<Vec<_>>(), [TRACK_COUNT.any()]);
    // The slope would need a height of the centre of gravity.
    assert_eq!(levers.levers.last().unwrap().id, SLOPE.any());
}

#[test]
fn the_doubt_is_shared_out() {
    let spreads = [(TRACK_WIDTH.any(), 0.002), (CONTACT_LENGTH.any(), 0.015)];
    let levers = Levers::of(GROUND_PRESSURE, &Step::percent(1.0).unwrap(), &outcome(&spreads));
    let (width, length): (f64, f64) = (0.002 / 0.09, 0.015 / 0.42);
    let share = length.powi(2) / (length.powi(2) + width.powi(2));
    let (most, of_it) = levers.most_doubted().unwrap();
    assert_eq!(most.id, CONTACT_LENGTH.any());
    approx::assert_relative_eq!(of_it, share, max_relative = 5e-3);
    let says = levers.sentence(&Units::default());
    assert!(says.contains("72 % of the doubt comes from the contact length."), "{says}");
}

#[test]
fn a_step_that_cannot_be_goes_the_other_way() {
    let mut givens = sandpiper();
    givens.set(WHEEL_LOAD_SHARE, 1.0);
    givens.set(TRACK_COUNT, 0.0);
    givens.set(WHEEL_COUNT, 4.0);
    givens.set(WHEEL_DIAMETER, 0.3);
    givens.set(WHEEL_WIDTH, 0.1);
    givens.set(INFLATION_PRESSURE, 3e4);
    let outcome = Outcome::of(givens, &BTreeMap::new(), 0);
    let levers = Levers::of(WHEEL_AREA_BY_INFLATION, &Step::percent(1.0).unwrap(), &outcome);
    let share = lever(&levers, WHEEL_LOAD_SHARE);
    approx::assert_relative_eq!(share.to, 0.99, max_relative = 1e-12);
}

#[test]
fn without_the_answer_what_is_lacking() {
    let mut givens = sandpiper();
    givens.clear(MASS.any());
    let outcome = Outcome::of(givens, &BTreeMap::new(), 0);
    let levers = Levers::of(GROUND_PRESSURE, &Step::percent(1.0).unwrap(), &outcome);
    assert_eq!(levers.levers, []);
    assert_eq!(
        levers.sentence(&Units::default()),
        "There is no ground pressure (mean) yet. Say the mass."
    );
}
