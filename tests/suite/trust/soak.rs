//! A long evening at the window: thousands of edits across all lessons. No number drifts, memory
//! stays flat, and undone to the start the build is its file again, byte for byte.
//!
//! The usual run is short. The whole one, some minutes with a release build:
//!
//!     HEFTWISE_TEST_EDITS=100000 cargo test --release --test suite trust::soak -- --nocapture

use std::path::Path;

use heftwise::app::page;
use heftwise::app::screen::{Place, reading};
use heftwise::app::shell::{Message, Start};
use heftwise::app::widget::field::{Act, Event};
use heftwise::app::widget::stepping::Step;
use heftwise::lesson::{MentionKind, Shipped, Source, parse};
use heftwise::quantity::{Entry, catalogue, show_plain};
use heftwise::sheet::{Axis, Edit, Part, PartField, Sheet};
use heftwise::study::Outcome;

use super::{Dice, again, ours};
use crate::window::rig::{self, Rig, WIDE};

/// How many edits: set it to 100000 for the whole soak.
const EDITS: &str = "HEFTWISE_TEST_EDITS";
const USUAL_EDITS: usize = 400;
/// Set for the copy of this test that has a process, and so its memory, to itself.
const ALONE: &str = "HEFTWISE_TEST_SOAKS";
/// So often the build is undone to its file; what memory is held is looked at each time.
const LEGS: usize = 5;
/// Movements of the hand in a leg, each undone as one; 500 can be.
const GESTURES: usize = 480;
/// What the memory may grow by from the first leg to the last, in bytes: 500 steps of undo hold
/// builds of differing lengths.
const GROWTH: usize = 8 << 20;

/// A lesson, and the numbers it speaks of that the reader can set.
struct Stop {
    lesson: String,
    numbers: Vec<&'static Entry>,
}

fn stops() -> Vec<Stop> {
    let lessons = Shipped.lessons().unwrap();
    assert!(lessons.len() > 10);
    let stop = |lesson: String| {
        let text = Shipped.text(&lesson).unwrap();
        let mentions = parse(&text, "lesson.md").mentions;
        let mut numbers: Vec<_> = mentions
            .iter()
            .filter(|mention| mention.kind == MentionKind::Quantity)
            .filter_map(|mention| catalogue::find(&mention.name))
            .filter(|entry| entry.is_given())
            .collect();
        numbers.sort_by_key(|entry| entry.id);
        numbers.dedup_by_key(|entry| entry.id);
        Stop { lesson, numbers }
    };
    let mut stops: Vec<Stop> = lessons.into_iter().map(stop).collect();
    stops.retain(|stop| !stop.numbers.is_empty());
    stops
}

/// The reader: the window, and how many edits were made in it.
struct Reader {
    rig: Rig,
    dice: Dice,
    edits: usize,
}

impl Reader {
    fn send(&mut self, message: Message) {
        // What a message asks of the system (focus, scrolling) is not this test's affair.
        drop(self.rig.app.update(message));
        if self.rig.app.question.is_some() {
            drop(self.rig.app.update(Message::QuestionClosed));
        }
    }

    fn page(&mut self, message: page::Message) {
        self.edits += 1;
        self.send(Message::Reading(reading::Message::Page(message)));
    }

    fn act(&mut self, entry: &Entry, act: Act) {
        let place = format!("margin:{}", entry.id);
        self.page(page::Message::Field(Event { place, id: entry.id, act }));
    }

    /// One movement of the hand of at most `length` edits on a page, and the end of it.
    fn gesture(&mut self, stop: &Stop, length: usize) {
        let entry = stop.numbers[self.dice.below(stop.numbers.len())];
        let (low, high) = entry.usual;
        let at = |dice: &mut Dice| low + (high - low) * dice.below(1001) as f64 / 1000.0;
        match self.dice.below(10) {
            0..4 => {
                for _ in 0..length {
                    let si = at(&mut self.dice);
                    self.act(entry, Act::Slid(si));
                }
            }
            4 | 5 => {
                for _ in 0..length {
                    let (up, coarse) = (self.dice.below(2) == 0, self.dice.below(5) == 0);
                    self.act(entry, Act::Stepped(Step { up, coarse }));
                }
            }
            6 => {
                // Typed letter by letter, and now and then nonsense.
                let number = show_plain(entry, at(&mut self.dice));
                let text = ["", "12 apples", &number, &number][self.dice.below(4)];
                for end in text.char_indices().map(|(start, letter)| start + letter.len_utf8()) {
                    self.act(entry, Act::Typed(text[..end].to_owned()));
                }
            }
            7 => self.act(entry, Act::Cleared),
            8 => self.part(length),
            _ => {
                self.page(page::Message::PutBack(vec![entry.id]));
                for message in [Message::Undo, Message::Redo, Message::Undo] {
                    self.send(message);
                }
            }
        }
        let settled = Event { place: String::new(), id: entry.id, act: Act::Settled };
        self.send(Message::Reading(reading::Message::Page(page::Message::Field(settled))));
    }

