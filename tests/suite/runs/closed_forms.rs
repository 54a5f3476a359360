//! Runs whose course is known in closed form, each source beside its check.

use std::f64::consts::{FRAC_PI_2, PI};

use approx::assert_relative_eq;
use heftwise::quantity::catalogue::{
    drive::*, electrics::*, heat::*, impact::*, machine::*, motion::*,
};
use heftwise::quantity::channel::{self, RunKind, RunPulse};
use heftwise::study::Run;
use heftwise::study::run::Ask;

use super::{at, givens, points, run};

/// `v = √(2Pt/m)` and `x = √(8P/9m) t^(3/2)`.
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power, challenge problem on a car with
/// constant power.
#[test]
fn a_launch_at_constant_power_without_losses() {
    let (power, mass) = (1500.0, 80.0);
    let run = run(
        RunKind::Launch,
        &[
            (DRIVE_POWER.any(), power),
            (MASS.any(), mass),
            (STEADY_RESISTANCE.any(), 0.0),
            (TARGET_SPEED.any(), 8.0),
        ],
    )
    .unwrap();
    for (time, speed) in points(&run, &channel::SPEED) {
        assert_relative_eq!(speed, (2.0 * power * time / mass).sqrt(), max_relative = 1e-7);
    }
    for (time, distance) in points(&run, &channel::DISTANCE).skip(1) {
        let wanted = (8.0 * power / (9.0 * mass)).sqrt() * time.powf(1.5);
        assert_relative_eq!(distance, wanted, max_relative = 1e-7);
    }
    assert_eq!(run.marks.len(), 1);
}

/// A torque against a steady resistance: `v = (F − R) t / m`, `x = ½ a t²`; then the power takes
/// over where `P / v = F`.
/// Source: OpenStax, University Physics Volume 1, section 3.4 and section 7.4.
#[test]
fn a_launch_names_its_limits() {
    let run = run(
        RunKind::Launch,
        &[
            (DRIVE_POWER.any(), 400.0),
            (TORQUE_FORCE.any(), 200.0),
            (MASS.any(), 50.0),
            (STEADY_RESISTANCE.any(), 50.0),
            (TARGET_SPEED.any(), 5.0),
        ],
    )
    .unwrap();
    let [first, second] = run.marks.as_slice() else { panic!("{:?}", run.marks) };
    assert_eq!((first.brief, second.brief), ("the torque limits", "the power limits"));
    // At 400 W / 200 N = 2 m/s, reached with 3 m/s².
    assert_relative_eq!(second.at, 2.0 / 3.0, max_relative = 1e-6);
    assert_relative_eq!(at(&run, &channel::SPEED, 0.5), 1.5, max_relative = 1e-6);
    assert_relative_eq!(at(&run, &channel::ACCELERATION, 0.5), 3.0, max_relative = 1e-6);
    let said = run.sentence(&Default::default());
    assert!(said.contains("at first the torque limits; from 667 ms on the power limits"), "{said}");
}

/// With steady resistance `v = v₀ − R t / m`: a straight line.
/// Source: OpenStax, University Physics Volume 1, section 3.4.
#[test]
fn a_coast_without_air_is_a_straight_line() {
    let run = run(
        RunKind::Coast,
        &[(MASS.any(), 12.0), (STEADY_RESISTANCE.any(), 6.0), (DRIVING_SPEED.any(), 4.0)],
    )
    .unwrap();
    for (time, speed) in points(&run, &channel::SPEED) {
        assert_relative_eq!(speed, 4.0 - 0.5 * time, epsilon = 1e-9);
    }
    assert_relative_eq!(run.end(), 8.0, max_relative = 1e-9);
    assert_relative_eq!(at(&run, &channel::DISTANCE, 8.0), 16.0, max_relative = 1e-9);
}

/// With drag `v = √(R/k) tan(φ − t √(kR)/m)`, `tan φ = v₀ √(k/R)`.
/// Source: `m v' = −R − k v²` solved, as for the coast-down test of SAE J1263 (from memory).
#[test]
fn a_coast_with_drag_follows_the_tangent() {
    let (mass, resistance, drag, speed) = (90.0_f64, 30.0_f64, 45.0_f64, 9.0_f64);
    let k: f64 = drag / (speed * speed);
    let run = run(
        RunKind::Coast,
        &[
            (MASS.any(), mass),
            (STEADY_RESISTANCE.any(), resistance),
            (AIR_DRAG.any(), drag),
            (DRIVING_SPEED.any(), speed),
        ],
    )
    .unwrap();
    let start = (speed * (k / resistance).sqrt()).atan();
    for (time, found) in points(&run, &channel::SPEED) {
        let angle = start - time * (k * resistance).sqrt() / mass;
        assert_relative_eq!(found, (resistance / k).sqrt() * angle.tan(), epsilon = 1e-7);
    }
}

