//! Reading: from the list into a lesson, and what its blocks do there.

use heftwise::app::question::Question;
use heftwise::app::screen::{Place, reading};
use heftwise::app::shell::{Message, Start};
use iced::keyboard::{Modifiers, key::Named};
use iced::{Rectangle, Vector};
use iced_test::selector::{Candidate, Target};

use super::rig::{self, Rig, WIDE, memory};

const BROKEN: &str = r#"+++
id = "broken"
title = "Half a lesson"
order = 1
goals = ["Read on whatever breaks."]
uses = ["track-width"]
+++

## Before

```calculator
title = "This one is spoilt"
change = ["track-width"]
find = ["ground-presure"]
```

The text goes on after it.

```calculator
title = "This one works"
change = ["track-width"]
find = ["ground-pressure"]
```

See [the list](https://example.org/soils) for more.
"#;

fn broken() -> Rig {
    let folder = tempfile::tempdir().unwrap();
    let source = memory(&[("broken", BROKEN)]);
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("broken".to_owned())));
    rig
}

/// The choices of the first guess of a lesson, in the order of the page.
fn choices(rig: &mut Rig) -> Vec<Rectangle> {
    let from = rig.find("Your guess first").expect("a guess").bounds();
    let all = rig.controls().into_iter().map(|control| control.bounds);
    all.filter(|at| at.y > from.y && at.x >= from.x && at.x < from.x + 600.0).take(3).collect()
}

fn choose(rig: &mut Rig, choice: Rectangle) {
    let top = iced::widget::operation::AbsoluteOffset { x: 0.0, y: choice.y - 300.0 };
    rig.run(iced::widget::operation::scroll_to(reading::PAGE, top));
    let scrolled = rig.scrolled();
    rig.point_at(choice.center() - Vector::new(0.0, scrolled));
    rig.press();
    rig.release();
}

#[test]
fn read_on_the_list_opens_the_lesson() {
    let mut rig = Rig::fresh();
    for lesson in ["Pressure on the ground", "Impact: the sudden stop"] {
        assert!(rig.says(lesson));
    }
    rig.click("Read");
    assert_eq!(rig.app.place, Place::Lesson("numbers".to_owned()));
    assert!(rig.says("After this you can"));
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("Read on"), "the lesson last read is marked");
}

#[test]
fn a_wrong_choice_names_the_wrong_idea_and_can_be_tried_again() {
    let mut rig = rig::lesson("pressure");
    let idea = "A common idea: “It sinks because it is heavy”";
    assert!(!rig.says(idea));
    let choices = choices(&mut rig);
    choose(&mut rig, choices[1]);
    assert!(rig.says("Not quite.") && rig.says(idea), "{:?}", rig.texts());
    choose(&mut rig, choices[0]);
    assert!(rig.says("Not quite."), "an answer given stays until it is tried again");
    rig.click("Try again");
    assert!(!rig.says("Not quite.") && !rig.says(idea));
    let others = self::choices(&mut rig);
    choose(&mut rig, others[0]);
    assert!(rig.says("Yes.") && !rig.says("A common idea"));
}

#[test]
fn a_guessed_number_is_held_against_the_build_and_the_slip_is_named() {
    let mut rig = rig::lesson("pressure");
    let field = |candidate: Candidate<'_>| match candidate {
        Candidate::TextInput { id, .. } if format!("{id:?}").contains("guess:") => {
            Some(Target::from(candidate))
        }
        _ => None,
    };
    rig.click(field);
    rig.typewrite("quite a lot");
    rig.click("This is my guess");
    assert!(!rig.says("Not quite.") && !rig.says("Yes."), "words are no number, so no answer");
    let answers = [
        ("1.66 kPa", "A common idea: “Forgot the second track”"),
        ("415 Pa", "A common idea: “Counted the whole belt”"),
        ("84.6 Pa", "A common idea: “Kilograms used as a force”"),
        ("0.83", "A common idea: “Pa and kPa mixed up”"),
        ("820 Pa", "Yes."),
    ];
    for (number, reply) in answers {
        rig.click(field);
        rig.command("a");
        rig.typewrite(number);
        rig.key(Named::Enter, Modifiers::empty());
        assert!(rig.says(reply), "{number}: {:?}", rig.texts());
        assert!(rig.says("your build gives 830 Pa."));
        rig.click("Try again");
    }
}

#[test]
fn the_working_opens_and_closes_in_place() {
    let mut rig = rig::lesson("pressure");
    assert!(!rig.says("Takes for granted: "));
    rig.click("Show the working");
    // Every working says what it took, where it holds and who says so.
    for words in ["With: ", "Takes for granted: ", "Holds for: ", "Source: "] {
        assert!(rig.says(words), "{words}");
    }
    rig.click("Hide the working");
    assert!(!rig.says("Takes for granted: "));
}

