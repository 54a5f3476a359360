//! Bounce, energy and speed.

use heftwise::physics::impact;
use heftwise::quantity::Measure;
use heftwise::quantity::catalogue::{impact::*, machine::*};

use super::unit::*;
use super::{
    Case,
    Expect::{By, Found},
    by_rules, check, of, read,
};

const ITF: &str = "ITF ball approval, rebound test: 254 cm drop, 135 to 147 cm rebound";

fn tennis_ball(rebound: f64) -> f64 {
    impact::restitution_from_heights(of(2.54), of(rebound)).si()
}

/// Drop heights add where speeds add as squares.
fn speed_after(height: f64, start: f64, gravity: f64) -> f64 {
    let given = [(IMPACT_SPEED.any(), start), (GRAVITY.any(), gravity)];
    let head = by_rules(&given, DROP_HEIGHT.any()).unwrap();
    let given = [(DROP_HEIGHT.any(), head + height), (GRAVITY.any(), gravity)];
    by_rules(&given, IMPACT_SPEED.any()).unwrap()
}

fn energy(mass: f64, speed: f64) -> f64 {
    let given = [(MASS.any(), mass), (IMPACT_SPEED.any(), speed)];
    by_rules(&given, KINETIC_ENERGY.any()).unwrap()
}

const CASES: &[Case] = &[
    read(
        "restitution-tennis-ball-low",
        0.002,
        &[],
        &[
            By("restitution", || tennis_ball(1.35), 0.729),
            By("energy kept", || tennis_ball(1.35).powi(2), 0.531),
        ],
        ITF,
        "Heights published, restitution worked out.",
    ),
    read(
        "restitution-tennis-ball-low-height",
        0.005,
        &[(DROP_HEIGHT.any(), 2.54), (RESTITUTION.any(), 0.729)],
        &[Found(REBOUND_HEIGHT.any(), 1.35)],
        ITF,
        "The same turned round: restitution in, published height out. Its square doubles the rounding.",
    ),
    read(
        "restitution-tennis-ball-high",
        0.002,
        &[],
        &[By("restitution", || tennis_ball(1.47), 0.761)],
        ITF,
        "Heights published, restitution worked out.",
    ),
    read(
        "restitution-superball-momentum",
        0.006,
        &[
            (MASS.any(), 0.25),
            (DROP_HEIGHT.any(), 1.50),
            (GRAVITY.any(), 9.8),
            (RESTITUTION.any(), 1.0),
        ],
        &[Found(IMPACT_SPEED.any(), 5.4), Found(IMPULSE.any(), 2.71)],
        "OpenStax, University Physics Volume 1, section 9.3, Example 9.7 (module m58320)",
        "The book prints 2.8 because it rounds the one-way momentum before doubling; 2.71 worked out.",
    ),
    read(
        "energy-package-push",
        0.003,
        &[(MASS.any(), 30.0), (IMPACT_SPEED.any(), 2.53), (STOP_DISTANCE.any(), 19.2)],
        &[
            By("energy before", || energy(30.0, 0.500), 3.75),
            By("net work", || energy(30.0, 2.53) - energy(30.0, 0.500), 92.0),
            Found(STOPPING_FORCE.any(), 5.00),
        ],
        "OpenStax, College Physics 2e, section 7.2, Examples 7.2 to 7.5 (module m42147)",
        "Printed speed and coasting distance in, given work and friction out.",
    ),
    read(
        "energy-bullet-half-speed",
        0.002,
        &[(MASS.any(), 8.0e-3), (IMPACT_SPEED.any(), 800.0)],
        &[Found(KINETIC_ENERGY.any(), 2.56e3)],
        "OpenStax, University Physics Volume 1, section 7.2, problem on the 8.0 g bullet (module m58308)",
        "The book prints 2.6 kJ.",
    ),
    read(
        "energy-bullet-at-half-speed",
        0.002,
        &[(MASS.any(), 8.0e-3), (IMPACT_SPEED.any(), 400.0)],
        &[Found(KINETIC_ENERGY.any(), 640.0)],
        "OpenStax, University Physics Volume 1, section 7.2, problem on the 8.0 g bullet (module m58308)",
        "Printed.",
    ),
    read(
        "drop-test-mil-transit",
        0.002,
        &[(DROP_HEIGHT.any(), 1.22), (GRAVITY.any(), GN), (STOP_TIME.any(), 0.499)],
        &[Found(IMPACT_SPEED.any(), 4.89), Found(STOP_DISTANCE.any(), 1.22)],
        "MIL-STD-810F Method 516.5 Procedure IV, transit drop height",
        "Height published, speed and time worked out. A fall run backwards is a steady stop, so the time of fall goes in as stop time and the height comes out.",
    ),
    read(
        "drop-roller-coaster-speed",
        0.003,
        &[],
        &[By("speed", || speed_after(20.0, 5.00, 9.80), 20.4)],
        "OpenStax, College Physics 2e, section 7.3, Example 7.7 (module m42148)",
        "Printed.",
    ),
    read(
        "spring-toy-car-launch",
        0.002,
        &[(MASS.any(), 0.100), (IMPACT_SPEED.any(), 2.00), (STOP_DISTANCE.any(), 4.0 * CM)],
        &[
            Found(SPRING_RATE.any(), 250.0),
            By("speed at the top", || speed_after(-0.180, 2.00, 9.80), 0.687),
        ],
        "OpenStax, College Physics 2e, section 7.4, Example 7.8 (module m42149)",
        "Printed speed in, given stiffness out.",
    ),
];

#[test]
fn restitution_and_energy() {
    check(CASES);
}
