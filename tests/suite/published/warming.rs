//! Bodies at one temperature, and chains from chip to air.

use std::f64::consts::PI;

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{electrics::*, heat::*};

use super::unit::{CELSIUS, CM, KILO, MILLI};
use super::{Case, Expect::Found, check, read, recalled};

/// A sphere that cools: diameter, density, specific heat, coefficient; its excess at first and the
/// excess that is cool enough.
const fn sphere(
    diameter: f64,
    density: f64,
    specific_heat: f64,
    h: f64,
    [start, wanted]: [f64; 2],
) -> [(AnyId, f64); 7] {
    [
        (WARM_MASS.any(), density * PI * diameter * diameter * diameter / 6.0),
        (WARM_SPECIFIC_HEAT.any(), specific_heat),
        (SURFACE_COEFFICIENT.any(), h),
        (SURFACE_AREA.any(), PI * diameter * diameter),
        (SURFACE_TEMPERATURE.any(), 300.0 + start),
        (TOUCH_LIMIT.any(), 300.0 + wanted),
        (COOLING_AIR.any(), 300.0),
    ]
}

/// A part at rest in still air: excess, coefficient at first, area, heat capacity, time.
const fn at_rest(excess: f64, h: f64, area: f64, capacity: f64, time: f64) -> [(AnyId, f64); 7] {
    [
        (SURFACE_TEMPERATURE.any(), 300.0 + excess),
        (COOLING_AIR.any(), 300.0),
        (STILL_AIR_COEFFICIENT.any(), h),
        (STILL_AIR_EXPONENT.any(), 0.25),
        (SURFACE_AREA.any(), area),
        (WARM_HEAT_CAPACITY.any(), capacity),
        (REST_TIME.any(), time),
    ]
}

/// Something warmed by 60 K.
const fn warmed(capacity: f64) -> [(AnyId, f64); 3] {
    [
        (WARM_HEAT_CAPACITY.any(), capacity),
        (SURFACE_TEMPERATURE.any(), CELSIUS + 80.0),
        (COOLING_AIR.any(), CELSIUS + 20.0),
    ]
}

