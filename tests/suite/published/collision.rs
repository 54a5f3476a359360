//! Collisions of two bodies, drops onto springs, tested parts and bumpers.

use heftwise::quantity::catalogue::{
    ground::GRIP_COEFFICIENT, impact::*, machine::*, motion::*, structure::*,
};

use super::unit::*;
use super::{Case, Expect::Found, check, read};

const TRUCK: &str =
    "OpenStax, University Physics Volume 1, section 9.4, Example 9.13 (module m58321)";
const CP_8_5: &str = "OpenStax, College Physics 2e, section 8.5 (module m42164)";

pub(crate) const COLLISIONS: &[Case] = &[
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
        &[Found(OTHER_SPEED_AFTER.any(), 11.0)],
        TRUCK,
        "Printed; 11.03 and 27.57 m/s unrounded. The book's last line names the car's speed after the truck: a misprint, the right speeds are tested.",
    ),
    read(
        "collision-truck-slides-to-rest",
        0.004,
        &[
            (DRIVING_SPEED.any(), 11.03),
            (GRIP_COEFFICIENT.any(), 0.62),
            (SLOPE.any(), 0.0),
            (GRAVITY.any(), 9.81),
        ],
        &[Found(BRAKING_DISTANCE.any(), 10.0)],
        TRUCK,
        "Printed speed, unrounded, in; given skid marks out.",
    ),
    // More comes out than went in, as a spring in one of the carts lets go: 0.350 kg turned from
    // 2.00 to -4.00 m/s gave the other that impulse.
    read(
        "collision-hidden-spring-carts",
        0.002,
        &[
            (MASS.any(), 0.350),
            (IMPACT_SPEED.any(), 2.00),
            (OTHER_MASS.any(), 0.500),
            (OTHER_SPEED.any(), -0.500),
            (EXCHANGED_IMPULSE.any(), 0.350 * (2.00 + 4.00)),
        ],
        &[
            Found(SPEED_AFTER.any(), -4.00),
            Found(OTHER_SPEED_AFTER.any(), 3.70),
            Found(COLLISION_ENERGY_LOST.any(), -5.46),
        ],
        CP_8_5,
        "Example 8.6, printed. A bounce above 1 cannot be entered, so the impulse is given.",
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

/// The collar's rod: its area, and its stiffness `E A / L`.
const ROD: f64 = 0.75 * INCH * INCH;
const RATE: f64 = 30e6 * PSI * ROD / (48.0 * INCH);
const COLLAR: &str = "Gere and Timoshenko, Mechanics of Materials, Problem 2.8-1 with solution";

/// Drops onto an elastic support, the stiffness in and the peak out.
pub(crate) const DROPS: &[Case] = &[
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
        "drop-collar-rod-as-spring",
        0.001,
        &[
            (YOUNGS_MODULUS.any(), 30e6 * PSI),
            (ROD_AREA.any(), ROD),
            (ROD_LENGTH.any(), 48.0 * INCH),
        ],
        &[Found(ROD_STIFFNESS.any(), 468_750.0 * LBF / INCH)],
        COLLAR,
        "Numbers printed, stiffness worked out.",
    ),
    read(
        "drop-collar-on-rod",
        0.003,
        &[(WEIGHT.any(), 150.0 * LBF), (DROP_HEIGHT.any(), 2.0 * INCH), (SUPPORT_RATE.any(), RATE)],
        &[Found(SUPPORT_PEAK_SAG.any(), 0.0361 * INCH), Found(DROP_FACTOR.any(), 113.0)],
        COLLAR,
        "Printed.",
    ),
    read(
        "drop-collar-stress",
        0.003,
        &[(ROD_FORCE.any(), 113.0 * 150.0 * LBF), (ROD_AREA.any(), ROD)],
        &[Found(ROD_STRESS.any(), 22600.0 * PSI)],
        COLLAR,
        "Printed impact factor in, printed stress out.",
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
pub(crate) const TESTED: &[Case] = &[
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
