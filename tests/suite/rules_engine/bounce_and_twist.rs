//! Bounces, ledges, twisted tubes and joined sections, from outside.

use approx::assert_relative_eq;
use heftwise::quantity::catalogue::{impact::*, machine::*, motion::*, structure::*};
use proptest::prelude::*;

use super::{cautions, values};

#[test]
fn a_bounce_higher_than_the_drop_is_doubted() {
    let test = |rebound: f64| {
        values(&[(BOUNCE_TEST_DROP.any(), 1.0), (BOUNCE_TEST_REBOUND.any(), rebound)])
    };
    assert!(cautions(&test(1.2), BOUNCE_TEST_RESTITUTION).contains("cannot come back higher"));
    assert_eq!(cautions(&test(0.25), BOUNCE_TEST_RESTITUTION), "");
    assert_eq!(test(0.25).si(BOUNCE_TEST_RESTITUTION), Some(0.5));
}

#[test]
fn a_high_ledge_is_warned_of() {
    let off = |height: f64| values(&[(DRIVING_SPEED.any(), 1.0), (DROP_HEIGHT.any(), height)]);
    assert!(cautions(&off(0.5), LEDGE_SPEED).contains("Keep everybody clear"));
    assert_eq!(cautions(&off(0.1), LEDGE_SPEED), "");
}

#[test]
fn a_tube_twisted_past_its_yield_is_said() {
    // 90 mm³ take 5.2 N m at the yield in shear, 100 / √3, 58 MPa.
    let tube = |moment: f64| {
        values(&[
            (TUBE_POLAR_MODULUS.any(), 9e-8),
            (TWIST_MOMENT.any(), moment),
            (MATERIAL_STRENGTH.any(), 100e6),
        ])
    };
    assert!(cautions(&tube(5.3), TWIST_STRESS).contains("stays twisted"));
    assert_eq!(cautions(&tube(5.1), TWIST_STRESS), "");
    assert_relative_eq!(tube(4.5).si(TWIST_STRESS).unwrap(), 50e6, max_relative = 1e-12);
}

#[test]
fn a_joined_section_asks_for_its_joint() {
    let bar = [(BAR_WIDTH.any(), 0.01), (BAR_DEPTH.any(), 0.02), (PAIR_SPACING.any(), 0.1)];
    assert!(cautions(&values(&bar), PAIR_SECOND_MOMENT).contains("slip"));
}

proptest! {
    /// A plate as wide and thick as a bar, laid on it, makes a bar twice as deep.
    #[test]
    fn two_bars_glued_are_one_of_twice_the_depth(width in 1e-3..0.2, depth in 1e-3..0.2) {
        let glued = values(&[
            (BAR_WIDTH.any(), width),
            (BAR_DEPTH.any(), depth),
            (PLATE_WIDTH.any(), width),
            (PLATE_THICKNESS.any(), depth),
            (PLATE_DISTANCE.any(), depth),
            (PAIR_SPACING.any(), depth),
        ]);
        let whole = values(&[(BAR_WIDTH.any(), width), (BAR_DEPTH.any(), 2.0 * depth)]);
        let wanted = whole.si(SECOND_MOMENT).unwrap();
        for id in [PLATED_SECOND_MOMENT, PAIR_SECOND_MOMENT] {
            let found = glued.si(id).unwrap();
            prop_assert!((found - wanted).abs() <= 1e-9 * wanted, "{} {found} {wanted}", id.any());
        }
        let shift = glued.si(PLATED_SHIFT).unwrap();
        prop_assert!((shift - depth / 2.0).abs() <= 1e-9 * depth);
    }

    /// The energy lost is the kinetic energy of both before less that after, for any impulse.
    #[test]
    fn the_energy_lost_is_the_difference(
        mass in 0.1..500.0, other in 0.1..500.0, speed in 0.5..10.0, against in -10.0..0.0, impulse in 0.0..1e3,
    ) {
        let hit = values(&[
            (MASS.any(), mass),
            (IMPACT_SPEED.any(), speed),
            (OTHER_MASS.any(), other),
            (OTHER_SPEED.any(), against),
            (EXCHANGED_IMPULSE.any(), impulse),
        ]);
        let (after, other_after) = (hit.si(SPEED_AFTER).unwrap(), hit.si(OTHER_SPEED_AFTER).unwrap());
        let energy = |v1: f64, v2: f64| (mass * v1 * v1 + other * v2 * v2) / 2.0;
        let (before, then) = (energy(speed, against), energy(after, other_after));
        let lost = hit.si(COLLISION_ENERGY_LOST).unwrap();
        prop_assert!((lost - (before - then)).abs() <= 1e-9 * before.max(then));
    }

    /// A fall from a ledge keeps the energy: what it had and what the fall adds.
    #[test]
    fn a_ledge_adds_energy(speed in 0.0..10.0, height in 0.0..3.0) {
        let off = values(&[(DRIVING_SPEED.any(), speed), (DROP_HEIGHT.any(), height)]);
        let touch = off.si(LEDGE_SPEED).unwrap();
        let wanted = speed * speed / 2.0 + 9.80665 * height;
        prop_assert!((touch * touch / 2.0 - wanted).abs() <= 1e-9 * wanted.max(1e-9));
    }
}
