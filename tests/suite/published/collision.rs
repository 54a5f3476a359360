//! Collisions of two bodies, drops onto springs, tested parts and bumpers.

use heftwise::physics::impact;
use heftwise::quantity::Measure;
use heftwise::quantity::catalogue::{impact::*, machine::*, structure::*};

use super::unit::*;
use super::{
    Case,
    Expect::{By, Found},
    by_rules, check, of, read, recalled,
};

const CP_8_5: &str = "OpenStax, College Physics 2e, section 8.5 (module m42164)";

/// More comes out than went in: a spring in one of the carts lets go.
const CARTS_BOUNCE: f64 = (3.70 + 4.00) / 2.50;

fn carts_impulse() -> heftwise::quantity::Momentum {
    impact::exchanged_impulse(of(0.350), of(0.500), of(2.50), of(CARTS_BOUNCE))
}

const COLLISIONS: &[Case] = &[
    read(
        "collision-puck-goalie",
        0.002,
        &[
            (MASS.any(), 0.150),
            (IMPACT_SPEED.any(), 35.0),
            (OTHER_MASS.any(), 70.0),
            (RESTITUTION.any(), 0.0),
        ],
        &[
            Found(COMMON_SPEED.any(), 7.48e-2),
            Found(SPEED_AFTER.any(), 7.48e-2),
            Found(OTHER_SPEED_AFTER.any(), 7.48e-2),
            Found(COLLISION_ENERGY_LOST.any(), 91.7),
        ],
        CP_8_5,
        "Example 8.5, printed.",
    ),
    read(
        "collision-elastic-light-on-heavy",
        0.002,
        &[
            (MASS.any(), 0.500),
            (IMPACT_SPEED.any(), 4.00),
            (OTHER_MASS.any(), 3.50),
            (RESTITUTION.any(), 1.0),
        ],
        &[
            Found(SPEED_AFTER.any(), -3.00),
            Found(OTHER_SPEED_AFTER.any(), 1.00),
            Found(CLOSING_SPEED.any(), 4.00),
            Found(EXCHANGED_IMPULSE.any(), 3.50 * 1.00),
        ],
        "OpenStax, College Physics 2e, section 8.4, Example 8.4 (module m42163)",
        "Printed.",
    ),
    read(
        "collision-car-into-truck",
        0.004,
        // The printed speeds and a car that stands afterwards: bounce m₁/m₂ = 0.4.
        &[
            (MASS.any(), 1200.0),
            (IMPACT_SPEED.any(), 27.5),
            (OTHER_MASS.any(), 3000.0),
            (RESTITUTION.any(), 1200.0 / 3000.0),
        ],
        &[
            Found(OTHER_SPEED_AFTER.any(), 11.0),
            // What slides to rest in 10 m at a grip of 0.62 came in as fast as a fall of 6.2 m.
            By(
                "speed from the slide",
                || {
                    by_rules(&[(DROP_HEIGHT.any(), 6.2), (GRAVITY.any(), 9.81)], IMPACT_SPEED.any())
                        .unwrap()
                },
                11.0,
            ),
        ],
        "OpenStax, University Physics Volume 1, section 9.4, Example 9.13 (module m58321)",
        "Printed; 11.03 and 27.57 m/s unrounded. The book's last line names the car's speed after the truck: a misprint, the right speeds are tested.",
    ),
    read(
        "collision-hidden-spring-carts",
        0.002,
        &[],
        &[
            By(
                "speed of the first cart",
                || impact::speed_held_back(of(0.350), of(2.00), carts_impulse()).si(),
                -4.00,
            ),
            By(
                "speed of the second cart",
                || impact::speed_pushed_on(of(0.500), of(-0.500), carts_impulse()).si(),
                3.70,
            ),
            By(
                "energy gained",
                || -impact::energy_lost(of(2.50), carts_impulse(), of(CARTS_BOUNCE)).si(),
                5.46,
            ),
        ],
        CP_8_5,
        "Example 8.6, printed. A bounce above 1 cannot be entered, so the functions are asked.",
    ),
    read(
        "collision-train-coupling",
        0.003,
        &[
            (MASS.any(), 1.50e5),
            (IMPACT_SPEED.any(), 0.30),
            (OTHER_MASS.any(), 1.10e5),
            (OTHER_SPEED.any(), -0.12),
        ],
        &[Found(COMMON_SPEED.any(), 0.122), Found(SPEED_AFTER.any(), 0.122)],
        "OpenStax, University Physics Volume 1, section 9.3, problem on train cars (module m58320)",
        "Printed.",
    ),
];