    /// A movement in the parts list.
    fn part(&mut self, length: usize) {
        let count = self.rig.app.desk.sheet().parts().len();
        let index = self.dice.below(count);
        let once = match self.dice.below(6) {
            0 if count < 30 => Edit::DuplicatePart { index },
            1 if count < 30 => Edit::AddPart(Part {
                name: "Lantern".to_owned(),
                mass: "85 g".to_owned(),
                at: Some(["-40 mm", "0 mm", "95 mm"].map(str::to_owned)),
            }),
            2 if count > 3 => Edit::RemovePart { index },
            3 if count > 1 => Edit::MovePart { from: index, to: self.dice.below(count) },
            4 => Edit::SetTrial { mass: format!("+{} g", self.dice.below(900)), at: None },
            _ => {
                for _ in 0..length {
                    let number = self.dice.below(900);
                    let (field, text) = match self.dice.below(2) {
                        0 => (PartField::Mass, format!("{number} g")),
                        _ => (PartField::At(Axis::ALL[0]), format!("{number} mm")),
                    };
                    let edit = Edit::SetPart { index, field, text };
                    self.page(page::Message::Edit(edit, Some("ledger".to_owned())));
                }
                return;
            }
        };
        self.page(page::Message::Edit(once, None));
    }

    fn text(&self) -> &str {
        self.rig.app.desk.sheet().text()
    }

    /// What the window knows is what a program knows that reads the build now, to the last bit.
    fn drifts_nowhere(&self) {
        let fresh = Sheet::read(self.text()).unwrap();
        let (tally, desk) = (fresh.tally(), &self.rig.app.desk);
        let known = Outcome::of(tally.givens, &tally.spreads, desk.revision());
        assert_eq!(&fresh, desk.sheet());
        assert_eq!(bits(&known), bits(&desk.outcome));
        assert!(known == desk.outcome, "what is missing, invalid or unsure differs");
    }

    /// As many steps as there are.
    fn all(&mut self, step: Message, can: fn(&heftwise::sheet::History) -> bool) -> usize {
        let mut steps = 0;
        while can(&self.rig.app.desk.history) {
            self.send(step.clone());
            steps += 1;
        }
        steps
    }
}

/// Every number known, to the last bit.
fn bits(outcome: &Outcome) -> Vec<Option<u64>> {
    catalogue::all().iter().map(|entry| outcome.values.si(entry.id).map(f64::to_bits)).collect()
}

/// What of this process is in memory, in bytes; none where the system does not say.
fn resident() -> Option<usize> {
    let pages = std::fs::read_to_string("/proc/self/statm").ok()?;
    Some(pages.split(' ').nth(1)?.parse::<usize>().ok()? * 4096)
}

fn soak(edits: usize) {
    let stops = stops();
    let folder = tempfile::tempdir().unwrap();
    let first = ours("assets/builds/sandpiper.toml");
    let path = rig::file(&folder, "sandpiper.toml", &first);
    let start = Start { build: Some(path.clone()), ..rig::start(&folder) };
    let mut reader = Reader { rig: Rig::open(start, WIDE), dice: Dice(40), edits: 0 };
    let before = bits(&reader.rig.app.desk.outcome);
    let mut held = Vec::new();
    for leg in 1..=LEGS {
        let wanted = edits * leg / LEGS;
        // A movement of the hand makes this many edits on average, some as few as one.
        let length = (edits / LEGS * 5 / (3 * GESTURES)).max(1) + 1;
        let mut gestures = 0;
        while reader.edits < wanted && gestures < GESTURES {
            let stop = &stops[(gestures / 3 + leg * GESTURES) % stops.len()];
            if gestures.is_multiple_of(3) {
                reader.send(Message::Go(Place::Lesson(stop.lesson.clone())));
            }
            reader.gesture(stop, length);
            gestures += 1;
            if gestures.is_multiple_of(60) {
                // The page is laid out too, and the file read anew knows the same.
                assert!(reader.rig.texts().len() > 10);
                reader.drifts_nowhere();
            }
        }
        reader.drifts_nowhere();
        let last = reader.text().to_owned();
        assert_ne!(last, first, "nothing was changed");
        let back = reader.all(Message::Undo, heftwise::sheet::History::can_undo);
        assert_eq!(reader.text(), first, "undone to the start");
        assert_eq!(bits(&reader.rig.app.desk.outcome), before);
        let forth = reader.all(Message::Redo, heftwise::sheet::History::can_redo);
        assert_eq!((reader.text(), forth), (last.as_str(), back), "made again");
        reader.drifts_nowhere();
        reader.all(Message::Undo, heftwise::sheet::History::can_undo);
        assert_eq!(reader.text(), first, "and undone again");
        assert!(back > gestures / 2, "{back} steps of {gestures} movements");
        held.extend(resident());
        eprintln!("{} edits, {back} steps back and forth, {:?} bytes", reader.edits, held.last());
    }
    assert_eq!(std::fs::read_to_string(&path).unwrap(), first, "nothing was saved");
    assert!(!reader.rig.app.desk.history.is_changed_since_save());
    if let [first, .., last] = held.as_slice() {
        assert!(last.saturating_sub(*first) < GROWTH, "memory grows: {held:?}");
    }
    assert!(reader.edits >= edits, "{} of {edits} edits", reader.edits);
}

#[test]
fn an_evening_of_edits_leaves_no_trace() {
    let edits = std::env::var(EDITS).map_or(USUAL_EDITS, |edits| edits.parse().unwrap());
    if std::env::var_os(ALONE).is_some() {
        return soak(edits);
    }
    let output = again("trust::soak::an_evening_of_edits_leaves_no_trace")
        .arg("--nocapture")
        .env(ALONE, Path::new("1"))
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&output.stderr);
    eprint!("{said}");
    let passed = String::from_utf8_lossy(&output.stdout).contains("1 passed");
    assert!(output.status.success() && passed, "{said}");
}
