//! Resistance, power and grip.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{ground::*, machine::*, motion::*, traction::*};

use super::unit::*;
use super::{Case, Expect::Found, check, read};

const UP_6_4: &str = "OpenStax, University Physics Volume 1, section 6.4 Drag Force and Terminal Speed (module m58306)";
const UP_7_4: &str = "OpenStax, University Physics Volume 1, section 7.4 Power (module m58310)";
const UP_5_3: &str = "OpenStax, University Physics Volume 1, section 5.3 (module m58297)";
const CP_5_1: &str = "OpenStax, College Physics 2e, section 5.1 Friction, problems (module m42139)";
const MANNERING: &str = "F. L. Mannering and S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2, as quoted at essaywritingpros.com and partnerperformance.uonbi.ac.ke";
const HP: f64 = 745.699_871_582;
/// A slug per cubic foot, by definition of the slug.
const SLUG_PER_CUBIC_FOOT: f64 = LBF / (FOOT * FOOT * FOOT * FOOT);
const FOOT2: f64 = FOOT * FOOT;

pub(crate) const DRAG: &[Case] = &[
    read(
        "drag-2000lb-car-70mph",
        0.001,
        &[
            (AIR_DENSITY.any(), 0.002045 * SLUG_PER_CUBIC_FOOT),
            (DRAG_COEFFICIENT.any(), 0.40),
            (FRONTAL_AREA.any(), 20.0 * FOOT2),
            (DRIVING_SPEED.any(), 70.0 * MPH),
        ],
        &[Found(AIR_DRAG.any(), 86.22 * LBF)],
        MANNERING,
        "Printed. Air at 5000 ft.",
    ),
    read(
        "drag-saloon-100kmh",
        0.002,
        &[(AIR_DENSITY.any(), 1.21), (DRAG_AREA.any(), 0.70), (DRIVING_SPEED.any(), 100.0 * KMH)],
        &[Found(AIR_DRAG.any(), 326.77)],
        UP_6_4,
        "Worked from a published statement; the drag area holds the coefficient already.",
    ),
    read(
        "drag-saloon-area",
        0.002,
        &[(DRAG_COEFFICIENT.any(), 0.28), (FRONTAL_AREA.any(), 2.5)],
        &[Found(DRAG_AREA.any(), 0.70)],
        UP_6_4,
        "The table's coefficient and the problem's drag area.",
    ),
    read(
        "drag-2600lb-car-60mph",
        0.001,
        &[
            (AIR_DENSITY.any(), 0.002045 * SLUG_PER_CUBIC_FOOT),
            (DRAG_COEFFICIENT.any(), 0.35),
            (FRONTAL_AREA.any(), 22.0 * FOOT2),
            (DRIVING_SPEED.any(), 60.0 * MPH),
        ],
        &[Found(AIR_DRAG.any(), 60.97 * LBF)],
        MANNERING,
        "Printed.",
    ),
    read(
        "drag-ratio-65-to-110kmh",
        0.003,
        &[
            // A drag of one newton at 65 km/h.
            (AIR_DENSITY.any(), 1.0),
            (DRAG_AREA.any(), 2.0 / (65.0 * KMH * 65.0 * KMH)),
            (DRIVING_SPEED.any(), 65.0 * KMH),
            (TARGET_SPEED.any(), 110.0 * KMH),
        ],
        &[Found(AIR_DRAG.any(), 1.0), Found(TARGET_DRAG.any(), 2.86)],
        UP_6_4,
        "Printed 2.86; College Physics prints 2.9 for the same problem.",
    ),
    read(
        "terminal-speed-headfirst",
        0.006,
        &[
            (AIR_DENSITY.any(), 1.21),
            (DRAG_COEFFICIENT.any(), 0.70),
            (FRONTAL_AREA.any(), 0.18),
            (LARGEST_THRUST.any(), 75.0 * 9.80),
            (STEADY_RESISTANCE.any(), 0.0),
        ],
        &[Found(DRAG_TOP_SPEED.any(), 98.0)],
        UP_6_4,
        "Printed. The thrust is the diver's weight.",
    ),
    read(
        "terminal-speed-spread",
        0.01,
        &[
            (AIR_DENSITY.any(), 1.21),
            (DRAG_COEFFICIENT.any(), 1.0),
            (FRONTAL_AREA.any(), 0.70),
            (LARGEST_THRUST.any(), 85.0 * 9.80),
            (STEADY_RESISTANCE.any(), 0.0),
        ],
        &[Found(DRAG_TOP_SPEED.any(), 44.0)],
        UP_6_4,
        "Printed. The thrust is the diver's weight.",
    ),
    read(
        "drag-rolling-crossover-train8",
        0.02,
        &[
            (MASS.any(), 400_000.0),
            (GRAVITY.any(), 10.0),
            (ROLLING_COEFFICIENT.any(), 0.002),
            (DRAG_AREA.any(), 11.0),
            (AIR_DENSITY.any(), 1.3),
        ],
        &[Found(DRAG_CROSSOVER.any(), 33.0)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, technical chapter A, page 260",
        "Printed. Coefficient, density and gravity are the book's rounded values.",
    ),
    read(
        "drag-rolling-crossover-bicycle",
        0.1,
        &[
            (MASS.any(), 90.0),
            (GRAVITY.any(), 10.0),
            (ROLLING_COEFFICIENT.any(), 0.005),
            (DRAG_AREA.any(), 0.75),
            (AIR_DENSITY.any(), 1.3),
        ],
        &[Found(DRAG_CROSSOVER.any(), 12.0 * KMH)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, technical chapter A, page 260",
        "Printed as about 12 km/h; 10.9 km/h with the book's rounded values.",
    ),
];

pub(crate) const FORCE_AND_POWER: &[Case] = &[
    read(
        "max-grade-2000lb-car",
        0.003,
        &[
            (WEIGHT.any(), 2000.0 * LBF),
            (TORQUE_FORCE.any(), 255.0 * LBF),
            (AIR_DENSITY.any(), 0.002045 * SLUG_PER_CUBIC_FOOT),
            (DRAG_COEFFICIENT.any(), 0.40),
            (FRONTAL_AREA.any(), 20.0 * FOOT2),
            (DRIVING_SPEED.any(), 70.0 * MPH),
            (ROLLING_COEFFICIENT.any(), 33.97 / 2000.0),
        ],
        &[Found(CLIMB_AT_SPEED.any(), 0.0674)],
        MANNERING,
        "Printed terms; the grade is their balance by the small-angle rule, within 0.1 % of the angle.",
    ),
    read(
        "climb-rate-1200kg-15pct",
        0.005,
        &[(WEIGHT.any(), 1200.0 * 9.8), (DRIVE_POWER.any(), 0.75 * 58e3)],
        &[Found(CLIMB_RATE.any(), 90.0 * KMH * 0.148_340)],
        UP_7_4,
        "Printed 58 kW at 90 km/h up 15 %, three quarters of it against gravity: the height gained each second is the speed times the sine.",
    ),
    read(
        "grip-meets-power-car",
        0.005,
        &[(DRIVE_POWER.any(), 10.77 * HP), (GRIP_PUSH.any(), 10.77 * HP / (55.0 * MPH))],
        &[Found(GRIP_POWER_SPEED.any(), 55.0 * MPH)],
        "M. J. Moran and H. N. Shapiro, Fundamentals of Engineering Thermodynamics, 8th edition, problem 2.23",
        "The printed power over the force it gives at the printed speed, taken as the grip: the speed comes back; worked for this check.",
    ),
    read(
        "level-power-3040lbf-car",
        0.003,
        &[
            (WEIGHT.any(), 3040.0 * LBF),
            (ROLLING_COEFFICIENT.any(), 0.02),
            (DRAG_COEFFICIENT.any(), 0.25),
            (FRONTAL_AREA.any(), 6.24 * FOOT2),
            (AIR_DENSITY.any(), 0.08 * 0.45359237 / (FOOT * FOOT * FOOT)),
            (DRIVING_SPEED.any(), 55.0 * MPH),
            (DRIVE_POWER.any(), 10.77 * HP),
        ],
        &[
            Found(DRIVING_POWER.any(), 10.77 * HP),
            Found(POWER_TOP_SPEED.any(), 55.0 * MPH),
            Found(TOP_SPEED.any(), 55.0 * MPH),
        ],
        "M. J. Moran and H. N. Shapiro, Fundamentals of Engineering Thermodynamics, 8th edition, problem 2.23",
        "Worked from a published statement.",
    ),
    read(
        "climb-power-1200kg-15pct",
        0.005,
        &[
            (MASS.any(), 1200.0),
            (GRAVITY.any(), 9.8),
            (SLOPE.any(), 0.148_889_947_609_497_3),
            (ROLLING_COEFFICIENT.any(), 0.0),
            (DRIVING_SPEED.any(), 90.0 * KMH),
        ],
        &[Found(DRIVING_POWER.any(), 0.75 * 58e3)],
        UP_7_4,
        "Printed 58 kW, three quarters of it against gravity: that share is found. 15 % is the tangent.",
    ),
    read(
        "power-car-uphill",
        0.004,
        &[
            (WEIGHT.any(), 1200.0 * 9.8),
            (SLOPE.any(), 0.148_889_947_609_497_3),
            (ROLLING_COEFFICIENT.any(), 0.0),
            (DRIVING_SPEED.any(), 90.0 * KMH),
        ],
        &[Found(DRIVING_POWER.any(), 0.75 * 58e3)],
        "OpenStax, University Physics Volume 1, section 7.4, Example 7.12 (module m58310)",
        "Printed. The same example through the weight.",
    ),
    read(
        "power-to-weight-m113",
        0.003,
        &[(DRIVE_POWER.any(), 215.0 * HP), (MASS.any(), 22900.0 * 0.45359237)],
        &[
            Found(POWER_TO_MASS.any(), 15.4),
            Found(POWER_TO_MASS.any(), 18.8 * HP / (2000.0 * 0.45359237)),
        ],
        "R. P. Hunnicutt, Bradley, M113 data sheet; figures read at afvdatabase.com",
        "Worked from read data, in kW/t and in hp per short ton; gross power.",
    ),
    read(
        "power-to-weight-m29c",
        0.003,
        &[(DRIVE_POWER.any(), 75.0 * HP), (MASS.any(), 6000.0 * 0.45359237)],
        &[
            Found(POWER_TO_MASS.any(), 20.55),
            Found(POWER_TO_MASS.any(), 25.0 * HP / (2000.0 * 0.45359237)),
        ],
        "Hunnicutt text read at russian-tanks.com; weight read at the US Army Transportation Museum",
        "Worked from read data, in kW/t and in hp per short ton; net power.",
    ),
    read(
        "rocket-sled-thrust",
        0.04,
        &[
            (MASS.any(), 2100.0),
            (WANTED_ACCELERATION.any(), 49.0),
            (DRIVING_RESISTANCE.any(), 650.0),
        ],
        &[Found(THRUST_NEEDED.any(), 1.0e5), Found(THRUST_NEEDED.any(), 4.0 * 2.6e4)],
        "OpenStax, College Physics 2e, section 4.3 (module m42073) and University Physics (module m58297)",
        "Printed, rounding differs; 103 550 N unrounded, four engines.",
    ),
    read(
        "motorcycle-tractive-force",
        0.003,
        &[
            (MASS.any(), 245.0),
            (WANTED_ACCELERATION.any(), 3.50),
            (DRIVING_RESISTANCE.any(), 400.0),
        ],
        &[Found(THRUST_NEEDED.any(), 1.26e3)],
        UP_5_3,
        "Printed.",
    ),
    read(
        "car-0-90-in-10s",
        0.001,
        &[
            (MASS.any(), 1000.0),
            (TARGET_SPEED.any(), 90.0 * KMH),
            (RUN_UP_TIME.any(), 10.0),
            (WANTED_ACCELERATION.any(), 2.50),
            (DRIVING_RESISTANCE.any(), 0.0),
        ],
        &[Found(MEAN_ACCELERATION.any(), 2.50), Found(THRUST_NEEDED.any(), 2500.0)],
        UP_5_3,
        "Worked from a published statement.",
    ),
    read(
        "sledge-dogs-start",
        0.003,
        &[
            (MASS.any(), 152.0 + 210.0),
            (TORQUE_FORCE.any(), 1480.0),
            (STEADY_RESISTANCE.any(), 0.14 * 210.0 * 9.80),
            (DRIVING_SPEED.any(), 0.0),
        ],
        &[Found(ACCELERATION.any(), 3.29)],
        CP_5_1,
        "Printed. Friction acts on the sled's weight alone; dogs and sled speed up together.",
    ),
];

/// A car with half its load on the driven wheels, on 4°.
const fn on_four_degrees(grip: f64, share: f64) -> [(AnyId, f64); 7] {
    [
        (MASS.any(), 1000.0),
        (GRAVITY.any(), 9.80),
        (GRIP_COEFFICIENT.any(), grip),
        (DRIVEN_SHARE.any(), share),
        (SLOPE.any(), 4.0 * std::f64::consts::PI / 180.0),
        (ROLLING_COEFFICIENT.any(), 0.0),
        (DRIVING_SPEED.any(), 0.0),
    ]
}

const DRY_HALF: [(AnyId, f64); 7] = on_four_degrees(1.0, 0.5);
const ICE_HALF: [(AnyId, f64); 7] = on_four_degrees(0.1, 0.5);
const ICE_ALL: [(AnyId, f64); 7] = on_four_degrees(0.1, 1.0);

pub(crate) const GRIP: &[Case] = &[
    read(
        "grip-uphill-dry-2wd",
        0.005,
        &DRY_HALF,
        &[Found(ACCELERATION.any(), 4.2)],
        CP_5_1,
        "Printed. Half the weight on the driven wheels.",
    ),
    read(
        "grip-uphill-ice-2wd",
        0.005,
        &ICE_HALF,
        &[Found(ACCELERATION.any(), -0.195)],
        CP_5_1,
        "Printed. Below zero it cannot climb from rest.",
    ),
    read(
        "grip-uphill-ice-4wd",
        0.003,
        &ICE_ALL,
        &[Found(ACCELERATION.any(), 0.294)],
        CP_5_1,
        "Worked from a published statement.",
    ),
];

#[test]
fn drag() {
    check(DRAG);
}

#[test]
fn force_and_power() {
    check(FORCE_AND_POWER);
}

#[test]
fn grip() {
    check(GRIP);
}
