//! The sketch as a file may hold it: the picture, and the places it is drawn from.

use super::{Show, View, svg};
use crate::plot::reading::{Table, plain};
use crate::plot::save::Figure;
use crate::quantity::Units;
use crate::study::Sketch;
use crate::study::sketch::PartBox;

/// The sketch as a picture of that size, with the places of the parts and of the centre of gravity
/// as numbers: kilograms and metres, forward of the middle of the contact, to the left, up.
pub fn figure(sketch: &Sketch, how: (View, Show), units: &Units, size: (u32, u32)) -> Figure {
    let part = |part: &PartBox| {
        let numbers = std::iter::once(part.mass).chain(part.at).map(plain);
        std::iter::once(part.name.clone()).chain(numbers).collect()
    };
    let cg = sketch.cg.map(|cg| {
        let up = cg.up.map_or_else(String::new, plain);
        let name = "centre of gravity".to_owned();
        vec![name, String::new(), plain(cg.forward), plain(cg.left), up]
    });
    let head = ["what", "mass, kg", "forward, m", "left, m", "up, m"].map(str::to_owned).to_vec();
    let rows = sketch.boxes.iter().map(part).chain(cg).collect();
    Figure { svg: svg(sketch, how, units, size), numbers: Table { head, rows } }
}
