//! The window at other sizes and in both lights: everything is there, nothing is blank.

use std::collections::BTreeSet;

use heftwise::app::screen::Place;
use heftwise::app::settings::Daylight;
use heftwise::app::shell::Message;
use heftwise::app::theme::{DAY, NIGHT};
use iced::Color;

use super::rig::{self, NARROW, Rig};

fn narrow() -> Rig {
    let folder = tempfile::tempdir().unwrap();
    Rig::open(rig::start(&folder), NARROW)
}

fn rgb(colour: Color) -> [u8; 3] {
    let [red, green, blue, _] = colour.into_rgba8();
    [red, green, blue]
}

#[test]
fn a_narrow_window_folds_the_rail_into_a_menu() {
    let mut rig = narrow();
    assert!(rig.find("Walk-round").is_none());
    rig.click("Menu");
    rig.click("Walk-round");
    assert_eq!(rig.app.place, Place::WalkRound);
    assert!(rig.find("Walk-round").is_none(), "the menu closes behind the reader");
    let mut wide = Rig::fresh();
    assert!(wide.find("Menu").is_none() && wide.find("Walk-round").is_some());
}

#[test]
fn nothing_stands_outside_a_narrow_window() {
    let mut rig = narrow();
    for place in [Place::Contents, Place::Lesson("pressure".to_owned()), Place::WalkRound] {
        rig.send(Message::Go(place.clone()));
        for control in rig.controls() {
            let right = control.bounds.x + control.bounds.width;
            assert!(right <= NARROW.width + 0.5, "{place:?}: {control:?}");
        }
    }
}

#[test]
fn a_narrow_lesson_keeps_its_numbers_and_meanings_at_hand() {
    let mut rig = narrow();
    rig.send(Message::Go(Place::Lesson("pressure".to_owned())));
    assert_eq!(rig.field("margin:track-width"), None);
    rig.click("Numbers in this lesson");
    assert_eq!(rig.field("margin:track-width").as_deref(), Some("90 ± 2 mm"));
    rig.click("Hide the numbers");
    rig.click("90.0 mm");
    let entry = heftwise::quantity::catalogue::find("track-width").unwrap();
    let meaning = rig.find(entry.meaning).expect("the meaning is shown");
    assert!(meaning.visible_bounds().is_some(), "and in view though the page is far down");
}

#[test]
fn every_screen_is_drawn_in_both_lights() {
    let mut rig = Rig::fresh();
    for (light, ink) in [(Daylight::Day, DAY), (Daylight::Night, NIGHT)] {
        rig.send(Message::Light(light));
        for place in [
            Place::Contents,
            Place::Lesson("pressure".to_owned()),
            Place::Lesson("impact".to_owned()),
            Place::BuildSheet,
            Place::WalkRound,
            Place::Bench,
            Place::Settings,
        ] {
            rig.send(Message::Go(place.clone()));
            let (pixels, _) = rig.picture();
            let count = |colour| {
                let wanted = rgb(colour);
                pixels.iter().filter(|pixel| pixel[..3] == wanted).count()
            };
            assert!(count(ink.paper) > pixels.len() / 10, "{light:?} {place:?}: no paper");
            assert!(count(ink.panel) > pixels.len() / 10, "{light:?} {place:?}: no rail");
            let inks: BTreeSet<_> = pixels.iter().collect();
            assert!(inks.len() > 50, "{light:?} {place:?}: {} colours, so no text", inks.len());
            assert!(count(ink.text) > 500, "{light:?} {place:?}: no ink");
        }
    }
}

#[test]
fn as_the_system_says_is_followed() {
    let mut rig = Rig::fresh();
    assert!(!rig.app.is_dark());
    rig.send(Message::System(iced::theme::Mode::Dark));
    assert!(rig.app.is_dark());
    rig.send(Message::Light(Daylight::Day));
    assert!(!rig.app.is_dark(), "the reader's own choice comes first");
}

#[test]
fn all_that_moved_can_be_opened() {
    let mut rig = rig::lesson("pressure");
    rig.click(iced::widget::Id::new("margin:mass"));
    rig.key(iced::keyboard::key::Named::ArrowUp, iced::keyboard::Modifiers::empty());
    let more = rig.texts().into_iter().find(|text| text.ends_with(" more"));
    rig.click(more.expect("more moved than there is room for"));
    for moved in rig.app.desk.moved.clone() {
        let entry = heftwise::quantity::catalogue::find(moved.id.name()).unwrap();
        assert!(rig.says(&entry.label[1..]), "{}", entry.label);
    }
    rig.click("Fewer");
}

#[test]
fn larger_text_leaves_less_room_and_folds_the_rail() {
    let mut rig = Rig::fresh();
    assert!(rig.find("Menu").is_none());
    for _ in 0..5 {
        rig.send(Message::Text(true));
    }
    assert!(rig.find("Menu").is_some(), "1280 pixels at 200 % are as narrow as 640");
}
