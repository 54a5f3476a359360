//! Batteries.

use heftwise::quantity::catalogue::{drive::*, electrics::*, heat::*};

use super::unit::{CELSIUS, HOUR, MILLI, MINUTE};
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const BATTERIES: &[Case] = &[
    read(
        "two-loads-12v",
        0.012,
        &[
            (LIGHT_TEST_CURRENT.any(), 1.188),
            (LIGHT_TEST_VOLTAGE.any(), 11.9),
            (HEAVY_TEST_CURRENT.any(), 20.0),
            (HEAVY_TEST_VOLTAGE.any(), 10.0),
        ],
        &[Found(TESTED_BATTERY_RESISTANCE.any(), 0.100)],
        "OpenStax, University Physics Volume 2, section 10.1, example of a 12.00-V battery of 0.100 ohm on 10.0 ohm and on 0.500 ohm",
        "Printed currents and voltages in, the printed resistance out; the light voltage is printed to three figures.",
    ),
    read(
        "sag-light-load",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 12.0),
            (BATTERY_RESISTANCE.any(), 0.100),
            (BATTERY_CURRENT.any(), 1.188),
            (MOTOR_SUPPLY_VOLTAGE.any(), 12.0),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.0),
            (SUPPLY_RESISTANCE.any(), 0.100),
            (MOTOR_RESISTANCE.any(), 10.0),
        ],
        &[Found(PEAK_MOTOR_CURRENT.any(), 1.188), Found(BATTERY_LOADED_VOLTAGE.any(), 11.88)],
        "OpenStax, College Physics, section 21.2, worked example, part (a)",
        "Printed as 11.9 V. A plain resistance as load is a motor held still.",
    ),
    read(
        "sag-heavy-load",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 12.0),
            (BATTERY_RESISTANCE.any(), 0.100),
            (BATTERY_CURRENT.any(), 20.0),
            (POWER_AT_SPEED.any(), 200.0),
            (MOTOR_SUPPLY_VOLTAGE.any(), 12.0),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.0),
            (SUPPLY_RESISTANCE.any(), 0.100),
            (MOTOR_RESISTANCE.any(), 0.500),
        ],
        &[
            Found(PEAK_MOTOR_CURRENT.any(), 20.0),
            Found(CURRENT_AT_SPEED.any(), 20.0),
            Found(BATTERY_LOADED_VOLTAGE.any(), 10.0),
            Found(BATTERY_POWER.any(), 200.0),
            Found(BATTERY_HEAT.any(), 40.0),
        ],
        "OpenStax, College Physics, section 21.2, worked example, part (b), (c)",
        "Battery heat computed for this check: a sixth of all the power.",
    ),
    read(
        "pack-6s1p",
        0.001,
        &[
            (CELLS_IN_SERIES.any(), 6.0),
            (CELLS_IN_PARALLEL.any(), 1.0),
            (CELL_VOLTAGE.any(), 3.7),
            (CELL_RESISTANCE.any(), 3.0 * MILLI),
            (BATTERY_CURRENT.any(), 40.0),
        ],
        &[
            Found(BATTERY_VOLTAGE.any(), 22.2),
            Found(BATTERY_RESISTANCE.any(), 18.0 * MILLI),
            Found(BATTERY_SAG.any(), 0.72),
            Found(BATTERY_HEAT.any(), 28.8),
        ],
        "Series and parallel resistances; OpenStax, College Physics, section 21.2 (read)",
        "Numbers chosen for this check. Leads and plugs of a small pack add one to three milliohms.",
    ),
    recalled(
        "pack-self-heating",
        0.001,
        &[
            (BATTERY_HEAT.any(), 28.8),
            (WORK_TIME.any(), 300.0),
            (PACK_MASS.any(), 0.75),
            (PACK_SPECIFIC_HEAT.any(), 1000.0),
        ],
        &[Found(PACK_RISE.any(), 11.52)],
        "Energy balance; a specific heat near 1000 J/(kg*K) is usual for lithium-ion cells in the literature (from memory)",
        "Constructed. Starting from 35 degC on a warm day this pack reaches 46 degC in five minutes.",
    ),
    read(
        "c-rate-1c",
        0.001,
        &[
            (BATTERY_CHARGE.any(), 100.0 * HOUR),
            (CELL_C_RATE.any(), 1.0),
            (BATTERY_CURRENT.any(), 100.0),
        ],
        &[
            Found(LABEL_CURRENT.any(), 100.0),
            Found(TIME_TO_EMPTY.any(), 60.0 * MINUTE),
            Found(BATTERY_C_RATE.any(), 1.0),
        ],
        "MIT Electric Vehicle Team, A Guide to Understanding Battery Specifications (December 2008)",
        "Time is the naming rule, not a promise: fast discharge gives less.",
    ),
    read(
        "c-rate-half-c",
        0.001,
        &[
            (BATTERY_CHARGE.any(), 100.0 * HOUR),
            (CELL_C_RATE.any(), 0.5),
            (BATTERY_CURRENT.any(), 50.0),
        ],
        &[
            Found(LABEL_CURRENT.any(), 50.0),
            Found(TIME_TO_EMPTY.any(), 120.0 * MINUTE),
            Found(BATTERY_C_RATE.any(), 0.5),
        ],
        "MIT Electric Vehicle Team, A Guide to Understanding Battery Specifications (December 2008)",
        "Time is the naming rule, not a promise: fast discharge gives less.",
    ),
    read(
        "runtime-6s-5ah",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 22.2),
            (BATTERY_CHARGE.any(), 5.0 * HOUR),
            (USABLE_SHARE.any(), 0.8),
            (BATTERY_POWER.any(), 180.0),
        ],
        &[Found(BATTERY_ENERGY.any(), 111.0 * HOUR), Found(RUN_TIME.any(), 29.6 * MINUTE)],
        "Energy = voltage x charge; definitions in MIT Electric Vehicle Team, A Guide to Understanding Battery Specifications (December 2008)",
        "Numbers chosen for this check. Lead-acid pays the rate law as well.",
    ),
    read(
        "runtime-12v-36ah",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 12.0),
            (BATTERY_CHARGE.any(), 36.0 * HOUR),
            (USABLE_SHARE.any(), 0.5),
            (BATTERY_POWER.any(), 150.0),
        ],
        &[Found(BATTERY_ENERGY.any(), 432.0 * HOUR), Found(RUN_TIME.any(), 86.4 * MINUTE)],
        "Energy = voltage x charge; definitions in MIT Electric Vehicle Team, A Guide to Understanding Battery Specifications (December 2008)",
        "Numbers chosen for this check. Lead-acid pays the rate law as well.",
    ),
    recalled(
        "peukert-exponent",
        0.002,
        &[
            (BATTERY_CHARGE.any(), 42.0 * HOUR),
            (RATED_DISCHARGE_TIME.any(), 10.0 * HOUR),
            (TEST_DISCHARGE_CURRENT.any(), 33.6),
            (TEST_DISCHARGE_TIME.any(), 1.0 * HOUR),
            (PEUKERT_EXPONENT.any(), 1.107),
            (BATTERY_CURRENT.any(), 1.0),
        ],
        &[
            Found(TESTED_PEUKERT_EXPONENT.any(), 1.107),
            Found(PEUKERT_TIME.any(), 49.0 * HOUR),
            Found(PEUKERT_CHARGE.any(), 49.0 * HOUR),
        ],
        "J. Larminie, J. Lowry, Electric Vehicle Technology Explained, ch. 2, 42 Ah lead-acid example (from memory)",
        "Exponent = ln(T1/T2)/ln(I2/I1); Peukert capacity in A^k h (read as Ah at 1 A).",
    ),
    read(
        "peukert-time-20a",
        0.001,
        &[
            (BATTERY_CHARGE.any(), 100.0 * HOUR),
            (RATED_DISCHARGE_TIME.any(), 20.0 * HOUR),
            (BATTERY_CURRENT.any(), 20.0),
            (PEUKERT_EXPONENT.any(), 1.2),
        ],
        &[Found(PEUKERT_TIME.any(), 3.7893 * HOUR), Found(PEUKERT_CHARGE.any(), 75.79 * HOUR)],
        "myElectrical, Lead Acid Batteries (rate law with rated time)",
        "t = H (C/(I H))^k. Formula read; numbers chosen here. Sources disagree on the bare form t = C/I^k: it is wrong when C is the 20-hour capacity (a published note gets 14.5 h from 100 Ah at 5 A and k = 1.2, where 20 h is right).",
    ),
    read(
        "cold-lead-acid-0c",
        0.001,
        &[(BATTERY_TEMPERATURE.any(), CELSIUS + 0.0), (CAPACITY_COEFFICIENT.any(), 0.006)],
        &[Found(LEAD_ACID_COLD_SHARE.any(), 0.850)],
        "Vela Power, support notes (0.006 1/K for 10 to 20 h discharge, 0.01 1/K for 1 to 3 h)",
        "Cross-check: another maker's table gives -16 % at 0 degC for over an hour and -13 to -15 % at 5 degC for under an hour.",
    ),
    read(
        "cold-lead-acid-5c-fast",
        0.001,
        &[(BATTERY_TEMPERATURE.any(), CELSIUS + 5.0), (CAPACITY_COEFFICIENT.any(), 0.01)],
        &[Found(LEAD_ACID_COLD_SHARE.any(), 0.800)],
        "Vela Power, support notes (0.006 1/K for 10 to 20 h discharge, 0.01 1/K for 1 to 3 h)",
        "Cross-check: another maker's table gives -16 % at 0 degC for over an hour and -13 to -15 % at 5 degC for under an hour.",
    ),
];

#[test]
fn batteries() {
    check(BATTERIES);
}
