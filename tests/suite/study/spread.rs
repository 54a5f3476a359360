//! Spreads against the published rule and against sampling.

use std::collections::BTreeMap;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    drive::*, electrics::*, ground::*, heat::*, impact::*, machine::*, pressure::*,
    running_gear::*, traction::*,
};
use heftwise::rules::{Givens, evaluate};
use heftwise::study::Outcome;

use super::sandpiper;

fn spreads<const N: usize>(of: [(AnyId, f64); N]) -> BTreeMap<AnyId, f64> {
    of.into()
}

/// JCGM 100:2008, 5.1.6, equation (12): for Y = c X1^p1 X2^p2 ... the relative variances add,
/// each times the square of its power.
#[test]
fn powers_follow_equation_12_of_the_gum() {
    let mut givens = sandpiper();
    givens.set(IMPACT_SPEED, 1.5);
    let relative =
        [(MASS.any(), 6.4, 0.02), (TRACK_WIDTH.any(), 0.09, 0.03), (IMPACT_SPEED.any(), 1.5, 0.04)];
    let spreads: BTreeMap<AnyId, f64> = relative.iter().map(|(id, x, u)| (*id, x * u)).collect();
    let outcome = Outcome::of(givens, &spreads, 1);
    // Pressure goes as mass^1 width^-1, energy as mass^1 speed^2.
    for (id, expected) in [
        (GROUND_PRESSURE.any(), (0.02_f64.powi(2) + 0.03_f64.powi(2)).sqrt()),
        (KINETIC_ENERGY.any(), (0.02_f64.powi(2) + (2.0 * 0.04_f64).powi(2)).sqrt()),
        (WEIGHT.any(), 0.02),
    ] {
        let (value, range) = (outcome.values.si(id).unwrap(), outcome.range(id).unwrap());
        let found = range.half_width / value;
        // First order: the finite step adds a thousandth here.
        approx::assert_relative_eq!(found, expected, max_relative = 2e-3);
        assert!(range.one_sided.is_empty());
        let shares: f64 = range.contributions.iter().map(|c| c.share).sum();
        approx::assert_relative_eq!(shares, 1.0, max_relative = 1e-12);
    }
    let energy = outcome.range(KINETIC_ENERGY).unwrap();
    assert_eq!(energy.contributions[0].id, IMPACT_SPEED.any(), "the squared one matters most");
    approx::assert_relative_eq!(energy.contributions[0].share, 64.0 / 68.0, max_relative = 1e-3);
}

/// JCGM 100:2008, 5.2.2 note 1 and F.1.2.3: what two inputs share must be counted once. The margin
/// is (block mass × g / side²) over (mass × g / area): gravity cancels out of it altogether.
#[test]
fn what_two_rules_share_cancels() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 5.0);
    let outcome = Outcome::of(givens, &spreads([(GRAVITY.any(), 0.5)]), 1);
    assert!(outcome.range(GROUND_PRESSURE).is_some());
    assert!(outcome.range(HOLDING_PRESSURE).is_some());
    assert_eq!(outcome.range(PRESSURE_MARGIN), None);
}

/// A tiny deterministic sampler: xorshift (Marsaglia 2003) and Box-Muller (1958).
struct Sampler(u64);

