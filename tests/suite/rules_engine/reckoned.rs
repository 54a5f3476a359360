//! The whole catalogue through the command line: every quantity that rules find is reckoned, from
//! a machine with everything said and from the needs of its rule alone.

use std::collections::BTreeMap;
use std::ffi::OsString;

use heftwise::cli::{self, Next};
use heftwise::quantity::catalogue::{machine::BALANCE_OFFSET, running_gear::*, traction::*};
use heftwise::quantity::{AnyId, Dimension, Entry, Role, catalogue, si_unit};
use heftwise::rules::{Origin, Value, Values, catalogue as rules};

use super::{CRAWLER, ON_SOFT_GROUND, UNDER_WAY, power, strength_and_size, values};

/// A machine with everything said, in SI units.
struct Machine {
    name: &'static str,
    pins: Vec<(AnyId, f64)>,
}

const WHEELS: &[(AnyId, f64)] = &[
    (WHEEL_COUNT.any(), 4.0),
    (WHEEL_DIAMETER.any(), 0.3),
    (WHEEL_WIDTH.any(), 0.08),
    (WHEEL_SQUASH.any(), 0.01),
    (INFLATION_PRESSURE.any(), 3e4),
    (TYRE_SECTION_HEIGHT.any(), 0.05),
    (WHEELED_MOBILITY_INDEX.any(), 60.0),
];
const SKIS: &[(AnyId, f64)] =
    &[(SKI_COUNT.any(), 2.0), (SKI_WIDTH.any(), 0.06), (SKI_LENGTH.any(), 0.3)];

fn starts(id: AnyId, stems: &[&str]) -> bool {
    stems.iter().any(|stem| id.name().starts_with(stem))
}

/// Tracked electric, wheeled electric, wheeled with an engine, and one track with two skis; nothing
/// that rules find is pinned.
fn machines() -> [Machine; 4] {
    let said = [CRAWLER, UNDER_WAY, ON_SOFT_GROUND, power::POWER, strength_and_size::ALL].concat();
    let without = |stems: &[&[&str]], more: &[&[(AnyId, f64)]]| {
        let kept = said.iter().filter(|(id, _)| {
            let entry = catalogue::find(id.name()).unwrap();
            entry.role != Role::Found && !starts(*id, &stems.concat())
        });
        let pins: BTreeMap<AnyId, f64> = kept.chain(more.concat().iter()).copied().collect();
        pins.into_iter().collect()
    };
    let engine: &[&str] = &["engine-", "fuel-"];
    let electric: &[&str] = &["speed-constant", "motor-", "no-load-", "cell", "controller-"];
    let tracks: &[&str] = &["track-", "contact-", "road-", "shoe-", "belly-"];
    // Between the track's middle and the skis, which stand in front of it by the wheelbase.
    let one_track: &[(AnyId, f64)] = &[(TRACK_COUNT.any(), 1.0), (BALANCE_OFFSET.any(), 0.15)];
    [
        Machine { name: "tracked electric", pins: without(&[engine], &[]) },
        Machine { name: "wheeled electric", pins: without(&[engine, tracks], &[WHEELS]) },
        Machine { name: "wheeled with an engine", pins: without(&[electric, tracks], &[WHEELS]) },
        Machine { name: "a track and two skis", pins: without(&[electric], &[SKIS, one_track]) },
    ]
}

fn found() -> impl Iterator<Item = &'static Entry> {
    catalogue::all().iter().filter(|entry| !entry.is_given())
}

fn argument((id, si): (AnyId, f64)) -> OsString {
    let dimension = catalogue::find(id.name()).unwrap().dimension;
    let unit = if dimension == Dimension::Angle { "rad" } else { si_unit(dimension).symbol };
    format!("{id}={si} {unit}").into()
}

/// What `reckon` answers in SI units, or what it says instead.
fn reckon(id: AnyId, pins: &[(AnyId, f64)]) -> Result<f64, String> {
    let command = ["heftwise", "reckon", id.name(), "--json"].map(OsString::from);
    let args = command.into_iter().chain(pins.iter().copied().map(argument));
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let next = cli::run(args, &mut out, &mut err);
    if next != Next::Exit(0) {
        return Err(format!("{next:?} {}", String::from_utf8_lossy(&err)));
    }
    let answer: serde_json::Value = serde_json::from_slice(&out).unwrap();
    answer["si"].as_f64().ok_or_else(|| format!("no number in {answer}"))
}

#[test]
fn every_quantity_is_reckoned_for_some_machine() {
    let machines = machines();
    for entry in found() {
        let mut said = Vec::new();
        let answered = machines.iter().any(|machine| match reckon(entry.id, &machine.pins) {
            Ok(si) => si.is_finite(),
            Err(words) => {
                said.push(format!("{}: {words}", machine.name));
                false
            }
        });
        assert!(answered, "{}: {}", entry.id, said.join("\n"));
    }
}

/// What a builder asks of any machine.
#[test]
fn the_main_questions_are_answered_for_every_machine() {
    for machine in machines() {
        for id in [
            "ground-pressure",
            "pressure-margin",
            "driving-resistance",
            "driving-power",
            "grip-climb",
            "top-speed",
            "run-up-time",
            "stopping-distance",
            "front-lift-slope",
            "side-tip-angle",
            "turning-rate",
            "peak-impact-force",
            "slip-margin",
            "beam-margin",
        ] {
            let id = catalogue::find(id).unwrap().id;
            let answer = reckon(id, &machine.pins);
            assert!(answer.is_ok(), "{} of {}: {answer:?}", id, machine.name);
        }
    }
}

/// The needs of a rule as a machine has them.
fn needs(values: &Values, id: AnyId) -> Vec<(AnyId, f64)> {
    let rule = rules::finder(id).unwrap();
    rule.needs.iter().filter_map(|need| Some((need.id, values.si(need.id)?))).collect()
}

/// Any sufficient set will do: the needs of the rule alone, most of them found quantities, give
/// what the whole machine gives.
#[test]
fn every_quantity_is_reckoned_from_the_needs_of_its_rule_alone() {
    let machines = machines().map(|machine| (machine.name, values(&machine.pins)));
    for entry in found() {
        let known = machines.iter().filter_map(|(name, values)| match values.of(entry.id) {
            Value::Known(known) if known.origin == Origin::Found => Some((name, values, known.si)),
            _ => None,
        });
        for (name, values, wanted) in known {
            let pins = needs(values, entry.id);
            let si = reckon(entry.id, &pins);
            let near = si.as_ref().is_ok_and(|si| (si - wanted).abs() <= 1e-9 * wanted.abs());
            assert!(near, "{} of {name}: {si:?}, not {wanted}, from {pins:?}", entry.id);
        }
    }
}
