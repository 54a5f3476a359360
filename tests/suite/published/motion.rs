//! Air, resistance, power, running up and stopping.

use heftwise::physics::motion;
use heftwise::quantity::catalogue::{
    drive::GEAR_RATIO, ground::*, machine::*, motion::*, traction::*,
};
use heftwise::quantity::{AnyId, Measure};

use super::unit::*;
use super::{
    Case,
    Expect::{By, Found},
    check, of, read, recalled,
};

const UP_6_4: &str = "OpenStax, University Physics Volume 1, section 6.4 Drag Force and Terminal Speed (module m58306)";
const UP_7_4: &str = "OpenStax, University Physics Volume 1, section 7.4 Power (module m58310)";
const UP_5_3: &str = "OpenStax, University Physics Volume 1, section 5.3 (module m58297)";
const UP_3_4: &str =
    "OpenStax, University Physics Volume 1, section 3.4, worked example (module m58285)";
const CP_5_1: &str = "OpenStax, College Physics 2e, section 5.1 Friction, problems (module m42139)";
const MANNERING: &str = "F. L. Mannering and S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2, as quoted at essaywritingpros.com and partnerperformance.uonbi.ac.ke";
const US_1976: &str = "U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF)";
const HP: f64 = 745.699_871_582;
/// A slug per cubic foot, by definition of the slug.
const SLUG_PER_CUBIC_FOOT: f64 = LBF / (FOOT * FOOT * FOOT * FOOT);
const FOOT2: f64 = FOOT * FOOT;

