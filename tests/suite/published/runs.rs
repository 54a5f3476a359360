//! Running up to speed, and stopping.

use heftwise::quantity::catalogue::{drive::GEAR_RATIO, ground::*, machine::*, motion::*};

use super::unit::*;
use super::{Case, Expect::Found, check, read, recalled};

const UP_7_4: &str = "OpenStax, University Physics Volume 1, section 7.4 Power (module m58310)";
const UP_5_3: &str = "OpenStax, University Physics Volume 1, section 5.3 (module m58297)";
const UP_3_4: &str =
    "OpenStax, University Physics Volume 1, section 3.4, worked example (module m58285)";

pub(crate) const RUNS: &[Case] = &[
    read(
        "constant-power-850kg-15ms",
        0.003,
        &[(MASS.any(), 850.0), (DRIVE_POWER.any(), 40.0 * 746.0), (TARGET_SPEED.any(), 15.0)],
        &[Found(POWER_TIME.any(), 3.20)],
        UP_7_4,
        "Printed; a horsepower of 746 W, as the book says.",
    ),
    read(
        "power-car-40hp-level",
        0.002,
        &[
            (MASS.any(), 850.0),
            (GRAVITY.any(), 9.80),
            (DRIVE_POWER.any(), 29840.0),
            (TARGET_SPEED.any(), 15.0),
            (STEADY_RESISTANCE.any(), 0.0),
        ],
        &[Found(POWER_TIME.any(), 3.20), Found(RUN_UP_TIME.any(), 3.20)],
        "OpenStax, College Physics 2e, section 7.7 Power, problem (module m42152)",
        "Printed. The integration without losses must give the same.",
    ),
    read(
        "power-car-40hp",
        0.002,
        &[
            (MASS.any(), 850.0),
            (GRAVITY.any(), 9.80),
            (DRIVE_POWER.any(), 29840.0),
            (TARGET_SPEED.any(), 15.0),
            (RISE.any(), 3.00),
        ],
        &[Found(POWER_TIME.any(), 4.04)],
        "OpenStax, College Physics 2e, section 7.7 Power, problem (module m42152)",
        "Printed. With a rise of 3 m.",
    ),
    read(
        "average-power-dragster",
        0.003,
        &[
            (MASS.any(), 500.0),
            (TARGET_SPEED.any(), 110.0),
            (STEADY_RESISTANCE.any(), 1200.0),
            (RUN_UP_DISTANCE.any(), 400.0),
            (RUN_UP_TIME.any(), 7.30),
        ],
        &[Found(RUN_UP_POWER.any(), 4.801e5)],
        UP_7_4,
        "Worked from a published statement.",
    ),
    read(
        "constant-power-distance-850kg",
        0.002,
        &[
            (MASS.any(), 850.0),
            (DRIVE_POWER.any(), 29840.0),
            (TARGET_SPEED.any(), 15.0),
            (STEADY_RESISTANCE.any(), 0.0),
        ],
        &[
            Found(POWER_TIME.any(), 3.2046),
            Found(POWER_DISTANCE.any(), 32.046),
            Found(RUN_UP_DISTANCE.any(), 32.046),
        ],
        UP_7_4,
        "Worked from the printed formula; the integration must give the same.",
    ),
    read(
        "constant-power-distance-6kg",
        0.002,
        &[(MASS.any(), 6.4), (DRIVE_POWER.any(), 250.0), (TARGET_SPEED.any(), 12.5)],
        &[Found(POWER_TIME.any(), 2.0), Found(POWER_DISTANCE.any(), 16.667)],
        UP_7_4,
        "Worked from the printed formula.",
    ),
];

