//! Sections, beams, bolts, collisions, range, the weight spiral and scale.

mod laws;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    drive::*, electrics::*, impact::*, machine::MASS, motion::*, structure::*, whole::*,
};

use super::{cautions, crawler_with, lacks, values, words};

/// Numbers for all that the strength, collision and whole-machine rules ask for.
pub(super) const ALL: &[(AnyId, f64)] = &[
    (OTHER_MASS.any(), 15.0),
    (OTHER_SPEED.any(), -1.0),
    (TEST_PULSE_PEAK.any(), 100.0),
    (TEST_PULSE_TIME.any(), 6e-3),
    (MOUNTED_MASS.any(), 0.4),
    (SUPPORT_RATE.any(), 2e4),
    (BOUNCE_TEST_DROP.any(), 1.0),
    (BOUNCE_TEST_REBOUND.any(), 0.09),
    (YOUNGS_MODULUS.any(), 69e9),
    (SHEAR_MODULUS.any(), 26e9),
    (MATERIAL_STRENGTH.any(), 276e6),
    (STRENGTH_ACROSS.any(), 20e6),
    (MATERIAL_DENSITY.any(), 2700.0),
    (ROD_FORCE.any(), 400.0),
    (ROD_AREA.any(), 2e-5),
    (ROD_LENGTH.any(), 0.3),
    (BAR_WIDTH.any(), 0.01),
    (BAR_DEPTH.any(), 0.02),
    (ROUND_DIAMETER.any(), 0.012),
    (TUBE_DIAMETER.any(), 0.02),
    (TUBE_WALL.any(), 0.002),
    (BOX_TUBE_WIDTH.any(), 0.03),
    (BOX_TUBE_DEPTH.any(), 0.03),
    (BOX_TUBE_WALL.any(), 0.002),
    (FLANGE_WIDTH.any(), 0.03),
    (FLANGE_THICKNESS.any(), 0.002),
    (WEB_THICKNESS.any(), 0.002),
    (WEB_DEPTH.any(), 0.03),
    (PLATE_WIDTH.any(), 0.06),
    (PLATE_THICKNESS.any(), 0.0015),
    (PLATE_DISTANCE.any(), 0.011),
    (PAIR_SPACING.any(), 0.08),
    (TWIST_MOMENT.any(), 8.0),
    (BEAM_LOAD.any(), 100.0),
    (BEAM_SPAN.any(), 0.2),
    (END_MOMENT.any(), 5.0),
    (BOLT_DIAMETER.any(), 8e-3),
    (THREAD_PITCH.any(), 1.25e-3),
    (BOLT_COUNT.any(), 4.0),
    (PROOF_STRESS.any(), 580e6),
    (BOLT_STRENGTH.any(), 800e6),
    (BOLT_TORQUE.any(), 25.0),
    (JOINT_LOAD.any(), 2000.0),
    (BATTERY_ENERGY.any(), 3.6e5),
    (DRIVE_EFFICIENCY.any(), 0.5),
    (DRIVING_RESISTANCE.any(), 16.0),
    (DRIVING_SPEED.any(), 1.0),
    (WANTED_RANGE.any(), 3000.0),
    (BARE_MASS.any(), 4.0),
    (BATTERY_SPECIFIC_ENERGY.any(), 4.3e5),
    (DRIVE_SPECIFIC_POWER.any(), 100.0),
    (SCALE_FACTOR.any(), 2.0),
];

const COLLISION: [(AnyId, f64); 3] =
    [(MASS.any(), 6.0), (IMPACT_SPEED.any(), 2.0), (OTHER_MASS.any(), 3.0)];

fn with(changes: &[(AnyId, f64)]) -> heftwise::rules::Values {
    crawler_with(&[ALL, changes].concat())
}

fn near(found: Option<f64>, wanted: f64) {
    let found = found.expect("a number");
    assert!((found - wanted).abs() <= 1e-9 * wanted.abs().max(1e-12), "{found} is not {wanted}");
}

fn says(id: AnyId, part: &str, when: &[(AnyId, f64)], not_when: &[(AnyId, f64)]) {
    let said = cautions(&with(when), id);
    assert!(said.contains(part), "{id} says {said:?}");
    let said = cautions(&with(not_when), id);
    assert!(!said.contains(part), "{id} says {said:?} for nothing");
}

