//! Cooling by air, radiation and fins.

use std::f64::consts::PI;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{heat::*, machine::GRAVITY};

use super::unit::{CELSIUS, MILLI};
use super::{Case, Expect::Found, check, read, recalled};

/// Still air beside an upright surface, as the examples give it: conductivity, kinematic viscosity,
/// Prandtl number, expansion, excess of the surface, its height, gravity.
const fn beside(
    [conductivity, viscosity, prandtl, expansion]: [f64; 4],
    excess: f64,
    height: f64,
    gravity: f64,
) -> [(AnyId, f64); 8] {
    [
        (AIR_CONDUCTIVITY.any(), conductivity),
        (AIR_VISCOSITY.any(), viscosity),
        (PRANDTL_NUMBER.any(), prandtl),
        (AIR_EXPANSION.any(), expansion),
        (SURFACE_TEMPERATURE.any(), 300.0 + excess),
        (COOLING_AIR.any(), 300.0),
        (SURFACE_HEIGHT.any(), height),
        (GRAVITY.any(), gravity),
    ]
}

/// The same with more said.
const fn and<const N: usize, const M: usize, const ALL: usize>(
    some: [(AnyId, f64); N],
    more: [(AnyId, f64); M],
) -> [(AnyId, f64); ALL] {
    let mut all = [(GRAVITY.any(), 0.0); ALL];
    let mut i = 0;
    while i < ALL {
        all[i] = if i < N { some[i] } else { more[i - N] };
        i += 1;
    }
    all
}

/// Air along a plate: speed, length, conductivity, kinematic viscosity, Prandtl number.
const fn along(
    speed: f64,
    length: f64,
    [conductivity, viscosity, prandtl]: [f64; 3],
) -> [(AnyId, f64); 5] {
    [
        (AIR_FLOW_SPEED.any(), speed),
        (FLOW_LENGTH.any(), length),
        (AIR_CONDUCTIVITY.any(), conductivity),
        (AIR_VISCOSITY.any(), viscosity),
        (PRANDTL_NUMBER.any(), prandtl),
    ]
}

/// An excess of the surface and its area.
const fn warm(excess: f64, area: f64) -> [(AnyId, f64); 3] {
    [
        (SURFACE_TEMPERATURE.any(), 300.0 + excess),
        (COOLING_AIR.any(), 300.0),
        (SURFACE_AREA.any(), area),
    ]
}

/// The plate of Sukhatme's Example 6.1.
const SUKHATME: [(AnyId, f64); 8] = beside([0.0297, 20.02e-6, 0.694, 0.0029155], 60.0, 0.5, 9.81);
/// The air of his Example 6.2, for an excess of one kelvin and a height of one metre: what is found
/// is then the number before the powers of both.
const SHORT_CUT: [(AnyId, f64); 8] =
    beside([0.0357, 28.95e-6, 0.683, 1.0 / (CELSIUS + 150.0)], 1.0, 1.0, 9.81);
const SHORT_CUT_LAMINAR: [(AnyId, f64); 10] =
    and(SHORT_CUT, [(STILL_AIR_FACTOR.any(), 0.59), (STILL_AIR_EXPONENT.any(), 0.25)]);
const SHORT_CUT_TURBULENT: [(AnyId, f64); 10] =
    and(SHORT_CUT, [(STILL_AIR_FACTOR.any(), 0.10), (STILL_AIR_EXPONENT.any(), 0.3333)]);
/// The wall of Lienhard's Example 8.1, one square metre of it; the air carries what the power law
/// says.
const LIENHARD: [(AnyId, f64); 10] = and(
    beside([0.02614, 1.566e-5, 0.711, 0.0034843], 26.0, 0.4, 9.8),
    [(STILL_AIR_COEFFICIENT.any(), 4.059), (SURFACE_AREA.any(), 1.0)],
);
const TALL_WALL: [(AnyId, f64); 12] = and(
    beside([0.026, 15.63e-6, 0.713, 0.00330033], 52.0, 2.0, 9.81),
    [
        (STILL_AIR_FACTOR.any(), 0.13),
        (STILL_AIR_EXPONENT.any(), 1.0 / 3.0),
        (STILL_AIR_COEFFICIENT.any(), 5.746),
        (SURFACE_AREA.any(), 2.0 * 2.5),
    ],
);
const ALONG_SHORT: [(AnyId, f64); 8] =
    and(along(5.0, 1.0, [0.03, 2e-5, 0.706]), warm(120.0, 1.0 * 5.0));
