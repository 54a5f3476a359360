//! Switches of a motor controller.

use heftwise::quantity::catalogue::{drive::*, electrics::*};

use super::unit::{CELSIUS, KILO, MICRO, MILLI, NANO};
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const SWITCHES: &[Case] = &[
    read(
        "switch-conduction-20a",
        0.001,
        &[
            (MOTOR_CURRENT.any(), 20.0),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.005),
            (ON_SHARE.any(), 0.6),
        ],
        &[Found(CONDUCTION_LOSS.any(), 1.2)],
        "ROHM, Efficiency of Buck Converter, application note (formulas for conduction and switching loss)",
        "Formula read; numbers chosen here. In a motor bridge two switches carry the current at any moment, so double it. Use the hot on-resistance.",
    ),
    read(
        "switch-conduction-35a",
        0.001,
        &[
            (MOTOR_CURRENT.any(), 35.0),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.0024),
            (ON_SHARE.any(), 1.0),
        ],
        &[Found(CONDUCTION_LOSS.any(), 2.94)],
        "ROHM, Efficiency of Buck Converter, application note (formulas for conduction and switching loss)",
        "Formula read; numbers chosen here. In a motor bridge two switches carry the current at any moment, so double it. Use the hot on-resistance.",
    ),
    recalled(
        "switch-hot-resistance",
        0.001,
        &[
            (CONTROLLER_RESISTANCE.any(), 5.0 * MILLI),
            (CHIP_TEMPERATURE.any(), CELSIUS + 100.0),
            (CHIP_COEFFICIENT.any(), 0.005),
        ],
        &[Found(CONTROLLER_HOT_RESISTANCE.any(), 6.875 * MILLI)],
        "Maxim Integrated, application note 1832, Guide to MOSFET Power Dissipation Calculation in High-Power Supply (from memory)",
        "About half a percent per kelvin, more than copper. Data sheets give a curve; 1.4 to 1.8 times at 100 to 150 degC is usual.",
    ),
    read(
        "switching-inductive-24v",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 24.0),
            (MOTOR_CURRENT.any(), 20.0),
            (SWITCHING_RISE_TIME.any(), 60.0 * NANO),
            (SWITCHING_FALL_TIME.any(), 40.0 * NANO),
            (SWITCHING_FREQUENCY.any(), 16000.0),
        ],
        &[Found(SWITCHING_LOSS.any(), 0.384)],
        "ROHM, Efficiency of Buck Converter, application note (formulas for conduction and switching loss); Calculation of Power Loss (Synchronous), eq. 3",
        "Half of V I (tr + tf) f: voltage stays full while current changes. Formula read; numbers chosen here.",
    ),
    read(
        "switching-resistive-fall",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 250.0),
            (CONTROLLER_DROP.any(), 0.0),
            (MOTOR_CURRENT.any(), 100.0),
            (SWITCHING_RISE_TIME.any(), 0.0),
            (SWITCHING_FALL_TIME.any(), 3.0 * MICRO),
            (SWITCHING_FREQUENCY.any(), 10.0 * KILO),
        ],
        &[Found(RESISTIVE_SWITCHING_LOSS.any(), 125.0)],
        "M. H. Rashid, Power Electronics, 4th ed., Example 4.2, as transcribed by volunteers",
        "One sixth of V I t f: a third of the inductive figure for the same times. Using 1/6 for a motor controller understates its heat threefold.",
    ),
    read(
        "switching-resistive-rise",
        0.001,
        &[
            (BATTERY_VOLTAGE.any(), 250.0),
            (CONTROLLER_DROP.any(), 2.0),
            (MOTOR_CURRENT.any(), 100.0),
            (SWITCHING_RISE_TIME.any(), 1.0 * MICRO),
            (SWITCHING_FALL_TIME.any(), 0.0),
            (SWITCHING_FREQUENCY.any(), 10.0 * KILO),
        ],
        &[Found(RESISTIVE_SWITCHING_LOSS.any(), 42.33)],
        "M. H. Rashid, Power Electronics, 4th ed., Example 4.2, as transcribed by volunteers",
        "f I tr (V/2 + (Vsat - V)/3); 41.67 W if the saturation voltage is ignored.",
    ),
    read(
        "switch-on-state",
        0.001,
        &[
            (CONTROLLER_DROP.any(), 2.0),
            (CONTROLLER_HOT_RESISTANCE.any(), 0.0),
            (MOTOR_CURRENT.any(), 100.0),
            (ON_SHARE.any(), 48.5 * MICRO * 10.0 * KILO),
        ],
        &[Found(CONDUCTION_LOSS.any(), 97.0)],
        "M. H. Rashid, Power Electronics, 4th ed., Example 4.2, as transcribed by volunteers",
        "Whole example: 42.33 on, 97 conducting, 10 storage, 125 off, 0.32 leakage = 274.65 W.",
    ),
];

#[test]
fn switches() {
    check(SWITCHES);
}