const DRAG: &[Case] = &[
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
        &[],
        &[By("drag rise", || motion::drag_rise(of(65.0 * KMH), of(110.0 * KMH)).si(), 2.86)],
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

const FORCE_AND_POWER: &[Case] = &[
    read(
        "max-grade-2000lb-car",
        0.003,
        &[
            (WEIGHT.any(), 2000.0 * LBF),
            (DRIVE_THRUST.any(), 255.0 * LBF),
            (AIR_DENSITY.any(), 0.002045 * SLUG_PER_CUBIC_FOOT),
            (DRAG_COEFFICIENT.any(), 0.40),
            (FRONTAL_AREA.any(), 20.0 * FOOT2),
            (DRIVING_SPEED.any(), 70.0 * MPH),
            (ROLLING_RESISTANCE.any(), 33.97 * LBF),
        ],
        &[Found(CLIMB_AT_SPEED.any(), 0.0674)],
        MANNERING,
        "Printed terms; the grade is their balance by the small-angle rule, within 0.1 % of the angle.",
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
        ],
        &[Found(DRIVING_POWER.any(), 10.77 * HP)],
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

const GRIP: &[Case] = &[
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

const RUNS: &[Case] = &[
    read(
        "constant-power-850kg-15ms",
        0.003,
        &[(MASS.any(), 850.0), (DRIVE_POWER.any(), 40.0 * 746.0), (TARGET_SPEED.any(), 15.0)],
        &[Found(POWER_TIME.any(), 3.20)],
        UP_7_4,
        "Printed; a horsepower of 746 W, as the book says.",
    ),
    read(
        "power-car-40hp-level",
        0.002,
        &[
            (MASS.any(), 850.0),
            (GRAVITY.any(), 9.80),
            (DRIVE_POWER.any(), 29840.0),
            (TARGET_SPEED.any(), 15.0),
            (STEADY_RESISTANCE.any(), 0.0),
        ],
        &[Found(POWER_TIME.any(), 3.20), Found(RUN_UP_TIME.any(), 3.20)],
        "OpenStax, College Physics 2e, section 7.7 Power, problem (module m42152)",
        "Printed. The integration without losses must give the same.",
    ),
    read(
        "power-car-40hp",
        0.002,
        &[
            (MASS.any(), 850.0),
            (GRAVITY.any(), 9.80),
            (DRIVE_POWER.any(), 29840.0),
            (TARGET_SPEED.any(), 15.0),
            (RISE.any(), 3.00),
        ],
        &[Found(POWER_TIME.any(), 4.04)],
        "OpenStax, College Physics 2e, section 7.7 Power, problem (module m42152)",
        "Printed. With a rise of 3 m.",
    ),
    read(
        "average-power-dragster",
        0.003,
        &[
            (MASS.any(), 500.0),
            (TARGET_SPEED.any(), 110.0),
            (STEADY_RESISTANCE.any(), 1200.0),
            (RUN_UP_DISTANCE.any(), 400.0),
            (RUN_UP_TIME.any(), 7.30),
        ],
        &[Found(RUN_UP_POWER.any(), 4.801e5)],
        UP_7_4,
        "Worked from a published statement.",
    ),
    read(
        "constant-power-distance-850kg",
        0.002,
        &[
            (MASS.any(), 850.0),
            (DRIVE_POWER.any(), 29840.0),
            (POWER_TIME.any(), 3.2046),
            (TARGET_SPEED.any(), 15.0),
            (STEADY_RESISTANCE.any(), 0.0),
        ],
        &[
            Found(POWER_DISTANCE.any(), 32.046),
            Found(RUN_UP_DISTANCE.any(), 32.046),
            By(
                "speed",
                || motion::constant_power_speed(of(29840.0), of(850.0), of(3.2046)).si(),
                15.0,
            ),
        ],
        UP_7_4,
        "Worked from the printed formula; the integration must give the same.",
    ),
    read(
        "constant-power-distance-6kg",
        0.002,
        &[(MASS.any(), 6.4), (DRIVE_POWER.any(), 250.0), (POWER_TIME.any(), 2.0)],
        &[
            Found(POWER_DISTANCE.any(), 16.667),
            By("speed", || motion::constant_power_speed(of(250.0), of(6.4), of(2.0)).si(), 12.5),
        ],
        UP_7_4,
        "Worked from the printed formula.",
    ),
];

const STOPS: &[Case] = &[
    read(
        "braking-force-1000kg",
        0.003,
        &[
            (MASS.any(), 1000.0),
            (DRIVING_SPEED.any(), 90.0 * KMH),
            (BRAKING_DECELERATION.any(), 7.80),
        ],
        &[Found(BRAKING_FORCE.any(), 7.80e3), Found(BRAKING_DISTANCE.any(), 40.0)],
        UP_5_3,
        "Printed deceleration in, given distance out.",
    ),
    read(
        "stopping-dry-no-reaction",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.00),
            (REACTION_TIME.any(), 0.0),
        ],
        &[Found(STOPPING_DISTANCE.any(), 64.3)],
        UP_3_4,
        "Printed, dry concrete.",
    ),
    read(
        "stopping-dry-reaction",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.00),
            (REACTION_TIME.any(), 0.500),
        ],
        &[Found(STOPPING_DISTANCE.any(), 79.3)],
        UP_3_4,
        "Printed.",
    ),
    read(
        "stop-dry-and-wet-concrete",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 7.00),
            (REACTION_TIME.any(), 0.500),
        ],
        &[
            Found(BRAKING_DISTANCE.any(), 64.3),
            Found(REACTION_DISTANCE.any(), 15.0),
            Found(STOPPING_DISTANCE.any(), 79.3),
        ],
        "OpenStax, College Physics 2e, section 2.5, Example 2.12 (module m42099)",
        "Printed, dry.",
    ),
    read(
        "stop-wet-concrete",
        0.002,
        &[
            (DRIVING_SPEED.any(), 30.0),
            (BRAKING_DECELERATION.any(), 5.00),
            (REACTION_TIME.any(), 0.500),
        ],
        &[
            Found(BRAKING_DISTANCE.any(), 90.0),
            Found(REACTION_DISTANCE.any(), 15.0),
            Found(STOPPING_DISTANCE.any(), 105.0),
        ],
        "OpenStax, College Physics 2e, section 2.5, Example 2.12 (module m42099)",
        "Printed, wet.",
    ),
    read(
        "stop-highway-code-70mph",
        0.008,
        &[
            (DRIVING_SPEED.any(), 70.0 * MPH),
            (BRAKING_DECELERATION.any(), 6.57),
            (REACTION_TIME.any(), 0.67),
        ],
        &[
            Found(REACTION_DISTANCE.any(), 21.0),
            Found(BRAKING_DISTANCE.any(), 75.0),
            Found(STOPPING_DISTANCE.any(), 96.0),
        ],
        "UK Highway Code, typical stopping distances; read at ptagarages.co.uk and howardsgroup.co.uk",
        "Distances printed; the one deceleration that fits the whole table is worked out.",
    ),
    read(
        "stop-highway-code-30mph",
        0.025,
        &[
            (DRIVING_SPEED.any(), 30.0 * MPH),
            (BRAKING_DECELERATION.any(), 6.57),
            (REACTION_TIME.any(), 0.67),
        ],
        &[
            Found(REACTION_DISTANCE.any(), 9.0),
            Found(BRAKING_DISTANCE.any(), 14.0),
            Found(STOPPING_DISTANCE.any(), 23.0),
        ],
        "UK Highway Code, typical stopping distances; read at ptagarages.co.uk",
        "Distances printed; the one deceleration that fits the whole table is worked out.",
    ),
    recalled(
        "stop-aashto-60mph",
        0.005,
        &[
            (DRIVING_SPEED.any(), 60.0 * MPH),
            (BRAKING_DECELERATION.any(), 11.2 * FOOT),
            (REACTION_TIME.any(), 2.5),
        ],
        &[
            Found(REACTION_DISTANCE.any(), 220.5 * FOOT),
            Found(BRAKING_DISTANCE.any(), 345.5 * FOOT),
            Found(STOPPING_DISTANCE.any(), 566.0 * FOOT),
        ],
        "AASHTO Green Book, stopping sight distance table (from memory)",
        "Printed with rounded constants; exact kinematics gives 565.7 ft.",
    ),
    read(
        "stop-baseball-slide",
        0.002,
        &[(DRIVING_SPEED.any(), 6.00), (BRAKING_DECELERATION.any(), 450.0 / 65.0)],
        &[Found(BRAKING_DISTANCE.any(), 2.60)],
        "OpenStax, College Physics 2e, section 7.5, Example 7.9 (module m42150)",
        "Printed; 450 N of friction on 65.0 kg.",
    ),
    read(
        "skid-stop-mu05",
        0.002,
        &[
            (DRIVING_SPEED.any(), 100.0 * KMH),
            (GRIP_COEFFICIENT.any(), 0.500),
            (GRAVITY.any(), 9.80),
        ],
        &[Found(BRAKING_DISTANCE.any(), 78.7)],
        "OpenStax, University Physics Volume 1, chapter 6, challenge problem (module m58306)",
        "Printed. Mass cancels.",
    ),
];

