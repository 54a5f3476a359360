//! Part load, engines, air, climbs, and how mass grows mass.

use heftwise::physics::drive::{gear, motor};
use heftwise::physics::electrics::battery;
use heftwise::physics::heat::brake;
use heftwise::physics::{motion, weight, whole};
use heftwise::quantity::Measure;
use heftwise::quantity::catalogue::{drive::*, heat::*};

use super::unit::{CELSIUS, HOUR, KILO, KMH, MILLI};
use super::{
    Case,
    Expect::{By, Found},
    check, of, read, recalled,
};

const PART_LOAD: &[Case] = &[
    read(
        "part-load-full",
        0.001,
        &[],
        &[By(
            "efficiency",
            || motor::part_load_efficiency(of(10000.0), of(719.2), of(396.0), of(1.0)).si(),
            0.900,
        )],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-1, as transcribed by volunteers",
        "Fixed = 489.2 W rotation (245 V, 2 A, less 2^2 x 0.2) + 230 W field. Copper 395.7 W from 44.48 A and 0.2 ohm.",
    ),
    read(
        "part-load-quarter",
        0.001,
        &[],
        &[By(
            "efficiency",
            || motor::part_load_efficiency(of(10000.0), of(719.2), of(396.0), of(0.25)).si(),
            0.771,
        )],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-2, as transcribed by volunteers",
        "Copper loss goes with the square of load, the rest stays. Computed 0.7707.",
    ),
    read(
        "part-load-half",
        0.001,
        &[],
        &[By(
            "efficiency",
            || motor::part_load_efficiency(of(10000.0), of(719.2), of(396.0), of(0.5)).si(),
            0.859,
        )],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-2, as transcribed by volunteers",
        "Copper loss goes with the square of load, the rest stays. Computed 0.8594.",
    ),
    read(
        "part-load-motor-full",
        0.001,
        &[],
        &[
            By("loss", || motor::loss(of(123_000.0), of(123_000.0 * 0.9122)).si(), 10801.0),
            By(
                "efficiency",
                || {
                    motor::efficiency(
                        motor::loss(of(123_000.0), of(1200.0 + 3420.0 + 6181.3)),
                        of(123_000.0),
                    )
                    .si()
                },
                0.9122,
            ),
        ],
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
        &[Found(ENGINE_MECHANICAL_EFFICIENCY.any(), 0.667)],
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
        &[Found(ENGINE_MECHANICAL_EFFICIENCY.any(), 0.5)],
        "M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3, as transcribed by volunteers",
        "Same shape for an engine: friction power stays as load falls. The transcriber notes misprinted data in the book.",
    ),
    read(
        "motor-input-and-heat",
        0.001,
        &[(MOTOR_OUTPUT_POWER.any(), 1492.0), (MOTOR_INPUT_POWER.any(), 1989.33)],
        &[
            By("input power", || motor::input_from_efficiency(of(1492.0), of(0.75)).si(), 1989.33),
            By(
                "current",
                || battery::current_for_power(of(220.0), of(0.0), of(1989.33)).unwrap().si(),
                9.04,
            ),
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
        &[
            Found(WARM_TORQUE_CONSTANT.any(), 20.509 * MILLI),
            By(
                "factor",
                || motor::warm_factor(of(CELSIUS + 80.0), of(CELSIUS + 20.0), of(-0.0012)).si(),
                0.9280,
            ),
        ],
        "Shanghai magnet maker's NdFeB table (remanence coefficient -0.12 %/K, N 80 degC, M 100 degC)",
        "Reversible part only, at the N grade's limit. Numbers chosen for this check, coefficient read. More current is then needed for the same torque, on top of the higher resistance of warm copper.",
    ),
    recalled(
        "climb-car",
        0.005,
        &[],
        &[By(
            "power",
            || {
                motor::input_from_efficiency(
                    gear::push_power(
                        weight::force_along_slope(
                            weight::weight(of(1200.0), of(9.8)),
                            of(0.15_f64.atan()),
                        ),
                        of(90.0 * KMH),
                    ),
                    of(0.75),
                )
                .si()
            },
            58.0 * KILO,
        )],
        "OpenStax, University Physics Volume 1, section 7.4, automobile driving uphill (from memory)",
        "Computed 58.15 kW (78 hp). Slope is rise over run: take the sine of its arctangent.",
    ),
    read(
        "car-air-power",
        0.04,
        &[],
        &[By(
            "engine power",
            || {
                motor::input_from_efficiency(
                    gear::push_power(motion::air_drag(of(1.3), of(1.0), of(31.0)), of(31.0)),
                    of(0.25),
                )
                .si()
            },
            80.0 * KILO,
        )],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "Computed 77.5 kW; the book rounds to 80 kW, 110 km in an hour, 80 kWh per 100 km (69 to 73 unrounded).",
    ),
    read(
        "stop-distance-balance",
        0.03,
        &[],
        &[By(
            "distance",
            || {
                brake::energy(of(1000.0), of(20.0), of(9.81), of(0.0)).si()
                    / motion::air_drag(of(1.3), of(1.0), of(20.0)).si()
            },
            750.0,
        )],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "m/(rho A); computed 769 m. Below it mass rules, above it air. Slow off-road machines are far below: mass, slope and soil rule.",
    ),
    read(
        "stop-distance-balance-cart",
        0.001,
        &[],
        &[By(
            "distance",
            || {
                brake::energy(of(180.0), of(20.0), of(9.81), of(0.0)).si()
                    / motion::air_drag(of(1.2), of(0.8), of(20.0)).si()
            },
            187.5,
        )],
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
];

const GROWTH: &[Case] = &[
    recalled(
        "growth-factor-all-free",
        0.002,
        &[],
        &[By("growth factor", || whole::growth_factor(of(0.4872)).unwrap().si(), 1.95)],
        "E. Alonso, T. M. Lee, C. Bjelkengren, R. Roth, R. E. Kirchain, Evaluating the Potential for Secondary Mass Savings in Vehicle Lightweighting, Environ. Sci. Technol. 2012, abstract (first half read at figures from memory)",
        "Passenger cars, all subsystems still open to redesign, mean (5th percentile 0.77). Share g with growth = 1/(1 - g).",
    ),
    recalled(
        "growth-factor-frozen",
        0.002,
        &[],
        &[By("growth factor", || whole::growth_factor(of(0.1071)).unwrap().si(), 1.12)],
        "E. Alonso, T. M. Lee, C. Bjelkengren, R. Roth, R. E. Kirchain, Evaluating the Potential for Secondary Mass Savings in Vehicle Lightweighting, Environ. Sci. Technol. 2012, abstract (first half read at figures from memory)",
        "Passenger cars, four large subsystems frozen. Share g with growth = 1/(1 - g).",
    ),
    read(
        "mass-spiral-small",
        0.001,
        &[],
        &[
            By(
                "growth factor",
                || {
                    whole::growth_factor(whole::growth_share(of(0.2), Some(of(0.12)), of(0.18)))
                        .unwrap()
                        .si()
                },
                2.0000,
            ),
            By("mass", || whole::closed_mass(of(3.0), of(2.0000)).si(), 6.0000),
        ],
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
