//! The air outside, and what it takes from an engine.

use heftwise::quantity::catalogue::motion::*;

use super::unit::*;
use super::{Case, Expect::Found, check, read, recalled};

const US_1976: &str = "U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF)";

pub(crate) const AIR: &[Case] = &[
    read(
        "standard-air-0m",
        0.0005,
        &[(ALTITUDE.any(), 0.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 288.15),
            Found(STANDARD_PRESSURE.any(), 101_325.0),
            Found(AIR_DENSITY.any(), 1.225),
        ],
        US_1976,
        "Sea-level constants, read at scipp.ucsc.edu.",
    ),
    recalled(
        "standard-air-1000m",
        0.0005,
        &[(ALTITUDE.any(), 1000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 281.651),
            Found(STANDARD_PRESSURE.any(), 89_876.0),
            Found(AIR_DENSITY.any(), 1.1117),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    recalled(
        "standard-air-3000m",
        0.0005,
        &[(ALTITUDE.any(), 3000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 268.659),
            Found(STANDARD_PRESSURE.any(), 70_121.0),
            Found(AIR_DENSITY.any(), 0.90925),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    recalled(
        "standard-air-4000m",
        0.0005,
        &[(ALTITUDE.any(), 4000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 262.166),
            Found(STANDARD_PRESSURE.any(), 61_660.0),
            Found(AIR_DENSITY.any(), 0.81935),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    recalled(
        "standard-air-5000m",
        0.0005,
        &[(ALTITUDE.any(), 5000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 255.676),
            Found(STANDARD_PRESSURE.any(), 54_048.0),
            Found(AIR_DENSITY.any(), 0.73643),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    read(
        "air-0c",
        0.003,
        &[(AIR_TEMPERATURE.any(), 273.15), (AIR_PRESSURE.any(), 101_325.0)],
        &[Found(AIR_DENSITY.any(), 1.29)],
        "OpenStax, University Physics Volume 1, section 14.1, table of densities (module m58353)",
        "Printed.",
    ),
    recalled(
        "air-minus20c",
        0.002,
        &[(AIR_TEMPERATURE.any(), 253.15), (AIR_PRESSURE.any(), 101_325.0)],
        &[Found(AIR_DENSITY.any(), 1.394)],
        "Y. A. Cengel, Heat and Mass Transfer, Table A-15 (from memory)",
        "",
    ),
    recalled(
        "air-20c",
        0.002,
        &[(AIR_TEMPERATURE.any(), 293.15), (AIR_PRESSURE.any(), 101_325.0)],
        &[Found(AIR_DENSITY.any(), 1.204)],
        "Y. A. Cengel, Heat and Mass Transfer, Table A-15 (from memory)",
        "",
    ),
    read(
        "altitude-derate-5000ft",
        0.001,
        &[(ALTITUDE.any(), 5000.0 * FOOT)],
        &[Found(ALTITUDE_POWER_LOSS.any(), 0.075)],
        "Civil-engineering handbook rule for haul units; read at civil4m.com",
        "Worked from the read rule of thumb.",
    ),
    read(
        "altitude-derate-8000ft",
        0.001,
        &[(ALTITUDE.any(), 8000.0 * FOOT)],
        &[Found(ALTITUDE_POWER_LOSS.any(), 0.165)],
        "Civil-engineering handbook rule for haul units; read at civil4m.com",
        "Worked from the read rule of thumb.",
    ),
];

#[test]
fn air() {
    check(AIR);
}
