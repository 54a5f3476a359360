//! Laws behind motion, turning and balance, for any numbers.

use heftwise::physics::motion::{self, Drive, Limit};
use heftwise::physics::{Impossible, balance, turning};
use heftwise::quantity::{Force, Length, Measure, Speed, Time};
use proptest::prelude::*;

fn of<Q: Measure>(si: f64) -> Q {
    Q::from_si(si)
}

fn near(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs()).max(1e-12)
}

/// A machine of this mass pushed by a steady force and a power.
fn drive(force: Option<f64>, power: Option<f64>, resistance: f64, mass: f64) -> Drive {
    Drive {
        power: power.map(of),
        torque_force: force.map(of),
        thrust_limit: None,
        resistance: of(resistance),
        mass: of(mass),
        equivalent_mass: of(mass),
    }
}

proptest! {
    /// A steady net force gives v²/2a and v/a.
    #[test]
    fn a_steady_force_runs_as_the_book_says(force in 1.0..1e3, mass in 0.5..500.0, speed in 0.1..20.0) {
        let run = motion::run_up(&drive(Some(force), None, 0.0, mass), of(speed), of(0.0)).unwrap();
        let acceleration = force / mass;
        prop_assert!(near(run.time.si(), speed / acceleration, 1e-8));
        prop_assert!(near(run.distance.si(), speed * speed / (2.0 * acceleration), 1e-8));
    }

    /// A power alone spends just the kinetic energy; its distance is that of the closed form.
    #[test]
    fn a_power_alone_keeps_energy(power in 1.0..1e4, mass in 0.5..500.0, speed in 0.1..20.0) {
        let run = motion::run_up(&drive(None, Some(power), 0.0, mass), of(speed), of(0.0)).unwrap();
        prop_assert!(near(run.time.si() * power, mass * speed * speed / 2.0, 1e-8));
        let closed: Length = motion::constant_power_distance(of(power), of(mass), run.time);
        prop_assert!(near(run.distance.si(), closed.si(), 1e-8));
    }

    /// Work of the thrust is what went into speed and into resistance.
    #[test]
    fn a_run_keeps_energy(force in 1.0..1e3, share in 0.0..0.9, mass in 0.5..500.0, speed in 0.1..20.0) {
        let resistance = share * force;
        let run =
            motion::run_up(&drive(Some(force), None, resistance, mass), of(speed), of(0.0)).unwrap();
        let into_speed = mass * speed * speed / 2.0;
        let work = force * run.distance.si();
        prop_assert!(near(work, into_speed + resistance * run.distance.si(), 1e-8));
    }

    /// More power, less mass or less resistance is never slower; past the top speed there is no run.
    #[test]
    fn more_helps(
        power in 10.0..1e4, force in 10.0..1e3, mass in 0.5..500.0,
        resistance in 0.1..5.0, drag_area in 0.01..2.0, share in 0.05..0.98,
    ) {
        let density = of(1.225);
        let by_power: Speed = motion::power_top_speed(of(power), of(resistance), density, of(drag_area)).unwrap();
        let by_drag = motion::drag_top_speed(of(force), of(resistance), density, of(drag_area));
        let top = by_power.si().min(by_drag.si());
        let run = |power: f64, mass: f64, speed: f64| {
            let drag: Force = motion::air_drag(density, of(drag_area), of(speed));
            motion::run_up(&drive(Some(force), Some(power), resistance, mass), of(speed), drag)
        };
        let base = run(power, mass, share * top).unwrap();
        prop_assert!(run(power * 1.1, mass, share * top).unwrap().time <= base.time * (1.0 + 1e-7));
        prop_assert!(run(power, mass * 1.1, share * top).unwrap().time > base.time);
        prop_assert_eq!(run(power, mass, top * 1.001), Err(Impossible::NeverThatFast));
        let used = motion::power_at_speed(
            motion::sum(of(resistance), motion::air_drag(density, of(drag_area), by_power)), by_power);
        prop_assert!(near(used.si(), power, 1e-6), "{} W of {power}", used.si());
    }

    /// Rolling out is running up backwards: the energy goes into ground and air.
    #[test]
    fn coasting_spends_the_energy(mass in 0.5..500.0, speed in 0.1..20.0, resistance in 0.5..500.0, drag in 0.0..500.0) {
        let distance: Length = motion::coast_down_distance(of(mass), of(speed), of(resistance), of(drag)).unwrap();
        let time: Time = motion::coast_down_time(of(mass), of(speed), of(resistance), of(drag)).unwrap();
        let free = mass * speed * speed / 2.0 / resistance;
        prop_assert!(distance.si() <= free * (1.0 + 1e-12));
        prop_assert!(time.si() <= mass * speed / resistance * (1.0 + 1e-12));
        // Never shorter than if the drag stayed as it began.
        prop_assert!(distance.si() >= free * resistance / (resistance + drag) * (1.0 - 1e-12));
        let nearly: Length = motion::coast_down_distance(of(mass), of(speed), of(resistance), of(resistance * 1e-12)).unwrap();
        prop_assert!(near(nearly.si(), free, 1e-9));
    }

    /// The limit that is named is the one that counts.
    #[test]
    fn the_named_limit_is_the_smallest(power in 1.0..1e3, torque in 1.0..1e3, ground in 1.0..1e3, speed in 0.1..10.0) {
        let drive = Drive { thrust_limit: Some(of(ground)), ..drive(Some(torque), Some(power), 0.0, 5.0) };
        let (acceleration, limit) = drive.acceleration(of(speed), of(0.0)).unwrap();
        let smallest = (power / speed).min(torque).min(ground);
        prop_assert!(near(acceleration.si() * 5.0, smallest, 1e-12));
        let named = match limit {
            Limit::Power => power / speed,
            Limit::Torque => torque,
            Limit::Ground => ground,
        };
        prop_assert!(near(named, smallest, 1e-12));
    }

    /// The two ends carry the weight between them, about the balance point, on any slope.
    #[test]
    fn the_ends_carry_the_load(weight in 1.0..5e3, support in 0.1..3.0, share in -0.5..0.5, middle in -1.0..1.0, height in 0.0..1.0, slope in -0.6..0.6) {
        let offset = share * support + middle;
        let (rear_arm, front_arm) = (balance::rear_arm(of(support), of(offset), of(middle)), balance::front_arm(of(support), of(offset), of(middle)));
        let front = balance::end_load(of(weight), rear_arm, of(height), of(slope), of(support)).si();
        let rear = balance::end_load(of(weight), front_arm, of(height), of(-slope), of(support)).si();
        prop_assert!(near(front + rear, weight * slope.cos(), 1e-9));
        // The front carries nothing just where standing still is as much as it takes to lift it.
        let lift = balance::lift_acceleration(of(9.8), rear_arm, of(height + 0.01), of(slope)).si();
        let front = balance::end_load(of(weight), rear_arm, of(height + 0.01), of(slope), of(support)).si();
        prop_assert_eq!(lift < -1e-9, front < -1e-9 * weight * lift.abs().max(1.0));
    }

    /// Demand and limit agree with the acceleration that lifts the front.
    #[test]
    fn the_margin_is_one_where_the_front_lifts(arm in 0.05..2.0, height in 0.02..1.0, slope in -0.5..0.5) {
        let lift = balance::lift_acceleration(of(9.8), of(arm), of(height), of(slope));
        prop_assume!(lift.si() > 0.01);
        let demand = balance::climb_demand(lift, of(9.8), of(slope));
        let margin = balance::margin(balance::lift_ratio(of(arm), of(height)), demand).unwrap();
        prop_assert!(near(margin.si(), 1.0, 1e-9));
    }

    /// The tip angle is the stability factor as an angle; scales give the balance back.
    #[test]
    fn scales_and_angles_undo(gauge in 0.1..2.0, height in 0.02..1.0, front in 0.1..300.0, rear in 0.1..300.0, middle in -1.0..1.0) {
        let arm = balance::side_arm(of(gauge), of(0.0));
        let angle = balance::tip_angle(arm, of(height)).unwrap();
        prop_assert!(near(angle.si().tan(), balance::stability_factor(arm, of(height)).si(), 1e-9));
        let offset = balance::offset_from_scales(of(front), of(rear), of(gauge), of(middle)).unwrap();
        let load = balance::end_load(of(front + rear), balance::rear_arm(of(gauge), offset, of(middle)), of(0.0), of(0.0), of(gauge));
        prop_assert!(near(load.si(), front, 1e-9));
    }

    /// Swinging: torque times angle is energy, and four times the inertia takes twice the time.
    #[test]
    fn a_swing_keeps_energy(torque in 0.01..100.0, inertia in 1e-3..100.0, angle in 0.1..6.0) {
        let acceleration = turning::angular_acceleration(of(torque), of(inertia));
        let energy = turning::spin_energy(of(inertia), turning::rate_after(of(angle), acceleration, None));
        prop_assert!(near(energy.si(), torque * angle, 1e-9));
        let slow = turning::angular_acceleration(of(torque), of(4.0 * inertia));
        let (time, slow) = (turning::swing_time(of(angle), acceleration, None), turning::swing_time(of(angle), slow, None));
        prop_assert!(near(slow.si(), 2.0 * time.si(), 1e-12));
        let both = turning::swing_and_stop_time(of(angle), acceleration, None);
        prop_assert!(near(turning::moment_for_swing(of(inertia), of(angle), both).si(), torque, 1e-9));
        prop_assert!(near(both.si(), 2.0 * turning::swing_time(of(angle / 2.0), acceleration, None).si(), 1e-9));
    }

    /// A curve is as wide by its track speeds as by its rate of turning.
    #[test]
    fn tracks_and_rate_agree(gauge in 0.1..2.0, left in -5.0..5.0f64, right in -5.0..5.0f64) {
        prop_assume!((left - right).abs() > 1e-3 && (left + right).abs() > 1e-3);
        let radius = turning::turn_radius_from_tracks(of(gauge), of(left), of(right)).unwrap();
        let rate = turning::turning_rate(of((left + right).abs() / 2.0), radius);
        prop_assert!(near(rate.si(), (left - right).abs() / gauge, 1e-9));
    }

    /// A point mass timed as a pendulum has no inertia of its own.
    #[test]
    fn a_point_on_a_string_has_no_inertia_of_its_own(mass in 0.1..50.0, distance in 0.05..2.0f64) {
        let period = std::f64::consts::TAU * (distance / 9.81_f64).sqrt();
        let own = turning::pendulum_inertia(of(mass), of(9.81), of(distance), of(period * (1.0 + 1e-12))).unwrap();
        prop_assert!(own.si() < 1e-9 * mass * distance * distance);
    }
}

