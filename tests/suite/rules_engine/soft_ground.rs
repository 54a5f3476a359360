//! Laws of soft ground for any numbers, and what is said when it goes wrong.

use heftwise::physics::Impossible;
use heftwise::physics::traction::sinkage::Soil;
use heftwise::physics::traction::{band, climb, resistance, sinkage, thrust};
use heftwise::quantity::catalogue::{
    ground::*, machine::*, motion::*, running_gear::*, traction::*,
};
use heftwise::quantity::{Angle, AnyId, Force, Length, Measure, Ratio};
use heftwise::rules::Values;
use proptest::prelude::*;

use super::{ON_SOFT_GROUND, cautions, crawler_with, values, words};

fn of<Q: Measure>(si: f64) -> Q {
    Q::from_si(si)
}

fn close(got: f64, wanted: f64, within: f64) -> bool {
    (got - wanted).abs() <= within * wanted.abs().max(1e-12)
}

/// Any ground of the tables, and somewhat beyond.
fn grounds() -> impl Strategy<Value = Soil> {
    (0.1..1.7, 0.0..1e5, 4e4..6e6).prop_map(|(exponent, cohesive, frictional)| Soil {
        exponent,
        cohesive,
        frictional,
    })
}

fn sinkage_under(soil: Soil, side: f64, pressure: f64) -> f64 {
    sinkage::sinkage(soil, of(side), of(pressure)).si()
}

