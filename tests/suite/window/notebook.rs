//! The notebook, and the blocks in which the reader does something, through the window.

use heftwise::app::screen::Place;
use heftwise::app::shell::{Message, Start};
use heftwise::notebook::Notebook;
use heftwise::notebook::file::load;
use heftwise::quantity::catalogue::running_gear::CONTACT_LENGTH;
use iced::Size;
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;
use tempfile::TempDir;

use super::rig::{self, NARROW, Rig, WIDE, memory};

const LESSON: &str = r#"+++
id = "mud"
title = "Mud"
order = 1
minutes = 5
uses = ["mass"]
+++

Deep.[^n]

```guess
question = "Which goes in deeper?"
kind = "choice"
why = "So."
[[choice]]
text = "The narrow one"
right = true
[[choice]]
text = "Both alike"
idea = "Mass alone counts"
reply = "Not so."
[[variant]]
question = "Which goes in less?"
[[variant.choice]]
text = "The wide one"
right = true
[[variant.choice]]
text = "Neither"
idea = "Mass alone counts"
reply = "Not so."
```

```faded
[[step]]
say = "Force"
is = "live:weight"
[[step]]
say = "Area"
is = "live:contact-area"
unit = "m²"
blank = true
hint = "Both tracks of [it](live:mass)."
[[step]]
say = "Pressure"
is = "live:ground-pressure"
blank = true
```

```measure
what = "Length of the print"
quantity = "contact-length"
tool = "a ruler"
how = "Lay card."
error = "10 mm"
over = "Soft, at [it](live:mass)."
under = "Hard, at [it](live:mass)."
```

```deeper
Where it comes from
Folded words of [it](live:mass).
```

```teacher
Teachers alone, at [it](live:mass).
```

[^n]: A note below.
"#;

fn open_at(folder: &TempDir, size: Size) -> Rig {
    let mut rig =
        Rig::open(Start { source: memory(&[("mud", LESSON)]), ..rig::start(folder) }, size);
    rig.send(Message::Go(Place::Lesson("mud".to_owned())));
    rig
}

/// What is on disk once the window has saved.
fn kept(rig: &mut Rig, folder: &TempDir) -> Notebook {
    rig.send(Message::KeepNotebook);
    load(&rig::folders(folder).notebook).notebook
}

/// The line of the file on which the only block of that name starts.
fn line(fence: &str) -> usize {
    LESSON.lines().position(|line| line == format!("```{fence}")).unwrap() + 1
}

fn press(rig: &mut Rig, id: &str) {
    rig.click(Id::from(id.to_owned()));
}

/// Types into a field in place of what is there.
fn fill(rig: &mut Rig, id: &str, words: &str) {
    press(rig, id);
    rig.command("a");
    rig.typewrite(words);
}

/// Whether the control of that name has the focus.
fn is_focused(rig: &mut Rig, id: &str) -> bool {
    let at = rig.find(Id::from(id.to_owned())).expect("it is there").bounds();
    rig.focused().is_some_and(|focused| focused.bounds == at)
}

#[test]
fn an_answer_is_written_down_and_another_try_asks_anew() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open_at(&folder, WIDE);
    press(&mut rig, "guess:mud/which-goes-in-deeper:1");
    assert!(rig.says("Not quite.") && rig.says("Mass alone counts"));
    rig.click("Try again");
    assert!(!rig.says("Not quite."), "the new question is open");
    press(&mut rig, "guess:mud/which-goes-in-deeper:0");
    assert!(rig.says("Yes."));
    let notebook = kept(&mut rig, &folder);
    let record = notebook.lesson("mud").unwrap();
    let found: Vec<_> = record
        .answers
        .iter()
        .map(|one| (one.asked.as_str(), one.said.as_str(), one.right, one.idea.as_deref()))
        .collect();
    assert_eq!(
        found,
        [
            ("Which goes in deeper?", "Both alike", false, Some("Mass alone counts")),
            ("Which goes in less?", "The wide one", true, None),
        ]
    );
    assert!(record.opened.is_some() && record.finished.is_none());
    rig.command("4");
    assert_eq!(rig.app.place, Place::Notebook);
    assert!(rig.says("“Both alike”") && rig.says("✗ not right"));
}

