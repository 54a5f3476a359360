//! Second moments and section moduli against tables and worked examples.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::structure::*;

use super::{IN4, KSI};
use crate::published::unit::*;
use crate::published::{Case, Expect::Found, check, read, recalled};

const STATICS: &str = "Baker and Haynes, Engineering Statics: Open and Interactive, chapter 10";
const MOTT: &str =
    "Mott, Machine Elements in Mechanical Design, 4th ed., Table A16-6, schedule 40 steel pipe";
const EN_10219: &str = "BS EN 10219, cold-formed square hollow sections, table";
const IN2: f64 = INCH * INCH;
const IN3: f64 = INCH * INCH * INCH;
const CM2: f64 = CM * CM;
const CM3: f64 = CM * CM * CM;
const CM4: f64 = CM * CM * CM * CM;

/// Three boards, 1.5 in by 5.5 in: side by side, and as a web between two flanges.
const SIDE_BY_SIDE: &[(AnyId, f64)] =
    &[(BAR_WIDTH.any(), 3.0 * 1.5 * INCH), (BAR_DEPTH.any(), 5.5 * INCH)];
const AS_AN_I: &[(AnyId, f64)] = &[
    (FLANGE_WIDTH.any(), 5.5 * INCH),
    (FLANGE_THICKNESS.any(), 1.5 * INCH),
    (WEB_THICKNESS.any(), 1.5 * INCH),
    (WEB_DEPTH.any(), 5.5 * INCH),
];

pub(crate) const BUILT_UP: &[Case] = &[
    read(
        "section-boards-side-by-side",
        0.004,
        SIDE_BY_SIDE,
        &[Found(SECOND_MOMENT.any(), 62.4 * IN4)],
        STATICS,
        "Example Beam Design, printed.",
    ),
    read(
        "section-boards-as-an-i",
        0.004,
        AS_AN_I,
        &[
            Found(SECOND_MOMENT.any(), 226.0 * IN4),
            // The ratio of both is printed as well.
            Found(FLANGED_SECOND_MOMENT.any(), 3.61 * 62.4 * IN4),
            Found(FLANGED_AREA.any(), 3.0 * 1.5 * 5.5 * IN2),
            Found(FLANGED_SECTION_MODULUS.any(), 226.0 * IN4 / (4.25 * INCH)),
        ],
        STATICS,
        "Example Beam Design, printed; the ratio is 3.62 unrounded. Area and section modulus worked out.",
    ),
    // Two angles, 1.98 in above the plate's top face at 4.75 in² and 17.3 in⁴ each.
    read(
        "section-angles-and-plate",
        0.002,
        &[
            (SECTION_AREA.any(), 2.0 * 4.75 * IN2),
            (SECOND_MOMENT.any(), 2.0 * 17.3 * IN4),
            (PLATE_WIDTH.any(), 8.0 * INCH),
            (PLATE_THICKNESS.any(), 1.0 * INCH),
            (PLATE_DISTANCE.any(), (1.98 + 0.5) * INCH),
        ],
        &[
            Found(PLATED_SHIFT.any(), (1.98 - 0.846) * INCH),
            Found(PLATED_SECOND_MOMENT.any(), 61.98 * IN4),
        ],
        STATICS,
        "Example Built-up beam, printed: the neutral axis 0.846 in above the plate's top face.",
    ),
];

const PIPE_1: &[(AnyId, f64)] =
    &[(TUBE_DIAMETER.any(), 1.315 * INCH), (TUBE_WALL.any(), 0.133 * INCH)];
const RING: &[(AnyId, f64)] = &[
    (TUBE_DIAMETER.any(), 0.090),
    (TUBE_WALL.any(), 0.015),
    (PAIR_SPACING.any(), 2.0 * (0.045 + 0.080)),
];

