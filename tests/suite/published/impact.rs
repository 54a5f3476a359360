//! Forces of stops and drops.

use heftwise::quantity::catalogue::{impact::*, machine::*};

use super::unit::*;
use super::{Case, Expect::Found, check, read, recalled};

const CP_8_2: &str = "OpenStax, College Physics 2e, section 8.2 Impulse, problems (module m42159)";
const CP_2_5: &str =
    "OpenStax, College Physics 2e, section 2.5, problems and Example 2.12 (module m42099)";
const HIGHWAY_CODE: &str = "UK Highway Code, typical stopping distances";

pub(crate) const BY_TIME: &[Case] = &[
    read(
        "impulse-racquet-serve",
        0.01,
        &[(MASS.any(), 0.057), (IMPACT_SPEED.any(), 58.0), (STOP_TIME.any(), 5.0 * MS)],
        &[Found(MEAN_IMPACT_FORCE.any(), 660.0)],
        "OpenStax, University Physics Volume 1, section 9.2, Example 9.5 (module m58319)",
        "Printed to two figures; 661.2 N. Getting up to speed takes what stopping takes.",
    ),
    read(
        "impulse-hand-slap",
        0.002,
        &[(MASS.any(), 1.50), (IMPACT_SPEED.any(), 4.00), (STOP_TIME.any(), 2.50 * MS)],
        &[Found(MEAN_IMPACT_FORCE.any(), 2400.0)],
        CP_8_2,
        "Printed.",
    ),
    read(
        "impulse-belt-and-bag",
        0.002,
        &[
            (MASS.any(), 87.8),
            (GRAVITY.any(), 9.8),
            (IMPACT_SPEED.any(), 27.0),
            (STOP_TIME.any(), 2.5),
        ],
        &[Found(WEIGHT.any(), 860.0), Found(MEAN_IMPACT_FORCE.any(), 948.0)],
        "OpenStax, University Physics Volume 1, section 9.2, Example 9.2 (module m58319)",
        "Printed mass in, given weight out.",
    ),
    read(
        "impulse-bumper-car-rebound",
        0.002,
        &[(MASS.any(), 200.0), (IMPACT_SPEED.any(), 2.80), (RESTITUTION.any(), 1.20 / 2.80)],
        &[Found(IMPULSE.any(), 4000.0 * 0.200), Found(REBOUND_SPEED.any(), 1.20)],
        CP_8_2,
        "Printed speeds in, given impulse out.",
    ),
    read(
        "impulse-bumper-car-speed-after",
        0.002,
        &[
            (MASS.any(), 200.0),
            (IMPACT_SPEED.any(), 2.80),
            (EXCHANGED_IMPULSE.any(), 4000.0 * 0.200),
        ],
        &[Found(SPEED_AFTER.any(), -1.20)],
        CP_8_2,
        "Printed. The impulse is larger than the momentum, so the car leaves backwards.",
    ),
    read(
        "deceleration-rocket-sled",
        0.002,
        &[(IMPACT_SPEED.any(), 282.0), (STOP_TIME.any(), 1.40)],
        &[Found(DECELERATION.any(), 201.43), Found(DECELERATION_G.any(), 20.55)],
        "OpenStax, College Physics, section 2.4, problem 17 on Stapp's rocket sled; a worked solution read at engineering-math.org",
        "Printed. The book divides by 9.80 m/s², the yardstick here is 9.80665.",
    ),
    recalled(
        "momentum-football-player",
        0.002,
        &[(MASS.any(), 110.0), (IMPACT_SPEED.any(), 8.00)],
        &[Found(MOMENTUM.any(), 880.0)],
        "OpenStax, College Physics 2e, section 8.1, Example 8.1, from memory",
        "Printed.",
    ),
    read(
        "impulse-phone-drop",
        0.01,
        &[
            (MASS.any(), 0.172),
            (DROP_HEIGHT.any(), 1.5),
            (GRAVITY.any(), 9.8),
            (STOP_TIME.any(), 26.0 * MS),
        ],
        &[Found(STOPPING_FORCE.any(), 36.0)],
        "OpenStax, University Physics Volume 1, section 9.2, Example 9.4 (module m58319)",
        "Printed. The book leaves the weight out.",
    ),
    read(
        "impulse-train-car-brake-time",
        0.002,
        &[(MASS.any(), 15000.0), (IMPACT_SPEED.any(), 5.4), (STOP_TIME.any(), 54.0)],
        &[Found(MEAN_IMPACT_FORCE.any(), 1500.0)],
        "OpenStax, College Physics 2e, section 8.1, problem (module m42156)",
        "Printed time in, given force out.",
    ),
];

