//! The picture and its table.

use heftwise::plot::{PlotStyle, Role, readings, svg, table};
use heftwise::quantity::UnitSet;
use heftwise::study::curve::Scale;

use super::spec;

#[test]
fn the_svg_stands_alone() {
    let spec = spec(Scale::Linear, UnitSet::Metric);
    let picture = svg(&spec, (640, 400), &PlotStyle::PAPER);
    assert!(picture.starts_with("<svg ") && picture.trim_end().ends_with("</svg>"));
    assert_eq!(picture.matches("<svg").count(), 1);
    assert!(picture.contains("viewBox=\"0 0 10240 6400\""));
    assert!(picture.contains("<title>ground pressure (mean) against track width</title>"));
    assert!(picture.contains("<desc>Halving the track width doubles"));
    assert!(!picture.contains("href") && !picture.contains("NaN"));
    for colour in ["#0072B2", "#D55E00"] {
        assert!(picture.to_uppercase().contains(colour), "{colour}");
    }
    if let Ok(path) = std::env::var("HEFTWISE_LOOK") {
        std::fs::write(path, picture).unwrap();
    }
}

/// The same numbers by hand: m g over 2 × width × 0.42 m.
#[test]
fn readings_follow_the_formula() {
    let spec = spec(Scale::Linear, UnitSet::Metric);
    for width in [40.0, 63.7, 90.0, 123.4, 160.0] {
        let said = readings(&spec, width);
        assert_eq!(said.len(), 2);
        for (reading, mass) in said.iter().zip([6.4, 14.9]) {
            let by_hand = mass * 9.80665 / (2.0 * width / 1000.0 * 0.42);
            let found = spec.y.unit.to_si(reading.y);
            approx::assert_relative_eq!(found, by_hand, max_relative = 1e-3);
        }
        assert_eq!(said[0].role, Some(Role::Yours));
    }
    assert!(readings(&spec, 39.0).is_empty() && readings(&spec, 161.0).is_empty());
}

#[test]
fn the_table_holds_the_ticks_and_the_build() {
    let table = table(&spec(Scale::Linear, UnitSet::Metric));
    assert_eq!(table.head[0], "track width, mm");
    assert_eq!(table.head.len(), 3);
    let row = table.rows.iter().find(|row| row[0].starts_with("90")).unwrap();
    assert!(row[1] == "0.830" || row[1] == "830", "{row:?}");
    assert_eq!(table.rows.len(), 8);
}
