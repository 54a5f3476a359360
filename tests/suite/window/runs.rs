//! A run plays, waits, is looked along by keys, and stands still for those who want that.

use std::time::{Duration, Instant};

use heftwise::app::screen::{Place, reading};
use heftwise::app::shell::{Message, Start};
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;

use super::rig::{self, Rig, WIDE, memory};

const LESSON: &str = r#"+++
id = "one"
title = "One run"
order = 1
goals = []
uses = []
+++

```run
title = "The stop"
kind = "impact"
show = ["force", "crush"]
```
"#;

fn open(lesson: &str) -> Rig {
    let folder = tempfile::tempdir().unwrap();
    let source = memory(&[("one", lesson)]);
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("one".to_owned())));
    rig
}

/// Lets the clock run for some seconds, a frame each tenth.
fn wait(rig: &mut Rig, seconds: u32) {
    let start = Instant::now();
    for tenth in 1..=10 * seconds {
        let now = start + Duration::from_millis(100) * tenth;
        rig.send(Message::Reading(reading::Message::Ticked(now)));
    }
}

/// The crush shown now, in millimetres.
fn crush(rig: &mut Rig) -> f64 {
    let texts = rig.texts();
    let shown: Vec<_> = texts.iter().filter(|text| text.ends_with(" mm")).collect();
    let [crush] = shown.as_slice() else { panic!("{shown:?}") };
    crush.trim_end_matches(" mm").parse().unwrap()
}

/// The hit lasts 19 ms and plays in 10 s; in the middle of it three quarters and more are crushed.
#[test]
fn it_plays_and_waits() {
    let mut rig = open(LESSON);
    assert_eq!(crush(&mut rig), 0.0);
    assert!(rig.says("times slower than true"));
    wait(&mut rig, 1);
    assert_eq!(crush(&mut rig), 0.0, "nothing moves until it is played");
    rig.click("Play");
    wait(&mut rig, 5);
    let middle = crush(&mut rig);
    assert!((19.0..22.0).contains(&middle), "{middle} mm");
    rig.click("Pause");
    wait(&mut rig, 2);
    assert_eq!(crush(&mut rig), middle);
    rig.click("Play");
    wait(&mut rig, 8);
    assert_eq!(crush(&mut rig), 25.0);
    assert!(rig.says("Play") && !rig.says("Pause"), "at the end it waits of itself");
    rig.click("To start");
    assert_eq!(crush(&mut rig), 0.0);
}

#[test]
fn the_pace_is_chosen() {
    let mut rig = open(LESSON);
    rig.click("In 30 s");
    rig.click("Play");
    wait(&mut rig, 5);
    let sixth = crush(&mut rig);
    assert!((7.5..9.0).contains(&sixth), "{sixth} mm");
    rig.click("True speed");
    assert!(rig.says("as fast as it happens"));
    wait(&mut rig, 1);
    assert_eq!(crush(&mut rig), 25.0);
}

#[test]
fn it_is_looked_along_by_keys() {
    let mut rig = open(LESSON);
    let line = LESSON.lines().position(|line| line.starts_with("```run")).unwrap() + 1;
    let slider = Id::from(format!("run:{line}:at"));
    rig.click(slider);
    let middle = crush(&mut rig);
    assert!((19.0..22.0).contains(&middle), "clicked in the middle: {middle} mm");
    rig.key(Named::Home, Modifiers::empty());
    assert_eq!(crush(&mut rig), 0.0);
    rig.key(Named::ArrowRight, Modifiers::empty());
    let step = crush(&mut rig);
    assert!((0.4..0.7).contains(&step), "a hundredth of the time at full speed: {step} mm");
    rig.key(Named::ArrowRight, Modifiers::SHIFT);
    assert!(crush(&mut rig) > 8.0 * step);
    rig.key(Named::ArrowLeft, Modifiers::SHIFT);
    assert_eq!(crush(&mut rig), step);
    rig.key(Named::End, Modifiers::empty());
    assert_eq!(crush(&mut rig), 25.0);
}

#[test]
fn where_pictures_stand_still_the_end_is_shown() {
    let mut rig = open(LESSON);
    rig.click("Play");
    wait(&mut rig, 1);
    rig.send(Message::Still(true));
    let before = crush(&mut rig);
    wait(&mut rig, 1);
    assert_eq!(crush(&mut rig), before, "it stops at once");
    assert!(!rig.says("Play") && !rig.says("Pause"));
    rig.send(Message::Go(Place::Contents));

    let folder = tempfile::tempdir().unwrap();
    let start = Start { source: memory(&[("one", LESSON)]), ..rig::start(&folder) };
    let mut rig = Rig::open(start, WIDE);
    rig.send(Message::Still(true));
    rig.send(Message::Go(Place::Lesson("one".to_owned())));
    assert_eq!(crush(&mut rig), 25.0);
    let line = LESSON.lines().position(|line| line.starts_with("```run")).unwrap() + 1;
    rig.click(Id::from(format!("run:{line}:at")));
    assert!(crush(&mut rig) < 25.0, "the slider still moves it");
}

#[test]
fn it_says_the_same_as_a_table_and_in_words() {
    let mut rig = open(LESSON);
    assert!(rig.says("It stops from 2.62 m/s in 19.1 ms and 25.0 mm"));
    rig.click("Show as a table");
    assert!(rig.says("force, N") && rig.says("crush, mm") && rig.says("time, ms"));
    rig.click("Hide the table");
    assert!(!rig.says("time, ms"));
}

#[test]
fn it_follows_the_build_and_says_what_is_lacking() {
    let mut rig = open(LESSON);
    rig.send(Message::CompanionExample("bullock"));
    assert!(rig.texts().iter().any(|text| text == "Bullock"));
    assert!(rig.says("Bullock: It stops from 2.62 m/s in 26.7 ms"));
    rig.send(Message::Leave(heftwise::app::question::Next::Blank));
    rig.send(Message::Go(Place::Lesson("one".to_owned())));
    assert!(rig.says("Say the mass"), "{:?}", rig.texts());
}

#[test]
fn the_run_is_saved_as_a_picture_or_as_numbers() {
    let mut rig = open(LESSON);
    saved(&mut rig, "Save the run", "force");
}

/// Saves a picture by its button as each kind of file; its numbers hold a word.
pub fn saved(rig: &mut Rig, button: &str, word: &str) {
    use heftwise::app::files::{Purpose, Unpicked};
    let folder = tempfile::tempdir().unwrap();
    for (name, start) in [("a.svg", &b"<svg "[..]), ("a.png", b"\x89PNG"), ("a.csv", b"")] {
        rig.click(button);
        rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Figure, at_once: true }));
        let path = folder.path().join(name);
        rig.send(Message::PathTyped(path.display().to_string()));
        rig.send(Message::PathGiven);
        assert!(std::fs::read(&path).unwrap().starts_with(start), "{name}");
        assert!(rig.says(&format!("Saved as {}.", path.display())));
    }
    let numbers = std::fs::read_to_string(folder.path().join("a.csv")).unwrap();
    assert!(numbers.lines().count() > 2 && numbers.contains(word), "{numbers}");
}
