//! The notebook through the window: clicks and keys without a screen.

use std::path::Path;

use heftwise::app::screen::Place;
use heftwise::app::shell::{App, Folders, Message, Start};
use heftwise::lesson::Memory;
use heftwise::notebook::file::load;
use heftwise::quantity::catalogue::running_gear::CONTACT_LENGTH;
use iced::keyboard::key::Named;
use iced::{Settings, Size};
use iced_test::{Simulator, selector};

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

fn start(folder: &Path) -> App {
    let mut memory = Memory::default();
    memory.texts.insert("mud".to_owned(), LESSON.to_owned());
    App::new(Start {
        build: None,
        source: Box::new(memory),
        watched: None,
        folders: Folders {
            settings: folder.join("settings"),
            recovery: folder.join("recovery"),
            notebook: folder.join("notebook.toml"),
            exports: folder.to_owned(),
        },
    })
    .0
}

/// Does something in the window as it is shown now, and lets the window act on it. It is tall, so
/// that the whole lesson is in view.
fn act(app: &mut App, width: f32, deed: impl FnOnce(&mut Simulator<'_, Message>)) {
    let size = Size::new(width, 6000.0);
    let _ = app.update(Message::Resized(size));
    let mut simulator = Simulator::with_size(Settings::default(), size, app.view());
    deed(&mut simulator);
    let messages: Vec<Message> = simulator.into_messages().collect();
    for message in messages {
        let _ = app.update(message);
    }
}

fn click(app: &mut App, words: &str) {
    act(app, 1280.0, |window| {
        window.click(words).unwrap_or_else(|error| panic!("{words}: {error}"));
    });
}

fn press(app: &mut App, id: &str) {
    act(app, 1280.0, |window| {
        window.click(selector::id(id.to_owned())).unwrap_or_else(|error| panic!("{id}: {error}"));
    });
}

/// The line of the file on which the only block of that name starts.
fn line(fence: &str) -> usize {
    LESSON.lines().position(|line| line == format!("```{fence}")).unwrap() + 1
}

fn fill(app: &mut App, id: &str, words: &str) {
    // Every letter is a message, and the field shows it only once the window has acted on it.
    for letter in words.chars() {
        act(app, 1280.0, |window| {
            window.click(selector::id(id.to_owned())).expect("the field is there");
            window.tap_key(Named::End);
            window.typewrite(&letter.to_string());
        });
    }
}

fn shows(app: &mut App, words: &str) -> bool {
    let mut found = false;
    act(app, 1280.0, |window| found = window.find(words).is_ok());
    found
}

fn open(app: &mut App) {
    let _ = app.update(Message::Go(Place::Lesson("mud".to_owned())));
}

#[test]
fn an_answer_is_written_down_and_another_try_asks_anew() {
    let folder = tempfile::tempdir().unwrap();
    let mut app = start(folder.path());
    open(&mut app);
    press(&mut app, "guess:mud/which-goes-in-deeper:1");
    assert!(shows(&mut app, "Not quite."));
    click(&mut app, "Try again");
    assert!(!shows(&mut app, "Yes."), "the new question is open");
    press(&mut app, "guess:mud/which-goes-in-deeper:0");
    assert!(shows(&mut app, "Yes."));
    let _ = app.update(Message::KeepNotebook);
    let notebook = load(&folder.path().join("notebook.toml")).notebook;
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
    click(&mut app, "Notebook");
    assert!(shows(&mut app, "“Both alike”") && shows(&mut app, "✗ not right"));
}

#[test]
fn a_chain_is_filled_line_by_line() {
    let folder = tempfile::tempdir().unwrap();
    let mut app = start(folder.path());
    open(&mut app);
    assert!(shows(&mut app, "Opens when the line above is done."));
    let area = format!("faded:{}:1", line("faded"));
    fill(&mut app, &area, "0.0378");
    click(&mut app, "Check");
    assert!(shows(&mut app, "tracks"));
    for _ in 0..6 {
        act(&mut app, 1280.0, |window| {
            window.click(selector::id(area.clone())).expect("the field is there");
            window.tap_key(Named::End);
            window.tap_key(Named::Backspace);
        });
    }
    fill(&mut app, &area, "0.0756 m²");
    act(&mut app, 1280.0, |window| {
        window.click(selector::id(area.clone())).expect("the field is there");
        window.tap_key(Named::Enter);
    });
    assert!(shows(&mut app, "Right: you said 0.0756 m²."), "the demo build is the worked example");
    fill(&mut app, &format!("faded:{}:2", line("faded")), "900 kPa");
    click(&mut app, "Check");
    click(&mut app, "Show me this line");
    assert!(shows(&mut app, "The chain is complete."));
}

#[test]
fn three_readings_go_into_the_notebook_and_the_build() {
    let folder = tempfile::tempdir().unwrap();
    let mut app = start(folder.path());
    open(&mut app);
    assert!(shows(&mut app, "Predicted: 420 mm"));
    let reading = |place| format!("measure:{}:{place}", line("measure"));
    fill(&mut app, &reading(0), "210");
    assert!(!shows(&mut app, "Mean 210 mm"), "one reading is no mean");
    fill(&mut app, &reading(1), "21 cm");
    fill(&mut app, &reading(2), "210 mm");
    assert!(shows(&mut app, "Mean 210 mm"));
    assert!(shows(&mut app, "Measured over predicted: 0.500, half what was predicted."));
    assert!(shows(&mut app, "Hard,") && !shows(&mut app, "Soft,"));
    // Three equal readings are as sure as the ruler, no surer.
    click(&mut app, "Put 210 ± 10 mm into my build");
    let build = folder.path().join("build.toml");
    let _ = app.update(Message::SavePicked(build.clone()));
    let sheet = heftwise::sheet::file::load(&build).unwrap().sheet;
    assert_eq!(sheet.number(CONTACT_LENGTH.any()), Some("210 ± 10 mm"));
    assert!(shows(&mut app, "Predicted: 420 mm"), "the prediction does not follow the build");
    assert!(shows(&mut app, "In your notebook"));
    let _ = app.update(Message::KeepNotebook);
    let path = folder.path().join("notebook.toml");
    let notebook = load(&path).notebook;
    let [one] = notebook.lesson("mud").unwrap().measurements.as_slice() else { panic!() };
    assert_eq!(one.readings, ["210 mm", "210 mm", "210 mm"]);
    assert_eq!(one.predicted.as_deref(), Some("420 mm"));
    // Another day, the readings are still there, and the prediction of that day with them.
    let mut again = start(folder.path());
    open(&mut again);
    assert!(shows(&mut again, "Mean 210 mm"));
    assert!(shows(&mut again, "Measured over predicted: 0.500, half what was predicted."));
}

#[test]
fn folds_open_footnotes_show_and_teachers_notes_hide() {
    let folder = tempfile::tempdir().unwrap();
    let mut app = start(folder.path());
    open(&mut app);
    assert!(!shows(&mut app, "Folded") && !shows(&mut app, "Teachers"));
    click(&mut app, "Where it comes from");
    assert!(shows(&mut app, "Folded"));
    click(&mut app, "[n]");
    assert!(shows(&mut app, "Footnote n"));
    click(&mut app, "Back to the text");
    assert!(!shows(&mut app, "Footnote n"));
    act(&mut app, 360.0, |window| {
        window.click("[n]").expect("the mark is there on a narrow window");
    });
    act(&mut app, 360.0, |window| {
        window.click("Back to the text").expect("and so is the way back");
    });
    click(&mut app, "I have finished this lesson");
    click(&mut app, "Lessons");
    let _ = app.update(Message::KeepNotebook);
    let notebook = load(&folder.path().join("notebook.toml")).notebook;
    let finished = notebook.lesson("mud").unwrap().finished.clone().expect("it is finished");
    assert!(shows(&mut app, &format!("✓ Finished {}", finished.date())));
}

#[test]
fn notes_are_kept_and_the_notebook_exported() {
    let folder = tempfile::tempdir().unwrap();
    let mut app = start(folder.path());
    click(&mut app, "Notebook");
    assert!(shows(&mut app, "To the lessons"), "an empty notebook says what to do");
    open(&mut app);
    click(&mut app, "Notebook");
    act(&mut app, 1280.0, |window| {
        window.click(selector::id("note:mud")).expect("the editor is there");
        window.typewrite("wet");
    });
    click(&mut app, "Export");
    let text = std::fs::read_to_string(folder.path().join("heftwise-notebook.md")).unwrap();
    assert!(text.contains("## Mud\n") && text.contains("### Notes\n\nwet\n"), "{text}");
    click(&mut app, "Export");
    let words = format!(
        "{} was not written: there is a file of that name already; choose another name.",
        folder.path().join("heftwise-notebook.md").display()
    );
    assert!(shows(&mut app, &words), "nothing is written over");
    let _ = app.update(Message::KeepNotebook);
    let notebook = load(&folder.path().join("notebook.toml")).notebook;
    assert_eq!(notebook.lesson("mud").unwrap().note.trim_end(), "wet");
}
