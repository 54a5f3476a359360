//! Motors: the ends of their line, and at work.

use heftwise::quantity::catalogue::{drive::*, electrics::*, heat::*};

use super::unit::{MILLI, RPM};
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const LINE: &[Case] = &[
    read(
        "kt-from-kv-24v",
        0.005,
        &[(SPEED_CONSTANT.any(), 433.0 * RPM)],
        &[Found(TORQUE_CONSTANT.any(), 22.1 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "In SI units the two constants are each other's reciprocal; with rpm/V and mN*m/A the product is 30000/pi = 9549. Computed 22.05 mN*m/A, the catalogue rounds to three figures.",
    ),
    read(
        "kt-from-kv-12v",
        0.005,
        &[(SPEED_CONSTANT.any(), 865.0 * RPM)],
        &[Found(TORQUE_CONSTANT.any(), 11.0 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 12 V",
        "In SI units the two constants are each other's reciprocal; with rpm/V and mN*m/A the product is 30000/pi = 9549. Computed 11.04 mN*m/A, the catalogue rounds to three figures.",
    ),
    read(
        "kt-from-kv-48v-slow",
        0.005,
        &[(SPEED_CONSTANT.any(), 159.0 * RPM)],
        &[Found(TORQUE_CONSTANT.any(), 60.1 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 48 V (3.07 ohm)",
        "In SI units the two constants are each other's reciprocal; with rpm/V and mN*m/A the product is 30000/pi = 9549. Computed 60.06 mN*m/A, the catalogue rounds to three figures.",
    ),
    read(
        "stall-current-24v",
        0.003,
        &[(MOTOR_SUPPLY_VOLTAGE.any(), 24.0), (MOTOR_RESISTANCE.any(), 0.436)],
        &[Found(STALL_CURRENT.any(), 55.0)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "Computed 55.05 A. Real supplies and controllers limit far below this.",
    ),
    read(
        "stall-current-36v",
        0.003,
        &[(MOTOR_SUPPLY_VOLTAGE.any(), 36.0), (MOTOR_RESISTANCE.any(), 1.04)],
        &[Found(STALL_CURRENT.any(), 34.6)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 36 V",
        "Computed 34.62 A. Real supplies and controllers limit far below this.",
    ),
    read(
        "stall-torque-24v",
        0.006,
        &[(TORQUE_CONSTANT.any(), 22.1 * MILLI), (STALL_CURRENT.any(), 55.0)],
        &[Found(STALL_TORQUE.any(), 1210.0 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "Computed 1215.5 mN*m from the rounded constants; the catalogue prints 1210. No friction taken off.",
    ),
    read(
        "stall-torque-48v-slow",
        0.006,
        &[(TORQUE_CONSTANT.any(), 60.1 * MILLI), (STALL_CURRENT.any(), 15.7)],
        &[Found(STALL_TORQUE.any(), 940.0 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 48 V (3.07 ohm)",
        "Computed 943.6 mN*m from the rounded constants; the catalogue prints 940. No friction taken off.",
    ),
    read(
        "no-load-speed-24v",
        0.003,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 24.0),
            (SPEED_CONSTANT.any(), 433.0 * RPM),
            (MOTOR_RESISTANCE.any(), 0.436),
            (NO_LOAD_CURRENT.any(), 0.443),
        ],
        &[Found(NO_LOAD_SPEED.any(), 10300.0 * RPM)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "Speed constant times (voltage minus no-load current times resistance); computed 10308 rpm.",
    ),
    read(
        "speed-torque-gradient-24v",
        0.005,
        &[
            (MOTOR_TORQUE.any(), MILLI),
            (MOTOR_RESISTANCE.any(), 0.436),
            (TORQUE_CONSTANT.any(), 22.1 * MILLI),
        ],
        &[Found(SPEED_LOST.any(), 8.55 * RPM)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "Resistance over torque constant squared; computed 8.525 rpm/(mN*m).",
    ),
    read(
        "speed-torque-gradient-42v",
        0.005,
        &[
            (MOTOR_TORQUE.any(), MILLI),
            (MOTOR_RESISTANCE.any(), 1.25),
            (TORQUE_CONSTANT.any(), 38.2 * MILLI),
        ],
        &[Found(SPEED_LOST.any(), 8.2 * RPM)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 42 V",
        "Resistance over torque constant squared; computed 8.180 rpm/(mN*m).",
    ),
    read(
        "best-efficiency-24v",
        0.006,
        &[(NO_LOAD_CURRENT.any(), 0.443), (STALL_CURRENT.any(), 55.0)],
        &[Found(BEST_EFFICIENCY.any(), 0.83)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "(1 - sqrt(I0/Istall)) squared; computed 0.8286, catalogue gives whole percent.",
    ),
    read(
        "best-efficiency-30v",
        0.006,
        &[(NO_LOAD_CURRENT.any(), 0.426), (STALL_CURRENT.any(), 57.9)],
        &[Found(BEST_EFFICIENCY.any(), 0.84)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 30 V",
        "(1 - sqrt(I0/Istall)) squared; computed 0.8358, catalogue gives whole percent.",
    ),
    read(
        "best-efficiency-current-fixed-losses",
        0.002,
        &[
            (STEADY_MOTOR_LOSS.any(), 719.2),
            (MOTOR_RESISTANCE.any(), 0.2),
            (RATED_MOTOR_CURRENT.any(), 44.5),
            (RATED_MOTOR_POWER.any(), 10e3),
            (MOTOR_LOAD.any(), 1.348),
        ],
        &[
            Found(EQUAL_LOSS_CURRENT.any(), 60.0),
            Found(EQUAL_LOSS_LOAD.any(), 1.348),
            Found(PART_LOAD_EFFICIENCY.any(), 0.9036),
        ],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 12-5, as transcribed by volunteers",
        "Best where I^2 R equals the fixed losses (489.2 W rotation + 230 W field). A general rule, not only for motors. Computed 59.97 A, 1.3476, 0.90357. The book lets the output grow in step with current.",
    ),
    read(
        "best-efficiency-current-24v",
        0.002,
        &[(NO_LOAD_CURRENT.any(), 0.443), (STALL_CURRENT.any(), 55.0)],
        &[Found(BEST_EFFICIENCY_CURRENT.any(), 4.936)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "Geometric mean of no-load and stall current. Inputs are the catalogue's, the answer is computed for this check (not printed there).",
    ),
    read(
        "best-efficiency-current-48v-slow",
        0.002,
        &[(NO_LOAD_CURRENT.any(), 0.139), (STALL_CURRENT.any(), 15.7)],
        &[Found(BEST_EFFICIENCY_CURRENT.any(), 1.477)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 48 V (3.07 ohm)",
        "Geometric mean of no-load and stall current. Inputs are the catalogue's, the answer is computed for this check (not printed there).",
    ),
    read(
        "mechanical-time-constant-24v",
        0.005,
        &[
            (MOTOR_INERTIA.any(), 85.0 * 1e-7),
            (MOTOR_RESISTANCE.any(), 0.436),
            (TORQUE_CONSTANT.any(), 22.1 * MILLI),
        ],
        &[Found(MECHANICAL_TIME_CONSTANT.any(), 7.61 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "J R / Kt^2, bare rotor; computed 7.588 ms. Do not mix with the thermal time constants (tens of seconds and many minutes).",
    ),
    read(
        "mechanical-time-constant-48v-slow",
        0.005,
        &[
            (MOTOR_INERTIA.any(), 85.0 * 1e-7),
            (MOTOR_RESISTANCE.any(), 3.07),
            (TORQUE_CONSTANT.any(), 60.1 * MILLI),
        ],
        &[Found(MECHANICAL_TIME_CONSTANT.any(), 7.22 * MILLI)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 48 V (3.07 ohm)",
        "J R / Kt^2, bare rotor; computed 7.225 ms. Do not mix with the thermal time constants (tens of seconds and many minutes).",
    ),
];

pub(crate) const WORK: &[Case] = &[
    read(
        "lasting-power-24v",
        0.006,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 24.0),
            (MOTOR_LOOP_RESISTANCE.any(), 0.436),
            (NO_LOAD_CURRENT.any(), 0.443),
            (PEAK_MOTOR_CURRENT.any(), 55.0),
            (CONTINUOUS_CURRENT.any(), 5.78),
            (MOTOR_COUNT.any(), 1.0),
            (GEAR_EFFICIENCY.any(), 1.0),
        ],
        &[Found(LASTING_POWER.any(), 115.11)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "The maker's continuous rating: 120 mN*m at 9160 rpm; the first-order model gives 114.7 W.",
    ),
    read(
        "motor-loss-24v",
        0.002,
        &[
            (MOTOR_VOLTAGE.any(), 24.0),
            (MOTOR_CURRENT.any(), 5.78),
            (MOTOR_TORQUE.any(), 120.0 * MILLI),
            (MOTOR_SPEED.any(), 9160.0 * RPM),
        ],
        &[
            Found(MOTOR_INPUT_POWER.any(), 138.72),
            Found(MOTOR_OUTPUT_POWER.any(), 115.11),
            Found(MOTOR_LOSS.any(), 23.61),
            Found(MOTOR_EFFICIENCY.any(), 0.8298),
        ],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V; power balance: maxon motor, catalogue chapter Key information (power balance and motor constants)",
        "Working point is the maker's continuous rating; powers computed for this check. Loss is a small difference of large numbers: carry the digits.",
    ),
    read(
        "winding-heat-24v",
        0.002,
        &[(MOTOR_CURRENT.any(), 5.78), (MOTOR_RESISTANCE.any(), 0.436)],
        &[Found(WINDING_LOSS.any(), 14.57)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V; formula: maxon motor, catalogue chapter Key information (power balance and motor constants)",
        "Resistance as catalogued at 25 degC; hot copper gives more. The rest of the loss at this point is friction and iron.",
    ),
    read(
        "winding-heat-12v",
        0.002,
        &[(MOTOR_CURRENT.any(), 10.4), (MOTOR_RESISTANCE.any(), 0.134)],
        &[Found(WINDING_LOSS.any(), 14.49)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 12 V; formula: maxon motor, catalogue chapter Key information (power balance and motor constants)",
        "Resistance as catalogued at 25 degC; hot copper gives more. The rest of the loss at this point is friction and iron.",
    ),
    read(
        "first-order-working-point-24v",
        0.02,
        &[
            (MOTOR_VOLTAGE.any(), 24.0),
            (SPEED_CONSTANT.any(), 433.0 * RPM),
            (TORQUE_CONSTANT.any(), 22.1 * MILLI),
            (MOTOR_RESISTANCE.any(), 0.436),
            (NO_LOAD_CURRENT.any(), 0.443),
            (MOTOR_TORQUE.any(), 120.0 * MILLI),
        ],
        &[Found(MOTOR_CURRENT.any(), 5.78), Found(MOTOR_SPEED.any(), 9160.0 * RPM)],
        "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V",
        "Expected figures are the maker's rating; the first-order model gives 5.873 A and 9283 rpm, so it stays within 2 %. For a tight test use the model's figures.",
    ),
    read(
        "half-speed-power-green-gearmotor",
        0.003,
        &[
            (NO_LOAD_SPEED.any(), 600.0 * RPM),
            (STALL_TORQUE.any(), 0.325),
            (MOTOR_TORQUE.any(), 0.1625),
            (MOTOR_SPEED.any(), 300.0 * RPM),
        ],
        &[Found(GREATEST_MOTOR_POWER.any(), 5.105), Found(MOTOR_OUTPUT_POWER.any(), 5.105)],
        "MIT, Understanding D.C. Motor Characteristics, page on the motors of course 2.007",
        "Published: geared motor, half values 300 rpm and 0.163 N*m. Power computed for this check. Thermally not a place to stay: at least half the input is heat there.",
    ),
    read(
        "half-speed-power-worm-gearmotor",
        0.003,
        &[
            (NO_LOAD_SPEED.any(), 92.0 * RPM),
            (STALL_TORQUE.any(), 1.6),
            (MOTOR_TORQUE.any(), 0.8),
            (MOTOR_SPEED.any(), 46.0 * RPM),
        ],
        &[Found(GREATEST_MOTOR_POWER.any(), 3.854), Found(MOTOR_OUTPUT_POWER.any(), 3.854)],
        "MIT, Understanding D.C. Motor Characteristics, page on the motors of course 2.007",
        "Published: worm-gear motor, half values 46 rpm and 0.80 N*m. Power computed for this check. Thermally not a place to stay: at least half the input is heat there.",
    ),
    read(
        "back-emf-small-motor",
        0.001,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 12.0),
            (MOTOR_VOLTAGE.any(), 12.0),
            (MOTOR_CURRENT.any(), 0.5),
            (MOTOR_RESISTANCE.any(), 6.0),
        ],
        &[Found(BACK_EMF.any(), 9.0), Found(STALL_CURRENT.any(), 2.0)],
        "D. Davis, Eastern Illinois University, Physics 1160 notes, ch. 21, back EMF",
        "Exact. Printed running current in, given back EMF out.",
    ),
    recalled(
        "back-emf-series-motor",
        0.002,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 120.0),
            (MOTOR_VOLTAGE.any(), 120.0),
            (MOTOR_RESISTANCE.any(), 2.00),
            (MOTOR_CURRENT.any(), 4.00),
            (MOTOR_OUTPUT_POWER.any(), 448.0),
            (PEAK_MOTOR_CURRENT.any(), 60.0),
        ],
        &[
            Found(BACK_EMF.any(), 112.0),
            Found(MOTOR_INPUT_POWER.any(), 480.0),
            Found(WINDING_LOSS.any(), 32.0),
            Found(MOTOR_LOSS.any(), 32.0),
            Found(MOTOR_EFFICIENCY.any(), 0.933),
            Found(STALL_CURRENT.any(), 60.0),
            Found(STALL_LOSS.any(), 7200.0),
        ],
        "Young & Freedman, University Physics, ch. 27, worked example on a series DC motor (from memory)",
        "Stalled, the same winding makes 225 times the heat. Friction ignored.",
    ),
    read(
        "brushless-start-with-switch-drop",
        0.002,
        &[
            (BATTERY_VOLTAGE.any(), 48.0),
            (CONTROLLER_DROP.any(), 2.0),
            (TORQUE_CONSTANT.any(), 0.12),
            (MOTOR_RESISTANCE.any(), 2.0 * 0.15),
        ],
        &[
            Found(PAPER_MOTOR_SPEED.any(), 3820.0 * RPM),
            Found(STALL_CURRENT.any(), 153.3),
            Found(STALL_TORQUE.any(), 18.4),
        ],
        "Textbook on special electrical machines, Example 4.4 (the book's title is not in the text read), as transcribed by volunteers",
        "Two phases in series carry the current. The transcriber notes that the answer printed in the book is wrong; figures here are recomputed.",
    ),
    recalled(
        "permanent-magnet-motor-shaft-power",
        0.001,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 50.0),
            (NO_LOAD_CURRENT.any(), 1.25),
            (MOTOR_RESISTANCE.any(), 1.03),
            (TORQUE_CONSTANT.any(), 0.2215),
            (MOTOR_VOLTAGE.any(), 48.0),
            (MOTOR_CURRENT.any(), 8.317),
            (MOTOR_OUTPUT_POWER.any(), 267.1),
        ],
        &[
            Found(NO_LOAD_SPEED.any(), 2100.0 * RPM),
            Found(STEADY_MOTOR_LOSS.any(), 60.89),
            Found(MOTOR_SPEED.any(), 1700.0 * RPM),
            Found(WINDING_LOSS.any(), 71.25), // Rotation and copper: what must be left of the input beside the shaft power.
            Found(MOTOR_LOSS.any(), 60.89 + 71.25),
        ],
        "Fitzgerald, Kingsley, Umans, Electric Machinery, 6th ed., worked example on a permanent-magnet DC motor (ch. 7) (from memory)",
        "Computed without rounding on the way: 0.2215 V*s, 60.9 W, current 8.317 A, shaft 267.1 W. Constant, current and shaft power in, both speeds and all losses out. The book rounds the constant to 0.22 first and prints 61 W and 274 W, 2.6 % higher.",
    ),
];

#[test]
fn the_line_of_a_motor() {
    check(LINE);
}

#[test]
fn motors_at_work() {
    check(WORK);
}
