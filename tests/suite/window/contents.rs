//! The list of lessons: a first start, progress, what to read first, where the reader stopped.

use heftwise::app::question::Next;
use heftwise::app::screen::Place;
use heftwise::app::shell::{App, Message, Start};
use heftwise::quantity::catalogue::pressure::GROUND_PRESSURE;
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{self, Rig, WIDE, file, memory};

const NONE: Modifiers = Modifiers::empty();
const WELCOME: &str = "This is Sandpiper, an example. Change its mass and watch.";

/// The title of the last lesson.
const LAST: &str = "Walk round your build";

const TWO: [(&str, &str); 2] = [
    (
        "first",
        "+++\nid = \"first\"\ntitle = \"The first\"\norder = 1\nminutes = 7\nneeds = []\n\
         goals = []\nuses = []\n+++\n\nOne.\n",
    ),
    (
        "second",
        "+++\nid = \"second\"\ntitle = \"The second\"\norder = 2\nneeds = [\"first\"]\n\
         goals = []\nuses = []\n+++\n\nTwo.\n\n```guess\nquestion = \"Heavier, so the pressure?\"\n\
         kind = \"direction\"\nanswer = \"up\"\nwhy = \"More weight.\"\n\
         [reply]\nsame = \"No.\"\ndown = \"No.\"\n```\n",
    ),
];

#[test]
fn a_first_start_leads_to_a_changed_number_at_once() {
    let mut rig = Rig::fresh();
    assert!(rig.says(WELCOME));
    assert!(rig.says("830 Pa"));
    let before = rig.app.desk.outcome.values.si(GROUND_PRESSURE).unwrap();
    // Its field has the focus.
    rig.key(Named::ArrowUp, NONE);
    let after = rig.app.desk.outcome.values.si(GROUND_PRESSURE).unwrap();
    assert!(after > before);
    assert!(rig.says("was 830 Pa"));
    assert!(rig.focused().is_some(), "the field keeps the focus");
    rig.command("2");
    assert_eq!(rig.app.place, Place::BuildSheet, "and shortcuts are heard all the same");
}

#[test]
fn the_first_frame_lists_what_can_be_seen_and_the_next_one_all() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::fresh();
    rig.app = App::on_screen(rig::start(&folder)).0;
    assert!(rig.says(WELCOME) && rig.says("Read first:"));
    assert!(!rig.says(LAST), "far below the foot of the window");
    rig.send(Message::Drawn);
    assert!(rig.says(LAST));
}

#[test]
fn each_lesson_is_listed_in_one_place() {
    let mut rig = Rig::fresh();
    let listed = |rig: &mut Rig| rig.texts().iter().filter(|text| *text == LAST).count();
    assert_eq!(listed(&mut rig), 1, "on the page");
    rig.send(Message::Go(Place::Settings));
    assert_eq!(listed(&mut rig), 1, "beside it");
}

#[test]
fn the_welcome_is_put_away_for_good() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.click("Put this away");
    assert!(!rig.says(WELCOME));
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    assert!(!rig.says(WELCOME), "never again");
}

#[test]
fn who_comes_with_a_build_is_not_shown_an_example() {
    let folder = tempfile::tempdir().unwrap();
    let build = Some(file(&folder, "cart.toml", "format = 1\nname = \"Cart\"\n"));
    let mut rig = Rig::open(Start { build, ..rig::start(&folder) }, WIDE);
    assert!(!rig.says("Change its mass and watch."));
}

#[test]
fn start_my_own_leads_to_the_five_questions() {
    let mut rig = Rig::fresh();
    rig.click("Start my own");
    assert_eq!(rig.app.place, Place::Bench);
    rig.typewrite("7 kg");
    assert_eq!(rig.field("five:mass").as_deref(), Some("7 kg"), "its first field has the focus");
    rig.command("1");
    assert!(!rig.says(WELCOME));
}

#[test]
fn progress_minutes_and_what_to_read_first_stand_on_the_cards() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(Start { source: memory(&TWO), ..rig::start(&folder) }, WIDE);
    assert!(rig.says("7 minutes"), "as the author says");
    assert!(rig.says("1 minute to read"), "else reckoned from its words: {:?}", rig.texts());
    assert!(rig.says("Not begun"));
    assert!(!rig.texts().iter().any(|text| text.contains("guesses answered")), "nobody opened it");
    assert!(rig.says("Read first:"));
    rig.send(Message::Go(Place::Lesson("second".to_owned())));
    rig.click("It goes up");
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("Opened"));
    assert!(rig.says("guesses answered 1 of 1"), "{:?}", rig.texts());
    rig.send(Message::Go(Place::Lesson("first".to_owned())));
    rig.send(Message::Reading(heftwise::app::screen::reading::Message::Finished(true)));
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("✓ Finished"));
    rig.click("✓ The first");
    assert_eq!(rig.app.place, Place::Lesson("first".to_owned()));
}

#[test]
fn the_list_leads_back_to_the_section_that_was_left() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    assert!(!rig.says("Go on where you stopped"), "nothing was begun");
    rig.send(Message::Go(Place::Lesson("pressure".to_owned())));
    rig.send(Message::Reading(heftwise::app::screen::reading::Message::Jump(
        "will-it-sink".into(),
    )));
    let place = rig.scrolled();
    assert!(place > 500.0, "{place}");
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("Pressure on the ground: Will it sink?"), "{:?}", rig.texts());
    rig.click("Go on");
    assert_eq!(rig.app.place, Place::Lesson("pressure".to_owned()));
    assert!((rig.scrolled() - place).abs() < 2.0);
    rig.send(Message::Leave(Next::Close));

    let mut rig = Rig::open(rig::start(&folder), WIDE);
    assert_eq!(rig.app.place, Place::Lesson("pressure".to_owned()));
    rig.send(Message::Go(Place::Contents));
    assert!(rig.says("Pressure on the ground: Will it sink?"), "the next time as well");
}

#[test]
fn a_build_sheet_without_parts_says_what_to_do() {
    let mut rig = Rig::fresh();
    rig.send(Message::New);
    assert!(rig.says("No parts yet."));
    rig.send(Message::Go(Place::Bench));
    assert!(rig.says("No companion yet."));
    rig.send(Message::Go(Place::Notebook));
    assert!(rig.says("Nothing is written here yet."));
}
