//! The ledger: shares, steps, its block in a lesson, and the block under the pointer.

use std::collections::BTreeMap;
use std::sync::Arc;

use heftwise::app::screen::Place;
use heftwise::app::shell::{App, Folders, Message, Start};
use heftwise::lesson::{BlockKind, LedgerSort, Memory, parse};
use heftwise::quantity::{UnitSet, Units};
use heftwise::sheet::{Sheet, demo};
use heftwise::study::Ledger;
use heftwise::study::ledger::{nudged, stepped_mass, stepped_trial};
use iced_test::{Simulator, selector};
use proptest::prelude::*;

fn ledger_of(text: &str) -> Ledger {
    let sheet = Sheet::read(text).expect("the build is TOML");
    Ledger::of(&sheet, &sheet.tally())
}

fn shares(ledger: &Ledger) -> f64 {
    let parts: f64 = ledger.rows.iter().filter_map(|row| row.share).sum();
    parts + ledger.unlisted.map_or(0.0, |(_, share)| share)
}

#[test]
fn shares_of_the_demo_builds_add_up() {
    for id in ["sandpiper", "bullock"] {
        let ledger = ledger_of(demo::find(id).unwrap().text);
        approx::assert_relative_eq!(shares(&ledger), 1.0, max_relative = 1e-12);
        let order = ledger.by_mass();
        let masses: Vec<f64> = order.iter().map(|part| ledger.rows[*part].mass.unwrap()).collect();
        assert!(masses.windows(2).all(|pair| pair[0] >= pair[1]), "{masses:?}");
    }
    // Sandpiper's chassis: 1450 g of 6400 g.
    let sandpiper = ledger_of(demo::find("sandpiper").unwrap().text);
    approx::assert_relative_eq!(sandpiper.rows[0].share.unwrap(), 1450.0 / 6400.0);
}

proptest! {
    #[test]
    fn shares_add_up_whatever_is_stated(
        masses in prop::collection::vec(0.001..50.0f64, 1..20),
        stated in prop::option::of(0.001..900.0f64),
    ) {
        let mut text = "format = 1\n".to_owned();
        if let Some(stated) = stated {
            text += &format!("[machine]\nmass = \"{stated} kg\"\n");
        }
        for mass in &masses {
            text += &format!("[[parts]]\nname = \"p\"\nmass = \"{mass} kg\"\n");
        }
        let ledger = ledger_of(&text);
        prop_assert!((shares(&ledger) - 1.0).abs() < 1e-9);
        let sum: f64 = masses.iter().sum();
        let beyond = stated.is_some_and(|stated| stated > sum * 1.001);
        prop_assert!(!beyond || ledger.unlisted.is_some());
    }

    #[test]
    fn steps_are_small_and_go_both_ways(grams in 10u32..9000) {
        let units = Units::default();
        let text = format!("{grams} g");
        if let Some(up) = stepped_mass(&text, true, false, &units) {
            let down = stepped_mass(&up, false, false, &units).unwrap();
            let number = |text: &str| text.trim_end_matches(" g").parse::<f64>().unwrap();
            let size = number(&up) - f64::from(grams);
            prop_assert!(size > 0.0 && size <= 0.15 * f64::from(grams) + 1.0, "{up}");
            prop_assert!(number(&down) <= f64::from(grams), "{down}");
        }
    }
}

#[test]
fn steps_keep_the_spread_and_stay_above_zero() {
    let units = Units::default();
    let step = |text: &str, up| stepped_mass(text, up, false, &units);
    assert_eq!(step("780 g", true).as_deref(), Some("800 g"));
    assert_eq!(step("1450 g", true).as_deref(), Some("1460 g"));
    assert_eq!(step("1.45 kg", false).as_deref(), Some("1.44 kg"));
    assert_eq!(step("620 g", false).as_deref(), Some("610 g"));
    assert_eq!(stepped_mass("780 g", true, true, &units).as_deref(), Some("800 g"));
    assert_eq!(step("412 ± 5 g", true).as_deref(), Some("420 ± 5 g"));
    assert_eq!(step("0 g", false), None);
    assert_eq!(step("heavy", true), None);
    assert_eq!(nudged("-60 mm", true, &units).as_deref(), Some("-50 mm"));
    assert_eq!(nudged("-60 mm", false, &units).as_deref(), Some("-70 mm"));
    assert_eq!(nudged("there", false, &units), None);
    assert_eq!(stepped_trial("+100 g", (true, false), 6.4, &units).as_deref(), Some("+150 g"));
    assert!(nudged("-60 mm", true, &Units::of(UnitSet::Imperial)).unwrap().ends_with("in"));
}

fn block(body: &str) -> (Option<BlockKind>, Vec<String>) {
    let lesson = parse(&lesson(body), "mud.md");
    let problems = lesson.problems.iter().map(ToString::to_string).collect();
    (lesson.blocks.into_iter().next().map(|block| block.kind), problems)
}

fn lesson(body: &str) -> String {
    format!(
        "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\nminutes = 5\n+++\n\n```ledger\n{body}\n```\n"
    )
}