#[test]
fn a_live_number_shows_what_it_means_in_the_margin() {
    let mut rig = rig::lesson("pressure");
    let entry = heftwise::quantity::catalogue::find("track-width").unwrap();
    assert!(!rig.says(entry.meaning));
    rig.click("90.0 mm");
    assert!(rig.says(entry.meaning));
    assert!(rig.says("In your build: 90.0 mm."), "{:?}", rig.texts());
    rig.click("Put away");
    assert!(!rig.says(entry.meaning));
}

#[test]
fn the_table_of_a_curve_opens() {
    let mut rig = rig::lesson("pressure");
    let before = rig.texts().len();
    rig.click("Show as a table");
    assert!(rig.says("Hide the table"));
    assert!(rig.texts().len() > before + 10, "rows of numbers");
}

#[test]
fn a_heading_picked_comes_to_the_top_of_the_page() {
    let mut rig = rig::lesson("pressure");
    rig.click("Worst beside mean");
    let heading = rig
        .all(|candidate| match candidate {
            Candidate::Text { content: "Worst beside mean", visible_bounds, bounds, .. } => {
                Some((bounds.height, visible_bounds))
            }
            _ => None,
        })
        .into_iter()
        .find_map(|(height, seen)| seen.filter(|_| height > 25.0));
    let seen = heading.expect("the heading is in view");
    assert!(seen.y < 200.0, "{seen:?}");
}

#[test]
fn a_broken_block_says_so_in_its_place_and_the_rest_works() {
    let mut rig = broken();
    assert!(rig.says("This calculator cannot be read"));
    // Where, what is wrong, and the nearest name there is.
    for words in ["lessons/broken/lesson.md:", "ground-presure", "ground-pressure"] {
        assert!(rig.says(words), "{words}: {:?}", rig.texts());
    }
    let place = |rig: &mut Rig, words: &'static str| rig.find(words).expect(words).bounds().y;
    let spoilt = place(&mut rig, "This calculator cannot be read");
    assert!(place(&mut rig, "Before") < spoilt && spoilt < place(&mut rig, "This one works"));
    rig.click("Show the working");
    assert!(rig.says("Holds for: "));
}

#[test]
fn a_link_out_of_the_program_asks_first_and_can_be_copied() {
    let mut rig = broken();
    rig.click("the list");
    assert!(matches!(rig.app.question, Some(Question::Web(_))));
    rig.click("Copy the address");
    assert_eq!(rig.copied, ["https://example.org/soils"]);
    assert_eq!(rig.app.question, None);
}

#[test]
fn a_lesson_changed_on_disk_is_read_again() {
    let folder = tempfile::tempdir().unwrap();
    let lesson = folder.path().join("lessons/broken");
    std::fs::create_dir_all(&lesson).unwrap();
    std::fs::write(lesson.join("lesson.md"), BROKEN).unwrap();
    let source = std::sync::Arc::new(heftwise::lesson::Folder(folder.path().join("lessons")));
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("broken".to_owned())));
    std::fs::write(lesson.join("lesson.md"), BROKEN.replace("ground-presure", "ground-pressure"))
        .unwrap();
    rig.send(Message::LessonsChanged);
    assert!(!rig.says("cannot be read") && rig.says("This one is spoilt"));
    std::fs::remove_dir_all(&lesson).unwrap();
    rig.send(Message::LessonsChanged);
    assert!(rig.says("This lesson is not there any more. Pick another."));
}

#[test]
fn a_lesson_reloads_in_place_even_when_its_file_is_away_for_a_while() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("lessons/long");
    std::fs::create_dir_all(&path).unwrap();
    let text = |word: &str| {
        let head = "+++\nid = \"long\"\ntitle = \"Long\"\norder = 1\ngoals = []\nuses = []\n+++\n";
        format!("{head}\n{}", format!("A paragraph of {word}.\n\n").repeat(80))
    };
    std::fs::write(path.join("lesson.md"), text("mud")).unwrap();
    let source = std::sync::Arc::new(heftwise::lesson::Folder(folder.path().join("lessons")));
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("long".to_owned())));
    rig.key(Named::PageDown, Modifiers::empty());
    rig.key(Named::PageDown, Modifiers::empty());
    let place = rig.scrolled();
    assert!(place > 300.0, "{place}");
    std::fs::write(path.join("lesson.md"), text("sand")).unwrap();
    // While they are being read, the window goes on, and a second change is not lost.
    let reading = rig.app.update(Message::LessonsChanged);
    let again = rig.app.update(Message::LessonsChanged);
    rig.run(again);
    rig.run(reading);
    assert!((rig.scrolled() - place).abs() < 1.0, "{} is not {place}", rig.scrolled());
    std::fs::remove_file(path.join("lesson.md")).unwrap();
    rig.send(Message::LessonsChanged);
    assert!(rig.says("not there any more"));
    std::fs::write(path.join("lesson.md"), text("peat")).unwrap();
    rig.send(Message::LessonsChanged);
    assert!((rig.scrolled() - place).abs() < 1.0, "{} is not {place}", rig.scrolled());
}
