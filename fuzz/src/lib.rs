//! The doors through which bytes from outside come in, each as a function of bytes that must end
//! without a panic and keep what it promises.
//!
//! `cargo fuzz run build_file` (with nightly Rust, in this folder's parent) knocks at one of them for as
//! long as it is let. `tests/suite/trust/seeds.rs` replays the seeds in `corpus/`, and some
//! thousand changes to them, with the other tests.

use heftwise::app::settings::Settings;
use heftwise::cli::{self, Next};
use heftwise::lesson::{parse, plain_text};
use heftwise::notebook::Notebook;
use heftwise::quantity::{Units, catalogue, field_text, parse as parse_number, show_plain};
use heftwise::rules::evaluate;
use heftwise::sheet::{Edit, Sheet};

/// A build file: what is read is the text itself, and an edit keeps it readable.
pub fn build_file(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match Sheet::read(text) {
        Err(error) => assert!(!error.mend.is_empty(), "no way to mend it is told: {error}"),
        Ok(mut sheet) => {
            assert_eq!(sheet.text(), text);
            let values = evaluate(&sheet.tally().givens);
            for entry in catalogue::all() {
                assert!(values.si(entry.id).is_none_or(f64::is_finite), "{}", entry.id.name());
            }
            let id = catalogue::machine::MASS.into();
            if sheet.apply(&Edit::Set { id, text: "6.4 kg".to_owned() }).is_ok() {
                assert_eq!(Sheet::read(sheet.text()).as_ref(), Ok(&sheet));
            }
        }
    }
}

/// A lesson: no word of it made up, every problem with a place in it.
pub fn lesson(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    let lesson = parse(&text, "lesson.md");
    let _ = plain_text(&lesson);
    let lines = text.lines().count().max(1);
    for problem in &lesson.problems {
        assert!((1..=lines + 1).contains(&problem.line), "{problem:?} of {lines} lines");
        assert!(problem.column > 0 && !problem.message.is_empty(), "{problem:?}");
    }
}

/// The text of a number: read as any quantity, it is finite or refused, and what is shown for it
/// reads again.
pub fn quantity(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let entries = catalogue::all();
    // Dimensions differ; a few entries far apart in the catalogue are enough at a time.
    let start = bytes.iter().map(|byte| usize::from(*byte)).sum::<usize>() % 7;
    for entry in entries.iter().skip(start).step_by(entries.len() / 5) {
        match parse_number(text, entry) {
            Err(error) => assert!(!error.to_string().is_empty()),
            Ok(amount) => {
                assert!(amount.si.is_finite(), "{text:?} as {}", entry.id.name());
                assert!(amount.spread.is_none_or(|spread| spread.is_finite() && spread >= 0.0));
                let shown = show_plain(entry, amount.si);
                assert!(!shown.contains("NaN") && !shown.contains("inf"), "{shown}");
                let _ = field_text(entry, amount.si, &Units::default());
            }
        }
    }
}

/// A notebook: what is read is written and read again as the same.
pub fn notebook(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let Ok(notebook) = Notebook::read(text) else { return };
    if let Ok(written) = notebook.text() {
        assert_eq!(Notebook::read(&written).as_ref(), Ok(&notebook), "{written}");
    }
}

/// Settings: whatever the file holds, the window can open.
pub fn settings(bytes: &[u8]) {
    let folder = tempfile::tempdir().expect("a folder");
    std::fs::write(folder.path().join("settings.toml"), bytes).expect("it can be written");
    let settings = Settings::load(folder.path());
    let (width, height) = settings.window;
    assert!(width.is_finite() && height.is_finite() && settings.room().is_finite());
    assert!(settings.place.is_finite(), "{}", settings.place);
    settings.save(folder.path()).expect("settings can be written");
    assert_eq!(Settings::load(folder.path()), settings);
}

/// The command line, one argument a line: it ends with a code and words. Commands that write files
/// are left out.
pub fn command(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    let writes =
        |word: &str| word.starts_with("-o") || word.starts_with("--o") || word == "handout";
    if text.lines().any(writes) {
        return;
    }
    let (mut out, mut err) = (Vec::new(), Vec::new());
    match cli::run(std::iter::once("heftwise").chain(text.lines()), &mut out, &mut err) {
        Next::Window { .. } => {}
        Next::Exit(code) => {
            assert!(code <= 2, "{code}");
            let told = if code == 0 { &out } else { &err };
            assert!(!told.is_empty(), "code {code} without a word: {text:?}");
        }
    }
}
