//! Figures that builders hand on. Common practice, no published source.

use heftwise::quantity::catalogue::{impact::*, machine::*};

use super::unit::*;
use super::{Case, Expect::Found, check, read};

const SOURCE: &str = "Common practice, no published source";

const CASES: &[Case] = &[
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
];

#[test]
fn practice() {
    check(CASES);
}
