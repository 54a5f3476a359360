//! What is kept from one view to the next never stands for what has changed since.

use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use heftwise::quantity::catalogue::running_gear::TRACK_WIDTH;
use heftwise::sheet::Edit;
use iced::{Point, Size};

use super::rig::{self, Rig, WIDE};

/// A lesson with a number in running text, in a table, and far down.
fn text(words: &str) -> String {
    let filler = "More words of the ground, and of what stands on it.\n\n".repeat(60);
    format!(
        "# Kept\n\n{words} [90 mm](live:track-width) wide.\n\n| Width |\n|---|\n| \
         [90 mm](live:track-width) |\n\n{filler}At the end, \
         [90 mm](live:track-width) once more.\n"
    )
}

fn open(folder: &tempfile::TempDir) -> Rig {
    write(folder, "The tracks are");
    let source = std::sync::Arc::new(heftwise::lesson::Folder(folder.path().join("lessons")));
    let mut rig = Rig::open(heftwise::app::shell::Start { source, ..rig::start(folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("kept".to_owned())));
    rig
}

fn write(folder: &tempfile::TempDir, words: &str) {
    let lesson = folder.path().join("lessons/kept");
    std::fs::create_dir_all(&lesson).unwrap();
    std::fs::write(lesson.join("lesson.md"), text(words)).unwrap();
}

/// How often a text stands on the page.
fn count(rig: &mut Rig, words: &str) -> usize {
    rig.texts().iter().filter(|text| *text == words).count()
}

#[test]
fn a_number_in_the_text_follows_the_build_and_the_units() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    assert_eq!(count(&mut rig, "90.0 mm"), 3, "{:?}", rig.texts());
    rig.app.desk.apply(&Edit::Set { id: TRACK_WIDTH.any(), text: "120 mm".into() }, None).unwrap();
    assert_eq!(count(&mut rig, "120 mm"), 3);
    rig.send(Message::Undo);
    assert_eq!(count(&mut rig, "90.0 mm"), 3);
    rig.send(Message::OtherUnits);
    assert_eq!((count(&mut rig, "90.0 mm"), count(&mut rig, "3.54 in")), (0, 3));
}

#[test]
fn words_changed_on_disk_are_shown() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    assert_eq!(count(&mut rig, "tracks"), 1);
    write(&folder, "The belts are");
    rig.send(Message::LessonsChanged);
    assert_eq!((count(&mut rig, "tracks"), count(&mut rig, "belts")), (0, 1));
}

#[test]
fn a_link_keeps_the_focus_while_its_number_changes() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    rig.send(Message::FocusPage);
    while !rig.focused().is_some_and(|control| {
        control.bounds.height < 30.0 && {
            let at = control.bounds.center();
            rig.find("90.0 mm").is_some_and(|text| text.bounds().contains(at))
        }
    }) {
        rig.send(Message::Focus { back: false });
    }
    let before = rig.focused();
    rig.app.desk.apply(&Edit::Set { id: TRACK_WIDTH.any(), text: "91 mm".into() }, None).unwrap();
    assert_eq!(rig.focused(), before);
    assert_eq!(count(&mut rig, "91.0 mm"), 3);
}

#[test]
fn text_is_laid_out_anew_in_a_narrower_window() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    let end = |rig: &mut Rig| rig.find("once").expect("the last paragraph").bounds().y;
    let wide = end(&mut rig);
    rig.size = Size::new(400.0, WIDE.height);
    rig.send(Message::Resized(rig.size));
    assert!(end(&mut rig) > wide, "more lines");
    rig.size = WIDE;
    rig.send(Message::Resized(rig.size));
    approx::assert_relative_eq!(end(&mut rig), wide);
}

#[test]
fn a_number_in_the_text_can_be_pressed_after_the_page_has_moved() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    let ends = rig.texts().len();
    rig.point_at(Point::new(600.0, 400.0));
    rig.send(Message::Scroll(heftwise::app::keys::Scroll::End));
    rig.click("once");
    assert_eq!(rig.texts().len(), ends, "plain words answer nothing");
    let page = heftwise::app::screen::reading::PAGE;
    let last = rig.all(|candidate| match candidate {
        iced_test::selector::Candidate::Text { content: "90.0 mm", visible_bounds, .. } => {
            visible_bounds
        }
        _ => None,
    });
    assert_eq!(last.len(), 1, "one of them in view of the {page}");
    rig.point_at(last[0].center());
    rig.press();
    rig.release();
    assert!(rig.says("Track width"), "its meaning in the margin");
}
