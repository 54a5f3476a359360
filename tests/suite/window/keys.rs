//! Reading by key: what a key asks for when no control wants it.

use heftwise::app::find::view::Act;
use heftwise::app::keys::{Scroll, message};
use heftwise::app::question::{Next, Question};
use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use iced::Size;
use iced::keyboard::{self, Key, Modifiers, key::Named};

use super::rig::{self, Rig, key_event};

const NONE: Modifiers = Modifiers::empty();

fn pressed(key: Key, modifiers: Modifiers) -> keyboard::Event {
    match key_event(key, modifiers, None) {
        iced::Event::Keyboard(event) => event,
        other => panic!("{other:?}"),
    }
}

/// Messages are compared by how they print: not all that they hold can be compared.
fn asks(key: Key, modifiers: Modifiers) -> String {
    format!("{:?}", message(&pressed(key, modifiers), None, &Place::Contents))
}

fn some(message: Message) -> String {
    format!("{:?}", Some(message))
}

#[test]
fn each_key_of_the_page_moves_it() {
    let cases = [
        (Named::PageDown, NONE, Scroll::Pages(1)),
        (Named::PageUp, NONE, Scroll::Pages(-1)),
        (Named::Space, NONE, Scroll::Pages(1)),
        (Named::Space, Modifiers::SHIFT, Scroll::Pages(-1)),
        (Named::ArrowDown, NONE, Scroll::Lines(1)),
        (Named::ArrowUp, NONE, Scroll::Lines(-1)),
        (Named::Home, NONE, Scroll::Top),
        (Named::End, NONE, Scroll::End),
    ];
    for (key, modifiers, scroll) in cases {
        assert_eq!(asks(Key::Named(key), modifiers), some(Message::Scroll(scroll)), "{key:?}");
    }
}

#[test]
fn each_shortcut_does_what_the_sheet_of_keys_says() {
    let both = Modifiers::COMMAND | Modifiers::SHIFT;
    let cases = [
        ("o", Modifiers::COMMAND, Message::Open),
        ("s", Modifiers::COMMAND, Message::Save),
        ("s", both, Message::SaveAs),
        ("z", Modifiers::COMMAND, Message::Undo),
        ("z", both, Message::Redo),
        ("u", Modifiers::COMMAND, Message::OtherUnits),
        ("d", Modifiers::COMMAND, Message::OtherLight),
        ("q", Modifiers::COMMAND, Message::Leave(Next::Close)),
        ("1", Modifiers::COMMAND, Message::Go(Place::Contents)),
        ("2", Modifiers::COMMAND, Message::Go(Place::BuildSheet)),
        ("3", Modifiers::COMMAND, Message::Go(Place::WalkRound)),
        ("4", Modifiers::COMMAND, Message::Go(Place::Notebook)),
        ("5", Modifiers::COMMAND, Message::Go(Place::Bench)),
        ("6", Modifiers::COMMAND, Message::Go(Place::Settings)),
        (",", Modifiers::COMMAND, Message::Go(Place::Settings)),
        ("f", Modifiers::COMMAND, Message::Find(Act::Begin)),
        ("p", Modifiers::COMMAND, Message::PrintHere),
        ("+", Modifiers::COMMAND, Message::Text(true)),
        ("=", Modifiers::COMMAND, Message::Text(true)),
        ("-", Modifiers::COMMAND, Message::Text(false)),
        ("0", Modifiers::COMMAND, Message::TextUsual),
    ];
    for (letter, modifiers, message) in cases {
        let key = Key::Character(letter.into());
        assert_eq!(asks(key, modifiers), some(message), "{letter} with {modifiers:?}");
    }
    assert_eq!(asks(Key::Named(Named::F1), NONE), some(Message::KeysTurned));
    assert_eq!(asks(Key::Named(Named::F6), NONE), some(Message::FocusPage));
    let turn = |back| some(Message::Turn { back });
    assert_eq!(asks(Key::Named(Named::ArrowLeft), Modifiers::ALT), turn(true));
    assert_eq!(asks(Key::Named(Named::ArrowRight), Modifiers::ALT), turn(false));
    assert_eq!(asks(Key::Character("s".into()), NONE), "None", "a letter alone is no shortcut");
}

