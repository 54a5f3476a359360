//! Limit of thrust, thrust against slip, drawbar pull.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    ground::*, machine::*, pressure::*, running_gear::*, traction::*,
};

use super::super::unit::{CM, DEG, INCH, LBF};
use super::super::{Case, Expect::Found, check, read, recalled};

/// Track A asked for the thrust that it gives at 20 % of slip.
const TRACK_A_PULLING: &[(AnyId, f64)] = &[
    (WEIGHT.any(), 135000.0),
    (TRACK_WIDTH.any(), 1.0),
    (CONTACT_LENGTH.any(), 3.6),
    (TRACK_COUNT.any(), 2.0),
    (COHESION.any(), 1000.0),
    (FRICTION_ANGLE.any(), 19.7 * DEG),
    (SHEAR_DEFORMATION.any(), 5.0 * CM),
    (PUSH_NEEDED.any(), 51680.0),
];

pub(crate) const CASES: &[Case] = &[
    recalled(
        "wong-track-a-thrust-slip05",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 1.0),
            (CONTACT_LENGTH.any(), 3.6),
            (TRACK_COUNT.any(), 2.0),
            (COHESION.any(), 1000.0),
            (FRICTION_ANGLE.any(), 19.7 * DEG),
            (SHEAR_DEFORMATION.any(), 5.0 * CM),
            (SLIP.any(), 0.05),
        ],
        &[Found(THRUST.any(), 40530.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Reckoned from printed inputs with the standard formula; inputs from memory; printed figures of the book not re-read. A is the area of both tracks, l the contact length of one.",
    ),
    recalled(
        "wong-track-a-thrust-slip20",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 1.0),
            (CONTACT_LENGTH.any(), 3.6),
            (TRACK_COUNT.any(), 2.0),
            (COHESION.any(), 1000.0),
            (FRICTION_ANGLE.any(), 19.7 * DEG),
            (SHEAR_DEFORMATION.any(), 5.0 * CM),
            (SLIP.any(), 0.2),
        ],
        &[Found(THRUST.any(), 51680.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Reckoned from printed inputs with the standard formula; inputs from memory; printed figures of the book not re-read. A is the area of both tracks, l the contact length of one.",
    ),
    recalled(
        "wong-track-a-thrust-slip80",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 1.0),
            (CONTACT_LENGTH.any(), 3.6),
            (TRACK_COUNT.any(), 2.0),
            (COHESION.any(), 1000.0),
            (FRICTION_ANGLE.any(), 19.7 * DEG),
            (SHEAR_DEFORMATION.any(), 5.0 * CM),
            (SLIP.any(), 0.8),
        ],
        &[Found(THRUST.any(), 54570.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Reckoned from printed inputs with the standard formula; inputs from memory; printed figures of the book not re-read. A is the area of both tracks, l the contact length of one.",
    ),
    recalled(
        "wong-track-b-thrust-slip40",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 0.8),
            (CONTACT_LENGTH.any(), 4.5),
            (TRACK_COUNT.any(), 2.0),
            (COHESION.any(), 1000.0),
            (FRICTION_ANGLE.any(), 19.7 * DEG),
            (SHEAR_DEFORMATION.any(), 5.0 * CM),
            (SLIP.any(), 0.4),
        ],
        &[Found(THRUST.any(), 53990.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Reckoned from printed inputs with the standard formula; inputs from memory; printed figures of the book not re-read. A is the area of both tracks, l the contact length of one.",
    ),
    recalled(
        "thrust-small-crawler-dry-sand",
        0.002,
        &[
            (MASS.any(), 6.4),
            (TRACK_WIDTH.any(), 6.0 * CM),
            (CONTACT_LENGTH.any(), 30.0 * CM),
            (TRACK_COUNT.any(), 2.0),
            (GRAVITY.any(), 9.80665),
            (COHESION.any(), 1040.0),
            (FRICTION_ANGLE.any(), 28.0 * DEG),
            (SHEAR_DEFORMATION.any(), 2.5 * CM),
            (SLIP.any(), 0.15),
        ],
        &[Found(THRUST.any(), 37.975)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table; K is the usual loose-sand value (Wong, from memory)",
        "Reckoned from printed inputs, hobby scale. The table's 1 kPa of cohesion supplies over half of the limit here (37 of 71 N); for a light machine that tiny cohesion dominates and is the least certain number in the row. K from memory.",
    ),
    read(
        "thrust-limit-m113-dry-sand",
        0.002,
        &[
            (WEIGHT.any(), 22900.0 * LBF),
            (TRACK_WIDTH.any(), 15.0 * INCH),
            (CONTACT_LENGTH.any(), 105.0 * INCH),
            (TRACK_COUNT.any(), 2.0),
            (COHESION.any(), 1040.0),
            (FRICTION_ANGLE.any(), 28.0 * DEG),
        ],
        &[Found(THRUST_LIMIT.any(), 56276.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table; R. P. Hunnicutt, Bradley: A History of American Fighting and Support Vehicles, M113 data sheet; as copied at afvdatabase.com/usa/m113.html",
        "Reckoned from printed inputs. Upper bound at full slip, no grousers.",
    ),
    read(
        "thrust-limit-m113-lean-clay",
        0.002,
        &[
            (WEIGHT.any(), 22900.0 * LBF),
            (TRACK_WIDTH.any(), 15.0 * INCH),
            (CONTACT_LENGTH.any(), 105.0 * INCH),
            (TRACK_COUNT.any(), 2.0),
            (COHESION.any(), 68950.0),
            (FRICTION_ANGLE.any(), 20.0 * DEG),
        ],
        &[Found(THRUST_LIMIT.any(), 177200.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table; R. P. Hunnicutt, Bradley: A History of American Fighting and Support Vehicles, M113 data sheet; as copied at afvdatabase.com/usa/m113.html",
        "Reckoned from printed inputs. Firm clay (22 % moisture): cohesion times area gives four fifths of it, so area matters and weight hardly does. Exceeds the vehicle weight, so other limits act first.",
    ),
    read(
        "shear-stress-lete-sand",
        0.002,
        &[
            (GROUND_PRESSURE.any(), 20000.0),
            (SHEAR_DISPLACEMENT.any(), 12.0 * 1e-3),
            (COHESION.any(), 1300.0),
            (FRICTION_ANGLE.any(), 31.1 * DEG),
            (SHEAR_DEFORMATION.any(), 12.0 * 1e-3),
        ],
        &[Found(SHEAR_STRESS.any(), 8448.1)],
        "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, Table 2.3, row as transcribed in a public source file that cites the table; K = 1.2 cm read with the same row in two public files",
        "Reckoned from printed inputs. At j = K the stress is 63.2 % of its limit.",
    ),
    recalled(
        "wong-track-a-drawbar-slip20",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_WIDTH.any(), 1.0),
            (CONTACT_LENGTH.any(), 3.6),
            (TRACK_COUNT.any(), 2.0),
            (SINKAGE_EXPONENT.any(), 1.6),
            (COHESIVE_MODULUS.any(), 4370.0),
            (FRICTIONAL_MODULUS.any(), 196720.0),
            (COHESION.any(), 1000.0),
            (FRICTION_ANGLE.any(), 19.7 * DEG),
            (SHEAR_DEFORMATION.any(), 5.0 * CM),
            (SLIP.any(), 0.2),
        ],
        &[Found(DRAWBAR_PULL.any(), 48410.0)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Reckoned from printed inputs; inputs from memory. Bulldozing and internal resistance left out, as in the book's example.",
    ),
    recalled(
        "wong-track-a-slip-for-thrust",
        0.003,
        TRACK_A_PULLING,
        &[Found(SLIP_NEEDED.any(), 0.2)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "The thrust at 20 % of slip in, the slip out; inputs from memory.",
    ),
    recalled(
        "wong-track-a-climb",
        0.003,
        &[
            (WEIGHT.any(), 135000.0),
            (TRACK_CONTACT_AREA.any(), 7.2),
            (COHESION.any(), 1000.0),
            (FRICTION_ANGLE.any(), 19.7 * DEG),
            (DRIVEN_SHARE.any(), 1.0),
            (THRUST_REACHED.any(), 51680.0 / 55537.0),
            (COMPACTION_RESISTANCE.any(), 51680.0 - 48410.0),
        ],
        &[Found(SOFT_CLIMB.any(), 19.81 * DEG)],
        "J. Y. Wong, Theory of Ground Vehicles, 3rd/4th ed., chapter 2, worked example of two tracked vehicles of equal weight and contact area on snow",
        "Inputs from memory; the slope at which thrust less resistance is the weight's pull, found by trial.",
    ),
    recalled(
        "climb-loose-dry-sand-at-rest",
        1e-9,
        &[
            (WEIGHT.any(), 100.0),
            (TRACK_CONTACT_AREA.any(), 0.01),
            (COHESION.any(), 0.0),
            (FRICTION_ANGLE.any(), 34.0 * DEG),
            (DRIVEN_SHARE.any(), 1.0),
            (THRUST_REACHED.any(), 1.0),
            (COMPACTION_RESISTANCE.any(), 0.0),
        ],
        &[Found(SOFT_CLIMB.any(), 34.0 * DEG)],
        "T. W. Lambe and R. V. Whitman, Soil Mechanics, the long slope of loose dry sand, from memory",
        "Nothing stands on a steeper slope than the sand itself: its friction angle.",
    ),
];

#[test]
fn thrust() {
    check(CASES);
}
