//! The lessons inside the program.

use std::io;

use bytes::Bytes;

use super::source::{Source, TEACHER, TEXT, Text};

macro_rules! files {
    ($($lesson:literal: $($file:literal),+;)*) => {
        &[$($((
            $lesson,
            $file,
            include_bytes!(concat!("../../../lessons/", $lesson, "/", $file)),
        ),)+)*]
    };
}

/// Every file under `lessons/`: its lesson, its name, what it holds.
const FILES: &[(&str, &str, &[u8])] = files! {
    "numbers": "lesson.md", "teacher.md", "doubts-at-right-angles.svg", "scale-on-a-slope.svg", "scatter-and-offset.svg";
    "power": "lesson.md", "teacher.md", "equal-power-to-mass.svg", "three-limits.svg", "where-the-watts-go.svg";
    "pressure": "lesson.md", "teacher.md", "under-the-track.svg", "what-counts.svg";
    "ground": "lesson.md", "teacher.md", "clay-and-sand.svg", "dragged-ground.svg", "three-forces.svg";
    "turning": "lesson.md", "teacher.md", "round-a-turn.svg", "same-mass.svg", "skid-turn.svg";
    "balance": "lesson.md", "teacher.md", "arms.svg", "load-shift.svg", "side-slope.svg";
    "impact": "lesson.md", "teacher.md", "one-stop.svg", "pulse-shapes.svg";
    "structure": "lesson.md", "teacher.md", "four-sections.svg", "layers.svg", "squeeze-slip-shear.svg", "ways-to-hold.svg";
    "drive": "lesson.md", "teacher.md", "motor-picture.svg", "where-the-volts-go.svg";
    "heat": "lesson.md", "teacher.md", "quick-gear.svg", "stall.svg", "two-lumps.svg";
    "spiral": "lesson.md", "teacher.md", "closes.svg", "loop.svg", "rounds.svg";
    "scaling": "lesson.md", "teacher.md", "cubes.svg", "floats.svg";
    "evidence": "lesson.md", "teacher.md", "break-order.svg", "fault-tree.svg", "one-current.svg";
    "walk-round": "lesson.md", "teacher.md", "margins.svg", "round.svg";
};

/// The lessons inside the program.
#[derive(Debug, Clone, Copy, Default)]
pub struct Shipped;

impl Shipped {
    /// Every file, as lesson and name.
    pub fn files() -> impl Iterator<Item = (&'static str, &'static str)> {
        FILES.iter().map(|(lesson, file, _)| (*lesson, *file))
    }

    fn read(id: &str, file: &str) -> io::Result<&'static [u8]> {
        let found = FILES.iter().find(|(lesson, name, _)| *lesson == id && *name == file);
        found.map(|(_, _, bytes)| *bytes).ok_or_else(|| io::ErrorKind::NotFound.into())
    }

    fn read_text(id: &str, file: &str) -> io::Result<Text> {
        let bytes = Self::read(id, file)?;
        str::from_utf8(bytes).map(Text::from).map_err(|_| io::ErrorKind::InvalidData.into())
    }
}

impl Source for Shipped {
    fn lessons(&self) -> io::Result<Vec<String>> {
        Ok(Self::files().filter(|(_, file)| *file == TEXT).map(|(id, _)| id.to_owned()).collect())
    }

    fn text(&self, id: &str) -> io::Result<Text> {
        Self::read_text(id, TEXT)
    }

    fn teacher(&self, id: &str) -> io::Result<Option<Text>> {
        Ok(Self::read_text(id, TEACHER).ok())
    }

    fn picture(&self, id: &str, file: &str) -> io::Result<Bytes> {
        Self::read(id, file).map(Bytes::from_static)
    }
}
