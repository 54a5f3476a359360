//! Lessons, the walk-round and the notebook on paper: asked how and where, written beside the window.

use std::fs;
use std::path::{Path, PathBuf};

use heftwise::app::files::{Purpose, Unpicked};
use heftwise::app::printing::Act;
use heftwise::app::question::Question;
use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;
use tempfile::TempDir;

use super::rig::{self, Rig, WIDE};

fn open(place: Place) -> (Rig, TempDir) {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.send(Message::Go(place));
    (rig, folder)
}

fn pressure() -> (Rig, TempDir) {
    open(Place::Lesson("pressure".to_owned()))
}

/// Fills the card as it stands and types the path, where there is no dialog.
fn print_to(rig: &mut Rig, path: &Path) {
    rig.click("Choose where to save");
    rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Paper, at_once: true }));
    rig.send(Message::PathTyped(path.display().to_string()));
    rig.send(Message::PathGiven);
}

fn written(rig: &mut Rig, path: &Path) -> String {
    assert_eq!(rig.app.question, Some(Question::Written(path.to_owned())));
    assert!(rig.says(&format!("It is at {}.", path.display())));
    rig.click("Close");
    fs::read_to_string(path).unwrap()
}

#[test]
fn a_handout_is_what_the_card_says() {
    let (mut rig, folder) = pressure();
    let path = |name: &str| folder.path().join(name);
    rig.click("Print a handout");
    print_to(&mut rig, &path("plain.html"));
    let plain = written(&mut rig, &path("plain.html"));
    assert!(plain.contains("size:A4") && !plain.contains("Group 1"));
    rig.send(Message::CompanionExample("bullock"));
    rig.click("Print a handout");
    for way in ["The whole lesson", "With a key", "Bullock beside it", "Letter"] {
        rig.click(way);
    }
    rig.click(Id::new("print-copies"));
    rig.typewrite("3");
    rig.click(Id::new("print-seed"));
    rig.command("a");
    rig.typewrite("42");
    print_to(&mut rig, &path("all"));
    let all = written(&mut rig, &path("all.html"));
    for words in ["size:letter", "Group 1", "Group 3", "seed 42", "Bullock"] {
        assert!(all.contains(words), "{words}");
    }
    assert!(!all.contains("Group 4"));
    assert!(all.len() > 3 * plain.len(), "{} and {}", all.len(), plain.len());
}

#[test]
fn the_window_prints_what_the_command_writes() {
    let (mut rig, folder) = pressure();
    let (by_window, by_command) = (folder.path().join("a.html"), folder.path().join("b.html"));
    rig.click("Print a handout");
    print_to(&mut rig, &by_window);
    let by_window = written(&mut rig, &by_window);
    let out = by_command.display().to_string();
    let mut said = (Vec::new(), Vec::new());
    let args = ["heftwise", "handout", "pressure", "--build", "sandpiper", "-o", &out];
    heftwise::cli::run(args, &mut said.0, &mut said.1);
    assert_eq!(by_window, fs::read_to_string(by_command).unwrap());
}

#[test]
fn a_number_of_copies_that_cannot_be_is_said_on_the_card() {
    let (mut rig, _folder) = pressure();
    for (typed, words) in [("six", "is no number of copies"), ("61", "1 to 60 copies")] {
        rig.click("Print a handout");
        rig.send(Message::PrintAct(Act::Copies(typed.to_owned())));
        rig.click("Choose where to save");
        assert!(rig.says(words), "{typed}");
        assert!(matches!(rig.app.question, Some(Question::Print(_))), "the card stays");
        rig.key(Named::Escape, Modifiers::empty());
        assert_eq!(rig.app.question, None);
    }
}

