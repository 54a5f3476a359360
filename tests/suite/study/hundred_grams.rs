//! What 100 g buys.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{self, impact::*, machine::*, pressure::*};
use heftwise::sheet::{Sheet, Tally};
use heftwise::study::{Bought, hundred_grams};

const BUILD: &str = r#"
format = 1
[running-gear]
track-count = "2"
track-width = "90 mm"
contact-length = "420 mm"
[impact]
impact-speed = "2 m/s"
stop-distance = "20 mm"
[[parts]]
name = "all of it"
mass = "6.4 kg"
at = ["20 mm", "0 mm", "80 mm"]
"#;

fn tally(text: &str) -> Tally {
    Sheet::read(text).unwrap().tally()
}

fn of(bought: &[Bought], id: impl Into<AnyId>) -> Bought {
    let id = id.into();
    *bought.iter().find(|b| b.id == id).unwrap_or_else(|| panic!("{id} did not move"))
}

fn near(found: Option<f64>, wanted: f64) {
    let found = found.unwrap();
    assert!((found - wanted).abs() < 1e-9 * wanted.abs(), "{found} is not {wanted}");
}

#[test]
fn pressure_and_force_by_hand() {
    let bought = hundred_grams(&tally(BUILD), None);
    let pressure = of(&bought, GROUND_PRESSURE);
    // 0.1 kg over 2 x 90 mm x 420 mm.
    near(pressure.more, 0.1 * 9.80665 / 0.0756);
    near(pressure.less, -0.1 * 9.80665 / 0.0756);
    near(Some(pressure.now), 6.4 * 9.80665 / 0.0756);
    // From 2 m/s in 20 mm every kilogram asks for 100 N.
    near(of(&bought, MEAN_IMPACT_FORCE).more, 10.0);
    assert!(bought.iter().all(|b| b.id != MASS.any() && b.id != DECELERATION_G.any()));
    assert!(bought.iter().all(|b| catalogue::find(b.id.name()).unwrap().headline));
}

#[test]
fn the_largest_part_stands_first() {
    let bought = hundred_grams(&tally(BUILD), Some([0.21, 0.0, 0.3]));
    let parts: Vec<f64> = bought.iter().map(Bought::part).collect();
    assert!(parts.is_sorted_by(|a, b| a >= b) && parts.len() > 3, "{parts:?}");
}

#[test]
fn where_it_sits_counts() {
    let end = |at| of(&hundred_grams(&tally(BUILD), at), LOW_END_PRESSURE).more.unwrap();
    assert!(end(Some([0.2, 0.0, 0.08])) > end(None));
    assert!(end(Some([-0.2, 0.0, 0.08])) < end(None));
    // At the present centre of gravity it makes no difference whether that is said.
    near(Some(end(Some([0.02, 0.0, 0.08]))), end(None));
    // By hand: 100 g at 200 mm move the balance point from 20 mm to (6.4 x 20 + 0.1 x 200) / 6.5.
    let offset = (6.4 * 0.02 + 0.1 * 0.2) / 6.5;
    let worst = |mass: f64, offset: f64| mass * 9.80665 / 0.0756 * (1.0 + 6.0 * offset / 0.42);
    near(Some(end(Some([0.2, 0.0, 0.08]))), worst(6.5, offset) - worst(6.4, 0.02));
}

#[test]
fn a_trial_mass_says_the_same() {
    let trial =
        format!("{BUILD}[trial-mass]\nmass = \"+100 g\"\nat = [\"200 mm\", \"0 mm\", \"80 mm\"]\n");
    let with_trial = heftwise::rules::evaluate(&tally(&trial).givens);
    let bought = hundred_grams(&tally(BUILD), Some([0.2, 0.0, 0.08]));
    for b in &bought {
        near(Some(b.now + b.more.unwrap()), with_trial.si(b.id).unwrap());
    }
}

#[test]
fn too_light_to_lose_it_or_no_mass_at_all() {
    let light = tally("format = 1\n[machine]\nmass = \"80 g\"\n");
    let weight = of(&hundred_grams(&light, None), WEIGHT);
    assert_eq!(weight.less, None);
    near(weight.more, 0.980665);
    assert!(hundred_grams(&tally("format = 1\n"), None).is_empty());
}