#[test]
fn a_chain_is_filled_line_by_line_without_a_pointer() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open_at(&folder, WIDE);
    assert!(rig.says("Opens when the line above is done."));
    let (area, pressure) =
        (format!("faded:{}:1", line("faded")), format!("faded:{}:2", line("faded")));
    fill(&mut rig, &area, "0.0378");
    rig.key(Named::Enter, Modifiers::empty());
    assert!(rig.says("0.0378 m² is not it: it is too small.") && rig.says("tracks"));
    assert!(is_focused(&mut rig, &area), "a wrong number can be mended at once");
    rig.command("a");
    rig.typewrite("756 cm²");
    rig.key(Named::Enter, Modifiers::empty());
    // Two tracks of 90 mm by 420 mm, as in the worked example of the pressure lesson.
    assert!(rig.says("Right: you said 0.0756 m²."));
    assert!(is_focused(&mut rig, &pressure), "the next line has the focus");
    rig.typewrite("830 kPa");
    rig.key(Named::Enter, Modifiers::empty());
    assert!(rig.says("it is 1000 times too large"));
    rig.click("Show me this line");
    assert!(rig.says("Shown, not filled in by you.") && rig.says("The chain is complete."));
    rig.click("Do it again");
    assert!(rig.says("Opens when the line above is done."));
}

#[test]
fn three_readings_go_into_the_notebook_and_the_build() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open_at(&folder, WIDE);
    assert!(rig.says("Predicted: 420 mm"));
    let reading = |place| format!("measure:{}:{place}", line("measure"));
    fill(&mut rig, &reading(0), "-210");
    assert!(rig.says("contact length"), "an impossible reading is refused in words");
    fill(&mut rig, &reading(0), "210");
    assert!(!rig.says("Mean"), "one reading is no mean");
    fill(&mut rig, &reading(1), "21 cm");
    fill(&mut rig, &reading(2), "210 mm");
    assert!(rig.says("Mean 210 mm"));
    assert!(rig.says("Measured over predicted: 0.500, half what was predicted."));
    assert!(rig.says("Hard,") && !rig.says("Soft,"));
    // Three equal readings are as sure as the ruler, no surer.
    rig.click("Put 210 ± 10 mm into my build");
    let number = rig.app.desk.sheet().number(CONTACT_LENGTH.any());
    assert_eq!(number, Some("210 ± 10 mm"));
    assert!(rig.says("Predicted: 420 mm"), "the prediction does not follow the build");
    assert!(rig.says("In your notebook"));
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().number(CONTACT_LENGTH.any()), Some("420 ± 15 mm"));
    let notebook = kept(&mut rig, &folder);
    let [one] = notebook.lesson("mud").unwrap().measurements.as_slice() else { panic!() };
    assert_eq!(one.readings, ["210 mm", "210 mm", "210 mm"]);
    assert_eq!(one.predicted.as_deref(), Some("420 mm"));
    // Another day, the readings are still there, and the prediction of that day with them.
    let mut again = open_at(&folder, WIDE);
    assert!(again.says("Measured over predicted: 0.500, half what was predicted."));
    again.click("New readings");
    assert!(!again.says("Mean"));
}