#[test]
fn under_a_question_it_alone_is_moved_answered_and_put_away() {
    let heard =
        |key, modifiers| message(&pressed(key, modifiers), Some(&Question::Keys), &Place::Contents);
    assert!(matches!(heard(Key::Named(Named::Tab), NONE), Some(Message::Focus { back: false })));
    assert!(matches!(heard(Key::Named(Named::Escape), NONE), Some(Message::QuestionClosed)));
    let down = heard(Key::Named(Named::PageDown), NONE);
    assert!(matches!(down, Some(Message::Scroll(Scroll::Pages(1)))));
    assert!(heard(Key::Named(Named::Space), NONE).is_none(), "it answers");
    assert!(heard(Key::Named(Named::ArrowRight), Modifiers::ALT).is_none());
    assert!(heard(Key::Character("n".into()), Modifiers::COMMAND).is_none());
}

#[test]
fn a_lesson_is_read_to_its_end_and_back_by_key() {
    let mut rig = rig::lesson("pressure");
    rig.key(Named::ArrowDown, NONE);
    let line = rig.scrolled();
    assert!(line > 0.0);
    rig.key(Named::PageDown, NONE);
    let page = rig.scrolled() - line;
    assert!(page > 5.0 * line, "a page is more than a few lines: {page}");
    assert!(page < 800.0, "a page leaves a little of the last one in view: {page}");
    rig.key(Named::End, NONE);
    let end = rig.scrolled();
    assert!(end > 3_000.0, "{end}");
    rig.key(Named::PageDown, NONE);
    assert!((rig.scrolled() - end).abs() < 1.0, "the end is the end");
    rig.key(Named::Home, NONE);
    assert!(rig.scrolled() < 1.0);
}

#[test]
fn lessons_turn_like_pages() {
    let mut rig = rig::lesson("heat");
    rig.key(Named::ArrowRight, Modifiers::ALT);
    assert_eq!(rig.app.place, Place::Lesson("spiral".to_owned()));
    rig.key(Named::ArrowLeft, Modifiers::ALT);
    assert_eq!(rig.app.place, Place::Lesson("heat".to_owned()));
    let mut rig = rig::lesson("walk-round");
    rig.key(Named::ArrowRight, Modifiers::ALT);
    assert_eq!(rig.app.place, Place::Lesson("walk-round".to_owned()), "there is none after it");
}

#[test]
fn the_sheet_of_keys_opens_and_closes_by_key() {
    let mut rig = Rig::fresh();
    rig.key(Named::F1, NONE);
    for (keys, does) in heftwise::app::question::KEYS {
        assert!(rig.says(keys) && rig.says(does), "{keys}");
    }
    rig.key(Named::Escape, NONE);
    assert_eq!(rig.app.question, None);
}

#[test]
fn the_sheet_of_keys_is_read_to_its_end_by_key() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(rig::start(&folder), Size::new(400.0, 300.0));
    rig.key(Named::F1, NONE);
    let (_, last) = *heftwise::app::question::KEYS.last().unwrap();
    let sees = |rig: &mut Rig| rig.find(last).unwrap().visible_bounds().is_some();
    assert!(!sees(&mut rig), "the window is too low for all of it");
    for (down, up) in [(Named::End, Named::Home), (Named::PageDown, Named::PageUp)] {
        (0..9).for_each(|_| rig.key(down, NONE));
        assert!(sees(&mut rig), "{down:?}");
        (0..9).for_each(|_| rig.key(up, NONE));
        assert!(!sees(&mut rig), "{up:?}");
    }
    (0..80).for_each(|_| rig.key(Named::ArrowDown, NONE));
    assert!(sees(&mut rig));
}
