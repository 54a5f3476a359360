//! Time to the first frame and memory, beside an empty window of the same toolkit: `cargo bench
//! --bench start`. Ends with 1 when a budget is missed.
//!
//! Both windows, of one size, open in turn on a virtual screen (Debian: xvfb) with the software renderer; a
//! frame is there when the first pixel of the screen is no longer black. Memory is what is resident
//! two seconds later.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench may be blunt")]

#[path = "start/screen.rs"]
mod screen;

use std::path::Path;
use std::process::{Command, ExitCode, Stdio};
use std::thread::sleep;
use std::time::{Duration, Instant};

use screen::{SIZE, Screen};

/// How often each window is opened; the quickest start and the least memory count. Starts scatter by
/// half where a machine shares its cores with others, so it takes many until each had an undisturbed one.
const ROUNDS: usize = 40;
/// How often memory is looked at, which scatters little and takes seconds.
const LOOKS: usize = 3;
/// What the start and the memory of the program may be, in those of an empty window.
const START: f64 = 1.5;
const MEMORY: f64 = 1.6;
/// The argument that makes this program the empty window.
const EMPTY: &str = "empty-window";
/// A window that was opened.
#[derive(Clone, Copy)]
struct Opened {
    start: Duration,
    kilobytes: u64,
}

fn main() -> ExitCode {
    if std::env::args().any(|argument| argument == EMPTY) {
        let size = iced::Size::new(SIZE.0 as f32, SIZE.1 as f32);
        let empty = iced::application(|| (), |_: &mut (), _: ()| (), nothing).window_size(size);
        empty.run().unwrap();
        return ExitCode::SUCCESS;
    }
    let folder = tempfile::tempdir().unwrap();
    let Some(screen) = Screen::open(folder.path()) else {
        println!("passed over: no Xvfb");
        return ExitCode::SUCCESS;
    };
    let mut best = [Opened { start: Duration::MAX, kilobytes: u64::MAX }; 2];
    for round in 0..ROUNDS {
        let own = folder.path().join(format!("home-{round}"));
        std::fs::create_dir(&own).unwrap();
        let ours = Command::new(env!("CARGO_BIN_EXE_heftwise"));
        let mut empty = Command::new(std::env::current_exe().unwrap());
        empty.arg(EMPTY);
        for (best, command) in best.iter_mut().zip([ours, empty]) {
            let settled = Duration::from_millis(if round < LOOKS { 2000 } else { 200 });
            let opened = opened(&screen, command, &own, settled);
            best.start = best.start.min(opened.start);
            if round < LOOKS {
                best.kilobytes = best.kilobytes.min(opened.kilobytes);
            }
        }
    }
    let [ours, empty] = best;
    let mut fits = true;
    let mut line = |figure: &str, ours: f64, empty: f64, unit: &str, goal: f64| {
        let ratio = ours / empty;
        fits &= ratio <= goal;
        println!("{figure:<24}{ours:>9.1} {unit}{empty:>9.1} {unit}{ratio:>9.2}{goal:>9}");
    };
    println!("{:<24}{:>12}{:>12}{:>9}{:>9}", "figure", "ours", "empty", "ratio", "goal");
    let ms = |opened: Opened| opened.start.as_secs_f64() * 1e3;
    line("start to first frame", ms(ours), ms(empty), "ms", START);
    let mb = |opened: Opened| opened.kilobytes as f64 / 1024.0;
    line("memory", mb(ours), mb(empty), "MB", MEMORY);
    if fits { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

fn nothing(_: &()) -> iced::Element<'_, ()> {
    iced::widget::space().into()
}

/// How a window opens on the screen, for somebody without any files yet.
fn opened(screen: &Screen, mut command: Command, home: &Path, settled: Duration) -> Opened {
    while screen.is_painted() {
        sleep(Duration::from_millis(20));
    }
    screen.show(&mut command, home).stderr(Stdio::null());
    let begun = Instant::now();
    let mut window = command.spawn().unwrap();
    while !screen.is_painted() {
        assert!(begun.elapsed() < Duration::from_secs(60), "no frame in a minute");
        sleep(Duration::from_micros(200));
    }
    let start = begun.elapsed();
    sleep(settled);
    let status = std::fs::read_to_string(format!("/proc/{}/status", window.id())).unwrap();
    let resident = status.lines().find_map(|line| line.strip_prefix("VmRSS:")).unwrap();
    let kilobytes = resident.trim().trim_end_matches(" kB").parse().unwrap();
    window.kill().unwrap();
    window.wait().unwrap();
    Opened { start, kilobytes }
}
