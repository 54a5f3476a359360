//! Published numbers, checked from outside: by the rules, as `reckon` finds them.
//!
//! Every table row carries its source. `recalled` rows quote a figure from memory of the work
//! named; `read` rows quote a text that was read. Tolerances cover the source's own rounding.
//! Where a source gives a force and asks for what a rule takes as given, the printed answer goes
//! in and the source's given number must come out.

mod air;
mod balance;
mod battery;
mod collision;
mod convection;
mod cooling_air;
mod engine;
mod geared_motor;
mod golden;
mod ground;
mod impact;
mod ledger;
mod motion;
mod motor;
mod practice;
mod pulse;
mod restitution;
mod runs;
mod spinning;
mod structure;
mod switch;
mod traction;
mod turning;
mod warming;
mod whole;
mod winding;
mod wire;
mod wire_table;

use std::collections::HashSet;

use heftwise::quantity::{AnyId, Measure};
use heftwise::rules::{Givens, evaluate};

/// Units by their definitions, written here so that the check does not lean on our own reader.
mod unit {
    pub const LBF: f64 = 4.4482216152605;
    pub const INCH: f64 = 0.0254;
    pub const FOOT: f64 = 0.3048;
    pub const PSI: f64 = LBF / (INCH * INCH);
    pub const KMH: f64 = 1.0 / 3.6;
    pub const MPH: f64 = 0.44704;
    pub const GN: f64 = 9.80665;
    pub const MS: f64 = 1e-3;
    pub const CM: f64 = 1e-2;
    pub const MICRO: f64 = 1e-6;
    pub const NANO: f64 = 1e-9;
    pub const MILLI: f64 = 1e-3;
    pub const KILO: f64 = 1e3;
    pub const MM2: f64 = 1e-6;
    pub const MINUTE: f64 = 60.0;
    pub const HOUR: f64 = 3600.0;
    pub const RPM: f64 = std::f64::consts::PI / 30.0;
    /// Zero on the Celsius scale, in kelvin.
    pub const CELSIUS: f64 = 273.15;
    pub const DEG: f64 = std::f64::consts::PI / 180.0;
    /// Straight down, as an approach angle.
    pub const DOWN: f64 = std::f64::consts::FRAC_PI_2;
}

/// One published number, in SI units.
enum Expect {
    /// The rules find it from what is given.
    Found(AnyId, f64),
}

/// One published case.
struct Case {
    id: &'static str,
    tolerance: f64,
    given: &'static [(AnyId, f64)],
    expect: &'static [Expect],
    source: &'static str,
    note: &'static str,
    from_memory: bool,
}

/// A case whose figures were read in the source.
const fn read(
    id: &'static str,
    tolerance: f64,
    given: &'static [(AnyId, f64)],
    expect: &'static [Expect],
    source: &'static str,
    note: &'static str,
) -> Case {
    Case { id, tolerance, given, expect, source, note, from_memory: false }
}

/// A case whose figures are quoted from memory of the source.
const fn recalled(
    id: &'static str,
    tolerance: f64,
    given: &'static [(AnyId, f64)],
    expect: &'static [Expect],
    source: &'static str,
    note: &'static str,
) -> Case {
    Case { id, tolerance, given, expect, source, note, from_memory: true }
}

/// A typed quantity from its SI number.
fn of<Q: Measure>(si: f64) -> Q {
    Q::from_si(si)
}

/// A number of a machine that is known by its parts alone: mass in kilograms, place in metres.
fn from_parts(parts: impl IntoIterator<Item = (f64, [f64; 3])>, id: AnyId) -> f64 {
    let list: String = parts
        .into_iter()
        .map(|(mass, [x, y, z])| {
            format!("[[parts]]\nname = \"s\"\nmass = \"{mass} kg\"\nat = [\"{x} m\", \"{y} m\", \"{z} m\"]\n")
        })
        .collect();
    let tally = crate::sheet_edit::sheet(&format!("format = 1\n{list}")).tally();
    evaluate(&tally.givens).si(id).unwrap()
}

/// The number the rules find, or what they say instead.
fn by_rules(given: &[(AnyId, f64)], id: AnyId) -> Result<f64, String> {
    let mut givens = Givens::default();
    given.iter().for_each(|(id, si)| givens.set(*id, *si));
    let values = evaluate(&givens);
    values.si(id).ok_or_else(|| format!("{:?}", values.of(id)))
}

fn misses(case: &Case) -> Vec<String> {
    let miss = |expect: &Expect| {
        let Expect::Found(id, wanted) = expect;
        let (name, got) = (id.name(), by_rules(case.given, *id));
        match got {
            Ok(got) if (got - wanted).abs() <= case.tolerance * wanted.abs() => None,
            got => Some(format!(
                "{}: {name} is {got:?}, published {wanted} within {}: {}",
                case.id, case.tolerance, case.source
            )),
        }
    };
    case.expect.iter().filter_map(miss).collect()
}

/// Every case of a table holds, and every row is fit to be cited.
fn check(cases: &[Case]) {
    let mut ids = HashSet::new();
    for case in cases {
        assert!(ids.insert(case.id), "{} stands twice", case.id);
        assert!(!case.source.is_empty() && !case.expect.is_empty(), "{} is bare", case.id);
        let recalled = [case.source, case.note].concat().contains("from memory");
        assert_eq!(recalled, case.from_memory, "{}: say so if it is from memory", case.id);
    }
    let misses: Vec<String> = cases.iter().flat_map(misses).collect();
    assert!(misses.is_empty(), "{}", misses.join("\n"));
}
