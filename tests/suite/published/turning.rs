//! Turns, moments of inertia, swinging round and spinning parts.

use heftwise::quantity::catalogue::{
    balance::*, ground::*, machine::*, motion::*, running_gear::*, turning::*,
};

use super::unit::*;
use super::{Case, Expect::Found, by_rules, check, from_parts, read, recalled};

const REV: f64 = std::f64::consts::TAU;
const CP_6_3: &str =
    "OpenStax, College Physics 2e, section 6.3 Centripetal Force, problems (module m42086)";
const UP_10_4: &str = "OpenStax, University Physics Volume 1, section 10.4 (module m58329)";
const UP_10_5: &str = "OpenStax, University Physics Volume 1, section 10.5 (module m58330)";
const BROWSER: &str = "J. K. Moore, BicycleParameters, measured data set Browser (raw periods and computed parameters)";

pub(crate) const CURVES: &[Case] = &[
    read(
        "turn-car-flat-curve",
        0.005,
        &[
            (MASS.any(), 900.0),
            (DRIVING_SPEED.any(), 25.0),
            (TURN_RADIUS.any(), 500.0),
            (GRAVITY.any(), 9.80),
        ],
        &[
            Found(SIDEWAYS_FORCE.any(), 1125.0),
            Found(SIDEWAYS_ACCELERATION.any(), 1.25),
            Found(SIDEWAYS_GRIP.any(), 0.128),
        ],
        "OpenStax, College Physics 2e, Examples 6.2 and 6.4 (modules m42084 and m42086)",
        "Printed. Mass cancels in the grip.",
    ),
    read(
        "turn-bobsled-banked",
        0.003,
        &[
            (TURN_RADIUS.any(), 24.6),
            (GRAVITY.any(), 9.80),
            (BANK_ANGLE.any(), 75.0 * DEG),
            (DRIVING_SPEED.any(), 30.0),
        ],
        &[Found(BANK_SPEED.any(), 30.0), Found(SIDEWAYS_ACCELERATION.any(), 36.6)],
        CP_6_3,
        "Printed radius in, given speed out. No friction used.",
    ),
    read(
        "turn-banked-31deg",
        0.003,
        &[(TURN_RADIUS.any(), 100.0), (BANK_ANGLE.any(), 31.0 * DEG), (GRAVITY.any(), 9.80)],
        &[Found(BANK_SPEED.any(), 24.3)],
        "OpenStax, University Physics Volume 1, section 6.3, Example 6.16 (module m58305)",
        "Printed. One of its lines misprints tan 31° as 0.609.",
    ),
    read(
        "turn-merry-go-round-rider",
        0.003,
        &[
            (MASS.any(), 22.0),
            (GRAVITY.any(), 9.80),
            (SIDEWAYS_ACCELERATION.any(), 40.0 * RPM * 40.0 * RPM * 1.25),
            (SPIN_RATE.any(), 40.0 * RPM),
            (SPIN_RADIUS.any(), 1.25),
        ],
        &[
            Found(SIDEWAYS_FORCE.any(), 483.0),
            Found(SIDEWAYS_GRIP.any(), 2.24),
            Found(RIM_ACCELERATION.any(), 2.24 * 9.80),
        ],
        CP_6_3,
        "Printed.",
    ),
    read(
        "turn-unbanked-too-fast",
        0.003,
        &[(DRIVING_SPEED.any(), 30.0), (TURN_RADIUS.any(), 50.0), (GRAVITY.any(), 9.80)],
        &[Found(SIDEWAYS_GRIP.any(), 1.84)],
        CP_6_3,
        "Printed, as an unreasonable result.",
    ),
    recalled(
        "steer-angle-500ft",
        0.005,
        &[(WHEELBASE.any(), 100.6 * INCH), (TURN_RADIUS.any(), 500.0 * FOOT)],
        &[Found(STEER_ANGLE_NEEDED.any(), 0.96 * DEG)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6, example (from memory)",
        "Small-angle form in the book.",
    ),
    recalled(
        "steer-angle-100ft",
        0.005,
        &[(WHEELBASE.any(), 100.6 * INCH), (TURN_RADIUS.any(), 100.0 * FOOT)],
        &[Found(STEER_ANGLE_NEEDED.any(), 4.8 * DEG)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6, example (from memory)",
        "Small-angle form in the book.",
    ),
    recalled(
        "steer-angle-100ft-back",
        0.005,
        &[(WHEELBASE.any(), 100.6 * INCH), (STEER_ANGLE.any(), 4.8 * DEG)],
        &[Found(TURN_RADIUS.any(), 100.0 * FOOT)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6, example (from memory)",
        "Printed angle in, given radius out.",
    ),
];

/// A rod of 5.56 kg, 30 mm thick and 1.05 m long, across the wire.
const ROD: f64 = 5.56 * (1.05 * 1.05 / 12.0 + 0.015 * 0.015 / 4.0);

pub(crate) const STEERING: &[Case] = &[
    recalled(
        "steer-ratio-sandy",
        0.006,
        &[
            (GRIP_COEFFICIENT.any(), 0.577_35),
            (ROLLING_COEFFICIENT.any(), 0.1),
            (SIDEWAYS_COEFFICIENT.any(), 0.5),
        ],
        &[Found(STEER_RATIO_LIMIT.any(), 1.9)],
        "J. Y. Wong, Theory of Ground Vehicles, chapter 6, steerability of tracked vehicles, sandy terrain of 30 degrees without cohesion",
        "Printed as less than 1.9 (from memory). The friction angle's tangent is the grip.",
    ),
    recalled(
        "steer-ratio-clayey",
        0.006,
        &[
            (GRIP_COEFFICIENT.any(), 3.45 / 6.9),
            (ROLLING_COEFFICIENT.any(), 0.1),
            (SIDEWAYS_COEFFICIENT.any(), 0.4),
        ],
        &[Found(STEER_RATIO_LIMIT.any(), 2.0)],
        "J. Y. Wong, Theory of Ground Vehicles, chapter 6, steerability of tracked vehicles, clay of 3.45 kPa under 6.9 kPa",
        "Printed as less than 2 (from memory). Cohesion over pressure is the grip.",
    ),
    recalled(
        "steer-ratio-m113",
        0.001,
        &[(CONTACT_LENGTH.any(), 105.0 * INCH), (GAUGE.any(), 85.0 * INCH)],
        &[Found(STEER_RATIO.any(), 1.235)],
        "R. P. Hunnicutt, Bradley: A History of American Fighting and Support Vehicles, M113 data sheet, as copied at afvdatabase.com",
        "Contact length read, tread of 85 in from memory; their quotient worked for this check.",
    ),
];

pub(crate) const INERTIAS: &[Case] = &[
    read(
        "two-tracks-as-plates",
        1e-9,
        &[
            (RUNNING_GEAR_MASS.any(), 12.0),
            (CONTACT_LENGTH.any(), 0.4),
            (TRACK_WIDTH.any(), 0.3),
            (YAW_INERTIA.any(), 1.0),
        ],
        &[Found(RUNNING_GEAR_INERTIA.any(), 0.25), Found(SIZED_YAW_INERTIA.any(), 1.25)],
        "OpenStax, University Physics Volume 1, Figure 10.20, rectangular plate",
        "The printed formula with numbers chosen for this check: 12 kg on a diagonal of 0.5 m.",
    ),
    read(
        "inertia-rod-plus-sphere-far",
        0.002,
        &[
            (SPIN_SHAPE.any(), 1.0 / 3.0),
            (SPIN_MASS.any(), 2.0),
            (SPIN_RADIUS.any(), 0.5),
            (ADDED_MASS.any(), 1.0),
            (ADDED_DISTANCE.any(), 0.70), // Two fifths of a kilogram at 0.20 m.
            (ADDED_INERTIA.any(), 0.4 * 0.20 * 0.20),
        ],
        &[Found(SPIN_INERTIA.any(), 0.673)],
        UP_10_5,
        "Printed, Example 10.12 (a). The sphere is a third of the mass, three quarters of the inertia.",
    ),
    read(
        "inertia-disk-plus-rider",
        0.002,
        &[(SPIN_MASS.any(), 500.0), (SPIN_RADIUS.any(), 2.0)],
        &[Found(SPIN_INERTIA.any(), 1000.0)],
        UP_10_5,
        "Printed, Example 10.11.",
    ),
    read(
        "inertia-disk-with-rider",
        0.002,
        &[
            (SPIN_MASS.any(), 500.0),
            (SPIN_RADIUS.any(), 2.0),
            (ADDED_MASS.any(), 25.0),
            (ADDED_DISTANCE.any(), 1.0),
        ],
        &[Found(SPIN_INERTIA.any(), 1025.0)],
        UP_10_5,
        "Printed, Example 10.11.",
    ),
    read(
        "inertia-washers-on-rod",
        0.003,
        &[(SPIN_INERTIA.any(), 0.0035), (SPIN_RATE.any(), 5.0 * REV)],
        &[Found(SPIN_ENERGY.any(), 1.73)],
        UP_10_4,
        "Printed, Example 10.8.",
    ),
    read(
        "inertia-cylinder-edge-axis",
        0.001,
        &[
            (SPIN_MASS.any(), 1.0),
            (SPIN_RADIUS.any(), 1.0),
            (ADDED_MASS.any(), 1.0),
            (ADDED_DISTANCE.any(), 1.0),
        ],
        &[Found(SPIN_INERTIA.any(), 1.5)],
        UP_10_5,
        "The book misprints this as 1/3 m R²; worked out 3/2, and 2 for a thin hoop. Own inertia, and the mass once more at the distance of the axis.",
    ),
    read(
        "inertia-hoop-edge-axis",
        0.001,
        &[
            (SPIN_SHAPE.any(), 1.0),
            (SPIN_MASS.any(), 1.0),
            (SPIN_RADIUS.any(), 1.0),
            (ADDED_MASS.any(), 1.0),
            (ADDED_DISTANCE.any(), 1.0),
        ],
        &[Found(SPIN_INERTIA.any(), 2.0)],
        UP_10_5,
        "The book misprints this as 1/3 m R²; worked out 3/2, and 2 for a thin hoop. Own inertia, and the mass once more at the distance of the axis.",
    ),
    read(
        "swing-pendulum-front-wheel",
        1e-6,
        &[
            (MASS.any(), 2.02),
            (PIVOT_DISTANCE.any(), 0.293),
            (SWING_PERIOD.any(), 1.4811273727),
            (GRAVITY.any(), 9.81),
        ],
        &[Found(TIMED_INERTIA.any(), 0.149221207336)],
        BROWSER,
        "A wheel about its axle, hung from its rim on an edge.",
    ),
    read(
        "swing-torsion-front-wheel",
        1e-6,
        &[
            (KNOWN_INERTIA.any(), ROD),
            (KNOWN_PERIOD.any(), 1.89399317145),
            (TWIST_PERIOD.any(), 0.787577011406),
        ],
        &[Found(TWIST_INERTIA.any(), 0.0883826870796)],
        BROWSER,
        "A wheel about a diameter; a plain rod of known size calibrates the wire.",
    ),
    read(
        "swing-torsion-rear-wheel",
        1e-6,
        &[
            (KNOWN_INERTIA.any(), ROD),
            (KNOWN_PERIOD.any(), 1.89399317145),
            (TWIST_PERIOD.any(), 0.796564786052),
        ],
        &[Found(TWIST_INERTIA.any(), 0.0904114316323)],
        BROWSER,
        "",
    ),
];

#[test]
fn curves() {
    check(CURVES);
}

#[test]
fn steering() {
    check(STEERING);
}

#[test]
fn inertias() {
    check(INERTIAS);
}

/// OpenStax, University Physics Volume 1, section 10.4, Example 10.8: three pairs of washers of 20 g
/// on a rod, as a parts list; printed 0.0035 kg m².
#[test]
fn washers_on_a_rod_add_up_as_parts() {
    let places = [0.25, 0.15, 0.05].into_iter().flat_map(|radius| [radius, -radius]);
    let found = from_parts(places.map(|x| (0.020, [x, 0.0, 0.0])), YAW_INERTIA.any());
    assert!((found - 0.0035).abs() <= 0.003 * 0.0035, "{found}");
}

/// Meijaard, Papadopoulos, Ruina and Schwab, Proc. R. Soc. A 463 (2007) 1955, Table 1 and mass
/// matrix entry M(1,1): the four parts of the benchmark bicycle about the line on the ground that it
/// rolls over, each part added by the rule to those before it. Most of it comes from the
/// parallel-axis terms.
#[test]
fn the_benchmark_bicycle_adds_up_part_by_part() {
    let parts = [(2.0, 0.3, 0.0603), (85.0, 0.9, 9.2), (4.0, 0.7, 0.05892), (3.0, 0.35, 0.1405)];
    let found = parts.into_iter().fold(0.0, |before, (mass, height, own)| {
        let given = [
            (SPIN_MASS.any(), 0.0),
            (SPIN_RADIUS.any(), 1.0),
            (ADDED_MASS.any(), mass),
            (ADDED_DISTANCE.any(), height),
            (ADDED_INERTIA.any(), before + own),
        ];
        by_rules(&given, SPIN_INERTIA.any()).unwrap()
    });
    assert!((found - 80.81722).abs() <= 1e-6 * 80.81722, "{found}");
}
