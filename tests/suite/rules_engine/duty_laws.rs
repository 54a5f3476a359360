//! Laws of work and rest in turn, of a stall, and of a part that cools down.

use heftwise::physics::Impossible;
use heftwise::physics::heat::{enclosure, lump, winding};
use heftwise::quantity::{HeatFlux, Measure};
use proptest::prelude::*;

use super::power_laws::{a_path, heating, near, of, steady};

const IDLE: (f64, f64) = (0.0, 0.0);

fn heats((copper, rest): (f64, f64)) -> winding::Heating {
    winding::Heating { loss: of(copper + rest), copper: of(copper), coefficient: of(0.00393) }
}

/// `dθ/dt = rate(θ)` from nothing, by the classical Runge-Kutta method.
fn integrate(rate: impl Fn(f64) -> f64, time: f64) -> f64 {
    let steps = 2000;
    let h = time / f64::from(steps);
    (0..steps).fold(0.0, |y, _| {
        let a = rate(y);
        let b = rate(y + h / 2.0 * a);
        let c = rate(y + h / 2.0 * b);
        let d = rate(y + h * c);
        y + h / 6.0 * (a + 2.0 * b + 2.0 * c + d)
    })
}

#[test]
fn a_stall_that_may_not_warm_at_all_has_no_time() {
    let time = |allowed: f64| {
        winding::uncooled_time(of(20.0), of(allowed), of(500.0), of(0.00393)).map(|time| time.si())
    };
    assert_eq!(time(-1.0), Err(Impossible::TooHotAlready));
    assert_eq!(time(0.0), Ok(0.0));
}

/// The numbers of a motor of 18 g of copper: one body tells four fifths of what the winding does.
#[test]
fn one_body_hides_the_peak_of_short_work() {
    let path = winding::Path {
        to_housing: of(4.0),
        to_air: of(8.0),
        winding: of(0.018 * 387.0),
        housing: of(0.180 * 452.0),
    };
    let heat = heats((8.0, 1.0));
    let (work, rest) = (of(60.0), of(240.0));
    let peak = winding::duty_peak(&path, &heat, work, rest).unwrap();
    let at_rest = steady(&path, &heat);
    let constant = of(8.0 * (path.winding.value + path.housing.value));
    let one = lump::duty_peak(of(at_rest), work, rest, constant).si();
    assert!(peak.winding.si() > 1.25 * one, "{peak:?} {one}");
}

