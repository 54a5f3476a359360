//! The bench: five questions, a what-if, companions and what differs, recent builds.

use std::fs;

use heftwise::app::question::Question;
use heftwise::app::screen::{Place, bench, build_sheet};
use heftwise::app::settings::Kept;
use heftwise::app::shell::{Message, Start};
use heftwise::quantity::UnitSet;
use heftwise::quantity::catalogue::{
    drive::*, ground::SINKAGE_EXPONENT, machine::MASS, pressure::*, running_gear::*,
};
use heftwise::sheet::Edit;
use iced::Size;
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;

use super::rig::{self, NARROW, Rig, WIDE, file};

const CART: &str = "format = 1\nname = \"Cart\"\n\n[machine]\nmass = \"6 kg\"\n\n[running-gear]\n\
                    track-count = \"2\"\ntrack-width = \"70 mm\"\ncontact-length = \"300 mm\"\n";

fn at_bench() -> Rig {
    let mut rig = Rig::fresh();
    rig.command("5");
    assert_eq!(rig.app.place, Place::Bench);
    rig
}

fn with_cart(folder: &tempfile::TempDir) -> Rig {
    let build = Some(file(folder, "cart.toml", CART));
    let mut rig = Rig::open(Start { build, ..rig::start(folder) }, WIDE);
    rig.send(Message::Go(Place::Bench));
    rig
}

fn widen(rig: &mut Rig, text: &str) {
    let edit = Edit::Set { id: TRACK_WIDTH.any(), text: text.to_owned() };
    rig.send(Message::BuildSheet(build_sheet::Message::Edit(edit, None)));
}

fn types(rig: &mut Rig, field: &'static str, text: &str) {
    rig.click(Id::new(field));
    rig.typewrite(text);
}

#[test]
fn five_answers_start_a_build() {
    let mut rig = at_bench();
    rig.click("Start with five questions");
    assert!(rig.focused().is_some(), "the first field has the focus");
    rig.typewrite("7 kg");
    rig.click("Two tracks");
    types(&mut rig, "five:length", "40 cm");
    // A bare number is in the unit the field names.
    types(&mut rig, "five:width", "85");
    rig.click("A motor");
    types(&mut rig, "five:drive", "2");
    rig.click("Wet clay");
    // 7 kg on two tracks of 85 mm by 400 mm, by hand: 7 · 9.80665 / 0.068 = 1010 Pa.
    assert!(rig.says("1.01 kPa"), "the first answer stands on the card");
    rig.click("Start this build");
    assert_eq!(rig.app.place, Place::BuildSheet);
    let sheet = rig.app.desk.sheet();
    assert_eq!(sheet.number(MASS), Some("7 kg"));
    assert_eq!(sheet.number(TRACK_COUNT), Some("2"));
    assert_eq!(sheet.number(CONTACT_LENGTH), Some("40 cm"));
    assert_eq!(sheet.number(TRACK_WIDTH), Some("85 mm"));
    assert_eq!(sheet.number(MOTOR_COUNT), Some("2"));
    assert!(sheet.number(SINKAGE_EXPONENT).is_some(), "the row of the ground");
    assert!(rig.app.desk.history.is_changed_since_save(), "it is in no file, so it is not lost");
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().numbers().count(), 0, "all answers are one change");
}

#[test]
fn wheels_and_skis_ask_for_their_own_sizes() {
    let mut rig = at_bench();
    rig.click("Start with five questions");
    rig.click("Two wheels, two skis");
    for (field, text) in [
        ("five:mass", "8 kg"),
        ("five:length", "100 mm"),
        ("five:width", "50 mm"),
        ("five:ski-length", "500 mm"),
        ("five:ski-width", "80 mm"),
    ] {
        types(&mut rig, field, text);
    }
    // 8 · 9.80665 / (2 · 0.1 · 0.05 + 2 · 0.5 · 0.08) = 872 Pa, by hand.
    assert!(rig.says("872 Pa"));
    rig.click("An engine");
    types(&mut rig, "five:drive", "3 kW");
    rig.click("Start this build");
    let sheet = rig.app.desk.sheet();
    assert_eq!(sheet.number(WHEEL_PATCH_LENGTH), Some("100 mm"));
    assert_eq!(sheet.number(SKI_COUNT), Some("2"));
    assert_eq!(sheet.number(ENGINE_POWER), Some("3 kW"));
    let pressure = rig.app.desk.outcome.values.si(GROUND_PRESSURE).unwrap();
    approx::assert_relative_eq!(pressure, 8.0 * 9.80665 / 0.09, max_relative = 1e-9);
}

#[test]
fn an_answer_that_is_no_number_says_so_and_loses_nothing() {
    let mut rig = at_bench();
    rig.click("Start with five questions");
    rig.typewrite("heavy");
    types(&mut rig, "five:width", "85 mm");
    rig.click("Start this build");
    assert_eq!(rig.app.place, Place::Bench);
    assert_eq!(rig.field("five:mass").as_deref(), Some("heavy"));
    assert_eq!(rig.field("five:width").as_deref(), Some("85 mm"));
    assert!(rig.says("heavy"), "the words at the field name what was typed");
    rig.key(Named::Enter, Modifiers::empty());
    assert_eq!(rig.app.desk.name(), "Sandpiper", "Enter does not pass it either");
}

