//! A lesson before a class: steps, keys of a clicker, votes, answers that wait, the teacher's notes.

use heftwise::app::screen::{Place, workshop};
use heftwise::app::shell::Start;
use iced::Size;
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{self, Rig, memory};

/// The two sizes of projector that clubs have.
const PROJECTORS: [Size; 2] = [Size::new(1024.0, 768.0), Size::new(1280.0, 720.0)];

const LESSON: &str = r#"+++
id = "short"
title = "A short lesson"
order = 1
goals = ["Vote once."]
+++

## First section

A paragraph that stands under the first heading.

```guess
question = "Does a wider track press harder?"
kind = "choice"
why = "The same force on more area is less pressure."
[[choice]]
text = "Less hard"
right = true
[[choice]]
text = "Harder"
idea = "More track, more push"
reply = "The push stays the same."
```

```teacher
Let them argue first.
```

## Second section

The last paragraph.
"#;

fn class() -> Rig {
    let folder = tempfile::tempdir().unwrap();
    let source = memory(&[("short", LESSON)]);
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, PROJECTORS[0]);
    rig.send(heftwise::app::shell::Message::Go(Place::Lesson("short".to_owned())));
    press(&mut rig, Named::F5);
    rig
}

fn press(rig: &mut Rig, key: Named) {
    rig.key(key, Modifiers::empty());
}

#[test]
fn it_starts_at_the_title_and_goes_on_by_every_key_a_clicker_has() {
    for (on, back) in [
        (Named::ArrowRight, Named::ArrowLeft),
        (Named::PageDown, Named::PageUp),
        (Named::ArrowDown, Named::ArrowUp),
        (Named::Space, Named::Backspace),
    ] {
        let mut rig = class();
        assert!(rig.says("Vote once.") && !rig.says("The last paragraph."));
        press(&mut rig, on);
        assert!(rig.says("First section"), "{on:?}: {:?}", rig.texts());
        assert!(!rig.says("Vote once."));
        press(&mut rig, back);
        assert!(rig.says("Vote once."));
    }
}

#[test]
fn it_stops_at_both_ends() {
    let mut rig = class();
    press(&mut rig, Named::ArrowLeft);
    assert!(rig.says("1 of "));
    press(&mut rig, Named::End);
    let last = rig.texts();
    press(&mut rig, Named::ArrowRight);
    assert_eq!(rig.texts(), last);
    assert!(rig.says("Second section"));
    press(&mut rig, Named::Home);
    assert!(rig.says("1 of "));
}

#[test]
fn hands_are_counted_by_key_and_the_answer_waits_until_it_is_asked_for() {
    let mut rig = class();
    press(&mut rig, Named::ArrowRight);
    assert!(rig.says("Show the answer"));
    rig.typewrite("112");
    let votes = |rig: &mut Rig| {
        let id = iced::widget::Id::from("votes:short/does-a-wider-track-press-harder:0");
        rig.all(move |candidate| match candidate {
            iced_test::selector::Candidate::TextInput { id: Some(found), state, .. }
                if *found == id =>
            {
                Some(state.text().to_owned())
            }
            _ => None,
        })
    };
    assert_eq!(votes(&mut rig), ["2"]);
    let hidden = ["It is A.", "More track, more push"];
    assert!(hidden.iter().all(|words| !rig.says(words)));
    rig.typewrite("a");
    assert!(rig.says("It is A.") && rig.says("More track, more push"));
    assert_eq!(votes(&mut rig), ["2"]);
    press(&mut rig, Named::Enter);
    assert!(hidden.iter().all(|words| !rig.says(words)));
}

#[test]
fn a_vote_leaves_no_answer_in_the_readers_notebook() {
    let mut rig = class();
    press(&mut rig, Named::ArrowRight);
    rig.typewrite("1a");
    press(&mut rig, Named::Escape);
    assert_eq!(rig.app.place, Place::Lesson("short".to_owned()));
    assert!(!rig.says("Not quite.") && !rig.says("Yes."));
}

#[test]
fn the_teachers_notes_show_only_when_asked_for_and_never_to_a_reader() {
    let mut rig = class();
    press(&mut rig, Named::ArrowRight);
    assert!(!rig.says("For the teacher"));
    rig.typewrite("n");
    assert!(rig.says("For the teacher"));
    press(&mut rig, Named::Escape);
    assert!(!rig.says("For the teacher"));
}

#[test]
fn a_blank_screen_comes_back_where_it_was_by_any_key() {
    let mut rig = class();
    press(&mut rig, Named::ArrowRight);
    let before = rig.texts();
    rig.typewrite("b");
    assert!(!rig.says("First section"));
    press(&mut rig, Named::ArrowRight);
    assert_eq!(rig.texts(), before);
}

#[test]
fn leaving_and_coming_back_keeps_the_step() {
    let mut rig = class();
    press(&mut rig, Named::End);
    let step = rig.texts();
    press(&mut rig, Named::Escape);
    press(&mut rig, Named::F5);
    assert_eq!(rig.texts(), step);
}

/// NEEDS of a projector: letters at least a fiftieth of the height of the screen (common practice,
/// no published source).
#[test]
fn small_letters_are_a_fiftieth_of_the_screen() {
    use heftwise::app::theme::size;
    // Of IBM Plex Sans, as its OS/2 table has them: 516 and 698 of 1000.
    let (x_height, cap_height) = (0.516, 0.698);
    for screen in [768.0_f32, 720.0, 1080.0, 2160.0] {
        let scale = workshop::scale(screen);
        assert!(size::BODY * scale * x_height >= screen / 50.0, "running text at {screen}");
        assert!(size::SMALL * scale * cap_height >= screen / 50.0, "small capitals at {screen}");
    }
}

#[test]
fn every_step_of_every_shipped_lesson_is_reached_and_nothing_is_wider_than_the_screen() {
    for (screen, id) in PROJECTORS.into_iter().zip(["pressure", "impact"]) {
        let folder = tempfile::tempdir().unwrap();
        let mut rig = Rig::open(rig::start(&folder), screen);
        rig.send(heftwise::app::shell::Message::Go(Place::Lesson(id.to_owned())));
        press(&mut rig, Named::F5);
        let steps = last_step(&mut rig);
        for _ in 0..40 * steps {
            if rig.says(&format!("{steps} of {steps}")) {
                break;
            }
            press(&mut rig, Named::PageDown);
        }
        assert!(rig.says(&format!("{steps} of {steps}")), "{id} ends");
        let wide =
            rig.controls().into_iter().find(|it| it.bounds.x + it.bounds.width > screen.width);
        assert_eq!(wide, None);
    }
}

fn last_step(rig: &mut Rig) -> usize {
    let texts = rig.texts();
    let count = texts.iter().find_map(|text| text.strip_prefix("1 of ")?.parse().ok());
    count.expect("a count of steps")
}
