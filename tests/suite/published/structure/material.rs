//! Material indices.

use heftwise::quantity::catalogue::structure::*;

use crate::published::{Case, Expect::Found, check, read, recalled};

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

pub(crate) const STRONG: &[Case] = &[
    strong!("index-strong-beam-steel-531", 770.0, 7.85, 10.7),
    strong!("index-strong-beam-6061", 240.0, 2.70, 14.3),
    strong!("index-strong-beam-ti64", 955.0, 4.42, 21.9),
    strong!("index-strong-beam-magnesium", 165.0, 1.80, 16.7),
];

pub(crate) const STIFF: &[Case] = &[
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

const RANKS: &str = "MakeItFrom, comparison of 7075-T6 aluminium and 1040 steel";
const ROUNDED: &str = "Printed as points, 13 and 13, 46 and 24, which rounds hard: the steel's index times their ratio.";

pub(crate) const RANKING: &[Case] = &[
    read(
        "rank-1040-steel",
        0.001,
        &[(YOUNGS_MODULUS.any(), 190e9), (MATERIAL_DENSITY.any(), 7800.0)],
        &[Found(STIFF_ROD_INDEX.any(), 24.36), Found(STIFF_PANEL_INDEX.any(), 0.737)],
        ASHBY,
        "Properties of the MakeItFrom comparison; index worked out.",
    ),
    read(
        "rank-7075-vs-1040",
        0.05,
        &[(YOUNGS_MODULUS.any(), 70e9), (MATERIAL_DENSITY.any(), 3000.0)],
        &[
            Found(STIFF_ROD_INDEX.any(), 24.36 * 13.0 / 13.0),
            Found(STIFF_PANEL_INDEX.any(), 0.737 * 46.0 / 24.0),
        ],
        RANKS,
        ROUNDED,
    ),
];

/// Ultimate strength in MPa, stiffness in GPa and density in t/m³ to strength over density and to
/// the cube root of stiffness over density.
macro_rules! printed {
    ($id:literal, $strength:literal, $modulus:literal, $density:literal, $rod:literal, $panel:literal) => {
        read(
            $id,
            0.005,
            &[
                (MATERIAL_STRENGTH.any(), $strength * 1e6),
                (YOUNGS_MODULUS.any(), $modulus * 1e9),
                (MATERIAL_DENSITY.any(), $density * 1e3),
            ],
            &[Found(STRONG_ROD_INDEX.any(), $rod), Found(STIFF_PANEL_INDEX.any(), $panel)],
            "DelftX, Introduction to Aerospace Structures and Materials, table of metals and their alloys",
            "Printed. The column headed as a root of the stiffness over the density holds the cube root.",
        )
    };
}

pub(crate) const PRINTED: &[Case] = &[
    printed!("index-printed-2024-t3", 483.0, 72.0, 2.78, 174.0, 1.50),
    printed!("index-printed-ti-6al-4v", 950.0, 114.0, 4.43, 214.0, 1.09),
    printed!("index-printed-az31b", 290.0, 45.0, 1.78, 163.0, 2.00),
    printed!("index-printed-7475-t761", 517.0, 70.0, 2.81, 184.0, 1.47),
];

#[test]
fn light_and_strong() {
    check(STRONG);
}

#[test]
fn light_and_stiff() {
    check(STIFF);
    check(RANKING);
}

#[test]
fn printed_indices() {
    check(PRINTED);
}
