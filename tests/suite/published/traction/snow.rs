//! Shallow snow, and where a rough guide on ice begins.

use heftwise::quantity::catalogue::{
    ground::*, machine::*, pressure::*, running_gear::*, traction::*,
};

use super::super::unit::{CM, DEG, INCH, LBF};
use super::super::{Case, Expect::Found, check, read, recalled};

pub(crate) const CASES: &[Case] = &[
    read(
        "snow-rut-15cm",
        0.002,
        &[
            (SNOW_DEPTH.any(), 15.0 * CM),
            (SNOW_DENSITY.any(), 200.0),
            (SNOW_FINAL_DENSITY.any(), 500.0),
        ],
        &[Found(SNOW_RUT.any(), 9.0 * CM)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm; final density rule (0.50 Mg/m^3 up to 210 kPa) read in CRREL Report 95-7 at coldregionsresearch.tpub.com/CR95_07/CR95_070011.htm",
        "Printed. Final density is 0.55, 0.60 and 0.65 Mg/m^3 for contact pressure above 210, 350 and 700 kPa. Measured ruts in the CRREL data mostly run deeper than this.",
    ),
    recalled(
        "snow-traction-undisturbed",
        0.0005,
        &[
            (WEIGHT.any(), 104092.0),
            (TRACK_WIDTH.any(), 0.381),
            (CONTACT_LENGTH.any(), 2.667),
            (TRACK_COUNT.any(), 2.0),
            (SNOW_TRACTION_FACTOR.any(), 0.851),
            (SNOW_TRACTION_EXPONENT.any(), 0.823),
            (SLOPE.any(), 0.0 * DEG),
        ],
        &[Found(SNOW_TRACTION.any(), 44134.3)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm; coefficients (undisturbed snow 0.851 and 0.823, packed snow 0.321 and 0.97, ice 0.127 and 1.06) recalled from the CRREL shallow snow reports and confirmed by matching the printed outputs",
        "Printed result. Weight (23 400 lbf) was solved from the printed outputs and one value satisfies all of them to six digits; contact size is the vehicle's 15 in by 105 in (read elsewhere). Surface: undisturbed snow. On a slope only the normal part of the weight counts. Coefficients a and m from memory.",
    ),
    recalled(
        "snow-traction-packed",
        0.0005,
        &[
            (WEIGHT.any(), 104092.0),
            (TRACK_WIDTH.any(), 0.381),
            (CONTACT_LENGTH.any(), 2.667),
            (TRACK_COUNT.any(), 2.0),
            (SNOW_TRACTION_FACTOR.any(), 0.321),
            (SNOW_TRACTION_EXPONENT.any(), 0.97),
            (SLOPE.any(), 0.0 * DEG),
        ],
        &[Found(SNOW_TRACTION.any(), 29692.1)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm; coefficients (undisturbed snow 0.851 and 0.823, packed snow 0.321 and 0.97, ice 0.127 and 1.06) recalled from the CRREL shallow snow reports and confirmed by matching the printed outputs",
        "Printed result. Weight (23 400 lbf) was solved from the printed outputs and one value satisfies all of them to six digits; contact size is the vehicle's 15 in by 105 in (read elsewhere). Surface: packed or prepared snow. On a slope only the normal part of the weight counts. Coefficients a and m from memory.",
    ),
    recalled(
        "snow-traction-slope30",
        0.0005,
        &[
            (WEIGHT.any(), 104092.0),
            (TRACK_WIDTH.any(), 0.381),
            (CONTACT_LENGTH.any(), 2.667),
            (TRACK_COUNT.any(), 2.0),
            (SNOW_TRACTION_FACTOR.any(), 0.851),
            (SNOW_TRACTION_EXPONENT.any(), 0.823),
            (SLOPE.any(), 30.0 * DEG),
        ],
        &[Found(SNOW_TRACTION.any(), 39207.1)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm; coefficients (undisturbed snow 0.851 and 0.823, packed snow 0.321 and 0.97, ice 0.127 and 1.06) recalled from the CRREL shallow snow reports and confirmed by matching the printed outputs",
        "Printed result. Weight (23 400 lbf) was solved from the printed outputs and one value satisfies all of them to six digits; contact size is the vehicle's 15 in by 105 in (read elsewhere). Surface: undisturbed snow. On a slope only the normal part of the weight counts. Coefficients a and m from memory.",
    ),
    read(
        "snow-drawbar-level",
        0.002,
        &[
            (SNOW_TRACTION.any(), 44134.3),
            (SNOW_RESISTANCE.any(), 5585.4),
            (WEIGHT.any(), 104092.0),
        ],
        &[Found(SNOW_DRAWBAR_PULL.any(), 38548.9), Found(SNOW_DRAWBAR_COEFFICIENT.any(), 0.37)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm",
        "Printed. Example 1, 15 cm undisturbed snow on a road.",
    ),
    read(
        "snow-drawbar-slope30",
        0.002,
        &[
            (SNOW_TRACTION.any(), 39207.1),
            (SNOW_RESISTANCE.any(), 5585.4),
            (WEIGHT.any(), 104092.0),
            (SLOPE.any(), 30.0 * DEG),
        ],
        &[Found(SNOW_DRAWBAR_PULL.any(), -18424.5), Found(SNOW_DRAWBAR_COEFFICIENT.any(), -0.177)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm",
        "Printed, but the page as read prints drawbar and coefficient without their minus sign; the printed speed ratio of 0 (immobile) shows the pull is negative. The model adds W sin(slope) to the full level resistance (not reduced by the cosine). The right, negative value is tested here.",
    ),
    read(
        "snow-drawbar-over-ice",
        0.003,
        &[
            (SNOW_TRACTION.any(), 16741.3),
            (SNOW_RESISTANCE.any(), 5275.1),
            (WEIGHT.any(), 104092.0),
        ],
        &[Found(SNOW_DRAWBAR_PULL.any(), 11466.2), Found(SNOW_DRAWBAR_COEFFICIENT.any(), 0.11)],
        "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995, Table A5 sample output; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm",
        "Printed. Example 5, 12 cm of snow over ice.",
    ),
    read(
        "ice-tracked-25-tons",
        0.01,
        &[(WEIGHT.any(), 25.0 * 2000.0 * LBF)],
        &[Found(ICE_GUIDE_THICKNESS.any(), 20.0 * INCH)],
        "US Army TM 5-852-1 / AFR 88-19 vol. 1, Arctic and Subarctic Construction, General Provisions, section 2 and Table 2-1; read at buildingcriteria1.tpub.com/ufc_3_130_01/ufc_3_130_010026.htm",
        "Printed table value (three-day mean 20 to 32 F, tracked). Formula gives 20.00 in; the table is rounded and slightly refined. Snow ice counts as half. Not a safety rule on its own.",
    ),
    read(
        "ice-tracked-6-tons",
        0.03,
        &[(WEIGHT.any(), 6.0 * 2000.0 * LBF)],
        &[Found(ICE_GUIDE_THICKNESS.any(), 10.0 * INCH)],
        "US Army TM 5-852-1 / AFR 88-19 vol. 1, Arctic and Subarctic Construction, General Provisions, section 2 and Table 2-1; read at buildingcriteria1.tpub.com/ufc_3_130_01/ufc_3_130_010026.htm",
        "Printed table value (three-day mean 20 to 32 F, tracked). Formula gives 9.80 in; the table is rounded and slightly refined. Snow ice counts as half. Not a safety rule on its own.",
    ),
    read(
        "snow-density-by-pressure",
        0.0001,
        &[(GROUND_PRESSURE.any(), 400e3)],
        &[Found(SNOW_FINAL_DENSITY.any(), 600.0)],
        "Final density rule, US Army CRREL Report 95-7, 1995; read at coldregionsresearch.tpub.com/CR95_07/CR95_070011.htm",
        "Printed: 0.50 Mg/m^3 up to 210 kPa, 0.60 above 350 kPa.",
    ),
    read(
        "snow-resistance-m113",
        0.002,
        &[(SNOW_RESISTANCE_COEFFICIENT.any(), 0.0537), (WEIGHT.any(), 104092.0)],
        &[Found(SNOW_RESISTANCE.any(), 5585.4)],
        "US Army CRREL Report 95-1, 1995, Table A5; read at coldregionsresearch.tpub.com/CR95_01/CR95_010027.htm",
        "Printed resistance; the coefficient is its quotient by the printed weight.",
    ),
];

#[test]
fn snow() {
    check(CASES);
}
