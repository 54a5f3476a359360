//! Companions, targets, levers and what puts numbers back, pressed in the window.

use std::path::Path;
use std::sync::Arc;

use heftwise::app::screen::Place;
use heftwise::app::shell::{App, Folders, Message, Start};
use heftwise::lesson::Memory;
use iced::{Settings, Size};
use iced_test::Simulator;

/// Tall enough that no block of the lesson needs scrolling to.
const TALL: f32 = 4000.0;

const LESSON: &str = r#"+++
id = "mud"
title = "Mud"
order = 1
minutes = 5
needs = []
goals = []
uses = ["mass"]
+++

```calculator
title = "How hard?"
change = ["track-width"]
find = ["ground-pressure"]
```

```target
make = "ground-pressure"
be = "0.6 kPa"
by = "track-width"
from = "40 mm"
to = "160 mm"
```

```levers
of = "ground-pressure"
```

```side-by-side
show = ["mass", "ground-pressure"]
with = ["bullock"]
```
"#;

struct Window {
    app: App,
    width: f32,
    _folder: tempfile::TempDir,
}

impl Window {
    fn open(width: f32) -> Self {
        let folder = tempfile::tempdir().unwrap();
        let app = app(folder.path());
        let mut window = Self { app, width, _folder: folder };
        window.send(Message::Resized(Size::new(width, TALL)));
        window.send(Message::Go(Place::Lesson("mud".to_owned())));
        window
    }

    fn send(&mut self, message: Message) {
        let _ = self.app.update(message);
    }

    fn looks(&self) -> Simulator<'_, Message> {
        Simulator::with_size(Settings::default(), Size::new(self.width, TALL), self.app.view())
    }

    fn has(&self, words: &str) -> bool {
        self.looks().find(words).is_ok()
    }

    /// Whether pressing these words does anything; they are there in any case.
    #[track_caller]
    fn answers(&self, words: &str) -> bool {
        self.sees(words);
        let mut looks = self.looks();
        looks.click(words).is_ok() && looks.into_messages().next().is_some()
    }

    #[track_caller]
    fn sees(&self, words: &str) {
        assert!(self.has(words), "{words:?} is not there");
    }

    #[track_caller]
    fn press(&mut self, words: &str) {
        let mut looks = self.looks();
        looks.click(words).unwrap_or_else(|error| panic!("{words:?}: {error}"));
        let messages: Vec<Message> = looks.into_messages().collect();
        assert!(!messages.is_empty(), "{words:?} does nothing");
        messages.into_iter().for_each(|message| self.send(message));
    }
}

impl Window {
    /// Puts one letter in place of all the text of a field.
    fn types(&mut self, field: &str, letter: &str) {
        let mut looks = self.looks();
        // The third click at once takes hold of the whole text.
        for _ in 0..3 {
            looks.click(iced_test::selector::id(field.to_owned())).unwrap();
        }
        looks.typewrite(letter);
        let messages: Vec<Message> = looks.into_messages().collect();
        assert!(!messages.is_empty(), "{field} takes no text");
        messages.into_iter().for_each(|message| self.send(message));
    }
}

fn app(folder: &Path) -> App {
    let mut source = Memory::default();
    source.texts.insert("mud".to_owned(), LESSON.to_owned());
    let folders = Folders {
        settings: folder.join("settings"),
        recovery: folder.join("recovery"),
        notebook: folder.join("notebook.toml"),
        exports: folder.join("exports"),
    };
    let build = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/builds/sandpiper.toml");
    App::new(Start { build: Some(build), source: Arc::new(source), watched: None, folders }).0
}

#[test]
fn a_press_takes_a_target_into_the_build_and_another_puts_it_back() {
    let mut window = Window::open(1280.0);
    window.sees("At 125 mm track width the ground pressure (mean) is 600 Pa.");
    assert!(!window.answers("Reset to my build"), "there is nothing to reset");
    window.press("Take it into your build");
    window.sees("In your build");
    window.sees("Your build has 600 Pa now.");
    // As doubtful as it was measured.
    window.sees("124.53 ± 2 mm");
    window.press("Reset to my build");
    window.sees("Your build has 830 Pa now.");
    assert!(!window.answers("Reset to my build"), "there is nothing to reset");
    // One press, one step back.
    window.send(Message::Undo);
    window.sees("Your build has 600 Pa now.");
    window.send(Message::Undo);
    window.sees("Your build has 830 Pa now.");
}

#[test]
fn another_wish_is_typed() {
    let mut window = Window::open(1280.0);
    window.types(&format!("target:{}", line_of("```target")), "1");
    window.sees("No answer");
    window.press("As the lesson asks");
    window.sees("At 125 mm track width the ground pressure (mean) is 600 Pa.");
}

#[test]
fn a_companion_stands_in_every_block() {
    let mut window = Window::open(1280.0);
    window.send(Message::Go(Place::Bench));
    window.press("Add a companion");
    window.press("Yours as it is now");
    window.sees("Sandpiper, copy");
    window.send(Message::Go(Place::Lesson("mud".to_owned())));
    window.press("Take it into your build");
    window.sees("38 % more than yours");
    window.send(Message::CompanionExample("bullock"));
    window.sees("Bullock 80.0 mm");
    window.sees("1.99 kPa");
    window.send(Message::Go(Place::Bench));
    assert!(!window.has("Add a companion"), "two are the most");
    window.press("Remove");
    assert!(!window.has("Sandpiper, copy"));
    window.send(Message::Go(Place::Lesson("mud".to_owned())));
    // Another build on the desk keeps its company.
    window.send(Message::Undo);
    window.send(Message::OpenDemo("dune-cart"));
    window.sees("Bullock 80.0 mm");
}

#[test]
fn companions_are_remembered() {
    let folder = tempfile::tempdir().unwrap();
    let mut first = app(folder.path());
    let _ = first.update(Message::CompanionExample("bullock"));
    let gone = folder.path().join("gone.toml");
    std::fs::write(&gone, "format = 1\nname = \"Gone\"\n").unwrap();
    let _ = first.update(Message::CompanionPicked(gone.clone()));
    // A file that is not there any more is left out.
    std::fs::remove_file(gone).unwrap();
    let mut second = app(folder.path());
    let _ = second.update(Message::Go(Place::Bench));
    let mut looks =
        Simulator::with_size(Settings::default(), Size::new(1280.0, TALL), second.view());
    assert!(looks.find("Bullock").is_ok());
    assert!(looks.find("Gone").is_err());
}

#[test]
fn a_found_number_is_pinned_and_found_again() {
    let mut window = Window::open(1280.0);
    window.press("Pin…");
    window.types(&format!("pin:{}:ground-pressure", line_of("```calculator")), "7");
    window.sees("Your build has 7.00 Pa now.");
    window.press("Unpin");
    window.sees("Your build has 830 Pa now.");
}

#[test]
fn the_blocks_fit_a_narrow_window() {
    let mut window = Window::open(360.0);
    window.send(Message::CompanionExample("bullock"));
    window.send(Message::CompanionExample("peat-barrow"));
    for words in ["Take it into your build", "Takes parts or work", "Gives first"] {
        let bounds = window.looks().find(words).unwrap();
        let bounds = iced_test::selector::Bounded::bounds(&bounds);
        assert!(bounds.x >= 0.0 && bounds.x + bounds.width <= 360.0, "{words:?} at {bounds:?}");
    }
}

/// The line a block starts on, from 1.
fn line_of(fence: &str) -> usize {
    LESSON.lines().position(|line| line == fence).unwrap() + 1
}
