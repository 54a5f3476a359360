//! Wires.

use heftwise::quantity::catalogue::{drive::*, electrics::*, heat::*};

use super::unit::{CELSIUS, CM, KILO, MILLI, MM2};
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const WIRES: &[Case] = &[
    recalled(
        "copper-at-100c",
        0.0005,
        &[
            (MOTOR_RESISTANCE.any(), 1.0),
            (COPPER_COEFFICIENT.any(), 0.00393),
            (WINDING_RISE.any(), 80.0), // As a wire that has one ohm at 20 degC.
            (WIRE_LENGTH.any(), 0.5),
            (WIRE_AREA.any(), 1.7241e-8),
            (WIRE_TEMPERATURE.any(), CELSIUS + 100.0),
        ],
        &[Found(WARM_MOTOR_RESISTANCE.any(), 1.3144), Found(WIRE_RESISTANCE.any(), 1.3144)],
        "NBS Handbook 100, Copper Wire Tables (1966), coefficient of annealed copper at 20 degC",
        "Rule of thumb: 1 % more for each 2.5 K. Only the front matter was read; the coefficient is from memory and agrees with a mailing-list post of 2000.",
    ),
    read(
        "hot-filament",
        0.005,
        &[
            (MOTOR_RESISTANCE.any(), 0.350),
            (COPPER_COEFFICIENT.any(), 0.0045),
            (WINDING_RISE.any(), 2830.0),
        ],
        &[Found(WARM_MOTOR_RESISTANCE.any(), 4.8)],
        "OpenStax, College Physics, Example 20.6, as transcribed by volunteers",
        "Computed 4.807 ohm. Far outside the linear range in truth; good only as arithmetic.",
    ),
    recalled(
        "copper-coefficient-0c",
        0.0008,
        &[
            (MOTOR_RESISTANCE.any(), 1.0 - 20.0 * 0.00393),
            (COPPER_COEFFICIENT.any(), 0.00427),
            (WINDING_RISE.any(), 100.0),
        ],
        &[Found(WARM_MOTOR_RESISTANCE.any(), 1.3144)],
        "NBS Handbook 100, Copper Wire Tables (1966), table of coefficients for other initial temperatures (from memory)",
        "Computed 0.004265 1/K. The printed coefficient, from the resistance at 0 degC, must lead to the same at 100 degC as that of 20 degC; 0.08 % of it is 0.3 % of the coefficient.",
    ),
    recalled(
        "copper-coefficient-25c",
        0.0006,
        &[
            (MOTOR_RESISTANCE.any(), 1.0 + 5.0 * 0.00393),
            (COPPER_COEFFICIENT.any(), 0.00385),
            (WINDING_RISE.any(), 75.0),
        ],
        &[Found(WARM_MOTOR_RESISTANCE.any(), 1.3144)],
        "NBS Handbook 100, Copper Wire Tables (1966), table of coefficients for other initial temperatures (from memory)",
        "Computed 0.003854 1/K. The printed coefficient, from the resistance at 25 degC, must lead to the same at 100 degC as that of 20 degC; 0.06 % of it is 0.3 % of the coefficient.",
    ),
    read(
        "wire-28-gauge-100-ft",
        0.006,
        &[
            (WIRE_LENGTH.any(), 0.5 * 3048.0 * CM),
            (WIRE_DIAMETER.any(), 0.032 * CM),
            (WIRE_METAL_FACTOR.any(), 1.723 / 1.7241),
        ],
        &[Found(WIRE_RESISTANCE.any(), 6.5)],
        "R. L. Boylestad, Introductory Circuit Analysis, Example 3.7, as transcribed by volunteers",
        "Metric way gives 6.530 ohm, the book's second way (10.37 ohm per mil-foot, 159.79 circular mils) gives 6.490 ohm; both printed as 6.5.",
    ),
    read(
        "filament-diameter",
        0.002,
        &[
            (WIRE_LENGTH.any(), 0.5 * 4.00 * CM),
            (WIRE_DIAMETER.any(), 0.0903 * MILLI),
            (WIRE_METAL_FACTOR.any(), 5.6e-8 / 1.7241e-8),
        ],
        &[Found(WIRE_RESISTANCE.any(), 0.350)],
        "OpenStax, College Physics, Example 20.5, as transcribed by volunteers",
        "Printed as 9.0e-5 m; computed 9.027e-5 m. Diameter in, given resistance out.",
    ),
    read(
        "awg-10",
        0.001,
        &[(WIRE_GAUGE.any(), 10.0)],
        &[Found(WIRE_DIAMETER.any(), 2.588 * MILLI), Found(WIRE_AREA.any(), 5.261 * MM2)],
        "ASTM B258 (American wire gauge: 0.0050 in at No. 36, 0.4600 in at No. 0000, equal ratios between)",
        "Solid wire. d = 0.127 mm x 92^((36-n)/39).",
    ),
    read(
        "awg-0000",
        0.001,
        &[(WIRE_GAUGE.any(), -3.0)],
        &[Found(WIRE_DIAMETER.any(), 11.684 * MILLI), Found(WIRE_AREA.any(), 107.2 * MM2)],
        "ASTM B258 (American wire gauge: 0.0050 in at No. 36, 0.4600 in at No. 0000, equal ratios between)",
        "0000 (4/0) is n = -3 in the formula.",
    ),
    recalled(
        "awg-10-ohm-per-km",
        0.002,
        &[
            (WIRE_GAUGE.any(), 10.0),
            (WIRE_LENGTH.any(), 500.0),
            (WIRE_TEMPERATURE.any(), CELSIUS + 20.0),
        ],
        &[Found(WIRE_RESISTANCE.any(), 3.277 * MILLI * KILO)],
        "NBS Handbook 100, Copper Wire Tables (1966), Table 5 (from memory)",
        "0.9989 ohm per 1000 ft in the handbook; computed 3.2770 ohm/km. Stranded wire of the same gauge is a few percent higher.",
    ),
    recalled(
        "awg-14-ohm-per-km",
        0.002,
        &[
            (WIRE_GAUGE.any(), 14.0),
            (WIRE_LENGTH.any(), 500.0),
            (WIRE_TEMPERATURE.any(), CELSIUS + 20.0),
        ],
        &[Found(WIRE_RESISTANCE.any(), 8.284 * MILLI * KILO)],
        "NBS Handbook 100, Copper Wire Tables (1966), Table 5 (from memory)",
        "2.525 ohm per 1000 ft in the handbook; computed 8.2853 ohm/km. Stranded wire of the same gauge is a few percent higher.",
    ),
    recalled(
        "voltage-drop-12-gauge",
        0.001,
        &[
            (WIRE_RESISTANCE.any(), 5.211 * MILLI * 2.0 * 0.6),
            (BATTERY_CURRENT.any(), 60.0),
            (PEAK_BATTERY_CURRENT.any(), 60.0),
        ],
        &[
            Found(WIRE_DROP.any(), 0.3752),
            Found(PEAK_WIRE_DROP.any(), 0.3752),
            Found(WIRE_HEAT.any(), 22.510),
        ],
        "Ohm's law over both wires; resistance from NBS Handbook 100, Copper Wire Tables (1966) (from memory)",
        "Constructed for this check. Count both conductors. Plugs, joints and fuse holders often add as much again.",
    ),
    recalled(
        "wire-heating-rate-10",
        0.001,
        &[(PEAK_BATTERY_CURRENT.any(), 10.0), (WIRE_AREA.any(), MM2)],
        &[Found(WIRE_SECOND_RISE.any(), 0.5011)],
        "Energy balance; copper constants NBS Handbook 100 (from memory), specific heat OpenStax College Physics Table 14.1",
        "Constructed for this check. Goes with the square of current density and does not depend on wire size. Start value at 20 degC; it speeds up as the copper warms.",
    ),
    recalled(
        "wire-heating-rate-25",
        0.001,
        &[(PEAK_BATTERY_CURRENT.any(), 25.0), (WIRE_AREA.any(), MM2)],
        &[Found(WIRE_SECOND_RISE.any(), 3.1321)],
        "Energy balance; copper constants NBS Handbook 100 (from memory), specific heat OpenStax College Physics Table 14.1",
        "Constructed for this check. Goes with the square of current density and does not depend on wire size. Start value at 20 degC; it speeds up as the copper warms.",
    ),
    recalled(
        "adiabatic-k-copper-pvc",
        0.005,
        &[
            (WIRE_AREA.any(), MM2),
            (WIRE_TEMPERATURE.any(), CELSIUS + 70.0),
            (WIRE_FAULT_TEMPERATURE.any(), CELSIUS + 160.0),
            (PEAK_BATTERY_CURRENT.any(), 114.84),
        ],
        &[Found(WIRE_WITHSTAND_TIME.any(), 1.0)],
        "IEC 60364-5-54 / IEC 60949, constant k for copper (from memory)",
        "k = sqrt(Qc (234.5+20)/rho20 x ln((234.5+Tend)/(234.5+Tstart))); computed 114.84. Allowed I^2 t = (k x area)^2. Includes the rise of resistance while heating.",
    ),
    recalled(
        "adiabatic-k-squared",
        0.005,
        &[
            (WIRE_AREA.any(), MM2),
            (WIRE_TEMPERATURE.any(), CELSIUS + 70.0),
            (WIRE_FAULT_TEMPERATURE.any(), CELSIUS + 160.0),
            (PEAK_BATTERY_CURRENT.any(), 1.0),
        ],
        &[Found(WIRE_WITHSTAND_TIME.any(), 115.0 * 115.0)],
        "IEC 60364-5-54 / IEC 60949, constant k for copper (from memory)",
        "k = sqrt(Qc (234.5+20)/rho20 x ln((234.5+Tend)/(234.5+Tstart))); computed 114.84. Allowed I^2 t = (k x area)^2. Includes the rise of resistance while heating.",
    ),
];

#[test]
fn wires() {
    check(WIRES);
}