const ROD: &[(heftwise::quantity::AnyId, f64)] = &[
    (YOUNGS_MODULUS.any(), 30e6 * PSI),
    (ROD_AREA.any(), 0.75 * INCH * INCH),
    (ROD_LENGTH.any(), 48.0 * INCH),
];

/// The collar on its rod: what the rod's own stiffness makes of a drop of 2 in.
fn collar(id: heftwise::quantity::AnyId) -> f64 {
    let stiffness = by_rules(ROD, ROD_STIFFNESS.any()).unwrap();
    let drop = [
        (WEIGHT.any(), 150.0 * LBF),
        (DROP_HEIGHT.any(), 2.0 * INCH),
        (SUPPORT_RATE.any(), stiffness),
    ];
    by_rules(&drop, id).unwrap()
}

fn collar_stress() -> f64 {
    let force = [(ROD_FORCE.any(), collar(SUPPORT_PEAK_FORCE.any()))];
    by_rules(&[ROD, &force].concat(), ROD_STRESS.any()).unwrap()
}

/// Drops onto an elastic support, the stiffness in and the peak out.
const DROPS: &[Case] = &[
    read(
        "drop-on-spring-instrument-package",
        0.005,
        &[
            (WEIGHT.any(), 10.0 * LBF),
            (SUPPORT_RATE.any(), 50.0 * LBF / INCH),
            (DROP_HEIGHT.any(), 36.0 * INCH),
        ],
        &[
            Found(SUPPORT_SAG.any(), 0.2 * INCH),
            Found(SUPPORT_PEAK_SAG.any(), 4.0 * INCH),
            Found(SUPPORT_PEAK_G.any(), 19.0),
            Found(SUPPORT_PEAK_FORCE.any(), 200.0 * LBF),
        ],
        "A. K. Chopra, Dynamics of Structures, chapter 2, package dropped 3 ft",
        "Sag at rest and amplitude printed; the rest worked out from them.",
    ),
    read(
        "drop-vase-in-foam",
        0.002,
        &[
            (MASS.any(), 3.0),
            (GRAVITY.any(), 9.81),
            (SUPPORT_RATE.any(), 3500.0),
            (DROP_HEIGHT.any(), 1.5),
        ],
        &[Found(SUPPORT_PEAK_SAG.any(), 0.1675), Found(SUPPORT_PEAK_FORCE.any(), 586.0)],
        "Gray, Costanzo and Plesha, Engineering Mechanics: Dynamics 2e, Problem 3.34",
        "Statement read; answer worked out.",
    ),
    read(
        "drop-collar-on-rod",
        0.003,
        &[],
        &[
            By("peak deflection", || collar(SUPPORT_PEAK_SAG.any()), 0.0361 * INCH),
            By("impact factor", || collar(DROP_FACTOR.any()), 113.0),
            By("peak stress", collar_stress, 22600.0 * PSI),
        ],
        "Gere and Timoshenko, Mechanics of Materials, Problem 2.8-1 with solution",
        "Printed.",
    ),
    read(
        "drop-suddenly-applied-load",
        0.001,
        &[(WEIGHT.any(), 100.0), (SUPPORT_RATE.any(), 10000.0), (DROP_HEIGHT.any(), 0.0)],
        &[Found(DROP_FACTOR.any(), 2.0), Found(SUPPORT_PEAK_FORCE.any(), 200.0)],
        "J. E. Akin, Rice University, Impact Load Factors for Static Analysis",
        "Factor 2 stated; the 100 N are worked out.",
    ),
];