pub(crate) const STOPS: &[Case] = &[
    read(
        "impulse-train-car-rolls-out",
        0.002,
        &[(MASS.any(), 15000.0), (DRIVING_SPEED.any(), 5.4), (STEADY_RESISTANCE.any(), 1500.0)],
        &[Found(COAST_DOWN_TIME.any(), 54.0)],
        "OpenStax, College Physics 2e, section 8.1, problem (module m42156)",
        "Printed.",
    ),
    read(
        "braking-force-1000kg",
        0.003,
        &[
            (MASS.any(), 1000.0),
            (DRIVING_SPEED.any(), 90.0 * KMH),
            (BRAKING_DECELERATION.any(), 7.80),
        ],
        &[Found(BRAKING_FORCE.any(), 7.80e3), Found(BRAKING_DISTANCE.any(), 40.0)],
        UP_5_3,
        "Printed deceleration in, given distance out.",
    ),
    read(
        "stopping-dry-no-reaction",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.00),
            (REACTION_TIME.any(), 0.0),
        ],
        &[Found(STOPPING_DISTANCE.any(), 64.3)],
        UP_3_4,
        "Printed, dry concrete.",
    ),
    read(
        "stopping-dry-reaction",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.00),
            (REACTION_TIME.any(), 0.500),
        ],
        &[Found(STOPPING_DISTANCE.any(), 79.3)],
        UP_3_4,
        "Printed.",
    ),
    read(
        "stop-dry-and-wet-concrete",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.00),
            (REACTION_TIME.any(), 0.500),
        ],
        &[
            Found(BRAKING_DISTANCE.any(), 64.3),
            Found(REACTION_DISTANCE.any(), 15.0),
            Found(STOPPING_DISTANCE.any(), 79.3),
        ],
        "OpenStax, College Physics 2e, section 2.5, Example 2.12 (module m42099)",
        "Printed, dry.",
    ),
    read(
        "stop-wet-concrete",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 5.00),
            (REACTION_TIME.any(), 0.500),
        ],
        &[
            Found(BRAKING_DISTANCE.any(), 90.0),
            Found(REACTION_DISTANCE.any(), 15.0),
            Found(STOPPING_DISTANCE.any(), 105.0),
        ],
        "OpenStax, College Physics 2e, section 2.5, Example 2.12 (module m42099)",
        "Printed, wet.",
    ),
    read(
        "stop-highway-code-70mph",
        0.008,
        &[
            (DRIVING_SPEED.any(), 70.0 * MPH),
            (BRAKING_DECELERATION.any(), 6.57),
            (REACTION_TIME.any(), 0.67),
        ],
        &[
            Found(REACTION_DISTANCE.any(), 21.0),
            Found(BRAKING_DISTANCE.any(), 75.0),
            Found(STOPPING_DISTANCE.any(), 96.0),
        ],
        "UK Highway Code, typical stopping distances; read at ptagarages.co.uk and howardsgroup.co.uk",
        "Distances printed; the one deceleration that fits the whole table is worked out.",
    ),
    read(
        "stop-highway-code-30mph",
        0.025,
        &[
            (DRIVING_SPEED.any(), 30.0 * MPH),
            (BRAKING_DECELERATION.any(), 6.57),
            (REACTION_TIME.any(), 0.67),
        ],
        &[
            Found(REACTION_DISTANCE.any(), 9.0),
            Found(BRAKING_DISTANCE.any(), 14.0),
            Found(STOPPING_DISTANCE.any(), 23.0),
        ],
        "UK Highway Code, typical stopping distances; read at ptagarages.co.uk",
        "Distances printed; the one deceleration that fits the whole table is worked out.",
    ),
    recalled(
        "stop-aashto-60mph",
        0.005,
        &[
            (DRIVING_SPEED.any(), 60.0 * MPH),
            (BRAKING_DECELERATION.any(), 11.2 * FOOT),
            (REACTION_TIME.any(), 2.5),
        ],
        &[
            Found(REACTION_DISTANCE.any(), 220.5 * FOOT),
            Found(BRAKING_DISTANCE.any(), 345.5 * FOOT),
            Found(STOPPING_DISTANCE.any(), 566.0 * FOOT),
        ],
        "AASHTO Green Book, stopping sight distance table (from memory)",
        "Printed with rounded constants; exact kinematics gives 565.7 ft.",
    ),
    read(
        "stop-baseball-slide",
        0.002,
        &[
            (MASS.any(), 65.0),
            (DRIVING_SPEED.any(), 6.00),
            (STEADY_RESISTANCE.any(), 450.0),
            (BRAKING_DECELERATION.any(), 450.0 / 65.0),
        ],
        &[Found(BRAKING_DISTANCE.any(), 2.60), Found(COAST_DOWN_DISTANCE.any(), 2.60)],
        "OpenStax, College Physics 2e, section 7.5, Example 7.9 (module m42150)",
        "Printed; 450 N of friction on 65.0 kg.",
    ),
    read(
        "skid-stop-mu05",
        0.002,
        &[
            (DRIVING_SPEED.any(), 100.0 * KMH),
            (GRIP_COEFFICIENT.any(), 0.500),
            (GRAVITY.any(), 9.80),
        ],
        &[Found(BRAKING_DISTANCE.any(), 78.7)],
        "OpenStax, University Physics Volume 1, chapter 6, challenge problem (module m58306)",
        "Printed. Mass cancels.",
    ),
];