#[test]
fn what_has_no_answer_says_so() {
    let idle = drive(None, None, 1.0, 5.0);
    assert_eq!(motion::run_up(&idle, of(1.0), of(0.0)), Err(Impossible::NoLimitKnown));
    assert_eq!(motion::force_at_speed(of(5.0), of(0.0)), Err(Impossible::AtRest));
    let (power, none) = (of(10.0), of(0.0));
    let endless = motion::power_top_speed(power, of(0.0), of(1.2), none);
    assert_eq!(endless, Err(Impossible::NothingHoldsBack));
    let downhill: Speed = motion::power_top_speed(of(0.0), of(-0.1), of(1.2), of(1.0)).unwrap();
    assert!(near(downhill.si(), (0.2_f64 / 1.2).sqrt(), 1e-12));
    assert_eq!(motion::locked_deceleration(of(0.1), of(9.8), of(-0.2)), Err(Impossible::SlidesOn));
    let onward = motion::coast_down_distance(of(1.0), of(1.0), of(-1.0), of(0.0));
    assert_eq!(onward, Err(Impossible::SlidesOn));
    let held = turning::swinging_moment(of(1.0), of(1.0));
    assert_eq!(held, Err(Impossible::HeldByGround));
    assert_eq!(turning::turn_radius(of(1.0), of(0.0)), Err(Impossible::StraightOn));
    assert_eq!(turning::turn_radius(of(1.0), of(1.6)), Err(Impossible::NoTurnThere));
    assert_eq!(balance::tip_angle(of(-0.01), of(1.0)), Err(Impossible::OffItsSupports));
    let scales = balance::offset_from_scales(of(0.0), of(0.0), of(1.0), of(0.0));
    assert_eq!(scales, Err(Impossible::ScalesSayNothing));
    let quick = turning::pendulum_inertia(of(1.0), of(9.8), of(1.0), of(0.1));
    assert_eq!(quick, Err(Impossible::TooFastASwing));
    let high = motion::standard_temperature(of(12_000.0));
    assert_eq!(high, Err(Impossible::OutsideTroposphere));
    let strong = motion::slope_by_thrust(of(100.0), of(0.0), of(0.0), of(50.0));
    assert_eq!(strong, Err(Impossible::ClimbsAnything));
}
