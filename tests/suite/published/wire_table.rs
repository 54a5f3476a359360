//! Wire tables: every gauge, and metric flexible wire.

use heftwise::quantity::catalogue::electrics::*;

use super::by_rules;
use super::unit::{MILLI, MM2};

/// Gauge, diameter in mm, area in mm², resistance at 20 °C in Ω/km, four figures: by the definition
/// of ASTM B258 and the copper of IEC 60028.
const GAUGES: &[(f64, f64, f64, f64)] = &[
    (-3.0, 11.68, 107.2, 0.1608),
    (-2.0, 10.4, 85.03, 0.2028),
    (-1.0, 9.266, 67.43, 0.2557),
    (0.0, 8.251, 53.48, 0.3224),
    (1.0, 7.348, 42.41, 0.4066),
    (2.0, 6.544, 33.63, 0.5127),
    (4.0, 5.189, 21.15, 0.8152),
    (6.0, 4.115, 13.3, 1.296),
    (8.0, 3.264, 8.366, 2.061),
    (10.0, 2.588, 5.261, 3.277),
    (12.0, 2.053, 3.309, 5.211),
    (14.0, 1.628, 2.081, 8.285),
    (16.0, 1.291, 1.309, 13.17),
    (18.0, 1.024, 0.823, 20.95),
    (20.0, 0.8118, 0.5176, 33.31),
    (22.0, 0.6438, 0.3255, 52.96),
    (24.0, 0.5106, 0.2047, 84.21),
    (26.0, 0.4049, 0.1288, 133.9),
    (28.0, 0.3211, 0.08098, 212.9),
    (30.0, 0.2546, 0.05093, 338.5),
];

/// Area in mm² and greatest resistance at 20 °C in Ω/km of flexible plain copper, class 5, by
/// IEC 60228 (from memory).
const FLEXIBLE: &[(f64, f64)] = &[
    (0.5, 39.0),
    (0.75, 26.0),
    (1.0, 19.5),
    (1.5, 13.3),
    (2.5, 7.98),
    (4.0, 4.95),
    (6.0, 3.3),
    (10.0, 1.91),
    (16.0, 1.21),
    (25.0, 0.78),
    (35.0, 0.554),
];

fn near(what: &str, got: f64, wanted: f64) {
    let off = (got - wanted).abs() / wanted;
    assert!(off <= 1e-3, "{what}: {got}, table {wanted} (ASTM B258, IEC 60028)");
}

#[test]
fn every_gauge_of_the_table() {
    for (gauge, diameter, area, resistance) in GAUGES {
        // 500 m there and back is a kilometre of wire.
        let given = [(WIRE_GAUGE.any(), *gauge), (WIRE_LENGTH.any(), 500.0)];
        let found = |id| by_rules(&given, id).unwrap();
        near("diameter", found(WIRE_DIAMETER.any()), diameter * MILLI);
        near("area", found(WIRE_AREA.any()), area * MM2);
        near("resistance", found(WIRE_RESISTANCE.any()), *resistance);
        let back = by_rules(&[(WIRE_DIAMETER.any(), diameter * MILLI)], WIRE_GAUGE.any()).unwrap();
        assert!((back - gauge).abs() < 0.01, "{diameter} mm is gauge {back}, table {gauge}");
    }
}

/// Flexible wire may resist more than solid copper of its nominal area, as strands are longer than
/// the wire and makers draw them thin; never less than 3 % under, never more than 17 %.
#[test]
fn flexible_wire_resists_no_less_than_its_copper() {
    for (area, greatest) in FLEXIBLE {
        let given = [(WIRE_AREA.any(), area * MM2), (WIRE_LENGTH.any(), 500.0)];
        let solid = by_rules(&given, WIRE_RESISTANCE.any()).unwrap();
        let more = greatest / solid;
        assert!((1.03..1.17).contains(&more), "{area} mm²: {more} (IEC 60228, from memory)");
    }
}