pub(crate) const ROTATING: &[Case] = &[
    read(
        "rolling-solid-cylinder",
        0.002,
        &[(MASS.any(), 1.0), (DRIVE_RADIUS.any(), 1.0), (WHEEL_INERTIA.any(), 0.5)],
        &[Found(MASS_FACTOR.any(), 2.0 * 9.80 * 2.00 / (5.11 * 5.11))],
        "OpenStax, College Physics 2e, section 10.4, Example 10.10 (module m42180)",
        "Printed speed; the mass factor it takes is found by the rules.",
    ),
    read(
        "rolling-rover-wheel-mars",
        0.002,
        &[(MASS.any(), 1.0), (DRIVE_RADIUS.any(), 1.0), (WHEEL_INERTIA.any(), 1.0)],
        &[
            Found(ROTATING_MASS.any(), 1.0),
            Found(MASS_FACTOR.any(), 2.0 * 3.71 * 25.0 / (9.63 * 9.63)),
        ],
        "OpenStax, University Physics Volume 1, section 11.1, Example 11.3 (module m58335)",
        "Printed speed; the mass factor it takes is found by the rules. A thin rim doubles the mass.",
    ),
    read(
        "rolling-stop-a-roller",
        0.002,
        &[
            (MASS.any(), 40.0),
            (DRIVE_RADIUS.any(), 1.0),
            (WHEEL_INERTIA.any(), 20.0),
            (TARGET_SPEED.any(), 6.0),
            (DRIVE_POWER.any(), 1080.0),
        ],
        &[Found(EQUIVALENT_MASS.any(), 60.0), Found(POWER_TIME.any(), 1.0)],
        "OpenStax, University Physics Volume 1, section 11.1, problem (module m58335)",
        "Printed 1080 J: as a power it takes one second.",
    ),
    recalled(
        "rolling-mass-factor-wong",
        0.001,
        &[(GEAR_RATIO.any(), 10.0)],
        &[Found(CAR_MASS_FACTOR.any(), 1.29)],
        "J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory)",
        "Empirical, for cars.",
    ),
];

pub(crate) const LOAD_SHIFT_DRIVE: &[Case] = &[recalled(
    "load-shift-pickup-uphill-force",
    0.001,
    &[
        (MASS.any(), 3220.0 * LBF / (32.2 * FOOT)),
        (GRAVITY.any(), 32.2 * FOOT),
        (SLOPE.any(), 0.099_668_652_491_162_03),
        (ROLLING_COEFFICIENT.any(), 0.0),
        (WANTED_ACCELERATION.any(), 4.84 * FOOT),
        (DRIVING_SPEED.any(), 0.0),
    ],
    &[Found(THRUST_NEEDED.any(), 804.0 * LBF)],
    "J. L. Meriam and L. G. Kraige, Engineering Mechanics: Dynamics, Sample Problem 6/1 (from memory)",
    "Printed. 44 ft/s in 200 ft from rest on a grade of 1 in 10.",
)];

#[test]
fn runs() {
    check(RUNS);
}

#[test]
fn stops() {
    check(STOPS);
}

#[test]
fn rotating_parts() {
    check(ROTATING);
    check(LOAD_SHIFT_DRIVE);
}

/// Spinning parts speed up, and are not lifted.
///
/// OpenStax, University Physics Volume 1, section 7.4, problem on an 850-kg car: 3.20 s on the
/// level and 4.04 s with a rise of 3.00 m; parts that seem to add 10 % cost a tenth of the first.
#[test]
fn spinning_parts_are_not_lifted() {
    let given = [
        (MASS.any(), 850.0),
        (EQUIVALENT_MASS.any(), 935.0),
        (GRAVITY.any(), 9.80),
        (TARGET_SPEED.any(), 15.0),
        (RISE.any(), 3.0),
        (DRIVE_POWER.any(), 29_840.0),
    ];
    let found = super::by_rules(&given, POWER_TIME.any()).unwrap();
    assert!((found - (4.04 + 0.320)).abs() < 0.005 * 4.36, "{found}");
}