proptest! {
    #[test]
    fn sinkage_and_pressure_undo_each_other(soil in grounds(), side in 0.01..1.0, depth in 1e-3..0.5) {
        let pressure = sinkage::pressure_at(soil, of(side), of(depth)).si();
        prop_assert!(close(sinkage_under(soil, side, pressure), depth, 1e-9));
    }

    #[test]
    fn more_pressure_or_a_wider_patch_sinks_deeper(
        soil in grounds(), side in 0.01..1.0, pressure in 100.0..1e5, more in 1.01..3.0
    ) {
        let depth = sinkage_under(soil, side, pressure);
        prop_assert!(sinkage_under(soil, side, pressure * more) > depth);
        prop_assert!(sinkage_under(soil, side * more, pressure) >= depth);
    }

    /// The force to press a rut is the work of pressing it, summed slice by slice.
    #[test]
    fn a_rut_costs_the_work_of_pressing_it(
        soil in grounds(), side in 0.01..1.0, width in 0.01..1.0, depth in 1e-3..0.5
    ) {
        let slices = 20_000;
        let step = depth / f64::from(slices);
        let work: f64 = (0..slices)
            .map(|slice| sinkage::pressure_at(soil, of(side), of((f64::from(slice) + 0.5) * step)).si())
            .sum();
        let force = resistance::compaction(soil, of(side), of(width), of(depth)).si();
        prop_assert!(close(force, work * step * width, 2e-3));
    }

    #[test]
    fn slip_and_thrust_undo_each_other(
        slip in 1e-3..1.0_f64, length in 0.1..5.0, modulus in 5e-3..0.06, limit in 1.0..1e5
    ) {
        let reached: Ratio = thrust::reached(of(slip), of(length), of(modulus));
        let push = thrust::thrust(of(limit), reached);
        let found = thrust::slip_for(push, of(limit), of(length), of(modulus)).unwrap().si();
        let again = thrust::reached(of(found), of(length), of(modulus)).si();
        prop_assert!(close(again, reached.si(), 1e-9), "{found} for {slip}");
    }

    #[test]
    fn thrust_grows_with_slip_from_nothing_to_the_limit(
        slip in 1e-9..0.5_f64, more in 1.01..2.0, length in 0.1..5.0, modulus in 5e-3..0.06
    ) {
        let reached = |slip: f64, modulus: f64| {
            thrust::reached(of(slip), of(length), of(modulus)).si()
        };
        prop_assert_eq!(reached(0.0, modulus), 0.0);
        prop_assert!(reached(slip, modulus) < reached(slip * more, modulus));
        prop_assert!(reached(slip, modulus) > 0.0 && reached(1.0, modulus) < 1.0);
        prop_assert!(reached(1.0, 1e-6 * length) > 0.99999);
    }

    /// On the slope found, thrust, ruts and weight are in balance.
    #[test]
    fn the_steepest_climb_balances(
        cohesion in 0.0..50.0_f64, friction in 0.1..0.7_f64, reached in 0.1..1.0_f64,
        share in 0.2..1.0_f64, ruts in 0.0..40.0_f64
    ) {
        let weight = 100.0;
        let slope = climb::on_soft_ground(
            of(cohesion), of(friction), of(reached), of(share), of(weight), of(ruts)
        );
        let slope = slope.unwrap().si();
        let pushed = reached * (cohesion + share * weight * slope.cos() * friction.tan());
        let left: Force = thrust::drawbar_pull(of(pushed), of(ruts), of(weight * slope.sin()));
        prop_assert!(left.si().abs() < 1e-9 * weight);
    }

    #[test]
    fn grip_climbs_until_slope_and_rolling_use_it_up(grip in 0.0..1.2_f64, share in 0.1..1.0_f64, rolling in 0.0..0.5_f64) {
        let slope = climb::by_grip(of(grip), of(share), of(rolling)).si();
        prop_assert!((grip * share - slope.tan() - rolling).abs() < 1e-12);
    }

    #[test]
    fn a_body_on_the_slope_that_just_holds_it_does_not_gain_speed(grip in 0.01..1.2_f64) {
        let slope: Angle = climb::holds(of(grip));
        let gain = climb::sliding_down(of(grip), slope, of(9.81)).si();
        prop_assert!(gain.abs() < 1e-12);
        prop_assert!(close(climb::grip_acceleration(of(grip), of(1.0), of(0.0), of(0.0), of(9.81)).si(), grip * 9.81, 1e-12));
    }

    /// The band holds the result, opens with the doubt and is nothing without one.
    #[test]
    fn the_band_holds_the_result(soil in grounds(), doubt in 0.0..0.9_f64, pressure in 100.0..1e5) {
        let depth: Length = sinkage::sinkage(soil, of(0.1), of(pressure));
        let end = |ground| band::sinkage(depth, soil.exponent, of(doubt), ground).si();
        prop_assert!(end(band::Ground::Stronger) <= depth.si() && depth.si() <= end(band::Ground::Weaker));
        let weaker = Soil {
            cohesive: soil.cohesive * (1.0 - doubt),
            frictional: soil.frictional * (1.0 - doubt),
            ..soil
        };
        prop_assert!(close(end(band::Ground::Weaker), sinkage_under(weaker, 0.1, pressure), 1e-9));
        let certain = band::sinkage(depth, soil.exponent, of(0.0), band::Ground::Weaker);
        prop_assert_eq!(certain, depth);
    }

    #[test]
    fn the_wheel_band_is_that_of_weaker_ground(soil in grounds(), doubt in 0.0..0.9_f64, load in 1.0..1e4) {
        let weaker = Soil {
            cohesive: soil.cohesive * (1.0 - doubt),
            frictional: soil.frictional * (1.0 - doubt),
            ..soil
        };
        let both = |soil: Soil| {
            let depth = sinkage::wheel_sinkage(soil, of(load), of(0.1), of(0.3));
            (depth, resistance::compaction(soil, of(0.1), of(0.1), depth))
        };
        let ((depth, force), (deeper, harder)) = (both(soil), both(weaker));
        let weak = band::Ground::Weaker;
        prop_assert!(close(band::wheel_sinkage(depth, soil.exponent, of(doubt), weak).si(), deeper.si(), 1e-9));
        prop_assert!(close(band::wheel_compaction(force, soil.exponent, of(doubt), weak).si(), harder.si(), 1e-9));
    }
}

