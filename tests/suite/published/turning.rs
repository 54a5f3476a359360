//! Turns, moments of inertia, swinging round and spinning parts.

use heftwise::physics::turning;
use heftwise::quantity::catalogue::{balance::*, machine::*, motion::*, turning::*};
use heftwise::quantity::{Angle, AngularSpeed, Energy, Inertia, Mass, Measure, Speed};

use super::unit::*;
use super::{
    Case,
    Expect::{By, Found},
    check, of, read, recalled,
};

const RPM: f64 = std::f64::consts::PI / 30.0;
const REV: f64 = std::f64::consts::TAU;
const DEG: f64 = std::f64::consts::PI / 180.0;
const CP_6_3: &str =
    "OpenStax, College Physics 2e, section 6.3 Centripetal Force, problems (module m42086)";
const UP_10_4: &str = "OpenStax, University Physics Volume 1, section 10.4 (module m58329)";
const UP_10_5: &str = "OpenStax, University Physics Volume 1, section 10.5 (module m58330)";
const UP_10_7: &str = "OpenStax, University Physics Volume 1, section 10.7 (module m58332)";
const UP_11_3: &str = "OpenStax, University Physics Volume 1, section 11.3 (module m58337)";
const BROWSER: &str = "J. K. Moore, BicycleParameters, measured data set Browser (raw periods and computed parameters)";

