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

use std::process::ExitCode;
use std::time::{Duration, Instant};

use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use heftwise::lesson::{Library, Shipped};
use iced::advanced::{clipboard, renderer::Style};
use iced::keyboard::{Key, Modifiers, key::Named};
use iced::mouse::{self, ScrollDelta};
use iced::{Event, Point, Size, window};
use iced_test::renderer::fallback;
use iced_test::renderer::graphics::{Viewport, damage};
use iced_test::runtime::UserInterface;
use iced_tiny_skia::Layer;
use resvg::tiny_skia::{Mask, Pixmap};
use rig::Rig;

/// What a frame may take: half of them, and all but the slowest twentieth. 120 and 60 a second.
const MEDIAN: Duration = Duration::from_micros(8_300);
const SLOWEST: Duration = Duration::from_micros(16_700);
/// Frames of each kind.
const FRAMES: usize = 300;
/// The parts of a frame, in their order.
const PARTS: [&str; 5] = ["update", "view", "layout", "draw", "pixels"];

/// How long each part of a frame took.
type Frame = [Duration; PARTS.len()];

/// What is painted on.
struct Canvas {
    pixels: Pixmap,
    mask: Mask,
    /// What the pixels show.
    shown: Option<Vec<Layer>>,
}

fn main() -> ExitCode {
    let library = Library::load(&Shipped);
    let longest =
        library.lessons.iter().max_by_key(|lesson| heftwise::lesson::word_count(lesson)).unwrap();
    println!("the lesson \"{}\", {} words", longest.title, heftwise::lesson::word_count(longest));
    println!("{:<28}{:>10}{:>10}{:>10}{:>10}", "figure", "ours", "goal", "ratio", "");
    let mut rig = Rig::fresh();
    rig.send(Message::Go(Place::Lesson(longest.id.clone())));
    let size = Size::new(rig.size.width as u32, rig.size.height as u32);
    let mut canvas = Canvas {
        pixels: Pixmap::new(size.width, size.height).unwrap(),
        mask: Mask::new(size.width, size.height).unwrap(),
        shown: None,
    };
    let mut fits = true;
    rig.point_at(Point::new(600.0, 400.0));
    let scrolled = wheel(FRAMES / 2, -60.0).chain(wheel(FRAMES / 2, 60.0));
    fits &= told("scrolling", scrolled.map(|event| turn(&mut rig, event, &mut canvas)).collect());
    let mut edited = Vec::new();
    for _ in 0..FRAMES / 15 {
        // The field of the mass stands in the margin, beside every part of the lesson.
        rig.click(iced::widget::Id::new("margin:mass"));
        for key in (0..15).map(|place| [Named::ArrowUp, Named::ArrowDown][place % 2]) {
            let key = rig::key_event(Key::Named(key), Modifiers::empty(), None);
            edited.push(turn(&mut rig, key, &mut canvas));
        }
        rig.point_at(Point::new(600.0, 400.0));
        wheel(4, -120.0).for_each(|event| rig.feed(event));
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
    let (ground, ink) = (theme.palette().background, theme.palette().text);
    let cache = std::mem::take(&mut rig.cache);
    let renderer = &mut rig.renderer;
    let mut messages = Vec::new();
    let mut ui = UserInterface::build(rig.app.view(), rig.size, cache, renderer);
    marks[0] = Instant::now();
    let _ = ui.update(&[event], rig.cursor, renderer, &mut clipboard::Null, &mut messages);
    let cache = ui.into_cache();
    assert!(!messages.is_empty(), "nothing comes of the event");
    messages.drain(..).for_each(|message| drop(rig.app.update(message)));
    marks[1] = Instant::now();
    let view = rig.app.view();
    marks[2] = Instant::now();
    let mut ui = UserInterface::build(view, rig.size, cache, renderer);
    let redraw = Event::Window(window::Event::RedrawRequested(Instant::now()));
    let _ = ui.update(&[redraw], rig.cursor, renderer, &mut clipboard::Null, &mut messages);
    marks[3] = Instant::now();
    ui.draw(renderer, &theme, &Style { text_color: ink }, rig.cursor);
    marks[4] = Instant::now();
    let fallback::Renderer::Secondary(software) = renderer else {
        unreachable!("the rig asks for the software renderer")
    };
    let size = Size::new(canvas.pixels.width(), canvas.pixels.height());
    let all = iced::Rectangle::with_size(rig.size);
    let viewport = Viewport::with_physical_size(size, 1.0);
    let changed = canvas.shown.take().map_or_else(
        || vec![all],
        |shown| damage::diff(&shown, software.layers(), |layer| vec![layer.bounds], Layer::damage),
    );
    canvas.shown = Some(software.layers().to_vec());
    let changed = damage::group(changed, all);
    software.draw(&mut canvas.pixels.as_mut(), &mut canvas.mask, &viewport, &changed, ground);
    marks[5] = Instant::now();
    rig.cache = ui.into_cache();
    std::array::from_fn(|part| marks[part + 1] - marks[part])
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
