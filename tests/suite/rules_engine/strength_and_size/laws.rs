//! Laws of strength, collisions, the weight spiral and size, for any numbers.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{impact::*, machine::*, structure::*, whole::*};
use proptest::prelude::*;

use super::super::values;
use super::{ALL, with};

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-12)
}

proptest! {
    /// Momentum is kept, and no energy comes from nowhere.
    #[test]
    fn collisions_keep_momentum_and_lose_energy(
        mass in 0.1..500.0, other in 0.1..500.0,
        speed in 0.0..20.0, other_speed in -20.0..20.0, bounce in 0.0..=1.0,
    ) {
        let after = values(&[
            (MASS.any(), mass), (IMPACT_SPEED.any(), speed), (OTHER_MASS.any(), other),
            (OTHER_SPEED.any(), other_speed), (RESTITUTION.any(), bounce),
        ]);
        let (v1, v2) = (after.si(SPEED_AFTER).unwrap(), after.si(OTHER_SPEED_AFTER).unwrap());
        let before = mass * speed + other * other_speed;
        let size = mass * speed + other * other_speed.abs();
        prop_assert!((mass * v1 + other * v2 - before).abs() <= 1e-9 * size.max(1e-9));
        let energy = |a: f64, b: f64| (mass * a * a + other * b * b) / 2.0;
        let lost = after.si(COLLISION_ENERGY_LOST).unwrap();
        let whole = energy(speed, other_speed);
        prop_assert!(lost >= 0.0);
        prop_assert!((whole - energy(v1, v2) - lost).abs() <= 1e-9 * whole.max(1e-9));
        if speed > other_speed {
            prop_assert!((v2 - v1 - bounce * (speed - other_speed)).abs() <= 1e-9 * size.max(1.0));
        }
    }

    /// Twice the span: stress twice, slope four times, sag eight times.
    #[test]
    fn span_counts_once_twice_thrice(span in 0.05..2.0, load in 1.0..1e3) {
        let beam = |span| with(&[(BEAM_SPAN.any(), span), (BEAM_LOAD.any(), load)]);
        let (one, two) = (beam(span), beam(2.0 * span));
        for (id, power) in [(BEAM_STRESS.any(), 1), (BEAM_SLOPE.any(), 2), (BEAM_SAG.any(), 3)] {
            let ratio = two.si(id).unwrap() / one.si(id).unwrap();
            prop_assert!(close(ratio, 2.0_f64.powi(power)), "{id}: {ratio}");
        }
    }

    /// Every length so many times: second moments go by the fourth power, section moduli by the
    /// third, areas by the second, whatever the kind.
    #[test]
    fn sections_scale(scale in 0.1..10.0_f64) {
        let lengths = [
            BAR_WIDTH, BAR_DEPTH, ROUND_DIAMETER, TUBE_DIAMETER, TUBE_WALL, BOX_TUBE_WIDTH, BOX_TUBE_DEPTH,
            BOX_TUBE_WALL, BOX_TUBE_CORNER, FLANGE_WIDTH, FLANGE_THICKNESS, WEB_THICKNESS, WEB_DEPTH,
        ];
        let corner = [(BOX_TUBE_CORNER.any(), 0.004)];
        let one = with(&corner);
        let scaled: Vec<_> =
            lengths.iter().map(|id| (id.any(), scale * one.si(*id).unwrap())).collect();
        let other = with(&scaled);
        let all: [(&[AnyId], i32); 3] = [
            (&[BAR_AREA.any(), ROUND_AREA.any(), TUBE_AREA.any(), BOX_TUBE_AREA.any(), FLANGED_AREA.any()], 2),
            (&[BAR_SECTION_MODULUS.any(), BOX_TUBE_SECTION_MODULUS.any(), FLANGED_SECTION_MODULUS.any()], 3),
            (&[ROUND_SECOND_MOMENT.any(), TUBE_SECOND_MOMENT.any(), BOX_TUBE_SECOND_MOMENT.any()], 4),
        ];
        for (ids, power) in all {
            for id in ids {
                let ratio = other.si(*id).unwrap() / one.si(*id).unwrap();
                prop_assert!(close(ratio, scale.powi(power)), "{id}: {ratio}");
            }
        }
    }

    /// The round corners of a box take something off, and a box of no hole is a bar.
    #[test]
    fn corners_take_off(side in 0.01..0.1_f64, wall in 0.02..0.2, corner in 0.01..0.5) {
        let (wall, corner) = (wall * side, corner * side);
        let sides = [(BOX_TUBE_WIDTH.any(), side), (BOX_TUBE_DEPTH.any(), side), (BOX_TUBE_WALL.any(), wall)];
        let sharp = values(&sides);
        let round = values(&[&sides[..], &[(BOX_TUBE_CORNER.any(), corner)]].concat());
        for id in [BOX_TUBE_AREA.any(), BOX_TUBE_SECOND_MOMENT.any()] {
            prop_assert!(round.si(id) < sharp.si(id), "{id}");
        }
        let filled = values(&[
            (BOX_TUBE_WIDTH.any(), side), (BOX_TUBE_DEPTH.any(), side), (BOX_TUBE_WALL.any(), side / 2.0),
        ]);
        prop_assert!(close(filled.si(BOX_TUBE_SECOND_MOMENT).unwrap(), side.powi(4) / 12.0));
    }

    /// A drop loses its height and gets it back: weight times fall is the energy in the spring.
    #[test]
    fn a_drop_onto_a_spring_keeps_energy(mass in 0.1..500.0, height in 0.0..5.0, rate in 1e2..1e7) {
        let drop = values(&[
            (MASS.any(), mass), (DROP_HEIGHT.any(), height), (SUPPORT_RATE.any(), rate),
        ]);
        let sag = drop.si(SUPPORT_PEAK_SAG).unwrap();
        let fallen = drop.si(WEIGHT).unwrap() * (height + sag);
        prop_assert!(close(rate * sag * sag / 2.0, fallen));
        prop_assert!(drop.si(DROP_FACTOR).unwrap() >= 2.0);
    }

    /// The mass found is the fixed point: stepping from any start comes to it.
    #[test]
    fn the_spiral_comes_to_rest(range in 100.0..1.5e4, frame in 0.0..0.3, start in 0.1..100.0) {
        let spiral = with(&[(WANTED_RANGE.any(), range), (FRAME_SHARE.any(), frame)]);
        let share = spiral.si(GROWTH_SHARE).unwrap();
        prop_assume!(share < 0.95);
        let mut mass = start;
        for _ in 0..2000 {
            mass = 4.0 + share * mass;
        }
        prop_assert!(close(mass, spiral.si(CLOSED_MASS).unwrap()), "{mass}");
        // And the battery in it carries the machine as far as was wanted.
        let battery = spiral.si(CLOSED_BATTERY_MASS).unwrap() * 4.3e5 * 0.8;
        let per_metre = spiral.si(ENERGY_PER_DISTANCE).unwrap() * mass / 6.4;
        prop_assert!(close(battery / per_metre, range));
    }

    /// Tightened to the torque found, a bolt has the clamp aimed for; slip and clamp go together.
    #[test]
    fn torque_and_clamp_undo_each_other(share in 0.3..0.9, nut in 0.1..0.3) {
        let aimed = with(&[(PRELOAD_SHARE.any(), share), (NUT_FACTOR.any(), nut)]);
        let torque = aimed.si(TIGHTENING_TORQUE).unwrap();
        let done = with(&[(NUT_FACTOR.any(), nut), (BOLT_TORQUE.any(), torque)]);
        prop_assert!(close(done.si(BOLT_CLAMP).unwrap(), aimed.si(TARGET_CLAMP).unwrap()));
        let spread = done.si(HIGHEST_CLAMP).unwrap() + done.si(LEAST_CLAMP).unwrap();
        prop_assert!(close(spread, 2.0 * done.si(BOLT_CLAMP).unwrap()));
    }

    /// There and back: a scale and its inverse undo each other for a solid machine.
    #[test]
    fn scaling_back_undoes(scale in 0.1..10.0_f64, sheet in 0.0..=1.0) {
        let at = |scale, sheet| with(&[(SCALE_FACTOR.any(), scale), (SHEET_SHARE.any(), sheet)]);
        let (up, down) = (at(scale, 0.0), at(1.0 / scale, 0.0));
        for id in [SCALE_MASS_RATIO, SCALE_TORQUE_RATIO, SCALE_POWER_RATIO, SCALE_COOLING_RATIO] {
            prop_assert!(close(up.si(id).unwrap() * down.si(id).unwrap(), 1.0), "{}", id.any());
        }
        let exponent = at(scale, sheet).si(SCALE_MASS_EXPONENT).unwrap();
        prop_assert!((2.0 - 1e-9..=3.0 + 1e-9).contains(&exponent), "{exponent}");
    }

    /// A spread that shrinks takes the range with it, in step; none leaves none.
    #[test]
    fn spread_shrinks_to_nothing(part in 1e-4..0.01) {
        use heftwise::rules::Givens;
        use heftwise::study::Outcome;
        use std::collections::BTreeMap;
        let mut givens = Givens::default();
        ALL.iter().for_each(|(id, si)| givens.set(*id, *si));
        let half_width = |part: f64, id: AnyId| {
            let spreads = BTreeMap::from([
                (BEAM_SPAN.any(), 0.2 * part),
                (BOLT_TORQUE.any(), 25.0 * part),
                (SCALE_FACTOR.any(), 2.0 * part),
            ]);
            Outcome::of(givens.clone(), &spreads, 1).range(id).map(|range| range.half_width)
        };
        for id in [BEAM_SAG.any(), SLIP_MARGIN.any(), SCALE_TORQUE_RATIO.any()] {
            let (wide, narrow) = (half_width(part, id).unwrap(), half_width(part / 10.0, id).unwrap());
            prop_assert!((narrow / wide - 0.1).abs() < 0.01, "{id}: {narrow} of {wide}");
            prop_assert_eq!(half_width(0.0, id), None);
        }
    }
}
