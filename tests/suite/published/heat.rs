//! Warming, cooling and braking.

use std::f64::consts::PI;

use heftwise::physics::heat::{self, brake, lump, sink};
use heftwise::quantity::catalogue::{drive::*, electrics::*, heat::*, machine::*};
use heftwise::quantity::{Measure, Time};

use super::unit::{CELSIUS, CM, KILO, KMH, MILLI, RPM};
use super::{
    Case,
    Expect::{By, Found},
    check, of, read, recalled, si,
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

const WINDINGS: &[Case] = &[
    read(
        "winding-rise-6a",
        0.001,
        &[
            (MOTOR_TO_AIR.any(), 5.0),
            (MOTOR_RESISTANCE.any(), 0.3),
            (MOTOR_CURRENT.any(), 6.0),
            (MOTOR_LOSS.any(), 6.0 * 6.0 * 0.3),
            (COPPER_COEFFICIENT.any(), 0.00393),
        ],
        &[
            By(
                "rise with cold resistance",
                || lump::final_rise(of(6.0 * 6.0 * 0.3), of(5.0)).si(),
                54.00,
            ),
            Found(WINDING_RISE.any(), 68.55),
            Found(RUNAWAY_CURRENT.any(), 13.024),
        ],
        "Derived: steady heat balance with the linear resistance law",
        "Numbers chosen for this check; coefficient taken at an ambient of 20 degC. At and above the runaway current there is no steady state at all.",
    ),
    recalled(
        "continuous-current-from-heat",
        0.002,
        &[
            (WINDING_TO_HOUSING.any(), 1.9),
            (HOUSING_TO_AIR.any(), 4.7),
            (MOTOR_RESISTANCE.any(), 0.299),
            (WINDING_LIMIT.any(), CELSIUS + 155.0),
            (COOLING_AIR.any(), CELSIUS + 25.0),
            (COPPER_COEFFICIENT.any(), 0.00393),
        ],
        &[Found(CONTINUOUS_CURRENT.any(), 6.603)],
        "maxon motor, catalogue data of the brushed motor RE 40 (150 W, 24 V winding) (from memory)",
        "The maker prints 6.0 A continuous; copper heat alone allows 6.60 A. Friction heat, warm magnets and the maker's own margins make the difference. Same data sheet: thermal time constants 41.6 s (winding) and 1120 s (motor).",
    ),
    read(
        "stall-heating-24v",
        0.001,
        &[
            (PEAK_MOTOR_CURRENT.any(), 55.0),
            (MOTOR_RESISTANCE.any(), 0.436),
            (COPPER_MASS.any(), 0.06),
            (ALLOWED_RISE.any(), 56.800),
        ],
        &[Found(STALL_LOSS.any(), 1318.9), Found(STALL_TIME.any(), 1.0)],
        "Energy balance; winding data maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V; specific heat OpenStax College Physics Table 14.1",
        "Copper mass is assumed. From 25 degC a class F winding at the full stall rate is past 155 degC in about two seconds: stall protection must act within a second.",
    ),
    read(
        "stall-heating-limited",
        0.001,
        &[
            (PEAK_MOTOR_CURRENT.any(), 20.0),
            (MOTOR_RESISTANCE.any(), 0.436),
            (COPPER_MASS.any(), 0.06),
            (ALLOWED_RISE.any(), 7.511),
        ],
        &[Found(STALL_LOSS.any(), 174.4), Found(STALL_TIME.any(), 1.0)],
        "Energy balance; winding data maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V; specific heat OpenStax College Physics Table 14.1",
        "Same motor with the controller limiting to 20 A: about 17 s to class F.",
    ),
    recalled(
        "rms-current-climb-and-roll",
        0.001,
        &[
            (MOTOR_CURRENT.any(), 40.0),
            (WORK_TIME.any(), 20.0),
            (REST_CURRENT.any(), 8.0),
            (REST_TIME.any(), 40.0),
        ],
        &[Found(HEATING_CURRENT.any(), 24.000), Found(MEAN_DUTY_CURRENT.any(), 18.667)],
        "Root mean square over the cycle; duty types in IEC 60034-1 (from memory)",
        "Numbers chosen for this check. Heat follows the rms, runtime follows the mean: two different currents. Holds only if the cycle is short against the winding's thermal time constant.",
    ),
    read(
        "insulation-life-hotter",
        0.001,
        &[(WINDING_LIMIT.any(), CELSIUS + 105.0), (WINDING_TEMPERATURE.any(), CELSIUS + 125.0)],
        &[Found(INSULATION_LIFE.any(), 2.5 / 10.0)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 13-1, as transcribed by volunteers",
        "Factor 2^(20/10) = 4.",
    ),
];

const BRAKES: &[Case] = &[
    read(
        "brake-truck-hill",
        0.003,
        &[
            (MASS.any(), 10000.0),
            (BRAKING_DESCENT.any(), 75.0),
            (GRAVITY.any(), 9.80),
            (BRAKE_MASS.any(), 100.0),
            (BRAKE_SPECIFIC_HEAT.any(), 800.0),
            (BRAKE_SHARE.any(), 1.0),
        ],
        &[Found(BRAKE_ENERGY.any(), 7.35 * 1e6), Found(BRAKE_RISE.any(), 92.0)],
        "OpenStax, College Physics (1st ed.), Example 14.2, as transcribed by volunteers",
        "Computed 91.9 K. All heat assumed to stay in the brakes.",
    ),
    recalled(
        "brake-car-on-slope",
        0.002,
        &[
            (MASS.any(), 1200.0),
            (BRAKING_SPEED.any(), 72.0 * KMH),
            (BRAKING_DESCENT.any(), 0.2 * 50.0),
            (GRAVITY.any(), 9.81),
            (BRAKE_MASS.any(), 20.0),
            (BRAKE_SPECIFIC_HEAT.any(), 520.0),
            (BRAKE_SHARE.any(), 1.0),
        ],
        &[Found(BRAKE_ENERGY.any(), 357_720.0), Found(BRAKE_RISE.any(), 34.4)],
        "R. S. Khurmi, J. K. Gupta, Machine Design, brakes chapter, Example 25.1 (from memory)",
        "Speed energy 240 kJ plus height energy 117.72 kJ.",
    ),
    read(
        "kinetic-energy-car",
        0.006,
        &[(MASS.any(), 1000.0), (BRAKING_SPEED.any(), 28.0)],
        &[Found(BRAKE_ENERGY.any(), 392.0 * KILO)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "Printed as 390 000 J and 0.1 kWh (0.109).",
    ),
    read(
        "kinetic-energy-with-rotating-parts",
        0.001,
        &[(MASS.any(), 1000.0), (BRAKING_SPEED.any(), 100.0 * KMH)],
        &[Found(BRAKE_ENERGY.any(), 385.8 * KILO), By("energy", || geared_car(), 588.9 * KILO)],
        "V. B. Bhandari, Design of Machine Elements, Example 12.2 (data), as transcribed by volunteers",
        "Data read, answer computed for this check. The geared-up engine or motor rotor adds half as much again: small geared machines can be worse. The book's own answer was not seen.",
    ),
    recalled(
        "clutch-start",
        0.001,
        &[],
        &[By(
            "heat",
            || brake::clutch_heat(of(0.8), of(2.4), of(1500.0 * RPM), of(0.0 * RPM)).si(),
            7402.2,
        )],
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, section 16-8, energy dissipated in clutching (from memory)",
        "I1 I2 dw^2 / (2 (I1 + I2)); torque and slip time drop out. Numbers chosen for this check.",
    ),
    recalled(
        "clutch-change",
        0.001,
        &[],
        &[By(
            "heat",
            || brake::clutch_heat(of(0.05), of(0.35), of(6000.0 * RPM), of(2000.0 * RPM)).si(),
            3838.2,
        )],
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, section 16-8, energy dissipated in clutching (from memory)",
        "I1 I2 dw^2 / (2 (I1 + I2)); torque and slip time drop out. Numbers chosen for this check.",
    ),
];

/// Time constant of a sphere: diameter, density, specific heat, coefficient.
fn sphere(diameter: f64, density: f64, specific_heat: f64, h: f64) -> Time {
    let mass = density * PI * diameter.powi(3) / 6.0;
    let capacity = lump::heat_capacity(of(mass), of(specific_heat));
    lump::time_constant(lump::skin_resistance(of(h), of(PI * diameter * diameter)), capacity)
}

/// Energy of the car with its four wheels and its geared-up engine.
fn geared_car() -> f64 {
    let speed = 100.0 * KMH;
    let wheel = speed / 0.35;
    brake::energy(of(1000.0), of(speed), of(9.81), of(0.0)).si()
        + 4.0 * brake::turning_energy(of(0.5), of(wheel)).si()
        + brake::turning_energy(of(2.5), of(5.0 * wheel)).si()
}

#[test]
fn bodies_at_one_temperature() {
    check(LUMPS);
}

#[test]
fn chains_from_chip_to_air() {
    check(CHAINS);
}

#[test]
fn windings() {
    check(WINDINGS);
}

#[test]
fn brakes_and_clutches() {
    check(BRAKES);
}
