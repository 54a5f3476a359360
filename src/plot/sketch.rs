//! A sketch as flat shapes and words on a surface, for the window and for paper alike.
//!
//! Everything is a filled polygon: a renderer that repaints only what a shape covers then loses no
//! line. Words are given by the rectangle they stand in, and no two of those overlap.

mod balance;
mod figures;
mod gear;
mod ground;
mod labels;
mod load;
mod map;
mod pen;
mod pressure;
mod svg;

pub use figures::figure;
pub use labels::Label;
pub use load::Arrow;
pub use svg::svg;

use super::layout::Rect;
use crate::quantity::Units;
use crate::study::Sketch;
use labels::Labels;
use map::Map;
use pen::Pen;

/// From where a sketch is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum View {
    /// From its right side, front to the right.
    #[default]
    Side,
    /// From above, front to the right.
    Top,
    /// From behind.
    Rear,
}

/// What is drawn besides what carries the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Show {
    /// The pressure under the tracks.
    pub pressure: bool,
    /// The centre of gravity.
    pub cg: bool,
    /// Weight and force on the ground, as arrows.
    pub weight: bool,
    /// The parts as boxes.
    pub parts: bool,
}

impl Show {
    /// Everything.
    pub const ALL: Self = Self { pressure: true, cg: true, weight: true, parts: true };
}

/// What a shape or a label stands for, which decides its colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Tone {
    /// The line of the ground, and marks upon it.
    Ground,
    /// Tracks, wheels, skis.
    Gear,
    /// Their outlines.
    GearEdge,
    /// Parts.
    Part,
    /// Their outlines.
    PartEdge,
    /// The trial mass.
    Trial,
    /// Pressure on the ground.
    Pressure,
    /// Its outline, and the force of the ground.
    Reaction,
    /// The weight.
    Weight,
    /// The dark of the mark of the centre of gravity, and words.
    Ink,
    /// Thin lines that lead the eye.
    Leader,
    /// The paper, behind words.
    Paper,
    /// Where it would tip.
    Tip,
    /// A companion laid over.
    Ghost,
}

/// A filled polygon in pixels, x to the right and y down.
#[derive(Debug, Clone, PartialEq)]
pub struct Shape {
    /// Its corners.
    pub points: Vec<(f32, f32)>,
    /// What it stands for.
    pub tone: Tone,
    /// How opaque it is, zero to one.
    pub strength: f32,
}

/// A sketch drawn on a surface.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Drawing {
    /// The surface in pixels.
    pub size: (f32, f32),
    /// What is drawn, the lowest first; the words go over all of it.
    pub shapes: Vec<Shape>,
    /// The words.
    pub labels: Vec<Label>,
    /// The forces among the shapes, with what they stand for.
    pub arrows: Vec<Arrow>,
    /// Pixels to the metre; zero when nothing is drawn.
    pub scale: f64,
    /// Pixels to the newton, the same for every arrow; zero when none is drawn.
    pub force_scale: f64,
}

/// Draws a sketch on a surface of that size in pixels, with words of that height.
pub fn draw(
    sketch: &Sketch,
    (view, show): (View, Show),
    units: &Units,
    (width, height): (f32, f32),
    text_size: f32,
) -> Drawing {
    let size = (width.max(1.0), height.max(1.0));
    let mut drawing = Drawing { size, ..Drawing::default() };
    let surface = Rect { x: 0.0, y: 0.0, width: size.0, height: size.1 };
    let under = map::under(view, show, sketch, &surface, text_size);
    let Some(map) = Map::fit(sketch, (view, show), &surface, (under, text_size)) else {
        return drawing;
    };
    let mut pen = Pen::new(map, &surface);
    let mut labels = Labels::new(surface, text_size);
    ground::ground(&mut pen, &mut labels, sketch, units);
    gear::bearers(&mut pen, sketch);
    let boxes = if show.parts { gear::parts(&mut pen, sketch) } else { Vec::new() };
    ground::sunk(&mut pen, &mut labels, sketch, (units, show.pressure));
    let scales = load::Scales::of(sketch, &pen, under);
    if show.pressure {
        pressure::pressure(&mut pen, &mut labels, sketch, &scales, units);
    }
    if show.weight {
        load::forces(&mut pen, &mut labels, sketch, &scales, units);
    }
    if let Some(ghost) = &sketch.ghost {
        let raised = sketch.above(ghost);
        gear::ghost(&mut pen, &mut labels, ghost, raised);
        if show.cg {
            balance::ghost_cg(&mut pen, ghost, raised);
        }
    }
    if show.cg {
        balance::cg(&mut pen, &mut labels, sketch, units);
    }
    balance::tip_axes(&mut pen, &mut labels, sketch);
    labels.keep_off(&pen.marks);
    drawing.labels = labels.place(&mut pen, &boxes);
    drawing.scale = pen.map.scale;
    drawing.force_scale = if pen.arrows.is_empty() { 0.0 } else { scales.force };
    drawing.shapes = pen.shapes;
    drawing.arrows = pen.arrows;
    drawing
}