pub(crate) const ROUND_TUBES: &[Case] = &[
    read(
        "tube-pipe-1in-sch40",
        0.002,
        PIPE_1,
        &[
            Found(TUBE_AREA.any(), 0.494 * IN2),
            Found(SECTION_AREA.any(), 0.494 * IN2),
            Found(TUBE_SECOND_MOMENT.any(), 0.08734 * IN4),
            Found(SECTION_MODULUS.any(), 0.1328 * IN3),
            Found(TUBE_SECTION_MODULUS.any(), 0.1328 * IN3),
            Found(TUBE_POLAR_MODULUS.any(), 0.2656 * IN3),
        ],
        MOTT,
        "Printed.",
    ),
    read(
        "tube-pipe-1p5in-sch40",
        0.002,
        &[(TUBE_DIAMETER.any(), 1.900 * INCH), (TUBE_WALL.any(), 0.145 * INCH)],
        &[
            Found(TUBE_AREA.any(), 0.799 * IN2),
            Found(SECOND_MOMENT.any(), 0.3099 * IN4),
            Found(SECTION_MODULUS.any(), 0.3262 * IN3),
        ],
        MOTT,
        "Printed.",
    ),
    read(
        "tube-ring-offset-axis",
        0.003,
        RING,
        &[
            Found(SECOND_MOMENT.any(), 2.58e6 * 1e-12),
            Found(PAIR_SECOND_MOMENT.any(), 2.0 * 57.8e6 * 1e-12),
        ],
        STATICS,
        "Example Circular Ring, printed: the axis is 80 mm below the ring's lowest point, 125 mm below its middle. Two such rings, one on either side of it, have twice as much.",
    ),
    recalled(
        "tube-twist-hollow-shaft",
        0.003,
        &[(TUBE_DIAMETER.any(), 0.060), (TUBE_WALL.any(), 0.010), (TWIST_MOMENT.any(), 4.08e3)],
        &[Found(TWIST_STRESS.any(), 120e6)],
        "Beer, Johnston et al., Mechanics of Materials, Example 3.01, hollow steel shaft, from memory",
        "Printed torque in, given stress out.",
    ),
    read(
        "tube-twist-114-by-6",
        0.002,
        &[(TUBE_DIAMETER.any(), 0.114), (TUBE_WALL.any(), 0.006), (TWIST_MOMENT.any(), 5.0e3)],
        &[Found(TWIST_STRESS.any(), 47.86e6)],
        "T. A. Philpot, Mechanics of Materials, lesson 15.1 on combined loads: shaft of 114 mm outside and 102 mm inside under 5 kN m",
        "Printed.",
    ),
];

pub(crate) const BOX_TUBES: &[Case] = &[
    read(
        "tube-square-40x3",
        0.1,
        &[
            (BOX_TUBE_WIDTH.any(), 0.040),
            (BOX_TUBE_DEPTH.any(), 0.040),
            (BOX_TUBE_WALL.any(), 0.003),
        ],
        &[Found(SECOND_MOMENT.any(), 9.32 * CM4), Found(SECTION_MODULUS.any(), 4.66 * CM3)],
        EN_10219,
        "Sharp corners are 9.4 % too stiff: real tube is rounded, see the next row.",
    ),
    read(
        "tube-square-40x3-real-corners",
        0.002,
        &[
            (BOX_TUBE_WIDTH.any(), 0.040),
            (BOX_TUBE_DEPTH.any(), 0.040),
            (BOX_TUBE_WALL.any(), 0.003),
            (BOX_TUBE_CORNER.any(), 0.006),
        ],
        &[
            Found(BOX_TUBE_SECOND_MOMENT.any(), 9.32 * CM4),
            Found(BOX_TUBE_SECTION_MODULUS.any(), 4.66 * CM3),
        ],
        EN_10219,
        "Printed, to the last digit with corners of twice the wall.",
    ),
    read(
        "tube-square-30x2-real-corners",
        0.004,
        &[
            (BOX_TUBE_WIDTH.any(), 0.030),
            (BOX_TUBE_DEPTH.any(), 0.030),
            (BOX_TUBE_WALL.any(), 0.002),
            (BOX_TUBE_CORNER.any(), 0.004),
        ],
        &[
            Found(SECOND_MOMENT.any(), 2.72 * CM4),
            Found(BOX_TUBE_AREA.any(), 2.14 * CM2),
            Found(SECTION_MODULUS.any(), 1.81 * CM3),
        ],
        EN_10219,
        "Printed.",
    ),
    read(
        "tube-square-50x3",
        0.075,
        &[
            (BOX_TUBE_WIDTH.any(), 0.050),
            (BOX_TUBE_DEPTH.any(), 0.050),
            (BOX_TUBE_WALL.any(), 0.003),
        ],
        &[Found(SECOND_MOMENT.any(), 19.5 * CM4), Found(SECTION_MODULUS.any(), 7.79 * CM3)],
        EN_10219,
        "Sharp corners are 6.8 % too stiff.",
    ),
    recalled(
        "tube-rect-extrusion-bending",
        0.003,
        &[
            (BOX_TUBE_WIDTH.any(), 3.25 * INCH),
            (BOX_TUBE_DEPTH.any(), 5.0 * INCH),
            (BOX_TUBE_WALL.any(), 0.25 * INCH),
            (BOX_TUBE_CORNER.any(), 0.0),
            (MATERIAL_STRENGTH.any(), 40.0 * KSI / 2.0),
            (YOUNGS_MODULUS.any(), 10.6e6 * PSI),
            (END_MOMENT.any(), 103.8 * 1000.0 * LBF * INCH),
        ],
        &[
            Found(BOX_TUBE_SECOND_MOMENT.any(), 12.97 * IN4),
            Found(LARGEST_MOMENT.any(), 103.8 * 1000.0 * LBF * INCH),
            Found(BEND_RADIUS.any(), 1325.0 * INCH),
        ],
        "Beer, Johnston et al., Mechanics of Materials, extruded aluminium tube, from memory",
        "Printed. The stress allowed, 20 ksi, is the strength here.",
    ),
];

#[test]
fn built_up() {
    check(BUILT_UP);
}

#[test]
fn round_tubes() {
    check(ROUND_TUBES);
}

#[test]
fn box_tubes() {
    check(BOX_TUBES);
}
