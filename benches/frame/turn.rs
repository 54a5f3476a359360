//! One turn of the window's loop, piece by piece, and what many of them took beside the budget.

use std::time::{Duration, Instant};

use iced::advanced::{clipboard, renderer::Style};
use iced::mouse::{self, ScrollDelta};
use iced::{Event, Size, window};
use iced_test::renderer::fallback;
use iced_test::renderer::graphics::{Viewport, damage};
use iced_test::runtime::UserInterface;
use iced_tiny_skia::Layer;
use resvg::tiny_skia::{Mask, Pixmap};

use super::rig::Rig;

/// What a frame may take: half of them, and all but the slowest twentieth. 120 and 60 a second.
const MEDIAN: Duration = Duration::from_micros(8_300);
const SLOWEST: Duration = Duration::from_micros(16_700);
/// The parts of a frame, in their order.
const PARTS: [&str; 5] = ["update", "view", "layout", "draw", "pixels"];

/// How long each part of a frame took.
pub type Frame = [Duration; PARTS.len()];

/// What is painted on.
pub struct Canvas {
    pixels: Pixmap,
    mask: Mask,
    /// What the pixels show.
    shown: Option<Vec<Layer>>,
}

impl Canvas {
    /// As large as the window.
    pub fn of(rig: &Rig) -> Self {
        let (width, height) = (rig.size.width as u32, rig.size.height as u32);
        Self {
            pixels: Pixmap::new(width, height).unwrap(),
            mask: Mask::new(width, height).unwrap(),
            shown: None,
        }
    }

    /// One turn of the window's loop: an event to the page as it stands, what comes of it to the
    /// program, the page anew, painted where it has changed.
    pub fn turn(&mut self, rig: &mut Rig, event: Event) -> Frame {
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
        let size = Size::new(self.pixels.width(), self.pixels.height());
        let all = iced::Rectangle::with_size(rig.size);
        let viewport = Viewport::with_physical_size(size, 1.0);
        let layers = software.layers();
        let changed = self.shown.take().map_or_else(
            || vec![all],
            |shown| damage::diff(&shown, layers, |layer| vec![layer.bounds], Layer::damage),
        );
        self.shown = Some(layers.to_vec());
        let changed = damage::group(changed, all);
        let (pixels, mask) = (&mut self.pixels.as_mut(), &mut self.mask);
        software.draw(pixels, mask, &viewport, &changed, ground);
        marks[5] = Instant::now();
        rig.cache = ui.into_cache();
        std::array::from_fn(|part| marks[part + 1] - marks[part])
    }
}

/// Turns of the wheel, each so many pixels.
pub fn wheel(times: usize, y: f32) -> impl Iterator<Item = Event> {
    let turned = mouse::Event::WheelScrolled { delta: ScrollDelta::Pixels { x: 0.0, y } };
    std::iter::repeat_n(Event::Mouse(turned), times)
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
