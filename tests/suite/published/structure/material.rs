//! Material indices.

use heftwise::quantity::catalogue::structure::*;
use heftwise::quantity::{AnyId, Id, Ratio};

use crate::published::{
    Case,
    Expect::{By, Found},
    by_rules, check, read, recalled,
};

const FORKS: &str = "M. F. Ashby, Materials Selection in Mechanical Design, case study on bicycle forks, from memory";
const ASHBY: &str = "index of M. F. Ashby, Materials Selection in Mechanical Design";

/// A strong beam: strength in MPa and density in t/m³ to the index.
macro_rules! strong {
    ($id:literal, $strength:literal, $density:literal, $index:literal) => {
        recalled(
            $id,
            0.005,
            &[(MATERIAL_STRENGTH.any(), $strength * 1e6), (MATERIAL_DENSITY.any(), $density * 1e3)],
            &[Found(STRONG_BEAM_INDEX.any(), $index)],
            FORKS,
            "Printed.",
        )
    };
}

const STRONG: &[Case] = &[
    strong!("index-strong-beam-steel-531", 770.0, 7.85, 10.7),
    strong!("index-strong-beam-6061", 240.0, 2.70, 14.3),
    strong!("index-strong-beam-ti64", 955.0, 4.42, 21.9),
    strong!("index-strong-beam-magnesium", 165.0, 1.80, 16.7),
];

const STIFF: &[Case] = &[
    recalled(
        "index-stiff-beam-steel",
        0.005,
        &[(YOUNGS_MODULUS.any(), 200e9), (MATERIAL_DENSITY.any(), 7850.0)],
        &[Found(STIFF_BEAM_INDEX.any(), 1.80)],
        "A36 datasheet; about 1.8 by M. F. Ashby, from memory",
        "Printed.",
    ),
    recalled(
        "index-stiff-beam-6061",
        0.005,
        &[(YOUNGS_MODULUS.any(), 68.9e9), (MATERIAL_DENSITY.any(), 2700.0)],
        &[Found(STIFF_BEAM_INDEX.any(), 3.07)],
        "6061-T6 datasheet; about 3.1 by M. F. Ashby, from memory",
        "Printed.",
    ),
    read(
        "index-stiff-beam-cfrp-ud",
        0.005,
        &[(YOUNGS_MODULUS.any(), 135e9), (MATERIAL_DENSITY.any(), 1600.0)],
        &[Found(STIFF_BEAM_INDEX.any(), 7.26)],
        ASHBY,
        "Properties of a maker's table of unidirectional carbon fibre, along the fibre; index worked out.",
    ),
    read(
        "index-stiff-beam-plywood",
        0.005,
        &[(YOUNGS_MODULUS.any(), 9.25e9), (MATERIAL_DENSITY.any(), 500.0)],
        &[Found(STIFF_BEAM_INDEX.any(), 6.08)],
        ASHBY,
        "Properties the middle of a MatWeb sheet on sheathing plywood; index worked out. It beats every metal here.",
    ),
];

const ALUMINIUM: &[(AnyId, f64)] =
    &[(YOUNGS_MODULUS.any(), 70e9), (MATERIAL_DENSITY.any(), 3000.0)];
const STEEL: &[(AnyId, f64)] = &[(YOUNGS_MODULUS.any(), 190e9), (MATERIAL_DENSITY.any(), 7800.0)];

fn ratio(index: Id<Ratio>) -> f64 {
    by_rules(ALUMINIUM, index.any()).unwrap() / by_rules(STEEL, index.any()).unwrap()
}

const RANKING: &[Case] = &[read(
    "rank-7075-vs-1040",
    0.05,
    &[],
    &[
        By("in tension", || ratio(STIFF_ROD_INDEX), 1.00),
        By("panel in bending", || ratio(STIFF_PANEL_INDEX), 1.92),
    ],
    "MakeItFrom, comparison of 7075-T6 aluminium and 1040 steel",
    "Printed as points, 13 and 13, 46 and 24, which rounds hard.",
)];

#[test]
fn light_and_strong() {
    check(STRONG);
}

#[test]
fn light_and_stiff() {
    check(STIFF);
    check(RANKING);
}

/// The strong rod has no published index of its own: the strength over the density, by hand.
#[test]
fn light_strong_rod_by_hand() {
    let given = [(MATERIAL_STRENGTH.any(), 276e6), (MATERIAL_DENSITY.any(), 2700.0)];
    let index = by_rules(&given, STRONG_ROD_INDEX.any()).unwrap();
    approx::assert_relative_eq!(index, 276.0 / 2.7, max_relative = 1e-12);
}
