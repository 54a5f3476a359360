//! Sections, beams, rods and materials.

pub(crate) mod bolt;
pub(crate) mod material;
pub(crate) mod section;

use heftwise::quantity::catalogue::structure::*;

use super::unit::*;
use super::{Case, Expect::Found, check, read, recalled};

const UP_12_3: &str = "OpenStax, University Physics Volume 1, section 12.3 (module m58342)";
const GERE_G1: &str = "Gere, Mechanics of Materials, table G-1, from memory";
const GERE_G2: &str = "Gere, Mechanics of Materials, table G-2, from memory";
const KSI: f64 = 1000.0 * PSI;

pub(crate) const CANTILEVERS: &[Case] = &[
    recalled(
        "cantilever-round-bar-6061",
        0.002,
        &[
            (BEAM_LOAD.any(), 100.0),
            (BEAM_SPAN.any(), 0.2),
            (ROUND_DIAMETER.any(), 0.012),
            (YOUNGS_MODULUS.any(), 68.9e9),
        ],
        &[Found(BEAM_SAG.any(), 3.80e-3), Found(BEAM_STRESS.any(), 117.9e6)],
        GERE_G1,
        "Formula published, numbers worked out.",
    ),
    // The strain 0.001 at 75 mm from the middle is the moment E ε Z of any bar 150 mm deep; here
    // it is 10 mm wide and of 200 GPa.
    read(
        "cantilever-end-moment-curvature",
        0.002,
        &[
            (BEAM_SPAN.any(), 1.5),
            (BAR_WIDTH.any(), 0.010),
            (BAR_DEPTH.any(), 0.150),
            (YOUNGS_MODULUS.any(), 200e9),
            (END_MOMENT.any(), 200e9 * 0.001 * 0.010 * 0.150 * 0.150 / 6.0),
        ],
        &[Found(BEND_RADIUS.any(), 75.0), Found(END_MOMENT_SAG.any(), 15.0e-3)],
        "Gere and Timoshenko, Mechanics of Materials, Problem 5.4-4 with solution",
        "Printed. A moment on the end, not a force.",
    ),
    read(
        "cantilever-flagpole-trap",
        0.006,
        &[
            (BEAM_LOAD.any(), 900.0),
            (BEAM_SPAN.any(), 20.0),
            (ROUND_DIAMETER.any(), 0.04),
            (SHEAR_MODULUS.any(), 25e9),
        ],
        &[Found(SHEAR_SHIFT.any(), 0.57e-3), Found(BEAM_STRESS.any(), 2865e6)],
        UP_12_3,
        "0.57 mm printed, and it is shear alone. The right answer for a pole is that bending folds it: the stress, worked out, is ten times the yield.",
    ),
];

/// Two supports: the factors of a load in the middle, and of a load spread evenly.
const MIDDLE: [f64; 3] = [0.25, 48.0, 16.0];
const SPREAD: [f64; 3] = [0.125, 76.8, 24.0];

