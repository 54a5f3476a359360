//! Part load, engines, air, climbs, and how mass grows mass.

use heftwise::quantity::catalogue::{
    drive::*, electrics::*, ground::*, heat::*, machine::*, motion::*, whole::*,
};

use super::unit::{CELSIUS, HOUR, KILO, KMH, MILLI};
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const PART_LOAD: &[Case] = &[
    read(
        "part-load-full",
        0.001,
        &[
            (RATED_MOTOR_POWER.any(), 10.0 * KILO),
            (STEADY_MOTOR_LOSS.any(), 719.2),
            (RATED_WINDING_LOSS.any(), 396.0),
            (MOTOR_LOAD.any(), 1.0),
        ],
        &[Found(PART_LOAD_EFFICIENCY.any(), 0.900)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-1, as transcribed by volunteers",
        "Fixed = 489.2 W rotation (245 V, 2 A, less 2^2 x 0.2) + 230 W field. Copper 395.7 W from 44.48 A and 0.2 ohm.",
    ),
    read(
        "part-load-copper",
        0.001,
        &[(RATED_MOTOR_CURRENT.any(), 44.48), (MOTOR_RESISTANCE.any(), 0.2)],
        &[Found(RATED_WINDING_LOSS.any(), 395.7)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-1, as transcribed by volunteers",
        "Fixed = 489.2 W rotation (245 V, 2 A, less 2^2 x 0.2) + 230 W field. Copper 395.7 W from 44.48 A and 0.2 ohm.",
    ),
    read(
        "part-load-quarter",
        0.001,
        &[
            (RATED_MOTOR_POWER.any(), 10.0 * KILO),
            (STEADY_MOTOR_LOSS.any(), 719.2),
            (RATED_WINDING_LOSS.any(), 396.0),
            (MOTOR_LOAD.any(), 0.25),
        ],
        &[Found(PART_LOAD_EFFICIENCY.any(), 0.771)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-2, as transcribed by volunteers",
        "Copper loss goes with the square of load, the rest stays. Computed 0.7707.",
    ),
    read(
        "part-load-half",
        0.001,
        &[
            (RATED_MOTOR_POWER.any(), 10.0 * KILO),
            (STEADY_MOTOR_LOSS.any(), 719.2),
            (RATED_WINDING_LOSS.any(), 396.0),
            (MOTOR_LOAD.any(), 0.5),
        ],
        &[Found(PART_LOAD_EFFICIENCY.any(), 0.859)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-2, as transcribed by volunteers",
        "Copper loss goes with the square of load, the rest stays. Computed 0.8594.",
    ),
    read(
        "part-load-motor-full",
        0.001,
        &[
            (MOTOR_INPUT_POWER.any(), 123.0 * KILO),
            (MOTOR_OUTPUT_POWER.any(), 123.0 * KILO - (1200.0 + 3420.0 + 6181.3)),
        ],
        &[Found(MOTOR_LOSS.any(), 10801.0), Found(MOTOR_EFFICIENCY.any(), 0.9122)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-4, as transcribed by volunteers",
        "600 V, 205 A compound motor; rotation loss scaled with speed as the book does (1725 rpm at quarter load).",
    ),
    read(
        "engine-mechanical-efficiency-half",
        0.001,
        &[
            (ENGINE_POWER.any(), 100.0 * KILO),
            (ENGINE_FRICTION_POWER.any(), 25.0 * KILO),
            (ENGINE_LOAD.any(), 0.5),
        ],
        &[
            Found(ENGINE_MECHANICAL_EFFICIENCY.any(), 0.667),
            Found(ENGINE_INDICATED_POWER.any(), 75.0 * KILO),
        ],
        "M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3, as transcribed by volunteers",
        "Same shape for an engine: friction power stays as load falls. The transcriber notes misprinted data in the book.",
    ),
    read(
        "engine-mechanical-efficiency-quarter",
        0.001,
        &[
            (ENGINE_POWER.any(), 100.0 * KILO),
            (ENGINE_FRICTION_POWER.any(), 25.0 * KILO),
            (ENGINE_LOAD.any(), 0.25),
        ],
        &[
            Found(ENGINE_MECHANICAL_EFFICIENCY.any(), 0.5),
            Found(ENGINE_INDICATED_POWER.any(), 50.0 * KILO),
        ],
        "M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3, as transcribed by volunteers",
        "Same shape for an engine: friction power stays as load falls. The transcriber notes misprinted data in the book.",
    ),
    read(
        "motor-input-and-heat",
        0.001,
        &[
            (DRIVING_POWER.any(), 1492.0),
            (DRIVE_EFFICIENCY.any(), 0.75),
            (BATTERY_VOLTAGE.any(), 220.0),
            (MOTOR_OUTPUT_POWER.any(), 1492.0),
            (MOTOR_INPUT_POWER.any(), 1989.33),
        ],
        &[
            Found(POWER_AT_SPEED.any(), 1989.33),
            Found(CURRENT_AT_SPEED.any(), 9.04),
            Found(MOTOR_EFFICIENCY.any(), 0.75),
            Found(MOTOR_LOSS.any(), 497.33),
        ],
        "R. L. Boylestad, Introductory Circuit Analysis, Example 4.10, as transcribed by volunteers",
        "Heat computed for this check.",
    ),
    read(
        "magnet-warm-80c",
        0.001,
        &[
            (TORQUE_CONSTANT.any(), 22.1 * MILLI),
            (MAGNET_COEFFICIENT.any(), -0.0012),
            (HOUSING_TEMPERATURE.any(), CELSIUS + 80.0),
        ],
        &[Found(WARM_TORQUE_CONSTANT.any(), 20.509 * MILLI)],
        "Shanghai magnet maker's NdFeB table (remanence coefficient -0.12 %/K, N 80 degC, M 100 degC)",
        "Reversible part only, at the N grade's limit. Numbers chosen for this check, coefficient read. More current is then needed for the same torque, on top of the higher resistance of warm copper.",
    ),
    read(
        "magnet-warm-80c-factor",
        0.001,
        &[
            (TORQUE_CONSTANT.any(), 1.0),
            (MAGNET_COEFFICIENT.any(), -0.0012),
            (HOUSING_TEMPERATURE.any(), CELSIUS + 80.0),
        ],
        &[Found(WARM_TORQUE_CONSTANT.any(), 0.9280)],
        "Shanghai magnet maker's NdFeB table (remanence coefficient -0.12 %/K, N 80 degC, M 100 degC)",
        "Reversible part only, at the N grade's limit. Numbers chosen for this check, coefficient read. More current is then needed for the same torque, on top of the higher resistance of warm copper.",
    ),
    recalled(
        "climb-car",
        0.005,
        &[
            (MASS.any(), 1200.0),
            (GRAVITY.any(), 9.8), // The arctangent of 0.15.
            (SLOPE.any(), 0.148_889_947_609_497_25),
            (ROLLING_COEFFICIENT.any(), 0.0),
            (DRIVING_SPEED.any(), 90.0 * KMH),
            (DRIVE_EFFICIENCY.any(), 0.75),
        ],
        &[Found(POWER_AT_SPEED.any(), 58.0 * KILO)],
        "OpenStax, University Physics Volume 1, section 7.4, automobile driving uphill (from memory)",
        "Computed 58.15 kW (78 hp). Slope is rise over run: take the sine of its arctangent.",
    ),
    read(
        "car-air-power",
        0.04,
        &[
            (AIR_DENSITY.any(), 1.3),
            (DRAG_AREA.any(), 1.0),
            (DRIVING_SPEED.any(), 31.0),
            (STEADY_RESISTANCE.any(), 0.0),
            (DRIVE_EFFICIENCY.any(), 0.25),
        ],
        &[Found(POWER_AT_SPEED.any(), 80.0 * KILO)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "Computed 77.5 kW; the book rounds to 80 kW, 110 km in an hour, 80 kWh per 100 km (69 to 73 unrounded).",
    ),
    read(
        "stop-distance-balance",
        0.03,
        &[(MASS.any(), 1000.0), (AIR_DENSITY.any(), 1.3), (DRAG_AREA.any(), 1.0)],
        &[Found(STOP_SPACING_BALANCE.any(), 750.0)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "m/(rho A); computed 769 m. Below it mass rules, above it air. Slow off-road machines are far below: mass, slope and soil rule.",
    ),
    read(
        "stop-distance-balance-cart",
        0.001,
        &[(MASS.any(), 180.0), (AIR_DENSITY.any(), 1.2), (DRAG_AREA.any(), 0.8)],
        &[Found(STOP_SPACING_BALANCE.any(), 187.5)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "Numbers chosen for this check, formula read.",
    ),
    read(
        "petrol-engine",
        0.002,
        &[
            (ENGINE_POWER.any(), 35.0 * KILO),
            (ENGINE_CONSUMPTION.any(), 0.4 * 1.0 / (KILO * HOUR)),
            (CALORIFIC_VALUE.any(), 43000.0 * KILO),
            (AIR_FUEL_RATIO.any(), 14.0),
        ],
        &[
            Found(ENGINE_EFFICIENCY.any(), 0.209),
            Found(FUEL_FLOW.any(), 14.0 * 1.0 / HOUR),
            Found(ENGINE_AIR_FLOW.any(), 196.0 * 1.0 / HOUR),
            Found(ENGINE_WASTE_HEAT.any(), 132.2 * KILO),
        ],
        "M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.4, as transcribed by volunteers",
        "Waste heat computed for this check: nearly four times the shaft power.",
    ),
    recalled(
        "brake-mean-pressure",
        0.001,
        &[(ENGINE_TORQUE.any(), 100.0), (ENGINE_DISPLACEMENT.any(), 1e-3)],
        &[Found(BRAKE_MEAN_PRESSURE.any(), 1256.0 * KILO)],
        "J. B. Heywood, Internal Combustion Engine Fundamentals, section 2.7: 6.28 n_R T / V in kPa, N m and dm³ (from memory)",
        "Four strokes, so two turns for each cycle.",
    ),
];

pub(crate) const GROWTH: &[Case] = &[
    recalled(
        "growth-factor-all-free",
        0.002,
        &[(GROWTH_SHARE.any(), 0.4872)],
        &[Found(GROWTH_FACTOR.any(), 1.95)],
        "E. Alonso, T. M. Lee, C. Bjelkengren, R. Roth, R. E. Kirchain, Evaluating the Potential for Secondary Mass Savings in Vehicle Lightweighting, Environ. Sci. Technol. 2012, abstract (first half read at figures from memory)",
        "Passenger cars, all subsystems still open to redesign, mean (5th percentile 0.77). Share g with growth = 1/(1 - g).",
    ),
    recalled(
        "growth-factor-frozen",
        0.002,
        &[(GROWTH_SHARE.any(), 0.1071)],
        &[Found(GROWTH_FACTOR.any(), 1.12)],
        "E. Alonso, T. M. Lee, C. Bjelkengren, R. Roth, R. E. Kirchain, Evaluating the Potential for Secondary Mass Savings in Vehicle Lightweighting, Environ. Sci. Technol. 2012, abstract (first half read at figures from memory)",
        "Passenger cars, four large subsystems frozen. Share g with growth = 1/(1 - g).",
    ),
    read(
        "mass-spiral-small",
        0.001,
        &[
            (BATTERY_MASS_SHARE.any(), 0.2),
            (DRIVE_MASS_SHARE.any(), 0.12),
            (FRAME_SHARE.any(), 0.18),
            (BARE_MASS.any(), 3.0),
        ],
        &[Found(GROWTH_FACTOR.any(), 2.0000), Found(CLOSED_MASS.any(), 6.0000)],
        "Weight sum with parts proportional to gross weight; growth factor as derivative of gross by fixed weight, B. Saelman, SAWE paper 952 (1973), abstract at",
        "Numbers chosen for this check: battery 20 %, drive 12 %, structure 18 %. Each kilogram of payload costs the growth factor in kilograms. As the shares near 1 the machine does not close: say so in words.",
    ),
];

#[test]
fn part_load_and_engines() {
    check(PART_LOAD);
}

#[test]
fn growth_of_mass() {
    check(GROWTH);
}
