//! Grip, sliding and rolling by coefficients.

use heftwise::quantity::catalogue::{ground::*, machine::*, motion::*, traction::*};

use super::super::unit::{DEG, GN, INCH, MPH};
use super::super::{Case, Expect::Found, check, read};

pub(crate) const CASES: &[Case] = &[
    read(
        "rolling-speed-2000lb-70mph",
        0.001,
        &[(DRIVING_SPEED.any(), 70.0 * MPH)],
        &[Found(PAVED_ROLLING_COEFFICIENT.any(), 33.97 / 2000.0)],
        "F. L. Mannering, S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2, example on maximum grade; read as quoted at essaywritingpros.com/2023/05/16/grade-resistance",
        "Printed. Paved road.",
    ),
    read(
        "rolling-speed-2600lb-60mph",
        0.001,
        &[(DRIVING_SPEED.any(), 60.0 * MPH)],
        &[Found(PAVED_ROLLING_COEFFICIENT.any(), 41.57 / 2600.0)],
        "F. L. Mannering, S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2 problem (2600-lb car, 5 % grade); read with a worked answer at partnerperformance.uonbi.ac.ke/preguntia/14583066",
        "Printed answer 41.565 lb; the same page prints 41.656 one line later (digits swapped).",
    ),
    read(
        "rolling-penetration-2in",
        0.001,
        &[(RUT_DEPTH.any(), 2.0 * INCH)],
        &[Found(RUT_ROLLING_COEFFICIENT.any(), 1000.0 / 20000.0)],
        "Standard civil-engineering handbook rule for earthmoving haul units (40 lb/ton plus 30 lb/ton per inch); read at civil4m.com/threads/the-formulas-for-earth-moving-equipments-rolling-resistance.7578",
        "Reckoned from printed inputs from the read rule. The metric conversions printed beside the rule are wrong.",
    ),
    read(
        "rolling-penetration-4in",
        0.001,
        &[(RUT_DEPTH.any(), 4.0 * INCH)],
        &[Found(RUT_ROLLING_COEFFICIENT.any(), 640.0 / 8000.0)],
        "Standard civil-engineering handbook rule for earthmoving haul units (40 lb/ton plus 30 lb/ton per inch); read at civil4m.com/threads/the-formulas-for-earth-moving-equipments-rolling-resistance.7578",
        "Reckoned from printed inputs from the read rule.",
    ),
    read(
        "rolling-car-on-sand",
        0.001,
        &[(MASS.any(), 1500.0), (ROLLING_COEFFICIENT.any(), 0.3), (GRAVITY.any(), 9.80665)],
        &[Found(ROLLING_RESISTANCE.any(), 4413.0)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, rolling resistance table, read in university lecture slides at slideplayer.com/amp/15954103",
        "Reckoned from printed inputs from the read coefficient (car on sand).",
    ),
    read(
        "rolling-tractor-medium-soil",
        0.001,
        &[(MASS.any(), 2500.0), (ROLLING_COEFFICIENT.any(), 0.04), (GRAVITY.any(), 9.80665)],
        &[Found(ROLLING_RESISTANCE.any(), 980.66)],
        "T. D. Gillespie, Fundamentals of Vehicle Dynamics, rolling resistance table, read in university lecture slides at slideplayer.com/amp/15954103",
        "Reckoned from printed inputs from the read coefficient (tractor on medium-hard soil).",
    ),
    read(
        "grip-uphill-dry-2wd",
        0.005,
        &[
            (GRIP_COEFFICIENT.any(), 1.0),
            (DRIVEN_SHARE.any(), 0.5),
            (SLOPE.any(), 4.0 * DEG),
            (GRAVITY.any(), 9.8),
        ],
        &[Found(GRIP_ACCELERATION.any(), 4.2)],
        "OpenStax, College Physics 2e, section 5.1 Friction, problem on a car on a 4-degree slope (module m42139)",
        "Printed. Half the weight on the driven wheels; negative means it cannot climb from rest.",
    ),
    read(
        "grip-uphill-ice-2wd",
        0.005,
        &[
            (GRIP_COEFFICIENT.any(), 0.1),
            (DRIVEN_SHARE.any(), 0.5),
            (SLOPE.any(), 4.0 * DEG),
            (GRAVITY.any(), 9.8),
        ],
        &[Found(GRIP_ACCELERATION.any(), -0.195)],
        "OpenStax, College Physics 2e, section 5.1 Friction, problem on a car on a 4-degree slope (module m42139)",
        "Printed. Half the weight on the driven wheels; negative means it cannot climb from rest.",
    ),
    read(
        "grip-uphill-ice-4wd",
        0.003,
        &[
            (GRIP_COEFFICIENT.any(), 0.1),
            (DRIVEN_SHARE.any(), 1.0),
            (SLOPE.any(), 4.0 * DEG),
            (GRAVITY.any(), 9.8),
        ],
        &[Found(GRIP_ACCELERATION.any(), 0.294)],
        "OpenStax, College Physics 2e, section 5.1 Friction, problem on a car on a 4-degree slope (module m42139)",
        "Reckoned from printed inputs (the book asks for four-wheel drive without printing the answer). Same ice, now it climbs.",
    ),
    read(
        "slide-snowboard-13deg",
        0.025,
        &[(SLOPE.any(), 13.0 * DEG), (SLIDING_COEFFICIENT.any(), 0.2), (GRAVITY.any(), 9.8)],
        &[Found(SLIDE_ACCELERATION.any(), 0.29)],
        "OpenStax, University Physics Volume 1, section 6.2 Friction, worked example (module m58304)",
        "Printed, two digits; exact 0.2948.",
    ),
    read(
        "slide-uphill-snowboard-5deg",
        0.003,
        &[(SLOPE.any(), 5.0 * DEG), (SLIDING_COEFFICIENT.any(), 0.1), (GRAVITY.any(), 9.8)],
        &[Found(SLIDE_UP_DECELERATION.any(), 1.83)],
        "OpenStax, College Physics 2e, section 5.1 Friction, problem (module m42139)",
        "Printed. Moving up, gravity and friction add. Waxed wood on wet snow, sliding.",
    ),
    read(
        "slide-skier-mu",
        0.006,
        &[
            (MASS.any(), 62.0),
            (SLOPE.any(), 25.0 * DEG),
            (SLIDING_COEFFICIENT.any(), 0.082),
            (GRAVITY.any(), 9.8),
        ],
        &[Found(SLIDING_FRICTION.any(), 45.0)],
        "OpenStax, University Physics Volume 1, section 6.2 Friction, worked example (module m58304)",
        "Printed. The printed coefficient goes in, the force of friction comes out.",
    ),
    read(
        "slope-limit-wet-concrete",
        0.002,
        &[(GRIP_COEFFICIENT.any(), 0.7)],
        &[Found(SLIDE_ANGLE.any(), 34.99 * DEG)],
        "OpenStax, College Physics 2e, section 5.1 Friction, table of coefficients and the derived angle rule (module m42139)",
        "Reckoned from printed inputs from read coefficient and rule (rubber on wet concrete, static).",
    ),
    read(
        "slope-limit-ice",
        0.002,
        &[(GRIP_COEFFICIENT.any(), 0.1)],
        &[Found(SLIDE_ANGLE.any(), 5.711 * DEG)],
        "OpenStax, College Physics 2e, section 5.1 Friction, table of coefficients and the derived angle rule (module m42139)",
        "Reckoned from printed inputs from read coefficient and rule (shoes on ice, static).",
    ),
    read(
        "m113-towed-through-snow",
        0.002,
        &[(TOW_TEST_PULL.any(), 5585.4), (TOW_TEST_MASS.any(), 104092.0 / GN)],
        &[Found(ROLLING_COEFFICIENT.any(), 0.0537)],
        "US Army CRREL Report 95-1, 1995, Table A5; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm",
        "Printed resistance and weight; the coefficient is their quotient.",
    ),
    read(
        "m113-pull-in-snow",
        0.002,
        &[(GRIP_TEST_PULL.any(), 38548.9), (GRIP_TEST_MASS.any(), 104092.0 / GN)],
        &[Found(GRIP_COEFFICIENT.any(), 0.370)],
        "US Army CRREL Report 95-1, 1995, Table A5; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm",
        "Printed pull over printed weight; a drawbar pull, so net of resistance.",
    ),
    read(
        "roll-on-ice-slope",
        0.002,
        &[(ROLL_ON_SLOPE.any(), 5.711 * DEG)],
        &[Found(ROLLING_COEFFICIENT.any(), 0.1)],
        "OpenStax, College Physics 2e, section 5.1 Friction, the derived angle rule (module m42139)",
        "Reckoned from the printed rule: the coefficient is the tangent of the slope.",
    ),
];

#[test]
fn friction() {
    check(CASES);
}
