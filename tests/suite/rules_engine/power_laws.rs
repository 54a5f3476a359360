//! Laws behind drive, electrics and heat, for any numbers.

use heftwise::physics::drive::{gear, motor};
use heftwise::physics::electrics::{battery, wire};
use heftwise::physics::heat::{fin, lump, radiation, winding};
use heftwise::physics::{Impossible, heat::brake};
use heftwise::quantity::Measure;
use heftwise::quantity::catalogue::{drive::*, electrics::*, motion::DRIVING_RESISTANCE};
use proptest::prelude::*;

use super::crawler_with;

pub(super) fn of<Q: Measure>(si: f64) -> Q {
    Q::from_si(si)
}

pub(super) fn near(a: f64, b: f64, within: f64) -> bool {
    (a - b).abs() <= within * a.abs().max(b.abs()).max(1e-12)
}

/// Efficiency of a motor at a current and full voltage.
fn efficiency_at(current: f64, voltage: f64, resistance: f64, no_load: f64) -> f64 {
    (voltage - current * resistance) * (current - no_load) / (voltage * current)
}

pub(super) fn a_path() -> impl Strategy<Value = winding::Path> {
    (0.2..8.0, 0.5..20.0, 1.0..60.0, 20.0..800.0).prop_map(|(inner, outer, cw, ch)| winding::Path {
        to_housing: of(inner),
        to_air: of(outer),
        winding: of(cw),
        housing: of(ch),
    })
}

/// Heating that stays under the runaway current of that path.
pub(super) fn heating(path: &winding::Path, copper: f64, rest: f64) -> winding::Heating {
    let most = 0.8 / (0.00393 * (path.to_housing + path.to_air).value);
    let copper = copper.min(most);
    winding::Heating { loss: of(copper + rest), copper: of(copper), coefficient: of(0.00393) }
}

pub(super) fn steady(path: &winding::Path, heating: &winding::Heating) -> f64 {
    let total = path.to_housing + path.to_air;
    winding::steady_rise(heating.loss, heating.copper, heating.coefficient, total).unwrap().si()
}

#[test]
fn above_the_runaway_current_nothing_is_steady() {
    let (resistance, thermal) = (0.3, 5.0);
    let edge = winding::runaway_current(of(resistance), of(0.00393), of(thermal)).si();
    let rise = |current: f64| {
        let copper = of(current * current * resistance);
        winding::steady_rise(copper, copper, of(0.00393), of(thermal))
    };
    assert!(rise(edge * 0.999).unwrap().si() > 1e4);
    assert_eq!(rise(edge * 1.001), Err(Impossible::RunsAway));
}

#[test]
fn warmed_for_one_time_constant_it_is_63_per_cent_there() {
    let rise = lump::rise_after(of(100.0), of(600.0), of(600.0)).si();
    assert!(near(rise, 100.0 * (1.0 - (-1.0_f64).exp()), 1e-12));
    assert_eq!(lump::time_to_rise(of(100.0), of(100.0), of(600.0)), Err(Impossible::NeverReached));
    assert_eq!(lump::time_to_rise(of(-1.0), of(100.0), of(600.0)), Err(Impossible::TooHotAlready));
}

