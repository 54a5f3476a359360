//! How many published numbers stand behind each rule, and how far off the worst is: the table that
//! ships, held to the cases here.
//!
//! `HEFTWISE_WRITE_CHECKS=1 cargo test --test suite published::ledger` writes it anew.

use std::collections::BTreeMap;
use std::path::Path;

use heftwise::quantity::AnyId;
use heftwise::rules::{Givens, Origin, Values, catalogue, checks, evaluate};

use super::{Case, Expect};

/// Every table of cases.
const TABLES: &[&[Case]] = &[
    super::air::AIR,
    super::balance::LOADS,
    super::balance::ENDS,
    super::balance::SIDES,
    super::battery::BATTERIES,
    super::collision::COLLISIONS,
    super::collision::DROPS,
    super::collision::TESTED,
    super::convection::STILL_AIR,
    super::convection::MOVING_AIR,
    super::convection::RADIATION_AND_FINS,
    super::engine::PART_LOAD,
    super::engine::GROWTH,
    super::geared_motor::THROUGH_GEARS,
    super::ground::CASES,
    super::impact::BY_TIME,
    super::impact::BY_DISTANCE,
    super::impact::BRAKING,
    super::impact::SPRINGS,
    super::motion::DRAG,
    super::motion::FORCE_AND_POWER,
    super::motion::GRIP,
    super::motor::LINE,
    super::motor::WORK,
    super::practice::CASES,
    super::pulse::CASES,
    super::restitution::CASES,
    super::runs::RUNS,
    super::runs::STOPS,
    super::runs::ROTATING,
    super::runs::LOAD_SHIFT_DRIVE,
    super::spinning::SPEEDING_UP,
    super::spinning::SPINNING,
    super::structure::CANTILEVERS,
    super::structure::SUPPORTED,
    super::structure::RODS,
    super::structure::bolt::AREAS,
    super::structure::bolt::SCATTER,
    super::structure::bolt::LOADS,
    super::structure::bolt::SHEAR_AND_TORQUE,
    super::structure::bolt::SLIP,
    super::structure::material::STRONG,
    super::structure::material::STIFF,
    super::structure::material::RANKING,
    super::structure::material::PRINTED,
    super::structure::section::BUILT_UP,
    super::structure::section::ROUND_TUBES,
    super::structure::section::BOX_TUBES,
    super::switch::SWITCHES,
    super::traction::friction::CASES,
    super::traction::indices::CASES,
    super::traction::plates::CASES,
    super::traction::shear_test::CASES,
    super::traction::snow::CASES,
    super::traction::thrown::CASES,
    super::traction::thrust::CASES,
    super::turning::CURVES,
    super::turning::STEERING,
    super::turning::INERTIAS,
    super::warming::LUMPS,
    super::warming::SUN,
    super::warming::CHAINS,
    super::whole::SPIRAL,
    super::whole::RANGES,
    super::whole::SCALING,
    super::whole::TRIPS,
    super::winding::WINDINGS,
    super::winding::BRAKES,
    super::wire::WIRES,
];

const FILE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/assets/checks.toml");

/// What the cases say of one rule.
#[derive(Default)]
struct Tally {
    published: u32,
    recalled: u32,
    derived: u32,
    on_the_way: u32,
    worst: f64,
}

/// Whether the answer was worked out for the check, by the formula and by hand, from figures that are
/// published or chosen: so the case's own words say.
fn derived(case: &Case) -> bool {
    let words = [case.source, " ", case.note].concat().to_lowercase();
    [
        "derived",
        "chosen for this check",
        "computed for this check",
        "worked for this check",
        "reckoned from printed inputs",
        "not printed there",
    ]
    .iter()
    .any(|sign| words.contains(sign))
}

/// The rules that ran to find a quantity, itself first.
fn behind(id: AnyId, values: &Values, rules: &mut Vec<AnyId>) {
    if values.origin(id) != Some(Origin::Found) || rules.contains(&id) {
        return;
    }
    rules.push(id);
    for need in catalogue::finder(id).into_iter().flat_map(|rule| &rule.needs) {
        behind(need.id, values, rules);
    }
}

