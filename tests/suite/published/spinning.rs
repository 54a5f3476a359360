//! Speeding up a turning body, and spinning parts.

use heftwise::physics::turning;
use heftwise::quantity::catalogue::{machine::*, motion::*, turning::*};
use heftwise::quantity::{AngularSpeed, Energy, Inertia, Mass, Measure, Speed};

use super::{
    Case,
    Expect::{By, Found},
    check, of, read,
};

const RPM: f64 = std::f64::consts::PI / 30.0;
const REV: f64 = std::f64::consts::TAU;
const UP_10_4: &str = "OpenStax, University Physics Volume 1, section 10.4 (module m58329)";
const UP_10_7: &str = "OpenStax, University Physics Volume 1, section 10.7 (module m58332)";
const UP_11_3: &str = "OpenStax, University Physics Volume 1, section 11.3 (module m58337)";

fn kg(mass: f64) -> Mass {
    of(mass)
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
        &[
            (SWING_MOMENT.any(), 376.8),
            (YAW_INERTIA.any(), 30.0),
            // From rest to 20 turns a second in 10 s is 100 turns.
            (SWING_ANGLE.any(), 100.0 * REV),
        ],
        &[
            Found(SWING_TIME.any(), 10.0),
            By("torque", || turning::torque_for(of(30.0), of(20.0 * REV), of(10.0)).si(), 376.8),
        ],
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
        &[(MASS.any(), 1.0), (MACHINE_LENGTH.any(), 0.7), (MACHINE_WIDTH.any(), 1e-6)],
        &[
            Found(YAW_INERTIA.any(), 0.041),
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
        &[(DRIVING_SPEED.any(), 10.0), (TURN_RADIUS.any(), 0.35)],
        &[
            Found(TURNING_RATE.any(), 28.6),
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

#[test]
fn speeding_up() {
    check(SPEEDING_UP);
}

#[test]
fn spinning() {
    check(SPINNING);
}
