//! A picture and its numbers as files: SVG, PNG or CSV, by the ending of the name.

use std::io;
use std::path::{Path, PathBuf};

use resvg::tiny_skia::{Pixmap, Transform};

use super::letters;
use super::reading::Table;
use crate::aside::put;

/// Dots of a PNG for each pixel of its picture: sharp on paper and on fine screens.
const DOTS: f32 = 2.0;

/// What can be saved: a picture as self-contained SVG, and its numbers.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// The picture.
    pub svg: String,
    /// The numbers, in figures that other programs read.
    pub numbers: Table,
}

/// A kind of file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Lines and letters that stay sharp at any size.
    Svg,
    /// Dots.
    Png,
    /// Numbers, separated by commas.
    Csv,
}

impl Kind {
    /// Every kind, the one to begin with first.
    pub const ALL: [Self; 3] = [Self::Svg, Self::Png, Self::Csv];

    /// The ending of its names.
    pub const fn ending(self) -> &'static str {
        match self {
            Self::Svg => "svg",
            Self::Png => "png",
            Self::Csv => "csv",
        }
    }

    /// The kind that the ending of a name says.
    ///
    /// # Errors
    /// The name has no ending, or another one.
    pub fn of(path: &Path) -> Result<Self, SaveError> {
        let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase());
        Self::ALL
            .into_iter()
            .find(|kind| ending.as_deref() == Some(kind.ending()))
            .ok_or_else(|| SaveError::Ending(path.to_owned()))
    }
}

/// Why a picture cannot be saved.
#[derive(Debug, thiserror::Error)]
pub enum SaveError {
    /// The ending of the name says no kind of file.
    #[error("{} does not say what to write: end the name in .svg, .png or .csv.", .0.display())]
    Ending(PathBuf),
    /// The picture cannot be turned into dots.
    #[error("The picture cannot be drawn as dots: {0}. Save it as .svg.")]
    Dots(String),
    /// The file cannot be written.
    #[error("{} cannot be written: {why}.", .path.display())]
    Write {
        /// Which file.
        path: PathBuf,
        /// Why not.
        why: io::Error,
    },
}

impl Figure {
    /// Writes the file in one step: what was there before stays whole until the new one is.
    ///
    /// # Errors
    /// The ending says no kind of file, or the file cannot be written.
    pub fn save(&self, path: &Path) -> Result<(), SaveError> {
        let bytes = self.bytes(Kind::of(path)?)?;
        put(path, &bytes).map_err(|why| SaveError::Write { path: path.to_owned(), why })
    }

    /// What a file of that kind holds.
    ///
    /// # Errors
    /// The picture cannot be turned into dots.
    pub fn bytes(&self, kind: Kind) -> Result<Vec<u8>, SaveError> {
        match kind {
            Kind::Svg => Ok(self.svg.clone().into_bytes()),
            Kind::Png => {
                self.dots()?.encode_png().map_err(|error| SaveError::Dots(error.to_string()))
            }
            Kind::Csv => Ok(csv(&self.numbers).into_bytes()),
        }
    }

    /// The picture as dots, fine enough to be printed.
    ///
    /// # Errors
    /// The picture cannot be turned into dots.
    pub fn dots(&self) -> Result<Pixmap, SaveError> {
        pixels(&self.svg, DOTS)
    }
}

/// A table as comma-separated values by RFC 4180: a header, lines that end in CRLF, quotes where a
/// field has a comma, a quote or a line end.
pub fn csv(table: &Table) -> String {
    let mut out = String::new();
    for row in std::iter::once(&table.head).chain(&table.rows) {
        let fields: Vec<String> = row.iter().map(|field| quoted(field)).collect();
        out.push_str(&fields.join(","));
        out.push_str("\r\n");
    }
    out
}

fn quoted(field: &str) -> String {
    if field.contains([',', '"', '\r', '\n']) {
        format!("\"{}\"", field.replace('"', "\"\""))
    } else {
        field.to_owned()
    }
}

/// A picture as dots, drawn with the shipped letters and by software alone, so that it is the same
/// on every machine.
///
/// # Errors
/// The text is no picture, or too large a one.
pub fn pixels(svg: &str, scale: f32) -> Result<Pixmap, SaveError> {
    let tree = usvg::Tree::from_str(svg, &letters::options())
        .map_err(|error| SaveError::Dots(error.to_string()))?;
    let size = tree.size();
    let dots = |length: f32| (length * scale).ceil().max(1.0) as u32;
    let mut pixels = Pixmap::new(dots(size.width()), dots(size.height()))
        .ok_or_else(|| SaveError::Dots("it is too large".to_owned()))?;
    resvg::render(&tree, Transform::from_scale(scale, scale), &mut pixels.as_mut());
    Ok(pixels)
}
