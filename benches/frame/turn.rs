//! One turn of the window's loop, piece by piece, and what many of them took beside the budget.

use std::time::{Duration, Instant};

use heftwise::app::shell::{App, Message};
use iced::advanced::{clipboard, renderer::Style, widget::operation::Outcome};
use iced::mouse::{self, ScrollDelta};
use iced::{Event, Renderer, window};
use iced_test::futures::BoxStream;
use iced_test::futures::futures::{FutureExt, StreamExt};
use iced_test::runtime::{Action, UserInterface, task::into_stream};

use super::canvas::Canvas;
use super::rig::{Rig, Ui};

/// What a frame may take: half of them, and all but the slowest twentieth. 120 and 60 a second.
const MEDIAN: Duration = Duration::from_micros(8_300);
const SLOWEST: Duration = Duration::from_micros(16_700);
/// The parts of a frame, in their order.
const PARTS: [&str; 5] = ["update", "view", "layout", "draw", "pixels"];

/// How long each part of a frame took.
pub type Frame = [Duration; PARTS.len()];

/// What the program asks to be done.
type Work = BoxStream<Action<Message>>;

/// Turns of the wheel, each so many pixels.
pub fn wheel(times: usize, y: f32) -> impl Iterator<Item = Event> {
    let turned = mouse::Event::WheelScrolled { delta: ScrollDelta::Pixels { x: 0.0, y } };
    std::iter::repeat_n(Event::Mouse(turned), times)
}

/// One turn of the window's loop: an event to the page as it stands, what comes of it to the
/// program, the page anew, painted.
pub fn turn(rig: &mut Rig, event: Event, canvas: &mut Canvas) -> Frame {
    let mut marks = [Instant::now(); PARTS.len() + 1];
    let theme = rig.app.theme();
    let renderer = &mut rig.renderer;
    let mut messages = Vec::new();
    let cache = std::mem::take(&mut rig.cache);
    let mut ui = UserInterface::build(rig.app.view(), rig.size, cache, renderer);
    marks[0] = Instant::now();
    let _ = ui.update(&[event], rig.cursor, renderer, &mut clipboard::Null, &mut messages);
    let mut cache = ui.into_cache();
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
pub fn show(rig: &mut Rig, canvas: &mut Canvas) {
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
pub fn told(what: &str, frames: &[Frame]) -> bool {
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
        println!("{figure:<48}{took:>10.2?}{goal:>10.2?}{ratio:>9.2}{:>9}", 1);
    }
    for (part, name) in PARTS.iter().enumerate() {
        let part = at(frames.iter().map(|frame| frame[part]).collect(), 0.5);
        println!("    {name:<44}{part:>10.2?}");
    }
    fits
}
