//! Axes.

use heftwise::plot::Axis;
use heftwise::quantity::catalogue::{self, pressure::GROUND_PRESSURE};
use heftwise::quantity::{UnitSet, Units};
use heftwise::study::curve::Scale;
use proptest::prelude::*;

use super::spec;

fn axis(log: bool, from: f64, to: f64) -> Axis {
    let entry = catalogue::find(GROUND_PRESSURE.any().name()).unwrap();
    Axis::new(entry, Units::default().unit_for(entry, 1000.0), log, from, to)
}

fn named(axis: &Axis) -> Vec<&str> {
    axis.ticks.iter().filter_map(|tick| tick.text.as_deref()).collect()
}

#[test]
fn ticks_are_round_and_few() {
    assert_eq!(named(&axis(false, 0.0, 3.0)), ["0.0", "0.5", "1.0", "1.5", "2.0", "2.5", "3.0"]);
    assert_eq!(named(&axis(false, -20.0, 20.0)), ["−20", "−10", "0", "10", "20"]);
    assert_eq!(named(&axis(false, 40.0, 160.0)), ["40", "60", "80", "100", "120", "140", "160"]);
    assert_eq!(named(&axis(true, 1.0, 1000.0)), ["1", "10", "100", "1000"]);
    assert_eq!(named(&axis(true, 0.5, 20.0)), ["0.5", "1", "2", "5", "10", "20"]);
}

#[test]
fn one_unit_and_its_name() {
    let metric = spec(Scale::Linear, UnitSet::Metric);
    assert_eq!(metric.x.label, "track width, mm");
    assert!(metric.y.label.starts_with("ground pressure (mean), "), "{}", metric.y.label);
    let imperial = spec(Scale::Linear, UnitSet::Imperial);
    assert_eq!(imperial.x.label, "track width, in");
}

#[test]
fn zero_belongs_to_the_side() {
    let spec = spec(Scale::Linear, UnitSet::Metric);
    assert_eq!(spec.y.from, 0.0);
    let highest = spec.lines.iter().flat_map(|l| l.runs.iter().flatten()).map(|p| p.1);
    assert!(highest.fold(0.0, f64::max) < spec.y.to, "there is air above the lines");
}

#[test]
fn a_power_is_straight_between_logarithmic_axes() {
    let spec = spec(Scale::Log, UnitSet::Metric);
    assert!(spec.x.log);
}

proptest! {
    #[test]
    fn linear_ticks_keep_inside(from in -1e6..1e6f64, span in 1e-3..1e6f64) {
        let axis = axis(false, from, from + span);
        let count = axis.ticks.len();
        prop_assert!((3..=8).contains(&count), "{count} ticks");
        let slack = span * 1e-6;
        prop_assert!(axis.ticks.iter().all(|t| t.at >= from - slack && t.at <= from + span + slack));
        prop_assert!(axis.ticks.windows(2).all(|w| w[0].at < w[1].at && w[0].text != w[1].text));
    }

    #[test]
    fn logarithmic_ticks_keep_inside(from in 1e-6..1e3f64, decades in 0.05..9.0f64) {
        let to = from * 10_f64.powf(decades);
        let axis = axis(true, from, to);
        let count = named(&axis).len();
        prop_assert!((1..=8).contains(&count), "{count} named ticks");
        prop_assert!(axis.ticks.iter().all(|t| t.at >= from * 0.999999 && t.at <= to * 1.000001));
    }

    #[test]
    fn there_and_back(log in any::<bool>(), part in 0.0..1.0f64) {
        let axis = axis(log, 0.5, 200.0);
        prop_assert!((axis.part(axis.value(part)) - part).abs() < 1e-9);
    }
}
