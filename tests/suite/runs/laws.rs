//! Laws that hold for any numbers.

use heftwise::quantity::catalogue::{impact::*, machine::*, motion::*};
use heftwise::quantity::channel::{self, RunKind, RunPulse};
use heftwise::quantity::{AnyId, catalogue};
use heftwise::study::Run;
use heftwise::study::run::Ask;
use proptest::prelude::*;

use super::{givens, points, run, sandpiper};

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// What the drive gives above the resistance is the motion: `∫ m a v dt = ½ m v²`, to 1 %, the
    /// rest being the straight lines between moments.
    #[test]
    fn a_launch_conserves_energy(
        power in 10.0..5000.0_f64, force in 5.0..500.0_f64, mass in 1.0..300.0_f64,
        held in 0.0..0.5_f64, part in 0.05..0.8_f64,
    ) {
        let resistance = held * force;
        let most = if resistance > 0.0 { power / resistance } else { 50.0 };
        let target = part * most.min(50.0);
        let numbers = [
            (DRIVE_POWER.any(), power), (TORQUE_FORCE.any(), force), (MASS.any(), mass),
            (STEADY_RESISTANCE.any(), resistance), (TARGET_SPEED.any(), target),
        ];
        let run = run(RunKind::Launch, &numbers).unwrap();
        let rate: Vec<f64> = points(&run, &channel::ACCELERATION)
            .zip(points(&run, &channel::SPEED))
            .map(|((_, a), (_, v))| mass * a * v)
            .collect();
        let work: f64 = run.times.windows(2).zip(rate.windows(2))
            .map(|(t, p)| (t[1] - t[0]) * (p[0] + p[1]) / 2.0)
            .sum();
        let energy = mass * target * target / 2.0;
        prop_assert!((work - energy).abs() < 0.01 * energy, "{work} J, {energy} J");
    }

    /// The force over the way takes away all the motion and what the weight adds on the way:
    /// `∫ F dx = ½ m v² + F_W x`, to 1 %.
    #[test]
    fn an_impact_conserves_energy(
        mass in 0.1..500.0_f64, speed in 0.1..20.0_f64, distance in 0.001..0.5_f64,
        angle in 0.0..1.57_f64, pulse in 0..6_usize,
    ) {
        let ask = Ask { pulse: Some(RunPulse::WORDS[pulse].1), ..Ask::new(RunKind::Impact) };
        let numbers = [
            (MASS.any(), mass), (IMPACT_SPEED.any(), speed), (STOP_DISTANCE.any(), distance),
            (APPROACH_ANGLE.any(), angle),
        ];
        let run = Run::of(&ask, &givens(&numbers)).unwrap();
        let force: Vec<f64> = points(&run, &channel::FORCE).map(|(_, force)| force).collect();
        let way: Vec<f64> = points(&run, &channel::CRUSH).map(|(_, way)| way).collect();
        let work: f64 = way.windows(2).zip(force.windows(2))
            .map(|(x, f)| (x[1] - x[0]) * (f[0] + f[1]) / 2.0)
            .sum();
        let share = mass * 9.80665 * angle.sin();
        let energy = mass * speed * speed / 2.0 + share * distance;
        prop_assert!((work - energy).abs() < 0.01 * energy, "{work} J, {energy} J");
        let travel = way.last().unwrap();
        prop_assert!((travel - distance).abs() < 1e-6 * distance, "{travel} m");
    }

    /// Any number in any place makes a run of finite numbers, or words.
    #[test]
    fn any_number_makes_a_run_or_words(
        kind in 0..6_usize, pick in 0..1000_usize, digits in -9.99..9.99_f64, power in -12..13_i32,
        speed in proptest::option::of(-1.0..1e6_f64), to in proptest::option::of(0.0..1e9_f64),
    ) {
        let mut givens = sandpiper();
        let entries = catalogue::all();
        let id: AnyId = entries[pick % entries.len()].id;
        givens.set(id, digits * 10.0_f64.powi(power));
        let ask = Ask { speed, to, ..Ask::new(RunKind::WORDS[kind].1) };
        match Run::of(&ask, &givens) {
            Ok(run) => {
                prop_assert!(run.times.len() <= 2000, "{} moments", run.times.len());
                prop_assert!(run.times.windows(2).all(|t| t[0] < t[1]));
                for series in &run.series {
                    prop_assert_eq!(series.values.len(), run.times.len());
                    prop_assert!(series.values.iter().all(|value| value.is_finite()));
                }
                prop_assert!(!run.sentence(&Default::default()).contains("not a number"));
            }
            Err(why) => prop_assert!(why.0.ends_with('.'), "{}", why),
        }
    }
}

/// What a lesson may name is what a study fills.
#[test]
fn every_kind_of_run_shows_what_it_says() {
    for (word, kind) in RunKind::WORDS {
        let run = Run::of(&Ask::new(kind), &sandpiper()).unwrap();
        let filled: Vec<_> = run.series.iter().map(|series| series.channel.id).collect();
        let named: Vec<_> = kind.channels().iter().map(|entry| entry.id).collect();
        assert_eq!(filled, named, "{word}");
    }
}

/// A run agrees with the rules that say where it ends.
#[test]
fn runs_end_where_the_rules_say() {
    let givens = sandpiper();
    let values = heftwise::rules::evaluate(&givens);
    let si = |id: AnyId| values.si(id).unwrap();
    let end = |kind, channel: &heftwise::quantity::Entry| {
        let run = Run::of(&Ask::new(kind), &givens).unwrap();
        (run.end(), *run.series(channel).unwrap().values.last().unwrap())
    };
    let near = |(a, b): (f64, f64), (c, d): (f64, f64)| {
        approx::assert_relative_eq!(a, c, max_relative = 1e-6);
        approx::assert_relative_eq!(b, d, max_relative = 1e-6);
    };
    let way = &channel::DISTANCE;
    near(end(RunKind::Launch, way), (si(RUN_UP_TIME.any()), si(RUN_UP_DISTANCE.any())));
    near(end(RunKind::Coast, way), (si(COAST_DOWN_TIME.any()), si(COAST_DOWN_DISTANCE.any())));
    let stop = end(RunKind::Stop, way);
    near((stop.0, stop.1), (stop.0, si(STOPPING_DISTANCE.any())));
    near(end(RunKind::Impact, &channel::CRUSH), (si(STOP_TIME.any()), si(STOP_DISTANCE.any())));
    let hit = Run::of(&Ask::new(RunKind::Impact), &givens).unwrap();
    let peak = points(&hit, &channel::FORCE).map(|(_, force)| force).fold(0.0, f64::max);
    approx::assert_relative_eq!(peak, si(PEAK_IMPACT_FORCE.any()), max_relative = 1e-4);
}
