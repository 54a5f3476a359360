//! The notebook: what goes in comes out, and nothing on disk is lost.

use std::fs;

use heftwise::notebook::file::{export, load};
use heftwise::notebook::{Answer, Measurement, Moment, Notebook, Summary, markdown};
use heftwise::quantity::Units;

fn filled() -> Notebook {
    let mut notebook = Notebook::default();
    let when = Moment::of_unix(1_000_000_000);
    assert!(notebook.opened("pressure", when.clone()));
    assert!(!notebook.opened("pressure", Moment::of_unix(1_000_000_001)));
    notebook.answered(
        "pressure",
        Answer {
            guess: "pressure/which-goes-in-deeper".into(),
            asked: "Which goes in *deeper*?".into(),
            said: "Both the same".into(),
            right: false,
            idea: Some("It sinks because it is heavy".into()),
            when: when.clone(),
            ..Answer::default()
        },
    );
    notebook.measured(
        "pressure",
        Measurement {
            what: "Block load".into(),
            quantity: "block-mass".into(),
            readings: vec!["2.6 kg".into(), "3.0 kg".into(), "3.3 kg".into()],
            predicted: Some("2.5 kg".into()),
            when,
            ..Measurement::default()
        },
    );
    notebook.noted("impact", "Film it.\n\n\"Twice\", \\ and ü".into());
    notebook.opened("impact", Moment::of_unix(951_782_300));
    notebook.finished("impact", Some(Moment::of_unix(951_782_400)));
    notebook
}

#[test]
fn what_goes_in_comes_out_of_the_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("data/notebook.toml");
    let loaded = load(&path);
    assert_eq!((&loaded.notebook, &loaded.told), (&Notebook::default(), &None));
    let mut store = loaded.store.unwrap();
    assert_eq!(store.save(&filled()).unwrap(), None);
    assert_eq!(store.save(&filled()).unwrap(), None);
    let again = load(&path);
    assert_eq!((again.notebook, again.told), (filled(), None));
    assert_eq!(fs::read_dir(path.parent().unwrap()).unwrap().count(), 1, "litter was left");
}

/// Seconds since 1970 of two moments known from elsewhere: the billionth second (widely told), and
/// the leap day of 2000, which the rule of 400 years keeps (ISO 8601, Gregorian calendar).
#[test]
fn moments_are_those_of_the_calendar() {
    assert_eq!(Moment::of_unix(0).to_string(), "1970-01-01T00:00:00Z");
    assert_eq!(Moment::of_unix(1_000_000_000).to_string(), "2001-09-09T01:46:40Z");
    assert_eq!(Moment::of_unix(951_782_400).date(), "2000-02-29");
    assert_eq!(Moment::of_unix(951_868_799).to_string(), "2000-02-29T23:59:59Z");
    assert_eq!(Moment::of_unix(4_107_542_400).date(), "2100-03-01");
}

#[test]
fn keys_that_are_not_known_are_kept() {
    let text = "format = 1\ncolour = \"blue\"\n\n[lesson.mud]\nnote = \"wet\"\nstars = 3\n\n\
                [[lesson.mud.answer]]\nguess = \"mud/a\"\nasked = \"A?\"\nsaid = \"B\"\n\
                right = true\nwhen = \"2026-05-04T09:30:00Z\"\nsure = 0.5\n";
    let mut notebook = Notebook::read(text).unwrap();
    notebook.noted("mud", "wetter".into());
    let written = notebook.text().unwrap();
    for kept in ["colour = \"blue\"", "stars = 3", "sure = 0.5", "note = \"wetter\""] {
        assert!(written.contains(kept), "{kept} not in\n{written}");
    }
}

#[test]
fn a_person_may_write_a_date_without_quotes() {
    let text = "format = 1\n[lesson.mud]\nopened = 2026-05-04T09:30:00Z\nfinished = 2026-05-05\n";
    let notebook = Notebook::read(text).unwrap();
    let record = notebook.lesson("mud").unwrap();
    let dates = [&record.opened, &record.finished].map(|when| when.as_ref().unwrap().date());
    assert_eq!(dates, ["2026-05-04", "2026-05-05"]);
}