/// Reaction at full speed, then `v²/(2a)`: 30 m/s, 0.5 s, dry concrete 7 m/s², 79.3 m in all.
/// Source: OpenStax, University Physics Volume 1, section 3.4, Example 3.10 (15.0 m + 64.3 m).
#[test]
fn a_stop_with_reaction_time() {
    let run = run(
        RunKind::Stop,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.0),
            (REACTION_TIME.any(), 0.5),
        ],
    )
    .unwrap();
    assert_relative_eq!(at(&run, &channel::DISTANCE, 0.5), 15.0, max_relative = 1e-9);
    assert_relative_eq!(at(&run, &channel::DISTANCE, run.end()), 79.3, max_relative = 1e-3);
    assert_eq!(at(&run, &channel::SPEED, 0.25), 30.0);
    assert_relative_eq!(at(&run, &channel::SPEED, 1.5), 23.0, max_relative = 1e-9);
    assert_eq!(run.marks[0].at, 0.5);
}

/// A winding in close touch with its housing warms as one body: `ΔT (1 − e^(−t/τ))`.
/// Source: lumped bodies, S. K. Som, Introduction to Heat Transfer, chapter 4.
#[test]
fn a_warm_up_of_one_body_is_exponential() {
    let (loss, to_air, capacity) = (20.0, 3.0, 150.0);
    let ask = Ask { to: Some(2000.0), ..Ask::new(RunKind::WarmUp) };
    let run = Run::of(
        &ask,
        &givens(&[
            (MOTOR_LOSS.any(), loss),
            (WINDING_LOSS.any(), 0.0),
            (WINDING_TO_HOUSING.any(), 1e-4),
            (HOUSING_TO_AIR.any(), to_air),
            (WINDING_HEAT_CAPACITY.any(), 0.2 * capacity),
            (HOUSING_HEAT_CAPACITY.any(), 0.8 * capacity),
            (COOLING_AIR.any(), 293.15),
            (WINDING_LIMIT.any(), 333.15),
        ]),
    )
    .unwrap();
    let constant = to_air * capacity;
    for (time, found) in points(&run, &channel::WINDING).skip(1) {
        let wanted = 293.15 + loss * to_air * (1.0 - (-time / constant).exp());
        assert_relative_eq!(found, wanted, epsilon = 0.01);
    }
    // 40 K of 60 K: t = −τ ln(1 − 2/3).
    assert_relative_eq!(run.marks[0].at, constant * 3.0_f64.ln(), max_relative = 1e-3);
}

/// Work and rest: the peaks settle at `ΔT (1 − e^(−t₁/τ)) / (1 − e^(−(t₁+t₂)/τ))`.
/// Source: IEC 60034-1 duty type S3 by the lumped model (from memory).
#[test]
fn a_warm_up_with_rests_settles_at_the_duty_peak() {
    let (on, off, constant, hottest) = (200.0_f64, 300.0_f64, 450.0_f64, 60.0);
    let ask = Ask {
        on: Some(on),
        off: Some(off),
        to: Some(40.0 * (on + off)),
        ..Ask::new(RunKind::WarmUp)
    };
    let run = Run::of(
        &ask,
        &givens(&[
            (MOTOR_LOSS.any(), 20.0),
            (WINDING_LOSS.any(), 0.0),
            (WINDING_TO_HOUSING.any(), 1e-4),
            (HOUSING_TO_AIR.any(), 3.0),
            (WINDING_HEAT_CAPACITY.any(), 30.0),
            (HOUSING_HEAT_CAPACITY.any(), 120.0),
            (COOLING_AIR.any(), 293.15),
        ]),
    )
    .unwrap();
    let wanted = hottest * (-on / constant).exp_m1() / (-(on + off) / constant).exp_m1();
    let last_peak = at(&run, &channel::WINDING, 39.0 * (on + off) + on);
    assert_relative_eq!(last_peak - 293.15, wanted, epsilon = 0.05);
}

