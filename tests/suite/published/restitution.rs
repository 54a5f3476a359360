//! Bounce, energy and speed.

use heftwise::quantity::catalogue::{impact::*, machine::*, motion::DRIVING_SPEED};

use super::unit::*;
use super::{Case, Expect::Found, check, read, recalled};

const ITF: &str = "ITF ball approval, rebound test: 254 cm drop, 135 to 147 cm rebound";

pub(crate) const CASES: &[Case] = &[
    read(
        "restitution-tennis-ball-low",
        0.002,
        &[(BOUNCE_TEST_DROP.any(), 2.54), (BOUNCE_TEST_REBOUND.any(), 1.35)],
        &[Found(BOUNCE_TEST_RESTITUTION.any(), 0.729)],
        ITF,
        "Heights published, restitution worked out.",
    ),
    read(
        "restitution-tennis-ball-low-energy",
        0.002,
        &[(RESTITUTION.any(), 0.729)],
        &[Found(BOUNCE_ENERGY_KEPT.any(), 1.35 / 2.54)],
        ITF,
        "What comes back of the energy is the published rebound over the published drop.",
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
        &[(BOUNCE_TEST_DROP.any(), 2.54), (BOUNCE_TEST_REBOUND.any(), 1.47)],
        &[Found(BOUNCE_TEST_RESTITUTION.any(), 0.761)],
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
        // The net work of 92.0 J comes on top of the 3.75 J before.
        &[Found(KINETIC_ENERGY.any(), 3.75 + 92.0), Found(STOPPING_FORCE.any(), 5.00)],
        "OpenStax, College Physics 2e, section 7.2, Examples 7.2 to 7.5 (module m42147)",
        "Printed speed and coasting distance in, given work and friction out.",
    ),
    read(
        "energy-package-before-push",
        0.003,
        &[(MASS.any(), 30.0), (IMPACT_SPEED.any(), 0.500)],
        &[Found(KINETIC_ENERGY.any(), 3.75)],
        "OpenStax, College Physics 2e, section 7.2, Example 7.3 (module m42147)",
        "Printed.",
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
        &[(DRIVING_SPEED.any(), 5.00), (DROP_HEIGHT.any(), 20.0), (GRAVITY.any(), 9.80)],
        &[Found(LEDGE_SPEED.any(), 20.4)],
        "OpenStax, College Physics 2e, section 7.3, Example 7.7 (module m42148)",
        "Printed.",
    ),
    read(
        "spring-toy-car-launch",
        0.002,
        &[(MASS.any(), 0.100), (IMPACT_SPEED.any(), 2.00), (STOP_DISTANCE.any(), 4.0 * CM)],
        &[Found(SPRING_RATE.any(), 250.0)],
        "OpenStax, College Physics 2e, section 7.4, Example 7.8 (module m42149)",
        "Printed speed in, given stiffness out.",
    ),
    read(
        "spring-toy-car-top-of-slope",
        0.002,
        &[(DRIVING_SPEED.any(), 0.687), (DROP_HEIGHT.any(), 0.180), (GRAVITY.any(), 9.80)],
        &[Found(LEDGE_SPEED.any(), 2.00)],
        "OpenStax, College Physics 2e, section 7.4, Example 7.8 (module m42149)",
        "Printed speed at the top in, printed speed at the bottom out.",
    ),
    read(
        "drop-height-transit",
        0.002,
        &[(IMPACT_SPEED.any(), 4.89), (GRAVITY.any(), GN)],
        &[Found(DROP_HEIGHT.any(), 1.22)],
        "MIL-STD-810F Method 516.5 Procedure IV, transit drop height",
        "Speed worked out, published height out.",
    ),
    recalled(
        "drop-height-baseball",
        0.002,
        &[(IMPACT_SPEED.any(), 24.5), (GRAVITY.any(), 9.8)],
        &[Found(DROP_HEIGHT.any(), 30.6)],
        "OpenStax, University Physics Volume 1, section 3.5, example on the vertical motion of a baseball, from memory",
        "Printed. Up as down: the height that a speed carries it to.",
    ),
];

#[test]
fn restitution_and_energy() {
    check(CASES);
}