#[test]
fn the_section_described_is_the_one_that_counts() {
    let depth = 0.02;
    let second = 0.01 * depth * depth * depth / 12.0;
    let bar = values(&[(BAR_WIDTH.any(), 0.01), (BAR_DEPTH.any(), depth)]);
    near(bar.si(SECOND_MOMENT), second);
    near(bar.si(SECTION_MODULUS), second / 0.01);
    // A depth alone describes no bar: the round counts, and its own diameter with it.
    let round = values(&[(BAR_DEPTH.any(), depth), (ROUND_DIAMETER.any(), 0.012)]);
    let round_second = std::f64::consts::PI * 0.012_f64.powi(4) / 64.0;
    near(round.si(SECOND_MOMENT), round_second);
    near(round.si(SECTION_MODULUS), round_second / 0.006);
    near(round.si(SECTION_AREA), std::f64::consts::PI * 0.012_f64.powi(2) / 4.0);
}

#[test]
fn without_a_section_any_kind_would_do() {
    let lacking = lacks(&values(&[]), SECTION_MODULUS);
    assert_eq!(lacking.len(), 1);
    for id in [BAR_WIDTH, ROUND_DIAMETER, TUBE_DIAMETER, BOX_TUBE_WIDTH, FLANGE_WIDTH] {
        assert!(lacking[0].contains(&id.any()), "{} in {lacking:?}", id.any());
    }
}

#[test]
fn what_cannot_be_built_gets_words() {
    let thick = values(&[(TUBE_DIAMETER.any(), 0.01), (TUBE_WALL.any(), 0.006)]);
    assert!(words(&thick, TUBE_AREA).contains("walls"));
    let sides =
        [(BOX_TUBE_WIDTH.any(), 0.03), (BOX_TUBE_DEPTH.any(), 0.02), (BOX_TUBE_WALL.any(), 0.002)];
    let round = values(&[&sides[..], &[(BOX_TUBE_CORNER.any(), 0.011)]].concat());
    assert!(words(&round, BOX_TUBE_SECOND_MOMENT).contains("corner"));
    let coarse = values(&[(BOLT_DIAMETER.any(), 0.003), (THREAD_PITCH.any(), 0.0032)]);
    assert!(words(&coarse, THREAD_STRESS_AREA).contains("pitch"));
    let heavy = with(&[(SHOCK_LIMIT.any(), 0.5), (APPROACH_ANGLE.any(), 1.5)]);
    assert!(words(&heavy, SPRING_TRAVEL).contains("spring"));
}

#[test]
fn a_joint_in_round_numbers() {
    // 20 N·m over 0.2 times 10 mm is 10 kN; 4 bolts at 0.15 hold 6 kN, 30 % less at the least.
    let joint = values(&[
        (BOLT_TORQUE.any(), 20.0),
        (BOLT_DIAMETER.any(), 0.010),
        (BOLT_COUNT.any(), 4.0),
        (JOINT_LOAD.any(), 2100.0),
    ]);
    near(joint.si(BOLT_CLAMP), 10_000.0);
    near(joint.si(SLIP_LOAD), 6000.0);
    near(joint.si(LEAST_SLIP_LOAD), 4200.0);
    near(joint.si(SLIP_MARGIN), 2.0);
    // 13 kN at the most, against a proof load of 26 kN; four bolts of 5.25 kN in shear.
    let strong = [
        (PROOF_LOAD.any(), 26_000.0),
        (BOLT_SHEAR_LOAD.any(), 5250.0),
        (BOLT_TORQUE.any(), 20.0),
        (BOLT_DIAMETER.any(), 0.010),
        (BOLT_COUNT.any(), 4.0),
        (JOINT_LOAD.any(), 2100.0),
    ];
    near(values(&strong).si(CLAMP_MARGIN), 2.0);
    near(values(&strong).si(SHEAR_MARGIN), 10.0);
    // A plate held between two slides on two faces.
    let two = [(BOLT_TORQUE.any(), 20.0), (BOLT_DIAMETER.any(), 0.010), (BOLT_COUNT.any(), 4.0)];
    near(values(&[&two[..], &[(JOINT_FACES.any(), 2.0)]].concat()).si(SLIP_LOAD), 12_000.0);
}

