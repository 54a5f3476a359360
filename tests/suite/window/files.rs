//! Opening, saving, and what is asked before something would be lost.

use std::fs;

use heftwise::app::question::{Next, Question};
use heftwise::app::screen::build_sheet;
use heftwise::app::shell::{Message, Start};
use heftwise::quantity::catalogue::running_gear::TRACK_WIDTH;
use heftwise::sheet::Edit;
use tempfile::TempDir;

use super::rig::{self, Rig, WIDE, file};

const CART: &str = "format = 1\nname = \"Cart\" # the grey one\n\n[running-gear]\n\
                    track-width = \"70 mm\"\n";

fn folder() -> TempDir {
    tempfile::tempdir().unwrap()
}

fn with_file(folder: &TempDir, text: &str) -> Rig {
    let build = Some(file(folder, "cart.toml", text));
    Rig::open(Start { build, ..rig::start(folder) }, WIDE)
}

fn widen(rig: &mut Rig, text: &str) {
    let edit = Edit::Set { id: TRACK_WIDTH.any(), text: text.to_owned() };
    rig.send(Message::BuildSheet(build_sheet::Message::Edit(edit, None)));
}

#[test]
fn without_a_file_the_first_demo_build_is_on_the_desk() {
    let mut rig = Rig::fresh();
    assert_eq!(rig.app.title(), "Sandpiper – Heftwise");
    assert!(rig.says("6.40 kg"), "its mass stands in the rail");
    rig.send(Message::OpenDemo("bullock"));
    assert_eq!(rig.app.title(), "Bullock – Heftwise");
}

#[test]
fn a_build_saves_to_its_file_with_its_comments() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    widen(&mut rig, "75 mm");
    assert_eq!(rig.app.title(), "Cart (not saved) – Heftwise");
    rig.command("s");
    assert_eq!(rig.app.title(), "Cart – Heftwise");
    let text = fs::read_to_string(folder.path().join("cart.toml")).unwrap();
    assert_eq!(text, CART.replace("70 mm", "75 mm"));
}

#[test]
fn a_build_without_a_file_saves_where_it_is_told_to() {
    let folder = folder();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    widen(&mut rig, "75 mm");
    let path = folder.path().join("mine.toml");
    rig.send(Message::SavePicked(path.clone()));
    assert_eq!(fs::read_to_string(&path).unwrap(), rig.app.desk.sheet().text());
    assert_eq!(rig.app.desk.path.as_ref(), Some(&path));
    assert_eq!(rig.app.settings.recent, [path]);
    assert!(!rig.app.desk.history.is_changed_since_save());
}

#[test]
fn an_unsaved_build_is_not_put_away_unasked() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    widen(&mut rig, "75 mm");
    for leave in [Message::Leave(Next::Close), Message::OpenDemo("bullock"), Message::New] {
        rig.send(leave);
        assert!(matches!(rig.app.question, Some(Question::Unsaved(_))), "{:?}", rig.app.question);
        assert!(rig.says("This build is not saved"));
        rig.click("Stay");
        assert_eq!(rig.app.question, None);
        assert_eq!(rig.app.desk.name(), "Cart");
        assert!(!rig.closed);
    }
    rig.send(Message::Leave(Next::Close));
    rig.click("Do not save");
    assert!(rig.closed);
    assert_eq!(fs::read_to_string(folder.path().join("cart.toml")).unwrap(), CART);
}

#[test]
fn a_build_is_saved_before_it_is_put_away_if_so_answered() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    widen(&mut rig, "75 mm");
    rig.send(Message::OpenDemo("bullock"));
    // The button in the rail says the same, so take the one of the card.
    rig.click(iced::widget::Id::new("answer:0"));
    assert_eq!(rig.app.desk.name(), "Bullock");
    let text = fs::read_to_string(folder.path().join("cart.toml")).unwrap();
    assert_eq!(text, CART.replace("70 mm", "75 mm"));
}

#[test]
fn a_saved_build_is_left_without_a_question() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    rig.send(Message::Leave(Next::Close));
    assert!(rig.closed);
    assert_eq!(rig.app.question, None);
}

#[test]
fn a_file_changed_by_another_program_is_not_written_over_unasked() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    let theirs = CART.replace("70 mm", "60 mm");
    file(&folder, "cart.toml", &theirs);
    widen(&mut rig, "75 mm");
    rig.send(Message::Save);
    let changed = Some(Question::ChangedOnDisk { unsaved: true });
    assert_eq!(rig.app.question, changed);
    let on_disk = || fs::read_to_string(folder.path().join("cart.toml")).unwrap();
    assert_eq!(on_disk(), theirs);
    rig.click("Do nothing");
    assert_eq!(on_disk(), theirs);
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("75 mm"));

    rig.send(Message::Returned);
    assert_eq!(rig.app.question, changed, "seen on coming back as well");
    rig.click("Do nothing");
    rig.send(Message::Returned);
    assert_eq!(rig.app.question, None, "asked once a change");
    rig.send(Message::Save);
    assert_eq!(rig.app.question, changed, "and before each save");
    rig.click("Write over it");
    assert_eq!(on_disk(), CART.replace("70 mm", "75 mm"));
    assert!(!rig.app.desk.history.is_changed_since_save());
    rig.send(Message::Returned);
    assert_eq!(rig.app.question, None);
}