/// Shock tests of a datasheet, the bumper for a limit, and loads on mounts.
const TESTED: &[Case] = &[
    // The package again: its peak in, the spring it stands on and its own load out.
    read(
        "spring-for-instrument-package",
        0.005,
        &[
            (MASS.any(), 10.0 * LBF / GN),
            (DROP_HEIGHT.any(), 36.0 * INCH),
            (APPROACH_ANGLE.any(), DOWN),
            (SHOCK_LIMIT.any(), 19.0),
            (MOUNTED_MASS.any(), 10.0 * LBF / GN),
            (PEAK_DECELERATION_G.any(), 19.0),
        ],
        &[
            Found(SPRING_TRAVEL.any(), 4.0 * INCH),
            Found(SPRING_FOR_LIMIT.any(), 50.0 * LBF / INCH),
            Found(MOUNT_LOAD.any(), 190.0 * LBF),
        ],
        "A. K. Chopra, Dynamics of Structures, chapter 2, package dropped 3 ft",
        "Spring and drop given in the source; 190 lbf is the support's 200 less the weight.",
    ),
    read(
        "loose-mount-suddenly-loaded",
        1e-9,
        &[(MOUNT_LOAD.any(), 100.0)],
        &[Found(LOOSE_MOUNT_LOAD.any(), 200.0)],
        "J. E. Akin, Rice University, Impact Load Factors for Static Analysis",
        "Factor 2 stated for a load put on at once.",
    ),
    recalled(
        "pulse-iec-half-sine-30gn-18ms",
        0.02,
        &[(TEST_PULSE_PEAK.any(), 30.0), (TEST_PULSE_TIME.any(), 18.0 * MS)],
        &[Found(TEST_PULSE_SPEED.any(), 3.4)],
        "IEC 60068-2-27 (Test Ea, Shock), Table 1, velocity change, from memory",
        "The table prints one decimal.",
    ),
    recalled(
        "pulse-iec-saw-tooth-30gn-18ms",
        0.025,
        &[
            (TEST_PULSE_PEAK.any(), 30.0),
            (TEST_PULSE_TIME.any(), 18.0 * MS),
            (PULSE_FACTOR.any(), 2.0),
        ],
        &[Found(TEST_PULSE_SPEED.any(), 2.6)],
        "IEC 60068-2-27 (Test Ea, Shock), Table 1, velocity change, from memory",
        "The table prints one decimal.",
    ),
    recalled(
        "pulse-iec-trapezoid-30gn-18ms",
        0.02,
        &[
            (TEST_PULSE_PEAK.any(), 30.0),
            (TEST_PULSE_TIME.any(), 18.0 * MS),
            (PULSE_FACTOR.any(), 1.0 / 0.9),
        ],
        &[Found(TEST_PULSE_SPEED.any(), 4.8)],
        "IEC 60068-2-27 (Test Ea, Shock), Table 1, velocity change, from memory",
        "The table prints one decimal.",
    ),
    recalled(
        "equivalent-drop-jedec-b",
        0.005,
        &[(TEST_PULSE_PEAK.any(), 1500.0), (TEST_PULSE_TIME.any(), 0.5 * MS)],
        &[Found(TEST_PULSE_SPEED.any(), 4.67), Found(TEST_PULSE_DROP.any(), 1.12)],
        "JEDEC JESD22-B104C, table of component test levels, condition B, from memory",
        "No rebound.",
    ),
    read(
        "bumper-for-50-g-from-transit-drop",
        0.025,
        &[
            (MASS.any(), 10.0),
            (DROP_HEIGHT.any(), 1.22),
            (SHOCK_LIMIT.any(), 50.0),
            (PULSE_FACTOR.any(), 1.0),
        ],
        &[Found(BUMPER_TRAVEL.any(), 24e-3), Found(SPRING_TRAVEL.any(), 49e-3)],
        "MIL-STD-810F Method 516.5 Procedure IV, transit drop height",
        "Height read; travel worked out: h/50 for a level stop, twice that for a straight spring.",
    ),
];

#[test]
fn two_bodies() {
    check(COLLISIONS);
}

#[test]
fn drops_onto_springs() {
    check(DROPS);
}

#[test]
fn tested_parts_and_bumpers() {
    check(TESTED);
}