fn tally() -> BTreeMap<&'static str, Tally> {
    let mut tallies = BTreeMap::<&str, Tally>::new();
    for case in TABLES.iter().copied().flatten() {
        let mut givens = Givens::default();
        case.given.iter().for_each(|(id, si)| givens.set(*id, *si));
        let values = evaluate(&givens);
        for Expect::Found(id, wanted) in case.expect {
            let mut rules = Vec::new();
            behind(*id, &values, &mut rules);
            for on_the_way in rules.iter().skip(1) {
                tallies.entry(on_the_way.name()).or_default().on_the_way += 1;
            }
            let Some(got) = values.si(*id) else { continue };
            let tally = tallies.entry(id.name()).or_default();
            if derived(case) {
                tally.derived += 1;
            } else {
                tally.published += 1;
                tally.recalled += u32::from(case.from_memory);
            }
            if *wanted != 0.0 {
                tally.worst = tally.worst.max((got / wanted - 1.0).abs());
            }
        }
    }
    tallies
}

/// The table as it should stand; deviations in two figures, so that it is the same everywhere.
fn table() -> String {
    let mut text = "# How many published numbers each rule finds, how many of these are quoted from memory, how many\n\
                    # more were worked out by hand for the check, how many others it is on the way to, and how\n\
                    # far off the worst is, as a share. Written by the test published::ledger.\n\n"
        .to_owned();
    for (name, Tally { published, recalled, derived, on_the_way, worst }) in tally() {
        let worst = if worst < 1e-6 { 0.0 } else { worst };
        text += &format!(
            "{name} = {{ published = {published}, recalled = {recalled}, derived = {derived}, on-the-way = {on_the_way}, worst = {worst:.1e} }}\n"
        );
    }
    text
}

#[test]
fn the_table_that_ships_is_what_the_cases_say() {
    let table = table();
    if std::env::var_os("HEFTWISE_WRITE_CHECKS").is_some() {
        std::fs::write(FILE, &table).unwrap();
    }
    let stands = std::fs::read_to_string(FILE).unwrap();
    assert!(
        stands == table,
        "assets/checks.toml is stale: HEFTWISE_WRITE_CHECKS=1 cargo test --test suite published::ledger"
    );
}

/// Deviations are what was tolerated, or less, and nothing is said of a rule that is not there.
#[test]
fn every_row_is_of_a_rule() {
    for rule in catalogue::all() {
        let checks = checks::of(rule.finds);
        assert!(
            checks.worst.is_none_or(|worst| worst < 0.3),
            "{} is off by {checks:?}",
            rule.finds
        );
        assert_eq!(checks.worst.is_some(), checks.own() > 0, "{}", rule.finds);
        assert!(checks.recalled <= checks.published, "{}", rule.finds);
    }
    let found = |name: &str| catalogue::all().iter().any(|rule| rule.finds.name() == name);
    for name in checks::names() {
        assert!(found(name), "no rule finds {name}");
    }
}

/// A rule has a check against a number, or the table of reasons says why it has none; never both.
#[test]
fn every_rule_is_checked_or_says_why_not() {
    let mut amiss = Vec::new();
    for rule in catalogue::all() {
        let checks = checks::of(rule.finds);
        match (checks.own(), checks.reason) {
            (0, None) => amiss.push(format!("{}: neither a check nor a reason", rule.finds)),
            (1.., Some(_)) => amiss.push(format!("{}: checked, and a reason as well", rule.finds)),
            _ => {}
        }
        assert!(!rule.source.is_empty(), "{} has no source", rule.finds);
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
}

/// No table of cases is forgotten above.
#[test]
fn every_table_of_cases_counts() {
    fn tables(folder: &Path) -> usize {
        let entries = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
        entries
            .map(|path| match path.is_dir() {
                true => tables(&path),
                false => std::fs::read_to_string(&path)
                    .unwrap()
                    .lines()
                    .filter(|line| {
                        line.starts_with("pub(crate) const ") && line.contains("[Case] =")
                    })
                    .count(),
            })
            .sum()
    }
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/suite/published");
    assert_eq!(tables(&folder), TABLES.len());
}
