//! Find: lessons, numbers and rules by their words, from any screen, by key.

use heftwise::app::find::{Group, Index, Way};
use heftwise::app::question::Question;
use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use heftwise::lesson::{Library, Shipped};
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{self, Rig};

const NONE: Modifiers = Modifiers::empty();

fn index() -> Index {
    Index::of(&Library::load(Shipped))
}

/// The first hit of a group.
fn first(index: &Index, text: &str, group: Group) -> String {
    let found = index.find(text);
    let hits = found.iter().find(|hits| hits.group == group);
    hits.and_then(|hits| hits.best.first()).map(|hit| hit.title.clone()).unwrap_or_default()
}

#[test]
fn case_hyphens_order_and_a_small_slip_do_not_matter() {
    let index = index();
    for text in ["track width", "Track-Width", "WIDTH track", "trak width", "track wdith"] {
        assert_eq!(first(&index, text, Group::Numbers), "Track width", "{text}");
    }
    assert_eq!(first(&index, "sinkge", Group::Numbers), "Sinkage (mean)");
    assert_eq!(first(&index, "impact", Group::Lessons), "Impact: the sudden stop");
    assert_eq!(
        first(&index, "squashed chord", Group::Rules),
        "A squashed wheel is flat over a chord"
    );
}

#[test]
fn a_symbol_a_meaning_and_the_text_of_a_lesson_are_found() {
    let index = index();
    let numbers = index.find("F_peak");
    assert!(numbers.iter().any(|hits| hits.group == Group::Numbers), "{numbers:?}");
    let text = index.find("hopper battery forward");
    let lessons = text.iter().find(|hits| hits.group == Group::Lessons).unwrap();
    assert!(matches!(lessons.best[0].to, Way::Part { .. }), "{lessons:?}");
}

#[test]
fn every_word_has_to_be_there_and_nothing_finds_nothing() {
    let index = index();
    assert!(index.find("").is_empty());
    assert!(index.find(" – ").is_empty());
    assert!(index.find("track zyxwvut").is_empty());
}

#[test]
fn every_hit_of_a_common_word_leads_somewhere() {
    let library = Library::load(Shipped);
    for hit in index().find("the").into_iter().flat_map(|hits| hits.best) {
        match hit.to {
            Way::Lesson(id) => assert!(library.lesson(&id).is_some(), "{id}"),
            Way::Part { lesson, anchor } => {
                let headings = &library.lesson(&lesson).unwrap().headings;
                assert!(headings.iter().any(|h| h.anchor == anchor), "{lesson} {anchor}");
            }
            Way::Number(id) => {
                assert!(heftwise::quantity::catalogue::find(id.name()).is_some(), "{id}");
            }
        }
    }
}

#[test]
fn it_opens_from_any_screen_and_enter_opens_the_first() {
    for place in [
        Place::Contents,
        Place::Lesson("impact".to_owned()),
        Place::BuildSheet,
        Place::WalkRound,
        Place::Notebook,
        Place::Bench,
        Place::Settings,
    ] {
        let mut rig = Rig::fresh();
        rig.send(Message::Go(place.clone()));
        rig.command("f");
        assert!(matches!(rig.app.question, Some(Question::Find(_))), "{place:?}");
        assert!(rig.says("Type a word or two."), "an empty card says what to do");
        rig.typewrite("pressure on the ground");
        rig.key(Named::Enter, NONE);
        assert_eq!(rig.app.question, None, "{place:?}");
        assert_eq!(rig.app.place, Place::Lesson("pressure".to_owned()), "{place:?}");
    }
}

#[test]
fn arrows_go_through_what_is_found_and_enter_opens_it() {
    let mut rig = Rig::fresh();
    rig.command("f");
    rig.typewrite("contact length");
    let field = rig.focused().unwrap();
    rig.key(Named::ArrowDown, NONE);
    let one = rig.focused().unwrap();
    rig.key(Named::ArrowDown, NONE);
    let two = rig.focused().unwrap();
    assert!(field.bounds.y < one.bounds.y && one.bounds.y < two.bounds.y);
    assert!(two.seen.is_some(), "in view");
    rig.key(Named::ArrowUp, NONE);
    rig.key(Named::ArrowUp, NONE);
    assert_eq!(rig.focused(), Some(field));
    rig.key(Named::ArrowUp, NONE);
    rig.key(Named::ArrowDown, NONE);
    rig.key(Named::ArrowDown, NONE);
    rig.key(Named::Enter, NONE);
    assert_eq!(rig.app.question, None);
}

#[test]
fn a_number_is_shown_on_the_build_sheet() {
    let mut rig = Rig::fresh();
    rig.command("f");
    rig.typewrite("track width");
    rig.click("Track width");
    assert_eq!(rig.app.place, Place::BuildSheet);
    assert_eq!(rig.field("find-number").as_deref(), Some("track-width"));
    assert!(rig.field("sheet:track-width").is_some());
}

#[test]
fn escape_puts_it_away_at_once_and_words_that_are_nowhere_say_so() {
    let mut rig = rig::lesson("pressure");
    rig.click("Find");
    rig.typewrite("qqqqqq");
    assert!(rig.says("Nothing has all of these words."));
    rig.key(Named::Escape, NONE);
    assert_eq!(rig.app.question, None);
    assert_eq!(rig.app.place, Place::Lesson("pressure".to_owned()));
}
