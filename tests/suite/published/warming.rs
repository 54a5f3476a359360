//! Bodies at one temperature, and chains from chip to air.

use std::f64::consts::PI;

use heftwise::physics::heat::{self, lump, sink};
use heftwise::quantity::catalogue::{electrics::*, heat::*};
use heftwise::quantity::{Measure, Time};

use super::unit::{CELSIUS, CM, KILO, MILLI};
use super::{
    Case,
    Expect::{By, Found},
    check, of, read, recalled,
};

const LUMPS: &[Case] = &[
    read(
        "biot-apple",
        0.002,
        &[],
        &[By("Biot number", || lump::biot(of(10.0), of(100.0 * MILLI / 6.0), of(0.6)).si(), 0.278)],
        "S. K. Som, Introduction to Heat Transfer, Example 4.1, as transcribed by volunteers",
        "Volume over area = d/6. Above 0.1, so not lumped.",
    ),
    read(
        "biot-largest-cube",
        0.001,
        &[],
        &[By("Biot number", || lump::biot(of(30.0), of(5.0 / 6.0), of(250.0)).si(), 0.1)],
        "S. K. Som, Introduction to Heat Transfer, Example 4.3, as transcribed by volunteers",
        "Volume over area of a cube = a/6. Metal parts of any hobby size are lumped in air.",
    ),
    read(
        "lumped-bead",
        0.001,
        &[],
        &[
            By("time constant", || sphere(1.5 * MILLI, 8000.0, 300.0, 75.0).si(), 8.0),
            By(
                "time",
                || lump::time_to_share(sphere(1.5 * MILLI, 8000.0, 300.0, 75.0), of(0.01)).si(),
                36.84,
            ),
        ],
        "S. K. Som, Introduction to Heat Transfer, Example 4.2, as transcribed by volunteers",
        "Time to within 1 % is 4.605 time constants.",
    ),
    recalled(
        "lumped-steel-ball",
        0.001,
        &[],
        &[By(
            "time",
            || lump::time_to_share(sphere(5.0 * CM, 7800.0, 460.0, 10.0), of(50.0 / 350.0)).si(),
            5819.0,
        )],
        "J. P. Holman, Heat Transfer, Example 4-1 (from memory)",
        "Computed 5818 s.",
    ),
    read(
        "warm-up-case",
        0.001,
        &[
            (BOX_HEAT.any(), 20.0),
            (BOX_RESISTANCE.any(), 5.0),
            (BOX_HEAT_CAPACITY.any(), 120.0),
            (WORK_TIME.any(), 300.0),
            (WINDING_RISE.any(), 100.0),
            (MOTOR_TIME_CONSTANT.any(), 600.0),
        ],
        &[
            Found(BOX_TIME_CONSTANT.any(), 600.0),
            Found(BOX_RISE.any(), 100.0),
            Found(BOX_RISE_AFTER.any(), 39.35),
            Found(MOTOR_RISE_AFTER.any(), 39.35),
            By(
                "time to that rise",
                || lump::time_to_rise(of(39.35), of(100.0), of(600.0)).unwrap().si(),
                300.0,
            ),
        ],
        "Lumped-capacity law as in S. K. Som, Introduction to Heat Transfer, Example 4.2 (read), with a steady source",
        "Numbers chosen for this check, answer computed. At one time constant 63.2 %, at three 95 %.",
    ),
    read(
        "slab-ice-box",
        0.001,
        &[],
        &[By(
            "heat",
            || {
                lump::heat_through(
                    of(35.0),
                    lump::slab_resistance(of(2.50 * CM), of(0.010), of(0.950)),
                )
                .si()
            },
            13.3,
        )],
        "OpenStax, College Physics, Example 14.5, as transcribed by volunteers",
        "Goes on to 3.44 kg of ice in a day.",
    ),
    read(
        "heat-to-warm-pan-and-water",
        0.001,
        &[],
        &[
            By(
                "water",
                || lump::heat_to_warm(lump::heat_capacity(of(0.250), of(4186.0)), of(60.0)).si(),
                62.8 * KILO,
            ),
            By(
                "pan",
                || lump::heat_to_warm(lump::heat_capacity(of(0.500), of(900.0)), of(60.0)).si(),
                27.0 * KILO,
            ),
            By(
                "both",
                || lump::heat_to_warm(of(0.250 * 4186.0 + 0.500 * 900.0), of(60.0)).si(),
                89.8 * KILO,
            ),
        ],
        "OpenStax, College Physics, Example 14.1, as transcribed by volunteers",
        "Aluminium pan.",
    ),
    read(
        "still-air-cooling-1000s",
        0.001,
        &[],
        &[By(
            "excess",
            || {
                lump::still_air_cooling(
                    of(60.0),
                    of(8.0),
                    of(0.02),
                    of(200.0),
                    of(0.25),
                    of(1000.0),
                )
                .si()
            },
            28.935,
        )],
        "Bejan & Kraus (eds.), Heat Transfer Handbook, Wiley, chapter on transient conduction, eqs. 3.285-3.286",
        "h = C dT^n with n = 1/4 for laminar still air. Numbers chosen for this check. A plain exponential would give 26.96 K.",
    ),
    read(
        "still-air-cooling-1800s",
        0.001,
        &[],
        &[By(
            "excess",
            || {
                lump::still_air_cooling(
                    of(45.0),
                    of(7.0),
                    of(0.03),
                    of(400.0),
                    of(0.25),
                    of(1800.0),
                )
                .si()
            },
            19.266,
        )],
        "Bejan & Kraus (eds.), Heat Transfer Handbook, Wiley, chapter on transient conduction, eqs. 3.285-3.286",
        "h = C dT^n with n = 1/4 for laminar still air. Numbers chosen for this check. A plain exponential would give 17.49 K.",
    ),
];

