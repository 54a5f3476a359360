//! Families, ranges and builds outside: drawn, named, and in the table.

use heftwise::plot::{Layout, Part, Side, figures, reading, readings, stops, table, texts};
use heftwise::quantity::UnitSet;
use heftwise::study::curve::Scale;
use proptest::prelude::*;

use super::{rich, spec};

const FIVE: &[&str] = &["4 kg", "5 kg", "6 kg", "7 kg", "8 kg"];

#[test]
fn every_line_is_named_at_its_end_and_the_readers_own_is_the_first() {
    let spec = rich(Some(("mass", FIVE)), false, &[14.9]);
    assert_eq!(spec.lines.len(), 1, "companions are dots beside a family");
    assert_eq!(spec.dots.len(), 2);
    let layout = Layout::of(&spec, (640.0, 400.0), 14.0);
    let placed = texts(&spec, &layout);
    let mut ends: Vec<_> =
        placed.iter().filter(|text| matches!(text.part, Part::Relative(_))).collect();
    ends.sort_by(|a, b| a.y.total_cmp(&b.y));
    let names: Vec<&str> = ends.iter().map(|text| text.text.as_str()).collect();
    assert_eq!(names, ["8 kg", "7 kg", "6 kg", "5 kg", "4 kg"], "in the order of the lines");
    assert!(ends.iter().all(|text| text.x > layout.plot.right()));
}

#[test]
fn a_plot_without_a_family_keeps_its_margins() {
    let spec = spec(Scale::Linear, UnitSet::Metric);
    let size = (640.0, 400.0);
    assert_eq!(Layout::of(&spec, size, 14.0), Layout::new(size, 14.0));
}

/// By hand: 8 kg · 9.80665 m/s² / (2 · 90 mm · 420 mm) = 1.04 kPa.
#[test]
fn the_table_and_the_reading_have_the_family_and_the_range() {
    let spec = rich(Some(("mass", &["4 kg", "8 kg"])), false, &[]);
    let table = table(&spec);
    assert_eq!(
        table.head,
        [
            "track width, mm",
            "Sandpiper: ground pressure (mean), kPa",
            "low end of its range, kPa",
            "high end of its range, kPa",
            "mass 4 kg: ground pressure (mean), kPa",
            "mass 8 kg: ground pressure (mean), kPa",
        ]
    );
    let row = table.rows.iter().find(|row| row[0] == "90.0").unwrap();
    assert_eq!(row[1..], ["0.830", "0.754", "0.906", "0.519", "1.04"]);
    let said = reading(&spec, 90.0, 200);
    assert_eq!(
        said,
        "At track width 90.0 mm: Sandpiper 0.830 kPa (0.754 to 0.906), mass 4 kg 0.519 kPa, mass 8 kg 1.04 kPa"
    );
    assert_eq!(
        reading(&spec, 90.0, 60),
        "At track width 90.0 mm: Sandpiper 0.830 kPa (0.754 to 0.906)"
    );
}

#[test]
fn points_are_read_at_round_numbers_and_at_the_build() {
    let spec = rich(None, true, &[]);
    let stops = stops(&spec);
    assert!(stops.len() > 60 && stops.contains(&90.0), "{stops:?}");
    assert!(stops.windows(2).all(|pair| pair[0] < pair[1]));
    assert_eq!((stops[0], *stops.last().unwrap()), (40.0, 160.0));
}

/// Two and a half tonnes beside six kilograms: the reader's own line keeps its height.
#[test]
fn a_much_larger_companion_stands_at_the_edge() {
    let alone = rich(None, true, &[]);
    let spec = rich(None, true, &[2500.0]);
    assert_eq!((spec.y.from, spec.y.to), (alone.y.from, alone.y.to));
    assert_eq!(spec.dots.len(), 1);
    let edge = &spec.edges[0];
    assert_eq!((edge.side, edge.label.as_str()), (Side::Above, "Bullock: 324 kPa at 90 mm"));
    let placed = texts(&spec, &Layout::of(&spec, (640.0, 400.0), 14.0));
    assert!(placed.iter().any(|text| text.text == edge.label), "{placed:?}");
    assert!(readings(&spec, 90.0).iter().all(|reading| reading.label != "Bullock"));
}

#[test]
fn figures_are_the_reckoned_ones() {
    let spec = rich(None, true, &[]);
    let figures = figures(&spec);
    assert!(figures.rows.len() >= 150);
    for row in &figures.rows {
        let number = |cell: &str| cell.parse::<f64>().unwrap();
        let by_hand = 6.4 * 9.80665 / (2.0 * number(&row[0]) / 1000.0 * 0.42);
        let found = spec.y.unit.to_si(number(&row[1]));
        approx::assert_relative_eq!(found, by_hand, max_relative = 2e-5);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn names_never_collide(
        width in 160.0..1400.0f32,
        height in 120.0..900.0f32,
        text in 9.0..28.0f32,
        members in 1..=5usize,
        far in any::<bool>(),
    ) {
        let companions: &[f64] = if far { &[2500.0, 14.9] } else { &[14.9] };
        let spec = rich(Some(("mass", &FIVE[..members])), false, companions);
        super::labels::sound(&spec, &Layout::of(&spec, (width, height), text))?;
    }
}
