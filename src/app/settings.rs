//! What the window remembers between sessions. Loading is tolerant: a missing or broken field
//! takes its usual value, because settings are never worth refusing to start over.

use std::fs;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use crate::aside::put;
use crate::quantity::Units;

/// Whether the page is light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Daylight {
    /// As the system says.
    #[default]
    Follow,
    /// Always light.
    Day,
    /// Always dark.
    Night,
}

/// A companion to be found again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kept {
    /// In a file.
    File(PathBuf),
    /// Among the examples that come with the program, by name.
    Example(String),
}

/// The sizes of text on offer, in percent.
pub const TEXT_SIZES: [u16; 7] = [80, 90, 100, 115, 130, 160, 200];
/// How many builds the list of recent ones holds.
const RECENT: usize = 200;

/// Everything remembered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, rename_all = "kebab-case")]
pub struct Settings {
    /// The set of units, and the unit picked for single quantities.
    pub units: Units,
    /// Light or dark.
    pub daylight: Daylight,
    /// Whether nothing on the page may move of its own accord.
    pub still: bool,
    /// Size of text in percent of the usual.
    pub text_size: u16,
    /// Builds opened lately, the latest first.
    pub recent: Vec<PathBuf>,
    /// Builds shown beside the reader's own.
    pub companions: Vec<Kept>,
    /// The lesson last read.
    pub lesson: Option<String>,
    /// How far down that lesson, in pixels.
    pub place: f32,
    /// The heading the page stood under, by its anchor.
    pub section: Option<String>,
    /// Where the dialogs for builds begin; none: the folder of the build on the desk.
    pub builds: Option<PathBuf>,
    /// A folder of lessons of the reader's own, shown among those that come with the program.
    pub own_lessons: Option<PathBuf>,
    /// Width and height of the window.
    pub window: (f32, f32),
    /// Where its upper left corner stood on the screen, where the system tells.
    pub at: Option<(f32, f32)>,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            units: Units::default(),
            daylight: Daylight::default(),
            still: false,
            text_size: 100,
            recent: Vec::new(),
            companions: Vec::new(),
            lesson: None,
            place: 0.0,
            section: None,
            builds: None,
            own_lessons: None,
            window: (1280.0, 800.0),
            at: None,
        }
    }
}

impl Settings {
    /// The width of the window as the text has it: large text makes it narrow.
    pub fn room(&self) -> f32 {
        self.window.0 * 100.0 / f32::from(self.text_size.max(1))
    }

    /// Whether there are settings of an earlier session.
    pub fn are_kept(folder: &Path) -> bool {
        folder.join(FILE).exists()
    }

    /// Reads the settings; what cannot be read takes its usual value.
    pub fn load(folder: &Path) -> Self {
        let text = read(&folder.join(FILE)).unwrap_or_default();
        let mut table: toml::Table = text.parse().unwrap_or_default();
        // Each line is tried alone, so that one broken line does not take the others with it.
        table.retain(|name, value| {
            let alone = toml::Table::from_iter([(name.to_owned(), value.clone())]);
            Self::deserialize(alone).is_ok()
        });
        let mut settings = Self::deserialize(table).unwrap_or_default();
        settings.text_size = settings.text_size.clamp(TEXT_SIZES[0], TEXT_SIZES[6]);
        let (width, height) = settings.window;
        settings.window = (sane(width, 1280.0), sane(height, 800.0));
        settings.at = settings.at.filter(|(x, y)| on_a_screen(*x) && on_a_screen(*y));
        settings.place = settings.place.max(0.0);
        settings
    }

    /// Writes the settings aside and moves them into place.
    ///
    /// # Errors
    /// When the folder cannot be made or written.
    pub fn save(&self, folder: &Path) -> std::io::Result<()> {
        let text = toml::to_string(self).map_err(std::io::Error::other)?;
        fs::create_dir_all(folder)?;
        put(&folder.join(FILE), text.as_bytes())
    }

    /// Puts a build at the top of the recent ones.
    pub fn remember(&mut self, path: &Path) {
        self.recent.retain(|known| known != path);
        self.recent.insert(0, path.to_owned());
        self.recent.truncate(RECENT);
    }

    /// Takes a build out of the recent ones; its file stays.
    pub fn forget(&mut self, path: &Path) {
        self.recent.retain(|known| known != path);
    }

    /// The next size of text, larger or smaller.
    pub fn resize_text(&mut self, larger: bool) {
        let now = self.text_size;
        let next = if larger {
            TEXT_SIZES.iter().find(|size| **size > now)
        } else {
            TEXT_SIZES.iter().rev().find(|size| **size < now)
        };
        self.text_size = next.copied().unwrap_or(now);
    }
}

const FILE: &str = "settings.toml";
/// The largest file taken for settings, in bytes.
const LARGEST: u64 = 1 << 20;

/// The text of a file of settings; nothing of a device, which could wait forever or never end.
fn read(path: &Path) -> Option<String> {
    let about = fs::metadata(path).ok()?;
    (about.is_file() && about.len() <= LARGEST).then(|| fs::read_to_string(path).ok())?
}

/// Whether a corner can be on a screen at all: some systems put a window away at -32000.
fn on_a_screen(corner: f32) -> bool {
    (-8_000.0..=16_000.0).contains(&corner)
}

fn sane(length: f32, usual: f32) -> f32 {
    if (320.0..=10_000.0).contains(&length) { length } else { usual }
}