const ALONG_LONG: [(AnyId, f64); 8] =
    and(along(5.0, 5.0, [0.03, 2e-5, 0.706]), warm(120.0, 5.0 * 1.0));

pub(crate) const STILL_AIR: &[Case] = &[
    read(
        "vertical-plate-laminar-sukhatme",
        0.002,
        &SUKHATME,
        &[
            Found(RAYLEIGH_NUMBER.any(), 3.714e8),
            Found(STILL_AIR_NUSSELT.any(), 71.89),
            Found(STILL_AIR_COEFFICIENT.any(), 4.270),
        ],
        "S. P. Sukhatme, A Textbook on Heat Transfer, Example 6.1(d), page 258, as transcribed by volunteers",
        "Valid below Ra = 1e9. The same example gives 72.62 (exact), 76.07 (integral), 81.91 (McAdams): 14 % apart. The all-range Churchill-Chu form gives 90.4 for the same numbers.",
    ),
    recalled(
        "vertical-plate-all-range-incropera",
        0.01,
        &[
            (RAYLEIGH_NUMBER.any(), 2.63e9 * 0.690),
            (PRANDTL_NUMBER.any(), 0.690),
            (AIR_CONDUCTIVITY.any(), 0.0338),
            (SURFACE_HEIGHT.any(), 0.71),
            (SURFACE_AREA.any(), 0.71 * 1.02),
            (SURFACE_TEMPERATURE.any(), 300.0 + 209.0),
            (COOLING_AIR.any(), 300.0),
        ],
        &[
            Found(STILL_AIR_NUSSELT.any(), 147.0),
            Found(STILL_AIR_COEFFICIENT.any(), 7.0),
            Found(CONVECTED_HEAT.any(), 1060.0),
        ],
        "Bergman, Lavine, Incropera, DeWitt, Introduction to Heat Transfer, 6th ed., Example 9.2; Nusselt number read in the docstring of Nu_vertical_plate_Churchill, ht 1.2.0; geometry and heat from memory",
        "ht returns 147.162; computed h 7.006, heat 1060 W.",
    ),
    read(
        "vertical-plate-integral-sukhatme",
        0.005,
        &SUKHATME,
        &[Found(POWER_LAW_NUSSELT.any(), 76.07)],
        "S. P. Sukhatme, A Textbook on Heat Transfer, Example 6.1(b), page 258, as transcribed by volunteers",
        "Book uses 0.68; with 0.678 it is 75.85.",
    ),
    read(
        "vertical-plate-integral-lienhard",
        0.001,
        &LIENHARD,
        &[Found(POWER_LAW_COEFFICIENT.any(), 4.059), Found(CONVECTED_HEAT.any(), 105.53)],
        "J. H. Lienhard IV and V, A Heat Transfer Textbook, Example 8.1, page 410",
        "The example takes the expansion coefficient at the room temperature, not at the film temperature.",
    ),
    read(
        "horizontal-cylinder-library",
        0.0005,
        &[(CAN_RAYLEIGH_NUMBER.any(), 2.63e9 * 0.69), (PRANDTL_NUMBER.any(), 0.69)],
        &[Found(CAN_STILL_NUSSELT.any(), 139.135)],
        "Docstring of Nu_horizontal_cylinder_Churchill_Chu, ht 1.2.0",
        "The docstring credits Example 9.2 of the book, which is a plate: the number is right for the formula, the credit is copied.",
    ),
    recalled(
        "horizontal-pipe-convection-and-radiation",
        0.003,
        &[
            (CAN_RAYLEIGH_NUMBER.any(), 5.073e6),
            (PRANDTL_NUMBER.any(), 0.697),
            (AIR_CONDUCTIVITY.any(), 0.0313),
            (CAN_DIAMETER.any(), 0.1),
            // A metre of pipe: what it sheds by still air is that of the level can.
            (STILL_AIR_COEFFICIENT.any(), 7.227),
            (SURFACE_AREA.any(), PI * 0.1),
            (EMISSIVITY.any(), 0.85),
            (SURFACE_TEMPERATURE.any(), 438.0),
            (COOLING_AIR.any(), 296.0),
        ],
        &[
            Found(CAN_STILL_NUSSELT.any(), 23.09),
            Found(CAN_STILL_COEFFICIENT.any(), 7.227),
            Found(CONVECTED_HEAT.any(), 322.4),
            Found(RADIATED_HEAT.any(), 441.0),
            Found(SURFACE_HEAT.any(), 763.0),
        ],
        "Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer, Example 9.4 (steam pipe) (from memory)",
        "Editions differ in rounding (a printed Nusselt of 23.3 is remembered; the formula gives 23.09). Radiation beats convection here, as it often does on dark, hot, still parts.",
    ),
    read(
        "still-air-short-cut-laminar",
        0.008,
        &SHORT_CUT_LAMINAR,
        &[Found(POWER_LAW_COEFFICIENT.any(), 1.38)],
        "S. P. Sukhatme, A Textbook on Heat Transfer, Example 6.2, page 259, as transcribed by volunteers",
        "h = 1.38 (dT/L)^(1/4) in W/(m^2*K) with K and m. Computed factor 1.3888; the book prints 1.38. With CoolProp air it is 1.37 at 150 degC film and 1.51 at 40 degC film.",
    ),
    read(
        "still-air-short-cut-turbulent",
        0.003,
        &SHORT_CUT_TURBULENT,
        &[Found(POWER_LAW_COEFFICIENT.any(), 0.95)],
        "S. P. Sukhatme, A Textbook on Heat Transfer, Example 6.2, page 259, as transcribed by volunteers",
        "h = 0.95 dT^(1/3); computed 0.9509. Size drops out.",
    ),
    read(
        "tall-wall-turbulent",
        0.001,
        &TALL_WALL,
        &[
            Found(POWER_LAW_NUSSELT.any(), 442.0),
            Found(POWER_LAW_COEFFICIENT.any(), 5.746),
            Found(CONVECTED_HEAT.any(), 1494.0),
        ],
        "S. K. Som, Introduction to Heat Transfer, Example 5.7, as transcribed by volunteers",
        "Nitrogen; air is nearly the same. Other books use 0.10 for the same law: 30 % apart.",
    ),
];

