//! Speeding up a turning body, and spinning parts.

use heftwise::quantity::catalogue::{
    drive::AXLE_RATE, machine::*, motion::*, structure::*, turning::*,
};

use super::unit::{FOOT, PSI, RPM};
use super::{Case, Expect::Found, check, read, recalled};

/// The pound, in kilograms.
const POUND: f64 = 0.453_592_37;
const REV: f64 = std::f64::consts::TAU;
const UP_10_4: &str = "OpenStax, University Physics Volume 1, section 10.4 (module m58329)";
const UP_10_7: &str = "OpenStax, University Physics Volume 1, section 10.7 (module m58332)";
const UP_11_3: &str = "OpenStax, University Physics Volume 1, section 11.3 (module m58337)";

pub(crate) const SPEEDING_UP: &[Case] = &[
    read(
        "spinup-merry-go-round-empty",
        0.002,
        &[
            (SWING_MOMENT.any(), 250.0 * 1.50),
            (YAW_INERTIA.any(), 56.25),
            (SPIN_MASS.any(), 50.0),
            (SPIN_RADIUS.any(), 1.50),
        ],
        &[Found(SPIN_INERTIA.any(), 56.25), Found(YAW_ACCELERATION.any(), 6.67)],
        UP_10_7,
        "Printed, Example 10.16 (a).",
    ),
    read(
        "spinup-merry-go-round-loaded",
        0.002,
        &[
            (SWING_MOMENT.any(), 250.0 * 1.50),
            (YAW_INERTIA.any(), 84.38),
            (SPIN_MASS.any(), 50.0),
            (SPIN_RADIUS.any(), 1.50),
            (ADDED_MASS.any(), 18.0),
            (ADDED_DISTANCE.any(), 1.25),
        ],
        &[Found(SPIN_INERTIA.any(), 84.38), Found(YAW_ACCELERATION.any(), 4.44)],
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
            (YAW_INERTIA.any(), 30.0), // From rest to 20 turns a second in 10 s is 100 turns.
            (SWING_ANGLE.any(), 100.0 * REV),
            (SPIN_INERTIA.any(), 30.0),
            (SPIN_RATE.any(), 20.0 * REV),
            (SPIN_UP_TIME.any(), 10.0),
        ],
        &[Found(SWING_TIME.any(), 10.0), Found(SPIN_UP_TORQUE.any(), 376.8)],
        UP_10_7,
        "Printed; 377.0 N m unrounded.",
    ),
    read(
        "spinup-motorcycle-wheel",
        0.002,
        &[
            (TARGET_SPEED.any(), 30.0),
            (RUN_UP_TIME.any(), 4.20),
            (DRIVING_SPEED.any(), 30.0),
            (DRIVE_RADIUS.any(), 0.320), // On a wheel of 1 kg m², moment and angular acceleration are the same number.
            (SPIN_INERTIA.any(), 1.0),
            (SPIN_RATE.any(), 30.0 / 0.320),
            (SPIN_UP_TIME.any(), 4.20),
        ],
        &[
            Found(MEAN_ACCELERATION.any(), 7.14),
            Found(AXLE_RATE.any(), 30.0 / 0.320),
            Found(SPIN_UP_TORQUE.any(), 22.3),
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
        &[(SPIN_INERTIA.any(), 100.0), (SPIN_RATE.any(), 500.0 * RPM), (SPIN_UP_TIME.any(), 120.0)],
        &[Found(SPIN_UP_TORQUE.any(), 43.6)],
        UP_10_7,
        "Printed.",
    ),
];

