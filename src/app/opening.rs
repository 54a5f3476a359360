//! Opening the window where there may be none to open: words instead of a trace.

use std::panic::{self, AssertUnwindSafe};
use std::sync::atomic::{AtomicBool, Ordering};

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
        if OPEN.load(Ordering::Relaxed) {
            usual(panic);
        }
    }));
    match panic::catch_unwind(AssertUnwindSafe(run)) {
        Ok(ended) => Ok(ended?),
        Err(_) if !OPEN.load(Ordering::Relaxed) => Err(CannotOpen::NoDisplay),
        Err(fault) => panic::resume_unwind(fault),
    }
}
