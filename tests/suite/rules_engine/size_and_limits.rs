//! A whole machine made larger, and the edges where one formula hands over to another, through the
//! rules.

use heftwise::quantity::catalogue::{
    self, balance::*, ground::*, machine::*, pressure::*, running_gear::*, traction::*, turning::*,
    whole::*,
};
use heftwise::quantity::{AnyId, Dimension};
use proptest::prelude::*;

use super::{CRAWLER, ON_SOFT_GROUND, UNDER_WAY, values};

const BUILT: &[&[(AnyId, f64)]] = &[CRAWLER, UNDER_WAY, ON_SOFT_GROUND];

/// The machine `factor` times as large in every length, of the same stuff, on the same ground.
fn sized(factor: f64) -> Vec<(AnyId, f64)> {
    let of_the_ground = [BLOCK_MASS.any(), BLOCK_SIDE.any(), SHEAR_DEFORMATION.any()];
    let scaled = |(id, si): (AnyId, f64)| {
        let power = match catalogue::find(id.name()).map(|entry| entry.dimension) {
            _ if of_the_ground.contains(&id) => 0,
            Some(Dimension::Length) => 1,
            Some(Dimension::Area) => 2,
            Some(Dimension::Mass) => 3,
            _ => 0,
        };
        (id, si * factor.powi(power))
    };
    BUILT.concat().into_iter().map(scaled).collect()
}

fn close(got: Option<f64>, wanted: f64) -> bool {
    got.is_some_and(|got| (got - wanted).abs() <= 1e-9 * wanted.abs().max(1e-12))
}

/// Square and cube: Galileo, Two New Sciences, second day.
#[test]
fn twice_as_large_presses_twice_as_hard() {
    let (one, two) = (values(&sized(1.0)), values(&sized(2.0)));
    for (id, ratio) in [
        (CONTACT_AREA.any(), 4.0),
        (WEIGHT.any(), 8.0),
        (GROUND_PRESSURE.any(), 2.0),
        (LOW_END_PRESSURE.any(), 2.0),
        (PRESSURE_MARGIN.any(), 0.5),
        (BELT_MEAN_MAXIMUM_PRESSURE.any(), 2.0),
    ] {
        assert!(close(two.si(id), ratio * one.si(id).unwrap()), "{id}: {:?}", two.of(id));
    }
}

proptest! {
    /// Every result of the shape goes with the power of the length that its dimension asks for.
    #[test]
    fn a_size_changes_numbers_by_their_dimension(factor in 0.2..5.0_f64) {
        let (small, large) = (values(&sized(1.0)), values(&sized(factor)));
        for (id, power) in [
            (GROUND_PRESSURE.any(), 1),
            (LOW_END_PRESSURE.any(), 1),
            (END_PRESSURE_RATIO.any(), 0),
            (LIFTED_LENGTH.any(), 1),
            (FRONT_LOAD.any(), 3),
            (FRONT_SHARE.any(), 0),
            (FRONT_LIFT_LIMIT.any(), 0),
            (NOSE_OVER_SLOPE.any(), 0),
            (SIDE_TIP_ANGLE.any(), 0),
            (SKID_MOMENT.any(), 4),
            (YAW_INERTIA.any(), 5),
        ] {
            let wanted = factor.powi(power) * small.si(id).unwrap();
            prop_assert!(close(large.si(id), wanted), "{id}: {:?}, not {wanted}", large.of(id));
        }
        // What the rules of scale foretell is what the larger machine has.
        let told = values(&[&sized(1.0)[..], &[(SCALE_FACTOR.any(), factor), (SLOPE.any(), 0.0)]].concat());
        let built = values(&[&sized(factor)[..], &[(SLOPE.any(), 0.0)]].concat());
        for (foretold, found) in [
            (SCALED_MASS.any(), MASS.any()),
            (SCALED_CONTACT_AREA.any(), CONTACT_AREA.any()),
            (SCALED_GROUND_PRESSURE.any(), GROUND_PRESSURE.any()),
        ] {
            prop_assert!(close(told.si(foretold), built.si(found).unwrap()), "{foretold}");
        }
    }

    /// No slope, no matter from which side: every number on the level is the limit of both.
    #[test]
    fn a_slope_of_nothing_is_the_level(offset in -0.1..0.1_f64, height in 0.02..0.3_f64) {
        let on = |slope: f64| {
            let more = [
                (SLOPE.any(), slope),
                (BALANCE_OFFSET.any(), offset),
                (CG_HEIGHT.any(), height),
            ];
            values(&[&BUILT.concat()[..], &more].concat())
        };
        let (level, up, down) = (on(0.0), on(1e-9), on(-1e-9));
        prop_assert_eq!(level.si(SLOPE_FORCE), Some(0.0));
        prop_assert_eq!(level.si(GROUND_FORCE), level.si(WEIGHT));
        for id in [
            LOW_END_PRESSURE.any(),
            DRAWBAR_PULL.any(),
            FRONT_LOAD.any(),
            FRONT_LIFT_ACCELERATION.any(),
            NOSE_OVER_DECELERATION.any(),
            GRIP_ACCELERATION.any(),
        ] {
            let at = level.si(id).unwrap();
            for near in [&up, &down] {
                let near = near.si(id).unwrap();
                prop_assert!((near - at).abs() <= 1e-6 * at.abs().max(1.0), "{id}: {near}, {at}");
            }
        }
    }
}

#[test]
fn the_slip_runs_from_no_thrust_to_all_of_it() {
    let at = |slip: f64| values(&[&BUILT.concat()[..], &[(SLIP.any(), slip)]].concat());
    assert_eq!(at(0.0).si(THRUST), Some(0.0));
    assert!(at(1e-9).si(THRUST).unwrap() < 1e-6 * at(1.0).si(THRUST_LIMIT).unwrap());
    // At full slip over a contact of many shear deformations nearly all of the limit is reached:
    // 1 - K/L, Janosi and Hanamoto integrated along the track.
    let (length, deformation) = (0.42_f64, 0.025_f64);
    let full = at(1.0);
    let share = full.si(THRUST).unwrap() / full.si(THRUST_LIMIT).unwrap();
    let tail = deformation / length * (1.0 - (-length / deformation).exp());
    assert!((share - (1.0 - tail)).abs() < 1e-12, "{share}");
    for step in [1e-6, 1e-9] {
        let near = at(1.0 - step).si(THRUST).unwrap();
        assert!((near - full.si(THRUST).unwrap()).abs() < 10.0 * step * near);
    }
}

/// A sixth of the contact from the middle: 1 + 6e/L and 4/3 · L/(L − 2e) both say two.
#[test]
fn the_ends_meet_at_a_sixth_through_the_rules() {
    let at = |offset: f64| {
        let level = [(SLOPE.any(), 0.0), (BALANCE_OFFSET.any(), -offset)];
        values(&[CRAWLER, &level].concat())
    };
    let sixth = 0.42 / 6.0;
    let (mean, low) = (GROUND_PRESSURE, LOW_END_PRESSURE);
    assert!(close(at(sixth).si(low), 2.0 * at(sixth).si(mean).unwrap()));
    for step in [1e-6, 1e-9] {
        let jump = at(sixth + step).si(low).unwrap() - at(sixth - step).si(low).unwrap();
        assert!(jump > 0.0 && jump < 40.0 * step / 0.42 * at(0.0).si(mean).unwrap(), "{jump}");
        assert_eq!(at(sixth - step).si(LIFTED_LENGTH), Some(0.0));
        assert!(at(sixth + step).si(LIFTED_LENGTH) > Some(0.0));
    }
}