pub(crate) const SPINNING: &[Case] = &[
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
        &[
            (SPIN_SHAPE.any(), 1.0 / 3.0),
            (SPIN_MASS.any(), 4.0 * 50.0),
            (SPIN_RADIUS.any(), 4.00),
            (SPIN_RATE.any(), 300.0 * RPM),
        ],
        &[Found(SPIN_INERTIA.any(), 1067.0), Found(SPIN_ENERGY.any(), 5.26e5)],
        UP_10_4,
        "Printed, Example 10.9.",
    ),
    read(
        "spin-energy-baton",
        0.005,
        &[
            (MASS.any(), 1.0),
            (MACHINE_LENGTH.any(), 0.7),
            (MACHINE_WIDTH.any(), 1e-6),
            (SPIN_SHAPE.any(), 1.0 / 3.0),
            (SPIN_MASS.any(), 1.0),
            (SPIN_RADIUS.any(), 0.35),
            (SPIN_RATE.any(), 10.0 * REV),
        ],
        &[
            Found(YAW_INERTIA.any(), 0.041),
            Found(SPIN_INERTIA.any(), 0.041),
            Found(SPIN_ENERGY.any(), 80.6),
        ],
        UP_10_4,
        "The book prints 80.93 J from a rounded inertia; worked out 80.6 J.",
    ),
    read(
        "spin-energy-bus-flywheel",
        0.003,
        &[
            (SPIN_MASS.any(), 1500.0),
            (SPIN_RADIUS.any(), 0.600),
            (SPIN_ENERGY_WANTED.any(), 0.5 * 10_000.0 * 20.0 * 20.0 / 0.90),
        ],
        &[Found(SPIN_RATE_NEEDED.any(), 128.0)],
        "OpenStax, College Physics 2e, section 10.4, problem (module m42180)",
        "Printed.",
    ),
    read(
        "spin-coupled-flywheels",
        0.001,
        &[(SPIN_INERTIA.any(), 1.0), (SPIN_RATE.any(), 600.0 * RPM), (COUPLED_INERTIA.any(), 3.0)],
        &[
            Found(SHARED_RATE.any(), 150.0 * RPM), // Three quarters of ½ I ω².
            Found(COUPLING_HEAT.any(), 0.75 * 0.5 * 600.0 * RPM * 600.0 * RPM),
        ],
        UP_11_3,
        "Printed, Example 11.7. A clutch makes heat of three quarters.",
    ),
    read(
        "spin-bullet-into-disk",
        0.003,
        &[
            (SPIN_MASS.any(), 3.2),
            (SPIN_RADIUS.any(), 0.5),
            (SPIN_RATE.any(), 0.0),
            (COUPLED_INERTIA.any(), 0.002 * 0.5 * 0.5),
            (COUPLED_RATE.any(), 500.0 / 0.5),
        ],
        &[Found(SHARED_RATE.any(), 1.248)],
        UP_11_3,
        "The book prints 1.2 rad/s; 1.248 worked out.",
    ),
    read(
        "gyro-precession-small-disk",
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
        &[(DRIVING_SPEED.any(), 10.0), (TURN_RADIUS.any(), 0.35), (DRIVE_RADIUS.any(), 0.35)],
        &[Found(AXLE_RATE.any(), 28.6), Found(TURNING_RATE.any(), 28.6)],
        "OpenStax, University Physics Volume 1, section 11.2, problem (module m58336)",
        "Printed; 2.625 unrounded. A thin hoop.",
    ),
    read(
        "gyro-bike-wheel-momentum",
        0.012,
        &[
            // Turned by one radian a second, its moment is its angular momentum.
            (SPIN_SHAPE.any(), 1.0),
            (SPIN_MASS.any(), 0.750),
            (SPIN_RADIUS.any(), 0.35),
            (SPIN_RATE.any(), 28.6),
            (TURNING_RATE.any(), 1.0),
        ],
        &[Found(GYRO_TORQUE.any(), 2.6)],
        "OpenStax, University Physics Volume 1, section 11.2, problem (module m58336)",
        "Printed; 2.625 unrounded. A thin hoop.",
    ),
    recalled(
        "rim-stress-cast-iron",
        0.005,
        &[
            (MATERIAL_DENSITY.any(), 450.0 * POUND / (FOOT * FOOT * FOOT)),
            (RIM_SPEED.any(), 100.0 * FOOT),
        ],
        &[Found(RIM_STRESS.any(), 972.0 * PSI)],
        "Machinery's Handbook, flywheels, cast-iron rim: 0.0972 v² in psi, v in feet a second (from memory)",
        "Cast iron of 450 lb a cubic foot; 970.4 psi with g of 32.2 ft/s².",
    ),
];

#[test]
fn speeding_up() {
    check(SPEEDING_UP);
}

#[test]
fn spinning() {
    check(SPINNING);
}