#[test]
fn range_in_round_numbers() {
    let run = values(&[
        (BATTERY_ENERGY.any(), 100.0 * 3600.0),
        (DRIVING_RESISTANCE.any(), 18.0),
        (DRIVE_EFFICIENCY.any(), 0.5),
        (DRIVING_SPEED.any(), 2.0),
        (IDLE_POWER.any(), 8.0),
    ]);
    // 18 N over one half, and 8 W over 2 m/s, are 40 J for each metre; 80 W·h carry 7.2 km.
    near(run.si(ENERGY_PER_DISTANCE), 40.0);
    near(run.si(RANGE), 7200.0);
    near(run.si(RANGE_TIME), 3600.0);
}

#[test]
fn shares_of_the_spiral_by_hand() {
    let spiral = with(&[]);
    // 32 J/m over 3 km is 96 kJ; of 4.3e5 J/kg four fifths are usable; the machine is 6.4 kg.
    near(spiral.si(BATTERY_MASS_SHARE), 96_000.0 / (6.4 * 0.8 * 4.3e5));
    // 16 W at the ground, three times over, at 100 W/kg, for 6.4 kg.
    near(spiral.si(DRIVE_MASS_SHARE), 0.075);
    near(with(&[(FRAME_SHARE.any(), 0.2)]).si(GROWTH_SHARE), 96_000.0 / 2_201_600.0 + 0.275);
}

#[test]
fn a_spiral_that_does_not_close_says_so() {
    let open = with(&[(WANTED_RANGE.any(), 3e5)]);
    for id in [GROWTH_FACTOR.any(), CLOSED_MASS.any(), CLOSED_BATTERY_MASS.any()] {
        assert!(words(&open, id).contains("No size of battery"), "{id}");
    }
    // It still says how far would be too far, and that distance is the edge.
    let largest = open.si(LARGEST_RANGE).unwrap();
    let just = |factor| with(&[(WANTED_RANGE.any(), factor * largest)]).si(GROWTH_FACTOR);
    assert!(just(0.999).is_some_and(|factor| factor > 100.0));
    assert_eq!(just(1.001), None);
}

#[test]
fn doubled_in_size() {
    let solid = with(&[]);
    for (id, wanted) in [
        (SCALE_AREA_RATIO, 4.0),
        (SCALE_MASS_RATIO, 8.0),
        (SCALE_MASS_EXPONENT, 3.0),
        (SCALE_PRESSURE_RATIO, 2.0),
        (SCALE_STRESS_RATIO, 2.0),
        (SCALE_SHEET_STRESS_RATIO, 4.0),
        (SCALE_TORQUE_RATIO, 16.0),
        (SCALE_POWER_RATIO, 8.0 * 2.0_f64.sqrt()),
        (SCALE_COOLING_RATIO, 0.5 / 2.0_f64.sqrt()),
    ] {
        near(solid.si(id), wanted);
    }
    near(solid.si(SCALED_CONTACT_AREA), 4.0 * 2.0 * 0.09 * 0.42);
    near(solid.si(SCALED_GROUND_PRESSURE), 2.0 * 6.4 * 9.80665 / (2.0 * 0.09 * 0.42));
    let sheet = with(&[(SHEET_SHARE.any(), 1.0)]);
    near(sheet.si(SCALE_MASS_RATIO), 4.0);
    near(sheet.si(SCALE_MASS_EXPONENT), 2.0);
    near(with(&[(SCALE_FACTOR.any(), 1.0), (SHEET_SHARE.any(), 0.4)]).si(SCALE_MASS_EXPONENT), 2.6);
}

