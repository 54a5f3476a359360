//! An edit changes its own line and no other byte of the file.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{ground, impact, machine, pressure, running_gear};
use heftwise::rules::catalogue::PAIRS;
use heftwise::sheet::{Axis, Edit, EditRefused, Part, PartField, Sheet, demo, presets};

pub const SAMPLE: &str = include_str!("../samples/build-format-1.toml");

pub fn sheet(text: &str) -> Sheet {
    Sheet::read(text).unwrap_or_else(|error| panic!("{error}\n{text}"))
}

pub fn set(id: impl Into<AnyId>, text: &str) -> Edit {
    Edit::Set { id: id.into(), text: text.to_owned() }
}

fn clear(id: impl Into<AnyId>) -> Edit {
    Edit::Clear { id: id.into() }
}

fn after(text: &str, edit: &Edit) -> String {
    let mut sheet = sheet(text);
    sheet.apply(edit).unwrap_or_else(|why| panic!("{edit:?}: {why}\n{text}"));
    sheet.text().to_owned()
}

/// The edit turns `before` into the sample with `from`, which stands in it once, replaced.
fn changes(edit: &Edit, from: &str, to: &str) {
    assert_eq!(SAMPLE.matches(from).count(), 1, "{from:?} has to stand in the sample once");
    let expected = SAMPLE.replace(from, to);
    assert_eq!(after(SAMPLE, edit), expected, "{edit:?}");
    // The same file with the line ends of other systems and a byte order mark.
    let dos = |text: &str| format!("\u{feff}{}", text.replace('\n', "\r\n"));
    assert_eq!(after(&dos(SAMPLE), edit), dos(&expected), "{edit:?} with \\r\\n");
}

#[test]
fn the_sample_of_format_1_reads_as_it_always_did() {
    let sheet = sheet(SAMPLE);
    assert_eq!(sheet.text(), SAMPLE);
    assert_eq!(sheet.name(), "Sample of format 1");
    assert_eq!(sheet.note(), "Every kind of entry, once.");
    assert_eq!(sheet.number(machine::SLOPE), Some("5°"));
    assert_eq!(sheet.number(machine::GRAVITY), Some("9.81 m/s²"));
    assert_eq!(sheet.number(running_gear::TRACK_WIDTH), Some("90 mm"));
    assert_eq!(sheet.number(impact::PULSE_FACTOR), Some("1.57"));
    assert_eq!(sheet.numbers().count(), 5);
    let names: Vec<_> = sheet.parts().iter().map(|part| part.name.as_str()).collect();
    assert_eq!(names, ["battery", "chassis", "bolts"]);
    assert_eq!(sheet.parts()[1].at, Some(["0 mm", "0 mm", "40 mm"].map(String::from)));
    assert_eq!(sheet.trial().map(|trial| trial.mass.as_str()), Some("+200 g"));
    assert!(!sheet.is_read_only());
}

#[test]
fn what_is_unknown_is_reported_with_its_line_and_kept() {
    let said: Vec<String> = sheet(SAMPLE).reports().iter().map(ToString::to_string).collect();
    let starts = [
        "line 14, column 1: `shoe-colour`",
        "line 17, column 1:",
        "line 23, column 1: `bought`",
        "line 35, column 10: `steel`",
        "line 46, column 2: `shed`",
    ];
    assert_eq!(said.len(), starts.len(), "{said:#?}");
    for (said, start) in said.iter().zip(starts) {
        assert!(said.starts_with(start), "{said:?} should start with {start:?}");
    }
}

