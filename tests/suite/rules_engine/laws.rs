//! Laws behind the formulas, for any numbers.

use heftwise::physics::{Impossible, impact, pressure};
use heftwise::quantity::{Length, Measure, Pressure};
use proptest::prelude::*;

fn of<Q: Measure>(si: f64) -> Q {
    Q::from_si(si)
}

fn end_ratio(offset: f64, length: f64) -> f64 {
    pressure::end_ratio(of(offset), of(length)).unwrap().si()
}

fn pressure_at(place: f64, offset: f64, length: f64) -> f64 {
    let mean: Pressure = of(1.0);
    pressure::pressure_at(of(place), mean, of(offset), of(length)).unwrap().si()
}

/// Mean pressure and mean of pressure times place over the contact, for a mean pressure of 1 Pa.
fn sum_up(offset: f64, length: f64) -> (f64, f64) {
    const STEPS: u32 = 4000;
    let places = (0..STEPS).map(|i| length * ((f64::from(i) + 0.5) / f64::from(STEPS) - 0.5));
    let (load, moment) = places.fold((0.0, 0.0), |(load, moment), place| {
        let pressure = pressure_at(place, offset, length);
        (load + pressure, moment + pressure * place)
    });
    (load / f64::from(STEPS), moment / f64::from(STEPS))
}

#[test]
fn trapezoid_and_triangle_meet_at_a_sixth() {
    let length = 0.42;
    let sixth = length / 6.0;
    assert!((end_ratio(sixth, length) - 2.0).abs() < 1e-12);
    for step in [1e-6, 1e-9, 1e-12] {
        let jump = end_ratio(sixth + step, length) - end_ratio(sixth - step, length);
        assert!(jump > 0.0 && jump < 40.0 * step / length + 1e-14, "{jump}");
    }
    let lifted: Length = pressure::lifted_length(of(sixth), of(length)).unwrap();
    assert!(lifted.si().abs() < 1e-15);
}

#[test]
fn a_load_at_the_very_end_tips() {
    for offset in [0.21, -0.21, 0.3] {
        assert_eq!(pressure::end_ratio(of(offset), of(0.42)), Err(Impossible::TipsOver));
        assert_eq!(pressure::lifted_length(of(offset), of(0.42)), Err(Impossible::TipsOver));
    }
}

#[test]
fn a_load_at_a_third_stands_on_half_its_length() {
    // e = L/3: bearing length 3 (1/2 - 1/3) L = L/2, peak 4 times the mean.
    assert!((end_ratio(0.2, 0.6) - 4.0).abs() < 1e-12);
    let lifted: Length = pressure::lifted_length(of(0.2), of(0.6)).unwrap();
    assert!((lifted.si() - 0.3).abs() < 1e-12);
    assert_eq!(pressure_at(-0.01, 0.2, 0.6), 0.0);
    assert!(pressure_at(0.01, 0.2, 0.6) > 0.0);
}

proptest! {
    /// The pressure under the machine carries its weight, where the weight bears down.
    #[test]
    fn pressure_balances_load_and_moment(share in -0.45..0.45, length in 0.05..3.0) {
        let offset = share * length;
        let (load, moment) = sum_up(offset, length);
        prop_assert!((load - 1.0).abs() < 1e-4, "load {load}");
        prop_assert!((moment - offset).abs() < 1e-4 * length, "moment {moment}, offset {offset}");
    }

    /// The end ratio is the pressure at the low end, no place presses harder, none pulls.
    #[test]
    fn the_low_end_is_the_worst(share in -0.49..0.49, length in 0.05..3.0, place in -0.5..0.5) {
        let offset = share * length;
        let ratio = end_ratio(offset, length);
        let end = if offset < 0.0 { -length / 2.0 } else { length / 2.0 };
        prop_assert!((pressure_at(end, offset, length) - ratio).abs() < 1e-9 * ratio);
        let anywhere = pressure_at(place * length, offset, length);
        prop_assert!((-1e-12..=ratio * (1.0 + 1e-12)).contains(&anywhere));
    }

    /// More offset never presses less.
    #[test]
    fn the_worst_end_grows_with_the_offset(a in 0.0..0.49, b in 0.0..0.49) {
        let (small, large) = if a < b { (a, b) } else { (b, a) };
        prop_assert!(end_ratio(small, 1.0) <= end_ratio(large, 1.0) * (1.0 + 1e-12));
        prop_assert_eq!(end_ratio(small, 1.0), end_ratio(-small, 1.0));
    }

    /// Force times time is momentum, force times distance is energy.
    #[test]
    fn a_stop_spends_its_momentum_and_its_energy(
        mass in 0.1..500.0,
        speed in 0.01..30.0,
        distance in 1e-4..2.0,
    ) {
        let time = impact::stop_time(of(distance), of(speed)).unwrap();
        let force = impact::stopping_force(of(mass), of(speed), time).si();
        let momentum = impact::momentum(of(mass), of(speed)).si();
        let energy = impact::kinetic_energy(of(mass), of(speed)).si();
        prop_assert!((force * time.si() - momentum).abs() < 1e-9 * momentum);
        prop_assert!((force * distance - energy).abs() < 1e-9 * energy);
        let back = impact::stop_distance(time, of(speed)).si();
        prop_assert!((back - distance).abs() < 1e-12 * distance);
    }

    /// A spring takes exactly the energy of the hit and of the fall while it gives way.
    #[test]
    fn a_spring_takes_all_the_energy(energy in 0.01..1e4, distance in 1e-3..1.0, weight in 0.0..1e3) {
        let force = impact::spring_peak_force(of(energy), of(distance), of(weight));
        let rate = impact::spring_rate(force, of(distance)).si();
        let taken = rate * distance * distance / 2.0;
        let given = energy + weight * distance;
        prop_assert!((taken - given).abs() < 1e-9 * given);
    }
}