pub(crate) const LUMPS: &[Case] = &[
    read(
        "biot-apple",
        0.002,
        &[
            (SURFACE_COEFFICIENT.any(), 10.0),
            (WARM_VOLUME.any(), PI * 0.1 * 0.1 * 0.1 / 6.0),
            (SURFACE_AREA.any(), PI * 0.1 * 0.1),
            (WARM_CONDUCTIVITY.any(), 0.6),
        ],
        &[Found(BIOT_NUMBER.any(), 0.278)],
        "S. K. Som, Introduction to Heat Transfer, Example 4.1, as transcribed by volunteers",
        "Volume over area = d/6. Above 0.1, so not lumped.",
    ),
    read(
        "biot-largest-cube",
        0.001,
        &[
            (SURFACE_COEFFICIENT.any(), 30.0),
            (WARM_VOLUME.any(), 5.0 * 5.0 * 5.0),
            (SURFACE_AREA.any(), 6.0 * 5.0 * 5.0),
            (WARM_CONDUCTIVITY.any(), 250.0),
        ],
        &[Found(BIOT_NUMBER.any(), 0.1)],
        "S. K. Som, Introduction to Heat Transfer, Example 4.3, as transcribed by volunteers",
        "Volume over area of a cube = a/6. Metal parts of any hobby size are lumped in air.",
    ),
    read(
        "lumped-bead",
        0.001,
        &sphere(1.5 * MILLI, 8000.0, 300.0, 75.0, [100.0, 1.0]),
        &[Found(COOLING_TIME_CONSTANT.any(), 8.0), Found(COOL_DOWN_TIME.any(), 36.84)],
        "S. K. Som, Introduction to Heat Transfer, Example 4.2, as transcribed by volunteers",
        "Time to within 1 % is 4.605 time constants.",
    ),
    recalled(
        "lumped-steel-ball",
        0.001,
        &sphere(5.0 * CM, 7800.0, 460.0, 10.0, [350.0, 50.0]),
        &[Found(COOL_DOWN_TIME.any(), 5819.0)],
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
            (BOX_LIMIT.any(), 300.0 + 39.35),
            (COOLING_AIR.any(), 300.0),
            (WORK_TIME.any(), 300.0),
            (WINDING_RISE.any(), 100.0),
            (MOTOR_TIME_CONSTANT.any(), 600.0),
        ],
        &[
            Found(BOX_TIME_CONSTANT.any(), 600.0),
            Found(BOX_RISE.any(), 100.0),
            Found(BOX_RISE_AFTER.any(), 39.35),
            Found(MOTOR_RISE_AFTER.any(), 39.35),
            Found(BOX_TIME_TO_LIMIT.any(), 300.0),
        ],
        "Lumped-capacity law as in S. K. Som, Introduction to Heat Transfer, Example 4.2 (read), with a steady source",
        "Numbers chosen for this check, answer computed. At one time constant 63.2 %, at three 95 %.",
    ),
    read(
        "slab-ice-box",
        0.001,
        &[
            // The printed heat goes in, and the 35 K between ice and air must come out.
            (BOX_HEAT.any(), 13.3),
            (WALL_THICKNESS.any(), 2.50 * CM),
            (WALL_CONDUCTIVITY.any(), 0.010),
            (BOX_BODY_AREA.any(), 0.950),
            (BOX_LID_AREA.any(), 0.0),
        ],
        &[Found(WALL_STEP.any(), 35.0)],
        "OpenStax, College Physics, Example 14.5, as transcribed by volunteers",
        "Goes on to 3.44 kg of ice in a day.",
    ),
    read(
        "heat-to-warm-water",
        0.001,
        &[
            (WARM_MASS.any(), 0.250),
            (WARM_SPECIFIC_HEAT.any(), 4186.0),
            (SURFACE_TEMPERATURE.any(), CELSIUS + 80.0),
            (COOLING_AIR.any(), CELSIUS + 20.0),
        ],
        &[Found(STORED_HEAT.any(), 62.8 * KILO)],
        "OpenStax, College Physics, Example 14.1, as transcribed by volunteers",
        "The water of the pan.",
    ),
    read(
        "heat-to-warm-pan",
        0.001,
        &[
            (WARM_MASS.any(), 0.500),
            (WARM_SPECIFIC_HEAT.any(), 900.0),
            (SURFACE_TEMPERATURE.any(), CELSIUS + 80.0),
            (COOLING_AIR.any(), CELSIUS + 20.0),
        ],
        &[Found(STORED_HEAT.any(), 27.0 * KILO)],
        "OpenStax, College Physics, Example 14.1, as transcribed by volunteers",
        "Aluminium pan.",
    ),
    read(
        "heat-to-warm-pan-and-water",
        0.001,
        &warmed(0.250 * 4186.0 + 0.500 * 900.0),
        &[Found(STORED_HEAT.any(), 89.8 * KILO)],
        "OpenStax, College Physics, Example 14.1, as transcribed by volunteers",
        "Both together.",
    ),
    read(
        "still-air-cooling-1000s",
        0.001,
        &at_rest(60.0, 8.0, 0.02, 200.0, 1000.0),
        &[Found(WARMTH_LEFT.any(), 28.935)],
        "Bejan & Kraus (eds.), Heat Transfer Handbook, Wiley, chapter on transient conduction, eqs. 3.285-3.286",
        "h = C dT^n with n = 1/4 for laminar still air. Numbers chosen for this check. A plain exponential would give 26.96 K.",
    ),
    read(
        "still-air-cooling-1800s",
        0.001,
        &at_rest(45.0, 7.0, 0.03, 400.0, 1800.0),
        &[Found(WARMTH_LEFT.any(), 19.266)],
        "Bejan & Kraus (eds.), Heat Transfer Handbook, Wiley, chapter on transient conduction, eqs. 3.285-3.286",
        "h = C dT^n with n = 1/4 for laminar still air. Numbers chosen for this check. A plain exponential would give 17.49 K.",
    ),
];