pub(crate) const BY_DISTANCE: &[Case] = &[
    read(
        "stop-distance-dashboard",
        0.002,
        &[(MASS.any(), 75.0), (IMPACT_SPEED.any(), 20.0), (STOP_DISTANCE.any(), 1.0 * CM)],
        &[Found(MEAN_IMPACT_FORCE.any(), 1.50e6)],
        CP_8_2,
        "Printed.",
    ),
    read(
        "stop-distance-airbag",
        0.002,
        &[(MASS.any(), 75.0), (IMPACT_SPEED.any(), 20.0), (STOP_DISTANCE.any(), 15.0 * CM)],
        &[Found(MEAN_IMPACT_FORCE.any(), 1.00e5)],
        CP_8_2,
        "Printed.",
    ),
    read(
        "stop-distance-car-bumper",
        0.01,
        &[(MASS.any(), 900.0), (IMPACT_SPEED.any(), 1.12), (STOP_DISTANCE.any(), 0.200)],
        &[Found(MEAN_IMPACT_FORCE.any(), 2.8e3)],
        "OpenStax, College Physics 2e, section 7.2, problem on the bumper (module m42147)",
        "Printed to two figures; 2822 N.",
    ),
    read(
        "stop-distance-padded-post",
        0.002,
        &[(IMPACT_SPEED.any(), 7.50), (STOP_DISTANCE.any(), 0.350)],
        &[Found(DECELERATION.any(), 80.4), Found(STOP_TIME.any(), 9.33e-2)],
        CP_2_5,
        "Printed.",
    ),
    read(
        "stop-distance-stiff-landing",
        0.003,
        &[
            (MASS.any(), 60.0),
            (DROP_HEIGHT.any(), 3.00),
            (GRAVITY.any(), 9.80),
            (STOP_DISTANCE.any(), 0.5 * CM),
            (APPROACH_ANGLE.any(), DOWN),
        ],
        &[Found(MEAN_IMPACT_FORCE.any(), 3.53e5)],
        "OpenStax, College Physics 2e, section 7.3, Example 7.6 (module m42148)",
        "Printed. The book drops the fall during the stop; with it, as here, 3.534e5 N.",
    ),
    recalled(
        "weight-share-skier-on-25-degrees",
        0.002,
        &[(MASS.any(), 60.0), (GRAVITY.any(), 9.80), (APPROACH_ANGLE.any(), 25.0 * DEG)],
        &[Found(WEIGHT_SHARE.any(), 60.0 * 4.14)],
        "OpenStax, College Physics 2e, section 4.5, skier on a slope of 25°, from memory",
        "Printed as the acceleration without friction, 4.14 m/s²: it holds up that part of the weight.",
    ),
    recalled(
        "pressure-nail-tip",
        0.003,
        &[
            (PEAK_IMPACT_FORCE.any(), 2.36e3),
            (IMPACT_PATCH.any(), std::f64::consts::FRAC_PI_4 * 1e-6),
        ],
        &[Found(IMPACT_PRESSURE.any(), 3.00e9)],
        "OpenStax, College Physics 2e, section 11.3, problem on a nail's tip of 1.00 mm, from memory",
        "Printed force in, given pressure out.",
    ),
    read(
        "stop-distance-ship-pier",
        0.002,
        &[(MASS.any(), 1.00e7), (IMPACT_SPEED.any(), 0.750), (STOP_DISTANCE.any(), 6.00)],
        &[Found(MEAN_IMPACT_FORCE.any(), 4.69e5)],
        CP_8_2,
        "Printed.",
    ),
    read(
        "stop-distance-squirrel",
        0.025,
        &[(DROP_HEIGHT.any(), 3.0), (GRAVITY.any(), 9.80), (STOP_DISTANCE.any(), 2.0 * CM)],
        &[Found(IMPACT_SPEED.any(), 7.7), Found(DECELERATION.any(), 1500.0)],
        CP_2_5,
        "Printed; 7.668 m/s and 1470 m/s² unrounded.",
    ),
];

/// Braking parts of stopping distances: the printed distance in, the deceleration or force out.
pub(crate) const BRAKING: &[Case] = &[
    read(
        "stop-dry-and-wet-concrete",
        0.002,
        &[(IMPACT_SPEED.any(), 30.0), (STOP_DISTANCE.any(), 64.3)],
        &[Found(DECELERATION.any(), 7.00)],
        CP_2_5,
        "Printed, dry.",
    ),
    read(
        "stop-wet-concrete",
        0.002,
        &[(IMPACT_SPEED.any(), 30.0), (STOP_DISTANCE.any(), 90.0)],
        &[Found(DECELERATION.any(), 5.00)],
        CP_2_5,
        "Printed.",
    ),
    read(
        "stop-highway-code-70mph",
        0.008,
        &[(IMPACT_SPEED.any(), 70.0 * MPH), (STOP_DISTANCE.any(), 75.0)],
        &[Found(DECELERATION.any(), 6.57)],
        HIGHWAY_CODE,
        "Distance printed; the one deceleration that fits the whole table is worked out.",
    ),
    read(
        "stop-highway-code-30mph",
        0.025,
        &[(IMPACT_SPEED.any(), 30.0 * MPH), (STOP_DISTANCE.any(), 14.0)],
        &[Found(DECELERATION.any(), 6.57)],
        HIGHWAY_CODE,
        "Distance printed to whole metres.",
    ),
    recalled(
        "stop-aashto-60mph",
        0.005,
        &[(IMPACT_SPEED.any(), 60.0 * MPH), (STOP_DISTANCE.any(), 345.5 * FOOT)],
        &[Found(DECELERATION.any(), 11.2 * FOOT)],
        "AASHTO Green Book, stopping sight distance table, from memory",
        "The table uses rounded constants.",
    ),
    read(
        "stop-baseball-slide",
        0.002,
        &[(MASS.any(), 65.0), (IMPACT_SPEED.any(), 6.00), (STOP_DISTANCE.any(), 2.60)],
        &[Found(MEAN_IMPACT_FORCE.any(), 450.0)],
        "OpenStax, College Physics 2e, section 7.5, Example 7.9 (module m42150)",
        "Printed distance in, given friction out.",
    ),
];