pub(crate) const MOVING_AIR: &[Case] = &[
    read(
        "flat-plate-laminar",
        0.001,
        &ALONG_SHORT,
        &[
            Found(REYNOLDS_NUMBER.any(), 2.5e5),
            Found(MOVING_AIR_COEFFICIENT.any(), 8.869),
            Found(CONVECTED_HEAT.any(), 5321.0),
        ],
        "S. K. Som, Introduction to Heat Transfer, Example 7.3(b), as transcribed by volunteers",
        "0.664 Re^(1/2) Pr^(1/3), average over the plate.",
    ),
    read(
        "flat-plate-laminar-small",
        0.001,
        &along(2.8, 0.1, [0.0262, 1.6e-5, 0.71]),
        &[Found(REYNOLDS_NUMBER.any(), 1.75e4), Found(MOVING_AIR_COEFFICIENT.any(), 20.531)],
        "Laminar plate law as in S. K. Som, Example 7.3(b); sizes and speed after Nellis & Klein, Introduction to Engineering Heat Transfer, Example 8.3",
        "Properties chosen here. A fan at 2.8 m/s lifts a 10 cm board from about 6 to about 20 W/(m^2*K).",
    ),
    read(
        "flat-plate-mixed-5m",
        0.001,
        &ALONG_LONG,
        &[
            Found(REYNOLDS_NUMBER.any(), 1.25e6),
            Found(MOVING_AIR_COEFFICIENT.any(), 10.26),
            Found(CONVECTED_HEAT.any(), 6154.0),
        ],
        "S. K. Som, Introduction to Heat Transfer, Example 7.3(a), as transcribed by volunteers",
        "(0.037 Re^0.8 - 871) Pr^(1/3), turning turbulent at Re = 5e5.",
    ),
    read(
        "cylinder-in-wind-library",
        0.0005,
        &[(CAN_REYNOLDS_NUMBER.any(), 6071.0), (PRANDTL_NUMBER.any(), 0.70)],
        &[Found(CAN_NUSSELT.any(), 40.637)],
        "Bergman et al., Introduction to Heat Transfer, 6th ed., Example 7.3, read in the docstring of Nu_cylinder_Churchill_Bernstein, ht 1.2.0",
        "Library says it matches the book.",
    ),
];

