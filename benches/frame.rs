//! What a frame of the window costs, from what the reader does to the last pixel: `cargo bench
//! --bench frame`. Ends with 1 when a budget is missed.
//!
//! The program's own state and view on the software renderer at 1280 by 800, in the longest lesson.
//! What has changed since the frame before is repainted, as the window does it. Handing the pixels to
//! the screen is not counted.
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
use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use heftwise::lesson::{Library, Shipped};
use iced::keyboard::{Key, Modifiers, key::Named};
use iced::{Point, Size};
use rig::Rig;
use turn::{show, told, turn, wheel};

/// Frames of each kind.
const FRAMES: usize = 300;

fn main() -> ExitCode {
    let library = Library::load(Shipped);
    let longest =
        library.lessons().max_by_key(|lesson| heftwise::lesson::word_count(lesson)).unwrap();
    println!(
        "the lesson \"{}\", {} words",
        longest.front.title,
        heftwise::lesson::word_count(longest)
    );
    println!("{:<48}{:>10}{:>10}{:>9}{:>9}", "figure", "ours", "budget", "ratio", "goal");
    let mut rig = Rig::fresh();
    rig.send(Message::Go(Place::Lesson(longest.front.id.clone())));
    let size = Size::new(rig.size.width as u32, rig.size.height as u32);
    let mut canvas = Canvas::new(size);
    show(&mut rig, &mut canvas);
    let mut fits = true;
    rig.point_at(Point::new(600.0, 400.0));
    let scrolled = wheel(FRAMES / 2, -60.0).chain(wheel(FRAMES / 2, 60.0));
    fits &= told(
        "scrolling",
        &scrolled.map(|event| turn(&mut rig, event, &mut canvas)).collect::<Vec<_>>(),
    );
    // A number of the build stands in the margin, beside every part of the lesson: the mass, which
    // most others hang on, if the lesson has it.
    let given = longest.front.uses.iter().filter(|id| rig.app.desk.sheet().number(**id).is_some());
    let number = given.max_by_key(|id| id.name() == "mass").unwrap();
    println!("the number edited is the {}", number.name());
    let field = iced::widget::Id::from(format!("margin:{}", number.name()));
    let mut edited = Vec::new();
    for _ in 0..FRAMES / 15 {
        rig.click(field.clone());
        show(&mut rig, &mut canvas);
        for key in (0..15).map(|place| [Named::ArrowUp, Named::ArrowDown][place % 2]) {
            let key = rig::key_event(Key::Named(key), Modifiers::empty(), None);
            edited.push(turn(&mut rig, key, &mut canvas));
        }
        rig.point_at(Point::new(600.0, 400.0));
        for event in wheel(4, -120.0) {
            turn(&mut rig, event, &mut canvas);
        }
    }
    fits &= told("edit", &edited);
    if fits { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
