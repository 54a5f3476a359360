//! Whatever a build file holds besides numbers, an edit leaves every other line as it was typed.

use heftwise::quantity::{catalogue, units_of};
use heftwise::rules::catalogue::PAIRS;
use heftwise::sheet::{Edit, Sheet};
use proptest::prelude::*;

/// Lines of a table as people type them: numbers, odd spacing, comments, names nobody knows.
fn line() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec![
        "track-width    = \"90 mm\"",
        "  contact-length = \"420,0 mm ± 5 %\" # worn",
        "\"track-count\" = 2",
        "wheelbase-like = \"3 ft 5 in\"",
        "rolling-coefficient = '0.25 ± 0.05'",
        "# a line of its own: \"quotes\" = and [brackets]",
        "",
        "shoe-colour = \"yellow\"   ",
        "list = [1, 2,\t3]",
        "when = 2024-05-03",
        "\tnested.key = { a = \"b\" }",
    ])
}

fn file() -> impl Strategy<Value = String> {
    let tables = ["running-gear", "shed", "boat-house"];
    (prop::collection::vec(prop::collection::vec(line(), 0..7), 3), any::<bool>()).prop_map(
        move |(bodies, dos)| {
            let mut text = "format = 1\n# kept\nname = \"Any\"\n".to_owned();
            for (table, mut lines) in tables.iter().zip(bodies) {
                // A name stands once in a table.
                let mut seen: Vec<&str> = Vec::new();
                lines.retain(|line| {
                    let name = line.split('=').next().unwrap_or("").trim();
                    let fresh =
                        line.trim().is_empty() || name.starts_with('#') || !seen.contains(&name);
                    seen.push(name);
                    fresh
                });
                text += &format!("\n[{table}] # {table}\n{}\n", lines.join("\n"));
            }
            if dos { text.replace('\n', "\r\n") } else { text }
        },
    )
}

proptest! {
    #[test]
    fn an_edit_leaves_every_other_line_as_it_was_typed(
        text in file(),
        edits in prop::collection::vec((prop::sample::select(catalogue::all().to_vec()), "[1-9]{1,3}"), 1..5),
    ) {
        let mut sheet = Sheet::read(&text).unwrap();
        prop_assert_eq!(sheet.text(), &text);
        let mut named = Vec::new();
        for (entry, digits) in edits {
            let unit = units_of(&entry).first().map_or("", |unit| unit.symbol);
            let edit = Edit::Set { id: entry.id, text: format!("{digits} {unit}").trim().to_owned() };
            if sheet.apply(&edit).is_ok() {
                named.push(entry.id.name());
            }
        }
        let mut now = sheet.text().lines();
        for line in text.lines() {
            let name = line.split('=').next().unwrap_or("").trim().trim_matches('"');
            // A number that was set anew, or its partner, which gives way to it, may change.
            if named.contains(&name) || named.iter().any(|set| are_partners(set, name)) {
                continue;
            }
            prop_assert!(now.any(|kept| kept == line), "{:?} is gone:\n{}", line, sheet.text());
        }
        prop_assert_eq!(Sheet::read(sheet.text()).unwrap(), sheet);
    }
}

fn are_partners(set: &str, name: &str) -> bool {
    PAIRS.iter().any(|pair| {
        let (one, other) = (pair.one.name(), pair.other.name());
        [(one, other), (other, one)].contains(&(set, name))
    })
}