/// The true circle of the rover wheel of Ishigami and others, summed slice by slice, carries the
/// load at 18.9 mm; the closed form takes the arc as a parabola and is some 2 % off.
#[test]
fn the_closed_form_of_a_wheel_is_near_its_true_arc() {
    let soil = Soil { exponent: 1.0, cohesive: 1370.0, frictional: 814e3 };
    let (radius, width, load) = (0.09, 0.11, 64.68);
    let closed = sinkage::wheel_sinkage(soil, of(load), of(width), of(2.0 * radius)).si();
    let carried = |depth: f64| {
        let entry = (1.0 - depth / radius).acos();
        let slices = 10_000;
        let step = entry / f64::from(slices);
        let slice = |place: i32| {
            let angle = (f64::from(place) + 0.5) * step;
            let deep = radius * (angle.cos() - entry.cos());
            sinkage::pressure_at(soil, of(width), of(deep)).si() * angle.cos()
        };
        width * radius * step * (0..slices).map(slice).sum::<f64>()
    };
    assert!(close(carried(0.0189), load, 5e-3), "{}", carried(0.0189));
    assert!(close(closed, 0.0189, 0.03), "{closed}");
}

/// Sinkage, snow depth and density as measured: CRREL TR-01-16, Table 11 (tyres), read at
/// coldregionsresearch.tpub.com; the row printed with a rut of 0.90 m in 0.13 m of snow is left out.
#[test]
fn measured_ruts_in_snow_lie_within_the_band() {
    const MEASURED: &[(f64, f64, f64)] = &[
        (0.13, 160.0, 0.10),
        (0.16, 160.0, 0.12),
        (0.19, 170.0, 0.15),
        (0.17, 160.0, 0.14),
        (0.20, 220.0, 0.16),
        (0.22, 220.0, 0.17),
        (0.18, 220.0, 0.13),
        (0.14, 110.0, 0.10),
    ];
    for &(depth, density, rut) in MEASURED {
        let values = values(&[
            (SNOW_DEPTH.any(), depth),
            (SNOW_DENSITY.any(), density),
            (SNOW_FINAL_DENSITY.any(), 500.0),
        ]);
        let end = |id| values.si(id).unwrap();
        // Ruts are printed to the nearest centimetre.
        assert!(end(SNOW_RUT_LOW) <= rut + 0.005, "{rut} in {depth} m of {density}");
        assert!(rut - 0.005 <= end(SNOW_RUT_HIGH), "{rut} in {depth} m of {density}");
    }
}

fn on_soft_ground(changes: &[(AnyId, f64)]) -> Values {
    crawler_with(&[ON_SOFT_GROUND, changes].concat())
}

#[test]
fn light_machines_are_told_that_the_rules_were_made_for_larger_ones() {
    let light = on_soft_ground(&[]);
    for id in [SINKAGE.any(), THRUST.any(), DRAWBAR_PULL.any(), SNOW_RUT.any()] {
        assert!(cautions(&light, id).contains("fitted on larger plates"), "{id}");
    }
    assert!(cautions(&light, THRUST).contains("More than half of this comes from cohesion"));
    let heavy = on_soft_ground(&[
        (MASS.any(), 9000.0),
        (TRACK_WIDTH.any(), 0.4),
        (CONTACT_LENGTH.any(), 2.5),
    ]);
    assert!(!cautions(&heavy, THRUST).contains("fitted on larger plates"));
    assert!(!cautions(&heavy, THRUST).contains("cohesion"));
}

#[test]
fn without_cohesion_only_friction_is_left() {
    let no_cohesion = on_soft_ground(&[(COHESION.any(), 0.0)]);
    let what_if = on_soft_ground(&[]).si(THRUST_NO_COHESION).unwrap();
    assert!(close(what_if, no_cohesion.si(THRUST).unwrap(), 1e-12));
}

#[test]
fn the_weaker_ground_pulls_least() {
    let values = on_soft_ground(&[]);
    let pull = |id| values.si(id).unwrap();
    assert!(pull(DRAWBAR_PULL_LOW) < pull(DRAWBAR_PULL));
    assert!(pull(DRAWBAR_PULL) < pull(DRAWBAR_PULL_HIGH));
    assert!(pull(SNOW_DRAWBAR_PULL_LOW) < pull(SNOW_DRAWBAR_PULL));
    assert!(pull(SNOW_DRAWBAR_PULL) < pull(SNOW_DRAWBAR_PULL_HIGH));
    assert!(values.si(SLIP_NEEDED).unwrap() < values.si(SLIP_NEEDED_HIGH).unwrap());
    assert!(values.si(RUT_PRESSURE_LOW).unwrap() < values.si(RUT_PRESSURE_HIGH).unwrap());
    assert!(values.si(LOW_END_SINKAGE).unwrap() < values.si(LOW_END_SINKAGE_HIGH).unwrap());
    assert!(values.si(SOFT_CLIMB_LOW).unwrap() < values.si(SOFT_CLIMB).unwrap());
}

