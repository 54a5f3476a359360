//! Mean maximum pressure and the army's cone indices.

use heftwise::quantity::catalogue::{machine::*, running_gear::*, traction::*};

use super::super::unit::{INCH, LBF, PSI};
use super::super::{Case, Expect::Found, check, read, recalled};

pub(crate) const CASES: &[Case] = &[
    recalled(
        "mmp-t62",
        0.01,
        &[
            (WEIGHT.any(), 370000.0),
            (ROAD_WHEELS_PER_TRACK.any(), 5.0),
            (TRACK_WIDTH.any(), 0.58),
            (TRACK_PITCH.any(), 0.137),
            (ROAD_WHEEL_DIAMETER.any(), 0.81),
            (LINK_AREA_RATIO.any(), 1.0),
            (TRACK_COUNT.any(), 2.0),
        ],
        &[Found(MEAN_MAXIMUM_PRESSURE.any(), 242000.0)],
        "D. Rowland, Tracked Vehicle Ground Pressure and its Effect on Soft Ground Performance, 4th ISTVS conference 1972; values as tabulated in J. Y. Wong, Theory of Ground Vehicles, table of MMP of tracked vehicles",
        "Printed result from memory; running-gear dimensions also from memory, formula read in a public source file. Computed 241.3 kPa. A_l (rigid part of link over pitch times width) taken as 1.",
    ),
    recalled(
        "mmp-m60",
        0.01,
        &[
            (WEIGHT.any(), 510000.0),
            (ROAD_WHEELS_PER_TRACK.any(), 6.0),
            (TRACK_WIDTH.any(), 0.71),
            (TRACK_PITCH.any(), 0.176),
            (ROAD_WHEEL_DIAMETER.any(), 0.66),
            (LINK_AREA_RATIO.any(), 1.0),
            (TRACK_COUNT.any(), 2.0),
        ],
        &[Found(MEAN_MAXIMUM_PRESSURE.any(), 221000.0)],
        "D. Rowland, Tracked Vehicle Ground Pressure and its Effect on Soft Ground Performance, 4th ISTVS conference 1972; values as tabulated in J. Y. Wong, Theory of Ground Vehicles, table of MMP of tracked vehicles",
        "Printed result from memory; running-gear dimensions also from memory, formula read in a public source file. Computed 221.3 kPa. A_l (rigid part of link over pitch times width) taken as 1.",
    ),
    recalled(
        "mmp-leopard2",
        0.02,
        &[
            (WEIGHT.any(), 514000.0),
            (ROAD_WHEELS_PER_TRACK.any(), 7.0),
            (TRACK_WIDTH.any(), 0.635),
            (TRACK_PITCH.any(), 0.184),
            (ROAD_WHEEL_DIAMETER.any(), 0.7),
            (LINK_AREA_RATIO.any(), 1.0),
            (TRACK_COUNT.any(), 2.0),
        ],
        &[Found(MEAN_MAXIMUM_PRESSURE.any(), 201000.0)],
        "D. Rowland, Tracked Vehicle Ground Pressure and its Effect on Soft Ground Performance, 4th ISTVS conference 1972; values as tabulated in J. Y. Wong, Theory of Ground Vehicles, table of MMP of tracked vehicles",
        "Printed result from memory; running-gear dimensions also from memory, formula read in a public source file. Computed 203.0 kPa. A_l (rigid part of link over pitch times width) taken as 1.",
    ),
    recalled(
        "mmp-m113",
        0.02,
        &[
            (WEIGHT.any(), 108000.0),
            (ROAD_WHEELS_PER_TRACK.any(), 5.0),
            (TRACK_WIDTH.any(), 0.38),
            (TRACK_PITCH.any(), 0.152),
            (ROAD_WHEEL_DIAMETER.any(), 0.61),
            (LINK_AREA_RATIO.any(), 1.0),
            (TRACK_COUNT.any(), 2.0),
        ],
        &[Found(MEAN_MAXIMUM_PRESSURE.any(), 119000.0)],
        "D. Rowland, Tracked Vehicle Ground Pressure and its Effect on Soft Ground Performance, 4th ISTVS conference 1972; values as tabulated in J. Y. Wong, Theory of Ground Vehicles, table of MMP of tracked vehicles",
        "Printed result from memory; running-gear dimensions also from memory, formula read in a public source file. Computed 117.6 kPa. A_l (rigid part of link over pitch times width) taken as 1.",
    ),
    read(
        "vci1-wheeled-mi60",
        0.002,
        &[(WHEELED_MOBILITY_INDEX.any(), 60.0), (TYRE_DEFLECTION_RATIO.any(), 0.15)],
        &[Found(WHEELED_CONE_INDEX.any(), 22.865 * PSI)],
        "J. D. Priddy, W. E. Willoughby, Clarification of vehicle cone index with reference to mean maximum pressure, Journal of Terramechanics 43, 2006; equations read at scribd.com/document/193430719 (excerpt)",
        "Reckoned from printed inputs from the read equations: up to MI 115: (11.48 + 0.2 MI - 39.2/(MI + 3.74)) DCF, above: 4.1 MI^0.446 DCF, with DCF = (0.15/(deflection/height))^0.25. Cone index is in psi (lbf/in^2) by custom.",
    ),
    read(
        "vci1-wheeled-mi150",
        0.002,
        &[(WHEELED_MOBILITY_INDEX.any(), 150.0), (TYRE_DEFLECTION_RATIO.any(), 0.15)],
        &[Found(WHEELED_CONE_INDEX.any(), 38.311 * PSI)],
        "J. D. Priddy, W. E. Willoughby, Clarification of vehicle cone index with reference to mean maximum pressure, Journal of Terramechanics 43, 2006; equations read at scribd.com/document/193430719 (excerpt)",
        "Reckoned from printed inputs from the read equations: up to MI 115: (11.48 + 0.2 MI - 39.2/(MI + 3.74)) DCF, above: 4.1 MI^0.446 DCF, with DCF = (0.15/(deflection/height))^0.25. Cone index is in psi (lbf/in^2) by custom.",
    ),
    read(
        "vci1-wheeled-mi60-soft-tyre",
        0.002,
        &[(WHEELED_MOBILITY_INDEX.any(), 60.0), (TYRE_DEFLECTION_RATIO.any(), 0.35)],
        &[Found(WHEELED_CONE_INDEX.any(), 18.5 * PSI)],
        "J. D. Priddy, W. E. Willoughby, Clarification of vehicle cone index with reference to mean maximum pressure, Journal of Terramechanics 43, 2006; equations read at scribd.com/document/193430719 (excerpt)",
        "Reckoned from printed inputs from the read equations: up to MI 115: (11.48 + 0.2 MI - 39.2/(MI + 3.74)) DCF, above: 4.1 MI^0.446 DCF, with DCF = (0.15/(deflection/height))^0.25. Cone index is in psi (lbf/in^2) by custom.",
    ),
    recalled(
        "vci-tracked-m113a1",
        0.02,
        &[
            (WEIGHT.any(), 24080.0 * LBF),
            (TRACK_WIDTH.any(), 15.0 * INCH),
            (CONTACT_LENGTH.any(), 105.0 * INCH),
            (ROAD_WHEELS.any(), 10.0),
            (SHOE_AREA.any(), 90.0 * INCH * INCH),
            (BELLY_CLEARANCE.any(), 16.1 * INCH),
            (GROUSER_FACTOR.any(), 1.0),
            (ENGINE_FACTOR.any(), 1.0),
            (TRANSMISSION_FACTOR.any(), 1.0),
            (TRACK_COUNT.any(), 2.0),
        ],
        &[
            Found(MOBILITY_INDEX.any(), 52.0),
            Found(CONE_INDEX_ONE_PASS.any(), 17.0 * PSI),
            Found(CONE_INDEX_FIFTY_PASSES.any(), 40.0 * PSI),
        ],
        "US Army FM 5-430-00-1, Planning and Design of Roads, Airfields and Heliports, 1994, trafficability chapter (method and vehicle table)",
        "Printed vehicle values 17 and 40 (from memory), method from memory. MI = (contact pressure factor * weight factor)/(track factor * grouser factor) + bogie factor - clearance factor, times engine and transmission factors; contact pressure in psi on BOTH tracks, track factor = width/100 in, bogie factor = (weight/10)/(wheels*shoe area), clearance/10 in. VCI1 = 7 + 0.2 MI - 39.2/(MI+5.6); VCI50 = 19.27 + 0.43 MI - 125.79/(MI+7.08). Computed 52.03, 16.73, 39.5.",
    ),
];

#[test]
fn indices() {
    check(CASES);
}
