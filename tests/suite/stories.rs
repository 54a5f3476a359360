//! Whole jobs from end to end: each a build file, and the chain of numbers that decides, through
//! the command line. The machines are invented; the sums were done by hand with 9.81 m/s² and
//! rounded to two or three figures, and every answer lies within that rounding.

mod heat_and_cold;
mod landing_and_stopping;
mod pressing_and_pulling;
mod sand_class;

use std::path::PathBuf;

use heftwise::cli::{self, Next};
use heftwise::quantity::{catalogue, parse};
use serde_json::Value;

/// A build of tests/samples/stories.
struct Story(&'static str);

impl Story {
    fn answer(&self, quantity: &str, changes: &[&str]) -> Value {
        let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/samples/stories");
        let path = folder.join(self.0).with_extension("toml");
        let build = path.to_str().unwrap();
        let start = ["heftwise", "reckon", quantity, "--json", "--build", build];
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let next = cli::run(start.iter().chain(changes), &mut out, &mut err);
        let name = self.0;
        assert_eq!(next, Next::Exit(0), "{name} {quantity}: {}", String::from_utf8_lossy(&err));
        let answer: Value = serde_json::from_slice(&out).unwrap();
        assert_eq!(answer["problems"], serde_json::json!([]), "{name} {quantity}");
        answer
    }

    /// The number in SI units.
    fn si(&self, quantity: &str, changes: &[&str]) -> f64 {
        self.answer(quantity, changes)["si"].as_f64().unwrap()
    }

    /// The answer with these changes to the build is `told`, a number as the story rounds it.
    fn tells(&self, quantity: &str, changes: &[&str], told: &str) {
        let found = self.si(quantity, changes);
        let (wanted, within) = rounded(quantity, told);
        assert!(
            (found - wanted).abs() <= within,
            "{}, {changes:?}: {quantity} is {found}, told {told} ({wanted} within {within})",
            self.0
        );
    }

    fn cautions(&self, quantity: &str, changes: &[&str]) -> String {
        self.answer(quantity, changes)["cautions"].to_string()
    }
}

/// A printed number in SI units and half a step of its last figure, of the third at the finest.
fn rounded(quantity: &str, told: &str) -> (f64, f64) {
    let entry = catalogue::find(quantity).unwrap();
    let (digits, unit) = told.split_once(' ').unwrap_or((told, ""));
    let value: f64 = digits.parse().unwrap();
    let decimals = digits.split_once('.').map_or(0, |(_, places)| places.len());
    let last = 10_f64.powi(-i32::try_from(decimals).unwrap());
    let third = 10_f64.powf(value.abs().log10().floor() - 2.0);
    let si = |value: f64| parse(&format!("{value} {unit}"), entry).unwrap().si;
    let half = 0.5 * last.max(third);
    (si(value), (si(value + half) - si(value)).abs() * (1.0 + 1e-9))
}
