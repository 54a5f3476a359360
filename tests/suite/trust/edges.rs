//! Numbers at the edge of what a computer holds end in words or in a finite number.

use heftwise::quantity::{Units, catalogue, field_text, parse, show_plain, units_of};
use heftwise::rules::{Givens, evaluate};
use heftwise::sheet::Sheet;
use heftwise::study::{Outcome, walk_round};

/// Zeros, the largest, the smallest normal and the smallest number (IEEE 754 binary64).
const EDGES: [f64; 10] =
    [0.0, -0.0, 1e308, -1e308, f64::MAX, f64::MIN_POSITIVE, 5e-324, -5e-324, 1e-310, 1e154];

#[test]
fn a_number_at_the_edge_reads_shows_and_reads_again() {
    for entry in catalogue::all() {
        let unit = units_of(entry).first().map_or("", |unit| unit.symbol);
        for edge in EDGES {
            let text = format!("{edge:e} {unit}");
            match parse(&text, entry) {
                Ok(amount) => {
                    assert!(amount.si.is_finite(), "{text} as {}", entry.id.name());
                    for shown in [
                        show_plain(entry, amount.si),
                        field_text(entry, amount.si, &Units::default()),
                    ] {
                        assert!(!shown.is_empty(), "{text}");
                        assert!(!shown.contains("NaN") && !shown.contains("inf"), "{shown}");
                    }
                }
                Err(error) => assert!(!error.to_string().is_empty(), "{text}"),
            }
        }
    }
}

/// Every given number at an edge, alone and all together: every found number is finite or has words.
#[test]
fn rules_at_the_edges_find_a_number_or_say_why_not() {
    let demo = Sheet::read(heftwise::sheet::demo::find("sandpiper").unwrap().text).unwrap();
    let usual = demo.tally().givens;
    let all: Vec<_> = catalogue::all().iter().map(|entry| entry.id).collect();
    let check = |givens: &Givens, what: &str| {
        let values = evaluate(givens);
        for id in &all {
            assert!(values.si(*id).is_none_or(f64::is_finite), "{what}: {}", id.name());
        }
    };
    for edge in EDGES {
        let mut every = usual.clone();
        for id in &all {
            if usual.get(*id).is_some() {
                every.set(*id, edge);
            }
        }
        check(&every, &format!("all {edge:e}"));
    }
    for edge in [0.0, -0.0, 1e308, 5e-324] {
        for id in &all {
            if usual.get(*id).is_some() {
                let mut one = usual.clone();
                one.set(*id, edge);
                check(&one, &format!("{} = {edge:e}", id.name()));
            }
        }
    }
}

#[test]
fn a_build_of_edges_goes_through_the_walk_round() {
    for edge in ["0", "-0", "1e308", "5e-324", "-1e308"] {
        let text = heftwise::sheet::demo::find("sandpiper").unwrap().text;
        let mut lines = Vec::new();
        for line in text.lines() {
            match line.split_once(" = \"") {
                Some((name, rest)) if rest.starts_with(|c: char| c.is_ascii_digit()) => {
                    let value = rest.split('"').next().unwrap_or("");
                    let unit = value.trim_start_matches(|c: char| !c.is_alphabetic() && c != '°');
                    lines.push(format!("{name} = \"{edge} {unit}\""));
                }
                _ => lines.push(line.to_owned()),
            }
        }
        let sheet = Sheet::read(&lines.join("\n")).unwrap();
        let tally = sheet.tally();
        for finding in walk_round(&Outcome::of(tally.givens, &tally.spreads, 1)) {
            let told = format!("{finding:?}");
            assert!(!told.contains("NaN"), "{told}");
        }
    }
}
