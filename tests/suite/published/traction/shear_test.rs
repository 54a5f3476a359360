//! Cohesion and friction angle from two shear tests.

use heftwise::quantity::catalogue::{ground::*, machine::*};

use super::super::unit::{DEG, INCH, LBF};
use super::super::{Case, Expect::Found, check, read, recalled};

pub(crate) const CASES: &[Case] = &[
    read(
        "shear-test-three-on-a-line",
        1e-6,
        &[
            (GRAVITY.any(), 10.0),
            (SHEAR_TEST_AREA.any(), 0.01),
            (LIGHT_SHEAR_LOAD.any(), 600.0),
            (LIGHT_SHEAR_PULL.any(), 15_000.0),
            (HEAVY_SHEAR_LOAD.any(), 900.0),
            (HEAVY_SHEAR_PULL.any(), 16_000.0),
        ],
        &[Found(TESTED_COHESION.any(), 1300e3), Found(TESTED_FRICTION_ANGLE.any(), 0.321_750_554)],
        "A shear test of a construction project, read on a public page of questions: 1500 kPa under 600 kPa, 1600 under 900, 1700 under 1200",
        "The three lie on one line, of 1300 kPa and a tangent of one third; two of them find it. Stresses as forces on 100 cm2.",
    ),
    recalled(
        "shear-test-dry-sand",
        0.02,
        &[
            (GRAVITY.any(), 10.0),
            (SHEAR_TEST_AREA.any(), 4.0 * INCH * INCH),
            (LIGHT_SHEAR_LOAD.any(), 5.0 * LBF),
            (LIGHT_SHEAR_PULL.any(), 43.5 * LBF),
            (HEAVY_SHEAR_LOAD.any(), 15.0 * LBF),
            (HEAVY_SHEAR_PULL.any(), 132.0 * LBF),
        ],
        &[Found(TESTED_FRICTION_ANGLE.any(), 41.0 * DEG)],
        "B. M. Das, Principles of Geotechnical Engineering, chapter 12, direct shear test on dry sand of 2 in by 2 in",
        "Forces printed (43.5 lb under 50, 132 under 150), answer of about 41 degrees from memory; a line through all three from nothing gives 41.1, the two ends 41.5.",
    ),
];

#[test]
fn shear_tests() {
    check(CASES);
}
