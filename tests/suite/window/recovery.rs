//! Unsaved work is kept aside and offered after the program has ended without warning.

use heftwise::app::question::{Next, Question};
use heftwise::app::screen::build_sheet;
use heftwise::app::shell::{Message, Start};
use heftwise::quantity::catalogue::running_gear::TRACK_WIDTH;
use heftwise::sheet::Edit;
use iced::keyboard::{Modifiers, key::Named};
use tempfile::TempDir;

use super::rig::{self, Rig, WIDE, file};

const CART: &str = "format = 1\nname = \"Cart\"\n\n[running-gear]\ntrack-width = \"70 mm\"\n";

fn open(folder: &TempDir) -> Rig {
    let build = Some(folder.path().join("cart.toml"));
    Rig::open(Start { build, ..rig::start(folder) }, WIDE)
}

fn widen(rig: &mut Rig, text: &str) {
    let edit = Edit::Set { id: TRACK_WIDTH.any(), text: text.to_owned() };
    rig.send(Message::BuildSheet(build_sheet::Message::Edit(edit, None)));
}

/// Work that was kept when the program ended without warning.
fn crashed() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    file(&folder, "cart.toml", CART);
    let mut rig = open(&folder);
    assert_eq!(rig.app.question, None);
    widen(&mut rig, "75 mm");
    rig.send(Message::Keep);
    folder
}

fn kept(folder: &TempDir) -> usize {
    let Ok(copies) = std::fs::read_dir(rig::folders(folder).recovery) else { return 0 };
    copies.filter(|copy| copy.as_ref().unwrap().path().extension() == Some("json".as_ref())).count()
}

#[test]
fn kept_work_is_offered_and_comes_back_as_a_change_that_can_be_undone() {
    let folder = crashed();
    assert_eq!(kept(&folder), 1);
    let mut rig = open(&folder);
    assert!(
        matches!(&rig.app.question, Some(Question::Recover(path)) if path.ends_with("cart.toml"))
    );
    assert_eq!(rig.app.desk.sheet().text(), CART, "nothing is taken unasked");
    // The first answer has the focus.
    rig.key(Named::Enter, Modifiers::empty());
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("75 mm"));
    assert!(rig.app.desk.history.is_changed_since_save());
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().text(), CART);
    rig.send(Message::Redo);
    rig.send(Message::Save);
    assert_eq!(kept(&folder), 0, "saved work needs no copy");
    assert_eq!(open(&folder).app.question, None);
}

#[test]
fn kept_work_can_be_thrown_away() {
    let folder = crashed();
    let mut rig = open(&folder);
    rig.click("Throw them away");
    assert_eq!(rig.app.desk.sheet().text(), CART);
    assert_eq!(kept(&folder), 0);
    assert_eq!(open(&folder).app.question, None);
}

#[test]
fn kept_work_waits_if_the_reader_decides_later() {
    let folder = crashed();
    let mut rig = open(&folder);
    rig.click("Decide later");
    rig.send(Message::Keep);
    rig.send(Message::Leave(Next::Close));
    assert!(rig.closed);
    assert!(matches!(open(&folder).app.question, Some(Question::Recover(_))));
}

#[test]
fn work_put_away_on_purpose_is_not_offered_again() {
    let folder = crashed();
    let mut rig = open(&folder);
    rig.click("Bring them back");
    rig.send(Message::Keep);
    rig.send(Message::Leave(Next::Close));
    rig.click("Do not save");
    assert!(rig.closed);
    assert_eq!(kept(&folder), 0);
}

#[test]
fn a_build_without_changes_leaves_no_copy() {
    let folder = tempfile::tempdir().unwrap();
    file(&folder, "cart.toml", CART);
    let mut rig = open(&folder);
    rig.send(Message::Keep);
    assert_eq!(kept(&folder), 0);
}

#[test]
fn waiting_work_of_one_build_does_not_hold_back_another() {
    let folder = crashed();
    let mut rig = open(&folder);
    rig.click("Decide later");
    let other = file(&folder, "other.toml", CART);
    rig.send(Message::OpenPath(other));
    widen(&mut rig, "80 mm");
    rig.send(Message::Keep);
    assert_eq!(kept(&folder), 2);
    rig.send(Message::Save);
    assert_eq!(kept(&folder), 1, "the saved build's copy is gone, the waiting one is still there");
}

#[test]
fn builds_without_a_file_keep_a_copy_each() {
    let folder = tempfile::tempdir().unwrap();
    let begin = || rig::start(&folder);
    let mut rig = Rig::open(begin(), WIDE);
    widen(&mut rig, "91 mm");
    rig.send(Message::Keep);
    // The program ended without warning; the next build without a file is another one.
    let mut rig = Rig::open(begin(), WIDE);
    rig.click("Decide later");
    widen(&mut rig, "92 mm");
    rig.send(Message::Keep);
    assert_eq!(kept(&folder), 2, "the one that waits is not written over");
    let mut rig = Rig::open(begin(), WIDE);
    for expected in [2, 1] {
        assert!(matches!(rig.app.question, Some(Question::Recover(_))), "{expected} wait");
        assert_eq!(kept(&folder), expected);
        rig.click("Throw them away");
    }
    assert_eq!((kept(&folder), &rig.app.question), (0, &None));
}

#[test]
fn work_that_waits_is_not_written_over_by_new_work_on_the_same_file() {
    let folder = crashed();
    let mut rig = open(&folder);
    rig.click("Decide later");
    widen(&mut rig, "80 mm");
    rig.send(Message::Keep);
    assert_eq!(kept(&folder), 2);
    rig.send(Message::Save);
    assert_eq!(kept(&folder), 1);
    let mut rig = open(&folder);
    rig.click("Bring them back");
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("75 mm"));
}