/// A half-sine pulse takes away `Δv = (2/π) a T`, and half of speed times time as travel.
/// Source: area of the pulse, IEC 60068-2-27 (from memory).
#[test]
fn a_half_sine_impact() {
    let (mass, speed, time) = (6.4, 2.62, 0.019);
    let run = run(
        RunKind::Impact,
        &[(MASS.any(), mass), (IMPACT_SPEED.any(), speed), (STOP_TIME.any(), time)],
    )
    .unwrap();
    let peak = points(&run, &channel::FORCE).map(|(_, force)| force).fold(0.0, f64::max) / mass;
    assert_relative_eq!(2.0 / PI * peak * time, speed, max_relative = 1e-6);
    for (moment, force) in points(&run, &channel::FORCE) {
        assert_relative_eq!(force / mass, peak * (PI * moment / time).sin(), epsilon = 1e-6);
    }
    assert_relative_eq!(at(&run, &channel::CRUSH, time), speed * time / 2.0, max_relative = 1e-9);
    assert_relative_eq!(at(&run, &channel::SPEED, time), 0.0, epsilon = 1e-9);
}

/// A spring along the level stops in a quarter of a swing, `t = π s / (2 v)`, its peak twice the mean
/// over the distance, `F = m v² / s`; dropped on, `½ k x² = m g (h + x)`.
/// Source: OpenStax, University Physics Volume 1, sections 15.1 and 8.3.
#[test]
fn a_spring_impact() {
    let (mass, speed, distance) = (6.4, 2.62, 0.025);
    let ask = Ask { pulse: Some(RunPulse::Spring), ..Ask::new(RunKind::Impact) };
    let numbers =
        [(MASS.any(), mass), (IMPACT_SPEED.any(), speed), (STOP_DISTANCE.any(), distance)];
    let run = Run::of(&ask, &givens(&numbers)).unwrap();
    assert_relative_eq!(run.end(), FRAC_PI_2 * distance / speed, max_relative = 1e-9);
    let force = at(&run, &channel::FORCE, run.end());
    assert_relative_eq!(force, mass * speed * speed / distance, max_relative = 1e-9);
    assert_relative_eq!(at(&run, &channel::CRUSH, run.end()), distance, max_relative = 1e-9);

    let dropped = [numbers.as_slice(), &[(APPROACH_ANGLE.any(), FRAC_PI_2)]].concat();
    let run = Run::of(&ask, &givens(&dropped)).unwrap();
    assert_relative_eq!(at(&run, &channel::CRUSH, run.end()), distance, max_relative = 1e-9);
    let work = mass * (speed * speed / 2.0 + 9.80665 * distance);
    let force = at(&run, &channel::FORCE, run.end());
    assert_relative_eq!(force * distance / 2.0, work, max_relative = 1e-9);
}

/// A steady current uses the charge up in `t = Q / I`; with resistance the cut-off comes when the
/// resting voltage is down to it and the drop: here `(1 − I R / (2 (V − V_cut))) Q / I`.
/// Source: the definition of current, OpenStax, College Physics 2e, section 20.1, and section 21.2.
#[test]
fn until_empty_at_a_steady_current() {
    let (mean, cutoff, charge, current) = (14.8, 12.0, 18_000.0, 2.5);
    let numbers = |resistance: f64| {
        [
            (BATTERY_VOLTAGE.any(), mean),
            (BATTERY_CUTOFF_VOLTAGE.any(), cutoff),
            (BATTERY_CHARGE.any(), charge),
            (BATTERY_CURRENT.any(), current),
            (BATTERY_RESISTANCE.any(), resistance),
            (USABLE_SHARE.any(), 0.5),
        ]
    };
    let whole = run(RunKind::UntilEmpty, &numbers(1e-9)).unwrap();
    assert_relative_eq!(whole.end(), charge / current, max_relative = 1e-6);
    assert_relative_eq!(whole.marks[0].at, 0.5 * charge / current, max_relative = 1e-6);
    let resistance = 0.1;
    let part = 1.0 - current * resistance / (2.0 * (mean - cutoff));
    let run = run(RunKind::UntilEmpty, &numbers(resistance)).unwrap();
    assert_relative_eq!(run.end(), part * charge / current, max_relative = 1e-6);
    assert_relative_eq!(at(&run, &channel::CHARGE, run.end()), 1.0 - part, max_relative = 1e-6);
    assert_relative_eq!(at(&run, &channel::VOLTAGE, run.end()), cutoff, max_relative = 1e-6);
}
