//! `list rules` with what stands behind each rule, and `reckon` with where its doubt comes from.

use heftwise::rules::{catalogue, checks};

use super::commands::{ends_with, json};

#[test]
fn every_rule_shows_its_checks() {
    let all = json(&["list", "rules", "--json"]);
    for (rule, listed) in catalogue::all().iter().zip(all.as_array().unwrap()) {
        let checks = checks::of(rule.finds);
        assert_eq!(listed["published_checks"], checks.published, "{listed}");
        assert_eq!(listed["derived_checks"], checks.derived, "{listed}");
        assert_eq!(listed["worst_deviation"].is_null(), checks.own() == 0, "{listed}");
        assert_eq!(listed["unchecked_because"].is_null(), checks.own() > 0, "{listed}");
    }
    let rules = ends_with(0, &["list", "rules"]);
    let checked = rules.lines().filter(|line| line.trim_start().starts_with("checks")).count();
    assert_eq!(checked, catalogue::all().len());
    assert!(rules.contains("none of its own; A margin"), "{rules}");
}

#[test]
fn the_rules_are_a_page_of_markdown() {
    let page = ends_with(0, &["list", "rules", "--page"]);
    assert!(page.starts_with("# The rules\n"));
    let headed = page.lines().filter(|line| line.starts_with("### ")).count();
    assert_eq!(headed, catalogue::all().len());
    for part in ["- Holds: ", "- Source: ", "- Checks: "] {
        assert_eq!(page.lines().filter(|line| line.starts_with(part)).count(), headed, "{part}");
    }
    assert!(ends_with(2, &["list", "lessons", "--page"]).contains("--page"));
}

/// JCGM 100:2008, 5.1.2: of two independent doubts the squares add up, so a 3 % and a 4 % doubt of
/// two factors make one of 5 %, 36 and 64 % of it theirs.
#[test]
fn the_doubt_is_shared_out() {
    let asked = ["reckon", "weight", "mass=100 ± 3 kg", "gravity=10 ± 0.4 m/s²"];
    let answer = json(&[&asked[..], &["--json"]].concat());
    let doubt = answer["doubt"].as_array().unwrap();
    let of = |place: usize, field: &str| doubt[place][field].as_f64().unwrap();
    assert_eq!([&doubt[0]["quantity"], &doubt[1]["quantity"]], ["gravity", "mass"]);
    assert!((of(0, "share") - 0.64).abs() < 1e-9 && (of(1, "share") - 0.36).abs() < 1e-9);
    assert!((of(0, "half_width") - 40.0).abs() < 1e-9);
    let told = ends_with(0, &[&asked[..], &["--working"]].concat());
    assert!(told.contains("the doubt comes from: gravity 64 %, mass 36 %"), "{told}");
}