#[test]
fn the_slip_needed_gives_the_pull_wanted() {
    let hooked = on_soft_ground(&[(PULL_WANTED.any(), 15.0)]);
    let slip = hooked.si(SLIP_NEEDED).unwrap();
    let pulling = on_soft_ground(&[(SLIP.any(), slip)]);
    assert!(close(pulling.si(DRAWBAR_PULL).unwrap(), 15.0, 1e-9), "{slip}");
    let level = on_soft_ground(&[(SLOPE.any(), -0.5)]);
    assert_eq!(level.si(SLIP_NEEDED), Some(0.0), "downhill nothing has to be pushed");
}

#[test]
fn what_the_ground_cannot_do_is_said() {
    let too_hard = on_soft_ground(&[(PULL_WANTED.any(), 5e3)]);
    assert!(words(&too_hard, SLIP_NEEDED).contains("at any slip"));
    let clay = on_soft_ground(&[(COHESION.any(), 69e3)]);
    assert!(words(&clay, SOFT_CLIMB).contains("any slope"));
    let mixed =
        on_soft_ground(&[(SKI_COUNT.any(), 2.0), (SKI_WIDTH.any(), 0.1), (SKI_LENGTH.any(), 0.3)]);
    assert!(words(&mixed, SINKAGE).contains("tracks alone or skis alone"));
    assert!(words(&on_soft_ground(&[]), WHEEL_SINKAGE).contains("on wheels"));
    let packed = on_soft_ground(&[(SNOW_DENSITY.any(), 500.0)]);
    assert!(words(&packed, SNOW_RUT).contains("as dense already"));
    assert_eq!(thrust::limit(of(0.0), of(1e3), of(10.0), of(0.5)), Err(Impossible::NoTracks));
}

#[test]
fn a_throw_slower_than_the_machine_holds_it_back() {
    let outrun = on_soft_ground(&[(DRIVING_SPEED.any(), 4.0)]);
    assert!(outrun.si(THROWN_THRUST).unwrap() < 0.0);
    assert!(cautions(&outrun, THROWN_THRUST).contains("outruns its own throw"));
}

#[test]
fn no_word_says_that_ice_is_safe() {
    for mass in [6.4, 210.0, 20e3] {
        let values = values(&[(MASS.any(), mass)]);
        assert!(cautions(&values, ICE_GUIDE_THICKNESS).starts_with("No ice is safe"));
        // Somebody on foot fetches the machine: never less than the 4 in of guidance for that.
        assert!(values.si(ICE_GUIDE_THICKNESS).unwrap() >= 4.0 * 0.0254 - 1e-12);
    }
}

#[test]
fn a_climbing_figure_is_no_permission() {
    let values = on_soft_ground(&[]);
    for id in [SOFT_CLIMB, SOFT_CLIMB_LOW, GRIP_CLIMB, SLIDE_ANGLE] {
        assert!(cautions(&values, id).contains("no permission"), "{}", id.any());
    }
}

#[test]
fn a_roll_test_stands_in_for_a_tow_test() {
    let rolled = values(&[(ROLL_ON_SLOPE.any(), 0.1)]);
    assert!(close(rolled.si(ROLLING_COEFFICIENT).unwrap(), 0.1_f64.tan(), 1e-12));
    let lacking = super::lacks(&values(&[]), ROLLING_COEFFICIENT);
    assert_eq!(lacking, [vec![TOW_TEST_PULL.any(), ROLL_ON_SLOPE.any()]]);
    let half = super::lacks(&values(&[(TOW_TEST_PULL.any(), 5.0)]), ROLLING_COEFFICIENT);
    assert_eq!(half, [vec![TOW_TEST_MASS.any()]]);
}
