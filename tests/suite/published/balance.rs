//! Loads on the ends, tipping, nosing over, sliding.

use heftwise::quantity::catalogue::{balance::*, ground::*, machine::*, motion::*, turning::*};

use super::unit::*;
use super::{Case, Expect::Found, check, from_parts, read, recalled};

const DEG: f64 = std::f64::consts::PI / 180.0;
const CP_9_4: &str = "OpenStax, College Physics 2e, section 9.4 (module m42173)";
const MEIJAARD: &str =
    "Meijaard, Papadopoulos, Ruina and Schwab, Proc. R. Soc. A 463 (2007) 1955, Table 1";
const BAKER: &str = "D. Baker and W. Haynes, Engineering Statics: Open and Interactive, chapter 7";
const MERIAM: &str = "J. L. Meriam and L. G. Kraige, Engineering Mechanics: Dynamics, Sample Problem 6/1 (from memory)";
const NHTSA: &str = "NHTSA report DOT HS 809 868, sales-weighted averages of model year 2003";
const ATV: &str = "FME Inc., ATV Static Stability Tests (2007), read at studylib.net";

pub(crate) const LOADS: &[Case] = &[
    read(
        "axle-car-52-percent",
        0.001,
        &[(MASS.any(), 1000.0), (WHEELBASE.any(), 2.5), (BALANCE_OFFSET.any(), 1.3 - 2.5 / 2.0)],
        &[Found(REAR_ARM.any(), 1.3), Found(FRONT_SHARE.any(), 0.52)],
        "OpenStax, University Physics Volume 1, section 12.1, Example 12.1 (module m58340)",
        "Printed distance in, given share out. The mass cancels.",
    ),
    read(
        "axle-car-52-percent-scales",
        0.001,
        &[(FRONT_SCALE.any(), 0.52), (REAR_SCALE.any(), 0.48), (WHEELBASE.any(), 2.5)],
        &[Found(SCALE_OFFSET.any(), 1.3 - 2.5 / 2.0)],
        "OpenStax, University Physics Volume 1, section 12.1, Example 12.1 (module m58340)",
        "Printed, from the shares.",
    ),
    read(
        "axle-car-52-percent-from-elsewhere",
        0.001,
        // The same car, its places counted from a line 0.30 m behind the middle of the wheelbase.
        &[
            (MASS.any(), 1000.0),
            (WHEELBASE.any(), 2.5),
            (WHEELBASE_MIDDLE.any(), 0.30),
            (BALANCE_OFFSET.any(), 1.3 - 2.5 / 2.0 + 0.30),
        ],
        &[Found(REAR_ARM.any(), 1.3), Found(FRONT_SHARE.any(), 0.52)],
        "OpenStax, University Physics Volume 1, section 12.1, Example 12.1 (module m58340)",
        "The share does not hang on where places are counted from.",
    ),
    read(
        "axle-car-on-bridge",
        0.001,
        &[
            (MASS.any(), 1000.0),
            (GRAVITY.any(), 9.80),
            (WHEELBASE.any(), 20.0),
            (BALANCE_OFFSET.any(), 5.0 - 20.0 / 2.0),
        ],
        &[Found(REAR_LOAD.any(), 7350.0), Found(FRONT_LOAD.any(), 2450.0)],
        CP_9_4,
        "Printed. The left pier is the rear support.",
    ),
    read(
        "axle-benchmark-bicycle",
        0.001,
        &[
            (MASS.any(), 94.0),
            (GRAVITY.any(), 9.81),
            (WHEELBASE.any(), 1.02),
            (BALANCE_OFFSET.any(), 0.342128 - 1.02 / 2.0),
        ],
        &[Found(FRONT_LOAD.any(), 309.3), Found(REAR_LOAD.any(), 612.8)],
        MEIJAARD,
        "Loads worked out from the published parameters.",
    ),
    read(
        "axle-pole-two-hands",
        0.003,
        &[
            (MASS.any(), 5.00),
            (GRAVITY.any(), 9.80),
            (WHEELBASE.any(), 0.900),
            (BALANCE_OFFSET.any(), 0.600 - 0.900 / 2.0),
        ],
        &[Found(FRONT_LOAD.any(), 32.7), Found(REAR_LOAD.any(), 16.3)],
        CP_9_4,
        "Printed, Example 9.2. The left hand is the rear support.",
    ),
    read(
        "cg-height-lifted-rear",
        0.002,
        &[
            (FRONT_SCALE.any(), 70.0),
            (REAR_SCALE.any(), 80.0),
            (RAISED_SCALE.any(), 79.6),
            (WHEELBASE.any(), 1.20),
            (AXLE_HEIGHT.any(), 0.25),
            (RAISE_ANGLE.any(), 20.0 * DEG),
        ],
        &[Found(SCALE_MASS.any(), 150.0), Found(SCALE_CG_HEIGHT.any(), 0.461)],
        "Penn State mechanical engineering, Notes 07_04 Vehicle Inertial Measurements",
        "Formula published; numbers worked out.",
    ),
    recalled(
        "load-shift-pickup-uphill",
        0.001,
        &[
            (MASS.any(), 3220.0 * LBF / (32.2 * FOOT)),
            (GRAVITY.any(), 32.2 * FOOT),
            (SLOPE.any(), 0.099_668_652_491_162_03),
            (WHEELBASE.any(), 120.0 * INCH),
            (BALANCE_OFFSET.any(), 0.0),
            (CG_HEIGHT.any(), 24.0 * INCH),
            (WANTED_ACCELERATION.any(), 4.84 * FOOT),
        ],
        &[
            Found(LOAD_SHIFT.any(), 96.8 * LBF),
            Found(MOVING_REAR_LOAD.any(), 1763.0 * LBF),
            Found(MOVING_FRONT_LOAD.any(), 1441.0 * LBF),
        ],
        MERIAM,
        "Loads printed, the shift worked out. Acceleration and slope both lean on the rear.",
    ),
];