const AIR: &[Case] = &[
    read(
        "standard-air-0m",
        0.0005,
        &[(ALTITUDE.any(), 0.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 288.15),
            Found(STANDARD_PRESSURE.any(), 101_325.0),
            Found(AIR_DENSITY.any(), 1.225),
        ],
        US_1976,
        "Sea-level constants, read at scipp.ucsc.edu.",
    ),
    recalled(
        "standard-air-1000m",
        0.0005,
        &[(ALTITUDE.any(), 1000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 281.651),
            Found(STANDARD_PRESSURE.any(), 89_876.0),
            Found(AIR_DENSITY.any(), 1.1117),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    recalled(
        "standard-air-3000m",
        0.0005,
        &[(ALTITUDE.any(), 3000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 268.659),
            Found(STANDARD_PRESSURE.any(), 70_121.0),
            Found(AIR_DENSITY.any(), 0.90925),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    recalled(
        "standard-air-4000m",
        0.0005,
        &[(ALTITUDE.any(), 4000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 262.166),
            Found(STANDARD_PRESSURE.any(), 61_660.0),
            Found(AIR_DENSITY.any(), 0.81935),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    recalled(
        "standard-air-5000m",
        0.0005,
        &[(ALTITUDE.any(), 5000.0)],
        &[
            Found(STANDARD_TEMPERATURE.any(), 255.676),
            Found(STANDARD_PRESSURE.any(), 54_048.0),
            Found(AIR_DENSITY.any(), 0.73643),
        ],
        US_1976,
        "Table value for geometric altitude, from memory.",
    ),
    read(
        "air-0c",
        0.003,
        &[(AIR_TEMPERATURE.any(), 273.15), (AIR_PRESSURE.any(), 101_325.0)],
        &[Found(AIR_DENSITY.any(), 1.29)],
        "OpenStax, University Physics Volume 1, section 14.1, table of densities (module m58353)",
        "Printed.",
    ),
    recalled(
        "air-minus20c",
        0.002,
        &[(AIR_TEMPERATURE.any(), 253.15), (AIR_PRESSURE.any(), 101_325.0)],
        &[Found(AIR_DENSITY.any(), 1.394)],
        "Y. A. Cengel, Heat and Mass Transfer, Table A-15 (from memory)",
        "",
    ),
    recalled(
        "air-20c",
        0.002,
        &[(AIR_TEMPERATURE.any(), 293.15), (AIR_PRESSURE.any(), 101_325.0)],
        &[Found(AIR_DENSITY.any(), 1.204)],
        "Y. A. Cengel, Heat and Mass Transfer, Table A-15 (from memory)",
        "",
    ),
    read(
        "altitude-derate-5000ft",
        0.001,
        &[(ALTITUDE.any(), 5000.0 * FOOT)],
        &[Found(ALTITUDE_POWER_LOSS.any(), 0.075)],
        "Civil-engineering handbook rule for haul units; read at civil4m.com",
        "Worked from the read rule of thumb.",
    ),
    read(
        "altitude-derate-8000ft",
        0.001,
        &[(ALTITUDE.any(), 8000.0 * FOOT)],
        &[Found(ALTITUDE_POWER_LOSS.any(), 0.165)],
        "Civil-engineering handbook rule for haul units; read at civil4m.com",
        "Worked from the read rule of thumb.",
    ),
];

const ROTATING: &[Case] = &[
    read(
        "rolling-solid-cylinder",
        0.002,
        &[(MASS.any(), 1.0), (DRIVE_RADIUS.any(), 1.0), (WHEEL_INERTIA.any(), 0.5)],
        &[
            By("speed at the foot", || (2.0 * 9.80 * 2.00 / factor_of_body(0.5)).sqrt(), 5.11),
            Found(MASS_FACTOR.any(), 2.0 * 9.80 * 2.00 / (5.11 * 5.11)),
        ],
        "OpenStax, College Physics 2e, section 10.4, Example 10.10 (module m42180)",
        "Printed speed; the mass factor it takes is found by the rules.",
    ),
    read(
        "rolling-rover-wheel-mars",
        0.002,
        &[(MASS.any(), 1.0), (DRIVE_RADIUS.any(), 1.0), (WHEEL_INERTIA.any(), 1.0)],
        &[
            By("speed at the foot", || (2.0 * 3.71 * 25.0 / factor_of_body(1.0)).sqrt(), 9.63),
            Found(MASS_FACTOR.any(), 2.0),
        ],
        "OpenStax, University Physics Volume 1, section 11.1, Example 11.3 (module m58335)",
        "Printed. A thin rim doubles the mass.",
    ),
    read(
        "rolling-stop-a-roller",
        0.002,
        &[
            (MASS.any(), 40.0),
            (DRIVE_RADIUS.any(), 1.0),
            (WHEEL_INERTIA.any(), 20.0),
            (TARGET_SPEED.any(), 6.0),
            (DRIVE_POWER.any(), 1080.0),
        ],
        &[Found(EQUIVALENT_MASS.any(), 60.0), Found(POWER_TIME.any(), 1.0)],
        "OpenStax, University Physics Volume 1, section 11.1, problem (module m58335)",
        "Printed 1080 J: as a power it takes one second.",
    ),
    recalled(
        "rolling-mass-factor-wong",
        0.001,
        &[(GEAR_RATIO.any(), 10.0)],
        &[Found(CAR_MASS_FACTOR.any(), 1.29)],
        "J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory)",
        "Empirical, for cars.",
    ),
];

/// The mass factor of one rolling body whose inertia is so much of `m r²`.
fn factor_of_body(share: f64) -> f64 {
    let rotating = motion::rotating_mass(of(0.0), of(1.0), of(share), of(1.0));
    motion::mass_factor(motion::equivalent_mass(of(1.0), rotating), of(1.0)).si()
}

const LOAD_SHIFT_DRIVE: &[Case] = &[recalled(
    "load-shift-pickup-uphill-force",
    0.001,
    &[
        (MASS.any(), 3220.0 * LBF / (32.2 * FOOT)),
        (GRAVITY.any(), 32.2 * FOOT),
        (SLOPE.any(), 0.099_668_652_491_162_03),
        (ROLLING_COEFFICIENT.any(), 0.0),
        (WANTED_ACCELERATION.any(), 4.84 * FOOT),
        (DRIVING_SPEED.any(), 0.0),
    ],
    &[Found(THRUST_NEEDED.any(), 804.0 * LBF)],
    "J. L. Meriam and L. G. Kraige, Engineering Mechanics: Dynamics, Sample Problem 6/1 (from memory)",
    "Printed. 44 ft/s in 200 ft from rest on a grade of 1 in 10.",
)];

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

#[test]
fn runs() {
    check(RUNS);
}

#[test]
fn stops() {
    check(STOPS);
}

#[test]
fn air() {
    check(AIR);
}

#[test]
fn rotating() {
    check(ROTATING);
    check(LOAD_SHIFT_DRIVE);
}