/// What the sun adds to a skin, and what the sizes of a box are to it.
pub(crate) const SUN: &[Case] = &[
    recalled(
        "sol-air-dark",
        0.02,
        &[
            (SUN_IRRADIANCE.any(), 1000.0),
            (SUN_ABSORPTANCE.any(), 0.9),
            (BOX_OUTSIDE_COEFFICIENT.any(), 17.0),
        ],
        &[Found(SUN_STEP.any(), 52.0)],
        "ASHRAE Handbook, Fundamentals, sol-air temperature: 0.052 m2 K/W as absorptance over coefficient of dark surfaces (from memory)",
        "Coefficient 17 W/(m^2*K) outdoors in summer, absorptance 0.9.",
    ),
    recalled(
        "sol-air-light",
        0.02,
        &[
            (SUN_IRRADIANCE.any(), 1000.0),
            (SUN_ABSORPTANCE.any(), 0.45),
            (BOX_OUTSIDE_COEFFICIENT.any(), 17.0),
        ],
        &[Found(SUN_STEP.any(), 26.0)],
        "ASHRAE Handbook, Fundamentals, sol-air temperature: 0.026 m2 K/W as absorptance over coefficient of light surfaces (from memory)",
        "The same, absorptance 0.45.",
    ),
    read(
        "largest-shadow-of-a-cube",
        1e-9,
        &[(BOX_LENGTH.any(), 0.1), (BOX_WIDTH.any(), 0.1), (BOX_HEIGHT.any(), 0.1)],
        &[Found(SUNLIT_AREA.any(), 0.017_320_508_076)],
        "Derived: the shadow of a unit cube along its diagonal is a regular hexagon of area root three",
        "Square metres.",
    ),
];

pub(crate) const CHAINS: &[Case] = &[
    read(
        "chain-thyristor",
        0.001,
        &[
            (CHIP_LIMIT.any(), CELSIUS + 120.0),
            (COOLING_AIR.any(), CELSIUS + 45.0),
            (JUNCTION_TO_CASE.any(), 0.0),
            (CASE_TO_SINK.any(), 0.1),
            (SINK_TO_AIR.any(), 0.08),
        ],
        &[Found(CONTROLLER_LOSS_LIMIT.any(), 416.7)],
        "Textbook on power electronics, Example 3.4 (the book's title is not in the text read), as transcribed by volunteers",
        "75 K / 0.18 K/W.",
    ),
    read(
        "chain-transistor-derating",
        0.001,
        &[
            (CHIP_RATED_END.any(), CELSIUS + 175.0),
            (CHIP_RATED_POWER.any(), 20.0),
            (JUNCTION_TO_CASE.any(), 7.5),
            (CASE_TO_SINK.any(), 1.0),
            (SINK_TO_AIR.any(), 5.0),
            (CONTROLLER_LOSS.any(), 11.11),
            (CHIP_LIMIT.any(), CELSIUS + 175.0),
            (COOLING_AIR.any(), CELSIUS + 25.0),
        ],
        &[
            Found(RATED_JUNCTION_TO_CASE.any(), 7.5),
            Found(CHIP_TO_AIR.any(), 13.5),
            Found(CHIP_RISE.any(), 150.0),
            Found(CONTROLLER_LOSS_LIMIT.any(), 11.11),
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

#[test]
fn bodies_at_one_temperature() {
    check(LUMPS);
}

#[test]
fn chains_from_chip_to_air() {
    check(CHAINS);
}

#[test]
fn sun_on_a_box() {
    check(SUN);
}
