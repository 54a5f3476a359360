//! Figures that builders hand on. Common practice, no published source.

use heftwise::quantity::catalogue::{impact::*, machine::*, motion::*, turning::*};

use super::unit::*;
use super::{Case, Expect::Found, check, read};

const SOURCE: &str = "Common practice, no published source";

pub(crate) const CASES: &[Case] = &[
    read(
        "light-crawler-into-post",
        0.001,
        &[(MASS.any(), 2.8), (IMPACT_SPEED.any(), 30.0 * KMH), (STOP_TIME.any(), 15.0 * MS)],
        &[Found(MEAN_IMPACT_FORCE.any(), 1555.0)],
        SOURCE,
        "1555.6 N unrounded.",
    ),
    read(
        "heavier-crawler-same-speed",
        0.001,
        &[(MASS.any(), 4.5), (IMPACT_SPEED.any(), 30.0 * KMH), (STOP_TIME.any(), 15.0 * MS)],
        &[Found(MEAN_IMPACT_FORCE.any(), 2500.0)],
        SOURCE,
        "",
    ),
    read(
        "heavier-crawler-road-speed",
        0.001,
        &[(MASS.any(), 4.5), (IMPACT_SPEED.any(), 101.0 * KMH), (STOP_TIME.any(), 15.0 * MS)],
        &[Found(MEAN_IMPACT_FORCE.any(), 8416.0)],
        SOURCE,
        "8416.7 N unrounded.",
    ),
    read(
        "heavier-crawler-in-standing-people",
        0.05,
        &[(MASS.any(), 4.5), (IMPACT_SPEED.any(), 101.0 * KMH), (STOP_TIME.any(), 15.0 * MS)],
        &[Found(STANDING_PEOPLE.any(), 12.0)],
        SOURCE,
        "About 12 people of 700 N.",
    ),
    read(
        "light-crawler-pushed-sideways",
        0.001,
        &[(MASS.any(), 2.8), (SIDEWAYS_ACCELERATION.any(), 0.08)],
        &[Found(SIDEWAYS_FORCE.any(), 0.224)],
        SOURCE,
        "",
    ),
    read(
        "heavier-crawler-pushed-sideways",
        0.001,
        &[(MASS.any(), 4.5), (SIDEWAYS_ACCELERATION.any(), 0.08)],
        &[Found(SIDEWAYS_FORCE.any(), 0.36)],
        SOURCE,
        "About 60 % more.",
    ),
    read(
        "light-car-power-to-mass",
        0.001,
        &[(MASS.any(), 3000.0 * 0.45359237), (DRIVE_POWER.any(), 300.0 * 745.699_871_582)],
        &[Found(POWER_TO_MASS.any(), 0.1 * 745.699_871_582 / 0.45359237)],
        SOURCE,
        "300 hp in 3000 lb is 0.1 hp/lb.",
    ),
    read(
        "heavy-car-power-to-mass",
        0.001,
        &[(MASS.any(), 5000.0 * 0.45359237), (DRIVE_POWER.any(), 500.0 * 745.699_871_582)],
        &[Found(POWER_TO_MASS.any(), 0.1 * 745.699_871_582 / 0.45359237)],
        SOURCE,
        "500 hp in 5000 lb is the same 0.1 hp/lb.",
    ),
];

#[test]
fn practice() {
    check(CASES);
}