#[test]
fn a_number_changes_where_it_stands() {
    changes(&set(running_gear::TRACK_WIDTH, "120 mm"), "\"90 mm\"", "\"120 mm\"");
    changes(&set(machine::SLOPE, "7°"), "slope = \"5°\" # m", "slope = \"7°\" # m");
    changes(&set(machine::GRAVITY, "9.8 m/s²"), "'9.81 m/s²'", "\"9.8 m/s²\"");
    changes(&set(impact::PULSE_FACTOR, "2"), "1.57", "\"2\"");
    changes(&set(machine::SLOPE, "a \"steep\" \\ one"), "\"5°\"", r#""a \"steep\" \\ one""#);
}

#[test]
fn a_new_number_goes_to_the_table_of_its_topic() {
    let gravity = "\"gravity\" = '9.81 m/s²'\n";
    changes(
        &set(machine::CG_HEIGHT, "70 mm"),
        gravity,
        &format!("{gravity}cg-height = \"70 mm\"\n"),
    );
    changes(
        &set(ground::HOLDING_PRESSURE, "3 kPa"),
        "[impact]\n",
        "[ground]\nholding-pressure = \"3 kPa\"\n\n[impact]\n",
    );
    changes(
        &set(pressure::GROUND_PRESSURE, "1 kPa"),
        "[impact]\n",
        "[pressure]\nground-pressure = \"1 kPa\"\n\n[impact]\n",
    );
}

#[test]
fn clearing_takes_the_line_and_leaves_comments_above() {
    changes(&clear(running_gear::CONTACT_LENGTH), "contact-length = \"420 mm\"\n", "");
    changes(&clear(machine::SLOPE), "slope = \"5°\" # measured with a phone\n", "");
    assert_eq!(after(SAMPLE, &clear(impact::DROP_HEIGHT)), SAMPLE);
    assert_eq!(after(SAMPLE, &set(machine::SLOPE, "  ")), after(SAMPLE, &clear(machine::SLOPE)));
}

#[test]
fn name_and_note_change_where_they_stand() {
    changes(&Edit::Name("Other".to_owned()), "\"Sample of format 1\"", "\"Other\"");
    changes(
        &Edit::Note("two\nlines".to_owned()),
        "\"Every kind of entry, once.\"",
        r#""two\nlines""#,
    );
    changes(&Edit::Note(String::new()), "note = \"Every kind of entry, once.\"\n", "");
    let named = after("# mine\n[machine]\n", &Edit::Name("A".to_owned()));
    assert_eq!(named, "name = \"A\"\n# mine\n[machine]\n");
}

#[test]
fn parts_change_where_they_stand() {
    let field = |index, field, text: &str| Edit::SetPart { index, field, text: text.to_owned() };
    changes(&field(0, PartField::Mass, "0.5 kg"), "\"412 g\"", "\"0.5 kg\"");
    changes(&field(2, PartField::Name, "nuts"), "\"bolts\"", "\"nuts\"");
    changes(
        &field(1, PartField::At(Axis::Forward), "-5 mm"),
        "\"0 mm\",   # in the middle",
        "\"-5 mm\",   # in the middle",
    );
    changes(
        &field(2, PartField::At(Axis::Up), "90 mm"),
        "mass = \"5 g\"\n",
        "mass = \"5 g\"\nat = [\"0 mm\", \"0 mm\", \"90 mm\"]\n",
    );
    changes(&Edit::UnplacePart { index: 0 }, "at = [\"60 mm\", \"0 mm\", \"55 mm\"]\n", "");
    let bolts = "[[parts]]\nname = \"bolts\"\nmass = \"5 g\"\n";
    changes(&Edit::DuplicatePart { index: 2 }, bolts, &format!("{bolts}\n{bolts}"));
    changes(&Edit::RemovePart { index: 2 }, &format!("{bolts}\n"), "");
    let new = Part { name: "arm".into(), mass: "90 g".into(), at: None };
    changes(
        &Edit::AddPart(new),
        bolts,
        &format!("{bolts}\n[[parts]]\nname = \"arm\"\nmass = \"90 g\"\n"),
    );
}

#[test]
fn a_part_moves_with_its_comments_and_what_is_unknown_in_it() {
    let blocks = |order: [&str; 3]| order.join("\n\n");
    let at = |from: &str, to: &str| {
        let start = SAMPLE.find(from).unwrap();
        SAMPLE[start..start + SAMPLE[start..].find(to).unwrap()].trim_end()
    };
    let battery = at("[[parts]]\nname = \"battery\"", "# the heavy one");
    let chassis = at("# the heavy one", "[[parts]]\nname = \"bolts\"");
    let bolts = at("[[parts]]\nname = \"bolts\"", "[trial-mass]");
    let old = blocks([battery, chassis, bolts]);
    let step = |from, to| Edit::MovePart { from, to };
    changes(&step(0, 2), &old, &blocks([chassis, bolts, battery]));
    changes(&step(2, 0), &old, &blocks([bolts, battery, chassis]));
    changes(&step(1, 0), &old, &blocks([chassis, battery, bolts]));
    changes(&step(1, 1), &old, &old);
    changes(&Edit::RemovePart { index: 1 }, &old, &format!("{battery}\n\n{bolts}"));
}

#[test]
fn the_trial_mass_comes_and_goes() {
    let at = Some(["1 mm", "2 mm", "3 mm"].map(String::from));
    let trial = |mass: &str, at| Edit::SetTrial { mass: mass.to_owned(), at };
    changes(
        &trial("-0.3 kg", at.clone()),
        "\"+200 g\"\nat = [\"100 mm\", \"0 mm\", \"80 mm\"]",
        "\"-0.3 kg\"\nat = [\"1 mm\", \"2 mm\", \"3 mm\"]",
    );
    changes(
        &trial("-0.3 kg", None),
        "\"+200 g\"\nat = [\"100 mm\", \"0 mm\", \"80 mm\"]\n",
        "\"-0.3 kg\"\n",
    );
    changes(
        &Edit::ClearTrial,
        "[trial-mass]\nmass = \"+200 g\"\nat = [\"100 mm\", \"0 mm\", \"80 mm\"]\n\n",
        "",
    );
    let bare = "format = 1\n\n[[parts]]\nname = \"a\"\nmass = \"1 kg\"";
    let with = after(bare, &trial("+1 g", at));
    assert_eq!(
        with,
        format!("{bare}\n\n[trial-mass]\nmass = \"+1 g\"\nat = [\"1 mm\", \"2 mm\", \"3 mm\"]\n")
    );
    assert_eq!(after(&with, &Edit::ClearTrial), format!("{bare}\n"));
}

#[test]
fn other_ways_to_lay_out_a_file_are_kept_too() {
    let cases = [
        (
            "machine = { mass = \"6 kg\" }\n",
            set(machine::MASS, "7 kg"),
            "machine = { mass = \"7 kg\" }\n",
        ),
        (
            "machine = { mass = \"6 kg\" }\n",
            set(machine::SLOPE, "1°"),
            "machine = { mass = \"6 kg\", slope = \"1°\" }\n",
        ),
        ("machine = {}\n", set(machine::SLOPE, "1°"), "machine = { slope = \"1°\" }\n"),
        (
            "machine = { mass = \"6 kg\", slope = \"1°\" }",
            clear(machine::MASS),
            "machine = { slope = \"1°\" }",
        ),
        (
            "machine = { mass = \"6 kg\", slope = \"1°\" }",
            clear(machine::SLOPE),
            "machine = { mass = \"6 kg\" }",
        ),
        (
            "machine.mass = \"6 kg\" # dotted\n",
            set(machine::SLOPE, "1°"),
            "machine.mass = \"6 kg\" # dotted\nmachine.slope = \"1°\"\n",
        ),
        (
            "machine.mass = \"6 kg\"\nmachine.slope = \"1°\"",
            clear(machine::MASS),
            "machine.slope = \"1°\"",
        ),
        ("mass = \"6 kg\"", set(machine::MASS, "7 kg"), "mass = \"7 kg\""),
        (
            "mass = \"6 kg\"",
            set(machine::SLOPE, "1°"),
            "mass = \"6 kg\"\n\n[machine]\nslope = \"1°\"\n",
        ),
        ("[ground]\nmass = \"6 kg\"\n", clear(machine::MASS), "[ground]\n"),
        (
            "[machine.old]\na = 1\n",
            set(machine::MASS, "7 kg"),
            "[machine.old]\na = 1\n\n[machine]\nmass = \"7 kg\"\n",
        ),
        ("mass = \"1 kg\"\n[machine]\nmass = \"6 kg\"\n", clear(machine::MASS), "[machine]\n"),
        (
            "mass = \"1 kg\"\n[machine]\nmass = \"6 kg\"\n",
            set(machine::MASS, "7 kg"),
            "mass = \"1 kg\"\n[machine]\nmass = \"7 kg\"\n",
        ),
        (
            "parts = [{ name = \"a\", mass = \"1 g\" }]\n",
            Edit::SetPart { index: 0, field: PartField::Mass, text: "2 g".into() },
            "parts = [{ name = \"a\", mass = \"2 g\" }]\n",
        ),
        ("trial-mass = { mass = \"1 g\" }\n", Edit::ClearTrial, ""),
        ("trial-mass.mass = \"1 g\"\n", Edit::ClearTrial, ""),
        ("", set(machine::MASS, "7 kg"), "[machine]\nmass = \"7 kg\"\n"),
        (
            "a = \"\"\"\n[machine]\n\"\"\"\r\n\n",
            set(machine::MASS, "7 kg"),
            "a = \"\"\"\n[machine]\n\"\"\"\r\n\r\n[machine]\r\nmass = \"7 kg\"\r\n\n",
        ),
    ];
    for (before, edit, expected) in cases {
        assert_eq!(after(before, &edit), expected, "{edit:?} in {before:?}");
    }
}

#[test]
fn what_cannot_be_written_is_refused_in_words_and_changes_nothing() {
    let refused = |text: &str, edit: &Edit| {
        let mut sheet = sheet(text);
        let why = sheet.apply(edit).expect_err(text);
        assert_eq!(sheet.text(), text);
        why
    };
    let missing = Edit::RemovePart { index: 3 };
    assert_eq!(refused(SAMPLE, &missing), EditRefused::NoSuchPart { index: 3, count: 3 });
    let inline = "parts = [{ name = \"a\", mass = \"1 g\" }]";
    assert!(matches!(refused(inline, &Edit::RemovePart { index: 0 }), EditRefused::Layout(_)));
    assert!(matches!(refused("machine = 3", &set(machine::MASS, "1 kg")), EditRefused::Layout(_)));
    let long = Edit::Note("x".repeat(1 << 20));
    assert_eq!(refused(SAMPLE, &long), EditRefused::TooLarge);
    let mut parts = sheet("[[parts]]\nmass = \"1 kg\"");
    let why = parts.apply(&set(machine::MASS, "heavy")).unwrap_err();
    assert!(matches!(why, EditRefused::Number(_)), "{why}");
}

#[test]
fn of_two_ways_to_say_one_thing_the_last_said_counts() {
    for pair in PAIRS {
        for (first, second) in [(pair.one, pair.other), (pair.other, pair.one)] {
            let mut sheet = Sheet::blank();
            sheet.apply(&set(first, "0.2")).unwrap();
            sheet.apply(&set(second, "0.3")).unwrap();
            assert_eq!((sheet.number(first), sheet.number(second)), (None, Some("0.3")));
        }
    }
}

#[test]
fn a_row_of_presets_fills_in_its_numbers() {
    for table in presets::tables() {
        for row in &table.rows {
            let mut sheet = sheet(SAMPLE);
            sheet.apply(&row.edit()).unwrap();
            for (id, text) in &row.values {
                assert_eq!(sheet.number(*id), Some(text.as_str()), "{} {}", table.id, row.id);
            }
            assert_eq!(presets::find(table.id, &row.id), Some(row));
            assert_eq!(sheet.tally().problems, [], "{} {}", table.id, row.id);
        }
    }
    assert!(presets::find("ground", "no such row").is_none());
    assert!(presets::tables().len() >= 2);
}

#[test]
fn the_demo_builds_have_nothing_to_report() {
    for shown in demo::ALL {
        let sheet = sheet(shown.text);
        assert_eq!(sheet.reports(), [], "{}", shown.id);
        let tally = sheet.tally();
        assert_eq!(tally.problems, [], "{}", shown.id);
        assert_eq!(tally.cautions, [], "{}", shown.id);
        assert_eq!(demo::find(shown.id), Some(shown));
    }
}
