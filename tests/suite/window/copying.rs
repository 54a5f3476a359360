//! Numbers, workings and pictures taken out of the window.

use heftwise::app::screen::Place;
use heftwise::app::shell::{Message, Start};

use super::rig::{self, Rig, WIDE, memory};
use super::runs::saved;

const LESSON: &str = r#"+++
id = "one"
title = "One"
order = 1
goals = []
uses = []
+++

```calculator
change = ["mass"]
find = ["weight"]
```

```sketch
view = "side"
show = ["cg", "parts"]
```
"#;

fn open() -> Rig {
    let folder = tempfile::tempdir().unwrap();
    let source = memory(&[("one", LESSON)]);
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("one".to_owned())));
    rig
}

/// 6.4 kg times standard gravity, 9.80665 m/s² (CGPM 1901), is 62.8 N.
#[test]
fn an_answer_is_copied_alone_or_with_its_working() {
    let mut rig = open();
    rig.click("Copy");
    assert_eq!(rig.copied, ["62.8 N"]);
    rig.click("Show the working");
    rig.click("Copy the working");
    let working = rig.copied.last().unwrap();
    for words in ["of Sandpiper", "= 62.8 N", "With: ", "Source: ", "9.81"] {
        assert!(working.contains(words), "{words}: {working}");
    }
    assert!(!working.contains('\\'), "it is text, not TeX: {working}");
}

#[test]
fn the_sketch_is_saved_as_a_picture_or_as_places() {
    let mut rig = open();
    saved(&mut rig, "Save the sketch", "centre of gravity");
}

#[test]
fn the_sketch_is_copied_as_a_picture_of_its_own() {
    let mut rig = open();
    rig.click("Copy it");
    let picture = rig.copied.last().unwrap();
    assert!(picture.starts_with("<svg") && picture.contains("xmlns="), "{picture:.80}");
    assert!(picture.contains("battery"), "with its parts");
    assert!(rig.says("Copied as SVG"), "and says so");
}
