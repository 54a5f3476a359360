//! What the window remembers from one session to the next.

use heftwise::app::question::Next;
use heftwise::app::screen::Place;
use heftwise::app::settings::{Daylight, Settings, TEXT_SIZES};
use heftwise::app::shell::Message;
use heftwise::quantity::UnitSet;
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{self, Rig, WIDE, file};

#[test]
fn units_light_text_builds_and_the_place_in_the_lesson_are_there_the_next_time() {
    let folder = tempfile::tempdir().unwrap();
    let build = file(&folder, "cart.toml", "format = 1\nname = \"Cart\"\n");
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.send(Message::Set(UnitSet::Imperial));
    rig.send(Message::Light(Daylight::Night));
    rig.send(Message::Text(true));
    rig.send(Message::OpenPath(build.clone()));
    rig.send(Message::Go(Place::Lesson("impact".to_owned())));
    rig.key(Named::PageDown, Modifiers::empty());
    rig.key(Named::PageDown, Modifiers::empty());
    let place = rig.scrolled();
    assert!(place > 500.0, "{place}");
    // The place counts even if another screen is looked at before the end.
    rig.send(Message::Go(Place::BuildSheet));
    rig.send(Message::Leave(Next::Close));

    let mut rig = Rig::open(rig::start(&folder), WIDE);
    assert_eq!(rig.app.settings.units.set, UnitSet::Imperial);
    assert!(rig.app.is_dark());
    assert_eq!(rig.app.settings.text_size, 115);
    approx::assert_relative_eq!(rig.app.scale(), 1.15);
    assert_eq!(rig.app.settings.recent, [build]);
    assert_eq!(rig.app.place, Place::Lesson("impact".to_owned()));
    assert!((rig.scrolled() - place).abs() < 2.0, "{} is not {place}", rig.scrolled());
    rig.command("6");
    assert!(rig.says("Text 115 %"));
}

#[test]
fn each_lesson_keeps_its_place_while_another_screen_is_shown() {
    let mut rig = rig::lesson("pressure");
    rig.key(Named::PageDown, Modifiers::empty());
    let place = rig.scrolled();
    assert!(place > 100.0);
    rig.send(Message::Go(Place::WalkRound));
    assert!(rig.scrolled() < 1.0, "another screen starts at its top");
    rig.send(Message::Go(Place::Lesson("pressure".to_owned())));
    assert!((rig.scrolled() - place).abs() < 1.0);
}

#[test]
fn settings_that_make_no_sense_take_their_usual_value_and_the_rest_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let usual = Settings::default();
    assert_eq!(Settings::load(folder.path()), usual, "no file at all");

    file(&folder, "settings.toml", "text-size = 9000\nplace = -4.0\nwindow = [1.0, nan]\n");
    let settings = Settings::load(folder.path());
    assert_eq!(settings.text_size, TEXT_SIZES[6]);
    assert_eq!((settings.place, settings.window), (usual.place, usual.window));

    file(&folder, "settings.toml", "text-size = \"large\"\ndaylight = \"night\"\nold = 1\n");
    let settings = Settings::load(folder.path());
    assert_eq!(settings.text_size, usual.text_size);
    assert_eq!(settings.daylight, Daylight::Night, "one broken line does not lose the others");

    file(&folder, "settings.toml", "]]]");
    assert_eq!(Settings::load(folder.path()), usual);
}

#[test]
fn settings_come_back_as_they_were_saved() {
    let folder = tempfile::tempdir().unwrap();
    let mut settings = Settings { lesson: Some("impact".to_owned()), ..Settings::default() };
    settings.units.picks.insert("ground-pressure".to_owned(), "psi".to_owned());
    for number in 0..220 {
        settings.remember(&folder.path().join(format!("{number}.toml")));
    }
    assert_eq!(settings.recent.len(), 200);
    settings.remember(&folder.path().join("150.toml"));
    assert_eq!(settings.recent.len(), 200, "a build stands in the list once");
    assert!(settings.recent[0].ends_with("150.toml"));
    settings.save(folder.path()).unwrap();
    assert_eq!(Settings::load(folder.path()), settings);
}

#[test]
fn text_grows_and_shrinks_within_its_sizes() {
    let mut rig = Rig::fresh();
    for _ in 0..10 {
        rig.command("+");
    }
    assert_eq!(rig.app.settings.text_size, 200);
    for _ in 0..20 {
        rig.command("-");
    }
    assert_eq!(rig.app.settings.text_size, 80);
    rig.command("0");
    assert_eq!(rig.app.settings.text_size, 100);
}

#[test]
fn a_lesson_that_is_gone_leads_to_the_list() {
    let folder = tempfile::tempdir().unwrap();
    let settings =
        Settings { lesson: Some("no-such".to_owned()), place: 900.0, ..Settings::default() };
    settings.save(&rig::folders(&folder).settings).unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    assert_eq!(rig.app.place, Place::Contents);
    assert!(rig.scrolled() < 1.0, "the list is shown from its top");
}
