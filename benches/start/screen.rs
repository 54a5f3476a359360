//! A virtual screen for programs that open a window (Debian: xvfb).

use std::fs::File;
use std::io::{BufRead, BufReader};
use std::os::unix::fs::FileExt;
use std::path::Path;
use std::process::{Child, Command, Stdio};

/// The size of the screen.
pub const SIZE: (u64, u64) = (1280, 800);

/// A virtual screen, whose pixels stand in a file, an X window dump.
pub struct Screen {
    server: Child,
    display: String,
    dump: File,
    /// Where in the dump the pixels start.
    pixels: u64,
}

impl Screen {
    /// None without Xvfb.
    pub fn open(folder: &Path) -> Option<Self> {
        let mut server = Command::new("Xvfb")
            .args(["-displayfd", "1", "-screen", "0", "1280x800x24", "-nolisten", "tcp", "-fbdir"])
            .arg(folder)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .ok()?;
        let mut number = String::new();
        BufReader::new(server.stdout.take()?).read_line(&mut number).ok()?;
        let display = format!(":{}", number.trim());
        let dump = File::open(folder.join("Xvfb_screen0")).unwrap();
        // XWDFile.h: the size of the head comes first, the number of colours is its 20th word.
        let word = |place: u64| {
            let mut bytes = [0; 4];
            dump.read_exact_at(&mut bytes, 4 * place).unwrap();
            u64::from(u32::from_be_bytes(bytes))
        };
        let pixels = word(0) + 12 * word(19);
        Some(Self { server, display, dump, pixels })
    }

    /// Whether any of some pixels of the screen is not black.
    pub fn is_painted(&self) -> bool {
        let places = (1..20).map(|step| (SIZE.0 * step / 20, SIZE.1 * step / 20));
        places.into_iter().any(|(x, y)| {
            let mut pixel = [0; 4];
            let at = self.pixels + (y * SIZE.0 + x) * 4;
            self.dump.read_exact_at(&mut pixel, at).is_ok() && pixel[..3] != [0, 0, 0]
        })
    }

    /// Has a program open its window here, for somebody with nothing in the folder yet.
    pub fn show<'a>(&self, command: &'a mut Command, home: &Path) -> &'a mut Command {
        command
            .env("DISPLAY", &self.display)
            .env("HOME", home)
            .env("ICED_BACKEND", "tiny-skia")
            .env_remove("WAYLAND_DISPLAY")
            .env_remove("XDG_CONFIG_HOME")
            .env_remove("XDG_DATA_HOME")
    }
}

impl Drop for Screen {
    fn drop(&mut self) {
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}
