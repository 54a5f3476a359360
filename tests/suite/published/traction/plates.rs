//! Sinkage of plates, tracks and stiff wheels, and what their ruts cost.

use heftwise::quantity::catalogue::{ground::*, machine::*, running_gear::*, traction::*};

use super::super::unit::{CM, INCH, LBF};
use super::super::{Case, Expect::Found, check, read, recalled};

pub(crate) const CASES: &[Case] = &[
    read(
        "bekker-p-dry-sand",
        0.002,
        &[
            (SINKING_WIDTH.any(), 0.1),
            (RUT_DEPTH.any(), 0.05),
            (SINKAGE_EXPONENT.any(), 1.1),
            (COHESIVE_MODULUS.any(), 990.0),
            (FRICTIONAL_MODULUS.any(), 1528430.0),
        ],
        &[Found(RUT_PRESSURE.any(), 57005.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table",
        "Reckoned from printed inputs from published terrain values. b is the smaller side of the patch (or the radius of a round plate). Units of the moduli depend on n.",
    ),
    read(
        "bekker-p-clayey",
        0.002,
        &[
            (SINKING_WIDTH.any(), 0.1),
            (RUT_DEPTH.any(), 0.05),
            (SINKAGE_EXPONENT.any(), 0.5),
            (COHESIVE_MODULUS.any(), 13190.0),
            (FRICTIONAL_MODULUS.any(), 692150.0),
        ],
        &[Found(RUT_PRESSURE.any(), 184260.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table",
        "Reckoned from printed inputs from published terrain values. b is the smaller side of the patch (or the radius of a round plate). Units of the moduli depend on n.",
    ),
    recalled(
        "wong-track-a-sinkage",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 1.0),
            (CONTACT_LENGTH.any(), 3.6),
            (TRACK_COUNT.any(), 2.0),
            (SINKAGE_EXPONENT.any(), 1.6),
            (COHESIVE_MODULUS.any(), 4370.0),
            (FRICTIONAL_MODULUS.any(), 196720.0),
        ],
        &[Found(SINKAGE.any(), 0.227)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Printed (inputs and printed sinkage from memory), recomputed 0.22699 m. Contact pressure 18.75 kPa. Terrain rows were read.",
    ),
    read(
        "bekker-z-m113-dry-sand",
        0.002,
        &[
            (WEIGHT.any(), 22900.0 * LBF),
            (TRACK_WIDTH.any(), 15.0 * INCH),
            (CONTACT_LENGTH.any(), 105.0 * INCH),
            (TRACK_COUNT.any(), 2.0),
            (SINKAGE_EXPONENT.any(), 1.1),
            (COHESIVE_MODULUS.any(), 990.0),
            (FRICTIONAL_MODULUS.any(), 1528430.0),
        ],
        &[Found(SINKAGE.any(), 44.674 * 1e-3)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table; R. P. Hunnicutt, Bradley: A History of American Fighting and Support Vehicles, M113 data sheet; as copied at afvdatabase.com/usa/m113.html",
        "Reckoned from printed inputs from the read vehicle data and terrain row. Uniform pressure. Contact pressure 50.12 kPa.",
    ),
    read(
        "bekker-z-small-crawler-snow",
        0.002,
        &[
            (MASS.any(), 6.4),
            (TRACK_WIDTH.any(), 6.0 * CM),
            (CONTACT_LENGTH.any(), 30.0 * CM),
            (TRACK_COUNT.any(), 2.0),
            (GRAVITY.any(), 9.80665),
            (SINKAGE_EXPONENT.any(), 1.6),
            (COHESIVE_MODULUS.any(), 4370.0),
            (FRICTIONAL_MODULUS.any(), 196720.0),
        ],
        &[Found(SINKAGE.any(), 42.827 * 1e-3)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table",
        "Reckoned from printed inputs, hobby scale. Arithmetic check only: the terrain row was fitted to large plates, small machines are off its range. Contact pressure 1.743 kPa.",
    ),
    read(
        "bekker-z-boot-snow",
        0.002,
        &[
            (MASS.any(), 70.0),
            (SKI_WIDTH.any(), 0.1),
            (SKI_LENGTH.any(), 0.3),
            (SKI_COUNT.any(), 1.0),
            (GRAVITY.any(), 9.80665),
            (SINKAGE_EXPONENT.any(), 1.6),
            (COHESIVE_MODULUS.any(), 2490.0),
            (FRICTIONAL_MODULUS.any(), 245900.0),
        ],
        &[Found(SINKAGE.any(), 213.44 * 1e-3)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table",
        "Reckoned from printed inputs. One boot carrying the whole weight; deep-snow row, snow assumed deeper than the sinkage. Contact pressure 22.88 kPa.",
    ),
    recalled(
        "wong-track-a-compaction",
        0.005,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 1.0),
            (CONTACT_LENGTH.any(), 3.6),
            (TRACK_COUNT.any(), 2.0),
            (SINKAGE_EXPONENT.any(), 1.6),
            (COHESIVE_MODULUS.any(), 4370.0),
            (FRICTIONAL_MODULUS.any(), 196720.0),
        ],
        &[Found(COMPACTION_RESISTANCE.any(), 3280.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Printed (inputs and printed result from memory). Exact 3.274 kN; printed value follows from a rounded sinkage.",
    ),
    read(
        "compaction-m113-dry-sand",
        0.002,
        &[
            (WEIGHT.any(), 22900.0 * LBF),
            (TRACK_WIDTH.any(), 15.0 * INCH),
            (CONTACT_LENGTH.any(), 105.0 * INCH),
            (TRACK_COUNT.any(), 2.0),
            (SINKAGE_EXPONENT.any(), 1.1),
            (COHESIVE_MODULUS.any(), 990.0),
            (FRICTIONAL_MODULUS.any(), 1528430.0),
        ],
        &[Found(COMPACTION_RESISTANCE.any(), 812.52)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table; R. P. Hunnicutt, Bradley: A History of American Fighting and Support Vehicles, M113 data sheet; as copied at afvdatabase.com/usa/m113.html",
        "Reckoned from printed inputs from read vehicle data and terrain row. Leaves out internal track losses and bulldozing.",
    ),
    read(
        "wheel-sinkage-small-rover-wheel",
        0.002,
        &[
            (LOAD_PER_WHEEL.any(), 64.68),
            (WHEEL_WIDTH.any(), 0.11),
            (WHEEL_DIAMETER.any(), 0.18),
            (SINKAGE_EXPONENT.any(), 1.0),
            (COHESIVE_MODULUS.any(), 1370.0),
            (FRICTIONAL_MODULUS.any(), 814000.0),
            (WHEEL_COUNT.any(), 1.0),
        ],
        &[Found(WHEEL_SINKAGE.any(), 18.496 * 1e-3)],
        "G. Ishigami, A. Miwa, K. Nagatani, K. Yoshida, Terramechanics-based model for steering maneuver of planetary exploration rovers on loose soil, Journal of Field Robotics 24, 2007 (wheel and lunar simulant values); read as quoted in a public source file naming the author; formula read in public source files citing Bekker and Wong",
        "Reckoned from printed inputs from published inputs. Numerical integration of the radial pressure over the true circle gives 18.9 mm, so the closed form (parabola for the arc) is -2.2 % off here.",
    ),
    read(
        "wheel-compaction-small-rover-wheel",
        0.003,
        &[
            (LOAD_PER_WHEEL.any(), 64.68),
            (WHEEL_WIDTH.any(), 0.11),
            (WHEEL_DIAMETER.any(), 0.18),
            (SINKAGE_EXPONENT.any(), 1.0),
            (COHESIVE_MODULUS.any(), 1370.0),
            (FRICTIONAL_MODULUS.any(), 814000.0),
            (WHEEL_COUNT.any(), 1.0),
        ],
        &[Found(WHEEL_COMPACTION.any(), 15.55)],
        "G. Ishigami, A. Miwa, K. Nagatani, K. Yoshida, Terramechanics-based model for steering maneuver of planetary exploration rovers on loose soil, Journal of Field Robotics 24, 2007 (wheel and lunar simulant values); read as quoted in a public source file naming the author; formula read in public source files citing Bekker and Wong",
        "Reckoned from printed inputs, using the sinkage of the companion case. Resistance is 24 % of the wheel load.",
    ),
];

#[test]
fn plates() {
    check(CASES);
}