#[test]
fn the_block_is_read_and_a_wrong_one_says_where() {
    let (kind, problems) = block("sort = \"mass\"\nwatch = [\"low-end-pressure\", \"mass\"]");
    assert!(problems.is_empty(), "{problems:?}");
    let Some(BlockKind::Ledger(ledger)) = kind else { panic!("{kind:?}") };
    assert_eq!((ledger.sort, ledger.watch.len()), (LedgerSort::Mass, 2));
    let (kind, problems) = block("titel = \"T\"\nsort = \"lits\"");
    assert!(matches!(kind, Some(BlockKind::Broken { .. })));
    assert_eq!(
        problems,
        [
            "mud.md:9:1: a ledger has no field \"titel\"; expected one of title, sort, watch; did you mean \"title\"?",
            "mud.md:10:8: unknown order \"lits\"; expected one of mass, list; did you mean \"list\"?",
        ]
    );
    let (_, problems) = block("watch = [\"mass\", \"presure\"]");
    assert_eq!(problems.len(), 1);
    assert!(problems[0].starts_with("mud.md:9:18: unknown quantity \"presure\""), "{problems:?}");
}

/// The window on Sandpiper, reading a lesson with a ledger and a sketch.
struct Window {
    app: App,
    _folder: tempfile::TempDir,
}

impl Window {
    fn open(build: Option<&str>) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let path = build.map(|text| {
            let path = folder.path().join("build.toml");
            std::fs::write(&path, text).unwrap();
            path
        });
        let text = lesson("sort = \"mass\"\nwatch = [\"low-end-pressure\", \"mass\"]")
            + "\n```sketch\n```\n";
        let texts = BTreeMap::from([("mud".to_owned(), text)]);
        let (mut app, _) = App::new(Start {
            build: path,
            source: Arc::new(Memory { texts, ..Memory::default() }),
            watched: None,
            folders: Folders {
                settings: folder.path().join("settings"),
                recovery: folder.path().join("recovery"),
                notebook: folder.path().join("notebook.toml"),
                exports: folder.path().join("exports"),
            },
        });
        let _ = app.update(Message::Go(Place::Lesson("mud".to_owned())));
        Self { app, _folder: folder }
    }

    fn view(&self) -> Simulator<'_, Message> {
        Simulator::with_size(iced::Settings::default(), (1280.0, 2400.0), self.app.view())
    }

    fn press(&mut self, id: &'static str) {
        let mut view = self.view();
        view.click(selector::id(id)).unwrap_or_else(|error| panic!("{id}: {error}"));
        let messages = view.into_messages().collect();
        self.act(messages);
    }

    fn press_words(&mut self, words: &str) {
        let mut view = self.view();
        view.click(words).unwrap_or_else(|error| panic!("{words}: {error}"));
        let messages = view.into_messages().collect();
        self.act(messages);
    }

    fn act(&mut self, messages: Vec<Message>) {
        assert!(!messages.is_empty(), "nothing came of it");
        for message in messages {
            let _ = self.app.update(message);
        }
    }

    /// How far down the window something is.
    fn top_of(&self, id: &'static str) -> f32 {
        self.view().find(selector::id(id)).unwrap().bounds().y
    }

    fn shows(&self, words: &str) -> bool {
        self.view().find(words).is_ok()
    }
}

#[test]
fn more_makes_a_part_heavier_and_undo_takes_it_back() {
    let mut window = Window::open(None);
    assert!(window.shows("1450 g") && window.shows("23 %") && window.shows("6.40 kg"));
    window.press("ledger:8:0:mass:more");
    assert!(window.shows("1460 g") && !window.shows("1450 g"));
    assert!(window.shows("6.41 kg") && window.shows("was 6.40 kg"));
    let _ = window.app.update(Message::Undo);
    assert!(window.shows("1450 g") && !window.shows("1460 g"));
}

#[test]
fn a_part_is_moved_and_the_sketch_says_so() {
    let mut window = Window::open(None);
    assert!(window.shows("60 mm back"));
    // The battery is the sixth part.
    window.press("ledger:8:5:place:forward");
    assert!(window.shows("50 mm back"));
    // 620 g of 6400 g moved 10 mm: 22.0 mm becomes 21.0 mm.
    let words = "Sandpiper stands level; its centre of gravity is 21\u{a0}mm behind the middle \
                 and 91.4\u{a0}mm up. It presses with 0.830\u{a0}kPa on average and 1.08\u{a0}kPa \
                 at its rear end. It sinks in 3.26\u{a0}mm on average and 4.75\u{a0}mm at its rear \
                 end.";
    assert!(window.shows(words));
}

#[test]
fn rows_keep_their_place_until_they_are_sorted() {
    let mut window = Window::open(None);
    // The gripper arm starts at 640 g, below the tracks of 780 g.
    assert!(!window.shows("Heaviest first again"));
    let before = window.top_of("ledger:8:9:mass:more");
    for _ in 0..12 {
        window.press("ledger:8:9:mass:more");
    }
    assert!(window.shows("800 g"));
    assert_eq!(before, window.top_of("ledger:8:9:mass:more"));
    window.press_words("Heaviest first again");
    assert!(!window.shows("Heaviest first again"));
    assert!(window.top_of("ledger:8:9:mass:more") < before);
}

#[test]
fn without_parts_the_ledger_says_how_to_add_them() {
    let build = "format = 1\nname = \"Bare\"\n[machine]\nmass = \"3 kg\"\n";
    let mut window = Window::open(Some(build));
    assert!(window.shows("Add a part"));
    window.press_words("Add a part");
    assert!(window.shows("new part") && window.shows("not in the parts list"));
    assert!(window.shows("put it in place"));
}
