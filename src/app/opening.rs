//! Opening the window where there may be none to open: words instead of a trace.

use std::panic::{self, AssertUnwindSafe};
use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread;

use iced::window::Position;
use iced::{Point, Size};

/// Whether the window has opened. Until then a panic comes from the window system's own start,
/// which reports a missing display or library in no other way.
static OPEN: AtomicBool = AtomicBool::new(false);

/// Why there is no window.
#[derive(Debug, thiserror::Error)]
pub enum CannotOpen {
    /// There is no display, or the libraries that reach it are not installed.
    #[error(
        "there is no display, or a library to reach it is missing. On a bare Debian or Ubuntu: \
         apt-get install libx11-6 libx11-xcb1 libxcursor1 libxi6 libxkbcommon-x11-0. The commands \
         need no display; see heftwise --help"
    )]
    NoDisplay,
    /// The window system said why.
    #[error(transparent)]
    Window(#[from] iced::Error),
}

/// The window has opened: from here on a panic is a fault of the program and says so.
pub fn opened() {
    OPEN.store(true, Ordering::Relaxed);
}

/// Runs the window, and gives words when the window system cannot start.
///
/// # Errors
/// No display, or whatever the window system reports.
pub fn guarded(run: impl FnOnce() -> iced::Result) -> Result<(), CannotOpen> {
    let usual = panic::take_hook();
    panic::set_hook(Box::new(move |panic| {
        let is_ours = thread::current().name() != Some("main");
        if is_ours || OPEN.load(Ordering::Relaxed) {
            usual(panic);
        }
    }));
    match panic::catch_unwind(AssertUnwindSafe(run)) {
        Ok(ended) => Ok(ended?),
        Err(_) if !OPEN.load(Ordering::Relaxed) => Err(CannotOpen::NoDisplay),
        Err(fault) => panic::resume_unwind(fault),
    }
}

/// The place to open at; the window system asks for it with nothing in hand but two sizes.
static PLACE: OnceLock<Point> = OnceLock::new();
/// So much of the window is on the screen at the least, in pixels.
const SEEN: f32 = 120.0;

/// Where the window opens: where it stood last, if that is on the main screen. A second screen may be
/// gone, and a window that nobody sees would be lost.
pub fn position(last: Option<(f32, f32)>) -> Position {
    match last {
        Some((x, y)) => {
            let _ = PLACE.set(Point::new(x, y));
            Position::SpecificWith(|window, screen| {
                on(PLACE.get().copied().unwrap_or_default(), window, screen)
            })
        }
        None => Position::Default,
    }
}

/// A place on the screen: the one asked for if the window can be seen and moved there, else the middle.
fn on(place: Point, window: Size, screen: Size) -> Point {
    let seen = |from: f32, length: f32| (-SEEN..=length - SEEN).contains(&from);
    if seen(place.x, screen.width) && seen(place.y, screen.height) {
        Point::new(place.x.max(0.0), place.y.max(0.0))
    } else {
        let middle = |window: f32, screen: f32| ((screen - window) / 2.0).max(0.0);
        Point::new(middle(window.width, screen.width), middle(window.height, screen.height))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_window_opens_where_it_can_be_seen() {
        let (window, screen) = (Size::new(1280.0, 800.0), Size::new(1920.0, 1080.0));
        let opens = |x, y| on(Point::new(x, y), window, screen);
        assert_eq!(opens(500.0, 40.0), Point::new(500.0, 40.0));
        // A frame may hang over the edge a little.
        assert_eq!(opens(-8.0, -8.0), Point::ORIGIN);
        // On a screen to the right, to the left or above that is gone.
        let middle = Point::new(320.0, 140.0);
        for (x, y) in [(2400.0, 40.0), (-1500.0, 40.0), (300.0, -900.0), (1900.0, 1070.0)] {
            assert_eq!(opens(x, y), middle, "{x}, {y}");
        }
        let small = Size::new(1024.0, 600.0);
        assert_eq!(on(Point::new(3000.0, 0.0), window, small), Point::ORIGIN);
    }
}