/// OpenStax, University Physics Volume 1, section 9.6, problem (module m58323): printed, a quarter of
/// the height; the cone of height 1 m as 1000 slices in a build's parts list.
#[test]
fn a_cone_of_parts_balances_at_a_quarter() {
    let slices = (0..1000).map(|slice| {
        let up = (f64::from(slice) + 0.5) / 1000.0;
        ((1.0 - up) * (1.0 - up), [0.0, 0.0, up])
    });
    let found = from_parts(slices, CG_HEIGHT.any());
    assert!((found - 0.25).abs() <= 0.001 * 0.25, "{found}");
}

pub(crate) const ENDS: &[Case] = &[
    read(
        "load-shift-slope-reduces-braking",
        0.001,
        &[
            (CG_HEIGHT.any(), 1.0),
            (WHEELBASE.any(), 1.4),
            (SLOPE.any(), -0.099_668_652_491_162_03),
            (GRAVITY.any(), 1.0),
            // 0.6 of the force on the ground: times the cosine of 1 in 10.
            (BRAKING_DECELERATION.any(), 0.6 * 0.995_037_190_209_989),
        ],
        &[
            Found(NOSE_OVER_LIMIT.any(), 0.7),
            Found(NOSE_OVER_DECELERATION.any(), 0.6 * 0.995_037_190_209_989),
            Found(BRAKE_DEMAND.any(), 0.7),
            Found(NOSE_OVER_MARGIN.any(), 1.0),
        ],
        "J. S. Riel, Maximal Braking on a Standard Bicycle (2005)",
        "Printed for small slopes, in multiples of g: 0.7 on the level is 0.6 on 1 in 10 downhill.",
    ),
    recalled(
        "flip-bicycle-whitt-wilson",
        0.01,
        &[
            (WHEELBASE.any(), 1.067),
            (BALANCE_OFFSET.any(), 0.432 - 1.067 / 2.0),
            (CG_HEIGHT.any(), 1.143),
        ],
        &[Found(FRONT_ARM.any(), 0.635), Found(NOSE_OVER_LIMIT.any(), 0.56)],
        "F. R. Whitt and D. G. Wilson, Bicycling Science, chapter on braking (from memory)",
        "Printed. 0.5556 unrounded.",
    ),
    read(
        "flip-benchmark-bicycle-header",
        0.001,
        &[
            (WHEELBASE.any(), 1.02),
            (BALANCE_OFFSET.any(), 0.342128 - 1.02 / 2.0),
            (CG_HEIGHT.any(), 0.861170),
        ],
        &[
            Found(FRONT_ARM.any(), 0.677872),
            Found(NOSE_OVER_LIMIT.any(), 0.787),
            Found(NOSE_OVER_SLOPE.any(), 38.2 * DEG),
        ],
        MEIJAARD,
        "Geometry published; limit and slope are worked out.",
    ),
    recalled(
        "flip-truck-wheelie",
        0.001,
        &[
            (WHEELBASE.any(), 120.0 * INCH),
            (CG_HEIGHT.any(), 24.0 * INCH),
            (WANTED_ACCELERATION.any(), 2.5 * GN),
        ],
        &[
            Found(FRONT_LIFT_LIMIT.any(), 2.5),
            Found(FRONT_LIFT_ACCELERATION.any(), 2.5 * GN),
            Found(CLIMB_DEMAND.any(), 2.5),
            Found(FRONT_LIFT_MARGIN.any(), 1.0),
        ],
        MERIAM,
        "Geometry printed; a low long machine spins its wheels instead.",
    ),
    read(
        "tip-back-wheelchair",
        0.01,
        &[(REAR_ARM.any(), 0.13), (CG_HEIGHT.any(), 0.24)],
        &[Found(FRONT_LIFT_SLOPE.any(), 28.6 * DEG)],
        "T. D. Loane and R. L. Kirby, Arch. Phys. Med. Rehabil. 66 (1985) 174, abstract: 28.6° measured on a tilt platform, 2.7° either way",
        "Mean place of the centre of gravity, 13 cm ahead of the axle and 24 cm above it, read in a textbook problem on the same chairs. The wheels rolled free, so it tips about the axle.",
    ),
];

