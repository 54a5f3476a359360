//! A motor of the makers' catalogue on its supply and through gears.

use heftwise::quantity::catalogue::{drive::*, electrics::*, motion::*};

use super::unit::{MILLI, RPM};
use super::{Case, Expect::Found, check, read};

const EC_40: &str = "maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V";

pub(crate) const THROUGH_GEARS: &[Case] = &[
    read(
        "nominal-current-as-limit-24v",
        0.005,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 24.0),
            (MOTOR_RESISTANCE.any(), 0.436),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.0),
            (SUPPLY_RESISTANCE.any(), 0.0),
            (NO_LOAD_CURRENT.any(), 0.443),
            (CONTROLLER_CURRENT_LIMIT.any(), 5.78),
            (FIRST_STAGE_EFFICIENCY.any(), 1.0),
        ],
        // 120 mN m at 9160 rpm.
        &[Found(SUPPLIED_MOTOR_POWER.any(), 115.11), Found(DRIVE_POWER.any(), 115.11)],
        EC_40,
        "The controller's limit at the maker's continuous current gives the maker's continuous power.",
    ),
    read(
        "no-load-speed-on-wheels-24v",
        0.003,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 24.0),
            (SPEED_CONSTANT.any(), 433.0 * RPM),
            (MOTOR_LOOP_RESISTANCE.any(), 0.436),
            (NO_LOAD_CURRENT.any(), 0.443),
            (DISTANCE_PER_TURN.any(), 1.0),
        ],
        &[Found(UNLOADED_SPEED.any(), 10300.0 / 60.0)],
        EC_40,
        "One metre for each turn; no gears.",
    ),
    read(
        "speed-under-load-on-wheels-24v",
        0.003,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 24.0),
            (SPEED_CONSTANT.any(), 433.0 * RPM),
            (MOTOR_LOOP_RESISTANCE.any(), 0.436),
            (NO_LOAD_CURRENT.any(), 0.443),
            (DISTANCE_PER_TURN.any(), 1.0),
            (FIRST_STAGE_EFFICIENCY.any(), 1.0),
            // 120 mN m at a radius of 1 m / 2 pi.
            (STEADY_RESISTANCE.any(), 0.120 * std::f64::consts::TAU),
        ],
        &[Found(GEARED_TOP_SPEED.any(), (10300.0 - 120.0 * 8.55) / 60.0)],
        EC_40,
        "No-load speed less 120 mN m of the printed gradient of 8.55 rpm/(mN m), as one metre for each turn.",
    ),
    read(
        "stall-torque-on-wheels-24v",
        0.006,
        &[
            (MOTOR_SUPPLY_VOLTAGE.any(), 24.0),
            (TORQUE_CONSTANT.any(), 22.1 * MILLI),
            (MOTOR_RESISTANCE.any(), 0.436),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.0),
            (SUPPLY_RESISTANCE.any(), 0.0),
            // Catalogues leave friction in the stall torque.
            (NO_LOAD_CURRENT.any(), 0.0),
            (DISTANCE_PER_TURN.any(), std::f64::consts::TAU),
            (FIRST_STAGE_RATIO.any(), 10.0),
            (FIRST_STAGE_EFFICIENCY.any(), 1.0),
        ],
        &[
            Found(DRIVE_TORQUE.any(), 12.10),
            Found(DRIVE_RADIUS.any(), 1.0),
            Found(TORQUE_FORCE.any(), 12.10),
            Found(LINE_PUSH.any(), 12.10),
        ],
        EC_40,
        "1210 mN m through ten to one, on a radius of one metre.",
    ),
];

#[test]
fn motors_through_gears() {
    check(THROUGH_GEARS);
}