#[test]
fn a_file_that_cannot_be_read_is_kept_and_said() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notebook.toml");
    let texts: [&[u8]; 3] = [b"format = [", b"format = 1\nlesson = 3\n", b"\xff\xfe not text"];
    for (number, bytes) in texts.iter().enumerate() {
        fs::write(&path, bytes).unwrap();
        let loaded = load(&path);
        let copy = folder.path().join(format!("notebook.kept-{}.toml", number + 1));
        let told = loaded.told.unwrap();
        assert!(told.contains(&copy.display().to_string()), "{told}");
        loaded.store.unwrap().save(&filled()).unwrap();
        assert_eq!(fs::read(&copy).unwrap(), *bytes);
        assert_eq!(load(&path).notebook, filled());
    }
}

#[test]
fn what_another_window_wrote_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notebook.toml");
    let (mut one, mut other) = (load(&path).store.unwrap(), load(&path).store.unwrap());
    one.save(&filled()).unwrap();
    let copy = other.save(&Notebook::default()).unwrap().expect("a copy is kept");
    let kept = fs::read_to_string(copy).unwrap();
    assert_eq!(Notebook::read(&kept).unwrap(), filled());
}

#[test]
fn a_folder_in_the_way_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notebook.toml");
    fs::create_dir(&path).unwrap();
    let loaded = load(&path);
    assert!(loaded.store.is_none() && loaded.told.unwrap().contains("not written down"));
}

/// The three block tests of the pressure lesson, summed by hand: 8.9 kg over three.
#[test]
fn readings_come_to_a_mean_a_range_and_a_spread() {
    let summary = Summary::of(&[2.6, 3.0, 3.3]).unwrap();
    approx::assert_relative_eq!(summary.mean, 8.9 / 3.0, max_relative = 1e-12);
    assert_eq!((summary.low, summary.high), (2.6, 3.3));
    approx::assert_relative_eq!(summary.spread(0.1), 0.35, max_relative = 1e-12);
    assert_eq!(summary.spread(0.5), 0.5, "the tool's own error is the least");
    approx::assert_relative_eq!(summary.ratio(2.0).unwrap(), 8.9 / 6.0, max_relative = 1e-12);
    assert_eq!((summary.ratio(0.0), summary.ratio(-1.0)), (None, None));
    assert_eq!((Summary::of(&[]), Summary::of(&[1.0, f64::NAN])), (None, None));
    let filled = filled();
    let measured = filled.lesson("pressure").unwrap().last_measured("Block load").unwrap();
    let reckoned = measured.reckoned().unwrap();
    assert_eq!((reckoned.summary, reckoned.predicted), (summary, Some(2.5)));
    let gone = Measurement { quantity: "no-such".into(), ..measured.clone() };
    assert_eq!(gone.reckoned(), None);
}

#[test]
fn the_export_has_everything_and_writes_over_nothing() {
    let text = markdown(&filled(), &[("pressure", "Pressure on the ground")], &Units::default());
    for words in [
        "## Pressure on the ground\n",
        "## impact\n",
        "2001-09-09: Which goes in \\*deeper\\*?",
        "“Both the same” (not right); the idea: “It sinks because it is heavy”",
        "| 2001-09-09 | Block load | 2.5 kg | 2.6 kg, 3.0 kg, 3.3 kg | 2.97 kg | 2.60 to 3.30 kg | 1.19 |",
        "\"Twice\", \\ and ü",
        "finished 2000-02-29",
    ] {
        assert!(text.contains(words), "{words:?} not in\n{text}");
    }
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notebook.md");
    export(&path, &text, false).unwrap();
    assert!(export(&path, "other", false).unwrap_err().to_string().contains("already"));
    assert_eq!(fs::read_to_string(&path).unwrap(), text);
    export(&path, "other", true).unwrap();
}