#[test]
fn no_file_is_written_over_unasked_and_none_where_it_cannot_be() {
    let (mut rig, folder) = pressure();
    let there = folder.path().join("there.html");
    fs::write(&there, "mine").unwrap();
    rig.click("Print a handout");
    print_to(&mut rig, &there);
    assert!(rig.says("There is a file at"));
    assert_eq!(fs::read_to_string(&there).unwrap(), "mine");
    rig.send(Message::QuestionClosed);
    rig.click("Print a handout");
    print_to(&mut rig, &folder.path().join("nowhere/a.html"));
    assert!(rig.says("a.html cannot be written"));
}

#[test]
fn called_off_it_leaves_no_file() {
    let (mut rig, folder) = pressure();
    let path = folder.path().join("long.html");
    rig.click("Print a handout");
    rig.send(Message::PrintAct(Act::Copies("60".to_owned())));
    rig.send(Message::PrintAct(Act::Whole(true)));
    rig.click("Choose where to save");
    rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Paper, at_once: true }));
    // Sixty sheets take far longer than the two messages do.
    let task = rig.app.update(Message::PaperPicked(path.clone()));
    assert_eq!(rig.app.question, Some(Question::Writing { made: 0, of: 1 }));
    let _ = rig.app.update(Message::QuestionClosed);
    rig.run(task);
    assert_eq!(rig.app.question, None);
    assert!(!path.exists());
    assert_eq!(fs::read_dir(folder.path()).unwrap().filter(is_page).count(), 0);
    // Until then the window says how far it is.
    rig.click("Print a handout");
    rig.send(Message::PrintAct(Act::Copies("3".to_owned())));
    rig.click("Choose where to save");
    let _ = rig.app.update(Message::PaperPicked(path.with_file_name("three.html")));
    let mut said = Vec::new();
    for made in 0..3 {
        rig.send(Message::Printing { made, of: 3 });
        said.push(rig.says(&format!("{made} of 3 sheets")));
    }
    assert_eq!(said, [true; 3]);
    rig.click("Cancel");
    assert_eq!(rig.app.question, None);
    rig.send(Message::Printing { made: 2, of: 3 });
    assert_eq!(rig.app.question, None, "what is called off does not come back");
    // Nor does a dialog put away.
    rig.click("Print a handout");
    rig.click("Choose where to save");
    rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Paper, at_once: false }));
    rig.send(Message::PaperPicked(path.clone()));
    assert!(!path.exists());
}

fn is_page(entry: &std::io::Result<fs::DirEntry>) -> bool {
    let name = entry.as_ref().map(|entry| entry.file_name().to_string_lossy().into_owned());
    name.is_ok_and(|name| name.ends_with(".html") || name.ends_with(".part"))
}

#[test]
fn the_walk_round_and_the_notebook_print_too() {
    let (mut rig, folder) = open(Place::WalkRound);
    let path: PathBuf = folder.path().join("box.html");
    rig.click("Print");
    assert!(!rig.says("Copies"), "that is for lessons");
    print_to(&mut rig, &path);
    assert!(written(&mut rig, &path).contains("Walk round Sandpiper"));
    rig.send(Message::Go(Place::Lesson("pressure".to_owned())));
    rig.send(Message::Go(Place::Notebook));
    let path = folder.path().join("book.html");
    rig.click("Print the notebook");
    print_to(&mut rig, &path);
    assert!(written(&mut rig, &path).contains("<html"));
}

#[test]
fn one_key_prints_what_is_shown() {
    let (mut rig, _folder) = pressure();
    for (place, title) in [
        (None, "Print a handout"),
        (Some(Place::WalkRound), "Print the walk-round"),
        (Some(Place::Notebook), "Print the notebook"),
    ] {
        place.into_iter().for_each(|place| rig.send(Message::Go(place)));
        rig.command("p");
        assert!(rig.says(title) && matches!(rig.app.question, Some(Question::Print(_))));
        rig.send(Message::QuestionClosed);
    }
    rig.send(Message::Go(Place::Bench));
    rig.command("p");
    assert_eq!(rig.app.question, None, "there is nothing of it for paper");
}