pub(crate) const SUPPORTED: &[Case] = &[
    read(
        "beam-centre-load-3m",
        0.003,
        &[
            (BEAM_LOAD.any(), 10e3),
            (BEAM_SPAN.any(), 3.0),
            (YOUNGS_MODULUS.any(), 200e9),
            (SECOND_MOMENT.any(), 12e6 * 1e-12),
            (MOMENT_FACTOR.any(), MIDDLE[0]),
            (SAG_FACTOR.any(), MIDDLE[1]),
            (BEND_FACTOR.any(), MIDDLE[2]),
        ],
        &[
            Found(BEAM_SAG.any(), 2.34e-3),
            Found(BEAM_SLOPE.any(), 0.00234),
            Found(BENDING_MOMENT.any(), 7.5e3),
        ],
        "Khurmi, Strength of Materials, problem on a 3 m beam with a central load",
        "Statement and formulas read; answer worked out.",
    ),
    recalled(
        "beam-yield-moment-bar",
        0.002,
        &[
            (BAR_WIDTH.any(), 0.8 * INCH),
            (BAR_DEPTH.any(), 2.5 * INCH),
            (MATERIAL_STRENGTH.any(), 36.0 * KSI),
        ],
        &[
            Found(BAR_SECOND_MOMENT.any(), 1.042 * IN4),
            Found(BAR_SECTION_MODULUS.any(), 1.042 * IN4 / (1.25 * INCH)),
            Found(LARGEST_MOMENT.any(), 30.0 * 1000.0 * LBF * INCH),
        ],
        "Beer, Johnston et al., Mechanics of Materials, Example 4.01, from memory",
        "Printed.",
    ),
    recalled(
        "beam-uniform-load",
        0.003,
        &[
            (BEAM_LOAD.any(), 200.0 * 1.0),
            (BEAM_SPAN.any(), 1.0),
            (YOUNGS_MODULUS.any(), 68.9e9),
            (SECOND_MOMENT.any(), 1.20e4 * 1e-12),
            (SECTION_MODULUS.any(), 1.20e4 * 1e-12 / 10e-3),
            (MOMENT_FACTOR.any(), SPREAD[0]),
            (SAG_FACTOR.any(), SPREAD[1]),
        ],
        &[
            Found(BEAM_SAG.any(), 3.15e-3),
            Found(BENDING_MOMENT.any(), 25.0),
            Found(BEAM_STRESS.any(), 20.8e6),
        ],
        GERE_G2,
        "Formula published, numbers worked out.",
    ),
];

const IN4: f64 = INCH * INCH * INCH * INCH;
const QUARTER_PI: f64 = std::f64::consts::FRAC_PI_4;

pub(crate) const RODS: &[Case] = &[
    read(
        "axial-steel-hanger",
        0.005,
        &[
            (ROD_FORCE.any(), 550.0 * 9.8),
            (ROD_AREA.any(), 0.30e-4),
            (ROD_LENGTH.any(), 2.0),
            (YOUNGS_MODULUS.any(), 2.0e11),
        ],
        &[
            Found(ROD_STRESS.any(), 1.8e8),
            Found(ROD_STRAIN.any(), 1.8e-3 / 2.0),
            Found(ROD_STRETCH.any(), 1.8e-3),
        ],
        UP_12_3,
        "Example 12.8, printed.",
    ),
    read(
        "axial-climber-nylon",
        0.003,
        &[
            (ROD_FORCE.any(), 65.0 * 9.80),
            (ROD_AREA.any(), QUARTER_PI * 0.008 * 0.008),
            (ROD_LENGTH.any(), 35.0),
            (YOUNGS_MODULUS.any(), 1.35e9),
        ],
        &[Found(ROD_STRETCH.any(), 0.329)],
        UP_12_3,
        "Printed. Another book of the house takes nylon at 5 GPa and prints 9 cm: both are nylon.",
    ),
    // The printed force in, the given sideways movement out.
    read(
        "axial-nail-shear",
        0.005,
        &[
            (BEAM_LOAD.any(), 51.0),
            (BEAM_SPAN.any(), 5.00e-3),
            (ROUND_DIAMETER.any(), 1.50e-3),
            (SHEAR_MODULUS.any(), 80e9),
        ],
        &[Found(SHEAR_SHIFT.any(), 1.80e-6)],
        "OpenStax, College Physics 2e, section 5.3, Example 5.5 (module m42081)",
        "Printed. Direct shear of a very short length.",
    ),
    read(
        "axial-lift-cable",
        0.03,
        &[
            (ROD_FORCE.any(), 3.0e6),
            (ROD_AREA.any(), QUARTER_PI * 0.056 * 0.056),
            (ROD_LENGTH.any(), 3020.0),
            (YOUNGS_MODULUS.any(), 210e9),
        ],
        &[Found(ROD_STRETCH.any(), 18.0), Found(ROD_STRESS.any(), 1218e6)],
        "OpenStax, College Physics 2e, section 5.3, Example 5.3 (module m42081)",
        "Stretch printed to two figures, 17.5 m; stress worked out.",
    ),
];

#[test]
fn cantilevers() {
    check(CANTILEVERS);
}

#[test]
fn beams_on_two_supports() {
    check(SUPPORTED);
}

#[test]
fn rods() {
    check(RODS);
}
