//! Range, the weight spiral and scaling.

use heftwise::quantity::catalogue::{
    drive::*, electrics::USABLE_ENERGY, ground::*, machine::*, motion::*, traction::*, whole::*,
};

use super::{Case, Expect::Found, check, read, recalled};

const RAYMER: &str = "D. P. Raymer, Aircraft Design: A Conceptual Approach, chapter 3, patrol aircraft, as worked through in a public notebook (J. Pelham)";
const POUND: f64 = 0.45359237;
const WATT_HOUR: f64 = 3600.0;
const MILE: f64 = 1609.344;

/// The fuel of the aircraft is the battery here, its empty mass the frame.
pub(crate) const SPIRAL: &[Case] = &[
    read(
        "sizing-patrol-aircraft-first-guess",
        1e-6,
        &[
            (BARE_MASS.any(), 10_800.0 * POUND),
            (BATTERY_MASS_SHARE.any(), 0.387),
            (FRAME_SHARE.any(), 0.4361),
        ],
        &[
            Found(CLOSED_MASS.any(), 61_051.44 * POUND),
            Found(GROWTH_SHARE.any(), 0.387 + 0.4361),
            Found(GROWTH_FACTOR.any(), 61_051.44 / 10_800.0),
            Found(CLOSED_BATTERY_MASS.any(), 0.387 * 61_051.44 * POUND),
        ],
        RAYMER,
        "Mass printed, 10 000 lb of equipment and 800 lb of crew; the rest worked out from it.",
    ),
    read(
        "sizing-patrol-aircraft-by-mission",
        0.001,
        &[
            (BARE_MASS.any(), 10_800.0 * POUND),
            (BATTERY_MASS_SHARE.any(), 0.3773),
            (FRAME_SHARE.any(), 0.43607),
        ],
        &[Found(CLOSED_MASS.any(), 57_882.726 * POUND)],
        RAYMER,
        "Printed; the shares are printed to four and five figures.",
    ),
];

pub(crate) const RANGES: &[Case] = &[read(
    "range-60-kwh-car",
    1e-9,
    &[
        (USABLE_ENERGY.any(), 60_000.0 * WATT_HOUR),
        (ENERGY_PER_DISTANCE.any(), 300.0 * WATT_HOUR / MILE),
    ],
    &[Found(RANGE.any(), 200.0 * MILE)],
    "How to calculate EV range, a tutorial of leyaa.ai: 60 kW·h at 0.3 kW·h for each mile",
    "Printed: 200 miles.",
)];

pub(crate) const SCALING: &[Case] = &[
    read(
        "square-cube-metre-cube-doubled",
        1e-9,
        &[(SCALE_FACTOR.any(), 2.0)],
        &[Found(SCALE_AREA_RATIO.any(), 24.0 / 6.0), Found(SCALE_MASS_RATIO.any(), 8.0)],
        "Square and cube law, Galileo, Two New Sciences, 1638, as told in encyclopaedias",
        "Printed: a cube of 1 m, doubled, has 8 m³ and 24 m².",
    ),
    read(
        "small-robot-doubled",
        1e-9,
        &[(SCALE_FACTOR.any(), 2.0), (MASS.any(), 0.125)],
        &[Found(SCALED_MASS.any(), 1.0)],
        "Common practice, no published source",
        "125 g become 1000 g.",
    ),
    read(
        "slope-torque-doubled",
        1e-9,
        &[(SCALE_FACTOR.any(), 2.0)],
        &[
            Found(SCALE_TORQUE_RATIO.any(), 16.0),
            Found(SCALE_PRESSURE_RATIO.any(), 2.0),
            Found(SCALE_STRESS_RATIO.any(), 2.0),
        ],
        "Common practice, no published source",
        "Torque for the same slope by the fourth power, pressure and own-weight stress by the first.",
    ),
    recalled(
        "ship-model-one-in-25",
        1e-9,
        &[(SCALE_FACTOR.any(), 1.0 / 25.0)],
        &[Found(SCALE_SPEED_RATIO.any(), 0.2), Found(SCALE_POWER_RATIO.any(), 1.28e-5)],
        "W. Froude's law of ship models, speed by the root, power by the power of 3.5, from memory",
        "A fifth of the speed; one in 78 125 of the power.",
    ),
    read(
        "walking-robots-mass-by-length",
        1e-9,
        &[(SCALE_FACTOR.any(), 1.7), (SHEET_SHARE.any(), 1.0)],
        &[Found(SCALE_MASS_EXPONENT.any(), 2.0)],
        "Oke et al., Allometric Scaling Laws for Bipedal Robots, arXiv 2603.22560, abstract",
        "Built robots go by about the square of length, against the cube of solid bodies.",
    ),
    recalled(
        "plate-bent-by-its-own-weight",
        1e-9,
        &[(SCALE_FACTOR.any(), 3.0)],
        &[Found(SCALE_SHEET_STRESS_RATIO.any(), 9.0)],
        "Roark's Formulas for Stress and Strain, plates, stress by q b²/t², from memory",
        "The load q of its own weight goes by t alone.",
    ),
];

#[test]
fn weight_spiral() {
    check(SPIRAL);
}

/// Friction out and back; sliding stands for rolling, and nothing is lost on the way to the ground.
pub(crate) const TRIPS: &[Case] = &[
    read(
        "trip-book-1.8-n",
        0.001,
        &[
            (MASS.any(), 1.0),
            (ROLLING_RESISTANCE.any(), 1.8),
            (SLOPE_FORCE.any(), 0.0),
            (DRIVE_EFFICIENCY.any(), 1.0),
            (DRIVING_SPEED.any(), 1.0),
            (TRIP_DISTANCE.any(), 3.0),
            (USABLE_ENERGY.any(), 10.8),
        ],
        &[
            Found(RETURN_RESISTANCE.any(), 1.8),
            Found(OUT_ENERGY.any(), 5.4),
            Found(BACK_ENERGY.any(), 5.4),
            Found(TRIP_ENERGY.any(), 10.8),
            Found(TRIPS_PER_CHARGE.any(), 1.0),
        ],
        "H. D. Young and R. A. Freedman, University Physics with Modern Physics, 14th ed., problem 7.27, solution read at gradesaver.com",
        "Printed, both ways and together; the trips follow.",
    ),
    read(
        "trip-book-1.5-kg",
        0.005,
        &[
            (MASS.any(), 1.5),
            (GRAVITY.any(), 9.80),
            (SLOPE.any(), 0.0),
            (ROLLING_COEFFICIENT.any(), 0.25),
            (DRIVE_EFFICIENCY.any(), 1.0),
            (DRIVING_SPEED.any(), 1.0),
            (TRIP_DISTANCE.any(), 8.0),
        ],
        &[Found(TRIP_ENERGY.any(), 59.0)],
        "H. D. Young and R. A. Freedman, University Physics, problem 7.31, solution read at coursehero.com",
        "Printed as 59 J from 3.68 N; 58.8 J unrounded.",
    ),
];

#[test]
fn trips() {
    check(TRIPS);
}

#[test]
fn range() {
    check(RANGES);
}

#[test]
fn scaling() {
    check(SCALING);
}
