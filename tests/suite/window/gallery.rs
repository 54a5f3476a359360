//! Pictures of every screen to look at, in `target/tmp/gallery`. It checks nothing, so it is run by hand:
//!
//!     HEFTWISE_LOOKS="1280x800 480x900-night-200" \
//!         cargo test --test suite window::gallery -- --ignored
//!
//! A look is a size, by day unless it says `night`, with type at 100 % unless it says another;
//! `HEFTWISE_SCENES` names the scenes, by a part of their names.

use std::path::Path;

use heftwise::app::printing::Print;
use heftwise::app::question::Next;
use heftwise::app::screen::{Place, build_sheet};
use heftwise::app::settings::Daylight;
use heftwise::app::shell::Message;
use heftwise::lesson::{Shipped, Source as _};
use heftwise::quantity::catalogue::running_gear::TRACK_WIDTH;
use heftwise::sheet::Edit;
use iced::Size;
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{self, Rig};
use super::seen::Shot;

const LOOKS: &str = "1280x800 1280x800-night 1920x1080 480x900 360x640 1280x800-200";

/// A notebook with some weeks in it.
const NOTEBOOK: &str = r#"format = 1
[lesson.pressure]
opened = "2026-05-01T09:30:00Z"
finished = "2026-05-02T09:30:00Z"
note = "The left track leaves the deeper print. Weigh each side."
[[lesson.pressure.measurement]]
what = "Length of the print"
quantity = "contact-length"
readings = ["360 mm", "365 mm", "355 mm"]
predicted = "420 mm"
when = "2026-05-04T09:30:00Z"
[[lesson.pressure.measurement]]
what = "Length of the print"
quantity = "contact-length"
readings = ["410 mm", "405 mm", "415 mm"]
predicted = "400 mm"
when = "2026-06-01T18:00:00Z"
[[lesson.pressure.measurement]]
what = "Length of the print"
quantity = "contact-length"
readings = ["398 mm", "402 mm", "400 mm"]
predicted = "400 mm"
when = "2026-07-11T18:00:00Z"
[lesson.ground]
opened = "2026-05-01T09:30:00Z"
"#;

fn scene(rig: &mut Rig, name: &str) {
    if name != "first" {
        rig.app.welcome = false;
    }
    let mut go = |place| rig.send(Message::Go(place));
    if let Some(id) = name.strip_prefix("lesson-") {
        return go(Place::Lesson(id.to_owned()));
    }
    match name {
        "first" | "contents" => go(Place::Contents),
        "build-sheet" => go(Place::BuildSheet),
        "walk-round" => go(Place::WalkRound),
        "notebook" | "notebook-empty" => go(Place::Notebook),
        "bench" => {
            go(Place::Bench);
            rig.send(Message::CompanionCopy);
            rig.send(Message::CompanionExample("bullock"));
            let edit = Edit::Set { id: TRACK_WIDTH.any(), text: "120 ± 5 mm".to_owned() };
            rig.send(Message::BuildSheet(build_sheet::Message::Edit(edit, None)));
        }
        "bench-five" => {
            go(Place::Bench);
            rig.click("Start with five questions");
        }
        "settings" => go(Place::Settings),
        "workshop" => {
            go(Place::Lesson("pressure".to_owned()));
            rig.send(Message::Show);
            for _ in 0..3 {
                rig.key(Named::ArrowRight, Modifiers::empty());
            }
        }
        "find" => {
            go(Place::Contents);
            rig.command("f");
            rig.typewrite("pressure");
        }
        "keys" => rig.send(Message::KeysTurned),
        "print" => rig.send(Message::Print(Print::Lesson("pressure".to_owned()))),
        "unsaved" => {
            let edit = Edit::Set { id: TRACK_WIDTH.any(), text: "120 ± 5 mm".to_owned() };
            rig.send(Message::BuildSheet(build_sheet::Message::Edit(edit, None)));
            rig.send(Message::Leave(Next::Blank));
        }
        "menu" => rig.send(Message::MenuTurned),
        _ => panic!("there is no scene {name}"),
    }
}

const SCENES: [&str; 15] = [
    "first",
    "contents",
    "build-sheet",
    "walk-round",
    "notebook",
    "notebook-empty",
    "bench",
    "bench-five",
    "settings",
    "workshop",
    "find",
    "keys",
    "print",
    "unsaved",
    "menu",
];

#[test]
#[ignore = "draws pictures to look at; run it by name"]
fn every_screen_is_drawn() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("gallery");
    std::fs::create_dir_all(&folder).unwrap();
    let wanted = std::env::var("HEFTWISE_SCENES").unwrap_or_default();
    let looks = std::env::var("HEFTWISE_LOOKS").unwrap_or_else(|_| LOOKS.to_owned());
    let lessons = Shipped.lessons().unwrap().into_iter().map(|id| format!("lesson-{id}"));
    for name in SCENES.map(str::to_owned).into_iter().chain(lessons) {
        if !wanted.is_empty() && !wanted.split(' ').any(|part| name.contains(part)) {
            continue;
        }
        for look in looks.split(' ') {
            let mut said = look.split('-');
            let (width, height) = said.next().and_then(|size| size.split_once('x')).unwrap();
            let size = Size::new(width.parse().unwrap(), height.parse().unwrap());
            let (mut light, mut text) = (Daylight::Day, 100);
            for word in said {
                match word {
                    "night" => light = Daylight::Night,
                    percent => text = percent.parse().unwrap(),
                }
            }
            let own = tempfile::tempdir().unwrap();
            if !name.ends_with("empty") {
                let path = rig::folders(&own).notebook;
                std::fs::create_dir_all(path.parent().unwrap()).unwrap();
                std::fs::write(path, NOTEBOOK).unwrap();
            }
            let shot = Shot::of(&own, |rig| scene(rig, &name), ("", size, light, text));
            shot.save(&folder.join(format!("{name}-{look}.png")));
        }
    }
}