pub(crate) const RADIATION_AND_FINS: &[Case] = &[
    read(
        "radiation-person",
        0.01,
        &[
            (SURFACE_AREA.any(), 1.50),
            (EMISSIVITY.any(), 0.97),
            (SURFACE_TEMPERATURE.any(), CELSIUS + 33.0),
            (COOLING_AIR.any(), CELSIUS + 22.0),
        ],
        &[Found(RADIATED_HEAT.any(), 99.0)],
        "OpenStax, College Physics, Example 14.9, as transcribed by volunteers",
        "Book takes 273, giving 98.53 W lost; with 273.15 it is 0.15 % more.",
    ),
    read(
        "radiation-black-400k",
        0.0005,
        &[
            (EMISSIVITY.any(), 1.0),
            (SURFACE_AREA.any(), 1.0),
            (SURFACE_TEMPERATURE.any(), 400.0),
            // As near to nothing as a temperature can be given: its fourth power is 4e-11 of the rest.
            (COOLING_AIR.any(), 1.0),
        ],
        &[Found(RADIATED_HEAT.any(), 1451.6)],
        "Docstring of q_rad, ht 1.2.0 (after Bergman et al., Introduction to Heat Transfer)",
        "Black body into nothing.",
    ),
    read(
        "pin-fin-copper",
        0.002,
        &[
            (SURFACE_COEFFICIENT.any(), 10.0),
            (FIN_LENGTH.any(), 30.0 * MILLI),
            (FIN_CONDUCTIVITY.any(), 350.0),
            // A round pin of 3 mm counts as a fin half as thick.
            (FIN_THICKNESS.any(), 3.0 * MILLI / 2.0),
        ],
        &[
            Found(FIN_NUMBER.any(), 0.1852),
            Found(FIN_TIP_SHARE.any(), 98.31 / 100.0),
            Found(FIN_EFFICIENCY.any(), 0.989),
            // √(k p / (h A)) tanh(m L), the usual form: 216.02 times 0.18311.
            Found(FIN_EFFECTIVENESS.any(), 39.56),
        ],
        "S. P. Sukhatme, A Textbook on Heat Transfer, Example 2.13(a), page 73, as transcribed by volunteers",
        "Tip at 118.31 degC. Fin efficiency tanh(mL)/mL = 0.989.",
    ),
    read(
        "fins-of-a-heat-sink",
        0.001,
        &[
            (SINK_NEEDED.any(), 3.2222),
            (SURFACE_COEFFICIENT.any(), 8.0),
            (FIN_EFFICIENCY.any(), 0.98),
            (FIN_LENGTH.any(), 25.0 * MILLI),
            (FIN_WIDTH.any(), 80.0 * MILLI),
        ],
        &[Found(FINS_NEEDED.any(), 9.896)],
        "Derived: surface of fins times coefficient and efficiency is one over the resistance, as in F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3",
        "The heat sink of the case heat-sink-controller: 10 fins of 40 cm2 each, both faces. Numbers chosen for this check.",
    ),
];

#[test]
fn still_air() {
    check(STILL_AIR);
}

#[test]
fn moving_air() {
    check(MOVING_AIR);
}

#[test]
fn radiation_and_fins() {
    check(RADIATION_AND_FINS);
}
