//! Windings over time, brakes and clutches.

use heftwise::quantity::catalogue::{drive::*, heat::*, machine::*, motion::*};

use super::unit::{CELSIUS, KILO, KMH, RPM};
use super::{Case, Expect::Found, check, read, recalled};

pub(crate) const WINDINGS: &[Case] = &[
    read(
        "winding-rise-6a-cold-copper",
        0.001,
        &[
            (MOTOR_TO_AIR.any(), 5.0),
            (MOTOR_LOSS.any(), 6.0 * 6.0 * 0.3),
            (WINDING_LOSS.any(), 6.0 * 6.0 * 0.3),
            (COPPER_COEFFICIENT.any(), 0.0),
        ],
        &[Found(WINDING_RISE.any(), 54.00)],
        "Derived: steady heat balance with a resistance that stays cold",
        "Numbers chosen for this check: what the next row would be if copper did not resist more as it warms.",
    ),
    read(
        "winding-rise-6a",
        0.001,
        &[
            (MOTOR_TO_AIR.any(), 5.0),
            (MOTOR_RESISTANCE.any(), 0.3),
            (MOTOR_CURRENT.any(), 6.0),
            (MOTOR_LOSS.any(), 6.0 * 6.0 * 0.3),
            (COPPER_COEFFICIENT.any(), 0.00393),
        ],
        &[Found(WINDING_RISE.any(), 68.55), Found(RUNAWAY_CURRENT.any(), 13.024)],
        "Derived: steady heat balance with the linear resistance law",
        "Numbers chosen for this check; coefficient taken at an ambient of 20 degC. At and above the runaway current there is no steady state at all.",
    ),
    recalled(
        "continuous-current-from-heat",
        0.002,
        &[
            (WINDING_TO_HOUSING.any(), 1.9),
            (HOUSING_TO_AIR.any(), 4.7),
            (MOTOR_RESISTANCE.any(), 0.299),
            (WINDING_LIMIT.any(), CELSIUS + 155.0),
            (COOLING_AIR.any(), CELSIUS + 25.0),
            (COPPER_COEFFICIENT.any(), 0.00393),
        ],
        &[Found(CONTINUOUS_CURRENT.any(), 6.603)],
        "maxon motor, catalogue data of the brushed motor RE 40 (150 W, 24 V winding) (from memory)",
        "The maker prints 6.0 A continuous; copper heat alone allows 6.60 A. Friction heat, warm magnets and the maker's own margins make the difference. Same data sheet: thermal time constants 41.6 s (winding) and 1120 s (motor).",
    ),
    read(
        "stall-heating-24v",
        0.001,
        &[
            (PEAK_MOTOR_CURRENT.any(), 55.0),
            (MOTOR_RESISTANCE.any(), 0.436),
            (COPPER_MASS.any(), 0.06),
            (ALLOWED_RISE.any(), 56.800),
            // The rate of the first moment: the copper still cold.
            (COPPER_COEFFICIENT.any(), 0.0),
        ],
        &[Found(STALL_LOSS.any(), 1318.9), Found(STALL_TIME.any(), 1.0)],
        "Energy balance; winding data maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V; specific heat OpenStax College Physics Table 14.1",
        "Copper mass is assumed. From 25 degC a class F winding at the full stall rate is past 155 degC in about two seconds: stall protection must act within a second.",
    ),
    read(
        "stall-heating-limited",
        0.001,
        &[
            (PEAK_MOTOR_CURRENT.any(), 20.0),
            (MOTOR_RESISTANCE.any(), 0.436),
            (COPPER_MASS.any(), 0.06),
            (ALLOWED_RISE.any(), 7.511),
            // The rate of the first moment: the copper still cold.
            (COPPER_COEFFICIENT.any(), 0.0),
        ],
        &[Found(STALL_LOSS.any(), 174.4), Found(STALL_TIME.any(), 1.0)],
        "Energy balance; winding data maxon motor, catalogue page of the brushless motor EC 40 (40 mm, 120 W), May 2013, winding with nominal voltage 24 V; specific heat OpenStax College Physics Table 14.1",
        "Same motor with the controller limiting to 20 A: about 17 s to class F.",
    ),
    read(
        "stall-heating-24v-warming",
        0.0005,
        &[
            (STALL_LOSS.any(), 1318.9),
            (COPPER_MASS.any(), 0.06),
            (ALLOWED_RISE.any(), 130.0),
            (COPPER_COEFFICIENT.any(), 0.00393),
        ],
        &[Found(STALL_TIME.any(), 1.8488)],
        "Derived: C dT/dt = P (1 + a T) with a constant current, integrated from 0 to 130 K: C / (a P) ln(1 + a 130 K); the resistance law of copper of NBS Handbook 100",
        "Class F from 25 degC. Cold copper throughout would tell 2.289 s: 24 % too long.",
    ),
    recalled(
        "rms-current-climb-and-roll",
        0.001,
        &[
            (MOTOR_CURRENT.any(), 40.0),
            (WORK_TIME.any(), 20.0),
            (REST_CURRENT.any(), 8.0),
            (REST_TIME.any(), 40.0),
        ],
        &[Found(HEATING_CURRENT.any(), 24.000), Found(MEAN_DUTY_CURRENT.any(), 18.667)],
        "Root mean square over the cycle; duty types in IEC 60034-1 (from memory)",
        "Numbers chosen for this check. Heat follows the rms, runtime follows the mean: two different currents. Holds only if the cycle is short against the winding's thermal time constant.",
    ),
    read(
        "insulation-life-hotter",
        0.001,
        &[(WINDING_LIMIT.any(), CELSIUS + 105.0), (WINDING_TEMPERATURE.any(), CELSIUS + 125.0)],
        &[Found(INSULATION_LIFE.any(), 2.5 / 10.0)],
        "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., Example 13-1, as transcribed by volunteers",
        "Factor 2^(20/10) = 4.",
    ),
];