pub(crate) const SIDES: &[Case] = &[
    read(
        "ssf-passenger-car-2003",
        0.002,
        &[(GAUGE.any(), 1.551), (CG_HEIGHT.any(), 0.550)],
        &[Found(STABILITY_FACTOR.any(), 1.41), Found(SIDE_TIP_ANGLE.any(), 54.7 * DEG)],
        NHTSA,
        "The factor is the published mean; gauge and height are chosen to give it.",
    ),
    read(
        "ssf-suv-2003",
        0.002,
        &[(GAUGE.any(), 1.521), (CG_HEIGHT.any(), 0.650)],
        &[Found(STABILITY_FACTOR.any(), 1.17), Found(SIDE_TIP_ANGLE.any(), 49.5 * DEG)],
        NHTSA,
        "The factor is the published mean; gauge and height are chosen to give it.",
    ),
    read(
        "ssf-minivan-2003",
        0.002,
        &[(GAUGE.any(), 1.612), (CG_HEIGHT.any(), 0.650)],
        &[Found(STABILITY_FACTOR.any(), 1.24), Found(SIDE_TIP_ANGLE.any(), 51.1 * DEG)],
        NHTSA,
        "The factor is the published mean; gauge and height are chosen to give it.",
    ),
    read(
        "ssf-quad-kst-minimum",
        0.002,
        &[(GAUGE.any(), 0.890), (CG_HEIGHT.any(), 0.500)],
        &[Found(STABILITY_FACTOR.any(), 0.89), Found(SIDE_TIP_ANGLE.any(), 41.7 * DEG)],
        ATV,
        "The agreed minimum; tilt tables give 10 to 15 % less.",
    ),
    read(
        "ssf-rov-threshold-0p70g",
        0.002,
        &[(GAUGE.any(), 1.400), (CG_HEIGHT.any(), 1.000)],
        &[Found(STABILITY_FACTOR.any(), 0.70), Found(SIDE_TIP_ANGLE.any(), 35.0 * DEG)],
        "US CPSC notice of proposed rulemaking for recreational off-highway vehicles (2014)",
        "A dynamic test threshold, used as a number; gauge and height are chosen to give it.",
    ),
    read(
        "tip-or-slide-grippy",
        0.001,
        &[
            (STABILITY_FACTOR.any(), 0.751),
            (GRIP_COEFFICIENT.any(), 0.88),
            (SIDE_SLOPE.any(), 36.9 * DEG),
        ],
        &[
            Found(SIDE_LIMIT.any(), 0.751),
            Found(SIDE_LIMIT_SLOPE.any(), 36.9 * DEG),
            Found(SIDE_SLOPE_DEMAND.any(), 0.751),
            Found(SIDE_SLOPE_MARGIN.any(), 1.0),
        ],
        ATV,
        "Highest grip and lowest tilt-table ratio measured: it tips. The ratio is the tangent of the table's tilt.",
    ),
    read(
        "tip-or-slide-loose",
        0.001,
        &[(STABILITY_FACTOR.any(), 0.751), (GRIP_COEFFICIENT.any(), 0.58)],
        &[Found(SIDE_LIMIT.any(), 0.58), Found(SIDE_LIMIT_SLOPE.any(), 30.1 * DEG)],
        ATV,
        "The loosest surface: it slides.",
    ),
    read(
        "tip-speed-quad",
        0.002,
        &[(STABILITY_FACTOR.any(), 0.89), (TURN_RADIUS.any(), 10.0), (GRAVITY.any(), GN)],
        &[Found(TIP_SPEED.any(), 9.34), Found(TURN_SPEED_LIMIT.any(), 9.34)],
        ATV,
        "The factor is published; the speed is worked out.",
    ),
    read(
        "tip-mud-wall",
        0.002,
        &[
            (WEIGHT.any(), 3.0 * 0.8 * 2400.0 * 9.81),
            (SIDE_ARM.any(), 0.8 / 2.0),
            (PUSH_HEIGHT.any(), 1.988 / 3.0),
        ],
        &[Found(TIPPING_PUSH.any(), 0.5 * 1760.0 * 9.81 * 1.988 * 1.988)],
        BAKER,
        "Depth printed as 1.99 m, 1.988 m unrounded: mud that deep pushes a metre of the wall over.",
    ),
    read(
        "tip-mud-wall-as-printed",
        0.002,
        &[
            (WEIGHT.any(), 3.0 * 0.8 * 2400.0 * 9.81),
            (SIDE_ARM.any(), 0.8 / 2.0),
            (PUSH_HEIGHT.any(), 1.99 / 3.0),
        ],
        &[Found(TIPPING_PUSH.any(), 0.5 * 1760.0 * 9.81 * 1.988 * 1.988)],
        BAKER,
        "Depth printed as 1.99 m, 1.988 m unrounded: mud that deep pushes a metre of the wall over.",
    ),
];

#[test]
fn loads() {
    check(LOADS);
}

#[test]
fn ends() {
    check(ENDS);
}

#[test]
fn sides() {
    check(SIDES);
}

#[test]
fn tip_or_slide_is_named() {
    for (grip, words) in [(0.88, "tips before it slides"), (0.58, "slides before it tips")] {
        let mut givens = heftwise::rules::Givens::default();
        givens.set(STABILITY_FACTOR, 0.751);
        givens.set(GRIP_COEFFICIENT, grip);
        let values = heftwise::rules::evaluate(&givens);
        let heftwise::rules::Value::Known(known) = values.of(SIDE_LIMIT) else { panic!("{grip}") };
        assert!(known.cautions.iter().any(|said| said.contains(words)), "{:?}", known.cautions);
    }
}
