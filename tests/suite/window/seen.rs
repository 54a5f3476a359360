//! What the main screens look like, held in coarse greys: by day, by night, with large type, narrow.
//!
//! Drawn by software with the shipped letters alone. A screen is kept as the mean grey of 32 by 20
//! cells, so that a rounding of another machine passes and a word that moved does not. When one
//! differs, look at the picture that the failure names; if all are right, record them anew:
//!
//!     HEFTWISE_RECORD=screens cargo test --test suite window::seen

use std::fmt::Write as _;
use std::path::Path;

use heftwise::app::screen::Place;
use heftwise::app::settings::Daylight;
use heftwise::app::shell::Message;
use iced::Size;
use iced::keyboard::{Modifiers, key::Named};
use resvg::tiny_skia::{IntSize, Pixmap};
use tempfile::TempDir;

use super::rig::{self, Rig, WIDE};

const KNOWN: &str = include_str!("../../golden/screens.txt");
const COLUMNS: usize = 32;
const ROWS: usize = 20;
/// How much of 255 a cell may differ by.
const TOLERANCE: u8 = 2;
const NARROW: Size = Size::new(400.0, 800.0);

/// A screen and how to get to it.
type Scene = (&'static str, fn(&mut Rig));

const SCENES: [Scene; 8] = [
    ("contents", |rig| rig.send(Message::Go(Place::Contents))),
    ("reading", |rig| rig.send(Message::Go(Place::Lesson("pressure".to_owned())))),
    ("build-sheet", |rig| rig.send(Message::Go(Place::BuildSheet))),
    ("walk-round", |rig| rig.send(Message::Go(Place::WalkRound))),
    ("notebook", |rig| rig.send(Message::Go(Place::Notebook))),
    ("bench", |rig| rig.send(Message::Go(Place::Bench))),
    ("settings", |rig| rig.send(Message::Go(Place::Settings))),
    ("workshop", |rig| {
        rig.send(Message::Go(Place::Lesson("pressure".to_owned())));
        rig.send(Message::Show);
        for _ in 0..3 {
            rig.key(Named::ArrowRight, Modifiers::empty());
        }
    }),
];

/// A way to look at a screen: the size of the window, the light, the size of text.
pub type Look = (&'static str, Size, Daylight, u16);

const LOOKS: [Look; 4] = [
    ("day", WIDE, Daylight::Day, 100),
    ("night", WIDE, Daylight::Night, 100),
    ("large", WIDE, Daylight::Day, 200),
    ("narrow", NARROW, Daylight::Day, 100),
];

/// The mean grey of each cell, row by row.
type Greys = Vec<u8>;

/// A picture of the window.
pub struct Shot {
    pixels: Vec<[u8; 4]>,
    size: (u32, u32),
}

impl Shot {
    /// The window of a reader whose files are in the folder, once it is brought to a scene.
    pub fn of(folder: &TempDir, scene: impl Fn(&mut Rig), (_, size, light, text): Look) -> Self {
        let mut rig = Rig::open(rig::start(folder), size);
        rig.send(Message::Light(light));
        rig.app.settings.text_size = text;
        scene(&mut rig);
        // A cursor blinks.
        rig.run(iced::widget::operation::focus("nothing"));
        let (pixels, _) = rig.picture();
        Self { pixels, size: (size.width as u32, size.height as u32) }
    }

    fn greys(&self) -> Greys {
        let (width, height) = (self.size.0 as usize, self.size.1 as usize);
        let mut sums = vec![(0.0, 0.0); COLUMNS * ROWS];
        for (place, [red, green, blue, _]) in self.pixels.iter().enumerate() {
            let (x, y) = (place % width * COLUMNS / width, place / width * ROWS / height);
            let (sum, count) = &mut sums[y * COLUMNS + x];
            // The weights of Rec. ITU-R BT.709.
            *sum +=
                0.2126 * f64::from(*red) + 0.7152 * f64::from(*green) + 0.0722 * f64::from(*blue);
            *count += 1.0;
        }
        sums.iter().map(|(sum, count)| (sum / count).round() as u8).collect()
    }

    pub fn save(&self, path: &Path) {
        let (width, height) = self.size;
        let size = IntSize::from_wh(width, height).unwrap();
        let picture = Pixmap::from_vec(self.pixels.concat(), size).unwrap();
        std::fs::write(path, picture.encode_png().unwrap()).unwrap();
    }
}

fn written(greys: &Greys) -> String {
    greys.iter().fold(String::new(), |mut text, grey| {
        write!(text, "{grey:02x}").unwrap();
        text
    })
}

/// How many cells differ, and by how much the most; nothing if none does.
fn difference(known: &str, found: &Greys) -> Option<(usize, u8)> {
    let read = |place| known.get(place..place + 2).and_then(|two| u8::from_str_radix(two, 16).ok());
    let by = |(place, grey): (usize, &u8)| {
        read(2 * place).map_or(u8::MAX, |known: u8| known.abs_diff(*grey))
    };
    let differs: Vec<u8> = found.iter().enumerate().map(by).filter(|by| *by > TOLERANCE).collect();
    Some((differs.len(), *differs.iter().max()?))
}

#[test]
fn screens_look_as_they_did() {
    let record = std::env::var("HEFTWISE_RECORD").is_ok_and(|it| it == "screens");
    let (mut all, mut wrong) = (String::new(), Vec::new());
    for scene in SCENES {
        for look in LOOKS {
            let name = format!("{}-{}", scene.0, look.0);
            let shot = Shot::of(&tempfile::tempdir().unwrap(), scene.1, look);
            let greys = shot.greys();
            writeln!(all, "{name} {}", written(&greys)).unwrap();
            let known = KNOWN.lines().find_map(|line| line.strip_prefix(&name)?.strip_prefix(' '));
            if let Some((cells, most)) = difference(known.unwrap_or_default(), &greys) {
                let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}.png"));
                shot.save(&path);
                let path = path.display();
                wrong.push(format!("{name}: {cells} cells, {most} at most  (look at {path})"));
            }
        }
    }
    if record {
        let golden = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/golden/screens.txt");
        std::fs::write(golden, all).unwrap();
    } else {
        assert!(wrong.is_empty(), "these look otherwise:\n{}", wrong.join("\n"));
    }
}

#[test]
fn a_moved_line_is_seen_and_a_rounding_is_not() {
    let (scene, look) = (SCENES[1], LOOKS[0]);
    let shot = Shot::of(&tempfile::tempdir().unwrap(), scene.1, look);
    let known = written(&shot.greys());
    assert_eq!(difference(&known, &shot.greys()), None);
    let mut brighter = Shot { pixels: shot.pixels.clone(), size: shot.size };
    for pixel in &mut brighter.pixels {
        *pixel = pixel.map(|part| part.saturating_add(1));
    }
    assert_eq!(difference(&known, &brighter.greys()), None);
    let mut moved = Shot { pixels: shot.pixels, size: shot.size };
    moved.pixels.rotate_right(4 * shot.size.0 as usize);
    let (cells, _) = difference(&known, &moved.greys()).expect("four pixels down");
    assert!(cells > 30, "{cells}");
}
