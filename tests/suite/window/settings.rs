//! The settings' screen: units, light, text, motion, folders, and the place of the window.

use heftwise::app::screen::{Place, preferences};
use heftwise::app::settings::{Daylight, Settings};
use heftwise::app::shell::Message;
use heftwise::quantity::UnitSet;
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;
use iced::{Point, Size};
use preferences::Which;

use super::rig::{self, Rig, WIDE, file};

const TIDES: &str = "+++\nid = \"tides\"\ntitle = \"Tides\"\norder = 3\nminutes = 5\nneeds = []\n\
                     goals = [\"See mud dry from the top.\"]\nuses = []\n+++\n\n## Ebb\n\nIt dries.\n";

fn at_settings() -> Rig {
    let mut rig = Rig::fresh();
    rig.command("6");
    assert_eq!(rig.app.place, Place::Settings);
    rig
}

#[test]
fn each_choice_is_made_with_one_press() {
    let mut rig = at_settings();
    rig.click("Imperial: in, lb, lbf");
    assert_eq!(rig.app.settings.units.set, UnitSet::Imperial);
    rig.click("Dark");
    assert_eq!(rig.app.settings.daylight, Daylight::Night);
    rig.click("As system");
    assert_eq!(rig.app.settings.daylight, Daylight::Follow);
    rig.click("Larger");
    assert_eq!(rig.app.settings.text_size, 115);
    rig.click("Usual");
    assert_eq!(rig.app.settings.text_size, 100);
    rig.click("Stand still");
    assert!(rig.app.settings.still);
}

#[test]
fn units_picked_for_single_numbers_are_let_go_of() {
    let mut rig = at_settings();
    assert!(!rig.says("of its own"));
    rig.app.settings.units.picks.insert("mass".to_owned(), "g".to_owned());
    assert!(rig.says("1 number has a unit of its own."));
    rig.click("Show them in the units of the set");
    assert!(rig.app.settings.units.picks.is_empty());
}

#[test]
fn a_folder_for_builds_has_to_be_there() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = at_settings();
    let none = folder.path().join("none");
    rig.click(Id::new("folder-builds"));
    rig.typewrite(&none.display().to_string());
    rig.key(Named::Enter, Modifiers::empty());
    assert!(rig.says("There is no folder"), "{:?}", rig.texts());
    assert_eq!(rig.app.settings.builds, None);
    assert_eq!(rig.field("folder-builds"), Some(none.display().to_string()), "nothing is lost");
    std::fs::create_dir(&none).unwrap();
    rig.key(Named::Enter, Modifiers::empty());
    assert_eq!(rig.app.settings.builds.as_ref(), Some(&none));
    rig.click("Use none");
    assert_eq!(rig.app.settings.builds, None);
}

#[test]
fn own_lessons_stand_among_the_others_and_are_there_the_next_time() {
    let folder = tempfile::tempdir().unwrap();
    let own = folder.path().join("mine");
    std::fs::create_dir_all(own.join("tides")).unwrap();
    file(&folder, "mine/tides/lesson.md", TIDES);
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("6");
    rig.click(Id::new("folder-lessons"));
    rig.typewrite(&own.display().to_string());
    rig.key(Named::Enter, Modifiers::empty());
    assert!(rig.says("1 lesson of your own is read."), "{:?}", rig.texts());
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("See mud dry from the top.") && rig.says("Pressure on the ground"));
    // Find knows them as well.
    rig.command("f");
    rig.typewrite("ebb");
    rig.key(Named::Enter, Modifiers::empty());
    assert_eq!(rig.app.place, Place::Lesson("tides".to_owned()));

    file(&folder, "mine/tides/lesson.md", &TIDES.replace("the top", "below"));
    rig.send(Message::LessonsChanged);
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("See mud dry from below."));

    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("See mud dry from below."));
}

#[test]
fn an_own_lesson_takes_the_place_of_one_of_the_same_name() {
    let folder = tempfile::tempdir().unwrap();
    let own = folder.path().join("mine");
    std::fs::create_dir_all(own.join("impact")).unwrap();
    file(&folder, "mine/impact/lesson.md", &TIDES.replace("tides", "impact"));
    let mut rig = at_settings();
    rig.send(Message::Choices(preferences::Message::Picked(Which::Lessons, Some(own))));
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("See mud dry from the top.") && !rig.says("Impact: the sudden stop"));
    rig.send(Message::Choices(preferences::Message::None(Which::Lessons)));
    assert!(!rig.says("See mud dry from the top.") && rig.says("Impact: the sudden stop"));
}

#[test]
fn a_broken_folder_of_lessons_is_said_and_the_others_stay() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = at_settings();
    let set = |rig: &mut Rig, path| {
        let picked = preferences::Message::Picked(Which::Lessons, Some(path));
        rig.send(Message::Choices(picked));
    };
    set(&mut rig, folder.path().join("none"));
    assert!(rig.says("none of its lessons is shown"));
    rig.command("1");
    assert!(rig.says("none of its lessons is shown"), "the list of lessons says so too");
    assert!(rig.says("Pressure on the ground"));
    rig.click("To the settings");
    assert_eq!(rig.app.place, Place::Settings);

    set(&mut rig, folder.path().to_owned());
    assert!(rig.says("There is no lesson in it"));

    std::fs::create_dir_all(folder.path().join("tides")).unwrap();
    let broken = format!("{TIDES}\n```calculator\nchange = [\"no-such\"]\nfind = []\n```\n");
    file(&folder, "tides/lesson.md", &broken);
    rig.send(Message::LessonsChanged);
    assert!(rig.says("1 lesson of your own is read."));
    assert!(rig.says("no-such"), "with what is wrong in it: {:?}", rig.texts());
}

#[test]
fn the_window_comes_back_where_and_as_large_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.send(Message::Text(true));
    // The system tells places in the pixels of the window, larger by the size of the text.
    rig.send(Message::Moved(Point::new(100.0, 40.0)));
    rig.send(Message::Resized(Size::new(800.0, 600.0)));
    rig.send(Message::Leave(heftwise::app::question::Next::Close));
    let settings = Settings::load(&rig::folders(&folder).settings);
    let (x, y) = settings.at.unwrap();
    approx::assert_relative_eq!(x, 115.0, max_relative = 1e-5);
    approx::assert_relative_eq!(y, 46.0, max_relative = 1e-5);
    approx::assert_relative_eq!(settings.window.0, 920.0, max_relative = 1e-5);

    file(&folder, "settings.toml", "at = [-32000.0, 5.0]\n");
    assert_eq!(Settings::load(folder.path()).at, None, "put away, not a place on a screen");
}

#[test]
fn the_screen_fits_a_narrow_window_and_large_text() {
    for (width, sizes) in [(360.0, 0), (1280.0, 4)] {
        let folder = tempfile::tempdir().unwrap();
        let mut rig = Rig::open(rig::start(&folder), Size::new(width, 800.0));
        (0..sizes).for_each(|_| rig.send(Message::Text(true)));
        rig.send(Message::Go(Place::Settings));
        for control in rig.controls() {
            let right = control.bounds.x + control.bounds.width;
            assert!(right <= width + 0.5, "{width}: {control:?}");
        }
    }
}
