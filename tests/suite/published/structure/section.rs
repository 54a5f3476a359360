//! Second moments and section moduli against tables and worked examples.

use heftwise::physics::structure::{Piece, rectangle_second_moment, shift, together};
use heftwise::quantity::catalogue::structure::*;
use heftwise::quantity::{AnyId, Measure};

use super::{IN4, KSI};
use crate::published::unit::*;
use crate::published::{
    Case,
    Expect::{By, Found},
    by_rules, check, of, read, recalled,
};

const STATICS: &str = "Baker and Haynes, Engineering Statics: Open and Interactive, chapter 10";
const MOTT: &str =
    "Mott, Machine Elements in Mechanical Design, 4th ed., Table A16-6, schedule 40 steel pipe";
const EN_10219: &str = "BS EN 10219, cold-formed square hollow sections, table";
const IN2: f64 = INCH * INCH;
const IN3: f64 = INCH * INCH * INCH;
const CM: f64 = 1e-2;
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

/// The I of boards: section modulus at 4.25 in from the middle, and the area of three boards.
fn of_the_i(id: AnyId) -> f64 {
    by_rules(AS_AN_I, id).unwrap()
}

fn second(given: &[(AnyId, f64)]) -> f64 {
    by_rules(given, SECOND_MOMENT.any()).unwrap()
}

/// Two angles on a plate, heights from the plate's top face.
fn angles_and_plate() -> (f64, f64) {
    let angle =
        Piece { area: of(4.75 * IN2), height: of(1.98 * INCH), second_moment: of(17.3 * IN4) };
    let plate = Piece {
        area: of(8.0 * IN2),
        height: of(-0.5 * INCH),
        second_moment: rectangle_second_moment(of(8.0 * INCH), of(INCH)),
    };
    let (middle, second) = together(&[angle, angle, plate]);
    (middle.si(), second.si())
}

const BUILT_UP: &[Case] = &[
    read(
        "section-sandwich-vs-i-beam",
        0.004,
        &[],
        &[
            By("side by side", || second(SIDE_BY_SIDE), 62.4 * IN4),
            By("as an I", || second(AS_AN_I), 226.0 * IN4),
            By("area", || of_the_i(FLANGED_AREA.any()), 3.0 * 1.5 * 5.5 * IN2),
            By(
                "section modulus",
                || of_the_i(FLANGED_SECTION_MODULUS.any()),
                226.0 * IN4 / (4.25 * INCH),
            ),
            By("ratio", || second(AS_AN_I) / second(SIDE_BY_SIDE), 3.61),
        ],
        STATICS,
        "Example Beam Design, printed; the ratio is 3.62 unrounded.",
    ),
    read(
        "section-angles-and-plate",
        0.002,
        &[],
        &[
            By("neutral axis", || angles_and_plate().0, 0.846 * INCH),
            By("second moment", || angles_and_plate().1, 61.98 * IN4),
        ],
        STATICS,
        "Example Built-up beam, printed.",
    ),
];

const PIPE_1: &[(AnyId, f64)] =
    &[(TUBE_DIAMETER.any(), 1.315 * INCH), (TUBE_WALL.any(), 0.133 * INCH)];
const RING: &[(AnyId, f64)] = &[(TUBE_DIAMETER.any(), 0.090), (TUBE_WALL.any(), 0.015)];

/// About an axis 80 mm below the ring's lowest point, 125 mm below its middle.
fn ring_offset() -> f64 {
    let area = by_rules(RING, TUBE_AREA.any()).unwrap();
    shift(of(second(RING)), of(area), of(0.045 + 0.080)).si()
}

const ROUND_TUBES: &[Case] = &[
    read(
        "tube-pipe-1in-sch40",
        0.002,
        PIPE_1,
        &[
            Found(TUBE_AREA.any(), 0.494 * IN2),
            Found(SECTION_AREA.any(), 0.494 * IN2),
            Found(TUBE_SECOND_MOMENT.any(), 0.08734 * IN4),
            Found(SECTION_MODULUS.any(), 0.1328 * IN3),
            // A round tube bends alike both ways, so its polar modulus is twice the other.
            By(
                "polar modulus",
                || 2.0 * by_rules(PIPE_1, TUBE_SECTION_MODULUS.any()).unwrap(),
                0.2656 * IN3,
            ),
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
            By("about the offset axis", ring_offset, 57.8e6 * 1e-12),
        ],
        STATICS,
        "Example Circular Ring, printed.",
    ),
];

const BOX_TUBES: &[Case] = &[
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