proptest! {
    /// The closed form is where the differential equation gets to, and without growth it is the
    /// energy over the power.
    #[test]
    fn a_stall_is_the_integral_of_its_heat(
        capacity in 1.0..200.0, loss in 10.0..3e3, allowed in 0.0..200.0, alpha in 0.0..0.006,
    ) {
        let time = winding::uncooled_time(of(capacity), of(allowed), of(loss), of(alpha)).unwrap().si();
        let reached = integrate(|rise| loss * (1.0 + alpha * rise) / capacity, time);
        prop_assert!((reached - allowed).abs() <= 1e-7 * allowed.max(1.0), "{reached} {allowed}");
        let cold = capacity * allowed / loss;
        prop_assert!(time <= cold * (1.0 + 1e-12), "warm copper never gives more time");
        let small = allowed * 1e-6;
        let short = winding::uncooled_time(of(capacity), of(small), of(loss), of(alpha)).unwrap().si();
        prop_assert!((short - capacity * small / loss).abs() <= 1e-5 * short);
    }

    /// A round of rest and work brings the peak back to itself, no moment of it is hotter, and
    /// rounds from cold come ever nearer.
    #[test]
    fn rounds_of_work_and_rest_end_at_the_peak(
        path in a_path(), copper in 0.1..40.0, work in 5.0..600.0, rest in 0.0..600.0,
    ) {
        let heat = heating(&path, copper, 0.5);
        let peak = winding::duty_peak(&path, &heat, of(work), of(rest)).unwrap();
        let rested = |hot| winding::rises_after(&path, &heats(IDLE), hot, of(rest));
        let worked = |start, time: f64| winding::rises_after(&path, &heat, start, of(time));
        let again = worked(rested(peak), work);
        prop_assert!(near(again.winding.si(), peak.winding.si(), 1e-9), "{again:?} {peak:?}");
        prop_assert!(near(again.housing.si(), peak.housing.si(), 1e-9), "{again:?} {peak:?}");
        for part in 0..=20 {
            let then = worked(rested(peak), work * f64::from(part) / 20.0).winding.si();
            prop_assert!(then <= peak.winding.si() * (1.0 + 1e-9), "{then} {peak:?}");
        }
        prop_assert!(peak.winding.si() <= steady(&path, &heat) * (1.0 + 1e-9));
        let mut hot = worked(winding::cold(), work);
        for _ in 0..50 {
            let next = worked(rested(hot), work);
            prop_assert!(next.winding.si() >= hot.winding.si() * (1.0 - 1e-9));
            prop_assert!(next.winding.si() <= peak.winding.si() * (1.0 + 1e-9));
            hot = next;
        }
    }

    /// The rest that is needed puts the peak just at the limit; none is needed under it, and none
    /// is enough when one stretch from cold passes it.
    #[test]
    fn the_rest_needed_is_just_enough(
        path in a_path(), copper in 0.1..40.0, work in 10.0..1e3, share in 0.05..1.5,
    ) {
        let heat = heating(&path, copper, 0.5);
        let allowed = share * steady(&path, &heat);
        match winding::rest_needed(&path, &heat, of(allowed), of(work)) {
            Ok(rest) if rest.si() == 0.0 => prop_assert!(share >= 1.0),
            Ok(rest) => {
                let peak = winding::duty_peak(&path, &heat, of(work), rest).unwrap().winding.si();
                prop_assert!(near(peak, allowed, 1e-6), "{peak} {allowed}");
            }
            Err(why) => {
                prop_assert_eq!(why, Impossible::NoRestWillDo);
                let once = winding::rises_after(&path, &heat, winding::cold(), of(work));
                prop_assert!(once.winding.si() >= allowed * (1.0 - 1e-9));
            }
        }
    }

    /// A current past runaway is held down by rest, or said to grow without end.
    #[test]
    fn rest_holds_down_what_runs_away(path in a_path(), more in 1.05..3.0, work in 1.0..60.0) {
        let copper = more / (0.00393 * (path.to_housing + path.to_air).value);
        let heat = heats((copper, 0.0));
        prop_assert_eq!(
            winding::duty_peak(&path, &heat, of(work), of(0.0)).map(|rises| rises.winding.si()),
            Err(Impossible::RunsAway)
        );
        let rested = winding::duty_peak(&path, &heat, of(work), of(1e6)).unwrap().winding.si();
        let once = winding::rises_after(&path, &heat, winding::cold(), of(work)).winding.si();
        prop_assert!(near(rested, once, 1e-6), "{rested} {once}");
    }

    /// The peak in a box lies between its mean over the duty and working without rest, and comes to
    /// the mean when the turns are short.
    #[test]
    fn a_box_ripples_about_its_mean(
        working in 5.0..60.0, share in 0.0..1.0, resistance in 1.0..10.0, work in 60.0..3600.0,
        rest in 60.0..3600.0, constant in 300.0..5e3,
    ) {
        let resting = working * share;
        let mean = enclosure::mean_heat(of(working), of(resting), of(work), of(rest)).si() * resistance;
        let peak = |scale: f64| enclosure::duty_peak(
            [of(working), of(resting)], of(resistance), [of(work * scale), of(rest * scale)], of(constant),
        ).si();
        prop_assert!(peak(1.0) >= mean * (1.0 - 1e-9) && peak(1.0) <= working * resistance * (1.0 + 1e-9));
        prop_assert!(near(peak(1e-5), mean, 1e-3));
    }

    /// The sun brings no more inside than the skin takes in, and a box with nothing in it gets no
    /// warmer than its skin would alone.
    #[test]
    fn the_sun_warms_a_box_no_more_than_its_skin(
        sun in 0.0..1100.0, taken in 0.0..1.0, outside in 5.0..40.0, wall in 2.0..25.0,
        sides in [0.03..0.6, 0.03..0.6, 0.02..0.6],
    ) {
        let [l, w, h]: [f64; 3] = sides;
        let sun_on: HeatFlux = of(sun);
        let step = enclosure::sun_step(sun_on, of(taken), of(outside));
        let lit = enclosure::largest_shadow(of(l), of(w), of(h));
        prop_assert!(lit.si() >= (l * w).max(l * h).max(w * h) && lit.si() <= l * w + l * h + w * h);
        let heat = enclosure::sun_heat(step, lit, of(wall), of(outside)).si();
        prop_assert!(heat <= sun * taken * lit.si() * (1.0 + 1e-12));
        let skin = enclosure::body_area(of(l), of(w), of(h)) + enclosure::lid_area(of(l), of(w));
        let rise = heat / (wall * skin.si());
        prop_assert!(rise <= step.si() * 0.5 + 1e-9, "the lit side is half of the skin at most");
    }
}