/// The rod's spring rate `E A / L` and the stress `F / A` are the source's own steps.
const ROD_AREA: f64 = 0.75 * INCH * INCH;
const ROD_RATE: f64 = 30e6 * PSI * ROD_AREA / (48.0 * INCH);

/// Straight springs: the printed deflection in, the peak force and the given stiffness out.
pub(crate) const SPRINGS: &[Case] = &[
    read(
        "spring-bumper-train",
        0.002,
        &[(MASS.any(), 5.00e5), (IMPACT_SPEED.any(), 0.500), (STOP_DISTANCE.any(), 0.400)],
        &[Found(SPRING_RATE.any(), 7.81e5), Found(SPRING_PEAK_FORCE.any(), 3.125e5)],
        "OpenStax, College Physics 2e, section 7.4, problem on the subway buffer (module m42149)",
        "Stiffness printed; the peak is worked out, exactly twice the mean over the distance.",
    ),
    read(
        "drop-on-spring-instrument-package",
        0.005,
        &[
            (MASS.any(), 10.0 * LBF / GN),
            (DROP_HEIGHT.any(), 36.0 * INCH),
            (STOP_DISTANCE.any(), 4.0 * INCH),
            (APPROACH_ANGLE.any(), DOWN),
        ],
        &[Found(SPRING_PEAK_FORCE.any(), 200.0 * LBF), Found(SPRING_RATE.any(), 50.0 * LBF / INCH)],
        "A. K. Chopra, Dynamics of Structures, chapter 2, package dropped 3 ft",
        "Amplitude and speed printed; total deflection and force worked out.",
    ),
    read(
        "drop-vase-in-foam",
        0.002,
        &[
            (MASS.any(), 3.0),
            (DROP_HEIGHT.any(), 1.5),
            (GRAVITY.any(), 9.81),
            (STOP_DISTANCE.any(), 0.1675),
            (APPROACH_ANGLE.any(), DOWN),
        ],
        &[Found(SPRING_PEAK_FORCE.any(), 586.0), Found(SPRING_RATE.any(), 3500.0)],
        "Gray, Costanzo and Plesha, Engineering Mechanics: Dynamics 2e, Problem 3.34",
        "Statement read; answer worked out.",
    ),
    read(
        "drop-collar-on-rod",
        0.003,
        &[
            (WEIGHT.any(), 150.0 * LBF),
            (MASS.any(), 150.0 * LBF / GN),
            (DROP_HEIGHT.any(), 2.0 * INCH),
            (STOP_DISTANCE.any(), 0.0361 * INCH),
            (APPROACH_ANGLE.any(), DOWN),
        ],
        &[
            Found(SPRING_PEAK_FORCE.any(), 22600.0 * PSI * ROD_AREA),
            Found(SPRING_RATE.any(), ROD_RATE),
        ],
        "Gere and Timoshenko, Mechanics of Materials, Problem 2.8-1 with solution",
        "Printed deflection in, printed stress times the rod's area and its stiffness out.",
    ),
    read(
        "drop-suddenly-applied-load",
        0.001,
        &[
            (WEIGHT.any(), 100.0),
            (MASS.any(), 100.0 / GN),
            (DROP_HEIGHT.any(), 0.0),
            (STOP_DISTANCE.any(), 200.0 / 10000.0),
            (APPROACH_ANGLE.any(), DOWN),
        ],
        &[Found(SPRING_PEAK_FORCE.any(), 200.0), Found(SPRING_RATE.any(), 10000.0)],
        "J. E. Akin, Rice University, Impact Load Factors for Static Analysis",
        "Factor 2 stated; the 100 N are worked out.",
    ),
];

#[test]
fn force_from_momentum_over_time() {
    check(BY_TIME);
}

#[test]
fn force_from_energy_over_distance() {
    check(BY_DISTANCE);
}

#[test]
fn braking_distance() {
    check(BRAKING);
}

#[test]
fn springs() {
    check(SPRINGS);
}