#[test]
fn folds_open_footnotes_show_and_teachers_notes_hide() {
    for size in [WIDE, NARROW] {
        let folder = tempfile::tempdir().unwrap();
        let mut rig = open_at(&folder, size);
        assert!(!rig.says("Folded") && !rig.says("Teachers"));
        rig.click("Where it comes from");
        assert!(rig.says("Folded"));
        rig.key(Named::Space, Modifiers::empty());
        rig.click("[n]");
        assert!(rig.says("Footnote n"));
        rig.click("Back to the text");
        assert!(!rig.says("Footnote n"));
        assert!(is_focused(&mut rig, "footnote:n"), "back at the place that refers to it");
        // From the footnote at the end of the page the way leads back as well.
        rig.click("n.");
        assert!(is_focused(&mut rig, "footnote:n"));
        rig.click("I have finished this lesson");
        let notebook = kept(&mut rig, &folder);
        let finished = notebook.lesson("mud").unwrap().finished.clone().expect("it is finished");
        rig.command("1");
        assert!(rig.says(&format!("✓ Finished {}", finished.date())));
    }
}

#[test]
fn notes_are_kept_and_the_notebook_exported() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    rig.command("4");
    rig.click("To the lessons");
    assert_eq!(rig.app.place, Place::Contents, "an empty notebook says what to do");
    let mut rig = open_at(&folder, NARROW);
    rig.command("4");
    press(&mut rig, "note:mud");
    rig.typewrite("wet mud");
    rig.command("z");
    rig.typewrite(" sand");
    rig.command("z");
    rig.command("z");
    assert_eq!(rig.app.desk.revision(), 0, "a note has an undo of its own");
    rig.click("Export");
    let path = folder.path().join("heftwise-notebook.md");
    let text = std::fs::read_to_string(&path).unwrap();
    assert!(text.contains("## Mud\n") && text.contains("### Notes\n\nwet\n"), "{text}");
    rig.click("Export");
    assert!(rig.says("was not written: there is a file of that name already"));
    assert_eq!(std::fs::read_to_string(&path).unwrap(), text);
    assert_eq!(kept(&mut rig, &folder).lesson("mud").unwrap().note.trim_end(), "wet");
}

#[test]
fn a_notebook_that_cannot_be_read_is_said_and_kept() {
    let folder = tempfile::tempdir().unwrap();
    let path = rig::folders(&folder).notebook;
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    std::fs::write(&path, "half a notebo").unwrap();
    let mut rig = Rig::open(rig::start(&folder), WIDE);
    assert!(rig.says("cannot be read") && rig.says("notebook.kept-1.toml"));
    rig.send(Message::QuestionClosed);
    rig.send(Message::Go(Place::Lesson("pressure".to_owned())));
    kept(&mut rig, &folder);
    let copy = path.with_extension("kept-1.toml");
    assert_eq!(std::fs::read_to_string(copy).unwrap(), "half a notebo");
}

#[test]
fn what_was_measured_twice_is_shown_over_time() {
    let folder = tempfile::tempdir().unwrap();
    let path = rig::folders(&folder).notebook;
    std::fs::create_dir_all(path.parent().unwrap()).unwrap();
    let once = |when: &str, reading: &str| {
        format!(
            "[[lesson.mud.measurement]]\nwhat = \"Length of the print\"\n\
             quantity = \"contact-length\"\nreadings = [{0}, {0}, {0}]\n\
             predicted = \"400 mm\"\nwhen = \"{when}\"\n",
            format_args!("\"{reading} mm\"")
        )
    };
    let first = format!("format = 1\n{}", once("2026-05-04T09:30:00Z", "360"));
    std::fs::write(&path, &first).unwrap();
    let mut rig = open_at(&folder, WIDE);
    rig.command("4");
    assert!(rig.says("Measured over predicted: 0.900"));
    assert!(!rig.says("over time"), "once is no course of time");
    std::fs::write(&path, first + &once("2026-06-01T18:00:00Z", "420")).unwrap();
    for size in [WIDE, NARROW] {
        let mut rig = open_at(&folder, size);
        rig.command("4");
        assert!(rig.says("over time") && rig.says("□ predicted"));
        assert!(rig.says("2026-05-04: predicted 400 mm, measured 360 mm: 0.900 of it."));
        assert!(rig.says("2026-06-01: predicted 400 mm, measured 420 mm: 1.05 of it."));
    }
}