proptest! {
    /// No current does better than the best, and the best is what the formula says.
    #[test]
    fn the_best_efficiency_is_the_best(
        voltage in 3.0..80.0, resistance in 0.005..2.0, share in 1e-4..0.5, at in 0.0..1.0,
    ) {
        let stall = voltage / resistance;
        let no_load = share * stall;
        let best = motor::best_efficiency(of(no_load), of(stall)).unwrap().si();
        let current = motor::best_efficiency_current(of(no_load), of(stall)).si();
        prop_assert!(near(efficiency_at(current, voltage, resistance, no_load), best, 1e-9));
        let any = no_load + at * (stall - no_load);
        prop_assert!(efficiency_at(any, voltage, resistance, no_load) <= best + 1e-12);
        prop_assert!((0.0..=1.0).contains(&best));
    }

    /// Whatever the build, no more comes out than goes in, and the losses add up.
    #[test]
    fn no_drive_gives_more_than_it_takes(
        push in 0.1..60.0, ratio in 3.0..60.0, kv in 10.0..90.0, throttle in 0.05..1.0,
        no_load in 0.0..2.0, frequency in 0.0..4e4,
    ) {
        let values = crawler_with(&[
            (DRIVING_RESISTANCE.any(), push),
            (FIRST_STAGE_RATIO.any(), ratio),
            (SPEED_CONSTANT.any(), kv),
            (THROTTLE.any(), throttle),
            (NO_LOAD_CURRENT.any(), no_load),
            (SWITCHING_FREQUENCY.any(), frequency),
        ]);
        let si = |id: heftwise::quantity::AnyId| values.si(id);
        if let (Some(motor), Some(drive)) = (si(MOTOR_EFFICIENCY.any()), si(DRIVE_EFFICIENCY.any())) {
            prop_assert!((0.0..=1.0).contains(&motor), "motor {motor}");
            prop_assert!((0.0..=motor + 1e-12).contains(&drive), "drive {drive}, motor {motor}");
            let (loss, copper) = (si(MOTOR_LOSS.any()).unwrap(), si(WINDING_LOSS.any()).unwrap());
            prop_assert!(loss >= copper * (1.0 - 1e-9), "loss {loss} under copper loss {copper}");
            // What is not copper loss is the steady current against the back EMF.
            let idle = si(BACK_EMF.any()).unwrap() * no_load;
            prop_assert!(near(loss, copper + idle, 1e-6), "{loss} {copper} {idle}");
        }
    }

    /// Ways to say one thing undo each other.
    #[test]
    fn inverses_undo_each_other(x in 0.01..100.0, gauge in -3.0..40.0) {
        prop_assert!(near(motor::speed_constant(motor::torque_constant(of(x))).si(), x, 1e-12));
        prop_assert!(near(gear::effective_diameter(gear::distance_per_turn(of(x))).si(), x, 1e-12));
        prop_assert!((wire::gauge(wire::gauge_diameter(of(gauge))).si() - gauge).abs() < 1e-9);
        prop_assert!(near(wire::round_diameter(wire::round_area(of(x))).si(), x, 1e-12));
        prop_assert!(near(battery::c_rate(battery::c_rate_current(of(x), of(7e3)), of(7e3)).si(), x, 1e-12));
        let push = gear::push(of(x), of(0.3), of(20.0), of(0.9), of(2.0));
        prop_assert!(near(gear::motor_torque(push, of(0.3), of(20.0), of(0.9), of(2.0)).si(), x, 1e-12));
    }

    /// The cut-off current brings the battery just to its cut-off.
    #[test]
    fn the_cut_off_current_reaches_the_cut_off(emf in 6.0..60.0, share in 0.5..1.0, r in 1e-3..0.5) {
        let cutoff = emf * share;
        let current = battery::cutoff_current(of(emf), of(cutoff), of(r)).unwrap().si();
        prop_assert!(near(emf - battery::sag(of(current), of(r)).si(), cutoff, 1e-9));
        prop_assert_eq!(battery::cutoff_current(of(cutoff), of(emf * 1.01), of(r)), Err(Impossible::EmptyAlready));
    }

    /// The current drawn for a power gives that power, on the side where the voltage holds up.
    #[test]
    fn a_steady_power_draws_its_current(emf in 3.0..60.0, r in 0.0..0.5, share in 0.0..0.99) {
        let power = if r > 0.0 { share * emf * emf / (4.0 * r) } else { share * 1e3 };
        let current = battery::current_for_power(of(emf), of(r), of(power)).unwrap().si();
        prop_assert!(near(current * (emf - current * r), power, 1e-6));
        prop_assert!(emf - current * r >= emf / 2.0 - 1e-9);
    }

    /// Two stretches in a row are one long stretch, and in the end it is at rest.
    #[test]
    fn warming_adds_up_and_settles(
        path in a_path(), copper in 0.1..40.0, rest in 0.0..10.0, a in 0.1..2e3, b in 0.1..2e3,
    ) {
        let heat = heating(&path, copper, rest);
        let whole = winding::rises_after(&path, &heat, winding::cold(), of(a + b));
        let half = winding::rises_after(&path, &heat, winding::cold(), of(a));
        let parts = winding::rises_after(&path, &heat, half, of(b));
        prop_assert!(near(whole.winding.si(), parts.winding.si(), 1e-7));
        prop_assert!(near(whole.housing.si(), parts.housing.si(), 1e-7));
        prop_assert!(half.winding.si() <= whole.winding.si() * (1.0 + 1e-9));
        prop_assert!(half.housing <= half.winding);
        let end = winding::rises_after(&path, &heat, winding::cold(), of(1e7));
        prop_assert!(near(end.winding.si(), steady(&path, &heat), 1e-6));
    }

    /// What goes in is stored or shed.
    #[test]
    fn heat_is_not_lost(path in a_path(), copper in 0.1..40.0, rest in 0.0..10.0, time in 5.0..2e3) {
        let heat = heating(&path, copper, rest);
        let at = |t: f64| winding::rises_after(&path, &heat, winding::cold(), of(t));
        const STEPS: u32 = 4000;
        let step = time / f64::from(STEPS);
        let net: f64 = (0..STEPS)
            .map(|i| {
                let now = at((f64::from(i) + 0.5) * step);
                let made = heat.loss.value + 0.00393 * heat.copper.value * now.winding.si();
                (made - now.housing.si() / path.to_air.value) * step
            })
            .sum();
        let end = at(time);
        let stored = path.winding.value * end.winding.si() + path.housing.value * end.housing.si();
        prop_assert!(near(stored, net, 1e-3), "stored {stored}, net {net}");
    }

    /// The time to a limit is when the limit is reached; past the rest it never is.
    #[test]
    fn the_time_to_a_limit_reaches_it(path in a_path(), copper in 0.1..40.0, share in 0.01..0.99) {
        let heat = heating(&path, copper, 1.0);
        let rest = steady(&path, &heat);
        let time = winding::time_to_rise(&path, &heat, of(share * rest)).unwrap();
        let there = winding::rises_after(&path, &heat, winding::cold(), time).winding.si();
        prop_assert!(near(there, share * rest, 1e-6), "{there} of {}", share * rest);
        let never = winding::time_to_rise(&path, &heat, of(rest * 1.001));
        prop_assert_eq!(never, Err(Impossible::NeverReached));
    }

    /// Soaking warms the housing at most to where the winding was, and never cools it first.
    #[test]
    fn the_housing_soaks_after_a_stop(path in a_path(), copper in 0.1..40.0, time in 1.0..2e3) {
        let heat = heating(&path, copper, 1.0);
        let stopped = winding::rises_after(&path, &heat, winding::cold(), of(time));
        let peak = winding::soak_peak(&path, stopped);
        prop_assert!(peak >= stopped.housing && peak <= stopped.winding, "{peak:?} {stopped:?}");
        let idle = winding::Heating { loss: of(0.0), copper: of(0.0), coefficient: of(0.0) };
        for later in [1.0, 5.0, 20.0, 60.0, 200.0, 600.0] {
            let housing = winding::rises_after(&path, &idle, stopped, of(later)).housing.si();
            prop_assert!(housing <= peak.si() * (1.0 + 1e-6), "{housing} over {peak:?} at {later} s");
        }
    }

    /// The current of work and rest lies between the two, and over their mean.
    #[test]
    fn heat_goes_by_squares(a in 0.0..50.0, b in 0.0..50.0, ta in 1.0..100.0, tb in 1.0..100.0) {
        let rms = lump::heating_current(of(a), of(ta), of(b), of(tb)).si();
        let mean = lump::mean_current(of(a), of(ta), of(b), of(tb)).si();
        prop_assert!(rms >= mean * (1.0 - 1e-12) && rms <= a.max(b) * (1.0 + 1e-12));
    }

    /// Radiation's coefficient times the rise is the radiation; fins never beat their root.
    #[test]
    fn radiation_and_fins(t in 250.0..500.0, t0 in 250.0..500.0, e in 0.0..1.0, x in 0.0..20.0) {
        let by_coefficient = radiation::coefficient(of(e), of(t), of(t0)).si() * (t - t0);
        let direct = radiation::radiated(of(e), of(1.0), of(t), of(t0)).si();
        prop_assert!((by_coefficient - direct).abs() <= 1e-6);
        let (efficiency, tip) = (fin::efficiency(of(x)).si(), fin::tip_share(of(x)).si());
        prop_assert!(tip <= efficiency + 1e-12 && efficiency <= 1.0);
    }

    /// A clutch turns to heat exactly what the rotors lose.
    #[test]
    fn a_clutch_keeps_the_energy(a in 0.01..5.0, b in 0.01..5.0, wa in 0.0..600.0, wb in 0.0..600.0) {
        let heat = brake::clutch_heat(of(a), of(b), of(wa), of(wb)).si();
        let together = (a * wa + b * wb) / (a + b);
        let turning = |j: f64, w: f64| brake::turning_energy(of(j), of(w)).si();
        let lost = turning(a, wa) + turning(b, wb) - turning(a + b, together);
        prop_assert!((heat - lost).abs() <= 1e-9 * (turning(a, wa) + turning(b, wb) + 1.0));
    }
}