#[test]
fn every_answer_can_be_left_out_and_all_can_be_skipped() {
    let mut rig = at_bench();
    rig.click("Start with five questions");
    rig.key(Named::Enter, Modifiers::empty());
    assert_eq!(rig.app.place, Place::BuildSheet);
    assert_eq!(rig.app.desk.sheet().numbers().count(), 0);
    rig.command("5");
    rig.click("Start with five questions");
    rig.click("Skip, start blank");
    assert_eq!(rig.app.desk.name(), "Unnamed build");
}

#[test]
fn bare_answers_are_in_the_units_of_the_reader() {
    let mut rig = at_bench();
    rig.send(Message::Set(UnitSet::Imperial));
    rig.click("Start with five questions");
    rig.typewrite("15");
    rig.click("Start this build");
    assert_eq!(rig.app.desk.sheet().number(MASS), Some("15 lb"));
}

#[test]
fn a_changed_build_is_not_put_away_unasked_by_a_new_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = with_cart(&folder);
    widen(&mut rig, "75 mm");
    rig.click("Start with five questions");
    rig.click("Start this build");
    assert!(matches!(rig.app.question, Some(Question::Unsaved(_))));
    rig.click("Stay");
    assert_eq!(rig.app.desk.name(), "Cart");
}

#[test]
fn a_what_if_leaves_the_build_beside_its_copy() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = with_cart(&folder);
    rig.click("Try a what-if");
    assert_eq!(rig.app.desk.name(), "Cart, what if");
    assert_eq!(rig.app.desk.path, None, "a change here never reaches the file of the build");
    let path = folder.path().join("cart.toml");
    assert_eq!(rig.app.settings.companions, [Kept::File(path.clone())]);
    assert_eq!(rig.app.desk.company.all()[0].name, "Cart");
    widen(&mut rig, "140 mm");
    assert_eq!(rig.app.desk.company.all()[0].sheet.text(), CART);
    assert_eq!(fs::read_to_string(path).unwrap(), CART);

    rig.click("What differs");
    assert!(rig.says("1 given number and"), "{:?}", rig.texts());
    assert!(rig.says("half of yours"));
    assert!(rig.says("70.0 mm") && rig.says("140 mm"));
    // Twice the width, half the pressure: 1400 Pa and 700 Pa, by hand 6 · 9.80665 / 0.042.
    assert!(rig.says("1.40 kPa") && rig.says("700 Pa"));
    widen(&mut rig, "70 mm");
    assert!(rig.says("They are alike in every number."), "it follows the build");
    rig.click("Hide what differs");
    assert!(!rig.says("They are alike"));
}

#[test]
fn a_third_build_beside_has_no_room() {
    let mut rig = at_bench();
    rig.send(Message::CompanionExample("bullock"));
    rig.send(Message::CompanionExample("dune-cart"));
    assert!(rig.says("Two builds stand beside yours already."));
    rig.click("Try a what-if");
    assert_eq!(rig.app.desk.name(), "Sandpiper", "greyed");
    rig.click("Remove");
    rig.click("Try a what-if");
    assert_eq!(rig.app.desk.name(), "Sandpiper, what if");
    let kept = [Kept::Example("dune-cart".to_owned()), Kept::Example("sandpiper".to_owned())];
    assert_eq!(rig.app.settings.companions, kept, "an example is found again as one");
}

#[test]
fn what_differs_tells_limits_and_parts_and_goes_with_its_companion() {
    let mut rig = at_bench();
    rig.send(Message::CompanionExample("bullock"));
    rig.click("What differs");
    assert!(rig.says("Bullock and yours"));
    assert!(rig.says("Parts by mass"));
    // Bullock's low end breaks through and Sandpiper's does not: the demo's own point.
    assert!(rig.says("Theirs: gives, margin 0.883. Yours: holds, margin 2.70."));
    let more = rig.texts().into_iter().find(|text| text.ends_with(" more")).unwrap();
    let before = rig.texts().len();
    rig.click(more);
    assert!(rig.texts().len() > before + 50, "every number is there");
    rig.click("Remove");
    assert!(!rig.says("Bullock and yours"));
}

#[test]
fn a_build_is_renamed_on_the_bench_as_one_change() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = with_cart(&folder);
    types(&mut rig, bench::NAME, " two");
    assert_eq!(rig.app.desk.name(), "Cart two");
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.name(), "Cart");
}