#[test]
fn a_file_changed_by_another_program_can_be_read_again() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    widen(&mut rig, "75 mm");
    file(&folder, "cart.toml", &CART.replace("70 mm", "60 mm"));
    rig.send(Message::Returned);
    rig.click("Read the file, drop my changes");
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("60 mm"));
    assert_eq!(rig.app.title(), "Cart – Heftwise");
}

#[test]
fn with_nothing_to_lose_a_changed_file_is_read_again_with_one_press() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    rig.send(Message::Returned);
    assert_eq!(rig.app.question, None, "the file is as it was");
    file(&folder, "cart.toml", &CART.replace("70 mm", "60 mm"));
    rig.send(Message::Returned);
    assert_eq!(rig.app.question, Some(Question::ChangedOnDisk { unsaved: false }));
    rig.key(iced::keyboard::key::Named::Enter, iced::keyboard::Modifiers::empty());
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("60 mm"));

    file(&folder, "cart.toml", &CART.replace("70 mm", "50 mm"));
    rig.send(Message::BuildTouched);
    assert!(rig.app.question.is_some(), "told while the window is looked at, too");
}

#[test]
fn a_broken_file_is_told_with_its_line_and_the_build_on_the_desk_stays() {
    let folder = folder();
    let mut rig = with_file(&folder, CART);
    let broken = file(&folder, "broken.toml", "format = 1\n\n[machine]\nmass = 6.4 kg\n");
    rig.send(Message::Picked(broken.clone()));
    let Some(Question::Told(words)) = rig.app.question.clone() else {
        panic!("{:?}", rig.app.question)
    };
    assert!(words.contains("broken.toml, line 4"), "{words}");
    assert!(words.contains("mass = \"6.4 kg\""), "how to mend it: {words}");
    assert!(rig.says(&words));
    assert_eq!(rig.app.desk.name(), "Cart");
    assert_eq!(rig.app.settings.recent, [] as [std::path::PathBuf; 0]);
    rig.click("Close");
    assert_eq!(rig.app.question, None);

    // The same when it is named on the command line: then the demo build is there instead.
    let start = Start { build: Some(broken), ..rig::start(&folder) };
    let mut rig = Rig::open(start, WIDE);
    assert!(rig.says("line 4"));
    assert_eq!(rig.app.desk.name(), "Sandpiper");
}

#[test]
fn a_missing_file_is_told() {
    let folder = folder();
    let start = Start { build: Some(folder.path().join("none.toml")), ..rig::start(&folder) };
    let mut rig = Rig::open(start, WIDE);
    assert!(rig.says("none.toml cannot be opened. There is no such file or folder."));
}

#[test]
fn a_build_of_a_newer_format_can_be_read_and_not_changed() {
    let folder = folder();
    let newer = CART.replace("format = 1", "format = 2");
    let mut rig = with_file(&folder, &newer);
    assert!(rig.says("for reading alone"));
    widen(&mut rig, "75 mm");
    assert!(rig.says("newer Heftwise"), "{:?}", rig.app.question);
    assert_eq!(rig.app.desk.sheet().text(), newer);
    assert_eq!(fs::read_to_string(folder.path().join("cart.toml")).unwrap(), newer);
}

#[test]
fn a_path_can_be_typed_and_no_other_file_is_written_over() {
    use heftwise::app::files::{Purpose, Unpicked};
    let folder = folder();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    let theirs = file(&folder, "taken.toml", CART);
    for typed in ["taken.toml", "taken"] {
        rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Save, at_once: true }));
        let path = folder.path().join(typed);
        rig.send(Message::PathTyped(path.display().to_string()));
        rig.send(Message::PathGiven);
        assert!(rig.says("There is a file at"), "{typed}: {:?}", rig.app.question);
        assert_eq!(fs::read_to_string(&theirs).unwrap(), CART, "{typed}");
        rig.send(Message::QuestionClosed);
    }
    rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Save, at_once: true }));
    rig.typewrite(&folder.path().join("free").display().to_string());
    rig.key(iced::keyboard::key::Named::Enter, iced::keyboard::Modifiers::empty());
    let saved = fs::read_to_string(folder.path().join("free.toml")).unwrap();
    assert_eq!(saved, rig.app.desk.sheet().text());
}
