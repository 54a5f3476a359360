//! The real program in a real window, by keyboard alone: from the first start to a saved build and
//! a printed handout.
//!
//! Needs a virtual screen and a hand on its keys (Debian: xvfb, xdotool). Where they are lacking the
//! check is passed over, unless `HEFTWISE_WINDOW=must` says that they have to be there, as the CI
//! does.

use std::ffi::OsStr;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::thread::sleep;
use std::time::{Duration, Instant};

use crate::handout::print::{found, printed};

/// How long anything may take on a busy machine.
const PATIENCE: Duration = Duration::from_secs(60);

/// A virtual screen with the program on it.
struct Window {
    server: Child,
    program: Child,
    display: String,
    hand: PathBuf,
}

impl Window {
    /// The program as it starts for somebody who has never used it; nothing if there is no screen.
    fn first_start(home: &Path) -> Option<Self> {
        let (Some(screen), Some(hand)) = (found("Xvfb"), found("xdotool")) else {
            let must = std::env::var("HEFTWISE_WINDOW").is_ok_and(|it| it == "must");
            assert!(!must, "Xvfb and xdotool have to be there");
            eprintln!("passed over: no Xvfb or no xdotool");
            return None;
        };
        let mut server = Command::new(screen)
            .args(["-displayfd", "1", "-screen", "0", "1280x900x24", "-nolisten", "tcp"])
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        let mut number = String::new();
        BufReader::new(server.stdout.take().unwrap()).read_line(&mut number).unwrap();
        let display = format!(":{}", number.trim());
        let program = Command::new(env!("CARGO_BIN_EXE_heftwise"))
            .env("DISPLAY", &display)
            .env("ICED_BACKEND", "tiny-skia")
            .env("HOME", home)
            // No desktop around it, so that files are named by typing.
            .env_remove("WAYLAND_DISPLAY")
            .env_remove("DBUS_SESSION_BUS_ADDRESS")
            .env_remove("XDG_RUNTIME_DIR")
            .env_remove("XDG_CONFIG_HOME")
            .env_remove("XDG_DATA_HOME")
            .env("PATH", "")
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        let mut window = Self { server, program, display, hand };
        // Without a window manager nobody else gives it the keys.
        let focus = ["search", "--onlyvisible", "--name", "Heftwise", "windowfocus"];
        window.wait("window", |window| window.hand(focus).is_some());
        Some(window)
    }

    /// What xdotool answers, if it can do as told.
    fn hand<A: AsRef<OsStr>>(&self, arguments: impl IntoIterator<Item = A>) -> Option<String> {
        let done = Command::new(&self.hand).env("DISPLAY", &self.display).args(arguments).output();
        let done = done.unwrap();
        done.status.success().then(|| String::from_utf8(done.stdout).unwrap())
    }

    fn title(&self) -> Option<String> {
        let title = self.hand(["search", "--name", "Heftwise", "getwindowname"])?;
        Some(title.trim().to_owned())
    }

    fn is_changed(&self) -> bool {
        self.title().is_some_and(|title| title.contains("(not saved)"))
    }

    fn key(&self, key: &str) {
        self.hand(["key", key]).unwrap();
    }

    fn typewrite(&self, text: &str) {
        self.hand(["type", "--delay", "30", text]).unwrap();
    }

    #[track_caller]
    fn wait(&mut self, what: &str, is_there: impl Fn(&Self) -> bool) {
        let begun = Instant::now();
        while !is_there(self) {
            assert_eq!(self.program.try_wait().unwrap(), None, "the program ended before {what}");
            assert!(begun.elapsed() < PATIENCE, "no {what} in {PATIENCE:?}: {:?}", self.title());
            sleep(Duration::from_millis(50));
        }
    }
}

impl Drop for Window {
    fn drop(&mut self) {
        for child in [&mut self.program, &mut self.server] {
            let _ = child.kill();
            let _ = child.wait();
        }
    }
}

/// The width of the track, as a build file has it.
fn track_width(build: &str) -> &str {
    let line = build.lines().find_map(|line| line.strip_prefix("track-width = ")).unwrap();
    line.trim_matches('"')
}

/// Nobody outside the window sees where its focus is, so the hand waits a while after each key; on a
/// machine busy with other tests it tries again, more slowly.
#[test]
fn from_the_first_start_to_a_printed_handout_by_keyboard_alone() {
    for pause in [500, 1500] {
        let pause = Duration::from_millis(pause);
        if std::panic::catch_unwind(|| from_first_start_to_handout(pause)).is_ok() {
            return;
        }
    }
    from_first_start_to_handout(Duration::from_secs(4));
}

fn from_first_start_to_handout(pause: Duration) {
    let home = tempfile::tempdir().unwrap();
    let Some(mut window) = Window::first_start(home.path()) else { return };
    sleep(pause);
    let demo = heftwise::sheet::demo::find("sandpiper").unwrap().text;
    assert_eq!(window.title().unwrap(), "Sandpiper – Heftwise");

    // To the build sheet; past its name and note to the field that finds numbers.
    for key in ["ctrl+2", "F6", "Tab", "Tab"] {
        window.key(key);
        sleep(pause);
    }
    window.typewrite("track width");
    sleep(pause);
    // On from field to field until one takes a step.
    for _ in 0..12 {
        // The focus moves after the frame that the key asks for.
        window.key("Tab");
        sleep(pause);
        window.key("Up");
        sleep(pause);
        if window.is_changed() {
            break;
        }
    }
    window.wait("change", Window::is_changed);

    // Saved where the reader says, and the title says so.
    let file = home.path().join("mine.toml");
    window.key("ctrl+s");
    sleep(2 * pause);
    window.typewrite(file.to_str().unwrap());
    sleep(pause);
    window.key("Return");
    window.wait("saved build", |window| file.is_file() && !window.is_changed());
    let saved = std::fs::read_to_string(&file).unwrap();
    assert_ne!(track_width(&saved), track_width(demo), "the field changed is the one looked for");

    // On to a lesson, and from it to paper.
    let page = home.path().join("page.html");
    window.key("ctrl+f");
    sleep(pause);
    window.typewrite("pressure on the ground");
    sleep(pause);
    for key in ["Return", "ctrl+p", "Return"] {
        window.key(key);
        sleep(2 * pause);
    }
    window.key("ctrl+a");
    sleep(pause);
    window.typewrite(page.to_str().unwrap());
    sleep(pause);
    window.key("Return");
    window.wait("handout", |_| page.is_file());
    sleep(pause);
    window.key("Return");
    sleep(pause);

    // Closed by key as well.
    window.key("ctrl+q");
    let begun = Instant::now();
    while window.program.try_wait().unwrap().is_none() {
        assert!(begun.elapsed() < PATIENCE, "the window does not close");
        sleep(Duration::from_millis(50));
    }
    assert!(window.program.wait().unwrap().success());

    is_printed(&std::fs::read_to_string(page).unwrap(), track_width(&saved));
}

/// The handout has the number that was changed, on paper too where there is a browser to print it.
fn is_printed(html: &str, width: &str) {
    let number = width.split(' ').next().unwrap();
    assert!(html.contains("Pressure on the ground"), "it is of the lesson");
    assert!(html.contains(number), "{number} is not in the handout");
    let Some(paper) = printed(html) else { return };
    assert!(paper.says(number), "{number} is not on paper");
}