const CURVES: &[Case] = &[
    read(
        "turn-car-flat-curve",
        0.005,
        &[
            (MASS.any(), 900.0),
            (DRIVING_SPEED.any(), 25.0),
            (TURN_RADIUS.any(), 500.0),
            (GRAVITY.any(), 9.80),
        ],
        &[
            Found(SIDEWAYS_FORCE.any(), 1125.0),
            Found(SIDEWAYS_ACCELERATION.any(), 1.25),
            Found(SIDEWAYS_GRIP.any(), 0.128),
        ],
        "OpenStax, College Physics 2e, Examples 6.2 and 6.4 (modules m42084 and m42086)",
        "Printed. Mass cancels in the grip.",
    ),
    read(
        "turn-bobsled-banked",
        0.003,
        &[
            (TURN_RADIUS.any(), 24.6),
            (GRAVITY.any(), 9.80),
            (BANK_ANGLE.any(), 75.0 * DEG),
            (DRIVING_SPEED.any(), 30.0),
        ],
        &[Found(BANK_SPEED.any(), 30.0), Found(SIDEWAYS_ACCELERATION.any(), 36.6)],
        CP_6_3,
        "Printed radius in, given speed out. No friction used.",
    ),
    read(
        "turn-banked-31deg",
        0.003,
        &[(TURN_RADIUS.any(), 100.0), (BANK_ANGLE.any(), 31.0 * DEG), (GRAVITY.any(), 9.80)],
        &[Found(BANK_SPEED.any(), 24.3)],
        "OpenStax, University Physics Volume 1, section 6.3, Example 6.16 (module m58305)",
        "Printed. One of its lines misprints tan 31° as 0.609.",
    ),
    read(
        "turn-merry-go-round-rider",
        0.003,
        &[
            (MASS.any(), 22.0),
            (GRAVITY.any(), 9.80),
            (SIDEWAYS_ACCELERATION.any(), 40.0 * RPM * 40.0 * RPM * 1.25),
            (SPIN_RATE.any(), 40.0 * RPM),
            (SPIN_RADIUS.any(), 1.25),
        ],
        &[
            Found(SIDEWAYS_FORCE.any(), 483.0),
            Found(SIDEWAYS_GRIP.any(), 2.24),
            Found(RIM_ACCELERATION.any(), 2.24 * 9.80),
        ],
        CP_6_3,
        "Printed.",
    ),
    read(
        "turn-unbanked-too-fast",
        0.003,
        &[(DRIVING_SPEED.any(), 30.0), (TURN_RADIUS.any(), 50.0), (GRAVITY.any(), 9.80)],
        &[Found(SIDEWAYS_GRIP.any(), 1.84)],
        CP_6_3,
        "Printed, as an unreasonable result.",
    ),
    recalled(
        "steer-angle-500ft",
        0.005,
        &[(WHEELBASE.any(), 100.6 * INCH), (TURN_RADIUS.any(), 500.0 * FOOT)],
        &[Found(STEER_ANGLE_NEEDED.any(), 0.96 * DEG)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6, example (from memory)",
        "Small-angle form in the book.",
    ),
    recalled(
        "steer-angle-100ft",
        0.005,
        &[(WHEELBASE.any(), 100.6 * INCH), (TURN_RADIUS.any(), 100.0 * FOOT)],
        &[Found(STEER_ANGLE_NEEDED.any(), 4.8 * DEG)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6, example (from memory)",
        "Small-angle form in the book.",
    ),
    recalled(
        "steer-angle-100ft-back",
        0.005,
        &[(WHEELBASE.any(), 100.6 * INCH), (STEER_ANGLE.any(), 4.8 * DEG)],
        &[Found(TURN_RADIUS.any(), 100.0 * FOOT)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6, example (from memory)",
        "Printed angle in, given radius out.",
    ),
];

fn kg(mass: f64) -> Mass {
    of(mass)
}

fn inertia(about_centre: Inertia, mass: f64, away: f64) -> f64 {
    turning::moved_inertia(about_centre, of(mass), of(away)).si()
}

fn three_pairs_of_washers() -> f64 {
    [0.25, 0.15, 0.05]
        .iter()
        .map(|radius| 2.0 * turning::point_inertia(kg(0.020), of(*radius)).si())
        .sum()
}

/// The four parts of the benchmark bicycle about the line on the ground that it rolls over.
fn benchmark_bicycle() -> f64 {
    [(2.0, 0.3, 0.0603), (85.0, 0.9, 9.2), (4.0, 0.7, 0.05892), (3.0, 0.35, 0.1405)]
        .iter()
        .map(|(mass, height, own)| inertia(of(*own), *mass, *height))
        .sum()
}

const INERTIAS: &[Case] = &[
    read(
        "inertia-rod-plus-sphere-far",
        0.002,
        &[],
        &[By(
            "inertia",
            || {
                inertia(turning::rod_inertia(kg(2.0), of(0.5)), 2.0, 0.25)
                    + inertia(turning::sphere_inertia(kg(1.0), of(0.20)), 1.0, 0.70)
            },
            0.673,
        )],
        UP_10_5,
        "Printed, Example 10.12 (a). The sphere is a third of the mass, three quarters of the inertia.",
    ),
    read(
        "inertia-disk-plus-rider",
        0.002,
        &[(SPIN_MASS.any(), 500.0), (SPIN_RADIUS.any(), 2.0)],
        &[
            Found(SPIN_INERTIA.any(), 1000.0),
            By(
                "with the rider",
                || {
                    turning::solid_inertia(kg(500.0), of(2.0)).si()
                        + turning::point_inertia(kg(25.0), of(1.0)).si()
                },
                1025.0,
            ),
        ],
        UP_10_5,
        "Printed, Example 10.11.",
    ),
    read(
        "inertia-washers-on-rod",
        0.003,
        &[(SPIN_INERTIA.any(), 0.0035), (SPIN_RATE.any(), 5.0 * REV)],
        &[By("inertia", three_pairs_of_washers, 0.0035), Found(SPIN_ENERGY.any(), 1.73)],
        UP_10_4,
        "Printed, Example 10.8.",
    ),
    read(
        "inertia-bicycle-roll-about-ground",
        1e-6,
        &[],
        &[By("inertia", benchmark_bicycle, 80.81722)],
        "Meijaard, Papadopoulos, Ruina and Schwab, Proc. R. Soc. A 463 (2007) 1955, Table 1 and mass matrix entry M(1,1)",
        "Exact benchmark: most of it comes from the parallel-axis terms.",
    ),
    read(
        "inertia-cylinder-edge-axis",
        0.001,
        &[],
        &[
            By("cylinder", || inertia(turning::solid_inertia(kg(1.0), of(1.0)), 1.0, 1.0), 1.5),
            By("hoop", || inertia(turning::ring_inertia(kg(1.0), of(1.0)), 1.0, 1.0), 2.0),
        ],
        UP_10_5,
        "The book misprints this as 1/3 m R²; worked out 3/2, and 2 for a thin hoop.",
    ),
    read(
        "swing-pendulum-front-wheel",
        1e-6,
        &[
            (MASS.any(), 2.02),
            (PIVOT_DISTANCE.any(), 0.293),
            (SWING_PERIOD.any(), 1.4811273727),
            (GRAVITY.any(), 9.81),
        ],
        &[Found(TIMED_INERTIA.any(), 0.149221207336)],
        BROWSER,
        "A wheel about its axle, hung from its rim on an edge.",
    ),
    read(
        "swing-torsion-front-wheel",
        1e-6,
        &[],
        &[By("inertia", || twisted(0.787577011406), 0.0883826870796)],
        BROWSER,
        "A wheel about a diameter; a plain rod of known size calibrates the wire.",
    ),
    read(
        "swing-torsion-rear-wheel",
        1e-6,
        &[],
        &[By("inertia", || twisted(0.796564786052), 0.0904114316323)],
        BROWSER,
        "",
    ),
];

/// A wheel on the wire that a rod of 5.56 kg, 30 mm by 1.05 m, was timed on.
fn twisted(period: f64) -> f64 {
    let thick = turning::solid_inertia(kg(5.56), of(0.015)).si() / 2.0;
    let rod = turning::rod_inertia(kg(5.56), of(1.05)).si() + thick;
    turning::torsion_inertia(of(rod), of(1.89399317145), of(period)).si()
}

const SPEEDING_UP: &[Case] = &[
    read(
        "spinup-merry-go-round-empty",
        0.002,
        &[(SWING_MOMENT.any(), 250.0 * 1.50), (YAW_INERTIA.any(), 56.25)],
        &[
            By("inertia", || turning::solid_inertia(kg(50.0), of(1.50)).si(), 56.25),
            Found(YAW_ACCELERATION.any(), 6.67),
        ],
        UP_10_7,
        "Printed, Example 10.16 (a).",
    ),
    read(
        "spinup-merry-go-round-loaded",
        0.002,
        &[(SWING_MOMENT.any(), 250.0 * 1.50), (YAW_INERTIA.any(), 84.38)],
        &[
            By(
                "inertia",
                || {
                    turning::solid_inertia(kg(50.0), of(1.50)).si()
                        + turning::point_inertia(kg(18.0), of(1.25)).si()
                },
                84.38,
            ),
            Found(YAW_ACCELERATION.any(), 4.44),
        ],
        UP_10_7,
        "Printed, Example 10.16 (b). Mass at the edge slows the answer.",
    ),
    read(
        "spinup-grindstone",
        0.002,
        &[(SWING_MOMENT.any(), 180.0 * 0.280), (YAW_INERTIA.any(), 0.5 * 75.0 * 0.280 * 0.280)],
        &[Found(YAW_ACCELERATION.any(), 17.14)],
        UP_10_7,
        "Printed.",
    ),
    read(
        "spinup-jet-fan",
        0.002,
        &[],
        &[By("torque", || turning::torque_for(of(30.0), of(20.0 * REV), of(10.0)).si(), 376.8)],
        UP_10_7,
        "Printed; 377.0 N m unrounded.",
    ),
    read(
        "spinup-motorcycle-wheel",
        0.002,
        &[(TARGET_SPEED.any(), 30.0), (RUN_UP_TIME.any(), 4.20)],
        &[
            Found(MEAN_ACCELERATION.any(), 7.14),
            By(
                "angular acceleration",
                || turning::turning_rate(of(30.0), of(0.320)).si() / 4.20,
                22.3,
            ),
        ],
        "OpenStax, College Physics 2e, section 10.1, Example 10.2 (module m42177)",
        "Printed.",
    ),
    read(
        "spinup-flywheel-eight-turns",
        0.01,
        &[(SWING_MOMENT.any(), 12.0), (YAW_INERTIA.any(), 30.0), (SWING_ANGLE.any(), 8.0 * REV)],
        &[Found(SWING_RATE.any(), 6.3), Found(SWING_ENERGY.any(), 12.0 * 8.0 * REV)],
        "OpenStax, University Physics Volume 1, section 10.8, Example 10.17 (module m58333)",
        "Printed; 6.34 rad/s unrounded. The energy is the torque times the angle.",
    ),
    read(
        "spinup-flywheel-braking-torque",
        0.002,
        &[],
        &[By("torque", || turning::torque_for(of(100.0), of(500.0 * RPM), of(120.0)).si(), 43.6)],
        UP_10_7,
        "Printed.",
    ),
];

/// Four blades as rods about their ends.
fn blades() -> Inertia {
    turning::moved_inertia(turning::rod_inertia(kg(200.0), of(4.0)), of(200.0), of(2.0))
}

fn baton() -> Inertia {
    turning::rod_inertia(kg(1.0), of(0.7))
}

/// The spin a bus's flywheel needs to bring the bus to speed with so much of its energy.
fn bus_flywheel() -> f64 {
    let wheel = turning::solid_inertia(kg(1500.0), of(0.600));
    let energy: Energy = of(0.5 * 10_000.0 * 20.0 * 20.0 / 0.90);
    turning::turns_rate(energy, wheel).si()
}

const SPINNING: &[Case] = &[
    read(
        "rim-grindstone",
        0.003,
        &[(SPIN_RATE.any(), 6500.0 * RPM), (SPIN_RADIUS.any(), 0.0750)],
        &[Found(RIM_SPEED.any(), 51.1), Found(RIM_ACCELERATION.any(), 3.47e4)],
        "OpenStax, College Physics 2e, section 6.2, problem (module m42084)",
        "Printed. 3540 g at the rim.",
    ),
    read(
        "spin-energy-helicopter-blades",
        0.002,
        &[(SPIN_INERTIA.any(), 1067.0), (SPIN_RATE.any(), 300.0 * RPM)],
        &[By("inertia", || blades().si(), 1067.0), Found(SPIN_ENERGY.any(), 5.26e5)],
        UP_10_4,
        "Printed, Example 10.9.",
    ),
    read(
        "spin-energy-baton",
        0.005,
        &[],
        &[
            By("inertia", || baton().si(), 0.041),
            By("energy", || turning::spin_energy(baton(), of(10.0 * REV)).si(), 80.6),
        ],
        UP_10_4,
        "The book prints 80.93 J from a rounded inertia; worked out 80.6 J.",
    ),
    read(
        "spin-energy-bus-flywheel",
        0.003,
        &[],
        &[By("spin", bus_flywheel, 128.0)],
        "OpenStax, College Physics 2e, section 10.4, problem (module m42180)",
        "Printed.",
    ),
    read(
        "spin-coupled-flywheels",
        0.001,
        &[],
        &[
            By("spin after", || coupled().si(), 150.0 * RPM),
            By(
                "energy kept",
                || {
                    turning::spin_energy(of(4.0), coupled()).si()
                        / turning::spin_energy(of(1.0), of(600.0 * RPM)).si()
                },
                0.25,
            ),
        ],
        UP_11_3,
        "Printed, Example 11.7. A clutch makes heat of three quarters.",
    ),
    read(
        "spin-bullet-into-disk",
        0.003,
        &[],
        &[By("spin after", bullet_into_disc, 1.248)],
        UP_11_3,
        "The book prints 1.2 rad/s; 1.248 worked out.",
    ),
    read(
        "gyro-precession-small-disk",
        0.002,
        &[],
        &[By(
            "precession",
            || {
                let disc = turning::solid_inertia(kg(0.3), of(0.050));
                turning::precession(of(0.3 * 9.8 * 0.050), disc, of(20.0 * REV)).si()
            },
            3.12,
        )],
        "OpenStax, University Physics Volume 1, section 11.4, Example 11.10 (module m58338)",
        "Printed.",
    ),
    read(
        "gyro-precession-small-disk-back",
        0.002,
        &[
            (SPIN_MASS.any(), 0.3),
            (SPIN_RADIUS.any(), 0.050),
            (SPIN_RATE.any(), 20.0 * REV),
            (TURNING_RATE.any(), 3.12),
        ],
        &[Found(GYRO_TORQUE.any(), 0.3 * 9.8 * 0.050)],
        "OpenStax, University Physics Volume 1, section 11.4, Example 11.10 (module m58338)",
        "Printed rate in, the moment of the weight out.",
    ),
    read(
        "gyro-bike-wheel-in-air",
        0.012,
        &[],
        &[
            By("spin", || rolling_at_ten().si(), 28.6),
            By(
                "angular momentum",
                || turning::momentum(turning::ring_inertia(kg(0.750), of(0.35)), rolling_at_ten()),
                2.6,
            ),
        ],
        "OpenStax, University Physics Volume 1, section 11.2, problem (module m58336)",
        "Printed; 2.625 unrounded. A thin hoop.",
    ),
];

fn rolling_at_ten() -> AngularSpeed {
    let speed: Speed = of(10.0);
    turning::turning_rate(speed, of(0.35))
}

fn coupled() -> AngularSpeed {
    turning::shared_rate((of(1.0), of(600.0 * RPM)), (of(3.0), of(0.0)))
}

fn bullet_into_disc() -> f64 {
    let bullet = turning::point_inertia(kg(0.002), of(0.5));
    let disc = turning::solid_inertia(kg(3.2), of(0.5));
    turning::shared_rate((bullet, turning::turning_rate(of(500.0), of(0.5))), (disc, of(0.0))).si()
}

const PRACTICE: &[Case] = &[
    read(
        "light-crawler-pushed-sideways",
        0.001,
        &[(MASS.any(), 2.8), (SIDEWAYS_ACCELERATION.any(), 0.08)],
        &[Found(SIDEWAYS_FORCE.any(), 0.224)],
        "Common practice, no published source",
        "",
    ),
    read(
        "heavier-crawler-pushed-sideways",
        0.001,
        &[(MASS.any(), 4.5), (SIDEWAYS_ACCELERATION.any(), 0.08)],
        &[Found(SIDEWAYS_FORCE.any(), 0.36)],
        "Common practice, no published source",
        "About 60 % more.",
    ),
    read(
        "light-car-power-to-mass",
        0.001,
        &[(MASS.any(), 3000.0 * 0.45359237), (DRIVE_POWER.any(), 300.0 * 745.699_871_582)],
        &[Found(POWER_TO_MASS.any(), 0.1 * 745.699_871_582 / 0.45359237)],
        "Common practice, no published source",
        "300 hp in 3000 lb is 0.1 hp/lb.",
    ),
    read(
        "heavy-car-power-to-mass",
        0.001,
        &[(MASS.any(), 5000.0 * 0.45359237), (DRIVE_POWER.any(), 500.0 * 745.699_871_582)],
        &[Found(POWER_TO_MASS.any(), 0.1 * 745.699_871_582 / 0.45359237)],
        "Common practice, no published source",
        "500 hp in 5000 lb is the same 0.1 hp/lb.",
    ),
];

#[test]
fn curves() {
    check(CURVES);
    let left: Angle = turning::steer_angle(of(1.0), of(1.0));
    approx::assert_relative_eq!(left.si(), 45.0 * DEG, max_relative = 1e-12);
}

#[test]
fn inertias() {
    check(INERTIAS);
}

#[test]
fn speeding_up() {
    check(SPEEDING_UP);
}

#[test]
fn spinning() {
    check(SPINNING);
}

#[test]
fn practice() {
    check(PRACTICE);
}