#[test]
fn cautions_of_strength() {
    says(
        BEAM_STRESS.any(),
        "held is assumed",
        &[],
        &[(MOMENT_FACTOR.any(), 0.25), (SAG_FACTOR.any(), 48.0), (BEND_FACTOR.any(), 16.0)],
    );
    says(BEAM_MARGIN.any(), "stays bent", &[(BEAM_LOAD.any(), 1e4)], &[]);
    says(
        BEAM_SAG.any(),
        "short for its depth",
        &[(BEAM_SPAN.any(), 0.19)],
        &[(BEAM_SPAN.any(), 0.21)],
    );
    says(BEAM_SAG.any(), "tenth of its span", &[(BEAM_LOAD.any(), 1e5)], &[]);
    says(SHEAR_SHIFT.any(), "longer than it is deep", &[], &[(BEAM_SPAN.any(), 0.019)]);
    says(ROD_MARGIN.any(), "longer or breaks", &[(ROD_FORCE.any(), 1e4)], &[]);
    says(BOX_TUBE_AREA.any(), "taken as sharp", &[], &[(BOX_TUBE_CORNER.any(), 0.004)]);
    says(BEAM_SAG.any(), "stays bent", &[(BEAM_LOAD.any(), 1e4)], &[]);
    let one = values(&[(ROUND_DIAMETER.any(), 0.012)]);
    for id in [SECTION_AREA.any(), SECOND_MOMENT.any(), SECTION_MODULUS.any()] {
        assert!(cautions(&with(&[]), id).contains("More than one section"));
        assert_eq!(cautions(&one, id), "");
    }
    assert!(cautions(&with(&[]), ACROSS_MARGIN).contains("test bars"));
}

#[test]
fn cautions_of_bolts_and_collisions() {
    says(BOLT_CLAMP.any(), "nut factor is assumed", &[], &[(NUT_FACTOR.any(), 0.15)]);
    assert!(cautions(&with(&[]), TIGHTENING_TORQUE).contains("maker's torque table comes first"));
    says(SLIP_LOAD.any(), "friction in the joint is assumed", &[], &[(JOINT_FRICTION.any(), 0.3)]);
    says(CLAMP_MARGIN.any(), "stretches the bolt for good", &[(BOLT_TORQUE.any(), 40.0)], &[]);
    says(SLIP_MARGIN.any(), "may slip", &[(JOINT_LOAD.any(), 1e5)], &[]);
    says(EXCHANGED_IMPULSE.any(), "no collision", &[(OTHER_SPEED.any(), 4.0)], &[]);
    says(CLOSING_SPEED.any(), "no collision", &[(OTHER_SPEED.any(), 4.0)], &[]);
    near(with(&[(OTHER_SPEED.any(), 4.0)]).si(EXCHANGED_IMPULSE), 0.0);
    assert!(cautions(&values(&COLLISION), SPEED_AFTER).contains("bounce is assumed"));
    let bounce = [&COLLISION[..], &[(RESTITUTION.any(), 0.4)]].concat();
    assert_eq!(cautions(&values(&bounce), SPEED_AFTER), "");
    says(BOLT_SHEAR_LOAD.any(), "10.9", &[], &[(SHEAR_FACTOR.any(), 0.5)]);
    says(BUMPER_TRAVEL.any(), "pulse shape is assumed", &[], &[(PULSE_FACTOR.any(), 2.0)]);
    says(RANGE.any(), "80 %", &[], &[(USABLE_SHARE.any(), 0.7)]);
    says(GROWTH_FACTOR.any(), "true growth is more", &[], &[(FRAME_SHARE.any(), 0.2)]);
}

/// A limit of a drop worked out and put back: the spring found keeps the peak at the shock limit.
#[test]
fn the_spring_found_keeps_to_the_limit() {
    let needed = with(&[(APPROACH_ANGLE.any(), std::f64::consts::FRAC_PI_2)]);
    let given = [
        (APPROACH_ANGLE.any(), std::f64::consts::FRAC_PI_2),
        (SUPPORT_RATE.any(), needed.si(SPRING_FOR_LIMIT).unwrap()),
        (STOP_DISTANCE.any(), needed.si(SPRING_TRAVEL).unwrap()),
    ];
    let landed = with(&given);
    near(landed.si(SUPPORT_PEAK_G), 50.0);
    near(landed.si(SUPPORT_PEAK_SAG), needed.si(SPRING_TRAVEL).unwrap());
    near(landed.si(SPRING_PEAK_FORCE), landed.si(SUPPORT_PEAK_FORCE).unwrap());
    let bumper = with(&[(STOP_DISTANCE.any(), needed.si(BUMPER_TRAVEL).unwrap())]);
    near(bumper.si(PEAK_DECELERATION_G), 50.0);
}
