//! Broken and odd files: where, what was expected, how to mend it; nothing is lost.

use heftwise::quantity::catalogue::machine::MASS;
use heftwise::sheet::{Edit, EditRefused, Place, Sheet};

use crate::sheet_edit::{SAMPLE, set, sheet};

#[test]
fn a_text_that_is_no_toml_says_where_and_how_to_mend_it() {
    let cases = [
        ("[machine]\nmass = 6.4 kg\n", "line 2, column", "mass = \"6.4 kg\""),
        ("[machine]\nmass 6.4\n", "line 2, column", "name = \"value\""),
        ("[machine\nmass = \"6 kg\"\n", "line 1, column", "[machine]"),
        ("[machine]\nmass = \"6 kg\n", "line 2, column", "mass = \"6 kg\""),
        ("[machine]\nmass = “6 kg”\n", "line 2, column 8", "straight quotes"),
        ("[machine]\nmass = \"6 kg\"\nmass = \"7 kg\"\n", "line 3, column 1", "keep one"),
        ("[machine]\n\n[machine]\n", "line 3, column", "keep one"),
        ("[[parts]]\nat = [\"1 mm\" \"2 mm\"]\n", "line 2, column 14", "commas"),
        ("name = \"a\\qb\"\n", "line 1, column", "backslash"),
        ("\u{feff}ok = 1\r\nnot ok\r\n", "line 2, column", "name = \"value\""),
    ];
    for (text, place, mend) in cases {
        let error = Sheet::read(text).expect_err(text);
        let said = error.to_string();
        assert!(said.starts_with(place), "{said:?} should start with {place:?}");
        assert!(error.mend.contains(mend), "{said:?} should hold {mend:?}");
    }
}

#[test]
fn odd_entries_are_reported_in_words_and_kept() {
    let cases = [
        ("machine = 3", "line 2, column 1: `machine` has to be a table"),
        ("[machine]\nmass = 6.4", "line 3, column 1: Put the number in quotes"),
        ("[machine]\nmass = true", "line 3, column 1: The mass has to be a number"),
        (
            "[machine]\nmas = \"6 kg\"",
            "line 3, column 1: `mas` is no name that Heftwise knows; it is kept as it stands and not used. Did you mean `mass`?",
        ),
        (
            "[machin]\nmass = \"6 kg\"",
            "line 2, column 2: `machin` is no name that Heftwise knows; it is kept as it stands and not used. Did you mean `machine`?",
        ),
        ("[ground]\nmass = \"6 kg\"", "line 3, column 1: `mass` belongs under [machine]"),
        (
            "mass = \"5 kg\"\n[machine]\nmass = \"6 kg\"",
            "line 2, column 1: `mass` belongs under [machine]",
        ),
        ("parts = \"many\"", "line 2, column 1: The parts have to be tables"),
        ("[[parts]]\nname = \"a\"", "line 2, column 1: This part has no mass."),
        (
            "[[parts]]\nmass = \"1 g\"\nat = [\"1 mm\"]",
            "line 4, column 1: A place has to be three lengths",
        ),
        (
            "[[parts]]\nmass = \"1 g\"\nmas = \"2 g\"",
            "line 4, column 1: `mas` is nothing that Heftwise knows of a part",
        ),
        ("trial-mass = \"+1 g\"", "line 2, column 1: The trial mass has to be a table"),
        ("name = 3.5", ""),
        ("note = [1]", "line 2, column 1: The note has to be text."),
    ];
    for (text, said) in cases {
        let text = format!("format = 1\n{text}\n");
        let sheet = sheet(&text);
        assert_eq!(sheet.text(), text);
        let first = sheet.reports().first().map(ToString::to_string).unwrap_or_default();
        assert!(first.starts_with(said), "{first:?} should start with {said:?}");
        assert_eq!(first.is_empty(), said.is_empty(), "{text}: {first}");
    }
}

#[test]
fn the_number_in_its_own_table_counts_whichever_comes_first() {
    let both = sheet("mass = \"5 kg\"\n[machine]\nmass = \"6 kg\"\n");
    assert_eq!(both.number(MASS), Some("6 kg"));
    let both = sheet("[machine]\nmass = \"6 kg\"\n[ground]\nmass = \"5 kg\"\n");
    assert_eq!(both.number(MASS), Some("6 kg"));
    assert!(both.reports().iter().any(|report| report.message.contains("more than once")));
}

#[test]
fn a_missing_or_odd_format_is_read_as_the_first() {
    for text in ["name = \"a\"\n", "format = \"one\"\n", "format = 0\n", "format = 1.5\n"] {
        let mut sheet = sheet(text);
        assert!(sheet.reports()[0].message.contains("read as format 1"), "{text}");
        sheet.apply(&set(MASS, "1 kg")).unwrap();
        assert!(sheet.text().starts_with(text), "{text}");
    }
}

#[test]
fn a_newer_format_is_open_for_reading_alone() {
    let text = SAMPLE.replace("format = 1\n", "format = 2\n") + "\n[brand-new]\nx = [1, 2]\n";
    let mut newer = sheet(&text);
    assert!(newer.is_read_only());
    assert!(newer.reports().iter().any(|report| report.message.contains("format 2")));
    assert_eq!(newer.apply(&set(MASS, "1 kg")), Err(EditRefused::ReadOnly));
    assert_eq!(newer.apply(&Edit::ClearTrial), Err(EditRefused::ReadOnly));
    assert_eq!(newer.text(), text);
}

#[test]
fn a_number_that_cannot_be_read_is_kept_not_given_and_said() {
    let bad = sheet("format = 1\n[machine]\nmass = \"rather heavy\"\n[[parts]]\nmass = \"1 kg\"\n");
    let tally = bad.tally();
    assert_eq!(tally.givens.get(MASS.any()), None, "the parts must not stand in for it");
    assert_eq!(tally.problems.len(), 1);
    assert_eq!(tally.problems[0].place, Place::Number(MASS.any()));
    assert_eq!(bad.number(MASS), Some("rather heavy"));
}

proptest::proptest! {
    /// Whatever a file holds, reading it ends, and what is read is the text itself.
    #[test]
    fn any_text_reads_or_is_refused_in_words(text in "([\\[\\]{}=\"'#.,\\-\\n\\r a-z0-9é])*|\\PC*") {
        match Sheet::read(&text) {
            Ok(sheet) => {
                let _ = sheet.tally();
                proptest::prop_assert_eq!(sheet.text(), text);
            }
            Err(error) => proptest::prop_assert!(!error.mend.is_empty()),
        }
    }
}
