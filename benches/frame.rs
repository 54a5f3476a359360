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

use std::process::ExitCode;
use std::time::{Duration, Instant};

use canvas::Canvas;
use heftwise::app::screen::Place;
use heftwise::app::shell::{App, Message};
use heftwise::lesson::{Library, Shipped};
use iced::advanced::{clipboard, renderer::Style, widget::operation::Outcome};
use iced::keyboard::{Key, Modifiers, key::Named};
use iced::mouse::{self, ScrollDelta};
use iced::{Event, Point, Renderer, Size, window};
use iced_test::futures::BoxStream;
use iced_test::futures::futures::{FutureExt, StreamExt};
use iced_test::runtime::{Action, UserInterface, task::into_stream};
use rig::{Rig, Ui};

/// What a frame may take: half of them, and all but the slowest twentieth. 120 and 60 a second.
const MEDIAN: Duration = Duration::from_micros(8_300);
const SLOWEST: Duration = Duration::from_micros(16_700);
/// Frames of each kind.
const FRAMES: usize = 300;
/// The parts of a frame, in their order.
const PARTS: [&str; 5] = ["update", "view", "layout", "draw", "pixels"];

/// How long each part of a frame took.
type Frame = [Duration; PARTS.len()];

/// What the program asks to be done.
type Work = BoxStream<Action<Message>>;

fn main() -> ExitCode {
    let library = Library::load(&Shipped);
    let longest =
        library.lessons.iter().max_by_key(|lesson| heftwise::lesson::word_count(lesson)).unwrap();
    println!("the lesson \"{}\", {} words", longest.title, heftwise::lesson::word_count(longest));
    println!("{:<28}{:>10}{:>10}{:>10}{:>10}", "figure", "ours", "goal", "ratio", "");
    let mut rig = Rig::fresh();
    rig.send(Message::Go(Place::Lesson(longest.id.clone())));
    let size = Size::new(rig.size.width as u32, rig.size.height as u32);
    let mut canvas = Canvas::new(size);
    show(&mut rig, &mut canvas);
    let mut fits = true;
    rig.point_at(Point::new(600.0, 400.0));
    let scrolled = wheel(FRAMES / 2, -60.0).chain(wheel(FRAMES / 2, 60.0));
    fits &= told("scrolling", scrolled.map(|event| turn(&mut rig, event, &mut canvas)).collect());
    // A number of the build stands in the margin, beside every part of the lesson: the mass, which
    // most others hang on, if the lesson has it.
    let given = longest.uses.iter().filter(|id| rig.app.desk.sheet().number(**id).is_some());
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
    fits &= told("edit", edited);
    if fits { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// Turns of the wheel, each so many pixels.
fn wheel(times: usize, y: f32) -> impl Iterator<Item = Event> {
    let turned = mouse::Event::WheelScrolled { delta: ScrollDelta::Pixels { x: 0.0, y } };
    std::iter::repeat_n(Event::Mouse(turned), times)
}

/// One turn of the window's loop: an event to the page as it stands, what comes of it to the
/// program, the page anew, painted.
fn turn(rig: &mut Rig, event: Event, canvas: &mut Canvas) -> Frame {
    let mut marks = [Instant::now(); PARTS.len() + 1];
    let theme = rig.app.theme();
    let renderer = &mut rig.renderer;
    let mut messages = Vec::new();
    let cache = std::mem::take(&mut rig.cache);
    let mut ui = UserInterface::build(rig.app.view(), rig.size, cache, renderer);
    marks[0] = Instant::now();
    let _ = ui.update(&[event], rig.cursor, renderer, &mut clipboard::Null, &mut messages);
    let mut cache = ui.into_cache();
    assert!(!messages.is_empty(), "nothing comes of the event");
    let mut work = acted(&mut rig.app, &mut messages);
    marks[1] = Instant::now();
    let mut view = rig.app.view();
    marks[2] = Instant::now();
    let redraw = Event::Window(window::Event::RedrawRequested(Instant::now()));
    let mut ui = loop {
        let mut ui = UserInterface::build(view, rig.size, cache, renderer);
        messages.extend(work.drain(..).flat_map(|task| done(task, &mut ui, renderer)));
        if messages.is_empty() {
            let events = std::slice::from_ref(&redraw);
            let _ = ui.update(events, rig.cursor, renderer, &mut clipboard::Null, &mut messages);
        }
        if messages.is_empty() {
            break ui;
        }
        cache = ui.into_cache();
        work = acted(&mut rig.app, &mut messages);
        view = rig.app.view();
    };
    marks[3] = Instant::now();
    ui.draw(renderer, &theme, &Style { text_color: theme.palette().text }, rig.cursor);
    marks[4] = Instant::now();
    canvas.paint(renderer, theme.palette().background);
    marks[5] = Instant::now();
    rig.cache = ui.into_cache();
    std::array::from_fn(|part| marks[part + 1] - marks[part])
}

/// Paints the page as it stands.
fn show(rig: &mut Rig, canvas: &mut Canvas) {
    let theme = rig.app.theme();
    let (ground, text_color) = (theme.palette().background, theme.palette().text);
    let cache = std::mem::take(&mut rig.cache);
    let renderer = &mut rig.renderer;
    let mut ui = UserInterface::build(rig.app.view(), rig.size, cache, renderer);
    ui.draw(renderer, &theme, &Style { text_color }, rig.cursor);
    canvas.paint(renderer, ground);
    rig.cache = ui.into_cache();
}

/// Hands messages to the program; the work it asks for.
fn acted(app: &mut App, messages: &mut Vec<Message>) -> Vec<Work> {
    messages.drain(..).filter_map(|message| into_stream(app.update(message))).collect()
}

/// Does the part of a work that is done at once, looking through the page and moving it; what it has
/// to say to the program.
fn done(mut work: Work, ui: &mut Ui<'_>, renderer: &Renderer) -> Vec<Message> {
    let mut messages = Vec::new();
    while let Some(Some(action)) = work.next().now_or_never() {
        match action {
            Action::Output(message) => messages.push(message),
            Action::Widget(operation) => {
                let mut next = Some(operation);
                while let Some(mut operation) = next.take() {
                    ui.operate(renderer, operation.as_mut());
                    if let Outcome::Chain(chained) = operation.finish() {
                        next = Some(chained);
                    }
                }
            }
            _ => {}
        }
    }
    messages
}

/// Prints what frames took beside the budget; whether they keep to it.
fn told(what: &str, frames: Vec<Frame>) -> bool {
    let at = |mut times: Vec<Duration>, share: f64| {
        times.sort();
        times[(times.len() as f64 * share) as usize]
    };
    let whole: Vec<Duration> = frames.iter().map(|frame| frame.iter().sum()).collect();
    let mut fits = true;
    for (words, share, goal) in [("median", 0.5, MEDIAN), ("95th percentile", 0.95, SLOWEST)] {
        let took = at(whole.clone(), share);
        let ratio = took.as_secs_f64() / goal.as_secs_f64();
        fits &= ratio <= 1.0;
        let figure = format!("{what}, {words}");
        println!("{figure:<28}{took:>10.2?}{goal:>10.2?}{ratio:>10.2}");
    }
    for (part, name) in PARTS.iter().enumerate() {
        let part = at(frames.iter().map(|frame| frame[part]).collect(), 0.5);
        println!("    {name:<24}{part:>10.2?}");
    }
    fits
}