pub(crate) const BRAKES: &[Case] = &[
    read(
        "brake-truck-hill",
        0.003,
        &[
            (MASS.any(), 10000.0),
            (BRAKING_DESCENT.any(), 75.0),
            (GRAVITY.any(), 9.80),
            (BRAKE_MASS.any(), 100.0),
            (BRAKE_SPECIFIC_HEAT.any(), 800.0),
            (BRAKE_SHARE.any(), 1.0),
        ],
        &[Found(BRAKE_ENERGY.any(), 7.35 * 1e6), Found(BRAKE_RISE.any(), 92.0)],
        "OpenStax, College Physics (1st ed.), Example 14.2, as transcribed by volunteers",
        "Computed 91.9 K. All heat assumed to stay in the brakes.",
    ),
    recalled(
        "brake-car-on-slope",
        0.002,
        &[
            (MASS.any(), 1200.0),
            (BRAKING_SPEED.any(), 72.0 * KMH),
            (BRAKING_DESCENT.any(), 0.2 * 50.0),
            (GRAVITY.any(), 9.81),
            (BRAKE_MASS.any(), 20.0),
            (BRAKE_SPECIFIC_HEAT.any(), 520.0),
            (BRAKE_SHARE.any(), 1.0),
        ],
        &[Found(BRAKE_ENERGY.any(), 357_720.0), Found(BRAKE_RISE.any(), 34.4)],
        "R. S. Khurmi, J. K. Gupta, Machine Design, brakes chapter, Example 25.1 (from memory)",
        "Speed energy 240 kJ plus height energy 117.72 kJ.",
    ),
    read(
        "kinetic-energy-car",
        0.006,
        &[(MASS.any(), 1000.0), (BRAKING_SPEED.any(), 28.0)],
        &[Found(BRAKE_ENERGY.any(), 392.0 * KILO)],
        "D. J. C. MacKay, Sustainable Energy - without the hot air, ch. A",
        "Printed as 390 000 J and 0.1 kWh (0.109).",
    ),
    read(
        "kinetic-energy-without-rotating-parts",
        0.001,
        &[(MASS.any(), 1000.0), (BRAKING_SPEED.any(), 100.0 * KMH)],
        &[Found(BRAKE_ENERGY.any(), 385.8 * KILO)],
        "V. B. Bhandari, Design of Machine Elements, Example 12.2 (data), as transcribed by volunteers",
        "Data read, answer computed for this check.",
    ),
    read(
        "kinetic-energy-with-rotating-parts",
        0.001,
        &[
            (MASS.any(), 1000.0),
            (BRAKING_SPEED.any(), 100.0 * KMH),
            (ROTOR_INERTIA.any(), 2.5),
            (GEAR_RATIO.any(), 5.0),
            (WHEEL_INERTIA.any(), 4.0 * 0.5),
            (DRIVE_RADIUS.any(), 0.35),
        ],
        &[Found(BRAKE_ENERGY.any(), 588.9 * KILO)],
        "V. B. Bhandari, Design of Machine Elements, Example 12.2 (data), as transcribed by volunteers",
        "Data read, answer computed for this check. The geared-up engine or motor rotor adds half as much again: small geared machines can be worse. The book's own answer was not seen.",
    ),
    recalled(
        "clutch-start",
        0.001,
        &[
            (CLUTCH_DRIVING_INERTIA.any(), 0.8),
            (CLUTCH_DRIVEN_INERTIA.any(), 2.4),
            (CLUTCH_DRIVING_SPEED.any(), 1500.0 * RPM),
            (CLUTCH_DRIVEN_SPEED.any(), 0.0 * RPM),
        ],
        &[Found(CLUTCH_HEAT.any(), 7402.2)],
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, section 16-8, energy dissipated in clutching (from memory)",
        "I1 I2 dw^2 / (2 (I1 + I2)); torque and slip time drop out. Numbers chosen for this check.",
    ),
    recalled(
        "clutch-change",
        0.001,
        &[
            (CLUTCH_DRIVING_INERTIA.any(), 0.05),
            (CLUTCH_DRIVEN_INERTIA.any(), 0.35),
            (CLUTCH_DRIVING_SPEED.any(), 6000.0 * RPM),
            (CLUTCH_DRIVEN_SPEED.any(), 2000.0 * RPM),
        ],
        &[Found(CLUTCH_HEAT.any(), 3838.2)],
        "Budynas & Nisbett, Shigley's Mechanical Engineering Design, section 16-8, energy dissipated in clutching (from memory)",
        "I1 I2 dw^2 / (2 (I1 + I2)); torque and slip time drop out. Numbers chosen for this check.",
    ),
];

#[test]
fn windings() {
    check(WINDINGS);
}

#[test]
fn brakes_and_clutches() {
    check(BRAKES);
}