#[test]
fn a_recent_build_that_is_gone_says_so_and_leaves_the_list_without_its_file() {
    let folder = tempfile::tempdir().unwrap();
    let (one, two) = (file(&folder, "one.toml", CART), file(&folder, "two.toml", CART));
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("5");
    assert!(rig.says("None yet."), "an empty list says what fills it");
    rig.send(Message::OpenPath(one.clone()));
    rig.send(Message::OpenPath(two.clone()));
    assert!(rig.says("two.toml") && rig.says("On the desk."));
    fs::remove_file(&one).unwrap();
    rig.send(Message::Returned);
    assert!(rig.says("Not there any more"));
    rig.click("Take off the list");
    assert_eq!(rig.app.settings.recent, [one]);
    assert!(two.is_file(), "Heftwise deletes no files");
}

#[test]
fn a_recent_build_opens_and_is_set_beside() {
    let folder = tempfile::tempdir().unwrap();
    let one = file(&folder, "one.toml", CART);
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("5");
    rig.send(Message::OpenPath(one.clone()));
    rig.send(Message::OpenDemo("bullock"));
    rig.click("Set beside");
    assert_eq!(rig.app.desk.company.all()[0].name, "Cart");
    // The button in the rail says the same, so take the last one of that word.
    rig.send(Message::OpenPath(one));
    assert_eq!(rig.app.desk.name(), "Cart");
}

#[test]
fn a_build_file_dropped_on_the_window_opens() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = at_bench();
    assert!(rig.says("dropped on the window"));
    rig.send(Message::Hovers(true));
    assert!(rig.says("Let go to open the build"));
    rig.send(Message::Hovers(false));
    assert!(!rig.says("Let go"), "carried away again");
    rig.send(Message::Hovers(true));
    rig.send(Message::Dropped(file(&folder, "cart.toml", CART)));
    assert_eq!(rig.app.desk.name(), "Cart");
    assert!(!rig.says("Let go"));
    widen(&mut rig, "75 mm");
    rig.send(Message::Dropped(folder.path().to_owned()));
    assert!(matches!(rig.app.question, Some(Question::Unsaved(_))), "it asks first");
    rig.click("Do not save");
    assert!(rig.says("This did not work"), "a folder is no build");
    assert_eq!(rig.app.desk.name(), "Cart");
}

#[test]
fn a_companion_that_is_gone_is_said_and_comes_back_with_its_file() {
    let folder = tempfile::tempdir().unwrap();
    let cart = file(&folder, "cart.toml", CART);
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.send(Message::CompanionPicked(cart.clone()));
    fs::remove_file(&cart).unwrap();

    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("5");
    assert!(rig.app.desk.company.all().is_empty());
    assert!(rig.says("cart.toml") && rig.says("once it can be read"), "{:?}", rig.texts());
    // Another companion does not drive it out of mind.
    rig.send(Message::CompanionExample("bullock"));
    let kept = [Kept::Example("bullock".to_owned()), Kept::File(cart.clone())];
    assert_eq!(rig.app.settings.companions, kept);
    file(&folder, "cart.toml", CART);
    rig.send(Message::Returned);
    let names: Vec<&str> = rig.app.desk.company.all().iter().map(|it| it.name.as_str()).collect();
    assert_eq!(names, ["Bullock", "Cart"]);
    assert!(!rig.says("once it can be read"));

    fs::remove_file(&cart).unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("5");
    rig.click("Look for it no more");
    assert_eq!(rig.app.settings.companions, [Kept::Example("bullock".to_owned())]);
}

#[test]
fn the_bench_fits_a_narrow_window_and_large_text() {
    for (width, sizes) in [(360.0, 0), (NARROW.width, 0), (1280.0, 4), (1920.0, 4)] {
        let folder = tempfile::tempdir().unwrap();
        let mut rig = Rig::open(rig::start(&folder), Size::new(width, 800.0));
        (0..sizes).for_each(|_| rig.send(Message::Text(true)));
        rig.send(Message::CompanionExample("bullock"));
        rig.send(Message::Go(Place::Bench));
        rig.click("What differs");
        rig.click("Start with five questions");
        rig.click("One track, two skis");
        rig.click("A motor");
        for control in rig.controls() {
            let (left, right) = (control.bounds.x, control.bounds.x + control.bounds.width);
            assert!(left >= 0.0 && right <= width + 0.5, "{width}: {control:?}");
        }
    }
}

#[test]
fn many_recent_builds_are_shown_a_stretch_at_a_time() {
    let folder = tempfile::tempdir().unwrap();
    let mut settings = heftwise::app::settings::Settings::default();
    for number in 1..=200 {
        settings.remember(&file(&folder, &format!("cart-{number}.toml"), CART));
    }
    settings.save(&rig::folders(&folder).settings).unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("5");
    assert!(rig.says("Builds 1 to 20 of 200") && rig.says("cart-200.toml"));
    assert!(!rig.says("cart-180.toml"));
    rig.click("Last");
    assert!(rig.says("Builds 181 to 200 of 200") && rig.says("cart-1.toml"));
    rig.click("Take off the list");
    assert!(rig.says("Builds 181 to 199 of 199"));
    rig.send(Message::OpenPath(folder.path().join("cart-3.toml")));
    assert_eq!(rig.app.settings.recent[0], folder.path().join("cart-3.toml"));
}
