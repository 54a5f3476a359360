//! Ground pressure and braking on the level.

use heftwise::quantity::catalogue::{impact::*, machine::*, pressure::*, running_gear::*};

use super::unit::*;
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const CASES: &[Case] = &[
    read(
        "ngp-tracked-carrier-m113",
        0.01,
        &[
            (WEIGHT.any(), 22900.0 * LBF),
            (TRACK_WIDTH.any(), 15.0 * INCH),
            (CONTACT_LENGTH.any(), 105.0 * INCH),
            (TRACK_COUNT.any(), 2.0),
        ],
        &[Found(GROUND_PRESSURE.any(), 7.3 * PSI)],
        "R. P. Hunnicutt, Bradley: A History of American Fighting and Support Vehicles, M113 data sheet, as copied at afvdatabase.com",
        "Printed. 7.270 psi unrounded.",
    ),
    read(
        "ngp-tank-m48-area",
        0.005,
        &[(WEIGHT.any(), 96000.0 * LBF), (CONTACT_AREA.any(), 5.899)],
        &[Found(GROUND_PRESSURE.any(), 10.5 * PSI)],
        "B. G. Schreiner, Trafficability of Snow in Arctic and Subarctic Regions, US Army WES Miscellaneous Paper 4-713, 1965, abstract",
        "Weight and pressure printed; the area is their quotient and goes in, the pressure comes out.",
    ),
    recalled(
        "ngp-boy-standing",
        0.025,
        &[(MASS.any(), 45.0), (CONTACT_AREA.any(), 300e-4), (GRAVITY.any(), 9.8)],
        &[Found(GROUND_PRESSURE.any(), 15e3)],
        "A. V. Peryshkin, Physics, grade 7, worked example on pressure of solids",
        "Printed (from memory). 14.7 kPa unrounded; the book rounds the weight to 450 N.",
    ),
    recalled(
        "ngp-skier",
        0.005,
        &[
            (MASS.any(), 78.0),
            (SKI_LENGTH.any(), 1.95),
            (SKI_WIDTH.any(), 8.0 * CM),
            (SKI_COUNT.any(), 2.0),
            (GRAVITY.any(), 10.0),
        ],
        &[Found(GROUND_PRESSURE.any(), 2.5e3)],
        "V. I. Lukashik, E. V. Ivanova, Collection of Physics Problems for grades 7-9, pressure chapter",
        "Printed (from memory). The book works with g = 10 N/kg.",
    ),
    read(
        "ngp-high-heel",
        0.003,
        &[(MASS.any(), 55.0), (CONTACT_AREA.any(), 1.5e-4), (GRAVITY.any(), 9.80)],
        &[Found(GROUND_PRESSURE.any(), 3.59e6)],
        "OpenStax, College Physics 2e, section 11.3 Pressure, problem 1 (module m42189)",
        "Printed. The whole weight on one heel.",
    ),
    read(
        "low-end-crane-base-lifted",
        0.002,
        &[
            (WEIGHT.any(), 2687.5e3),
            (TRACK_COUNT.any(), 1.0),
            (TRACK_WIDTH.any(), 7.0),
            (CONTACT_LENGTH.any(), 7.0),
            (BALANCE_OFFSET.any(), 1.563),
        ],
        &[Found(LOW_END_PRESSURE.any(), 132.2e3), Found(LIFTED_LENGTH.any(), 7.0 - 5.811)],
        "A worked design of a tower crane's square base, read on a public page: 2687.5 kN, 1.563 m off the middle of 7 m, presses along 5.811 m",
        "Printed pressure and length pressed. Off the middle by more than a sixth, so that one end lifts.",
    ),
    read(
        "low-end-footing-at-a-sixth",
        0.002,
        &[
            (WEIGHT.any(), 120e3 * LBF),
            (TRACK_COUNT.any(), 1.0),
            (TRACK_WIDTH.any(), 14.0 * FOOT),
            (CONTACT_LENGTH.any(), 6.0 * FOOT),
            (BALANCE_OFFSET.any(), 1.0 * FOOT),
        ],
        &[
            Found(END_PRESSURE_RATIO.any(), 2.0),
            Found(LOW_END_PRESSURE.any(), 2.0 * 120e3 * LBF / (84.0 * FOOT * FOOT)),
        ],
        "An examination problem on an eccentric footing for the civil engineer's licence in the USA: 120 kip, 6 ft by 14 ft, 1 ft off the middle, read on a public page",
        "Statement and condition read; at a sixth of the length the low end presses twice the mean.",
    ),
    read(
        "braking-force-1000kg",
        0.003,
        &[(MASS.any(), 1000.0), (IMPACT_SPEED.any(), 90.0 * KMH), (STOP_DISTANCE.any(), 40.0)],
        &[Found(DECELERATION.any(), 7.80), Found(MEAN_IMPACT_FORCE.any(), 7.80e3)],
        "OpenStax, University Physics Volume 1, section 5.3, problem (module m58297)",
        "Printed 7.80; 7.8125 unrounded.",
    ),
    read(
        "stopping-dry-no-reaction",
        0.002,
        &[(IMPACT_SPEED.any(), 30.0), (STOP_DISTANCE.any(), 64.3)],
        &[Found(DECELERATION.any(), 7.00)],
        "OpenStax, University Physics Volume 1, section 3.4 Motion with Constant Acceleration, stopping a car (module m58285)",
        "Printed distance in, given deceleration out.",
    ),
];

#[test]
fn ground() {
    check(CASES);
}