const CHAINS: &[Case] = &[
    read(
        "chain-thyristor",
        0.001,
        &[],
        &[By(
            "power",
            || {
                lump::heat_through(
                    heat::rise_above(of(CELSIUS + 120.0), of(CELSIUS + 45.0)),
                    sink::chain(of(0.0), of(0.1), of(0.08)),
                )
                .si()
            },
            416.7,
        )],
        "Textbook on power electronics, Example 3.4 (the book's title is not in the text read), as transcribed by volunteers",
        "75 K / 0.18 K/W.",
    ),
    read(
        "chain-transistor-derating",
        0.001,
        &[
            (JUNCTION_TO_CASE.any(), 7.5),
            (CASE_TO_SINK.any(), 1.0),
            (SINK_TO_AIR.any(), 5.0),
            (CONTROLLER_LOSS.any(), 11.11),
        ],
        &[
            By(
                "junction to case",
                || {
                    sink::from_derating(
                        heat::rise_above(of(CELSIUS + 175.0), of(CELSIUS + 25.0)),
                        of(20.0),
                    )
                    .si()
                },
                7.5,
            ),
            Found(CHIP_TO_AIR.any(), 13.5),
            Found(CHIP_RISE.any(), 150.0),
            By(
                "power",
                || {
                    lump::heat_through(
                        heat::rise_above(of(CELSIUS + 175.0), of(CELSIUS + 25.0)),
                        sink::chain(of(7.5), of(1.0), of(5.0)),
                    )
                    .si()
                },
                11.11,
            ),
        ],
        "Textbook on electronic circuits, Example 8.3 (believed to be Neamen; the title is not in the text read), as transcribed by volunteers",
        "A 20 W part on a 5 K/W sink is an 11 W part.",
    ),
    read(
        "transistor-can-in-moving-air",
        0.001,
        &[
            (SURFACE_COEFFICIENT.any(), 100.0),
            (SURFACE_AREA.any(), PI * 12.0 * MILLI * 10.0 * MILLI),
            (SURFACE_TEMPERATURE.any(), CELSIUS + 85.0),
            (COOLING_AIR.any(), CELSIUS + 25.0),
        ],
        &[Found(SURFACE_HEAT.any(), 2.262)],
        "Bergman, Lavine, Incropera, DeWitt, Fundamentals of Heat and Mass Transfer, 8th ed., Problem 1.27",
        "Side wall only.",
    ),
    read(
        "case-wall-in-still-air",
        0.001,
        &[
            (SURFACE_COEFFICIENT.any(), 10.0),
            (SURFACE_AREA.any(), 0.030),
            (SURFACE_TEMPERATURE.any(), CELSIUS + 60.0),
            (COOLING_AIR.any(), CELSIUS + 25.0),
        ],
        &[Found(SURFACE_HEAT.any(), 10.5), Found(SURFACE_RESISTANCE.any(), 35.0 / 10.5)],
        "Same law as Problem 1.27 of Bergman et al. (read)",
        "Numbers chosen for this check. 10 W/(m^2*K) is a fair sum of still-air convection and radiation for painted or plastic boxes.",
    ),
    read(
        "heat-sink-controller",
        0.001,
        &[
            (CONTROLLER_LOSS.any(), 18.0),
            (CHIP_LIMIT.any(), CELSIUS + 125.0),
            (COOLING_AIR.any(), CELSIUS + 40.0),
            (JUNCTION_TO_CASE.any(), 1.0),
            (CASE_TO_SINK.any(), 0.5),
        ],
        &[Found(SINK_NEEDED.any(), 3.2222)],
        "Series thermal resistances, as in the transistor examples above",
        "Numbers chosen for this check. A negative answer means no sink can do it: show that in words.",
    ),
];

/// Time constant of a sphere: diameter, density, specific heat, coefficient.
fn sphere(diameter: f64, density: f64, specific_heat: f64, h: f64) -> Time {
    let mass = density * PI * diameter.powi(3) / 6.0;
    let capacity = lump::heat_capacity(of(mass), of(specific_heat));
    lump::time_constant(lump::skin_resistance(of(h), of(PI * diameter * diameter)), capacity)
}

#[test]
fn bodies_at_one_temperature() {
    check(LUMPS);
}

#[test]
fn chains_from_chip_to_air() {
    check(CHAINS);
}
