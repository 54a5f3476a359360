//! A long evening at the window: thousands of edits across all lessons. No number drifts, memory
//! stays flat, and undone to the start the build is its file again, byte for byte.
//!
//! The usual run is short. The whole one, some minutes with a release build:
//!
//!     HEFTWISE_TEST_EDITS=100000 cargo test --release --test suite trust::soak -- --nocapture

use std::path::Path;

use heftwise::app::page;
use heftwise::app::screen::{Place, build_sheet, reading};
use heftwise::app::shell::{Message, Start};
use heftwise::app::widget::field::{Act, Event};
use heftwise::app::widget::stepping::Step;
use heftwise::lesson::{MentionKind, Shipped, Source, parse};
use heftwise::quantity::{Entry, catalogue, show_plain};
use heftwise::sheet::{Axis, Edit, History, Part, PartField, Sheet};
use heftwise::study::Outcome;

use super::{Dice, again, ours};
use crate::window::rig::{self, Rig, WIDE};

/// How many edits: set it to 100000 for the whole soak.
const EDITS: &str = "HEFTWISE_TEST_EDITS";
const USUAL_EDITS: usize = 300;
/// Set for the copy of this test that has a process, and so its memory, to itself.
const ALONE: &str = "HEFTWISE_TEST_SOAKS";
/// How often memory is looked at, and whether any number has drifted.
const LEGS: usize = 10;
/// What the memory may grow by between the first look and the last, in bytes: as much as the steps
/// that can be undone may hold, and what an allocator leaves unused between.
const GROWTH: usize = 24 << 20;

/// A lesson and the numbers it speaks of that the reader can set; or the build sheet and all of them.
struct Stop {
    place: Place,
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
        Stop { place: Place::Lesson(lesson), numbers }
    };
    let all = || catalogue::all().iter().filter(|entry| entry.is_given()).collect();
    let sheet = || Stop { place: Place::BuildSheet, numbers: all() };
    let lessons = lessons.into_iter().map(stop).filter(|stop| !stop.numbers.is_empty());
    lessons.flat_map(|stop| [stop, sheet()]).collect()
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

    /// Something done to a field, on the page or on the build sheet.
    fn act(&mut self, entry: &Entry, act: Act) {
        self.edits += usize::from(!matches!(act, Act::Settled));
        let event = Event { place: format!("field:{}", entry.id), id: entry.id, act };
        self.send(match self.rig.app.place {
            Place::BuildSheet => Message::BuildSheet(build_sheet::Message::Field(event)),
            _ => Message::Reading(reading::Message::Page(page::Message::Field(event))),
        });
    }

    fn edit(&mut self, edit: Edit, gesture: Option<String>) {
        self.edits += 1;
        self.send(match self.rig.app.place {
            Place::BuildSheet => Message::BuildSheet(build_sheet::Message::Edit(edit, gesture)),
            _ => Message::Reading(reading::Message::Page(page::Message::Edit(edit, gesture))),
        });
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
                let back = page::Message::PutBack(vec![entry.id]);
                self.send(Message::Reading(reading::Message::Page(back)));
                self.edits += 1;
                for message in [Message::Undo, Message::Redo, Message::Undo] {
                    self.send(message);
                }
            }
        }
        self.act(entry, Act::Settled);
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
                    self.edit(edit, Some("parts".to_owned()));
                }
                return;
            }
        };
        self.edit(once, None);
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
    fn all(&mut self, step: Message, can: fn(&History) -> bool) -> usize {
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
    // Every page once, so that letters, pictures and formulas that are kept are in memory.
    for stop in &stops {
        reader.send(Message::Go(stop.place.clone()));
        assert!(reader.rig.texts().len() > 10);
    }
    let mut held = Vec::new();
    for gesture in 0.. {
        let leg = edits * (held.len() + 1) / LEGS;
        if reader.edits >= leg {
            // The page is laid out too, and the file read anew knows the same.
            assert!(reader.rig.texts().len() > 10);
            reader.drifts_nowhere();
            eprintln!("{} edits, {gesture} movements, {:?} bytes", reader.edits, resident());
            held.push(resident().unwrap_or_default());
            if held.len() == LEGS {
                break;
            }
        }
        let stop = &stops[gesture / 3 % stops.len()];
        if gesture.is_multiple_of(3) {
            reader.send(Message::Go(stop.place.clone()));
        }
        let length = 1 + reader.dice.below(12);
        reader.gesture(stop, length);
    }
    assert!(held[LEGS - 1].saturating_sub(held[0]) < GROWTH, "memory grows: {held:?}");
    // What the script took back last is made again, so that this is the end.
    reader.send(Message::Go(Place::Contents));
    reader.all(Message::Redo, History::can_redo);
    let last = reader.text().to_owned();
    assert!(last != first, "nothing was changed");
    let back = reader.all(Message::Undo, History::can_undo);
    assert!(reader.text() == first, "undone to the start: {}", reader.text());
    assert_eq!(bits(&reader.rig.app.desk.outcome), before);
    assert!(!reader.rig.app.desk.history.is_changed_since_save());
    let forth = reader.all(Message::Redo, History::can_redo);
    assert!(reader.text() == last && forth == back, "made again: {}", reader.text());
    reader.drifts_nowhere();
    eprintln!("{back} steps back and forth, {:?} bytes", resident());
    assert_eq!(std::fs::read_to_string(&path).unwrap(), first, "nothing was saved");
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
