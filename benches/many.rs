//! What a frame costs where there is much to show: a bench of 200 builds, a build of 2 000 parts.
//! `cargo bench --bench many`. Ends with 1 when a budget is missed.
//!
//! Measured as the bench of frames is: the program's own state and view, the software renderer at
//! 1280 by 800, from what the reader does to the last pixel.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench may be blunt")]

#[allow(dead_code, clippy::expect_used, clippy::panic, reason = "what a bench leaves of it")]
#[path = "../tests/suite/window/rig.rs"]
mod rig;

#[path = "../tests/suite/window/canvas.rs"]
mod canvas;

#[path = "frame/turn.rs"]
mod turn;

use std::process::ExitCode;

use canvas::Canvas;
use heftwise::app::screen::{Place, bench};
use heftwise::app::settings::Settings;
use heftwise::app::shell::{Message, Start};
use iced::keyboard::{Key, Modifiers, key::Named};
use iced::widget::Id;
use iced::{Event, Point, Size};
use rig::{Rig, WIDE};
use tempfile::TempDir;
use turn::{Frame, show, told, turn, wheel};

const BUILDS: usize = 200;
const PARTS: usize = 2_000;
/// Frames of each kind.
const FRAMES: usize = 200;

fn main() -> ExitCode {
    println!("{:<48}{:>10}{:>10}{:>9}{:>9}", "figure", "ours", "budget", "ratio", "goal");
    let folder = tempfile::tempdir().unwrap();
    let mut fits = true;

    let mut rig = with_builds(&folder);
    let mut canvas = shown(&mut rig);
    fits &= told(&format!("bench of {BUILDS}, scrolling"), &scrolled(&mut rig, &mut canvas));
    rig.click(Id::new(bench::NAME));
    fits &= told(&format!("bench of {BUILDS}, typing"), &typed(&mut rig, &mut canvas));

    let mut rig = with_parts(&folder);
    let mut canvas = shown(&mut rig);
    fits &= told(&format!("{PARTS} parts, scrolling"), &scrolled(&mut rig, &mut canvas));
    rig.click(Id::new("sheet:track-width"));
    let keys = [Named::ArrowUp, Named::ArrowDown]
        .map(|step| rig::key_event(Key::Named(step), Modifiers::empty(), None));
    let frames = edited(&mut rig, &mut canvas, &keys);
    fits &= told(&format!("{PARTS} parts, a number stepped"), &frames);
    rig.click(Id::new("part:20:mass"));
    fits &= told(&format!("{PARTS} parts, the mass of one typed"), &typed(&mut rig, &mut canvas));

    if fits { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// The bench, the program having opened so many builds.
fn with_builds(folder: &TempDir) -> Rig {
    let mut settings = Settings::default();
    for number in 0..BUILDS {
        let text = format!("format = 1\nname = \"Cart {number}\"\n[machine]\nmass = \"9 kg\"\n");
        settings.remember(&rig::file(folder, &format!("cart-{number}.toml"), &text));
    }
    let start = rig::start(folder);
    settings.save(&start.folders.settings).unwrap();
    let mut rig = Rig::open(start, WIDE);
    rig.send(Message::Go(Place::Bench));
    assert!(rig.says(&format!("of {BUILDS}")), "{:?}", rig.texts());
    rig
}

/// The build sheet of Sandpiper with so many parts more.
fn with_parts(folder: &TempDir) -> Rig {
    let mut text = heftwise::sheet::demo::find("sandpiper").unwrap().text.to_owned();
    for number in 0..PARTS {
        text += &format!(
            "\n[[parts]]\nname = \"shoe {number}\"\nmass = \"{} ± 1 g\"\nat = [\"{} mm\", \"{} mm\", \"20 mm\"]\n",
            2 + number % 9,
            number % 400,
            [170, -170][number % 2],
        );
    }
    let build = Some(rig::file(folder, "many.toml", &text));
    let mut rig = Rig::open(Start { build, ..rig::start(folder) }, WIDE);
    rig.send(Message::Go(Place::BuildSheet));
    assert!(rig.app.desk.sheet().parts().len() > PARTS && rig.says("Parts 1 to "));
    rig
}

/// The window as it stands, painted.
fn shown(rig: &mut Rig) -> Canvas {
    let mut canvas = Canvas::new(Size::new(rig.size.width as u32, rig.size.height as u32));
    show(rig, &mut canvas);
    canvas
}

/// Down the page and up again, over and over.
fn scrolled(rig: &mut Rig, canvas: &mut Canvas) -> Vec<Frame> {
    rig.point_at(Point::new(700.0, 500.0));
    let mut frames = Vec::new();
    while frames.len() < FRAMES {
        frames.extend(wheel(10, -60.0).map(|event| turn(rig, event, canvas)));
        assert!(rig.scrolled() > 500.0, "the page did not move");
        frames.extend(wheel(10, 60.0).map(|event| turn(rig, event, canvas)));
    }
    frames
}

/// Letters into the field that has the focus, and out again.
fn typed(rig: &mut Rig, canvas: &mut Canvas) -> Vec<Frame> {
    let letter = rig::key_event(Key::Character("7".into()), Modifiers::empty(), Some("7".into()));
    let back = rig::key_event(Key::Named(Named::Backspace), Modifiers::empty(), None);
    let keys: [Event; 2] = [letter, back];
    edited(rig, canvas, &keys)
}

/// Keys in turn, each of which is an edit.
fn edited(rig: &mut Rig, canvas: &mut Canvas, keys: &[Event]) -> Vec<Frame> {
    let before = rig.app.desk.revision();
    let keys = keys.iter().cycle().take(FRAMES);
    let frames = keys.map(|key| turn(rig, key.clone(), canvas)).collect();
    assert_eq!(rig.app.desk.revision() - before, FRAMES as u64, "not every key was an edit");
    frames
}