impl Sampler {
    fn uniform(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        ((self.0 >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * self.uniform().ln()).sqrt() * (std::f64::consts::TAU * self.uniform()).cos()
    }
}

/// JCGM 101:2008, clause 7: propagate distributions by sampling, and compare the standard
/// deviation with the first-order one (its clause 8 does the same comparison).
fn agrees_with_sampling(givens: &Givens, spreads: &BTreeMap<AnyId, f64>, asked: &[AnyId]) {
    let outcome = Outcome::of(givens.clone(), spreads, 1);
    let mut sampler = Sampler(0x9E37_79B9_7F4A_7C15);
    let trials = 4000;
    let mut sums = vec![(0.0, 0.0); asked.len()];
    for _ in 0..trials {
        let mut trial: Givens = givens.clone();
        for (id, spread) in spreads {
            trial.set(*id, givens.get(*id).unwrap().0 + spread * sampler.normal());
        }
        let values = evaluate(&trial);
        for (sum, id) in sums.iter_mut().zip(asked) {
            let si = values.si(*id).unwrap();
            *sum = (sum.0 + si, sum.1 + si * si);
        }
    }
    for ((sum, squares), id) in sums.into_iter().zip(asked) {
        let mean = sum / f64::from(trials);
        let deviation = (squares / f64::from(trials) - mean * mean).sqrt();
        let range = outcome.range(*id).unwrap();
        // Of 4000 trials a standard deviation is known to about 1.1 %; second order adds a little.
        approx::assert_relative_eq!(range.half_width, deviation, max_relative = 0.05);
        approx::assert_relative_eq!(outcome.values.si(*id).unwrap(), mean, max_relative = 0.02);
    }
}

#[test]
fn first_order_agrees_with_sampling() {
    let mut givens = sandpiper();
    givens.set(BLOCK_MASS, 5.0);
    givens.set(BALANCE_OFFSET, 0.03);
    givens.set(IMPACT_SPEED, 1.5);
    givens.set(STOP_DISTANCE, 0.02);
    givens.set(APPROACH_ANGLE, 0.5);
    let spreads = spreads([
        (MASS.any(), 0.15),
        (TRACK_WIDTH.any(), 0.002),
        (CONTACT_LENGTH.any(), 0.01),
        (BALANCE_OFFSET.any(), 0.004),
        (BLOCK_MASS.any(), 0.2),
        (IMPACT_SPEED.any(), 0.05),
        (STOP_DISTANCE.any(), 0.001),
    ]);
    let asked = [
        GROUND_PRESSURE.any(),
        LOW_END_PRESSURE.any(),
        LOW_END_MARGIN.any(),
        LARGEST_MASS.any(),
        PEAK_IMPACT_FORCE.any(),
        PEAK_DECELERATION_G.any(),
    ];
    agrees_with_sampling(&givens, &spreads, &asked);
}

/// On loose dry sand, pulling at a fifth of slip.
fn on_sand() -> (Givens, BTreeMap<AnyId, f64>) {
    let mut givens = sandpiper();
    let sand = [
        (SINKAGE_EXPONENT.any(), 1.1, 0.02),
        (COHESIVE_MODULUS.any(), 990.0, 50.0),
        (FRICTIONAL_MODULUS.any(), 1.53e6, 8e4),
        (COHESION.any(), 1040.0, 60.0),
        (FRICTION_ANGLE.any(), 0.489, 0.02),
        (SHEAR_DEFORMATION.any(), 0.025, 0.001),
        (SLIP.any(), 0.2, 0.01),
        (SLOPE.any(), 0.1, 0.01),
    ];
    sand.iter().for_each(|(id, si, _)| givens.set(*id, *si));
    (givens, sand.map(|(id, _, spread)| (id, spread)).into())
}

/// A warm controller in a closed box, and a motor whose copper warms itself.
fn warm_box() -> (Givens, BTreeMap<AnyId, f64>) {
    let mut givens = sandpiper();
    let warm = [
        (MOTOR_CURRENT.any(), 18.0, 0.6),
        (CONTROLLER_HOT_RESISTANCE.any(), 0.008, 0.0003),
        (SWITCHING_LOSS.any(), 0.5, 0.05),
        (BOX_OTHER_HEAT.any(), 4.5, 0.2),
        (BOX_LENGTH.any(), 0.12, 0.002),
        (BOX_WIDTH.any(), 0.09, 0.002),
        (BOX_HEIGHT.any(), 0.055, 0.001),
        (BOX_COEFFICIENT.any(), 3.5, 0.1),
        (BOX_HEAT_CAPACITY.any(), 350.0, 10.0),
        (WORK_TIME.any(), 600.0, 20.0),
        (COOLING_AIR.any(), 295.0, 1.0),
        (MOTOR_LOSS.any(), 8.0, 0.3),
        (WINDING_LOSS.any(), 6.0, 0.2),
        (MOTOR_TO_AIR.any(), 6.0, 0.2),
    ];
    warm.iter().for_each(|(id, si, _)| givens.set(*id, *si));
    (givens, warm.map(|(id, _, spread)| (id, spread)).into())
}

const OF_SAND: [AnyId; 6] = [
    SINKAGE.any(),
    COMPACTION_RESISTANCE.any(),
    THRUST_LIMIT.any(),
    THRUST.any(),
    DRAWBAR_PULL.any(),
    SLIP_NEEDED.any(),
];
const OF_HEAT: [AnyId; 6] = [
    BOX_RESISTANCE.any(),
    BOX_RISE.any(),
    BOX_RISE_AFTER.any(),
    BOX_TEMPERATURE.any(),
    WINDING_RISE.any(),
    WINDING_TEMPERATURE.any(),
];

#[test]
fn first_order_agrees_with_sampling_on_sand_and_in_heat() {
    let (givens, spreads) = on_sand();
    agrees_with_sampling(&givens, &spreads, &OF_SAND);
    let (givens, spreads) = warm_box();
    agrees_with_sampling(&givens, &spreads, &OF_HEAT);
}

/// A thousandth of the doubt is a thousandth of the range, down to none at all.
#[test]
fn a_range_shrinks_to_nothing_with_its_spreads() {
    for ((givens, full), asked) in [(on_sand(), OF_SAND), (warm_box(), OF_HEAT)] {
        let width = |part: f64, id: AnyId| {
            let spreads = full.iter().map(|(id, spread)| (*id, part * spread)).collect();
            Outcome::of(givens.clone(), &spreads, 1).range(id).map(|range| range.half_width)
        };
        for id in asked {
            let whole = width(0.01, id).unwrap();
            for part in [1e-3, 1e-4, 1e-5] {
                let small = width(0.01 * part, id).unwrap();
                approx::assert_relative_eq!(small, part * whole, max_relative = 1e-3);
            }
            assert_eq!(width(0.0, id), None);
        }
    }
}

#[test]
fn a_given_has_its_own_range() {
    let outcome = Outcome::of(sandpiper(), &spreads([(TRACK_WIDTH.any(), 0.002)]), 1);
    let range = outcome.range(TRACK_WIDTH).unwrap();
    approx::assert_relative_eq!(range.low, 0.088, max_relative = 1e-12);
    approx::assert_relative_eq!(range.high, 0.092, max_relative = 1e-12);
    assert_eq!(outcome.range(MASS), None);
}

/// A load in the middle can only get worse: the low end presses harder whichever way it wanders.
#[test]
fn a_kink_is_one_sided() {
    let outcome = Outcome::of(sandpiper(), &spreads([(BALANCE_OFFSET.any(), 0.02)]), 1);
    let range = outcome.range(END_PRESSURE_RATIO).unwrap();
    assert_eq!(range.one_sided, [BALANCE_OFFSET.any()]);
    assert_eq!(range.low, 1.0);
    // 1 + 6 × 0.02 / 0.42
    approx::assert_relative_eq!(range.high, 1.0 + 0.12 / 0.42, max_relative = 1e-12);
}

#[test]
fn where_it_may_tip_the_range_is_not_known() {
    let mut givens = sandpiper();
    givens.set(BALANCE_OFFSET, 0.2);
    let outcome = Outcome::of(givens, &spreads([(BALANCE_OFFSET.any(), 0.02)]), 1);
    assert!(outcome.values.si(LOW_END_PRESSURE).is_some());
    assert_eq!(outcome.range(LOW_END_PRESSURE), None);
    assert_eq!(outcome.ranges.upset_by(LOW_END_PRESSURE), [BALANCE_OFFSET.any()]);
}

#[test]
fn a_given_at_its_end_moves_one_way() {
    let outcome = Outcome::of(sandpiper(), &spreads([(RESTITUTION.any(), 0.1)]), 1);
    let range = outcome.range(RESTITUTION).unwrap();
    assert_eq!(range.one_sided, [RESTITUTION.any()]);
    assert_eq!(range.half_width, 0.1);
}

#[test]
fn senseless_spreads_are_passed_over() {
    for spread in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let outcome = Outcome::of(sandpiper(), &spreads([(MASS.any(), spread)]), 1);
        assert_eq!(outcome.range(GROUND_PRESSURE), None, "{spread}");
    }
    let found = Outcome::of(sandpiper(), &spreads([(WEIGHT.any(), 1.0)]), 1);
    assert_eq!(found.range(GROUND_PRESSURE), None, "nobody gave the weight");
}
